"""A line drawn across a piece, at a height that the maker gives from its finished top or bottom edge."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import WORKABLE, Bench, Edge, State
from furbelow.garment.matching import LEVEL
from furbelow.garment.message import Length, One, Value
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import Kind, Parameter, edge_of, fault_at, word_of

HEIGHTS = {
    "below top": Parameter("From the finished top edge of that piece down to the line.", Kind.LENGTH, ""),
    "above hem": Parameter("Instead: from its finished bottom edge up to the line.", Kind.LENGTH, ""),
}
FROM = ("top-seam", "top-cut", "bottom-seam", "bottom-cut", "bottom")
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
    down = top + at if key == "below top" else low - at + _tucked_above(step, say.solved, piece, at)
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


def height_given(step: SolvedStep) -> str:
    """Which of the two heights the maker wrote: faults of the line stand there."""
    return next(key for key in HEIGHTS if key in step.amounts)


def covered_by(step: Step) -> str:
    """The row above that is to hang over this one's stitches; empty where none has to."""
    return word_of(step, "covered by") if "covered by" in step.args else ""


def base_gathered(bench: Bench, step: Step, on: str) -> Fault | None:
    """The fault of sewing a row on a piece whose line is no flat cloth any more."""
    if not bench.edge(f"{on}.bottom").gathered:
        return None
    headline = f"`{on}` is gathered at its bottom edge, and a row is sewn on flat cloth"
    return fault_at(step, "on", "FB333", headline, help="sew the row on before the gathers")


def measured_up(bench: Bench, step: SolvedStep, piece: str) -> bool:
    """Whether the line is measured up from the bottom edge: the edge that the maker named, but for one that is not level
    any more."""
    cloth, low = bench.cloths[piece], height_given(step) == "above hem"
    uneven = cloth.rises != LEVEL if low else cloth.levelled
    return low != uneven


def line_said(bench: Bench, step: SolvedStep, piece: str, down: Fraction) -> dict[str, Value]:
    """From which edge, as it lies now, the line is measured, and how far; `down` is in mm from the cut top edge."""
    cloth = bench.cloths[piece]
    if measured_up(bench, step, piece):
        edge = bench.edge(f"{piece}.bottom")
        return line_above(edge, cloth.piece.cut_depth - edge.used - down)
    edge = bench.edge(f"{piece}.top")
    return {
        "line-from": One("top-cut" if edge.state in WORKABLE else "top-seam", FROM),
        "from-edge": Length(down - edge.used),
    }


def line_above(edge: Edge, above: Fraction) -> dict[str, Value]:
    """How a line is said that lies so far above a bottom edge as it is now, in mm."""
    where = "bottom-cut" if edge.state in WORKABLE else "bottom-seam" if edge.state is State.SEWN else "bottom"
    return {"line-from": One(where, FROM), "from-edge": Length(above)}


def line_edge(bench: Bench, on: str, length: Fraction) -> Edge:
    """The line as an edge that lies flat: what is sewn on it is matched and pinned as to any other."""
    edge = bench.edge(f"{on}.bottom")
    return edge._replace(cloth_length=length, set_length=length, gathered="", marks=0, slit=False)


def _tucked_above(step: SolvedStep, solved: Solved, piece: str, at: Fraction) -> Fraction:
    """What tucks to come, higher above the hem than the line, take of the piece: they leave the line where it is."""
    below = f"{piece}.bottom"
    return sum(
        (
            2 * later.mm("depth") * later.amounts["count"].as_number()
            for later in solved.steps
            if later.written.technique == "tucks"
            and later.written.index > step.written.index
            and edge_of(later.written, "edge") == below
            and later.mm("from edge") >= at
        ),
        Fraction(0),
    )


def _taken(solved: Solved, piece: str, side: str) -> Fraction:
    """What all steps together take of the piece at that side."""
    name = f"{piece}.{side}_takes"
    return solved.length(name) if name in solved.values else Fraction(0)
