"""Tapes with rings inside the back of a skirt: all of them let down, and one drawn up by its cord; lengths down the tape to
scale."""

from __future__ import annotations

from math import cos, pi, sin

from furbelow.garment.message import Length, Things, Values, flag
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.language import ACCENT, INK, PLAIN, SOFT, THICK, THIN, WRONG_SIDE
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.bustle_tapes import Taped

HIGH, TOP = 180.0, 66.0  # units for the whole way from the top edge to the lowest ring; where that edge is drawn
MIDDLE, HALF = 104.0, 72.0  # of the view of all tapes
LEFT, WIDE = 276.0, 76.0  # of the view of one
TAPE, RING = 7.0, 3.0
BESIDE = 9.0  # from the outermost tape to its length, which is measured along it
ROOM = 1.2  # so much further than the outermost tape the cloth is drawn
DRAWN = ("bustle-tapes-draw", "bustle-tapes-draw-each")
KNOT = 9.0  # of the ring that is drawn large
BELOW = 30.0  # from the lowest ring to the hem


def bustle_tapes(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The skirt inside out: where every tape lies above and below, and one of them drawn up."""
    words.read("figures-bustle-tapes")
    facts = facts_of(done, Taped)
    every = facts.long / (facts.rings - 1)
    values: Values = {
        "tapes": facts.many,
        "apart": Length(facts.apart),
        "below": Length(facts.below),
        "foot": Length(facts.below + facts.long),
        "long": Length(facts.long),
        "rings": facts.rings,
        "every": Length(every),
        "left": Length(facts.left[0]),
        "lefts": Things(tuple(Length(left) for left in facts.left)),
        "alike": flag(facts.alike),
        "up": Length(facts.up),
    }
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-bustle-tapes-down"))
    sheet.head((LEFT - 38, 0), words.text("figure-bustle-tapes-up"))
    _let_down(sheet, facts, words, numbers, values)
    _drawn_up(sheet, facts, words, numbers, values)
    _knot(sheet, (LEFT + WIDE / 2, TOP + HIGH + BELOW + 26), words, numbers)
    alt, caption = (words.text(name, values) for name in ("figure-bustle-tapes-alt", "figure-bustle-tapes-caption"))
    return sheet.figure("bustle-tapes", alt, caption)


def _scale(facts: Taped) -> float:
    return HIGH / float(facts.below + facts.long)


def _let_down(sheet: Sheet, facts: Taped, words: Words, numbers: Numbers, values: Values) -> None:
    """Every tape on its line, and how far from the middle the nearest and the furthest lie at both ends."""
    first, low = TOP + float(facts.below) * _scale(facts), TOP + HIGH
    hem, beside = low + BELOW, [float(off) for off in facts.beside()]
    across = HALF / (ROOM * max(beside, default=1.0))
    narrow = HALF * (float(facts.upper) if beside else 1.0)
    face(
        sheet,
        [(MIDDLE - narrow, TOP), (MIDDLE + narrow, TOP), (MIDDLE + HALF, hem), (MIDDLE - HALF, hem)],
        wrong=True,
    )
    edge(sheet, (MIDDLE - narrow, TOP), (MIDDLE + narrow, TOP), "hemmed", (0, 1))
    edge(sheet, (MIDDLE - HALF, hem), (MIDDLE + HALF, hem), "hemmed", (0, -1))
    sheet.line([(MIDDLE, TOP), (MIDDLE, hem)], SOFT, THIN, (6, 3, 1, 3))
    places = [*((-off) for off in beside), *([0.0] if facts.many % 2 else []), *beside]
    for place in places:
        _tape(sheet, facts, (MIDDLE + place * across * float(facts.upper), first), (MIDDLE + place * across, low))
    shown = facts.beside()[:: max(1, len(beside) - 1)]
    for at, off in enumerate(shown):
        upper, lower = words.said(Length(off * facts.upper)), words.said(Length(off))
        x_up, x_low = MIDDLE + float(off) * across * float(facts.upper), MIDDLE + float(off) * across
        if at < len(shown) - 1:
            # The nearest is too near for its words to stand over it.
            for x, y, said in ((x_up, TOP - 12, upper), (x_low, hem + 16, lower)):
                sheet.arrow((MIDDLE, y), (x, y))
                sheet.write((MIDDLE - 4, y + 4.5), said, "end")
            continue
        sheet.across(MIDDLE, x_up, TOP - 12 - 18 * at, upper, first - 4)
        sheet.across(MIDDLE, x_low, hem + 16 + 20 * at, lower, low + 4, below=True)
    right, left = max(places) * across, min(places) * across
    outer = (MIDDLE + right * float(facts.upper) + BESIDE, first), (MIDDLE + right + BESIDE, low)
    sheet.slanting(*outer, words.value(values, "long"))
    sheet.upright(TOP, first, MIDDLE - narrow - 14, words.value(values, "below"), MIDDLE - narrow - 2, "left")
    sheet.upright(TOP, low, MIDDLE + HALF + 26, words.value(values, "foot"), MIDDLE + HALF + 2)
    up = (MIDDLE + left * float(facts.upper), first)
    sheet.callout((20, first + 14), numbers.at("bustle-tapes-mark-upper", "bustle-tapes-mark-one"), up)
    sheet.callout((20, low + 14), numbers.at("bustle-tapes-mark-lower"), (MIDDLE + left, low))


def _drawn_up(sheet: Sheet, facts: Taped, words: Words, numbers: Numbers, values: Values) -> None:
    """One tape with the cloth in folds on it, and how far the hem has gone up."""
    first, hem = TOP + float(facts.below) * _scale(facts), TOP + HIGH + BELOW
    long = float(facts.long - facts.up) * _scale(facts)
    low, middle = hem - float(facts.up) * _scale(facts), LEFT + WIDE / 2
    face(sheet, [(LEFT, TOP), (LEFT + WIDE, TOP), (LEFT + WIDE, low), (LEFT, low)], wrong=True)
    edge(sheet, (LEFT, TOP), (LEFT + WIDE, TOP), "hemmed", (0, 1))
    edge(sheet, (LEFT, low), (LEFT + WIDE, low), "hemmed", (0, -1))
    for at in range(facts.rings - 1):
        y = first + long * (at + 0.5) / (facts.rings - 1)
        sheet.line(wave((LEFT + 6, y), (LEFT + WIDE - 6, y)), INK, PLAIN)
    _tape(sheet, facts, (middle, first), (middle, first + long))
    sheet.line([(middle, first - 12), (middle, first + long)], ACCENT, THICK)
    sheet.upright(first, first + long, LEFT + WIDE + 14, words.value(values, "left"), LEFT + WIDE + 2)
    sheet.upright(low, hem, LEFT + WIDE + 14, words.value(values, "up"), LEFT + WIDE + 2)
    sheet.callout((LEFT + 10, first - 14), numbers.at(*DRAWN), (middle, first - 10))
    second = first + long / (facts.rings - 1)
    sheet.callout((LEFT - 22, second), numbers.at("bustle-tapes-rings"), (middle - RING, second))
    sheet.callout((LEFT - 22, first + long), numbers.at("bustle-tapes-thread"), (middle - RING, first + long))


def _knot(sheet: Sheet, ring: Point, words: Words, numbers: Numbers) -> None:
    """The cord at the uppermost ring: up through it, round itself, and a loop pulled through that turn; its end hangs free."""
    x, y = ring
    sheet.disc(ring, KNOT, WRONG_SIDE, INK, THICK)

    def cord(points: list[Point]) -> None:
        sheet.line(points, INK, 4.5, round_cap=True)
        sheet.line(points, WRONG_SIDE, 2.5, round_cap=True)

    turn = [(x + 9 * sin(at), y + 24 + 5 * cos(at)) for at in (pi * each / 8 for each in range(4, 13))]
    loop = [(x + 30 * sin(at) ** 2, y + 24 - 11 * sin(2 * at)) for at in (pi * each / 16 for each in range(17))]
    cord([(x - 2, y + 26), (x - 16, y + 36), (x - 26, y + 44)])  # the free end
    cord([(x, y + 50), (x, y + 2)])  # up from the lower rings
    cord([(x + 4, y - KNOT + 1), (x + 9, y - 2), (x + 11, y + 14), (x + 9, y + 24)])  # over the ring and down
    cord([(x + 2 + each[0] - x, each[1]) for each in loop])
    cord(turn)
    sheet.write((x + 38, y + 28), words.text("figure-bustle-tapes-loop"))
    sheet.write((x - 30, y + 48), words.text("figure-bustle-tapes-end"), "end")
    sheet.callout((x - 40, y + 6), numbers.at("bustle-tapes-knot", "bustle-tapes-draw"), (x - KNOT, y))


def _tape(sheet: Sheet, facts: Taped, upper: Point, lower: Point) -> None:
    """A tape from end to end with its rings."""
    (x, y), (to_x, to_y) = upper, lower
    sheet.area(
        [(x - TAPE / 2, y), (x + TAPE / 2, y), (to_x + TAPE / 2, to_y), (to_x - TAPE / 2, to_y)], WRONG_SIDE, INK
    )
    for at in range(facts.rings):
        share = at / (facts.rings - 1)
        sheet.disc((x + (to_x - x) * share, y + (to_y - y) * share), RING, WRONG_SIDE, INK, PLAIN)
