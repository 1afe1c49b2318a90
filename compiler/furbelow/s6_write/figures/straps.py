"""An end of a shoulder strap, sewn inside the top edge; not to scale."""

from __future__ import annotations

from furbelow.garment.message import Length, Values
from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, FOLD, INK, PLAIN, SEAM, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

LEFT, RIGHT, MIDDLE = 90.0, 310.0, 200.0
UP, DEEP, BELOW, HALF = 54.0, 46.0, 50.0, 22.0  # units


def straps(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    words.read("figures", "figures-straps")
    values: Values = {"lap": Length(done.step.mm("lap")), "under": Length(done.step.mm("turn under"))}
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-straps-inside"))
    y = 16.0 + UP
    low = y + DEEP + BELOW
    face(sheet, [(LEFT, y), (RIGHT, y), (RIGHT, low), (LEFT, low)], wrong=True)
    for line in (wave((LEFT, y), (LEFT, low)), wave((RIGHT, y), (RIGHT, low)), wave((LEFT, low), (RIGHT, low))):
        sheet.line(line, SOFT, PLAIN)
    edge(sheet, (LEFT, y), (RIGHT, y), "hemmed", (0, 1))
    foot = y + DEEP
    strap = [(MIDDLE - HALF, y - UP + 8), (MIDDLE + HALF, y - UP + 8), (MIDDLE + HALF, foot), (MIDDLE - HALF, foot)]
    face(sheet, strap, wrong=False)
    sheet.line([strap[0], strap[3]], INK, PLAIN)
    sheet.line([strap[1], strap[2]], INK, PLAIN)
    sheet.line(wave(strap[0], strap[1]), SOFT, PLAIN)
    sheet.line([strap[3], strap[2]], INK, THICK, FOLD)
    near = 5.0
    box = [
        (MIDDLE - HALF + near, y + near),
        (MIDDLE + HALF - near, y + near),
        (MIDDLE + HALF - near, foot - near),
        (MIDDLE - HALF + near, foot - near),
    ]
    sheet.line([*box, box[0]], ACCENT, THICK, SEAM)
    sheet.upright(y, foot, RIGHT + 14, words.value(values, "lap"), MIDDLE + HALF + 4)
    sheet.callout((LEFT - 34, y + DEEP / 2), numbers.at("straps-fasten"), (MIDDLE - HALF + near, y + DEEP / 2))
    sheet.callout((LEFT - 34, foot + 18), numbers.at("straps-pin"), (MIDDLE - HALF + 2, foot))
    sheet.write((sheet.width / 2, low + 24), words.text("figure-not-to-scale"), "middle", colour=SOFT)
    return sheet.figure("straps", words.text("figure-straps-alt", values), words.text("figure-straps-caption"))
