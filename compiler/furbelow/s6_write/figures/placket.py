"""A placket: the slit with its stitches, and the slit spread straight on the strip that binds it."""

from __future__ import annotations

from furbelow.garment.message import Length, Pieces, Values
from furbelow.garment.technique import Performed, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, HIDDEN, INK, PLAIN, SEAM, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.placket import FOOT, Opened, stay_of

LEFT, RIGHT, MIDDLE = 90.0, 310.0, 200.0
DEEP = 120.0  # units for the slit
SPREAD = 9.0  # units from the line to the stitches beside it, at the top
ENDS, AT_FOOT = 26.0, 9.0  # units for the two seams of the strip, which would be too narrow to see


def placket(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The slit marked, stitched round and cut; then its edge spread straight on the strip."""
    words.read("figures", "figures-placket")
    if facts_of(done, Opened).in_seam:
        return None  # nothing is cut, and the strip lies along two margins as along any edge
    strip, slit, seam = word_of(done.step.written, "strip"), facts_of(done, Opened).slit, done.step.mm("seam")
    values: Values = {
        "strip": Pieces((strip,)),
        "slit": Length(slit),
        "seam-width": Length(seam),
        "foot": Length(FOOT, "about"),
        "stay": Length(stay_of(seam)),
    }
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-placket-slit"))
    y = 16.0
    foot = y + DEEP
    cuts = [wave((x, y), (x, foot + 30)) for x in (LEFT, RIGHT)]
    face(sheet, [(LEFT, y), (RIGHT, y), *cuts[1][1:], *reversed(cuts[0])], wrong=False)
    for line in cuts:
        sheet.line(line, SOFT, PLAIN)
    edge(sheet, (LEFT, y), (RIGHT, y), "raw", (0, 1))
    sheet.line([(MIDDLE, y), (MIDDLE, foot - 5)], INK, THICK)
    sheet.line([(MIDDLE - SPREAD, y), (MIDDLE, foot), (MIDDLE + SPREAD, y)], ACCENT, THICK, SEAM)
    sheet.upright(y, foot, LEFT - 18, words.said(Length(slit), "slit"), MIDDLE - SPREAD - 4, "left")
    sheet.callout((MIDDLE + 44, y + 34), numbers.at("placket-stay"), (MIDDLE + SPREAD - 3, y + 34))
    sheet.callout((MIDDLE + 44, y + 74), numbers.at("placket-cut"), (MIDDLE + 1, y + 74))
    sheet.write((MIDDLE + 10, foot + 14), words.text("figure-placket-foot"))
    y = foot + 66
    sheet.head((8, y), words.text("figure-placket-spread"))
    y += 20
    low = y + 62
    cloth = [
        (LEFT - 50, y + 2),
        (RIGHT + 24, y + 2),
        (RIGHT + 24, low),
        (MIDDLE, low - ENDS + AT_FOOT),
        (LEFT - 50, low),
    ]
    top = low - ENDS - 14
    face(sheet, [(LEFT - 50, top), (RIGHT + 24, top), (RIGHT + 24, low), (LEFT - 50, low)], wrong=False)
    face(sheet, cloth, wrong=True)
    sheet.line([(LEFT - 50, top), (RIGHT + 24, top)], INK, PLAIN, HIDDEN)
    edge(sheet, (LEFT - 50, low), (RIGHT + 24, low), "raw", (0, -1))
    sheet.line([cloth[4], cloth[3], cloth[2]], INK, THICK)
    row = low - ENDS
    sheet.line([(LEFT - 50, row), (RIGHT + 24, row)], ACCENT, THICK, SEAM)
    sheet.upright(row, low, RIGHT + 34, words.said(Length(seam), "seam-width"), RIGHT + 26)
    sheet.upright(row, row + AT_FOOT, MIDDLE + 8, "", MIDDLE)
    sheet.write((MIDDLE + 16, row + 18), words.text("figure-placket-at-foot", values), ground=True)
    sheet.callout((LEFT - 20, y + 6), numbers.at("placket-spread"))
    sheet.callout((LEFT + 40, y + 6), numbers.at("placket-sew"), (LEFT + 40, row))
    sheet.write((LEFT - 50, low + 20), words.text("figure-placket-strip", values))
    sheet.write((sheet.width / 2, low + 42), words.text("figure-not-to-scale"), "middle", colour=SOFT)
    alt, caption = words.text("figure-placket-alt", values), words.text("figure-placket-caption")
    return sheet.figure("slit", alt, caption)
