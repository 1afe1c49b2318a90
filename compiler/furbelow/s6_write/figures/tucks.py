"""Tucks: the fold lines on the flat cloth, and a cut through the sewn tucks."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.technique import Performed, edge_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.language import FOLD, INK, PLAIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import side_of
from furbelow.s6_write.figures.section import Section, named_below, note_below, sides_told
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

RIGHT, WIDE = 384.0, 330.0
MOST = 5


def tucks(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """Flat and tucked, right side up, the bottom edge on the right."""
    say = words.say
    lines: tuple[Fraction, ...] = tuple(done.facts["fold lines"])[:MOST]
    depth, space, from_edge = (done.step.mm(name) for name in ("depth", "space", "from edge"))
    piece = done.before.edge(edge_of(done.step.written, "edge")).pieces[0]
    wrong = -side_of(say, piece)
    scale = min(3.0, WIDE / float(max(lines) + 3 * depth))
    sheet = Sheet()
    sheet.write((8, 0), "Fold lines on the flat cloth", bold=True)
    cut = Section(sheet, (RIGHT, 40), scale)
    cut.ply([(14, 40), cut.at(0, 0)], wrong)
    y = 58.0
    for line in lines:
        x, level = cut.at(-float(line), 0)
        sheet.line([(x, level - 12), (x, level + 12)], INK, PLAIN, FOLD)
        sheet.across(x, RIGHT, y + 8, say.length(line), level + 14, below=True)
        y += 28
    sheet.callout((cut.at(-float(lines[0]), 0)[0], 14), numbers.of("mark a fold line"))
    y += 28
    sheet.write((8, y), f"Sewn, {say.length(depth)} deep, pressed to the edge", bold=True)
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
            sheet.callout((tip[0] - 6, tip[1] - 16), numbers.of("wrong sides together"))
    sheet.across(cut.at(-float(from_edge), 0)[0], RIGHT, low + 22, say.length(from_edge), low + 8, below=True)
    y = named_below(sheet, low + 60, say.piece(piece), "bottom edge")
    note_below(sheet, y)
    alt = (
        f"{len(done.facts['fold lines'])} tucks of {say.length(depth)}, fold lines {', '.join(say.length(line) for line in lines)}"
        f" above the bottom edge; sewn, the lowest fold lies {say.length(from_edge)} above it and {say.length(space)} shows between."
    )
    return Figure("tucks", sheet.svg(), alt, f"The tucks cut through, right side up.{sides_told(done, say)}")
