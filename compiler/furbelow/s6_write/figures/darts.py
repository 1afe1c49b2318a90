"""A dart as it is marked, and as it is folded and sewn; lengths to one scale."""

from __future__ import annotations

from furbelow.garment.message import Length, Values
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.language import ACCENT, FOLD, INK, PLAIN, SEAM, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.darts import Sewed

HIGH, WIDE = 120.0, 120.0  # units: the length of a dart, and the most that its width is drawn
LEFT, BESIDE, BELOW = 150.0, 66.0, 26.0


def darts(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Wrong side up, the edge above; then folded on the middle line."""
    words.read("figures-darts")
    facts = facts_of(done, Sewed)
    values: Values = {
        "intake": Length(facts.wide),
        "half": Length(facts.wide / 2),
        "long": Length(facts.end),
        "leg": Length(facts.leg),
    }
    scale = min(HIGH / float(facts.end), WIDE / float(facts.wide))
    half, deep = float(facts.wide) * scale / 2, float(facts.end) * scale
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-darts-marked"))
    x, y = LEFT, 56.0
    point, corners = (x, y + deep), ((x - half, y), (x + half, y))
    left, right, low = x - half - BESIDE, x + half + BESIDE, y + deep + BELOW
    face(sheet, [(left, y), (right, y), (right, low), (left, low)], wrong=True)
    edge(sheet, (left, y), (right, y), "raw", (0, 1))
    sheet.line([(x, y), point], INK, PLAIN, FOLD)
    for corner in corners:
        sheet.line([corner, point], ACCENT, THICK)
    half_said = words.value(values, "half")
    sheet.across(x - half, x, y - 26, half_said, y - 4)
    sheet.across(x, x + half, y - 10, half_said, y - 4)
    sheet.upright(y, y + deep, right + 14, words.value(values, "long"), right + 2)
    leg = words.text("figure-darts-leg", values)
    sheet.line([(x - half / 2, y + deep / 2), (left - 6, y + deep / 2)], SOFT, PLAIN)
    sheet.write((left - 10, y + deep / 2 + 4), leg, "end")
    sheet.callout((right - 16, low - 18), numbers.at("darts-legs"), (x + half / 4, y + deep * 0.75))
    y = low + 40
    sheet.head((8, y), words.text("figure-darts-sewn"))
    y += 34
    fold, low = LEFT - 40, y + deep + BELOW
    face(sheet, [(fold, y), (right, y), (right, low), (fold, low)], wrong=True)
    edge(sheet, (fold, y), (right, y), "raw", (0, 1))
    edge(sheet, (fold, y), (fold, low), "fold", (1, 0))
    sheet.line([(fold + half, y), (fold, y + deep)], ACCENT, THICK, SEAM)
    sheet.across(fold, fold + half, y - 10, half_said, y - 4)
    sheet.callout((fold + half + 40, y + deep / 2), numbers.at("darts-sew"), (fold + half / 2, y + deep / 2))
    sheet.callout((fold - 30, y + deep + 4), numbers.at("darts-knot"), (fold, y + deep))
    return sheet.figure("darts", words.text("figure-darts-alt", values), words.text("figure-darts-caption"))
