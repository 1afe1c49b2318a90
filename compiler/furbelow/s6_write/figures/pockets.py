"""Pockets: a patch on the cloth, from the right side, and a bag in a seam, from within."""

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
from furbelow.techniques.patch_pocket import Patched
from furbelow.techniques.side_pocket import InSeam

LEFT, RIGHT = 90.0, 310.0
LARGEST = 130.0  # units for the longer side of a pocket


def patch_pocket(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The pocket to its own scale on a stretch of cloth."""
    words.read("figures", "figures-pockets")
    facts, written = facts_of(done, Patched), done.step.written
    values: Values = {
        "pocket": Pieces((word_of(written, "pocket"),)),
        "on": Pieces((word_of(written, "on"),)),
        "wide": Length(facts.wide),
        "high": Length(facts.high),
        "from-edge": Length(facts.from_edge),
    }
    scale = LARGEST / float(max(facts.wide, facts.high))
    wide, high = float(facts.wide) * scale, float(facts.high) * scale
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-pocket-head"))
    y, x = 16.0, 200.0 - wide / 2
    top = y + 40
    low = top + high + 24
    _cloth(sheet, y, low, wrong=False)
    face(sheet, [(x, top), (x + wide, top), (x + wide, top + high), (x, top + high)], wrong=False)
    sheet.line([(x, top), (x, top + high), (x + wide, top + high), (x + wide, top)], INK, PLAIN)
    edge(sheet, (x, top), (x + wide, top), "hemmed", (0, 1))
    near = 5.0
    row = [(x + near, top), (x + near, top + high - near), (x + wide - near, top + high - near), (x + wide - near, top)]
    sheet.line(row, ACCENT, THICK, SEAM)
    for corner, way in ((x + near, 1), (x + wide - near, -1)):
        sheet.line([(corner, top + 14), (corner + way * 12, top + 2), (corner, top + 2)], ACCENT, THICK)
    sheet.across(x, x + wide, low + 22, words.value(values, "wide"), top + high + 4, below=True)
    sheet.upright(top, top + high, RIGHT + 16, words.value(values, "high"), x + wide + 4)
    sheet.upright(y, top, LEFT - 16, words.value(values, "from-edge"), x - 4, "left")
    sheet.callout((LEFT - 34, top + high - 30), numbers.at("patch-pocket-sew"), (x + near, top + high - 30))
    sheet.callout((200, top - 22), numbers.at("patch-pocket-hem"), (200, top + 4))
    sheet.write((sheet.width / 2, low + 54), words.text("figure-not-to-scale"), "middle", colour=SOFT)
    alt, caption = words.text("figure-patch-pocket-alt", values), words.text("figure-patch-pocket-caption")
    return sheet.figure("pocket", alt, caption)


def side_pocket(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The bag beside its seam, both pieces on each other."""
    words.read("figures", "figures-pockets")
    facts = facts_of(done, InSeam)
    values: Values = {"wide": Length(facts.wide), "high": Length(facts.high), "gap": Length(facts.ends - facts.begins)}
    scale = LARGEST / float(max(facts.wide, facts.high))
    wide, high = float(facts.wide) * scale, float(facts.high) * scale
    gap, above = float(facts.ends - facts.begins) * scale, 10 * scale
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-pocket-head-inside"))
    y, x = 16.0, 150.0
    top = y + 26
    low = top + high + 26
    _cloth(sheet, y, low, wrong=True)
    sheet.line([(x, y), (x, low)], INK, PLAIN, SEAM)
    bag = [(x, top), (x + wide, top), (x + wide, top + high), (x, top + high)]
    face(sheet, bag, wrong=True)
    sheet.line([*bag, bag[0]], INK, PLAIN)
    sheet.line(
        [(x, top + 6), (x + wide - 6, top + 6), (x + wide - 6, top + high - 6), (x, top + high - 6)],
        ACCENT,
        THICK,
        SEAM,
    )
    sheet.line([(x + 7, top), (x + 7, top + high)], ACCENT, THICK, SEAM)
    begins, ends = top + above, top + above + gap
    sheet.line([(x, begins), (x, ends)], INK, THICK, HIDDEN)
    for at in (begins, ends):
        sheet.line([(x - 7, at), (x + 7, at)], ACCENT, THICK)
    sheet.upright(begins, ends, LEFT - 14, words.value(values, "gap"), x - 10, "left")
    sheet.upright(top, top + high, RIGHT + 14, words.value(values, "high"), x + wide + 4)
    sheet.across(x, x + wide, low + 22, words.value(values, "wide"), top + high + 4, below=True)
    sheet.callout((x + wide / 2, top + high - 34), numbers.at("side-pocket-close"), (x + wide / 2, top + high - 6))
    sheet.callout((x + wide / 2, top + 34), numbers.at("side-pocket-sew"), (x + 7, top + 34))
    sheet.callout((LEFT - 40, ends + 26), numbers.at("side-pocket-bars"), (x - 7, ends))
    sheet.write((sheet.width / 2, low + 56), words.text("figure-pocket-front"), "middle", colour=SOFT)
    alt, caption = words.text("figure-side-pocket-alt", values), words.text("figure-side-pocket-caption")
    return sheet.figure("pocket", alt, caption)


def _cloth(sheet: Sheet, y: float, low: float, wrong: bool) -> None:
    """A stretch of cloth, broken off at both sides and below."""
    face(sheet, [(LEFT, y), (RIGHT, y), (RIGHT, low), (LEFT, low)], wrong)
    sheet.line([(LEFT, y), (RIGHT, y)], INK, PLAIN)
    for line in (wave((LEFT, y), (LEFT, low)), wave((RIGHT, y), (RIGHT, low)), wave((LEFT, low), (RIGHT, low))):
        sheet.line(line, SOFT, PLAIN)
