"""Hang loops: tapes doubled to loops, their ends level with the cut edge, inside."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.technique import Performed
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, ELASTIC, GROUND, INK, PLAIN, SEAM, SOFT, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

LEFT, RIGHT = 30.0, 290.0
HANGS = 78.0  # units that a loop hangs down
TAPE = 7.0
ROW = Fraction(5)  # from the edge, as the technique says


def hang_loops(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """One loop, inside up, with the row across its ends."""
    say = words.say
    count, hangs = done.facts["count"], done.facts["length"] / 2
    sheet = Sheet()
    sheet.write((8, 0), "Inside up", bold=True)
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
    sheet.upright(y, low, RIGHT + 16, say.length(hangs), x + wide / 2 + 4)
    sheet.upright(y, row, x - 38, say.about(ROW), x - wide / 2 - 10, "left")
    sheet.callout((x + 64, row + 20), numbers.of("sew across"), (x + wide / 2 + 8, row + 2))
    sheet.callout((x - 66, low - 14), numbers.of("hanging down"), (x - wide / 2, low - 14))
    worded = f"{say.count(count, 'loop')}: ends level with the cut edge, sewn twice. Not to scale."
    sheet.paragraph((sheet.width / 2, low + 54), worded, 380, "middle", colour=SOFT)
    alt = f"A loop of tape on the inside, both ends level with the cut edge, hanging down {say.length(hangs)}, sewn twice {say.about(ROW)} from the edge."
    return Figure(
        "loops",
        sheet.svg(),
        alt,
        f"How each of {say.count(count, 'loop')} lies." if count > 1 else "How the loop lies.",
    )
