"""Cuts through finished edges: turned twice and stitched, or turned up under a trim."""

from __future__ import annotations

from furbelow.garment.message import Length, Pieces, Supply, Values
from furbelow.garment.technique import Performed, SetUp, edge_of, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.language import FOLD, INK, PLAIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import side_of
from furbelow.s6_write.figures.section import Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.edge_with_trim import FIRST_ROW, SECOND_ROW, Trimmed, first_row

FIRST_TURNS = ("first turn", "turn under", "roll")
SECOND_TURNS = ("second turn", "depth", "roll")
SEWN = (  # the messages that say how a turned edge is fastened
    "narrow-hem-sew-ring",
    "narrow-hem-sew-flat",
    "deep-hem-fasten-hand",
    "deep-hem-fasten-machine-ring",
    "deep-hem-fasten-machine-flat",
    "rolled-hem-sew-foot-ring",
    "rolled-hem-sew-foot-flat",
    "rolled-hem-sew-hand",
    "folded-casing-sew",
    "folded-casing-sew-round",
)
INSIDE_FOLD = 2.0  # mm from the inner fold to the stitches


def turned_twice(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """An edge turned under, turned again and stitched: flat with its two folds marked, then folded."""
    if done.setup is SetUp.OVERLOCKER:
        return None  # it rolls the edge inside its own stitches
    words.read("figures-section", "figures-hem-section")
    amounts = done.step.amounts
    first = next(done.step.mm(name) for name in FIRST_TURNS if name in amounts)
    second = next(done.step.mm(name) for name in SECOND_TURNS if name in amounts)
    first_said, second_said = words.said(Length(first)), words.said(Length(second))
    piece = _piece(done)
    wrong = side_of(words.say, piece)
    one, two = float(first), float(second)
    scale = min(9.0, 150 / (one + two))
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-turned-before"))
    cut = Section(sheet, (330, 56), scale)
    cut.ply([(30, 56), cut.at(0, 0)], wrong)
    _fold_mark(cut, -one if first else -two)
    if first:
        _fold_mark(cut, -one - two)
        sheet.across(cut.at(-one, 0)[0], cut.at(0, 0)[0], 34, first_said, 50)
        sheet.across(cut.at(-one - two, 0)[0], cut.at(-one, 0)[0], 76, second_said, 62, below=True)
    else:
        sheet.across(cut.at(-two, 0)[0], cut.at(0, 0)[0], 34, second_said, 50)
    sheet.head((8, 122), words.text("figure-turned-after"))
    cut = Section(sheet, (330, 190), scale)
    points = [(30.0, 190.0), *cut.turn(0, 0, 2 if first else 1), cut.at(-two, 2 if first else 1)]
    if first:
        points += [*cut.turn(-two, 2, 1, to_right=False), cut.at(-two + one, 1)]
    cut.ply(points, wrong)
    top = 2 if first else 1
    tip = cut.stitch(-two + min(INSIDE_FOLD, max(one, 1) / 2 + 0.5), 0, top)
    sheet.across(cut.at(-two, 0)[0], cut.at(0, 0)[0], 196 + 14, second_said, 196, below=True)
    sheet.callout((tip[0] - 30, tip[1] - 8), numbers.at(*SEWN), tip)
    named_below(sheet, 242, words.say.piece(piece), words.text("figure-finished-edge"))
    values: Values = {"piece": Pieces((piece,)), "first": Length(first), "second": Length(second)}
    if not first:
        alt = "figure-turned-alt-once"
    else:
        alt = "figure-turned-alt-hand" if done.setup is SetUp.HAND else "figure-turned-alt-machine"
    return sheet.figure("hem", words.text(alt, values), captioned(words, done, "figure-turned-caption", values))


def trimmed_edge(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """An edge turned up to the right side under a trim, with the rows that hold it."""
    words.read("figures-section", "figures-hem-section")
    facts, turn, piece = facts_of(done, Trimmed), done.step.mm("turn up"), _piece(done)
    width, row = facts.width, FIRST_ROW if facts.together else first_row(turn)
    values: Values = {
        "piece": Pieces((piece,)),
        "trim": Supply(word_of(done.step.written, "trim")),
        "width": Length(width),
        "turn": Length(turn),
        "row": Length(row, "about"),
        "below": Length(SECOND_ROW, "about"),
    }
    if facts.together:
        return _turned_with_cloth(done, words, numbers, facts, values)
    scale = min(9.0, 150 / float(width))
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-right-side-up"))
    cut = Section(sheet, (330, 84), scale)
    cut.ply([(30, 84), *cut.turn(0, 0, 1), cut.at(-float(turn), 1)], -side_of(words.say, piece))
    cut.ply([cut.at(0.6, 2), cut.at(-float(width), 2)], trim=True)
    first = cut.stitch(-float(row), 0, 2)
    top = cut.at(0, 2)[1]
    sheet.across(cut.at(-float(row), 0)[0], cut.at(0, 0)[0], top - 20, words.value(values, "row"), top - 8)
    sheet.across(cut.at(-float(turn), 0)[0], cut.at(0, 0)[0], 104, words.value(values, "turn"), 90, below=True)
    number = numbers.at("edge-with-trim-sew-ring", "edge-with-trim-sew-flat", "edge-with-trim-sew-folded")
    sheet.callout((first[0] - 30, first[1] - 16), number, first)
    if facts.rows == 2:
        second = cut.stitch(-float(width - SECOND_ROW), 0, 2)
        number = numbers.at("edge-with-trim-second-row-ring", "edge-with-trim-second-row-flat")
        sheet.callout((second[0] - 30, second[1] - 16), number, second)
    told = words.text("figure-trimmed-width", values)
    sheet.across(cut.at(-float(width), 0)[0], cut.at(0, 0)[0], 134, told, 90, below=True)
    named_below(sheet, 172, words.say.piece(piece), words.text("figure-trimmed-fold"))
    alt = "figure-trimmed-alt-two-rows" if facts.rows == 2 else "figure-trimmed-alt-one-row"
    return sheet.figure("trim", words.text(alt, values), captioned(words, done, "figure-trimmed-caption", values))


def _turned_with_cloth(done: Performed, words: Words, numbers: Numbers, facts: Trimmed, values: Values) -> Figure:
    """A trim sewn along the raw edge on the wrong side and turned up with it: it goes round the fold."""
    turn, piece = float(done.step.mm("turn up")), _piece(done)
    behind, row, below = float(facts.width) - turn, float(FIRST_ROW), float(SECOND_ROW)
    scale = min(9.0, 150 / turn)
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-right-side-up"))
    cut = Section(sheet, (330, 96), scale)
    cut.ply([(30, 96), *cut.turn(0, 0, 1), cut.at(-turn, 1)], -side_of(words.say, piece))
    around = [cut.at(-turn, 2), *cut.turn(0.4, 2, -1)]
    cut.ply([*around, cut.at(-behind, -1)] if behind > 0 else [cut.at(-turn, 2), cut.at(0.4, 2)], trim=True)
    first = cut.stitch(-(turn - row), 1, 2)
    top = cut.at(0, 2)[1]
    second = cut.stitch(-(turn - below), -1 if behind > turn - below else 0, 2)
    sheet.across(cut.at(-turn, 0)[0], cut.at(-(turn - row), 0)[0], top - 34, words.value(values, "row"), top - 10)
    sheet.across(cut.at(-turn, 0)[0], cut.at(0, 0)[0], 132, words.value(values, "turn"), 112, below=True)
    sewn = ("edge-with-trim-along-sew-ring", "edge-with-trim-along-sew-flat", "edge-with-trim-along-sew-chain")
    sheet.callout((first[0] + 34, top - 26), numbers.at(*sewn), first)
    number = numbers.at("edge-with-trim-topstitch-ring", "edge-with-trim-topstitch-flat")
    sheet.callout((second[0] - 40, top - 14), number, second)
    named_below(sheet, 168, words.say.piece(piece), words.text("figure-finished-edge"))
    alt = words.text("figure-trimmed-alt-together", values)
    return sheet.figure("trim", alt, captioned(words, done, "figure-trimmed-caption-together", values))


def _fold_mark(cut: Section, x_mm: float) -> None:
    x, y = cut.at(x_mm, 0)
    cut.sheet.line([(x, y - 12), (x, y + 10)], INK, PLAIN, FOLD)


def _piece(done: Performed) -> str:
    return done.before.edge(edge_of(done.step.written, "edge")).pieces[0]
