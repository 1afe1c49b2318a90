"""A row that is to hide the seam of the row below it hangs far enough over it.

Guarantees: where a step says which row covers its seam, that row is sewn to the same piece further up and ends 1 cm or more
    below the seam; else it warns.
Cannot know: how far a stiff or very full row stands off when it is worn.
Source: the overlap is a house rule, maker to confirm.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.bench import OnLine, Seam
from furbelow.garment.message import Length, Part, Pieces
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-rows-covered"
OVER = Fraction(10)  # mm that a row hangs over the seam below it


def prove(run: Run) -> Proof:
    faults: list[Fault] = []
    shown: list[Part] = []
    for seam in run.final.seams.values():
        if (
            seam.on
            and seam.on.covered_by
            and run.whole
            and run.sound((*(ply.piece for ply in seam.plies), seam.on.piece))
        ):
            told = list(_not_covered(run, seam, seam.on))
            faults += told
            if not told:
                over = run.drops[seam.on.covered_by] - _level(run, seam.on)
                shown.append(
                    Part("proof-rows-covered-by", {"row": Pieces((seam.on.covered_by,)), "over": Length(over)})
                )
    return Proof(CLAIM, tuple(shown), tuple(faults))


def _level(run: Run, line: OnLine) -> Fraction:
    """How far below the top of the garment the line lies."""
    return run.hangs[line.piece] + line.down - run.final.edge(f"{line.piece}.top").used


def _not_covered(run: Run, seam: Seam, line: OnLine) -> Iterator[Fault]:
    say, row = run.say, line.covered_by
    made = next(done for done in run.performed if seam.name in done.after.seams and seam.name not in done.before.seams)
    place = made.step.written.args["covered by"].span
    over = run.drops[row] - _level(run, line)
    if line.piece not in run.over(row) or run.hangs[row] >= _level(run, line):
        yield Fault(
            "FB436",
            f"`{row}` does not hang above the seam of `{seam.name}`, which it is to cover",
            Label(place, "to be covered by it"),
            help=f"sew `{row}` on further up on `{line.piece}`, or leave `covered by` out",
        )
    elif over < OVER:
        where = f"only {say.length(over)} below" if over > 0 else f"{say.length(-over)} above"
        yield Fault(
            "FB436",
            f"`{row}` ends {where} the seam of `{seam.name}` that it is to cover, {say.length(OVER - over)} too high",
            Label(place, "to be covered by it"),
            (Label(run.solved.pieces[row].piece.span, f"ends {say.length(run.drops[row])} from the top"),),
            help=f"make `{row}` {say.length(OVER - over)} deeper, or sew it on lower",
            severity=Severity.WARNING,
        )
