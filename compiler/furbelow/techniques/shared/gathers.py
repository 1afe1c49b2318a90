"""Gathering rows: where they lie, in how many runs they are sewn, and what becomes of their thread tails."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Edge
from furbelow.garment.matching import divisions
from furbelow.garment.message import Length, Number, Value, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved

ROWS, HAND, ATTACHMENT = "two rows by machine", "two rows by hand", "pleating attachment"
CARTRIDGE = "cartridge pleats"
TAIL = Fraction(100)  # thread left hanging at each end of a row
KNOT = Fraction(20)  # of a tail left behind its knot
LONGEST_RUN = Fraction(1500)  # of flat cloth: a longer thread breaks when it is pulled; house rule, maker to confirm

FIRST_ROW = Fraction(4)  # from the edge, where the margin has room; the second lies the row spacing further in
# Where it has little: house rules, maker to confirm.
NEAREST = Fraction(3)  # from the cut edge, or the row pulls out of it
CLOSEST = Fraction(3)  # from row to row
CLEAR = Fraction(2)  # from the seam line: a row that lies nearer is caught in the seam here and there
NARROWEST_MARGIN = NEAREST + CLOSEST + CLEAR  # that holds two rows

_EIGHTH = Fraction("25.4") / 8


def rows_in(margin: Fraction | None, say: Phrasing, below: Fraction = Fraction(0)) -> tuple[Fraction, Fraction]:
    """How far two rows lie from the edge, in mm, so that both end up clear inside a margin of this width (mm).

    They lie where a tape has marks, for what is said is what is sewn. margin: None where no seam is known.
    below: where a row lies that stays in, mm from the edge; threads beside it could not be pulled.
    """
    step = Fraction(1) if say.system == "metric" else _EIGHTH
    least = below + CLEAR
    if least < NEAREST or margin is not None and margin < least + CLOSEST + CLEAR:
        least = NEAREST
    apart, nearest = say.room.row_spacing, -(-least // step) * step
    second = round((FIRST_ROW + apart) / step) * step
    if margin is not None:
        second = min(second, (margin - CLEAR) // step * step)
    second = max(second, nearest + -(-CLOSEST // step) * step)
    return max((second - apart) // step * step, nearest), second


def attached_at(margin: Fraction | None) -> Fraction:
    """How far the one row of a pleating attachment lies from the edge, in mm."""
    return FIRST_ROW if margin is None else max(min(FIRST_ROW, margin - CLEAR), NEAREST)


def margin_to_come(bench: Bench, solved: Solved, edge: Edge) -> Fraction | None:
    """What later steps still take at this edge, in mm: the least of its layers; None where nothing is taken."""
    left = []
    for name in bench.opened(edge.name):
        taken = f"{name}_takes"
        if taken in solved.values:
            left.append(solved.length(taken) - bench.edge(name).used)
    least = min(left, default=Fraction(0))
    return least if least > 0 else None


def runs_of(cloth_length: Fraction, parts: int) -> int:
    """In how many runs, one beside the other, an edge marked in so many parts is gathered: as few as are short enough.

    Each begins and ends at a mark, so their number goes into that of the parts.
    """
    fitting = (runs for runs in range(1, parts) if parts % runs == 0 and cloth_length <= runs * LONGEST_RUN)
    return next(fitting, parts)


def runs_said(cloth_length: Fraction, parts: int, say: Phrasing) -> dict[str, Value]:
    """The values that `rows-runs` and the other messages of rows are given."""
    runs = runs_of(cloth_length, parts)
    return {
        "in-runs": flag(runs > 1),
        "runs": runs,
        "per-run": parts // runs,
        "parts": parts,
        "tail": Length(TAIL, "about"),
        "knot": Length(KNOT, "about"),
        "long-stitch": Number(say.room.gathering_stitch, 1),
        "seam-stitch": Number(say.room.seam_stitch, 1),
    }


def knots_of(edge: Edge) -> int:
    """How many knots the thread tails of a gathered edge take: one at each end of each row, by hand one for both rows."""
    rows = {ROWS: 2, HAND: 1}.get(edge.gathered, 0)
    return 2 * rows * runs_of(edge.cloth_length, _parts(edge)) * edge.copies


def tail_pins(edge: Edge) -> int:
    """How many pins hold the thread tails of an edge: one at each end of each run, as long as no seam holds it."""
    return 2 * runs_of(edge.cloth_length, _parts(edge)) * edge.copies if tails_hang(edge) else 0


def tails_hang(edge: Edge) -> bool:
    """Whether thread tails of gathering rows hang from this edge: no row of stitches holds the gathers yet."""
    return edge.gathered in (ROWS, HAND) and not edge.held


def tails_off(edge: Edge) -> str:
    """The message of what is done with the thread tails of gathers once pins hold the edge; see `tails_said`."""
    return "tails-off-machine" if edge.gathered == ROWS else "tails-off-hand"


def tails_said(edge: Edge) -> Values:
    """The values that the messages of `tails_off` are given."""
    return {"in-runs": flag(runs_of(edge.cloth_length, _parts(edge)) > 1), "knot": Length(KNOT, "about")}


def _parts(edge: Edge) -> int:
    return edge.marks or divisions(edge.set_length)
