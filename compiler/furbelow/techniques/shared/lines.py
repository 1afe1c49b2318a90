"""A line drawn across a piece, at a height that the maker gives from its finished top or bottom edge."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved, SolvedStep
from furbelow.garment.technique import Kind, Parameter, fault_at

HEIGHTS = {
    "below top": Parameter("From the finished top edge of that piece down to the line.", Kind.LENGTH, ""),
    "above hem": Parameter("Instead: from its finished bottom edge up to the line.", Kind.LENGTH, ""),
}
LEVEL_OFF = Fraction(3)  # so far a chalked line may stray; common practice, no source


def down_to_line(step: SolvedStep, say: Phrasing, piece: str) -> Fraction | Fault:
    """How far below the cut top edge of the piece the line lies, in mm.

    Fails: FB313 where not one of the two heights is given, FB427 where it lies beyond what shows of the piece.
    """
    written, cut = step.written, say.solved.pieces[piece]
    given = [key for key in HEIGHTS if key in step.amounts]
    if len(given) != 1:
        return fault_at(
            written,
            given[1] if given else None,
            "FB313",
            f"a line needs one of `below top` and `above hem`, and {'both are' if given else 'neither is'} given",
            help="write `below top: 12 cm`, from the finished top edge" if not given else "leave one of the two out",
        )
    (key,), at = given, step.mm(given[0])
    top, bottom = (_taken(say.solved, piece, side) for side in ("top", "bottom"))
    low = cut.cut_depth - bottom
    down = top + at if key == "below top" else low - at
    if top < down < low:
        return down
    where = "below the top" if key == "below top" else "above the hem"
    return fault_at(
        written,
        key,
        "FB427",
        f"a line {say.length(at)} {where} does not lie on `{piece}`, which is {say.length(low - top)} deep when finished",
        help=f"write a height above 0 and below {say.length(low - top)}",
    )


def line_edge(bench: Bench, on: str, length: Fraction) -> Edge:
    """The line as an edge that lies flat: what is sewn on it is matched and pinned as to any other."""
    edge = bench.edge(f"{on}.bottom")
    return edge._replace(cloth_length=length, set_length=length, gathered="", marks=0, slit=False)


def _taken(solved: Solved, piece: str, side: str) -> Fraction:
    """What all steps together take of the piece at that side."""
    name = f"{piece}.{side}_takes"
    return solved.length(name) if name in solved.values else Fraction(0)
