"""Cuts through edges that are faced or bagged out: two cloths with their margins turned in between them."""

from __future__ import annotations

from furbelow.garment.bench import Ply
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed, edge_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import wrong_side
from furbelow.s6_write.figures.section import Section, named_below, note_below, sides_told
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.facing import UNDERSTITCH

FAR = 30.0


def faced_edge(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A facing turned inside, its margin held on it by the understitching."""
    say = words.say
    outer = done.before.edge(edge_of(done.step.written, "edge")).pieces[0]
    facing = done.before.edge(edge_of(done.step.written, "with")).pieces[0]
    sheet = Sheet()
    cut = _turned(sheet, outer, facing, done, say)
    tip = cut.stitch(-float(UNDERSTITCH), 1, 3)
    top = cut.at(0, 3)[1]
    sheet.across(cut.at(-float(UNDERSTITCH), 0)[0], cut.at(0, 0)[0], top - 24, say.about(UNDERSTITCH), top - 10)
    sheet.callout((tip[0] - 34, tip[1] - 14), numbers.of("sew it down on"), tip)
    _foot(sheet, cut, outer, facing, done, say)
    alt = (
        f"Cut through the faced edge, inside up: the {say.piece(facing)} lies inside, both margins of"
        f" {say.length(done.step.mm('seam'))} lie under it and are sewn to it {say.about(UNDERSTITCH)} from the edge."
    )
    return Figure("facing", sheet.svg(), alt, f"The faced edge cut through.{sides_told(done, say)}")


def bagged_edge(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """An edge of a lining bagged out, its margins inside."""
    say = words.say
    outer, lining = word_of(done.step.written, "piece"), word_of(done.step.written, "lining")
    sheet = Sheet()
    cut = _turned(sheet, outer, lining, done, say)
    sheet.callout((cut.at(0, 0)[0] + 26, cut.at(0, 3)[1] - 18), numbers.of("roll the seam"), cut.at(0, 2.4))
    _foot(sheet, cut, outer, lining, done, say)
    alt = (
        f"Cut through an edge of the lined {say.piece(outer)}, inside up: the {say.piece(lining)} lies inside, both margins of"
        f" {say.length(done.step.mm('seam'))} between the two."
    )
    return Figure("facing", sheet.svg(), alt, f"The turned edge cut through.{sides_told(done, say)}")


def _turned(sheet: Sheet, outer: str, inner: str, done: Performed, say: Phrasing) -> Section:
    seam = float(done.step.mm("seam"))
    scale = min(9.0, 150 / seam)
    sheet.write((8, 0), "Inside up", bold=True)
    cut = Section(sheet, (310, 92), scale)
    ticks = wrong_side(say, Ply(outer), up=True)
    cut.ply([(FAR, cut.at(0, 0)[1]), *cut.turn(0, 0, 1), cut.at(-seam, 1)], ticks)
    ticks = wrong_side(say, Ply(inner), up=False)
    cut.ply([(FAR, cut.at(0, 3)[1]), *cut.turn(-1, 3, 2), cut.at(-seam, 2)], ticks)
    cut.stitch(-1.0, 1, 2, worked=False)
    return cut


def _foot(sheet: Sheet, cut: Section, outer: str, inner: str, done: Performed, say: Phrasing) -> None:
    low = cut.zero[1]
    sheet.across(
        cut.at(-float(done.step.mm("seam")), 0)[0],
        cut.at(0, 0)[0],
        low + 22,
        say.length(done.step.mm("seam")),
        low + 8,
        below=True,
    )
    y = named_below(sheet, low + 62, f"{say.piece(inner)} inside, {say.piece(outer)} outside", "finished edge")
    note_below(sheet, y)
