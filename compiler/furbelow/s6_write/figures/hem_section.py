"""Cuts through finished edges: turned twice and stitched, or turned up under a trim."""

from __future__ import annotations

from furbelow.garment.spec import EdgeName
from furbelow.garment.technique import Performed, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.language import FOLD, INK, PLAIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import side_of
from furbelow.s6_write.figures.section import Section, named_below, note_below, sides_told
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.edge_with_trim import SECOND_ROW, first_row

FIRST_TURNS = ("first turn", "turn under", "roll")
SECOND_TURNS = ("second turn", "depth", "roll")
INSIDE_FOLD = 2.0  # mm from the inner fold to the stitches


def turned_twice(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """An edge turned under, turned again and stitched: flat with its two folds marked, then folded."""
    say = words.say
    amounts = done.step.amounts
    first = next(done.step.mm(name) for name in FIRST_TURNS if name in amounts)
    second = next(done.step.mm(name) for name in SECOND_TURNS if name in amounts)
    piece = _piece(done)
    wrong = side_of(say, piece)
    one, two = float(first), float(second)
    scale = min(9.0, 150 / (one + two))
    sheet = Sheet()
    sheet.write((8, 0), "Before: flat, wrong side up", bold=True)
    cut = Section(sheet, (330, 56), scale)
    cut.ply([(30, 56), cut.at(0, 0)], wrong)
    _fold_mark(cut, -one if first else -two)
    if first:
        _fold_mark(cut, -one - two)
        sheet.across(cut.at(-one, 0)[0], cut.at(0, 0)[0], 34, say.length(first), 50)
        sheet.across(cut.at(-one - two, 0)[0], cut.at(-one, 0)[0], 76, say.length(second), 62, below=True)
    else:
        sheet.across(cut.at(-two, 0)[0], cut.at(0, 0)[0], 34, say.length(second), 50)
    sheet.write((8, 122), "After: folded and stitched", bold=True)
    cut = Section(sheet, (330, 190), scale)
    points = [(30.0, 190.0), *cut.turn(0, 0, 2 if first else 1), cut.at(-two, 2 if first else 1)]
    if first:
        points += [*cut.turn(-two, 2, 1, to_right=False), cut.at(-two + one, 1)]
    cut.ply(points, wrong)
    top = 2 if first else 1
    by_hand = any(sewn.kind == "103" for sewn in done.sewn)
    tip = cut.stitch(-two + min(INSIDE_FOLD, max(one, 1) / 2 + 0.5), 0, top)
    sheet.across(cut.at(-two, 0)[0], cut.at(0, 0)[0], 196 + 14, say.length(second), 196, below=True)
    number = numbers.of("sew close") or numbers.of("slip stitch") or numbers.of("lower fold") or numbers.of("sew")
    sheet.callout((tip[0] - 30, tip[1] - 8), number, tip)
    low = named_below(sheet, 242, say.piece(piece), "finished edge")
    note_below(sheet, low)
    alt = (
        f"Cut through the edge of the {say.piece(piece)}: turned {say.length(first)}, then {say.length(second)} to the wrong side"
        f" and {'stitched by hand' if by_hand else 'stitched along the inner fold'}."
        if first
        else f"Cut through the edge of the {say.piece(piece)}: turned {say.length(second)} to the wrong side and stitched."
    )
    return Figure(
        "hem", sheet.svg(), alt, f"The edge cut through, before and after it is turned.{sides_told(done, say)}"
    )


def trimmed_edge(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """An edge turned up to the right side under a trim, with the rows that hold it."""
    say = words.say
    turn, width, rows = done.step.mm("turn up"), done.facts["width"], done.facts["rows"]
    row = first_row(turn)
    piece = _piece(done)
    material = say.solved.materials[word_of(done.step.written, "trim")].material
    trim = material.about or material.name.replace("_", " ")
    scale = min(9.0, 150 / float(width))
    sheet = Sheet()
    sheet.write((8, 0), "Right side up", bold=True)
    cut = Section(sheet, (330, 84), scale)
    cut.ply([(30, 84), *cut.turn(0, 0, 1), cut.at(-float(turn), 1)], -side_of(say, piece))
    cut.ply([cut.at(0.6, 2), cut.at(-float(width), 2)], trim=True)
    first = cut.stitch(-float(row), 0, 2)
    top = cut.at(0, 2)[1]
    sheet.across(cut.at(-float(row), 0)[0], cut.at(0, 0)[0], top - 20, say.about(row), top - 8)
    sheet.across(cut.at(-float(turn), 0)[0], cut.at(0, 0)[0], 104, say.length(turn), 90, below=True)
    sheet.callout((first[0] - 30, first[1] - 16), numbers.of("from the fold"), first)
    if rows == 2:
        second = cut.stitch(-float(width - SECOND_ROW), 0, 2)
        sheet.callout((second[0] - 30, second[1] - 16), numbers.of("second row"), second)
    sheet.across(cut.at(-float(width), 0)[0], cut.at(0, 0)[0], 134, f"{trim}, {say.length(width)}", 90, below=True)
    low = named_below(sheet, 172, say.piece(piece), "fold, level with the trim")
    note_below(sheet, low)
    alt = (
        f"Cut through the edge, right side up: the {say.piece(piece)} turned up {say.length(turn)} to the right side, the {trim}"
        f" {say.length(width)} wide over it, level with the fold, sewn {say.about(row)} from the fold"
        + (f" and again {say.about(SECOND_ROW)} below the upper edge of the trim." if rows == 2 else ".")
    )
    return Figure(
        "trim", sheet.svg(), alt, f"The edge cut through: the trim hides the turned edge.{sides_told(done, say)}"
    )


def _fold_mark(cut: Section, x_mm: float) -> None:
    x, y = cut.at(x_mm, 0)
    cut.sheet.line([(x, y - 12), (x, y + 10)], INK, PLAIN, FOLD)


def _piece(done: Performed) -> str:
    value = done.step.written.args["edge"].value
    assert isinstance(value, EdgeName)
    return done.before.edge(str(value)).pieces[0]
