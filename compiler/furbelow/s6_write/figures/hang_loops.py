"""Hang loops: tapes doubled to loops, their ends level with the cut edge, inside."""

from __future__ import annotations

from furbelow.garment.message import Length, Values
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, ELASTIC, GROUND, INK, PLAIN, SEAM, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.hang_loops import ROW, Loops

LEFT, RIGHT = 30.0, 290.0
HANGS = 78.0  # units that a loop hangs down
TAPE = 7.0


def hang_loops(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """One loop, inside up, with the row across its ends."""
    words.read("figures-hang-loops")
    facts = facts_of(done, Loops)
    hangs, from_edge = Length(facts.length / 2), Length(ROW, "about")
    values: Values = {"loops": facts.loops, "hangs": hangs, "row": from_edge}
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-loops-inside"))
    y, x = 16.0, 150.0
    cuts = [wave((at, y), (at, y + HANGS + 34)) for at in (LEFT, RIGHT)]
    face(sheet, [(LEFT, y), (RIGHT, y), *cuts[1][1:], *reversed(cuts[0])], wrong=True)
    for line in cuts:
        sheet.line(line, SOFT, PLAIN)
    edge(sheet, (LEFT, y), (RIGHT, y), "raw", (0, 1))
    low, wide = y + HANGS, 2 * TAPE + 5
    outer = [(x - wide / 2, y), (x - wide / 2, low - 8), (x, low), (x + wide / 2, low - 8), (x + wide / 2, y)]
    inner = [(x + 2.5, y), (x + 2.5, low - 14), (x, low - 10), (x - 2.5, low - 14), (x - 2.5, y)]
    sheet.line([*outer, *inner], INK, PLAIN, fill=ELASTIC, closed=True)
    sheet.area(inner, GROUND)
    row = y + 14
    for at in (row, row + 4):
        sheet.line([(x - wide / 2 - 8, at), (x + wide / 2 + 8, at)], ACCENT, THICK, SEAM)
    sheet.upright(y, low, RIGHT + 16, words.said(hangs), x + wide / 2 + 4)
    sheet.upright(y, row, x - 38, words.said(from_edge), x - wide / 2 - 10, "left")
    sheet.callout((x + 64, row + 20), numbers.at("hang-loops-sew"), (x + wide / 2 + 8, row + 2))
    laid = numbers.at("hang-loops-lay-ring", "hang-loops-lay-flat")
    sheet.callout((x - 66, low - 14), laid, (x - wide / 2, low - 14))
    sheet.paragraph((sheet.width / 2, low + 54), words.text("figure-loops-note", values), 380, "middle", colour=SOFT)
    alt, caption = words.text("figure-loops-alt", values), words.text("figure-loops-caption", values)
    return sheet.figure("loops", alt, caption)
