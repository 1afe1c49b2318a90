"""Where the guide tapes lie on the table: every distance from the same fold or edge, so that errors do not add up."""

from __future__ import annotations

from furbelow.garment.message import Length, Part, Things, Value, Values
from furbelow.s4_cut.marks import Mark, as_taped_before, is_taped, table_marks, turned
from furbelow.s4_cut.plan import CuttingPlan
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.language import INK, LEADING, PLAIN, SOFT, THICK, THIN
from furbelow.s6_write.figures.pen import Point, Sheet, shortened, spread, width_of
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.ranges import ranges
from furbelow.s6_write.words.words import Words

LEFT = 96.0
LONG, SHORT = 140.0, 16.0  # units for the length of the cloth; of a long section only so much is drawn
DEEP = 110.0  # units for the width of the cloth as it lies
FINEST = 0.22
_LEVEL = {
    "edge": "figure-tapes-level",
    "folded": "figure-tapes-level-folded",
    "end": "figure-tapes-level-turned",
}
ACROSS = 60.0  # units for the length of tapes across the table, cut short


def table_marks_figures(plan: CuttingPlan, words: Words, cloth: Value, key: str) -> dict[int, Figure]:
    """The tapes for each section of lanes in turn, by its number; one for which they stay as they lie is named with it."""
    words.read("figures-cutting")
    groups: list[list[int]] = []
    for number, section in enumerate(plan.sections, 1):
        if not is_taped(plan, section):
            continue  # what is cut without tapes stands in the drawing of the section
        if as_taped_before(plan, number):
            groups[-1].append(number)
        else:
            groups.append([number])
    tapes = {numbers[0]: table_marks(plan.sections[numbers[0] - 1]) for numbers in groups}
    lying = plan.usable_width / (2 if plan.folded else 1)
    deepest = max([mark.distance for marks in tapes.values() for mark in marks] + [lying])
    scale = min(FINEST, DEEP / float(deepest))
    figures: dict[int, Figure] = {}
    caption = words.text("figure-tapes-caption", {"cloth": cloth})
    for numbers in groups:
        section, marks = plan.sections[numbers[0] - 1], tapes[numbers[0]]
        turns = turned(plan, section)
        across = section.across and not turns
        told = Things(tuple(Part("figure-tapes-alt-tape", _told(mark)) for mark in marks))
        values: Values = {"sections": ranges(numbers), "count": len(numbers), "tapes": told}
        named = words.text("figure-tapes-sections", values)
        start = words.text("figure-tapes-from-end" if across else "figure-tapes-from-edge")
        sheet = Sheet()
        sheet.head((8, 0), named)
        beside = 13 + width_of(named, True)
        sheet.write((beside, 0), shortened(start, sheet.width - beside - 8))
        folded = plan.folded and not section.across
        if across:
            _tapes_across(sheet, 38, marks, words)
        else:
            high, long = (section.length, plan.usable_width) if turns else (lying, section.length)
            right = LEFT + min(LONG, max(SHORT, float(long) * scale))
            level = "end" if turns else "folded" if folded else "edge"
            _tapes_along(sheet, 38, float(high) * scale, right, marks, scale, words, level)
        alt = words.text("figure-tapes-alt-end" if across else "figure-tapes-alt-edge", values)
        # The distances stand in the sentence too; how tapes lie is drawn once.
        like = f"tapes {across} {turns} {folded}"
        name = f"{key}-{len(figures) + 1}" if figures else key
        figures[numbers[0]] = sheet.figure(name, alt, caption, like=like)
    return figures


def _tapes_along(
    sheet: Sheet,
    y: float,
    high: float,
    right: float,
    marks: tuple[Mark, ...],
    scale: float,
    words: Words,
    level: str,
) -> None:
    """The cloth as it lies before the maker; level: what of it lies on the near edge of the table."""
    low = y + high
    sheet.line(
        [(LEFT - 14, low), (LEFT - 14, y - 16), (right + 14, y - 16), (right + 14, low)], SOFT, THIN, closed=True
    )
    face(sheet, [(LEFT, y), (right, y), (right, low), (LEFT, low)], wrong=False)
    sheet.line([(LEFT, low), (LEFT, y), (right, y), (right, low)], INK, PLAIN, closed=True)
    if level == "folded":
        # The layer below shows at the open edge.
        sheet.line([(LEFT + 3, y), (LEFT + 3, y - 3), (right, y - 3)], INK, PLAIN)
        edge(sheet, (LEFT, low), (right, low), "fold", (0, -1), worked=True)
    for mark in marks:
        _tape(
            sheet,
            [(LEFT - 22, low - float(mark.distance) * scale), (right + 22, low - float(mark.distance) * scale)],
            (0, 3),
        )
    heights = [LEADING] * len(marks)
    upwards = marks[::-1]  # words are spread from the top of the sheet down
    places = spread([low - float(mark.distance) * scale + 1 for mark in upwards], heights, y - 8, low + 2)
    for mark, middle in zip(upwards, places, strict=True):
        sheet.line([(right + 22, low - float(mark.distance) * scale), (right + 30, middle)], SOFT, THIN)
        distance = words.said(Length(mark.distance, "cut"))
        sheet.write((right + 33, middle + 4.5), distance, bold=True)
        beside = right + 38 + width_of(distance, True)
        sheet.write((beside, middle + 4.5), words.text("figure-tapes-lanes", _told(mark)))
    between = spread([low - float(mark.distance - mark.depth / 2) * scale for mark in upwards], heights, y - 8, low + 2)
    for mark, middle in zip(upwards, between, strict=True):
        at = low - float(mark.distance - mark.depth / 2) * scale
        sheet.line([(LEFT - 12, middle), (LEFT - 1, at)], SOFT, THIN)
        depth = words.text("figure-tapes-half", _told(mark)) if mark.on_fold else words.said(Length(mark.depth, "cut"))
        sheet.write((LEFT - 26, middle + 4.5), depth, "end")
    below = max([low, *places, *between]) + 20  # many words reach further down than the cloth
    sheet.write((8, below), words.text(_LEVEL[level]), colour=SOFT)


def _tapes_across(sheet: Sheet, y: float, marks: tuple[Mark, ...], words: Words) -> None:
    """The cloth along the table, its cut end level with the left end; tapes numbered, their distances listed below."""
    left, right, low = 20.0, sheet.width - 20.0, y + ACROSS
    scale = (right - left) / float(marks[-1].distance)
    sheet.line([(left, y - 8), (right + 12, y - 8), (right + 12, low + 8), (left, low + 8)], SOFT, THIN, closed=True)
    face(sheet, [(left, y), (right, y), (right, low), (left, low)], wrong=False)
    sheet.line([(left, low), (left, y), (right, y), (right, low)], INK, PLAIN, closed=True)
    for number, mark in enumerate(marks, 1):
        at = left + float(mark.distance) * scale
        _tape(sheet, [(at, y - 14), (at, low + 14)], (-3, 0))
        sheet.write((at - float(mark.depth) * scale / 2, (y + low) / 2 + 4.5), str(number), "middle", bold=True)
    sheet.write((left, low + 30), words.text("figure-tapes-level-end"), colour=SOFT)
    row = low + 30
    for number, mark in enumerate(marks, 1):
        row += LEADING
        sheet.write((left, row), words.text("figure-tapes-number", {"number": number}))
        distance = words.said(Length(mark.distance, "cut"))
        sheet.write((left + 22, row), distance, bold=True)
        x = left + 27 + width_of(distance, True)
        sheet.write((x, row), words.text("figure-tapes-lanes-deep", _told(mark)))


def _tape(sheet: Sheet, far_side: list[Point], near: Point) -> None:
    """A tape with its far side thick; `near` leads from there over the width of the tape."""
    sheet.line(far_side, INK, THICK)
    sheet.line([(x + near[0], y + near[1]) for x, y in far_side], INK, PLAIN, (2, 3))


def _told(mark: Mark) -> Values:
    return {"distance": Length(mark.distance, "cut"), "depth": Length(mark.depth, "cut"), "lanes": Things(mark.lanes)}
