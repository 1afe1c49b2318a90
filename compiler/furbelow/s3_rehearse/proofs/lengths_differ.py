"""The two edges of every seam have one length.

Guarantees: the set lengths at each seam differ by no more than one step of the rounding, which is eased in. A line that
    is drawn in after it was sewn draws in what it is sewn to.
Cannot know: how exactly the gathers were drawn; the guide gives the tolerance at the step.
Steps that match edges refuse a difference themselves; this looks at all seams again, at the end.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment.message import Part
from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-edges-match"


def prove(run: Run) -> Proof:
    faults, matched = [], 0
    for seam in run.final.seams.values():
        if len(seam.edges) != 2 or seam.name.endswith(".ends") or not run.sound([ply.piece for ply in seam.plies]):
            continue
        one, other = (run.final.edge(name) for name in seam.edges)
        sewer = next(done for done in run.performed if seam.name in done.after.seams)
        # What is drawn in after it is sewn draws in what is sewn to it.
        if any(sewer.after.edge(each.name).gathered != each.gathered for each in (one, other)):
            continue
        if run.solved.apart(one.set_length, other.set_length):
            is_, beside, off = run.say.apart(one.set_length, other.set_length)
            later = _changed_by(run, sewer, seam.edges)
            faults.append(
                Fault(
                    "FB401",
                    f"`{one.name}` is {is_} and `{other.name}` is {beside} at the end, {off} apart",
                    Label(sewer.step.written.span, "sewn together here"),
                    (Label(later.step.written.span, "one of them alone is shortened here"),) if later else (),
                    help="shorten both by the same, before they are sewn together or in one seam after it",
                )
            )
        matched += 1
    return Proof(CLAIM, (Part("proof-edges-matched", {"seams": matched}),), tuple(faults))


def _changed_by(run: Run, sewer: Performed, names: tuple[str, ...]) -> Performed | None:
    """The first step after the seam that changes how long one of its edges is."""
    later = run.performed[run.performed.index(sewer) + 1 :]
    for done in later:
        if any(done.before.edge(name).set_length != done.after.edge(name).set_length for name in names):
            return done
    return None
