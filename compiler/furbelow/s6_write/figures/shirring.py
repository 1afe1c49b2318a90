"""Shirring: where the rows of elastic thread lie, and how far they draw the cloth in."""

from __future__ import annotations

from furbelow.garment.message import Length, Values
from furbelow.garment.technique import Performed, edge_of, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, INK, MARGIN, PLAIN, RIGHT_SIDE, SOFT, THICK, pattern_of
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.shirring import Shirred

LEFT, RIGHT = 96.0, 372.0
MOST = 8


def shirring(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The rows to scale, and the edge stretched and at rest to one scale."""
    words.read("figures-shirring")
    worked = done.before.edge(edge_of(done.step.written, "edge"))
    first, spacing, shirred = done.step.mm("from edge"), done.step.mm("spacing"), facts_of(done, Shirred)
    values: Values = {
        "rows": shirred.rows,
        "from-edge": Length(first),
        "spacing": Length(spacing),
        "cloth": Length(worked.cloth_length),
        "length": Length(shirred.length),
    }
    drawn = min(shirred.rows, MOST)
    scale = min(4.0, 130 / float(first + spacing * (drawn - 1)))
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-shirring-rows"))
    top, last = 20.0, 20 + float(first + spacing * (drawn - 1)) * scale
    foot = last + 24
    cuts = [wave((x, top), (x, foot)) for x in (LEFT, RIGHT)]
    face(sheet, [*cuts[1], *reversed(cuts[0])], wrong=False)
    for cut in cuts:
        sheet.line(cut, SOFT, PLAIN)
    edge(sheet, (LEFT, top), (RIGHT, top), pattern_of(worked), (0, 1))
    for index in range(drawn):
        y = top + float(first + spacing * index) * scale
        sheet.line([(LEFT + 3, y), (RIGHT - 3, y)], ACCENT, THICK, (7.0, 3.0))
    sheet.upright(top, top + float(first) * scale, LEFT - 16, words.said(Length(first), "first-row"), LEFT - 2, "left")
    if drawn > 1:
        sheet.upright(
            last - float(spacing) * scale, last, LEFT - 16, words.said(Length(spacing), "apart"), LEFT - 2, "left"
        )
    sheet.callout((RIGHT - 60, (top + last) / 2), numbers.at("shirring-sew"))
    y = foot + 28
    sheet.head((8, y), words.text("figure-shirring-drawn", values))
    long = sheet.width - 2 * MARGIN
    for length, name in ((worked.cloth_length, "figure-shirring-stretched"), (shirred.length, "figure-shirring-rest")):
        y += 14
        end = MARGIN + long * float(length / worked.cloth_length)
        sheet.line([(MARGIN, y), (end, y), (end, y + 12), (MARGIN, y + 12)], INK, PLAIN, fill=RIGHT_SIDE, closed=True)
        y += 27
        sheet.write((MARGIN, y), words.text(name, values))
    alt, caption = (words.text(name, values) for name in ("figure-shirring-alt", "figure-shirring-caption"))
    return sheet.figure("shirring", alt, caption)
