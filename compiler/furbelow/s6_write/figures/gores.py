"""Gores in their rectangle, with the slanting line between them; to scale."""

from __future__ import annotations

from furbelow.garment.gore import Gore
from furbelow.garment.message import Length, Values, flag
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import face, left_over
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

WIDEST, HIGHEST, MIDDLE = 230.0, 200.0, 195.0  # units


def gores(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    words.read("figures", "figures-gores")
    gore = facts_of(done, Gore)
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
    sheet.write((8, 0), words.text("figure-gores-head"), bold=True)
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
    sheet.across(x, x + narrow, y - 14, words.said(values["narrow"]), y - 2)
    sheet.across(x, x + broad, low + 16, words.said(values["broad"]), low + 2, below=True)
    sheet.across(x, x + across, low + 46, words.said(values["wide"]), low + 2, below=True)
    sheet.upright(y, low, x + across + 16, words.said(values["high"]), x + across + 2)
    middle = (x + (narrow + broad) / 2, (y + low) / 2)
    cut = numbers.at("gores-mark-pair", "gores-mark-one")
    sheet.callout((x - 30, middle[1]), cut, (middle[0], middle[1]))
    sheet.write((x + 6, y + 16), words.text("figure-gores-top"), ground=True)
    sheet.write((x + 6, low - 8), words.text("figure-gores-hem"), ground=True)
    return Figure("gores", sheet.svg(), words.text("figure-gores-alt", values), words.text("figure-gores-caption"))
