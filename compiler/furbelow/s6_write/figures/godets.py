"""A slit and its godet: the slit as it is marked and stitched round, the godet beside it, and both sewn together."""

from __future__ import annotations

from furbelow.garment.message import Length, Values
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, SEAM, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.godets import SetIn

HIGH, WIDE, MARGIN = 120.0, 96.0, 34.0  # units
BESIDE = 5.0  # the row beside the slit is drawn so far from it


def godets(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Left the slit from the right side, right the godet set in."""
    words.read("figures-godets")
    facts = facts_of(done, SetIn)
    values: Values = {
        "slit": Length(facts.slit),
        "wide": Length(facts.wide),
        "every": Length(facts.apart),
        "many": facts.many,
    }
    scale = min(HIGH / float(facts.slit), WIDE / float(facts.wide))
    deep, half = float(facts.slit) * scale, float(facts.wide) * scale / 2
    sheet, top = Sheet(), 30.0
    point, low = top + MARGIN, top + MARGIN + deep
    left, right = 60.0, 270.0
    sheet.head((8, 0), words.text("figure-godets-slit"))
    face(sheet, [(left - 44, top), (left + 44, top), (left + 44, low), (left - 44, low)], wrong=False)
    edge(sheet, (left - 44, low), (left + 44, low), "raw", (0, -1))
    sheet.line([(left - BESIDE, low), (left, point - 3), (left + BESIDE, low)], INK, PLAIN, SEAM)
    sheet.line([(left, point), (left, low)], ACCENT, THICK)
    sheet.upright(point, low, left + 62, words.value(values, "slit"), left + 46)
    sheet.callout((left - 28, point - 14), numbers.at("godets-hold"), (left - 2, point + 4))
    sheet.callout((left - 28, low - 20), numbers.at("godets-cut"), (left, low - 20))
    sheet.head((right - 70, 0), words.text("figure-godets-set-in"))
    outer = half + 40
    face(sheet, [(right - outer, top), (right + outer, top), (right + outer, low), (right - outer, low)], wrong=False)
    face(sheet, [(right, point), (right + half, low), (right - half, low)], wrong=False)
    edge(sheet, (right - outer, low), (right + outer, low), "raw", (0, -1))
    sheet.line([(right - half, low), (right, point), (right + half, low)], ACCENT, THICK, SEAM)
    sheet.across(right - half, right + half, low + 16, words.value(values, "wide"), low + 4, below=True)
    sheet.callout((right - outer + 14, point + 6), numbers.at("godets-sew"), (right - half * 0.3, point + deep * 0.3))
    sheet.callout((right + outer - 14, point + 6), numbers.at("godets-other"), (right + half * 0.3, point + deep * 0.3))
    alt, caption = (words.text(name, values) for name in ("figure-godets-alt", "figure-godets-caption"))
    return sheet.figure("godets", alt, caption)
