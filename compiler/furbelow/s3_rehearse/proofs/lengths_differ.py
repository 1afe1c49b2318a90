"""The two edges of every seam have one length.

Guarantees: the set lengths at each seam differ by no more than one step of the rounding, which is eased in. A line that
    is drawn in after it was sewn draws in what it is sewn to.
Cannot know: how exactly the gathers were drawn; the guide gives the tolerance at the step.
Steps that match edges refuse a difference themselves; this looks at all seams again, at the end.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label
from furbelow.garment.message import Part
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-edges-match"


def prove(run: Run) -> Proof:
    faults, matched = [], 0
    for seam in run.final.seams.values():
        if len(seam.edges) != 2 or seam.name.endswith(".ends") or not run.sound([ply.piece for ply in seam.plies]):
            continue
        one, other = (run.final.edge(name) for name in seam.edges)
        gap = abs(one.set_length - other.set_length)
        sewer = next(done for done in run.performed if seam.name in done.after.seams)
        # What is drawn in after it is sewn draws in what is sewn to it.
        if any(sewer.after.edge(each.name).gathered != each.gathered for each in (one, other)):
            continue
        if gap > run.solved.slack:
            faults.append(
                Fault(
                    "FB401",
                    f"`{one.name}` is {run.say.length(one.set_length)} and `{other.name}` is"
                    f" {run.say.length(other.set_length)} at the end, {run.say.length(gap)} apart",
                    Label(sewer.step.written.span, "sewn together here"),
                    help="close both in the same seam",
                )
            )
        matched += 1
    return Proof(CLAIM, (Part("proof-edges-matched", {"seams": matched}),), tuple(faults))
