"""Cut panels that widen to the hem out of rectangles, by slanting lines from edge to edge.

What it does: marks where each line meets the upper and the lower edge of the rectangle and cuts along the lines; the gores lie
    head to tail. One side of each gore is straight and the other slants, or both slant alike; front and back gores may be
    wider than those at the sides.
Edges before and after: rectangles before; gores after, all edges raw.
Allowance: none of its own: the rectangle is as wide as its gores with all that later steps take.
Example: `- gores: {piece: gore, hem: 36 cm}`, `- gores: {piece: gore, hem: 40 cm, sides: both slanting, front: 30 cm}`
Source: plane geometry: the slanting line halves a rectangle as wide as top and bottom of one gore together; gores whose sides
    slant alike lie head to tail and leave half a slant at either end. A straight side is sewn to a slanting one, or two that
    slant alike, so that neither is stretched; a skirt of gores hangs before it is hemmed; the front gore is the widest at the
    waist and the back gores widen most: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench
from furbelow.garment.gore import BACK, FRONT, GORE_PLACES, Gore, Row, lines_of, slope
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, One, Own, Part, Pieces, Things, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.tags import place_sign
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    SetUp,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.tolerance import CUT_OFF
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import SHEARS
from furbelow.techniques.shared.closed_ends import place_said

WHICH = ("all", "first", "next", "last")
ONE, BOTH = "one slanting", "both slanting"
# So much further out for each length of depth: a steeper side lies on the bias and drops; house rule.
STEEPEST = Fraction(3, 4)
OWN_GORES = ((FRONT, "front", "front hem", ""), (BACK, "back", "back hem", "backs"))


class Gores:
    name = "gores"
    about = "Cut panels that widen to the hem, head to tail from rectangles."
    pictures = (Picture.GORES,)
    parameters = {
        "piece": Parameter(
            "The piece; its length is the top of one gore, of one on average where they differ, its count how many gores.",
            Kind.PIECE,
        ),
        "hem": Parameter("Length of the finished bottom edge of a gore, longer than the top.", Kind.LENGTH),
        "sides": Parameter("Whether one side of each gore slants, or both do alike.", (ONE, BOTH), ONE),
        "front": Parameter(
            "Top of the one front gore; the others share what it leaves. Both sides slant.", Kind.LENGTH, ""
        ),
        "front hem": Parameter("Its bottom edge; without it the front gore widens as all do.", Kind.LENGTH, ""),
        "back": Parameter("Top of each back gore. Both sides slant.", Kind.LENGTH, ""),
        "back hem": Parameter("Its bottom edge; without it a back gore widens as all do.", Kind.LENGTH, ""),
        "backs": Parameter("How many back gores there are.", Kind.NUMBER, "1"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        both = word_of(step, "sides") == BOTH or any(top in step.args for _, top, _, _ in OWN_GORES)
        piece = word_of(step, "piece")
        return (Allowance(piece, "bottom", (), gore="hem", gores=OWN_GORES, both_slant=both),)

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth(windows=tuple(_windows(facts_of(done, Gore))))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        piece, say = word_of(step.written, "piece"), Phrasing(solved, room)
        gore = solved.pieces[piece].gore
        if gore is None:
            return refused(bench, step, (piece,), _not_wider(step, say, piece))
        if fault := _not_to_cut(bench, step, say, piece) or _not_to_share(step, say, piece, gore):
            return refused(bench, step, (piece,), fault)
        after = bench.with_cloths(bench.cloths[piece]._replace(blank=False))
        side = after.beside(piece, gore.cut_depth)
        lengths = {"bottom": gore.hem + 2 * gore.ends, "start": side, "end": side}
        edges = ((bench.edge(f"{piece}.{edge}"), long) for edge, long in lengths.items())
        after = after.with_edges(*(edge._replace(cloth_length=long, set_length=long) for edge, long in edges))
        handled = gore.cut_depth * 2 * sum(len(lines_of(row, gore.blank[0])) for row in gore.rows)
        return Performed(step, bench, after, (piece,), setup=SetUp.TABLE, handled=handled, facts=gore)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        piece, gore = word_of(done.step.written, "piece"), facts_of(done, Gore)
        wide, high = gore.blank
        values: Values = {
            "piece": Pieces((piece,)),
            "gores": sum(width.many for width in gore.widths),
            "rectangles": len(gore.rows),
            "odd": flag(len(gore.rows[-1]) < len(gore.rows[0])),
            "top": Length(gore.top),
            "hem": Length(gore.hem),
            "turns": flag(not gore.one_way),
            "wide": Length(wide, "cut"),
            "high": Length(high, "cut"),
            "diagonal": Length(slope(wide, high)),
            "narrow": Length(gore.cut_top),
            "broad": Length(gore.cut_bottom),
            "slant": Length(slope(gore.cut_bottom - gore.cut_top, high)),
            "off": Length(CUT_OFF, "off"),
        }
        differ = gore.differ
        if differ:
            values = {**values, "widths": Things(tuple(_widths_said(gore)), "clauses")}
            values = {**values, "order": Things(tuple(place_said(place) for place in gore.round), "row")}
        actions: list[Action] = [Action("gores-square" if gore.both else "gores-lay", len(gore.rows))]
        if gore.both:
            actions += _rows_marked(gore, differ)
        else:
            actions.append(Action("gores-mark-pair" if gore.paired else "gores-mark-one", len(gore.rows)))
        actions.append(Action("gores-cut", len(gore.rows)))
        actions.append(
            Action("gores-order")
            if differ
            else Action("gores-name-both" if gore.both else "gores-name", len(gore.rows))
        )
        aim = "gores-aim-differ" if differ else "gores-aim"
        return Instructions(
            "gores-title",
            aim,
            tuple(actions),
            values,
            (SHEARS,),
            ruled=("gores-draw-row", "gores-mark-one", "gores-mark-pair"),
        )


def row_said(gore: Gore, row: Row) -> Values:
    """Where the lines of a rectangle are, each by its letter, and how long they are."""
    wide, high = gore.blank
    lines = lines_of(row, wide)
    slopes = [slope(upper - lower, high) for upper, lower in lines]
    said = []
    marks: tuple[list[Part], list[Part]] = ([], [])
    for at, line in enumerate(lines):
        letter, ends = Own(place_sign(at + 1)), (_at(line[0]), _at(line[1]))
        said.append(Part("gores-line", {"line": letter, "upper": ends[0], "lower": ends[1]}))
        for along, end in zip(marks, ends, strict=True):
            along.append(Part("gores-mark", {"line": letter, "at": end}))
    return {
        "lines": Things(tuple(said), "clauses"),
        "upper-marks": Things(tuple(marks[0]), "row"),
        "lower-marks": Things(tuple(marks[1]), "row"),
        "places": Things(tuple(place_said(laid.place) for laid in row), "row"),
        "left": Length(wide - row[-1].ends, "cut"),
        "over": flag(row[-1].ends < wide),
        "alike": flag(max(slopes) - min(slopes) < 1),
        "shortest": Length(min(slopes)),
        "longest": Length(max(slopes)),
    }


def _rows_marked(gore: Gore, differ: bool) -> Iterator[Action]:
    rows, left = gore.alike(), len(gore.rows)
    for row, many in rows:
        values: Values = {**row_said(gore, row), "which": _which(many, left, len(gore.rows)), "times": many}
        left -= many
        for message in ("gores-mark-row", "gores-mark-lower", "gores-draw-row"):
            yield Action(message, many, values=values)
        unnamed = many
        for placed, times in gore.placed(row) if differ else ():
            which = _which(times, unnamed, many)
            unnamed -= times
            yield Action("gores-name-row", times, values={**row_said(gore, placed), "which": which, "times": times})


def _which(times: int, left: int, of: int) -> One:
    """Which of so many rectangles, of which some are `left`: all, some, others, or all others."""
    which = "all" if times == of else "first" if left == of else "last" if times == left else "next"
    return One(which, WHICH)


def _at(place: Fraction) -> Length | Part:
    return Length(place, "cut") if place else Part("gores-corner")


def _widths_said(gore: Gore) -> Iterator[Part]:
    for width in gore.widths:
        yield Part(
            "gores-width",
            {
                "place": One(width.place, GORE_PLACES),
                "many": width.many,
                "top": Length(width.top),
                "hem": Length(width.hem),
            },
        )


def _windows(gore: Gore) -> Iterator[Window]:
    why = "a steeper side lies on the bias and drops; take more gores, each less wide"
    for width in gore.widths:
        wider = (width.hem - width.top) / (2 if gore.both else 1)
        arg = {FRONT: "front", BACK: "back"}.get(width.place, "hem")
        what = "a widening to one side" if gore.both else "a widening"
        yield Window(arg, what, wider, most=gore.depth * STEEPEST, why=why)


def _not_wider(step: SolvedStep, say: Phrasing, piece: str) -> Fault:
    hem, top = step.mm("hem"), say.solved.pieces[piece].length
    return fault_at(
        step.written,
        "hem",
        "FB314",
        f"the bottom edge of {say.length(hem)} is not longer than the top of `{piece}`, {say.length(top)}",
        help="make the hem longer, or leave this step out: the piece is a rectangle",
    )


def _not_to_cut(bench: Bench, step: SolvedStep, say: Phrasing, piece: str) -> Fault | None:
    written, numbers, gore = step.written, say.solved.pieces[piece], say.solved.pieces[piece].gore
    if numbers.piece.piecing is not None or numbers.folded or numbers.ring is not None:
        how = "pieced of strips" if numbers.piece.piecing else "folded in half" if numbers.folded else "cut in a ring"
        return fault_at(
            written,
            "piece",
            "FB354",
            f"`{piece}` is {how}, and gores are cut from one flat rectangle",
            help="cut more gores, each narrower, with `count`",
        )
    if not bench.cloths[piece].blank:
        return fault_at(
            written, "piece", "FB354", f"the gores of `{piece}` are cut already", mend=mends.leave_out(written)
        )
    if gore is not None and any(gore.cut_widths(width)[0] <= 0 for width in gore.widths):
        return fault_at(
            written,
            "hem",
            "FB354",
            f"the sides of a gore of `{piece}` meet {say.length(gore.above)} above the finished top or lower",
            help="make the hem less wide or the top wider",
        )
    return None


def _not_to_share(step: SolvedStep, say: Phrasing, piece: str, gore: Gore) -> Fault | None:
    """What keeps front and back gores from being cut, or leaves nothing for the others."""
    written, many = step.written, say.solved.pieces[piece].count
    own = [top for _, top, _, _ in OWN_GORES if top in written.args]
    if not own:
        given = next((key for key in ("front hem", "back hem") if key in written.args), None)
        if given is None:
            return None
        place = given.partition(" ")[0]
        return fault_at(
            written,
            given,
            "FB354",
            f"`{given}` is written without the top of that gore",
            help=f"write `{place}:`, its top, or leave `{given}` out",
        )
    if written.args["sides"].given and word_of(written, "sides") == ONE:
        return fault_at(
            written,
            "sides",
            "FB354",
            f"the {own[0]} gore is the same left and right, so no gore beside it has a straight side",
            help=f"write `sides: {BOTH}`",
        )
    backs = step.amounts["backs"].as_number() if "back" in own else Fraction(0)
    if backs.denominator != 1 or ("back" in own and backs < 1):
        headline = f"{float(backs):.4g} back gores can't be cut; they are counted 1, 2, 3"
        return fault_at(written, "backs", "FB341", headline, help=f"write `backs: {max(1, round(backs))}`")
    left = many - int(backs) - ("front" in own)
    if left < 1:
        return fault_at(
            written,
            own[0],
            "FB354",
            f"`{piece}` has {say.count(many, 'gore')}, and front and back are {many - left} of them; none is left to share the rest",
            help=f"write a count of {many - left + 1} or more, or leave one of them out",
        )
    for width in gore.widths:
        if width.top <= 0 or width.hem <= width.top:
            said = f"{say.length(abs(width.top))} {'too little' if width.top <= 0 else 'at the top'} and {say.length(width.hem)} at the hem"
            return fault_at(
                written,
                own[0],
                "FB354",
                f"a {width.place} gore of `{piece}` is left with {said}; it does not widen to the hem",
                notes=(
                    f"all {many} have {say.length(gore.top * many)} at the top and {say.length(gore.hem * many)} at the hem",
                ),
                help="make front and back less wide, or all gores wider at the hem",
            )
    return None


TECHNIQUE = Gores()
