"""Gores in their rectangles, with the slanting lines between them; to scale."""

from __future__ import annotations

from furbelow.garment.gore import Gore, Row, lines_of, slope
from furbelow.garment.message import Length, Values, flag
from furbelow.garment.tags import place_sign
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import face, left_over
from furbelow.s6_write.figures.language import ACCENT, INK, LEADING, PLAIN, SOFT, THICK, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet, spread, width_of
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.gores import row_said

WIDEST, HIGHEST, MIDDLE = 230.0, 200.0, 195.0  # units
ROW_HIGH = 120.0
SAME, APART = 1.0, 10.0  # two marks nearer to each other are one place; between the letters of two places


def gores(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    words.read("figures", "figures-gores")
    gore = facts_of(done, Gore)
    return _rows(gore, words, numbers) if gore.both else _one_rectangle(gore, words, numbers)


def _one_rectangle(gore: Gore, words: Words, numbers: Numbers) -> Figure:
    """The rectangle with its one line, its measures written to it."""
    wide, high = gore.blank
    values: Values = {
        "wide": Length(wide, "cut"),
        "high": Length(high, "cut"),
        "narrow": Length(gore.cut_top),
        "broad": Length(gore.cut_bottom),
        "paired": flag(gore.paired),
    }
    scale = min(WIDEST / float(wide), HIGHEST / float(high))
    across, deep = float(wide) * scale, float(high) * scale
    narrow, broad = float(gore.cut_top) * scale, float(gore.cut_bottom) * scale
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-gores-head"))
    x, y = MIDDLE - across / 2, 50.0
    low = y + deep
    corners = [(x, y), (x + across, y), (x + across, low), (x, low)]
    face(sheet, [(x, y), (x + narrow, y), (x + broad, low), (x, low)], wrong=False)
    rest = [(x + narrow, y), (x + across, y), (x + across, low), (x + broad, low)]
    if gore.paired:
        face(sheet, rest, wrong=False)
    else:
        left_over(sheet, rest[:3])
    sheet.line([*corners, corners[0]], INK, PLAIN)
    sheet.line([(x + narrow, y), (x + broad, low)], ACCENT, THICK)
    sheet.across(x, x + narrow, y - 14, words.value(values, "narrow"), y - 2)
    sheet.across(x, x + broad, low + 16, words.value(values, "broad"), low + 2, below=True)
    sheet.across(x, x + across, low + 46, words.value(values, "wide"), low + 2, below=True)
    sheet.upright(y, low, x + across + 16, words.value(values, "high"), x + across + 2)
    middle = (x + (narrow + broad) / 2, (y + low) / 2)
    cut = numbers.at("gores-mark-pair", "gores-mark-one")
    sheet.callout((x - 30, middle[1]), cut, (middle[0], middle[1]))
    sheet.write((x + 6, y + 16), words.text("figure-gores-top"), ground=True)
    sheet.write((x + 6, low - 8), words.text("figure-gores-hem"), ground=True)
    return sheet.figure("gores", words.text("figure-gores-alt", values), words.text("figure-gores-caption"))


def _rows(gore: Gore, words: Words, numbers: Numbers) -> Figure:
    """Each way in which a rectangle is marked, its lines by the letters that the guide measures them under."""
    wide, high = gore.blank
    scale = min(WIDEST / float(wide), ROW_HIGH / float(high))
    sheet, y, alike = Sheet(), 0.0, gore.alike()
    told = []
    for row, many in alike:
        values: Values = {
            **row_said(gore, row),
            "wide": Length(wide, "cut"),
            "high": Length(high, "cut"),
            "diagonal": Length(slope(wide, high)),
            "times": many,
            "count": len(row),
        }
        sheet.head((8, y), words.text("figure-gores-row-head", values))
        y = _row(sheet, (MIDDLE - float(wide) * scale / 2, y + 38), scale, gore, row, words, values)
        told.append(words.text("figure-gores-row-alt", values))
    sheet.callout(
        (MIDDLE - WIDEST / 2 - 28, 50), numbers.at("gores-mark-row"), (MIDDLE - float(wide) * scale / 2 + 12, 60)
    )
    return sheet.figure("gores", " ".join(told), words.text("figure-gores-caption"))


def _row(
    sheet: Sheet, at: tuple[float, float], scale: float, gore: Gore, row: Row, words: Words, values: Values
) -> float:
    """One rectangle with its gores; how far down it reaches."""
    wide, high = gore.blank
    (x, y), across, deep = at, float(wide) * scale, float(high) * scale
    low = y + deep
    corners = [(x, y), (x + across, y), (x + across, low), (x, low)]
    left_over(sheet, corners)
    for laid in row:
        upper, lower = ([x + float(end) * scale for end in ends] for ends in (laid.upper, laid.lower))
        face(sheet, [(upper[0], y), (upper[1], y), (lower[1], low), (lower[0], low)], wrong=False)
        narrow_up = laid.upper[1] - laid.upper[0] < laid.lower[1] - laid.lower[0]
        middle, line = (sum(upper) / 2, y + 16) if narrow_up else (sum(lower) / 2, low - 8)
        sheet.write((middle, line), words.text("figure-gores-top"), "middle", ground=True)
    sheet.line([*corners, corners[0]], INK, PLAIN)
    sheet.line([corners[0], corners[2]], SOFT, THIN, (3, 3))
    lines = lines_of(row, wide)
    sheet.lines(
        [[(x + float(above) * scale, y), (x + float(below) * scale, low)] for above, below in lines], ACCENT, THICK
    )
    for side, edge, away in ((0, y, -1), (1, low, 1)):
        named = _lettered([x + float(line[side]) * scale for line in lines])
        wide_as = [width_of(", ".join(letters), True) + APART for letters, _ in named]
        places = spread([place for _, place in named], wide_as, 0, sheet.width)
        for (letters, place), stands in zip(named, places, strict=True):
            sheet.lines([[(place, edge), (stands, edge + 7 * away)]])
            sheet.place((stands, edge + (18 if away > 0 else -10)), letters, "middle")
    sheet.upright(y, low, x + across + 16, words.value(values, "high"), x + across + 2)
    sheet.across(x, x + across, low + 38, words.value(values, "wide"), low + 22, below=True)
    sheet.write((MIDDLE, low + 66), words.text("figure-gores-diagonal", values), "middle", colour=SOFT)
    return low + 66 + 2 * LEADING


def _lettered(places: list[float]) -> list[tuple[tuple[str, ...], float]]:
    """A letter for each place, those of one place together."""
    found: list[tuple[tuple[str, ...], float]] = []
    for number, place in enumerate(places):
        letter = place_sign(number + 1)
        if found and place - found[-1][1] < SAME:
            letters, at = found.pop()
            found.append(((*letters, letter), at))
        else:
            found.append(((letter,), place))
    return found
