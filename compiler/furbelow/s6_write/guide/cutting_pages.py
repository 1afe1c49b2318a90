"""The cutting list and the steps of cutting, from the plan."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction
from typing import TYPE_CHECKING

from furbelow.garment.phrasing import Phrasing, listed
from furbelow.garment.solved import Solved
from furbelow.garment.tolerance import CUT_OFF
from furbelow.s4_cut.cut import Cutting, Sheet
from furbelow.s4_cut.marks import table_marks
from furbelow.s4_cut.offcuts import offcuts
from furbelow.s4_cut.plan import CuttingPlan, Section, Segment
from furbelow.s6_write.guide.guide import CutLine, GuideStep

if TYPE_CHECKING:
    from furbelow.s6_write.guide.panel_steps import Told


def cut_lines(solved: Solved, cutting: Cutting, say: Phrasing) -> tuple[CutLine, ...]:
    """One row for each piece, lettered as on the drawing."""
    lines = []
    for name, piece in solved.pieces.items():
        joins = cutting.joins.get(name, 0)
        copies = " in all" if piece.count > 1 else ""
        note = f"{say.count(joins, 'join')}{copies}" if joins else "whole"
        folded = ", folded" if piece.folded else ""
        lines.append(
            CutLine(
                letter=cutting.letters[name],
                piece=piece.label,
                cloth=_cloth(solved, piece.piece.cloth.text),
                count=str(piece.count),
                cut_length=say.cut(piece.blank[0]),
                cut_depth=say.cut(piece.blank[1]),
                finished=f"{say.length(piece.length)} x {say.length(piece.depth)}{folded}",
                note=note,
                why=_numbers(name, between_arcs=piece.ring is not None),
            )
        )
    return tuple(lines)


def _numbers(piece: str, *, between_arcs: bool) -> tuple[str, ...]:
    # Of a piece between two arcs the rectangle is cut that it lies in, and that has no name in the spec.
    cut = () if between_arcs else ("cut_length", "cut_depth")
    return tuple(f"{piece}.{size}" for size in ("length", "depth", *cut, "count"))


def _cloth(solved: Solved, name: str) -> str:
    return solved.materials[name].material.about or name.replace("_", " ")


def cutting_steps(solved: Solved, cutting: Cutting, say: Phrasing) -> tuple[GuideStep, ...]:
    """How to cut each cloth: one action a step, tapes measured from one edge so that errors do not add up."""
    told: list[Told] = []
    for name in cutting.sheets:
        sheet = cutting.sheet(name)
        told += _cloth_steps(solved, cutting, sheet, say)
    return tuple(GuideStep(number, *row) for number, row in enumerate(told, 1))


def _cloth_steps(solved: Solved, cutting: Cutting, sheet: Sheet, say: Phrasing) -> list[Told]:
    cloth, plan = _cloth(solved, sheet.material.material.name), sheet.plan
    faces = sheet.material.material.has_right_side
    told = []
    needs = max((_across(plan, section) for section in plan.sections), default=Fraction(0))
    if sheet.bolt.shrinkage:
        told.append(
            (
                f"Wash, dry and press the {cloth} before cutting: it shrinks about {say.share(sheet.bolt.shrinkage)}.",
                "It is dry all through and lies flat.",
                "",
                "Dry it longer, and press it again along its length.",
            )
        )
    fold = "Fold the cloth lengthwise, selvedge to selvedge. " if plan.folded else ""
    told.append(
        (
            f"{fold}Cut off the selvedges of the {cloth} and straighten the end that you begin at.",
            f"At least {say.cut(needs)} of width is left, and {say.cut(plan.laid_length)} of length.",
            "",
            f"If it is narrower than {say.cut(needs)}, buy it wider, or have the plan made anew for your width. If it is too"
            " short, buy what is missing before you cut anything.",
        )
    )
    for number in range(1, len(plan.sections) + 1):
        told += _section_steps(cutting, plan, number, cloth, faces, say)
    kept = _offcuts(plan, say)
    if kept:
        told.append(
            (
                f"Keep for later what is large enough of the {cloth}, each piece tagged with its size.",
                f"It is {kept}. Keep the smaller ones until the garment is done, to try stitches on and for mends.",
                "",
                "",
            )
        )
    return told


def _offcuts(plan: CuttingPlan, say: Phrasing) -> str:
    """The offcuts worth keeping, the largest first, like ones together; nothing where there are none."""
    sizes = Counter(f"{say.length(each.length)} x {say.length(each.width)}" for each in offcuts(plan))
    shown = [f"{number} of {size}" if number > 1 else size for size, number in sizes.items()]
    return listed(shown)


def _section_steps(
    cutting: Cutting, plan: CuttingPlan, number: int, cloth: str, faces: bool, say: Phrasing
) -> list[Told]:
    section, sections = plan.sections[number - 1], len(plan.sections)
    of = f"section {number} of {sections}" if sections > 1 else "the one section"
    length = say.cut(section.length)
    if faces:
        where = "on the wrong side, near the edge that is up on the drawing. Where both faces look alike, choose the wrong side now."
    else:
        where = "on one face. This cloth has no right side: the face with the tag is the wrong side from now on."
    if section.panels:
        from furbelow.s6_write.guide.panel_steps import panel_steps

        lay, cut = panel_steps(section, plan.usable_width, cutting.letters, cloth, faces, say)
    else:
        lay, cut = _lane_steps(cutting, plan, number, cloth, say)
    return [
        (
            f"Chalk a line straight across the {cloth}, {length} from its cut end.",
            f"Both ends of the line are {length} from the cut end.",
            say.off(CUT_OFF),
            "Rub the line out and chalk it again before you cut.",
        ),
        (f"Cut along the line: this is {of}.", "", "", ""),
        *lay,
        # The drawing shows which edge is up only while the cloth is in one piece.
        (
            f"Write a paper tag for each piece, with its letter and number. Pin each on as its piece is cut: {where}",
            f"{say.count(len(section.pieces), 'tag')}. A tag comes off when its piece is sewn.",
            "",
            "",
        ),
        *cut,
    ]


def _lane_steps(
    cutting: Cutting, plan: CuttingPlan, number: int, cloth: str, say: Phrasing
) -> tuple[list[Told], list[Told]]:
    """Laying the cloth over the tapes, and cutting it."""
    section = plan.sections[number - 1]
    marks = table_marks(section)
    tapes = listed([say.cut(mark.distance) for mark in marks])
    if section.across:
        lay, along = "across the table", "the left end of the table"
        level = f"Draw the {cloth} along the table over the tapes, straight and without pull, so that its cut end lies level with the left end."
    else:
        lay, along = "along the table", "the near edge of the table"
        side = "the fold" if plan.folded else "a side that had a selvedge"
        level = (
            f"Draw the {cloth} over the tapes, straight and without pull, so that {side} lies level with the near edge."
        )
    others = " Take up the tapes that lie elsewhere." if number > 1 else ""
    laid = [
        (
            (
                f"Stick paper tapes {lay}. Their far sides lie {tapes} from {along}.{others}"
                if len(marks) > 1
                else f"Stick a paper tape {lay}. Its far side lies {tapes} from {along}.{others}"
            ),
            "The last tape is at its distance at both its ends.",
            say.off(CUT_OFF / 2),
            "Measure again from the same edge, never from tape to tape. If the table is too small, work on the floor.",
        ),
        (
            level,
            "",
            "",
            "",
        ),
    ]
    table = say.room.table_length
    beyond = table is not None and section.length > table and not section.across
    cut = [
        (
            f"Cut along the far side of {'each tape' if len(marks) > 1 else 'the tape'}: {say.count(len(section.lanes), 'lane')}."
            " Where cloth hides a tape, rule a line from end to end."
            + (" At the end of the table draw the next stretch over and go on along the same tapes." if beyond else ""),
            "",
            "",
            "",
        )
    ]
    for at, lane in enumerate(section.lanes, 1):
        whole = not section.across and [segment.length for segment in lane.segments] == [section.length]
        if whole:
            text = f"Lane {at}, {say.cut(lane.depth)} deep, is {_named(cutting, lane.segments[0])}, uncut."
        else:
            cuts = listed([f"{say.cut(segment.length)} for {_named(cutting, segment)}" for segment in lane.segments])
            text = f"From lane {at}, {say.cut(lane.depth)} deep, cut {cuts}."
        cut.append((text, "", "", ""))
    return laid, cut


def _named(cutting: Cutting, segment: Segment) -> str:
    """A1, or B2, part 1 of 3."""
    part = f", part {segment.part} of {segment.parts}" if segment.parts > 1 else ""
    return f"{cutting.letters[segment.strip]}{segment.copy}{part}"


def _across(plan: CuttingPlan, section: Section) -> Fraction:
    """The width of cloth that a section really takes."""
    if section.panels:
        return max(panel.from_edge + panel.width for panel in section.panels)
    if section.across:
        return max((lane.used for lane in section.lanes), default=Fraction(0))
    lanes = sum((lane.depth for lane in section.lanes), Fraction(0))
    return min(lanes, plan.usable_width)
