"""What is laid on an edge to be caught in its seam, cut through: a strip, or a strip round a cord."""

from __future__ import annotations

from math import cos, pi, sin

from furbelow.garment.bench import Ply
from furbelow.garment.message import Length, Pieces, Values, edge_said, flag
from furbelow.garment.technique import Performed, edge_of, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.language import ACCENT, ELASTIC, HIDDEN, INK, PLAIN, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import wrong_side
from furbelow.s6_write.figures.section import LEVEL, Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.catch_in import CaughtIn
from furbelow.techniques.piping import Piped

FAR = 44.0  # mm of the piece that are drawn, from its cut edge inwards
ZERO = (60.0, 92.0)


def caught_strip(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The piece, right side up, with the strip on it, cut edges level on the left; the seam to come is dotted."""
    words.read("figures-section", "figures-caught")
    facts, written = facts_of(done, CaughtIn), done.step.written
    strip, base = (done.before.edge(edge_of(written, key)) for key in ("strip", "in"))
    values: Values = {
        "strip": edge_said(strip),
        "in": edge_said(base),
        "seam-width": Length(done.step.mm("seam")),
        "row": Length(facts.row),
    }
    sheet, seam, row = Sheet(), float(done.step.mm("seam")), float(facts.row)
    cut = _base(sheet, words, base.pieces[0], seam)
    below = base.name.endswith(".bottom")
    side = wrong_side(words.say, Ply(strip.pieces[0]), up=below)
    far = min(FAR - 6, seam + float(facts.hangs))
    cut.ply([cut.at(0, 1), cut.at(far, 1)], side, gathered=bool(strip.gathered))
    tip = cut.stitch(row, 0, 1)
    _seam_to_come(sheet, cut, seam, 1)
    high, low = cut.at(0, 1)[1], cut.at(0, 0)[1]
    sheet.across(cut.at(0, 0)[0], cut.at(seam, 0)[0], low + 30, words.value(values, "seam-width"), low + 10, below=True)
    sheet.callout((tip[0] - 26, high - 30), numbers.at("catch-in-baste-ring", "catch-in-baste-flat"), tip)
    laid = cut.at(far - 8, 1)
    sheet.callout((laid[0] + 10, high - 34), numbers.at("catch-in-lay-below", "catch-in-lay-above"), laid)
    named_below(sheet, low + 70, words.text("figure-caught-edges"), words.text("figure-caught-dotted"))
    caption = captioned(words, done, "figure-caught-caption", values)
    return sheet.figure("caught", words.text("figure-caught-alt", values), caption)


def piping(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The piece, right side up, with the strip folded round its cord, cut edges level on the left."""
    words.read("figures-section", "figures-caught")
    facts, written = facts_of(done, Piped), done.step.written
    strip, base = word_of(written, "strip"), done.before.edge(edge_of(written, "in"))
    values: Values = {
        "strip": Pieces((strip,)),
        "in": edge_said(base),
        "seam-width": Length(done.step.mm("seam")),
        "thick": Length(facts.thick),
        "ring": flag(facts.ring),
    }
    sheet, seam = Sheet(), float(done.step.mm("seam"))
    cut = _base(sheet, words, base.pieces[0], seam)
    side = wrong_side(
        words.say, Ply(strip), up=True
    )  # folded wrong sides together: the lower half has its wrong side up
    thick = float(facts.thick) * cut.scale
    middle = (cut.at(seam, 0)[0] + thick / 2 + 4, cut.at(0, 1.5)[1])
    radius = max(thick / 2, LEVEL / 2) + 3
    round_it = [(middle[0] - radius * cos(pi * at / 8), middle[1] + radius * sin(pi * at / 8)) for at in range(1, 16)]
    # From its lower cut edge right, under the cord, round it and back to the upper one.
    turn = [(x, y) for x, y in round_it if x > middle[0] - radius * 0.8]
    cut.ply([cut.at(0, 1), cut.at(seam - 1, 1), *turn, cut.at(seam - 1, 2), cut.at(0, 2)], side)
    sheet.disc(middle, max(thick / 2 - 1, 3), ELASTIC, INK, PLAIN)
    tip = cut.stitch(seam - 1.5, 0, 2)
    _seam_to_come(sheet, cut, seam, 2)
    high, low = cut.at(0, 2)[1], cut.at(0, 0)[1]
    sheet.across(cut.at(0, 0)[0], cut.at(seam, 0)[0], low + 30, words.value(values, "seam-width"), low + 10, below=True)
    sheet.callout((tip[0] - 26, high - 30), numbers.at("piping-baste-ring", "piping-baste-flat"), tip)
    sheet.callout((middle[0] + 44, high - 26), numbers.at("piping-fold"), (middle[0] + radius, middle[1] - 4))
    named_below(sheet, low + 70, words.text("figure-caught-edges"), words.text("figure-caught-dotted"))
    caption = captioned(words, done, "figure-piping-caption", values)
    return sheet.figure("piping", words.text("figure-piping-alt", values), caption)


def _base(sheet: Sheet, words: Words, piece: str, seam: float) -> Section:
    sheet.head((8, 0), words.text("figure-right-side-up"))
    cut = Section(sheet, ZERO, min(6.0, 70 / seam))
    cut.ply([cut.at(0, 0), (380.0, cut.at(0, 0)[1])], wrong_side(words.say, Ply(piece), up=False))
    return cut


def _seam_to_come(sheet: Sheet, cut: Section, seam: float, high: float) -> None:
    x = cut.at(seam, 0)[0]
    sheet.line([(x, cut.at(0, 0)[1] + 12), (x, cut.at(0, high)[1] - 14)], ACCENT, THICK, HIDDEN)
