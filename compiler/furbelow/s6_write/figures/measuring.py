"""Where the tape lies on the body: a plain standing figure from the front with the line of each measure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import cos, pi, sin

from furbelow.garment.message import Own, Part, Things
from furbelow.named import NamedTuple
from furbelow.s6_write.figures.language import ACCENT, HEAVY, INK, PLAIN, RIGHT_SIDE, SOFT, THIN
from furbelow.s6_write.figures.pen import Point, Sheet
from furbelow.s6_write.guide.guide import Figure, Measure
from furbelow.s6_write.words.words import Words

WIDTH, HIGH = 268.0, 340.0  # units; the sheet is narrower than others, for a column beside the form to fill in
MIDDLE = 158.0
# Half the width of a standing figure at heights above the floor, as shares of its height; drawn by eye.
OUTER = (
    (0.0, 0.05), (0.02, 0.05), (0.05, 0.03), (0.2, 0.058), (0.27, 0.057), (0.35, 0.078), (0.48, 0.106), (0.53, 0.108),
    (0.58, 0.09), (0.625, 0.08), (0.68, 0.09), (0.73, 0.102), (0.77, 0.104), (0.8, 0.122), (0.82, 0.116), (0.84, 0.06),
    (0.85, 0.034), (0.875, 0.03),
)  # fmt: skip  # pairs read better side by side
INNER = ((0.0, 0.006), (0.05, 0.006), (0.2, 0.012), (0.27, 0.014), (0.44, 0.008), (0.465, 0.0))


class _Line(NamedTuple):
    """A girth round the body at `at`, or a length upright from there down to another height or the floor."""

    at: float
    down_to: float | None = None


# Levels as shares of the height; proportions for drawing, from memory.
LINES: Mapping[str, _Line] = {
    "height": _Line(1.0, 0.0),
    "neck_girth": _Line(0.858),
    "chest_girth": _Line(0.73),
    "waist_girth": _Line(0.625),
    "waist_height": _Line(0.625, 0.0),
    "hip_girth": _Line(0.51),
    "hip_height": _Line(0.51, 0.0),
    "hip_depth": _Line(0.625, 0.51),
    "knee_height": _Line(0.27, 0.0),
}


def measuring(measures: Sequence[Measure], words: Words) -> Figure | None:
    """None where none of the measures has a line."""
    shown = [(measure, LINES[measure.name]) for measure in measures if measure.number]
    if not shown:
        return None
    words.read("front")
    sheet = Sheet(WIDTH)
    for side in (1, -1):
        sheet.line([_at(high, side * wide) for high, wide in OUTER], INK, PLAIN)
        sheet.line([_at(high, side * wide) for high, wide in INNER], INK, PLAIN)
    sheet.line(_round(0.935, 0.048, 0.062), INK, PLAIN, fill=RIGHT_SIDE, closed=True)
    sheet.line([(8, HIGH), (WIDTH - 8, HIGH)], INK, PLAIN)
    sheet.write((WIDTH - 8, HIGH + 16), words.text("front-floor"), "end", colour=SOFT)
    uprights = [pair for pair in shown if pair[1].down_to is not None]
    for measure, line in shown:
        if line.down_to is None:
            _girth(sheet, measure, line)
    for place, (measure, line) in enumerate(sorted(uprights, key=lambda pair: -pair[1].at)):
        _upright(sheet, measure, line, 22 + 32 * place)
    told = Things(
        tuple(Part("front-drawn", {"number": each.number, "how": Own(each.how)}) for each, _ in shown), "clauses"
    )
    return sheet.figure("measuring", words.text("front-measuring-alt", {"lines": told}), words.text("front-measuring"))


def _girth(sheet: Sheet, measure: Measure, line: _Line) -> None:
    wide = _wide(line.at)
    front = [(MIDDLE + wide * HIGH * cos(a * pi / 12), _y(line.at) + 7 * sin(a * pi / 12)) for a in range(13)]
    back = [(x, 2 * _y(line.at) - y) for x, y in front]
    sheet.line(back, ACCENT, PLAIN, (3, 3))
    sheet.line(front, ACCENT, HEAVY)
    x = MIDDLE + wide * HIGH
    sheet.line([(x + 3, _y(line.at)), (x + 17, _y(line.at))], SOFT, THIN)
    sheet.callout((x + 26, _y(line.at)), measure.number)


def _upright(sheet: Sheet, measure: Measure, line: _Line, x: float) -> None:
    top, bottom = _y(line.at), _y(line.down_to or 0.0)
    sheet.line([(x - 6, top), (MIDDLE - _wide(min(line.at, 0.875)) * HIGH, top)], SOFT, THIN, (3, 3))
    sheet.line([(x, top), (x, bottom)], ACCENT, HEAVY)
    for y in (top, bottom):
        sheet.line([(x - 5, y), (x + 5, y)], ACCENT, HEAVY)
    sheet.callout((x, (top + bottom) / 2), measure.number)


def _at(high: float, wide: float) -> Point:
    return MIDDLE + wide * HIGH, _y(high)


def _y(high: float) -> float:
    return HIGH * (1 - high)


def _round(high: float, wide: float, tall: float) -> list[Point]:
    return [_at(high + tall * sin(a * pi / 12), wide * cos(a * pi / 12)) for a in range(24)]


def _wide(high: float) -> float:
    """Half the width at a height, between the two that are given."""
    for (low, narrow), (top, wide) in zip(OUTER, OUTER[1:], strict=False):
        if low <= high <= top:
            return narrow + (wide - narrow) * (high - low) / (top - low)
    return 0.05
