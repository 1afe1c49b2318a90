"""A gap that was left in a seam is filled or closed in the end.

Guarantees: each stretch that a seam leaves open between its ends has its pocket, or is sewn shut; else it warns, for a slit to
    reach through may be meant.
Cannot know: what a hand reaches for behind it.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment import mends
from furbelow.garment.message import Length, Part, Pieces, Values
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-seam-gaps"


def prove(run: Run) -> Proof:
    faults: list[Fault] = []
    shown: list[Part] = []
    for seam in run.final.seams.values():
        pieces = tuple(dict.fromkeys(ply.piece for ply in seam.plies))
        if seam.gap is None or not run.whole or not run.sound(pieces):
            continue
        if seam.gap.closed:
            values: Values = {"gap": Length(seam.gap.length), "piece": Pieces(pieces)}
            shown.append(Part("proof-seam-gap-filled", values))
            continue
        made = next(done.step for done in run.performed if seam.name in done.after.seams)
        mend = mends.after(made.written, f"close gap: {{of: {seam.name}}}")
        faults.append(
            Fault(
                "FB440",
                f"the gap of {run.say.length(seam.gap.length)} in `{seam.name}` is left open, and 0 later steps fill or close it",
                Label(made.written.args["gap"].span, "left open here"),
                help=f"{mend.help}, or sew a `side pocket` in",
                change=mend.change,
                severity=Severity.WARNING,
            )
        )
    return Proof(CLAIM, tuple(shown), tuple(faults))
