"""Cuts through edges that are faced or bagged out: two cloths with their margins turned in between them."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.garment.bench import Ply
from furbelow.garment.message import Length, Pieces, Value, Values
from furbelow.garment.technique import Performed, edge_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import wrong_side
from furbelow.s6_write.figures.section import Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.facing import UNDERSTITCH

FAR = 30.0


def faced_edge(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A facing turned inside, its margin held on it by the understitching."""
    words.read("figures-section", "figures-faced-edge")
    outer, facing = (done.before.edge(edge_of(done.step.written, arg)).pieces[0] for arg in ("edge", "with"))
    values: Values = {
        "facing": Pieces((facing,)),
        "seam-width": Length(done.step.mm("seam")),
        "understitch": Length(UNDERSTITCH, "about"),
    }
    sheet = Sheet()
    cut = _turned(sheet, outer, facing, done, words)
    tip = cut.stitch(-float(UNDERSTITCH), 1, 3)
    top, told = cut.at(0, 3)[1], words.value(values, "understitch")
    sheet.across(cut.at(-float(UNDERSTITCH), 0)[0], cut.at(0, 0)[0], top - 24, told, top - 10)
    sheet.callout((tip[0] - 34, tip[1] - 14), numbers.at("facing-understitch-ring", "facing-understitch-flat"), tip)
    _foot(sheet, cut, outer, facing, done, words)
    caption = captioned(words, done, "figure-faced-caption", values)
    return sheet.figure("facing", words.text("figure-faced-alt", values), caption)


def bagged_edge(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """An edge of a lining bagged out, its margins inside."""
    words.read("figures-section", "figures-faced-edge")
    outer, lining = word_of(done.step.written, "piece"), word_of(done.step.written, "lining")
    values: Mapping[str, Value | str] = {
        "outer": words.say.piece(outer),
        "lining": Pieces((lining,)),
        "seam-width": Length(done.step.mm("seam")),
    }
    sheet = Sheet()
    cut = _turned(sheet, outer, lining, done, words)
    number = numbers.at("bagged-lining-roll")
    sheet.callout((cut.at(0, 0)[0] + 26, cut.at(0, 3)[1] - 18), number, cut.at(0, 2.4))
    _foot(sheet, cut, outer, lining, done, words)
    caption = captioned(words, done, "figure-bagged-caption", values)
    return sheet.figure("facing", words.text("figure-bagged-alt", values), caption)


def _turned(sheet: Sheet, outer: str, inner: str, done: Performed, words: Words) -> Section:
    seam = float(done.step.mm("seam"))
    scale = min(9.0, 150 / seam)
    sheet.head((8, 0), words.text("figure-inside-up"))
    cut = Section(sheet, (310, 92), scale)
    ticks = wrong_side(words.say, Ply(outer), up=True)
    cut.ply([(FAR, cut.at(0, 0)[1]), *cut.turn(0, 0, 1), cut.at(-seam, 1)], ticks)
    ticks = wrong_side(words.say, Ply(inner), up=False)
    cut.ply([(FAR, cut.at(0, 3)[1]), *cut.turn(-1, 3, 2), cut.at(-seam, 2)], ticks)
    cut.stitch(-1.0, 1, 2, worked=False)
    return cut


def _foot(sheet: Sheet, cut: Section, outer: str, inner: str, done: Performed, words: Words) -> None:
    low, seam = cut.zero[1], done.step.mm("seam")
    left, right = cut.at(-float(seam), 0)[0], cut.at(0, 0)[0]
    sheet.across(left, right, low + 22, words.said(Length(seam), "seam-width"), low + 8, below=True)
    names = {"inner": words.say.piece(inner), "outer": words.say.piece(outer)}
    pieces, finished = words.text("figure-faced-pieces", names), words.text("figure-finished-edge")
    named_below(sheet, low + 62, pieces, finished)
