"""Gathering: where the rows lie and which way they are pulled, and how the cloth is shared out between the marks."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.matching import EVEN
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed, edge_of, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, GATHERING, INK, MARGIN, PLAIN, RIGHT_SIDE, SOFT, THICK, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.gather import Gathered
from furbelow.techniques.shared.gathers import ATTACHMENT, FIRST_ROW, HAND, TAIL

LEFT, RIGHT = 92.0, 300.0  # the cloth of the close view
SCALE = 4.2  # units for a mm in the close view
DEEP = 78.0


def gathering(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """A close view of the rows or pleats, and flat and gathered length beside each other to one scale."""
    say = words.say
    facts = facts_of(done, Gathered)
    method = facts.method
    sheet = Sheet()
    if method == ATTACHMENT:
        sheet.write((8, 0), "Pleated by the attachment, right side up", bold=True)
        y = _pleated(sheet, 26, say, numbers)
    else:
        sheet.write((8, 0), "Two rows of long stitches, right side up", bold=True)
        y = _rows(sheet, 26, say, numbers)
        part = {4: "quarter", 8: "eighth"}.get(len(facts.marks), "stretch")
        sheet.write((8, y + 26), f"Pull the tails: one {part}, from mark to mark", bold=True)
        y = _pulled(sheet, y + 48, numbers)
    sheet.write((8, y + 30), "Flat and gathered, to one scale", bold=True)
    _lengths(sheet, y + 62, done, say, numbers)
    edge_shown = done.before.edge(edge_of(done.step.written, "edge"))
    flat, short = say.length(edge_shown.cloth_length), say.length(facts.length)
    how = {ATTACHMENT: "one row by the pleating attachment", HAND: "two rows of running stitch"}.get(
        method, "two rows of long stitches"
    )
    rows = (
        say.about(FIRST_ROW)
        if method == ATTACHMENT
        else f"{say.about(FIRST_ROW)} and {say.about(FIRST_ROW + say.room.row_spacing)}"
    )
    alt = (
        f"Gathering by {how}, {rows} from the edge: {flat} of flat cloth drawn to {short}, marked at"
        f" {', '.join(say.length(at) for at in facts.marks)} of the flat cloth and every"
        f" {say.length(facts.length / len(facts.marks))} of the gathered edge."
    )
    return Figure("gathering", sheet.svg(), alt, f"{flat} of cloth is drawn to {short}.")


def _cloth(sheet: Sheet, y: float) -> None:
    """A stretch of cloth with its raw edge above, broken off on the other sides."""
    cuts = [wave((x, y), (x, y + DEEP)) for x in (LEFT, RIGHT)]
    face(sheet, [(LEFT, y), (RIGHT, y), *cuts[1][1:], (LEFT, y + DEEP), *reversed(cuts[0][1:-1])], wrong=False)
    for cut in cuts:
        sheet.line(cut, SOFT, PLAIN)
    sheet.line([(LEFT, y + DEEP), (RIGHT, y + DEEP)], SOFT, THIN, (3, 3))


def _rows(sheet: Sheet, y: float, say: Phrasing, numbers: Numbers) -> float:
    first = y + float(FIRST_ROW) * SCALE
    second = first + float(say.room.row_spacing) * SCALE
    _cloth(sheet, y)
    edge(sheet, (LEFT, y), (RIGHT, y), "raw", (0, 1))
    for at in (first, second):
        sheet.line([(LEFT + 6, at), (RIGHT - 2, at)], ACCENT, THICK, GATHERING)
        sheet.line(_tail((RIGHT - 2, at), 52), ACCENT, PLAIN)
        sheet.line([(LEFT + 6 - x, at + y) for x, y in ((0, 0), (8, 3), (14, -1))], ACCENT, PLAIN)
    # Distances of both rows are measured from the edge.
    sheet.upright(y, first, LEFT - 22, say.about(FIRST_ROW), LEFT - 2, "left")
    sheet.upright(y, second, LEFT - 22 - 44, "", LEFT - 2, "left")
    sheet.paragraph((8, second + 17), f"{say.about(FIRST_ROW + say.room.row_spacing)} from the edge", LEFT - 14)
    sheet.callout((LEFT + 60, first - 3), numbers.of("a row of") or numbers.of("sew a row"), None)
    sheet.callout((LEFT + 60, second + 3), numbers.of("second row"), None)
    sheet.write((RIGHT + 18, second + 24), "tails")
    sheet.write((RIGHT + 18, second + 39), say.about(TAIL))
    return y + DEEP


def _pulled(sheet: Sheet, y: float, numbers: Numbers) -> float:
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
    sheet.line([(LEFT - 2, y + 10), (LEFT - 14, y + 40)], INK, THICK)
    sheet.disc((LEFT - 2, y + 9), 3, INK)
    sheet.line(
        [(LEFT, y + 15), (LEFT - 14, y + 20), (LEFT - 2, y + 27), (LEFT - 14, y + 32), (LEFT, y + 32)], ACCENT, PLAIN
    )
    sheet.paragraph((8, y + 54), "held round a pin", 74)
    sheet.callout((RIGHT + 66, y + 23), numbers.of("pull"))
    return y + DEEP


def _pleated(sheet: Sheet, y: float, say: Phrasing, numbers: Numbers) -> float:
    row = y + float(FIRST_ROW) * SCALE
    _cloth(sheet, y)
    edge(sheet, (LEFT, y), (RIGHT, y), "raw", (0, 1))
    pleats = [
        [(LEFT + 10 + 12 * i, y + 2), (LEFT + 10 + 12 * i, y + 46), (LEFT + 13 + 12 * i, y + 64)] for i in range(17)
    ]
    sheet.lines(pleats, INK, PLAIN)
    sheet.line([(LEFT + 6, row), (RIGHT - 2, row)], ACCENT, THICK, (5.0, 2.5))
    sheet.upright(y, row, LEFT - 22, say.about(FIRST_ROW), LEFT - 2, "left")
    sheet.callout((RIGHT + 40, row), numbers.of("pleat", "from the edge"), (RIGHT + 2, row))
    return y + DEEP


def _lengths(sheet: Sheet, y: float, done: Performed, say: Phrasing, numbers: Numbers) -> None:
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
    _figures(sheet, y - 11, ends, above, say)
    sheet.write(
        (middle, low + 22), f"{say.length(short)} gathered, a mark every {say.length(short / len(marks))}", "middle"
    )
    ring = done.before.ring(done.before.edge(edge_of(done.step.written, "edge")))
    if ring:
        sheet.write((left - 5, y + 22), "side seam", colour=SOFT, ground=True)
        sheet.write((left + long + 5, y + 22), "side seam", "end", colour=SOFT, ground=True)
    where = "the edge is a ring: both ends are the same side seam" if ring else "0 and the last mark are the ends"
    even = "" if facts.behind == EVEN else f"; {say.share(facts.behind)} of the cloth lies behind"
    sheet.paragraph((middle, low + 40), f"{where}{even}", 360, "middle", colour=SOFT)
    sheet.callout((14, low), numbers.of("mark"))


def _figures(sheet: Sheet, y: float, ends: list[Fraction], places: list[float], say: Phrasing) -> None:
    """The distance of every quarter mark along the flat cloth; others where there is room."""
    quarters = list(range(0, len(ends), (len(ends) - 1) // 4))
    for index in quarters:
        anchor = "start" if index == 0 else "end" if index == len(ends) - 1 else "middle"
        x = places[index] + (-5 if index == 0 else 5 if index == len(ends) - 1 else 0)
        sheet.write((x, y), say.length(ends[index]) if index else "0", anchor)


def _tail(start: tuple[float, float], length: float) -> list[tuple[float, float]]:
    x, y = start
    return [(x, y), (x + length * 0.3, y + 3), (x + length * 0.6, y - 3), (x + length, y + 4)]
