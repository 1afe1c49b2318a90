"""A bias strip: the square cut across, and its halves joined with the lines of the strip; not to scale."""

from __future__ import annotations

from furbelow.garment.bias import BiasStrip
from furbelow.garment.message import Length, Values
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import face
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, SEAM, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

SIDE = 110.0  # units
LINES = 4  # drawn, however many there are


def bias_strip(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    words.read("figures", "figures-bias-strip")
    strip, piece = facts_of(done, BiasStrip), done.touches[0]
    side = run.solved.pieces[piece].blank[0]
    values: Values = {"side": Length(side, "cut"), "width": Length(strip.width)}
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-bias-square"))
    x, y = 70.0, 22.0
    square = [(x, y), (x + SIDE, y), (x + SIDE, y + SIDE), (x, y + SIDE)]
    face(sheet, square, wrong=False)
    sheet.line([*square, square[0]], INK, PLAIN)
    sheet.line([square[0], square[2]], ACCENT, THICK)
    sheet.across(x, x + SIDE, y + SIDE + 20, words.value(values, "side"), y + SIDE + 2, below=True)
    sheet.callout((x + SIDE + 34, y + 30), numbers.at("bias-strip-cut-across"), (x + 30, y + 30))
    y += SIDE + 66
    sheet.head((8, y), words.text("figure-bias-lines"))
    y += 36
    # The halves side by side: two straight sides sewn together in the middle, both slanting ends on the bias.
    left = 40.0
    four = [(left, y), (left + SIDE, y), (left + 2 * SIDE, y + SIDE), (left + SIDE, y + SIDE)]
    face(sheet, four, wrong=True)
    sheet.line([*four, four[0]], INK, PLAIN)
    sheet.line([(left + SIDE, y), (left + SIDE, y + SIDE)], INK, THICK, SEAM)
    for at in range(1, LINES):
        along = SIDE * at / LINES
        sheet.line([(left + along, y), (left + SIDE + along, y + SIDE)], ACCENT, THICK)
    # The width is measured square to the lines.
    foot = (left + SIDE / LINES + 14, y + 14)
    half = SIDE / LINES / 2
    sheet.line([foot, (foot[0] - half, foot[1] + half)], SOFT, PLAIN)
    sheet.write((left - 34, y + 44), words.value(values, "width"), ground=True)
    joined = (left + SIDE, y + SIDE * 0.75)
    sheet.callout((left + 20, y + SIDE * 0.8), numbers.at("bias-strip-first-seam"), joined)
    sheet.callout((left + 2 * SIDE + 24, y + 24), numbers.at("bias-strip-lines"), (left + SIDE - 2, y + 28))
    sheet.write((sheet.width / 2, y + SIDE + 24), words.text("figure-not-to-scale"), "middle", colour=SOFT)
    return sheet.figure("bias", words.text("figure-bias-alt", values), words.text("figure-bias-caption"))
