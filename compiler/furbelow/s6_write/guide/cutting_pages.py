"""The cutting list, and the steps of cutting from the plan."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from fractions import Fraction
from itertools import takewhile

from furbelow.garment.heat import dots_for
from furbelow.garment.limits import is_net
from furbelow.garment.message import Length, One, Own, Part, Pieces, Share, Supply, Things, Value, Values, flag
from furbelow.garment.solved import SolvedPiece
from furbelow.garment.tolerance import CUT_OFF
from furbelow.s4_cut.cut import Cutting, Sheet
from furbelow.s4_cut.offcuts import offcuts
from furbelow.s4_cut.plan import CuttingPlan, Section, Segment, tag_of
from furbelow.s6_write.guide.guide import CutLine
from furbelow.s6_write.guide.lane_steps import TAPES, lane_steps
from furbelow.s6_write.words.said_step import SaidAction, said_action
from furbelow.s6_write.words.words import Words

# A plan that takes more of the width than this share names the width to look for: cloth is seldom narrower by so much.
NEARLY_ALL = Fraction(3, 4)
# The messages for selvedges that are cut off and for those that are kept, on cloth that is ample and on one that is not.
SELVEDGES = {
    False: ("cutting-selvedges", "cutting-selvedges-wide"),
    True: ("cutting-selvedges-kept", "cutting-selvedges-kept-wide"),
}
# So much narrower than planned the cloth may be where strips are made up of segments; of at most so many: house rule.
HAIR, MOST_SHORTER = Fraction(10), 4
# Fibres whose new cloth is washed before it is cut, however little the spec says of it: common practice, no source.
_SHRINK = frozenset({"cotton", "linen", "viscose"})


def cut_lines(pieces: Mapping[str, SolvedPiece], cutting: Cutting, words: Words) -> tuple[CutLine, ...]:
    """One row for each piece, numbered as on the drawing."""
    words.read("cutting")
    return tuple(_cut_line(piece, cutting, words) for piece in pieces.values())


def _cut_line(piece: SolvedPiece, cutting: Cutting, words: Words) -> CutLine:
    joins = cutting.joins.get(piece.name, 0)
    note = "cut-whole" if not joins else "cut-joins-in-all" if piece.count > 1 else "cut-joins"
    finished: Values = {"length": Length(piece.length), "depth": Length(piece.depth), "gores": piece.count}
    shape = "cut-finished-gores" if piece.gore else "cut-finished-folded" if piece.folded else "cut-finished"
    return CutLine(
        mark=cutting.marks[piece.name],
        piece=piece.label,
        cloth=words.said(Supply(piece.piece.cloth.text)),
        count=str(piece.rectangles),
        cut_length=words.said(Length(piece.blank[0], "cut")),
        cut_depth=words.said(Length(piece.blank[1], "cut")),
        finished=words.text(shape, finished),
        note=words.text(note, {"joins": joins}),
        why=_numbers(piece.name, shaped=piece.shaped),
    )


def _numbers(piece: str, *, shaped: bool) -> tuple[str, ...]:
    # Of a piece of another shape the rectangle is cut that it lies in, and that has no name in the spec.
    cut = () if shaped else ("cut_length", "cut_depth")
    return tuple(f"{piece}.{size}" for size in ("length", "depth", *cut, "count"))


def cloth_steps(cutting: Cutting, sheet: Sheet, words: Words, *, begun: bool = False) -> Iterator[SaidAction]:
    """How to cut one cloth, from the bolt to what stays over. begun: some of it is cut already, and its end is straight."""
    plan = sheet.plan
    needs = max((_across(plan, section) for section in plan.sections), default=Fraction(0))
    values: dict[str, Value] = {
        "cloth": Supply(sheet.material.material.name),
        "shrinks": Share(sheet.bolt.shrinkage),
        "width": Length(needs, "cut"),
        "length": Length(plan.laid_length, "cut"),
        "made": _made(sheet, words),
        "dots": dots_for(sheet.material.material.fibre),
    }
    material, kept = sheet.material, _keeps_selvedges(plan)
    wide = needs > NEARLY_ALL * plan.usable_width
    values |= _narrower(plan, needs, cutting.marks)
    if begun:
        yield said_action("cutting-goes-on", {**values, "kept": flag(kept)}, words)
    else:
        if sheet.bolt.shrinkage:
            yield said_action("cutting-wash", values, words)
        elif "shrinkage" not in material.amounts and material.material.fibre in _SHRINK:
            yield said_action("cutting-wash-unknown", values, words)
        yield said_action(SELVEDGES[kept][wide], values, words)
    if plan.folded:
        faces = sheet.material.material.has_right_side
        yield said_action("cutting-fold" if faces else "cutting-fold-alike", values, words)
    for number in range(1, len(plan.sections) + 1):
        yield from _section_steps(cutting, sheet, number, words, begun=begun)
    if over := _offcuts(plan, words):
        yield said_action("cutting-keep", {**values, "sizes": Things(over)}, words)
    else:
        yield said_action("cutting-keep-small", values, words)


def _made(sheet: Sheet, words: Words) -> One:
    """How a cloth shows its way across: by its holes, by a thread that can be drawn out, or by neither."""
    cloth = sheet.material.material
    net = is_net(words.say.solved, cloth.name)
    return One("net" if net else "woven" if cloth.ravels else "close", ("net", "woven", "close"))


def _offcuts(plan: CuttingPlan, words: Words) -> tuple[Part, ...]:
    """The offcuts worth keeping, the largest first, those together that read alike."""
    sizes: list[Values] = [{"length": Length(each.length), "width": Length(each.width)} for each in offcuts(plan)]
    alike = Counter(words.text("cutting-size", size) for size in sizes)
    first = {words.text("cutting-size", size): size for size in reversed(sizes)}
    return tuple(
        Part("cutting-sizes" if number > 1 else "cutting-size", {**first[shown], "number": number})
        for shown, number in alike.items()
    )


def _section_steps(cutting: Cutting, sheet: Sheet, number: int, words: Words, *, begun: bool) -> Iterator[SaidAction]:
    plan, cloth = sheet.plan, sheet.material.material
    section, sections = plan.sections[number - 1], len(plan.sections)
    values: Values = {
        "cloth": Supply(cloth.name),
        "length": Length(section.length, "cut"),
        "number": number,
        "sections": sections,
        "tags": len(section.pieces),
        "off": Length(CUT_OFF, "off"),
        "made": _made(sheet, words),
    }
    if section.panels:
        from furbelow.s6_write.guide.panel_steps import panel_steps  # most cloths do without

        lay, cut = panel_steps(section, plan.usable_width, cutting.marks, cloth.name, cloth.has_right_side, words)
    else:
        lay, cut = lane_steps(cutting, plan, number, cloth.name, words, begun=begun)
    yield said_action("cutting-chalk", values, words)
    yield said_action("cutting-section" if sections > 1 else "cutting-section-only", values, words)
    if _keeps_selvedges(plan) and not any(lane.selvedge for lane in section.lanes):
        yield said_action("cutting-selvedges-here", values, words)
    yield from lay
    # The drawing shows which edge is up only while the cloth is in one piece.
    tags = "cutting-tags" if cloth.has_right_side else "cutting-tags-alike"
    faces = [
        cutting.sheet(name).material.material.has_right_side for name in takewhile(cloth.name.__ne__, cutting.sheets)
    ]
    told_before = number > 1 or cloth.has_right_side in faces
    taped = flag(any(each.mark in TAPES for each in lay))
    yield said_action("cutting-tags-again" if told_before else tags, {**values, "taped": taped}, words)
    here = {each.strip for each in section.pieces}
    pieces = words.say.solved.pieces.items()
    again = tuple(name for name, piece in pieces if name in here and (piece.gore or piece.ring or piece.bias))
    if again:
        yield said_action("cutting-tags-cut-again", {"pieces": Pieces(again)}, words)
    yield from cut


def _across(plan: CuttingPlan, section: Section) -> Fraction:
    """The width of cloth that a section really takes."""
    if section.panels:
        return max(panel.from_edge + panel.width for panel in section.panels)
    if section.across:
        return max((lane.used for lane in section.lanes), default=Fraction(0))
    lanes = sum((lane.depth for lane in section.lanes), Fraction(0))
    return min(lanes, plan.usable_width)


def _narrower(plan: CuttingPlan, needs: Fraction, marks: Mapping[str, str]) -> dict[str, Value]:
    """How cloth that is a hair too narrow is still enough: where what takes all of its width are segments of one strip, and
    another segment of it lies where there is room to be longer by all that those lack."""
    lanes = [lane for section in plan.sections if section.across for lane in section.lanes]
    tight = [lane for lane in lanes if lane.used > needs - HAIR]
    shorter = [lane.segments[-1] for lane in tight]
    whole = any(not section.across and _across(plan, section) > needs - HAIR for section in plan.sections)
    copies = {_strip(each) for each in shorter}
    longer = next(
        (
            lane.segments[-1]
            for lane in lanes
            if lane.segments
            and lane not in tight
            and plan.usable_width - lane.used >= HAIR * len(shorter)
            and _strip(lane.segments[-1]) in copies
        ),
        None,
    )
    if whole or longer is None or len(copies) > 1 or len(shorter) > MOST_SHORTER:
        return {"eked": flag(False)}
    tags = Things(tuple(Own(tag_of(each, marks)) for each in shorter))
    return {"eked": flag(True), "hair": Length(HAIR, "about"), "shorter": tags, "longer": Own(tag_of(longer, marks))}


def _strip(segment: Segment) -> tuple[str, str | None, int]:
    """Which copy of which strip a segment is of."""
    return segment.strip, segment.wearer, segment.copy


def _keeps_selvedges(plan: CuttingPlan) -> bool:
    """Whether some piece has an edge on the selvedge."""
    return any(lane.selvedge for section in plan.sections for lane in section.lanes)
