"""Gathering: where the rows lie and which way they are pulled, and how the cloth is shared out between the marks."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.garment.matching import EVEN
from furbelow.garment.message import Length, One, Own, Share, Things, Values, flag
from furbelow.garment.technique import Performed, edge_of, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, GATHERING, INK, MARGIN, PLAIN, RIGHT_SIDE, SOFT, THICK, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.gather import Gathered
from furbelow.techniques.shared.gathers import ATTACHMENT, HAND, ROWS, TAIL

LEFT, RIGHT = 92.0, 300.0  # the cloth of the close view
SCALE = 4.2  # units for a mm in the close view
DEEP = 78.0
METHODS = {ROWS: "machine", HAND: "hand", ATTACHMENT: "attachment"}
MARKED = ("gather-fold-ring", "gather-fold-flat", "gather-mark-ring", "gather-mark-flat")


def gathering(done: Performed, run: Run, words: Words, numbers: Numbers) -> Iterator[Figure]:
    """Close views of the rows or pleats, then flat and gathered length beside each other to one scale."""
    words.read("figures", "figures-gathering")
    facts, worked = facts_of(done, Gathered), done.before.edge(edge_of(done.step.written, "edge"))
    parts = len(facts.marks)
    values: Values = {
        "method": One(METHODS[facts.method], tuple(METHODS.values())),
        "parts": parts,
        "cloth": Length(worked.cloth_length),
        "short": Length(facts.length),
        "part": Length(facts.length / parts),
        "marks": Things(tuple(Own(_to_mark(at, number, words)) for number, at in enumerate(facts.marks[1:], 2))),
        "first-row": Length(facts.rows[0], "about"),
        "second-row": Length(facts.rows[-1], "about"),
        "tail": Length(TAIL, "about"),
        "ring": flag(done.before.ring(worked)),
        "behind": Share(facts.behind),
        "knotted": flag(done.after.edge(worked.name).held),
    }
    alt, caption = (words.text(name, values) for name in ("figure-gathering-alt", "figure-gathering-caption"))
    if facts.method == ATTACHMENT:
        sheet = Sheet()
        sheet.head((8, 0), words.text("figure-gathering-pleated"))
        _pleated(sheet, 26, facts, words, values, numbers)
        told = words.text("figure-gathering-pleated-alt", values)
        yield sheet.figure("pleated", told, "", like=f"pleated {sheet.said}")
    else:
        sheet = Sheet()
        sheet.head((8, 0), words.text("figure-gathering-rows"))
        _rows(sheet, 26, facts, words, values, numbers)
        yield sheet.figure(
            "rows", words.text("figure-gathering-rows-alt", values), "", like=f"rows {facts.rows} {sheet.said}"
        )
        sheet = Sheet()
        sheet.head((8, 0), words.text("figure-gathering-pull", values))
        _pulled(sheet, 26, done.after.edge(worked.name).held, words, values, numbers)
        yield sheet.figure("pulled", words.text("figure-gathering-pulled-alt", values), "", like=f"pulled {sheet.said}")
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-gathering-lengths"))
    _lengths(sheet, 32, done, words, values, numbers)
    yield sheet.figure("gathering", alt, caption, like=f"lengths {len(facts.marks)} {sheet.said}")


def _cloth(sheet: Sheet, y: float) -> None:
    """A stretch of cloth with its raw edge above, broken off on the other sides."""
    cuts = [wave((x, y), (x, y + DEEP)) for x in (LEFT, RIGHT)]
    face(sheet, [(LEFT, y), (RIGHT, y), *cuts[1][1:], (LEFT, y + DEEP), *reversed(cuts[0][1:-1])], wrong=False)
    for cut in cuts:
        sheet.line(cut, SOFT, PLAIN)
    sheet.line([(LEFT, y + DEEP), (RIGHT, y + DEEP)], SOFT, THIN, (3, 3))


def _rows(sheet: Sheet, y: float, facts: Gathered, words: Words, values: Values, numbers: Numbers) -> float:
    first, second = (y + float(at) * SCALE for at in facts.rows)
    _cloth(sheet, y)
    edge(sheet, (LEFT, y), (RIGHT, y), "raw", (0, 1))
    for at in (first, second):
        sheet.line([(LEFT + 6, at), (RIGHT - 2, at)], ACCENT, THICK, GATHERING)
        sheet.line(_tail((RIGHT - 2, at), 52), ACCENT, PLAIN)
        sheet.line([(LEFT + 6 - x, at + y) for x, y in ((0, 0), (8, 3), (14, -1))], ACCENT, PLAIN)
    # Distances of both rows are measured from the edge.
    sheet.upright(y, first, LEFT - 22, words.value(values, "first-row"), LEFT - 2, "left")
    sheet.upright(y, second, LEFT - 22 - 44, "", LEFT - 2, "left")
    sheet.paragraph((8, second + 17), words.text("figure-gathering-second-row", values), LEFT - 14)
    sheet.callout((LEFT + 60, first - 3), numbers.at("gather-first-row"), None)
    sheet.callout((LEFT + 60, second + 3), numbers.at("gather-second-row"), None)
    sheet.write((RIGHT + 18, second + 24), words.text("figure-gathering-tails"))
    sheet.write((RIGHT + 18, second + 39), words.value(values, "tail"))
    return y + DEEP


def _pulled(sheet: Sheet, y: float, knotted: bool, words: Words, values: Values, numbers: Numbers) -> float:
    """The rows held at their left end, by knots or round a pin, and pulled at the right end, where a pin then holds them."""
    _cloth(sheet, y)
    edge(sheet, (LEFT, y), (RIGHT, y), "gathered", (0, 1))
    folds = []
    for index in range(26):
        x = LEFT + 5 + index * 7.8
        folds.append([(x, y + 8), (x + 2, y + 30 + 9 * (index % 3)), (x + 4, y + 48 + 11 * (index % 3))])
    sheet.lines(folds, INK, THIN)
    for at in (y + 15, y + 32):
        sheet.line([(LEFT, at), (RIGHT, at)], ACCENT, THICK, (4.0, 3.0))
        sheet.arrow((RIGHT, at), (RIGHT + 46, at), ACCENT, THICK, 8)
    if knotted:
        # Both tails of this face in one knot, cut short behind it.
        knot = (LEFT - 12, y + 23.5)
        sheet.lines(
            [[(LEFT, at), knot, (LEFT - 26, y + 23.5 + short)] for at, short in ((y + 15, -4), (y + 32, 5))],
            ACCENT,
            THICK,
        )
        sheet.disc(knot, 4, ACCENT)
    else:
        sheet.line([(LEFT - 2, y + 10), (LEFT - 14, y + 40)], INK, THICK)
        sheet.disc((LEFT - 2, y + 9), 3, INK)
        wound = [(LEFT, y + 15), (LEFT - 14, y + 20), (LEFT - 2, y + 27), (LEFT - 14, y + 32), (LEFT, y + 32)]
        sheet.line(wound, ACCENT, PLAIN)
    sheet.paragraph((8, y + 54), words.text("figure-gathering-held", values), 74)
    sheet.line([(RIGHT + 14, y + 4), (RIGHT + 14, y + 44)], INK, THICK)
    sheet.disc((RIGHT + 14, y + 3), 3, INK)
    sheet.paragraph((RIGHT + 14, y + 62), words.text("figure-gathering-then-pin"), 82)
    sheet.callout((RIGHT + 66, y + 23), numbers.at("gather-pull-machine", "gather-pull-hand"))
    return y + DEEP


def _pleated(sheet: Sheet, y: float, facts: Gathered, words: Words, values: Values, numbers: Numbers) -> float:
    row = y + float(facts.rows[0]) * SCALE
    _cloth(sheet, y)
    edge(sheet, (LEFT, y), (RIGHT, y), "raw", (0, 1))
    pleats = [
        [(LEFT + 10 + 12 * i, y + 2), (LEFT + 10 + 12 * i, y + 46), (LEFT + 13 + 12 * i, y + 64)] for i in range(17)
    ]
    sheet.lines(pleats, INK, PLAIN)
    sheet.line([(LEFT + 6, row), (RIGHT - 2, row)], ACCENT, THICK, (5.0, 2.5))
    sheet.upright(y, row, LEFT - 22, words.value(values, "first-row"), LEFT - 2, "left")
    sheet.callout((RIGHT + 40, row), numbers.at("gather-pleat"), (RIGHT + 2, row))
    return y + DEEP


def _lengths(sheet: Sheet, y: float, done: Performed, words: Words, values: Values, numbers: Numbers) -> None:
    """Flat cloth above, the gathered edge below, each mark joined to its place."""
    facts = facts_of(done, Gathered)
    flat = done.before.edge(edge_of(done.step.written, "edge")).cloth_length
    short, marks = facts.length, facts.marks
    long = sheet.width - 2 * MARGIN - 10
    left = MARGIN + 5
    scale = long / float(flat)
    middle = left + long / 2
    begin = middle - float(short) * scale / 2
    low = y + 56
    ends = [*marks, flat]
    above = [left + float(at) * scale for at in ends]
    below = [begin + float(short * index / len(marks)) * scale for index in range(len(ends))]
    sheet.line(
        [(left, y - 6), (left + long, y - 6), (left + long, y + 6), (left, y + 6)],
        INK,
        PLAIN,
        fill=RIGHT_SIDE,
        closed=True,
    )
    gathered = [
        (begin, low - 6),
        (begin + float(short) * scale, low - 6),
        (begin + float(short) * scale, low + 6),
        (begin, low + 6),
    ]
    sheet.line(gathered, INK, PLAIN, fill=RIGHT_SIDE, closed=True)
    edge(sheet, gathered[0], gathered[1], "gathered", (0, 1))
    for index, (up, down) in enumerate(zip(above, below, strict=True)):
        quarter = index * 4 % len(marks) == 0
        sheet.line(
            [(up, y - 6), (up, y + 6), (down, low - 6), (down, low + 6)],
            ACCENT if quarter else SOFT,
            PLAIN if quarter else THIN,
        )
    _figures(sheet, y - 11, ends, above, words)
    sheet.write((middle, low + 22), words.text("figure-gathering-short", values), "middle")
    ring = done.before.ring(done.before.edge(edge_of(done.step.written, "edge")))
    if ring:
        sheet.write((left - 5, y + 22), words.text("figure-side-seam"), colour=SOFT, ground=True)
        sheet.write((left + long + 5, y + 22), words.text("figure-side-seam"), "end", colour=SOFT, ground=True)
    where = "figure-gathering-ends" if facts.behind == EVEN else "figure-gathering-ends-behind"
    sheet.paragraph((middle, low + 40), words.text(where, values), 360, "middle", colour=SOFT)
    sheet.callout((14, low), numbers.at(*MARKED))


def _figures(sheet: Sheet, y: float, ends: list[Fraction], places: list[float], words: Words) -> None:
    """The distance of every quarter mark along the flat cloth; others where there is room."""
    quarters = list(range(0, len(ends), (len(ends) - 1) // 4))
    for index in quarters:
        anchor = "start" if index == 0 else "end" if index == len(ends) - 1 else "middle"
        x = places[index] + (-5 if index == 0 else 5 if index == len(ends) - 1 else 0)
        sheet.write((x, y), _to_mark(ends[index], index + 1, words) if index else "0", anchor)


def _to_mark(at: Fraction, number: int, words: Words) -> str:
    """How far a mark is from the start, which is mark 1."""
    return words.said(Length(at), f"mark {number}")


def _tail(start: tuple[float, float], length: float) -> list[tuple[float, float]]:
    x, y = start
    return [(x, y), (x + length * 0.3, y + 3), (x + length * 0.6, y - 3), (x + length, y + 4)]
