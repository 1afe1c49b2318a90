"""A row on a line with its frill above the stitches, from the right side; not to scale."""

from __future__ import annotations

from furbelow.garment.message import Length, Pieces, Values
from furbelow.garment.technique import Performed, edge_of, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, SEAM, SOFT, THICK, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.headed_row import HeadedOn
from furbelow.techniques.shared.lines import line_said, measured_up

LEFT, RIGHT = 110.0, 300.0
DOWN, FRILL, ROWS, FALLS, BELOW = 78.0, 22.0, 7.0, 52.0, 24.0  # units


def headed_row(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    words.read("figures", "figures-headed-row")
    facts, written = facts_of(done, HeadedOn), done.step.written
    row = done.before.edge(edge_of(written, "edge"))
    values: Values = {
        "row": Pieces(row.pieces[:1]),
        "on": Pieces((word_of(written, "on"),)),
        **line_said(done.before, done.step, word_of(written, "on"), facts.down),
        "heading": Length(done.step.mm("heading")),
    }
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-headed-row"))
    y = 16.0
    line = y + DOWN
    low = line + ROWS + FALLS
    outline = [(LEFT - 8, y), (RIGHT + 8, y), (RIGHT + 8, low + BELOW), (LEFT - 8, low + BELOW)]
    face(sheet, outline, wrong=False)
    sheet.line([(LEFT - 8, y), (RIGHT + 8, y)], INK, PLAIN)
    for broken in (wave(outline[0], outline[3]), wave(outline[1], outline[2]), wave(outline[3], outline[2])):
        sheet.line(broken, SOFT, PLAIN)
    face(sheet, [(LEFT - 5, line - FRILL), (RIGHT + 5, line - FRILL), (RIGHT, line), (LEFT, line)], wrong=False)
    face(sheet, [(LEFT, line), (RIGHT, line), (RIGHT + 7, low), (LEFT - 7, low)], wrong=False)
    edge(sheet, (LEFT - 5, line - FRILL), (RIGHT + 5, line - FRILL), "hemmed", (0, 1))
    edge(sheet, (LEFT - 7, low), (RIGHT + 7, low), "hemmed", (0, -1))
    folds = [LEFT + (RIGHT - LEFT) * (at + 0.5) / 24 for at in range(24)]
    sheet.lines([[(x, line - FRILL + 9), (x, line - 2)] for x in folds], SOFT, THIN)
    sheet.lines([[(x, line + ROWS + 2), (x, line + ROWS + 18)] for x in folds], SOFT, THIN)
    for at in (line, line + ROWS):
        sheet.line([(LEFT, at), (RIGHT, at)], ACCENT, THICK, SEAM)
    if not measured_up(done.before, done.step, word_of(written, "on")):
        sheet.upright(y, line, LEFT - 22, words.value(values, "from-edge"), LEFT - 10, "left")
    sheet.upright(line - FRILL, line, RIGHT + 20, words.value(values, "heading"), RIGHT + 10)
    sheet.callout(
        (RIGHT + 40, line + 30), numbers.at("headed-row-sew-ring", "headed-row-sew-flat"), (RIGHT - 30, line + ROWS)
    )
    sheet.write(((LEFT + RIGHT) / 2, line - FRILL - 8), words.text("figure-headed-frill"), "middle", ground=True)
    sheet.write((sheet.width / 2, low + BELOW + 22), words.text("figure-not-to-scale"), "middle", colour=SOFT)
    alt, caption = words.text("figure-headed-row-alt", values), words.text("figure-headed-row-caption")
    return sheet.figure("row", alt, caption)
