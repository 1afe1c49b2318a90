"""Tucks: the fold lines on the flat cloth, and a cut through the sewn tucks."""

from __future__ import annotations

from furbelow.garment.message import Length, Pieces, Things, Values
from furbelow.garment.technique import Performed, edge_of, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.language import FOLD, INK, PLAIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import side_of
from furbelow.s6_write.figures.section import Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.tucks import Tucked

RIGHT, WIDE = 384.0, 330.0
MOST = 5


def tucks(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Flat and tucked, right side up, the bottom edge on the right."""
    words.read("figures-tucks")
    every = facts_of(done, Tucked).lines
    lines = every[:MOST]
    depth, space, from_edge = (done.step.mm(name) for name in ("depth", "space", "from edge"))
    values: Values = {
        "tucks": len(every),
        "depth": Length(depth),
        "lines": Things(tuple(Length(line) for line in lines), "row"),
        "from-edge": Length(from_edge),
        "space": Length(space),
    }
    piece = done.before.edge(edge_of(done.step.written, "edge")).pieces[0]
    wrong = -side_of(words.say, piece)
    scale = min(3.0, WIDE / float(max(lines) + 3 * depth))
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-tucks-lines"))
    cut = Section(sheet, (RIGHT, 40), scale)
    cut.ply([(14, 40), cut.at(0, 0)], wrong)
    y = 58.0
    for line in lines:
        x, level = cut.at(-float(line), 0)
        sheet.line([(x, level - 12), (x, level + 12)], INK, PLAIN, FOLD)
        sheet.across(x, RIGHT, y + 8, words.said(Length(line), "line"), level + 14, below=True)
        y += 28
    sheet.callout((cut.at(-float(lines[0]), 0)[0], 14), numbers.at("tucks-mark-first"))
    y += 28
    sheet.head((8, y), words.text("figure-tucks-sewn", values))
    low = y + 62
    cut = Section(sheet, (RIGHT, low), scale)
    path = [(14.0, low)]
    for index in reversed(range(len(lines))):
        x = -float(from_edge + depth + index * (depth + space))
        path += [
            cut.at(x, 0),
            cut.at(x, 2),
            *cut.turn(x + float(depth), 2, 1),
            *cut.turn(x + 0.8, 1, 0, to_right=False),
        ]
    cut.ply([*path, cut.at(0, 0)], wrong)
    for index in range(len(lines)):
        x = -float(from_edge + depth + index * (depth + space))
        tip = cut.stitch(x + 1.2, 1, 2)
        if index == 0:
            sheet.callout((tip[0] - 6, tip[1] - 16), numbers.at("tucks-sew", "tucks-sew-last"))
    sheet.across(
        cut.at(-float(from_edge), 0)[0],
        RIGHT,
        low + 22,
        words.said(Length(from_edge), "from-edge"),
        low + 8,
        below=True,
    )
    y = named_below(
        sheet, low + 60, words.text("piece-alone", {"piece": Pieces((piece,))}), words.text("figure-tucks-edge")
    )
    caption = captioned(words, done, "figure-tucks-caption", values)
    return sheet.figure("tucks", words.text("figure-tucks-alt", values), caption)
