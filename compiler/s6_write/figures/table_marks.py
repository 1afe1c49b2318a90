"""Where the guide tapes lie on the table: every distance from the same fold or edge, so that errors do not add up."""

from __future__ import annotations

from compiler.s4_cut.marks import Mark, table_marks
from compiler.s4_cut.plan import CuttingPlan
from compiler.s6_write.figures.edges import edge, face
from compiler.s6_write.figures.language import INK, LEADING, PLAIN, SOFT, THICK, THIN
from compiler.s6_write.figures.pen import Sheet, shortened, spread, width_of
from compiler.s6_write.guide import Figure
from compiler.say import Say, listed

LEFT, RIGHT = 96.0, 236.0
DEEP = 240.0  # units for the width of the cloth as it lies
FINEST = 0.35
TALL = 620.0  # units of one figure, where sections allow it


def table_marks_figures(plan: CuttingPlan, say: Say, cloth: str, key: str) -> tuple[Figure, ...]:
    """The tapes for each section of lanes in turn, as many in a figure as are easily read.

    A section with the tapes of the one before is named with it.
    """
    groups: list[tuple[list[int], tuple[Mark, ...]]] = []
    for number, section in enumerate(plan.sections, 1):
        if section.panels:
            continue  # their places stand in the drawing of the section
        marks = table_marks(section)
        if groups and groups[-1][1] == marks:
            groups[-1][0].append(number)
        else:
            groups.append(([number], marks))
    lying = plan.usable_width / (2 if plan.folded else 1)
    deepest = max([mark.distance for _, marks in groups for mark in marks] + [lying])
    scale = min(FINEST, DEEP / float(deepest))
    figures: list[Figure] = []
    sheet, y, told = Sheet(), 0.0, list[str]()
    caption = f"Guide tapes on the table for the {cloth}, across to scale. Slit along each tape."
    for numbers, marks in groups:
        across = plan.sections[numbers[0] - 1].across
        shown = marks[-1].distance if across else lying
        if told and y + float(shown) * scale > TALL:
            figures.append(Figure(_key(key, figures), sheet.svg(), " ".join(told), caption))
            sheet, y, told = Sheet(), 0.0, []
        start = "start of the section" if across else ("fold" if plan.folded else "edge")
        named = f"Section{'s' if len(numbers) > 1 else ''} {listed([str(number) for number in numbers])}"
        sheet.write((8, y), named, bold=True)
        beside = 13 + width_of(named, True)
        sheet.write((beside, y), shortened(f"tapes measured from the {start}", sheet.width - beside - 8))
        y = _table(sheet, y + 38, float(shown) * scale, marks, scale, say, start, plan.folded and not across) + 34
        rows = listed([f"{say.length(mark.distance)} ({_lanes(mark)})" for mark in marks])
        told.append(f"{named}: tapes at {rows} from the {start}.")
    if told:
        figures.append(Figure(_key(key, figures), sheet.svg(), " ".join(told), caption))
    return tuple(figures)


def _key(key: str, before: list[Figure]) -> str:
    return f"{key}-{len(before) + 1}" if before else key


def _table(
    sheet: Sheet, y: float, high: float, marks: tuple[Mark, ...], scale: float, say: Say, start: str, folded: bool
) -> float:
    """The cloth on the table with its fold or edge above; how far down it reaches."""
    low = y + high
    table = [(LEFT - 14, y - 24), (RIGHT + 14, y - 24), (RIGHT + 14, low + 10), (LEFT - 14, low + 10)]
    sheet.line(table, SOFT, THIN, closed=True)
    face(sheet, [(LEFT, y), (RIGHT, y), (RIGHT, low), (LEFT, low)], wrong=False)
    sheet.line([(LEFT, low), (LEFT, y), (RIGHT, y), (RIGHT, low)], INK, PLAIN, closed=True)
    if folded:
        # The layer below shows at the open edge.
        sheet.line([(LEFT + 3, low), (LEFT + 3, low + 3), (RIGHT, low + 3)], INK, PLAIN)
        edge(sheet, (LEFT, y), (RIGHT, y), "fold", (0, 1), worked=True)
    sheet.write(((LEFT + RIGHT) / 2, y - 8), start, "middle", colour=SOFT)
    for mark in marks:
        at = y + float(mark.distance) * scale
        sheet.line([(LEFT - 22, at), (RIGHT + 22, at)], INK, THICK)
        sheet.line([(LEFT - 22, at + 3), (RIGHT + 22, at + 3)], INK, PLAIN, (2, 3))
    heights = [LEADING] * len(marks)
    places = spread([y + float(mark.distance) * scale + 1 for mark in marks], heights, y - 8, low + 12)
    for mark, middle in zip(marks, places, strict=True):
        sheet.line([(RIGHT + 22, y + float(mark.distance) * scale), (RIGHT + 30, middle)], SOFT, THIN)
        sheet.write((RIGHT + 33, middle + 4.5), say.length(mark.distance), bold=True)
        x = RIGHT + 38 + width_of(say.length(mark.distance), True)
        sheet.write((x, middle + 4.5), _lanes(mark))
    between = [y + float(mark.distance - mark.depth / 2) * scale for mark in marks]
    for mark, at, middle in zip(marks, between, spread(between, heights, y - 8, low + 12), strict=True):
        sheet.line([(LEFT - 12, middle), (LEFT - 1, at)], SOFT, THIN)
        half = " half" if mark.on_fold else ""
        sheet.write((LEFT - 26, middle + 4.5), f"{say.length(mark.depth)}{half}", "end")
    return max(low + 12, places[-1] + 8 if places else low)


def _lanes(mark: Mark) -> str:
    return f"lane{'s' if len(mark.lanes) > 1 else ''} {listed([str(lane) for lane in mark.lanes])}"
