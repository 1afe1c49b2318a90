"""A gap that was left in a seam is filled or closed in the end, and a slit at its hem is finished.

Guarantees: each stretch that a seam leaves open between its ends has its pocket, or is sewn shut; else it warns, for a slit to
    reach through may be meant. So it does where the margins beside a slit at the hem are never sewn down.
Cannot know: what a hand reaches for behind it.
"""

from __future__ import annotations

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment import mends
from furbelow.garment.bench import Seam
from furbelow.garment.message import Length, Part, Pieces, Values
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-seam-gaps"


def prove(run: Run) -> Proof:
    faults: list[Fault] = []
    shown: list[Part] = []
    for seam in run.final.seams.values():
        pieces = tuple(dict.fromkeys(ply.piece for ply in seam.plies))
        if not run.whole or not run.sound(pieces):
            continue
        if seam.slit and not seam.topstitched_slit:
            faults.append(_slit(run, seam))
        if seam.gap is None:
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


def _slit(run: Run, seam: Seam) -> Fault:
    made = next(done.step.written for done in run.performed if seam.name in done.after.seams)
    mend = mends.after(made, f"slit: {{in: {seam.name}}}")
    return Fault(
        "FB346",
        f"the slit of {run.say.length(seam.slit)} in `{seam.name}` is never finished",
        Label(made.span, "left open here"),
        help=mend.help,
        change=mend.change,
        severity=Severity.WARNING,
    )
