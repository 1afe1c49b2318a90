"""Interfacing on a piece, and cuts through waists that are finished with ribbon or with elastic sewn to the edge."""

from __future__ import annotations

from furbelow.garment.bench import Ply
from furbelow.garment.message import Length, Pieces, Values
from furbelow.garment.technique import Performed, edge_of, facts_of, word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face
from furbelow.s6_write.figures.language import ACCENT, ELASTIC, PLAIN, SOFT
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.figures.seam_section import wrong_side
from furbelow.s6_write.figures.section import Section, captioned, named_below
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.interface import HALF, Stiffened
from furbelow.techniques.petersham import EDGE, Ribboned

LEFT, RIGHT, HIGH, MARGIN = 60.0, 340.0, 96.0, 14.0
FAR = 30.0


def interfacing(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The piece, wrong side up, with the interfacing on all or half of it; not to scale."""
    words.read("figures", "figures-waist-finish")
    facts, written = facts_of(done, Stiffened), done.step.written
    values: Values = {
        "piece": Pieces((word_of(written, "piece"),)),
        "long": Length(facts.long),
        "deep": Length(facts.deep),
    }
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-interfacing-head"))
    y = 20.0
    low = y + HIGH
    face(sheet, [(LEFT, y), (RIGHT, y), (RIGHT, low), (LEFT, low)], wrong=True)
    for start, end, inward in (
        ((LEFT, y), (RIGHT, y), (0.0, 1.0)),
        ((LEFT, low), (RIGHT, low), (0.0, -1.0)),
        ((LEFT, y), (LEFT, low), (1.0, 0.0)),
        ((RIGHT, y), (RIGHT, low), (-1.0, 0.0)),
    ):
        edge(sheet, start, end, "raw", inward)
    half = word_of(written, "cover") == HALF
    foot = (y + low) / 2 if half else low - MARGIN
    corners = [(LEFT + MARGIN, y + MARGIN), (RIGHT - MARGIN, y + MARGIN), (RIGHT - MARGIN, foot), (LEFT + MARGIN, foot)]
    sheet.line(corners, ACCENT, PLAIN, fill=ELASTIC, closed=True)
    sheet.write(
        ((LEFT + RIGHT) / 2, (y + MARGIN + foot) / 2 + 4), words.text("figure-interfacing-name"), "middle", ground=True
    )
    sheet.across(LEFT + MARGIN, RIGHT - MARGIN, low + 18, words.value(values, "long"), foot + 2, below=True)
    sheet.upright(y + MARGIN, foot, RIGHT + 8, words.value(values, "deep"), RIGHT - MARGIN + 2)
    sheet.callout((LEFT - 26, y + 34), numbers.at("interface-lay"), (LEFT + MARGIN, y + 34))
    sheet.write((sheet.width / 2, low + 50), words.text("figure-not-to-scale"), "middle", colour=SOFT)
    alt, caption = words.text("figure-interfacing-alt", values), words.text("figure-interfacing-caption")
    return sheet.figure("interfacing", alt, caption)


def petersham(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The waist cut through: the margin folded inside, the ribbon over it."""
    words.read("figures-section", "figures-waist-finish")
    facts, lap = facts_of(done, Ribboned), done.step.mm("lap")
    piece = done.before.edge(edge_of(done.step.written, "edge")).pieces[0]
    values: Values = {"lap": Length(lap), "close": Length(EDGE, "about")}
    wide = float(facts.width)
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-inside-up"))
    cut = Section(sheet, (310, 84), min(7.0, 200 / wide))
    cut.ply(
        [(FAR, cut.at(0, 0)[1]), *cut.turn(0, 0, 1), cut.at(-float(lap), 1)], wrong_side(words.say, Ply(piece), up=True)
    )
    cut.ply([cut.at(0.4, 2), cut.at(0.4 - wide, 2)], trim=True)
    tip = cut.stitch(-float(EDGE), 1, 2)
    sheet.callout((tip[0] + 36, tip[1] - 16), numbers.at("petersham-sew"), tip)
    turned = cut.at(-wide / 2, 2)
    sheet.callout((turned[0], turned[1] - 26), numbers.at("petersham-turn"), turned)
    low = cut.zero[1]
    sheet.across(cut.at(-float(lap), 0)[0], cut.at(0, 0)[0], low + 22, words.value(values, "lap"), low + 8, below=True)
    named_below(sheet, low + 58, words.say.piece(piece), words.text("figure-ribbon-name"))
    caption = captioned(words, done, "figure-petersham-caption", values)
    return sheet.figure("petersham", words.text("figure-petersham-alt", values), caption)


def sewn_elastic(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The edge cut through: the elastic lies between the cloth and its turned edge."""
    words.read("figures-section", "figures-waist-finish")
    turn = done.step.mm("turn")
    piece = done.before.edge(edge_of(done.step.written, "edge")).pieces[0]
    values: Values = {"turn-width": Length(turn)}
    wide = float(turn)
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-inside-up"))
    cut = Section(sheet, (310, 84), min(9.0, 200 / wide))
    cut.ply([(FAR, cut.at(0, 0)[1]), *cut.turn(0, 0, 2), cut.at(-wide, 2)], wrong_side(words.say, Ply(piece), up=True))
    cut.bar(-wide, -0.4, 1)
    first, last = cut.stitch(-1.2, 1, 2, worked=False), cut.stitch(-wide + 1.2, 0, 2)
    sheet.callout((first[0] + 36, first[1] - 16), numbers.at("sewn-elastic-sew"), first)
    sheet.callout((last[0] - 36, last[1] - 16), numbers.at("sewn-elastic-turn"), last)
    low = cut.zero[1]
    sheet.across(cut.at(-wide, 0)[0], cut.at(0, 0)[0], low + 22, words.value(values, "turn-width"), low + 8, below=True)
    named_below(sheet, low + 58, words.say.piece(piece), words.text("figure-elastic-name"))
    caption = captioned(words, done, "figure-sewn-elastic-caption", values)
    return sheet.figure("elastic", words.text("figure-sewn-elastic-alt", values), caption)
