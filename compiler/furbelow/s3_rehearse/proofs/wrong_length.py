"""The depths add up to the finished length on the body, and the hem does not trail.

Guarantees: from the top of the garment to its lowest edge it measures `worn: length`, within one step of the rounding;
    with a waist height known, the hem is off the floor; of a train, in front and at the sides, and behind once its tapes
    draw it up. A garment that is off by no more than a twentieth of its length
    can be worn, so it warns.
Cannot know: shoes, posture, how far the cloth stretches when it hangs, or how the swags of a train fall between its tapes.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Severity
from furbelow.garment.message import Length, Part, Things
from furbelow.garment.technique import Performed
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
                    help=f"make the depths add up, for instance `{_to_change(run, lowest, gap)}` {off}"
                    f" {'shallower' if gap > 0 else 'deeper'}",
                    severity=Severity.ERROR if abs(gap) > asked * MUCH_OFF else Severity.WARNING,
                )
            )
    known = solved.values.get("waist_height")
    height = known.value.as_length_mm() - run.body.top if known else None
    if height is not None:
        faults += on_the_floor(run, lowest, height)
    shown = Part("proof-length-sum", {"depths": Things(tuple(depths), "sum"), "length": Length(drop)})
    return Proof(CLAIM, (shown,), tuple(faults))


def _to_change(run: Run, lowest: str, gap: Fraction) -> str:
    """The piece whose depth may take the difference: the lowest that is deep enough to lose it, else the deepest."""
    way_up = (lowest, *run.over(lowest))
    deep = [piece for piece in way_up if run.final.depth(piece) > 2 * gap]
    return deep[0] if deep else max(way_up, key=run.final.depth)


def on_the_floor(run: Run, piece: str, height: Fraction) -> Iterator[Fault]:
    """FB414 for a hem that does not clear the floor: in front and at the sides an error once it lies on it, behind a train,
    which warns where no tapes draw it up far enough."""
    say, (front, side, back), clear = run.say, run.bottom_at(piece), height - OFF_FLOOR
    trails = back > side
    level = side if trails else back
    if max(front, level) > clear:
        low = max(front, level)
        yield Fault(
            "FB414",
            f"the hem at {say.length(low)} is {say.length(low - clear)} too low to clear the floor by {say.length(OFF_FLOOR)}",
            Label(run.solved.pieces[piece].piece.span, "the lowest edge of the garment"),
            notes=(f"its top is {say.length(height)} from the floor",),
            help="make the garment shorter: a trailing hem trips on stairs",
            severity=Severity.ERROR if low >= height else Severity.WARNING,
            needs=low - height,
        )
    if not trails or back <= clear:
        return
    tapes = next((done for each in (piece, *run.over(piece)) if (done := _drawing_up(run, each))), None)
    if tapes is None:
        yield Fault(
            "FB414",
            f"the train lies {say.length(max(back - height, Fraction(0)))} on the floor behind, and nothing draws it up",
            Label(run.solved.pieces[piece].piece.span, "the lowest edge of the garment"),
            notes=(f"its top is {say.length(height)} from the floor",),
            help="sew in `bustle tapes`, or accept it where the train is carried",
            severity=Severity.WARNING,
        )
        return
    drawn = run.final.cloths[tapes.touches[0]].drawn_up
    assert drawn is not None  # the step that was found set it
    # Beside the tapes the hem is as low as the slope from the middle of the back to the side has it there.
    quarter = run.final.edge(f"{tapes.touches[0]}.bottom").set_length / 4
    beside = back - (back - side) * min(drawn.reach / quarter, Fraction(1))
    where, low = ("behind", back - drawn.by) if back - drawn.by >= beside else ("beside the tapes", beside)
    if low > clear:
        yield Fault(
            "FB414",
            f"drawn up by {say.length(drawn.by)} the hem is {say.length(low - clear)} too low {where} to clear the floor by"
            f" {say.length(OFF_FLOOR)}",
            Label(tapes.step.written.span, "draws it up"),
            notes=(f"its top is {say.length(height)} from the floor, and behind it is {say.length(back)} long",),
            help=f"draw it up by {say.length(back - clear)} or more"
            if where == "behind"
            else "set the tapes further apart, take more of them, or let the hem rise more at the sides",
            severity=Severity.WARNING,
        )


def _drawing_up(run: Run, piece: str) -> Performed | None:
    if run.final.cloths[piece].drawn_up is None:
        return None
    return next(
        done
        for done in run.performed
        if done.after.cloths[piece].drawn_up is not None and done.before.cloths[piece].drawn_up is None
    )


def from_top(run: Run, lowest: str) -> list[tuple[str, Fraction]]:
    """The pieces that hang one from the other down to this one, from the top, each with how far the next hangs below its
    top: its depth, or less where that is sewn on along a line across it."""
    chain = [(lowest, run.final.depth(lowest))]
    while (level := run.hangs[chain[0][0]]) > 0:
        beside = (chain[0][0], *(piece for piece, hangs in run.hangs.items() if hangs == level))
        hung = next((over[0] for piece in beside if (over := run.over(piece))), None)
        above = hung or next((piece for piece, drop in run.drops.items() if drop == level), None)
        if above is None:  # something that is sewn on reaches above it
            break
        chain.insert(0, (above, level - run.hangs[above]))
    return chain


def _summed(depths: list[str]) -> str:
    """A sum as it can be read: of many depths the first and the last, and how many lie between."""
    if len(depths) > MOST_SUMMANDS:
        depths = [*depths[:2], f"{len(depths) - 3} more", depths[-1]]
    return " + ".join(depths)
