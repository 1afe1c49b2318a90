"""A zip in its seam: the opening seen from the right side, and the cut through it."""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.garment.bench import Ply
from furbelow.garment.message import Length, One, Values
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, THICK
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet
from furbelow.s6_write.figures.seam_section import wrong_side
from furbelow.s6_write.figures.section import Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.zip import BESIDE, CENTRED, INVISIBLE, LAP, LAPPED, NEAR, NEAR_FOLD, WAYS, Zipped

TAPE = 12.0  # mm of tape to each side of the teeth
MARGIN = 15.0
FAR = 26.0
SEWN = ("zip-sew-centred", "zip-sew-lap", "zip-sew-invisible")


def zip_in_seam(done: Performed, run: Run, words: Words, numbers: Numbers) -> Iterator[Figure]:
    """Of a lapped zip the margin that is folded and what lies under the needle; then the margins on the zip and the rows that
    hold it."""
    words.read("figures-section", "figures-zip-section")
    if facts_of(done, Zipped).way == LAPPED:
        yield _folded_out(done, words, numbers)
        yield _beneath(done, words, numbers)
    yield _sewn_in(done, words, numbers)


def _folded_out(done: Performed, words: Words, numbers: Numbers) -> Figure:
    """The basted seam, wrong side up: one margin pressed back, the other turned over the row and folded back on itself."""
    values: Values = {"near": Length(NEAR, "about")}
    sheet, out = Sheet(), float(NEAR)
    sheet.head((8, 0), words.text("figure-zip-folded-head"))
    cut = Section(sheet, (200, 92), 6.0)
    side = wrong_side(words.say, Ply(done.touches[0]), up=True)
    cut.ply([cut.at(-FAR, 0), *cut.turn(-1.2, 0, 1), cut.at(-MARGIN, 1)], side)
    cut.ply(
        [
            cut.at(FAR, 0),
            cut.at(1.6, 0),
            cut.at(1.0, 2),
            *cut.turn(-out, 2, 3, to_right=False),
            cut.at(MARGIN - 2 * out, 3),
        ],
        -side,
    )
    row, fold = cut.at(0, 0), cut.at(-out - 0.9, 2.5)
    left, right = row[0] - 14, row[0] + 12
    sheet.line([(left, row[1]), (right, row[1])], ACCENT, THICK, (5, 2.5))
    sheet.lines([[(x, row[1] - 3.5), (x, row[1] + 3.5)] for x in (left, right)], ACCENT, THICK)
    sheet.callout((fold[0] - 60, fold[1] - 16), numbers.at("zip-fold-out"), fold)
    sheet.callout((row[0] + 62, row[1] + 26), numbers.at("zip-baste"), (right, row[1] + 1))
    sheet.across(fold[0], row[0], row[1] + 24, words.value(values, "near"), row[1] + 8, below=True)
    named_below(sheet, row[1] + 34, words.text("figure-zip-over"), words.text("figure-zip-under"))
    caption = captioned(words, done, "figure-zip-folded-caption", values)
    return sheet.figure("zip-folded", words.text("figure-zip-folded-alt", values), caption)


def _beneath(done: Performed, words: Words, numbers: Numbers) -> Figure:
    """The fold that stands out, the zip under it, and the side that laps over on the side beneath; the zip's right side up."""
    values: Values = {"from-fold": Length(NEAR_FOLD, "about")}
    sheet, out = Sheet(), float(NEAR)
    sheet.head((8, 0), words.text("figure-zip-beneath-head"))
    cut = Section(sheet, (240, 104), 6.0)
    side = wrong_side(words.say, Ply(done.touches[0]), up=True)
    cut.ply([cut.at(-FAR, 3), *cut.turn(-0.6, 3, 4), cut.at(-MARGIN, 4)], side)
    cut.ply([cut.at(-FAR, 2), *cut.turn(out, 2, 1), cut.at(out - MARGIN, 1)], -side)
    for level, name in ((3, "figure-zip-over"), (1.6, "figure-zip-under")):
        sheet.write((cut.at(-FAR, level)[0] - 6, cut.at(0, level)[1] + 4.5), words.text(name), "end")
    _zip(cut, out + 2.6, 0)
    tip = cut.stitch(out - float(NEAR_FOLD), 0, 2)
    sheet.callout((tip[0] + 52, tip[1] - 24), numbers.at("zip-sew-beneath"), tip)
    teeth, fold = cut.at(out + 2.6, 0), cut.at(0, 3.5)
    sheet.callout((fold[0] + 10, fold[1] - 26), numbers.at("zip-fold-work"), fold)
    sheet.callout((teeth[0] + 98, teeth[1] - 14), numbers.at("zip-lay-beneath"), (teeth[0] + 7, teeth[1]))
    named_below(sheet, cut.zero[1] + 26, words.say.piece(done.touches[0]), words.text("figure-zip-tape"))
    caption = captioned(words, done, "figure-zip-beneath-caption", values)
    return sheet.figure("zip-beneath", words.text("figure-zip-beneath-alt", values), caption)


def _sewn_in(done: Performed, words: Words, numbers: Numbers) -> Figure:
    facts, piece = facts_of(done, Zipped), done.touches[0]
    beside = {CENTRED: BESIDE, LAPPED: LAP, INVISIBLE: NEAR}[facts.way]
    values: Values = {
        "way": One(facts.way, WAYS),
        "beside": Length(beside, "about"),
        "near": Length(NEAR, "about"),
        "opening": Length(facts.opening),
    }
    # An invisible zip is sewn to the margins from inside; the rows of the others are sewn with the right side up.
    inside = facts.way == INVISIBLE
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-inside-up" if inside else "figure-right-side-up"))
    cut = Section(sheet, (180, 116 if facts.way == LAPPED else 92), 6.0)
    side = wrong_side(words.say, Ply(piece), up=inside)
    tips = _lapped(cut, side) if facts.way == LAPPED else _edge_to_edge(cut, side, float(beside), inside)
    number = numbers.at(*SEWN)
    sheet.callout((tips[-1][0] + 34, tips[-1][1] - 18), number, tips[-1])
    if facts.way == LAPPED:
        tape = cut.at(float(NEAR) + TAPE, 0)
        sheet.callout((tape[0] + 62, tape[1] + 4), numbers.at("zip-lay-lap"), (tape[0] + 10, tape[1]))
    low = cut.zero[1]
    sheet.across(
        cut.at(0, 0)[0], cut.at(float(beside), 0)[0], low + 22, words.value(values, "beside"), low + 8, below=True
    )
    named_below(sheet, low + 58, words.say.piece(piece), words.text("figure-zip-tape"))
    caption = captioned(words, done, "figure-zip-caption", values)
    return sheet.figure("zip", words.text("figure-zip-alt", values), caption)


def _edge_to_edge(cut: Section, side: int, beside: float, inside: bool) -> list[Point]:
    """Both folds meet over the teeth; the rows go through everything, or, inside up, through margin and tape alone."""
    cloth, margin, tape = (0, 1, 2) if inside else (2, 1, 0)
    cut.ply([cut.at(-FAR, cloth), *cut.turn(-1.3, cloth, margin), cut.at(-MARGIN, margin)], side)
    cut.ply([cut.at(FAR, cloth), *cut.turn(1.3, cloth, margin, to_right=False), cut.at(MARGIN, margin)], -side)
    _zip(cut, 0.0, tape)
    return [cut.stitch(way * beside, margin if inside else tape, tape if inside else cloth) for way in (-1, 1)]


def _lapped(cut: Section, side: int) -> list[Point]:
    """Right side up: the lap comes from the right; the fold from the left lies under it, beside the teeth."""
    cut.ply([cut.at(FAR, 4), *cut.turn(0, 4, 3, to_right=False), cut.at(MARGIN, 3)], -side)
    out = float(NEAR)
    cut.ply([cut.at(-FAR, 2), *cut.turn(out, 2, 1), cut.at(out - MARGIN, 1)], side)
    _zip(cut, out + 2.2, 0)
    return [cut.stitch(out - float(NEAR_FOLD), 0, 2), cut.stitch(float(LAP), 0, 4)]


def _zip(cut: Section, middle: float, level: int) -> None:
    for way in (-1, 1):
        cut.ply([cut.at(middle + way * 1.0, level), cut.at(middle + way * TAPE, level)], trim=True)
    cut.sheet.disc(cut.at(middle, level), 6.0, INK, INK, PLAIN)
