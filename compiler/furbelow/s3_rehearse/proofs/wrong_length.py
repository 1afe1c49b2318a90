"""The depths add up to the finished length on the body, and the hem does not trail.

Guarantees: from the top of the garment to its lowest edge it measures `worn: length`, within one step of the rounding;
    with a waist height known, the hem is off the floor. A garment that is off by no more than a twentieth of its length
    can be worn, so it warns.
Cannot know: shoes, posture, or how far the cloth stretches when it hangs.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.message import Length, Part, Things
from furbelow.measure.quantity import mm
from furbelow.s3_rehearse.run import Proof, Run

CLAIM = "proof-length"
MUCH_OFF = Fraction(1, 20)  # of the length asked: then a depth or a formula is wrong; house rule, maker to confirm
MOST_SUMMANDS = 8  # a longer sum is not read
OFF_FLOOR = mm(20).value  # nearer than this a hem is trodden on; house rule, maker to confirm


def prove(run: Run) -> Proof:
    solved, say, worn = run.solved, run.say, run.solved.spec.worn
    if not run.whole:
        return Proof(CLAIM)
    if not run.sound(run.final.cloths):
        return Proof(CLAIM)
    lowest = max(run.drops, key=lambda piece: run.drops[piece])
    drop, faults = run.drops[lowest], []
    depths = [Length(depth) for _, depth in from_top(run, lowest)]
    if worn.length is not None:
        asked = solved.length("worn.length")
        gap = drop - asked
        if abs(gap) > solved.slack:
            long, wanted, off = say.apart(drop, asked)
            faults.append(
                Fault(
                    "FB413",
                    f"the garment is {long} long and {wanted} is asked, {off} {'too long' if gap > 0 else 'too short'}",
                    Label(worn.length.span, f"asks for {wanted}"),
                    (Label(solved.pieces[lowest].piece.span, "the lowest edge of the garment"),),
                    notes=(f"{_summed([say.length(depth.mm) for depth in depths])} = {say.length(drop)}",),
                    help=f"make the depths add up, for instance `{lowest}` {off}"
                    f" {'shallower' if gap > 0 else 'deeper'}",
                    severity=Severity.ERROR if abs(gap) > asked * MUCH_OFF else Severity.WARNING,
                )
            )
    known = solved.values.get("waist_height")
    height = known.value.as_length_mm() - run.body.top if known else None
    if height is not None and drop > height - OFF_FLOOR:
        over = drop - (height - OFF_FLOOR)
        faults.append(
            Fault(
                "FB414",
                f"the hem at {say.length(drop)} is {say.length(over)} too low to clear the floor by {say.length(OFF_FLOOR)}",
                Label(solved.pieces[lowest].piece.span, "the lowest edge of the garment"),
                notes=(f"its top is {say.length(height)} from the floor",),
                help="make the garment shorter: a trailing hem trips on stairs",
                severity=Severity.ERROR if drop >= height else Severity.WARNING,
            )
        )
    shown = Part("proof-length-sum", {"depths": Things(tuple(depths), "sum"), "length": Length(drop)})
    return Proof(CLAIM, (shown,), tuple(faults))


def from_top(run: Run, lowest: str) -> list[tuple[str, Fraction]]:
    """The pieces that hang one from the other down to this one, from the top, each with how far the next hangs below its
    top: its depth, or less where that is sewn on along a line across it."""
    chain = [(lowest, run.final.depth(lowest))]
    while (level := run.hangs[chain[0][0]]) > 0:
        beside = (chain[0][0], *(piece for piece, hangs in run.hangs.items() if hangs == level))
        hung = next((over[0] for piece in beside if (over := run.over(piece))), None)
        above = hung or next(piece for piece, drop in run.drops.items() if drop == level)
        chain.insert(0, (above, level - run.hangs[above]))
    return chain


def _summed(depths: list[str]) -> str:
    """A sum as it can be read: of many depths the first and the last, and how many lie between."""
    if len(depths) > MOST_SUMMANDS:
        depths = [*depths[:2], f"{len(depths) - 3} more", depths[-1]]
    return " + ".join(depths)
