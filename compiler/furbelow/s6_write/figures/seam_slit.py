"""The open end of a seam at the hem: a slit from the right side, or a vent from within."""

from __future__ import annotations

from furbelow.garment.message import Length, Values
from furbelow.garment.technique import Performed, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, FOLD, INK, PLAIN, SEAM, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.slit import BESIDE, VENT, SlitSewn

LEFT, RIGHT, MIDDLE = 100.0, 300.0, 200.0
ABOVE, DEEP, NEAR, WIDE = 46.0, 110.0, 12.0, 34.0  # units, not to scale


def seam_slit(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    words.read("figures", "figures-seam-slit")
    facts, vent = facts_of(done, SlitSewn), word_of(done.step.written, "as") == VENT
    values: Values = {
        "long": Length(facts.long),
        "beside": Length(BESIDE, "about"),
        "margin": Length(facts.seam.width),
    }
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-slit-head-vent" if vent else "figure-slit-head"))
    y = 16.0
    end, low = y + ABOVE, y + ABOVE + DEEP
    outline = [(LEFT, y), (RIGHT, y), (RIGHT, low), (LEFT, low)]
    face(sheet, outline, wrong=vent)
    for x in (LEFT, RIGHT):
        sheet.line(wave((x, y), (x, low)), SOFT, PLAIN)
    sheet.line(wave((LEFT, y), (RIGHT, y)), SOFT, PLAIN)
    edge(sheet, (LEFT, low), (RIGHT, low), "hemmed", (0, -1))
    sheet.line([(MIDDLE, y), (MIDDLE, end)], INK, PLAIN, SEAM)
    if vent:
        # One margin stands out beneath, the other is folded back on its own side.
        sheet.line([(MIDDLE, end), (MIDDLE, low)], INK, PLAIN, FOLD)
        sheet.line([(MIDDLE + WIDE, end), (MIDDLE + WIDE, low)], INK, THICK)
        sheet.line([(MIDDLE - WIDE, end), (MIDDLE - WIDE, low)], INK, PLAIN)
        sheet.line([(MIDDLE - WIDE + 8, end), (MIDDLE - WIDE + 8, low)], ACCENT, THICK, SEAM)
        sheet.line([(MIDDLE - WIDE, end + 10), (MIDDLE + WIDE, end - 12)], ACCENT, THICK, SEAM)
        sheet.across(MIDDLE, MIDDLE + WIDE, low + 20, words.value(values, "margin"), low + 4, below=True)
        sheet.callout((RIGHT + 30, end - 12), numbers.at("slit-across-vent"), (MIDDLE + WIDE, end - 12))
        sheet.callout((LEFT - 30, low - 30), numbers.at("slit-hold-vent"), (MIDDLE - WIDE + 8, low - 30))
    else:
        sheet.line([(MIDDLE - 1.5, end), (MIDDLE - 1.5, low)], INK, PLAIN)
        sheet.line([(MIDDLE + 1.5, end), (MIDDLE + 1.5, low)], INK, PLAIN)
        row = [(MIDDLE - NEAR, low), (MIDDLE - NEAR, end - 4), (MIDDLE + NEAR, end - 4), (MIDDLE + NEAR, low)]
        sheet.line(row, ACCENT, THICK, SEAM)
        sheet.line([(MIDDLE - NEAR + 2, end - 1), (MIDDLE + NEAR - 2, end - 1)], ACCENT, THICK)
        sheet.across(MIDDLE, MIDDLE + NEAR, low + 20, words.value(values, "beside"), low + 4, below=True)
        sheet.callout((RIGHT + 30, low - 50), numbers.at("slit-sew"), (MIDDLE + NEAR, low - 50))
        sheet.callout((LEFT - 30, end - 1), numbers.at("slit-bar"), (MIDDLE - NEAR + 2, end - 1))
    sheet.upright(
        end, low, LEFT - 14, words.value(values, "long"), MIDDLE - WIDE - 4 if vent else MIDDLE - NEAR - 4, "left"
    )
    sheet.paragraph((RIGHT + 14, end + 18), words.text("figure-slit-end"), 80)
    sheet.write((sheet.width / 2, low + 52), words.text("figure-not-to-scale"), "middle", colour=SOFT)
    alt = words.text("figure-slit-alt-vent" if vent else "figure-slit-alt", values)
    return sheet.figure("slit", alt, words.text("figure-slit-caption"))
