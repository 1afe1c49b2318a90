"""Matching marks: an edge with its marks, then one stretch of both edges pinned together before they are sewn."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.garment.bench import Bench, Edge
from furbelow.garment.message import Length, One, Values, edge_said, flag
from furbelow.garment.technique import Performed, edge_of, facts_of
from furbelow.named import NamedTuple
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import edge, face, wave
from furbelow.s6_write.figures.hanging import edge_now
from furbelow.s6_write.figures.language import ACCENT, FINISHED, HEAVY, INK, LEADING, PLAIN, SEAM, SOFT, THICK, THIN
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Point, Sheet, shortened
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.attach import Attached

LEFT, RIGHT = 24.0, 376.0
MOST_NAMED = 3  # panels of one ring whose seams are named; of more the names would lie on each other
HIGH = 46.0  # of the piece whose edge is marked
STRETCH = (LEFT + 10, RIGHT - 10)  # of both edges, broken off at its ends
DEEP = 92.0
PIN = 34.0  # units of a pin below its head
PINNED = ("attach-pin-gathers", "attach-pin-pleats", "attach-pin-flat")


def quarter_marks(done: Performed, run: Run, words: Words, numbers: Numbers) -> Iterator[Figure]:
    """The upper edge with its marks and a corner turned up, then both edges level with pins at their spacing."""
    words.read("figures", "figures-quarter-marks")
    before, written, facts = done.before, done.step.written, facts_of(done, Attached)
    worked, to = before.edge(edge_of(written, "edge")), before.edge(edge_of(written, "to"))
    up, under = (worked, to) if facts.gathers_up else (to, worked)
    along = before.measured(to)
    values: Values = {
        "to": edge_said(to),
        "edge": edge_said(worked),
        "parts": facts.parts,
        "part": Length(along / facts.parts),
        "length": Length(along),
        "hold": One(words.say.room.hold_with, ("pins", "clips")),
        "spacing": Length(facts.apart, "about"),
        "up": edge_said(up),
        "under": edge_said(under),
        "ring": flag(before.ring(to)),
    }
    sheet = Sheet()
    _marked(sheet, before, to, facts.parts, words, values, numbers)
    told = words.text("figure-marks-alt", values)
    yield sheet.figure("marks", told, "", like=f"marks {facts.parts} {before.ring(to)} {sheet.said}")
    sheet = Sheet()
    plies = _Plies(*(bool(edge_now(before, each.name).gathered) for each in (up, under)))
    _pinned(sheet, plies, words, values, numbers)
    alt, caption = (words.text(name, values) for name in ("figure-pinned-alt", "figure-pinned-caption"))
    yield sheet.figure("pinned", alt, caption, like=f"pinned {facts.apart} {plies} {sheet.said}")


# --- the marks ---


def _marked(sheet: Sheet, before: Bench, to: Edge, parts: int, words: Words, values: Values, numbers: Numbers) -> None:
    ring = before.ring(to)
    strips = _like_strips(before, to.pieces[0]) if ring else 1
    top, low = 0.0, HIGH
    fold, flap = _corner(low, -1)
    face(sheet, [(LEFT, top), (RIGHT, top), fold[1], fold[0], (LEFT, low)], wrong=True)
    edge(sheet, (LEFT, low), fold[0], "gathered" if to.gathered else FINISHED[to.state], (0, -1))
    _flap(sheet, fold, flap, wrong=False)
    wide = RIGHT - LEFT
    for index in range(parts + 1):
        at = (LEFT + wide * index / parts, low)
        ends = [(at[0], at[1] - 10), (at[0], at[1] + 5)]
        if at[0] > fold[0][0]:
            ends = [_mirrored(end, *fold) for end in ends]  # on the other face of the turned corner
        sheet.line(ends, ACCENT, HEAVY)
    for index in range(1, strips):  # seams between the panels of one ring; those at its ends are one seam, too
        x = LEFT + wide * index / strips
        sheet.line([(x, top), (x, low)], INK, PLAIN)
        sheet.line([(x + 3, top), (x + 3, low)], INK, PLAIN, SEAM)
    y = low + 22
    _distances(sheet, y, wide, before.measured(to), words)
    under = y + LEADING
    if ring:
        for x, anchor in ((LEFT - 4, "start"), (RIGHT + 4, "end")):
            sheet.write((x, under), words.text("figure-side-seam"), anchor, colour=SOFT)
    for index in range(1, strips if strips <= MOST_NAMED else 1):
        other = words.text("figure-marks-other-seam")
        sheet.write((LEFT + wide * index / strips, under), other, "middle", colour=SOFT)
    if parts > 4:
        every = words.text("figure-marks-every", values)
        under += LEADING if strips > 1 else 0
        sheet.write((LEFT + wide / 2, under), every, "middle", colour=SOFT)
    sheet.paragraph((LEFT - 16, under + LEADING + 6), words.text("figure-marks-both-faces", values), 376)
    name = shortened(words.text("figure-marks-edge", values), wide - 90, True)
    sheet.head((LEFT + 6, top + 15), name, ground=True)
    number = numbers.at("mark-parts-ring", "mark-parts-flat")
    sheet.callout((LEFT + wide * 13 / 16, top + 14), number, (LEFT + wide * 3 / 4 + 2, low - 8))


def _like_strips(before: Bench, piece: str) -> int:
    """How many strips lie side by side in the ring; 1 for gores of several widths, whose seams are not evenly spaced."""
    gore = before.cloths[piece].piece.gore
    return 1 if gore and len(gore.widths) > 1 else before.strips_round(piece)


def _distances(sheet: Sheet, y: float, wide: float, length: Fraction, words: Words) -> None:
    """The distance of every quarter mark from the first one."""
    for index in range(5):
        worded = "0" if index == 0 else words.said(Length(length * index / 4), "marks")
        anchor = "start" if index == 0 else "end" if index == 4 else "middle"
        x = LEFT + wide * index / 4 + (-4 if index == 0 else 4 if index == 4 else 0)
        sheet.write((x, y), worded, anchor)


# --- the pins ---


class _Plies(NamedTuple):
    """Which of the two plies is drawn in to gathers or pleats."""

    up: bool
    under: bool


def _pinned(sheet: Sheet, plies: _Plies, words: Words, values: Values, numbers: Numbers) -> None:
    left, right = STRETCH
    apart, first = (right - left) * 0.32, left + 26
    top, low = 0.0, DEEP
    fold, flap = _corner(top, 1, right)
    torn = wave((left, low), (left, top), 3, 18)
    across = wave((right, low), (left, low), 3, 18)
    # The ply below, its right side up, then the one on top, its wrong side up, with its corner turned down.
    face(sheet, [(left, top), (right, top), *across, *torn[1:]], wrong=False)
    _edge(sheet, fold[0], (right, top), plies.under, 5)
    face(sheet, [(left, top), fold[0], fold[1], (right, low), *across[1:], *torn[1:]], wrong=True)
    _edge(sheet, (left, top), fold[0], plies.up, 0)
    sheet.line(torn, SOFT, THIN)
    sheet.line(across, SOFT, THIN)
    _flap(sheet, fold, flap, wrong=False)
    sheet.line([(first + 7, top - 6), (first + 7, top + 12)], ACCENT, HEAVY)
    for index in range(3):
        _pin(sheet, first + apart * index, top, words.say.room.hold_with)
    for index in range(2):
        sheet.across(first + apart * index, first + apart * (index + 1), top - 24, words.value(values, "spacing"))
    sheet.callout((first + apart + 22, top + 40), numbers.at(*PINNED), (first + apart + 2, top + PIN - 4))
    sheet.callout((right - 24, low - 14), numbers.at("attach-lay", "attach-lay-tails"))
    tag = words.text("figure-pinned-mark")
    sheet.write((first + 13, top + 28), tag, colour=ACCENT, ground=True)
    name = shortened(words.text("figure-pinned-up", values), right - left - 100)
    sheet.write((left + 26, low - 10), name, ground=True)
    sheet.paragraph((8, low + 22), words.text("figure-pinned-below", values), 384)


def _edge(sheet: Sheet, start: Point, end: Point, drawn_in: bool, seed: int) -> None:
    """A raw edge of one ply; where it is drawn in, a wavy one with folds of uneven length."""
    if not drawn_in:
        edge(sheet, start, end, "raw", (0, 1))
        return
    sheet.line(wave(start, end, 2, 11), INK, PLAIN)
    count = round((end[0] - start[0]) / 9)
    folds = []
    for index in range(1, count):
        x = start[0] + (end[0] - start[0]) * index / count
        deep = 24 + 11 * ((index * 7 + seed) % 5)
        folds.append([(x, start[1] + 3), (x + 1.5, start[1] + deep * 0.6), (x - 0.5, start[1] + deep)])
    sheet.lines(folds, INK, THIN)


def _pin(sheet: Sheet, x: float, y: float, hold: str) -> None:
    if hold == "clips":
        clasp = [(x - 5, y - 10), (x + 5, y - 10), (x + 5, y + 16), (x - 5, y + 16)]
        sheet.line(clasp, ACCENT, THICK, fill="#ffffff", closed=True)
        sheet.line([(x - 5, y + 2), (x + 5, y + 2)], ACCENT, PLAIN)
        return
    sheet.line([(x, y - 9), (x, y + PIN)], ACCENT, THICK)
    sheet.disc((x, y - 11), 3.6, ACCENT)


# --- a turned corner ---


def _corner(y: float, way: int, right: float = RIGHT) -> tuple[tuple[Point, Point], Point]:
    """The fold at which the corner beside an edge is turned, and where its tip then lies. way: 1 where cloth is below the edge."""
    fold = ((right - 42.0, y), (right, y + way * 30.0))
    return fold, _mirrored((right, y), *fold)


def _flap(sheet: Sheet, fold: tuple[Point, Point], tip: Point, wrong: bool) -> None:
    outline = [fold[0], tip, fold[1]]
    face(sheet, outline, wrong)
    sheet.line(outline, INK, PLAIN, closed=True)


def _mirrored(point: Point, start: Point, end: Point) -> Point:
    """The point on the other side of the line from start to end."""
    along = (end[0] - start[0], end[1] - start[1])
    off = (point[0] - start[0], point[1] - start[1])
    share = (off[0] * along[0] + off[1] * along[1]) / (along[0] ** 2 + along[1] ** 2)
    foot = (start[0] + share * along[0], start[1] + share * along[1])
    return 2 * foot[0] - point[0], 2 * foot[1] - point[1]
