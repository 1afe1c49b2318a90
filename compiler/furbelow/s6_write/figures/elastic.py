"""Elastic: drawn through its casing with the tail held, its ends lapped and sewn, and the gap closed."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.garment.bench import Casing
from furbelow.garment.message import Length, Pieces, Values, piece_said
from furbelow.garment.technique import Performed, facts_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.edges import face, wave
from furbelow.s6_write.figures.language import (
    ACCENT,
    ELASTIC,
    GROUND,
    HIDDEN,
    INK,
    MARGIN,
    PLAIN,
    SEAM,
    SOFT,
    THICK,
    THIN,
)
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.pen import Sheet
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words
from furbelow.techniques.close_gap import PAST
from furbelow.techniques.insert_elastic import DrawnIn
from furbelow.techniques.shared.casings import BESIDE_SEAM, EDGE_STITCH

LEFT, RIGHT = 20.0, 380.0
BEYOND = 16.0  # from the lap to the cross, which has to stay in sight
PALE = "#e9e5df"  # the other end of the elastic, where the two lie on each other


def drawing_in(done: Performed, run: Run, words: Words, numbers: Numbers) -> Iterator[Figure]:
    """The ends marked, the elastic on its way through, its lap and its length against the casing: a drawing each."""
    words.read("figures", "figures-elastic")
    facts, overlap = facts_of(done, DrawnIn), done.step.mm("overlap")
    casing, width = facts.casing, facts.width
    if casing.flat:
        return None  # no gap and no lap to show: the ends lie in the seam
    values: Values = {
        "band": Pieces((casing.piece,)),
        "gap": Length(casing.gap),
        "casing": Length(casing.length),
        "width": Length(width),
        "lap": Length(overlap),
        "loop": Length(facts.loop),
    }
    sheet = Sheet()
    if facts.spare:
        sheet.head((8, 0), words.text("figure-elastic-shorten"))
        _shortened(sheet, 34, overlap, width, words, numbers)
        yield sheet.figure("elastic-shortened", words.text("figure-elastic-shorten-alt", values), "")
    else:
        sheet.head((8, 0), words.text("figure-elastic-mark"))
        _marked(sheet, 34, overlap, width, words, numbers)
        yield sheet.figure("elastic-marked", words.text("figure-elastic-marked-alt", values), "")
    if not (facts.spare or casing.in_seam):  # else the way in is a slit across the channel
        yield _through(casing, width, values, words, numbers)
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-elastic-lap"))
    y = _lap(sheet, 34, overlap, width, words, numbers, crossed=not facts.spare)
    sheet.head((8, y + 24), words.text("figure-elastic-lengths"))
    _beside(sheet, y + 36, casing.length, facts.loop, words)
    tried = facts.spare or casing.in_seam
    alt = words.text("figure-elastic-alt-long" if facts.spare else "figure-elastic-alt", values)
    caption = words.text("figure-elastic-caption-lap" if tried else "figure-elastic-caption")
    yield sheet.figure("elastic-lapped", alt, caption)


def _through(casing: Casing, width: Fraction, values: Values, words: Words, numbers: Numbers) -> Figure:
    """The elastic on its way through the channel, its tail held."""
    sheet = Sheet()
    sheet.head((8, 0), words.text("figure-elastic-through"))
    view = CasingView(sheet, casing, 32, words)
    view.casing()
    gap = (view.left, view.right)
    band = float(width) * view.scale
    middle = view.top + (view.low - float(EDGE_STITCH) * view.scale - view.top) / 2
    # Inside the channel the elastic is hidden by the cloth; its tail hangs out of the gap and is pinned to the band.
    entry, lead = (gap[0] + gap[1]) / 2, RIGHT - 62
    inside = [
        (entry, middle - band / 2),
        (lead, middle - band / 2),
        (lead, middle + band / 2),
        (entry, middle + band / 2),
    ]
    sheet.line(inside, INK, PLAIN, HIDDEN)
    _bodkin(sheet, lead, middle, words)
    sheet.arrow((lead - 62, middle), (lead - 24, middle), ACCENT, THICK, 8)
    sheet.callout((lead - 78, middle), numbers.at("insert-elastic-thread", "insert-elastic-thread-band"))
    foot = view.low + 40
    wide = min(band * 0.8, gap[1] - gap[0] - 8)
    tail = [(entry - wide / 2, view.low), (entry + wide / 2, view.low), (gap[0] - 26 + wide, foot), (gap[0] - 26, foot)]
    sheet.line(tail, INK, PLAIN, fill=ELASTIC, closed=True)
    # The pin goes through the tail below the gap and up into the band.
    head, tip = (gap[0] - 4, foot - 8), (gap[0] + 16, view.low - 26)
    sheet.line([head, tip], INK, THICK)
    sheet.disc(head, 3.5, INK)
    sheet.callout((head[0] - 46, head[1] - 6), numbers.at("insert-elastic-tail"), (head[0] - 4, head[1]))
    sheet.write((LEFT + 6, view.top + 16), words.said(piece_said(casing.piece)), ground=True)
    sheet.across(gap[0], gap[1], foot + 20, words.text("figure-gap", values), view.low + 4, below=True)
    return sheet.figure("elastic", words.text("figure-elastic-through-alt", values), "")


def closed_gap(done: Performed, run: Run, words: Words, numbers: Numbers) -> Figure | None:
    """The gap with the row that closes it, over the first row at both ends."""
    words.read("figures", "figures-elastic")
    casing = done.facts
    if not isinstance(casing, Casing) or casing.in_seam or casing.channels > 1:
        return None  # a few stitches by hand across the channel, a stretch of a seam, or a gap in each of several rows
    values: Values = {"gap": Length(casing.gap), "past": Length(PAST, "about")}
    sheet = Sheet()
    view = CasingView(sheet, casing, 20, words)
    view.casing()
    past, past_said = float(PAST) * view.scale, words.value(values, "past")
    y = view.low - float(EDGE_STITCH) * view.scale
    sheet.line([(view.left - past, y), (view.right + past, y)], ACCENT, 2.6, SEAM)
    for x in (view.left - past, view.right + past):
        sheet.lines([[(x, y - 5), (x, y + 5)]], ACCENT, THICK)
    low = view.low
    sheet.across(view.left, view.right, low + 24, words.text("figure-gap", values), low + 6, below=True)
    sheet.across(view.right, view.right + past, low + 24, past_said, low + 6, below=True)
    sheet.across(view.left - past, view.left, low + 24, past_said, low + 6, below=True)
    sheet.callout((view.right + past + 24, y - 24), numbers.at("close-gap-sew"), (view.right + past, y))
    sheet.write((sheet.width / 2, low + 62), words.text("figure-gap-seen"), "middle", colour=SOFT)
    return sheet.figure("gap", words.text("figure-gap-alt", values), words.text("figure-gap-caption"))


class CasingView:
    """A stretch of the casing at its gap, seen from the side of its stitching, to scale."""

    def __init__(self, sheet: Sheet, casing: Casing, top: float, words: Words, in_front: bool = False) -> None:
        self.sheet, self.top, self.words, self.in_front = sheet, top, words, in_front
        deep = float(casing.width) + 2
        self.scale = min(2.4, 150 / float(casing.gap), 90 / deep)
        self.low = top + deep * self.scale
        middle = (LEFT + RIGHT) / 2
        self.left, self.right = (middle + side * float(casing.gap) * self.scale / 2 for side in (-1, 1))

    def casing(self) -> None:
        """The casing with cloth below it, broken off left and right, and its row open at the gap."""
        foot = self.low + 48
        cuts = [wave((x, self.top), (x, foot)) for x in (LEFT, RIGHT)]
        face(self.sheet, [(LEFT, self.top), (RIGHT, self.top), *cuts[1][1:], *reversed(cuts[0])], wrong=False)
        for cut in cuts:
            self.sheet.line(cut, SOFT, PLAIN)
        self.sheet.line([(LEFT, self.top), (RIGHT, self.top)], INK, PLAIN, (9.0, 2.5, 1.5, 2.5))
        self.sheet.line([(LEFT, self.low), (RIGHT, self.low)], INK, PLAIN)
        row = self.low - float(EDGE_STITCH) * self.scale
        self.sheet.line([(LEFT, row), (self.left, row)], INK, THICK, SEAM)
        self.sheet.line([(self.right, row), (RIGHT, row)], INK, THICK, SEAM)
        for x in (self.left, self.right):
            self.sheet.lines([[(x, row - 6), (x, self.low + 6)]], INK, THICK)
        if self.in_front:
            middle = (self.left + self.right) / 2
            self.sheet.write((middle, self.top - 6), self.words.text("figure-cord-front"), "middle", colour=SOFT)
            return
        seam = self.left - float(BESIDE_SEAM) * self.scale
        self.sheet.line([(seam, self.top), (seam, foot)], INK, PLAIN)
        self.sheet.write((seam, self.top - 6), self.words.text("figure-side-seam"), "middle", colour=SOFT)


def _bodkin(sheet: Sheet, lead: float, y: float, words: Words) -> None:
    """A bodkin with the end of the elastic in its eye, seen through the cloth."""
    body = [(lead - 14, y - 6), (lead + 34, y - 4), (lead + 44, y), (lead + 34, y + 4), (lead - 14, y + 6)]
    sheet.line(body, INK, THICK, HIDDEN, fill=GROUND, closed=True)
    sheet.line(
        [(lead - 8, y - 2.5), (lead + 2, y - 2.5), (lead + 2, y + 2.5), (lead - 8, y + 2.5)], INK, PLAIN, closed=True
    )
    sheet.write((lead + 5, y - 13), words.text("figure-elastic-bodkin"))


def _scale(overlap: Fraction, width: Fraction) -> float:
    return min(4.0, 110 / float(overlap), 60 / float(width))


def _marked(sheet: Sheet, y: float, overlap: Fraction, width: Fraction, words: Words, numbers: Numbers) -> float:
    """The two ends before they are lapped: a line across one, a cross at the other, on the same face."""
    lap, high = float(overlap) * _scale(overlap, width), min(26.0, float(width) * _scale(overlap, width))
    low, end, start = y + high, 180.0, 210.0
    sheet.line([(40, y), (end, y), (end, low), (40, low)], INK, PLAIN, fill=ELASTIC)
    sheet.line([(360, y), (start, y), (start, low), (360, low)], INK, PLAIN, fill=PALE)
    for x in (40.0, 360.0):
        sheet.line(wave((x, y), (x, low)), SOFT, PLAIN)
    sheet.line([(end - lap, y), (end - lap, low)], ACCENT, THICK)
    sheet.across(end - lap, end, y - 14, words.said(Length(overlap), "lap"), y - 2)
    sheet.callout((end - lap - 34, low + 16), numbers.at("insert-elastic-line"), (end - lap, low - 4))
    cross = min(start + lap + BEYOND, 344)
    _cross(sheet, cross, y + high / 2)
    sheet.callout((cross - 30, low + 16), numbers.at("insert-elastic-cross"), (cross - 4, y + high / 2 + 4))
    return low + 20


def _shortened(sheet: Sheet, y: float, overlap: Fraction, width: Fraction, words: Words, numbers: Numbers) -> None:
    """The ends held by a safety pin as they were tried on: the line where the upper one ends, and where the lower is cut."""
    scale = _scale(overlap, width)
    high, lap = float(width) * scale, float(overlap) * scale
    end, low = 230.0, y + high
    cut = end - lap
    tail = cut - 50
    sheet.line([(360, y + 4), (tail, y + 4), (tail, low + 4), (360, low + 4)], INK, PLAIN, fill=PALE)
    sheet.line([(40, y), (end, y), (end, low), (40, low)], INK, PLAIN, fill=ELASTIC)
    for x in (40.0, 360.0):
        sheet.line(wave((x, y), (x, low + 4)), SOFT, PLAIN)
    for x in (tail, cut):  # behind the upper end
        sheet.line([(x, y), (x, low)], INK, PLAIN, HIDDEN)
    sheet.line([(end, y), (end, low + 4)], ACCENT, THICK)
    middle = (y + low) / 2
    sheet.line([(cut + lap / 2 - 16, middle), (cut + lap / 2 + 16, middle)], INK, THICK)
    for x in (cut + lap / 2 - 16, cut + lap / 2 + 16):
        sheet.disc((x, middle), 3.5, INK)
    sheet.callout((cut + lap / 2, low + 18), numbers.at("insert-elastic-lap-to-try"), (cut + lap / 2, middle))
    sheet.across(cut, end, y - 14, words.said(Length(overlap), "lap"), y - 2)
    sheet.callout((end + 34, low + 18), numbers.at("insert-elastic-shorten"), (end, low + 2))
    sheet.write((cut - 6, low + 22), words.text("figure-elastic-cut-here"), "end")
    sheet.line([(cut - 20, low + 10), (cut, low)], SOFT, THIN)


def _cross(sheet: Sheet, x: float, y: float) -> None:
    sheet.lines([[(x - 5, y - 5), (x + 5, y + 5)], [(x - 5, y + 5), (x + 5, y - 5)]], ACCENT, THICK)


def _lap(
    sheet: Sheet, y: float, overlap: Fraction, width: Fraction, words: Words, numbers: Numbers, *, crossed: bool
) -> float:
    """The two ends lapped, with two rows of zigzag and one along each end. crossed: whether the end has borne a cross."""
    scale = _scale(overlap, width)
    high, lap = float(width) * scale, float(overlap) * scale
    left, right = 200 - lap / 2, 200 + lap / 2
    low = y + high
    sheet.line([(70, y), (right, y), (right, low), (70, low)], INK, PLAIN, fill=ELASTIC)
    sheet.line([(360, y + 4), (left, y + 4), (left, low + 4), (360, low + 4)], INK, PLAIN, fill=PALE)
    sheet.line([(right, y + 4), (right, low + 4)], INK, THIN, HIDDEN)
    for x in (70.0, 360.0):
        sheet.line(wave((x, y), (x, low + 4)), SOFT, PLAIN)
    if crossed:
        _cross(sheet, right + BEYOND, (y + low) / 2 + 4)
    for share in (0.33, 0.67):
        at = y + 4 + high * share
        count = max(4, round(lap / 5))
        sheet.line(
            [(left + 4 + (lap - 8) * i / count, at + (3 if i % 2 else -3)) for i in range(count + 1)], ACCENT, THICK
        )
    for x in (left + 4, right - 4):
        count = max(4, round(high / 5))
        sheet.line(
            [(x + (2.5 if i % 2 else -2.5), y + 6 + (high - 6) * i / count) for i in range(count + 1)], ACCENT, PLAIN
        )
    sheet.across(left, right, y - 14, words.said(Length(overlap), "lap"), y - 2)
    sheet.upright(y, low, 58, words.said(Length(width), "width"), 68, "left")
    sheet.callout((left - 34, low + 18), numbers.at("insert-elastic-lap", "insert-elastic-lap-long"), (left, low + 2))
    sheet.write((left - 16, low + 22), words.text("figure-elastic-cut-end"))
    sheet.callout((right + 34, y - 14), numbers.at("insert-elastic-sew"), (right - 2, y + 10))
    return low + 24


def _beside(sheet: Sheet, y: float, casing: Fraction, loop: Fraction, words: Words) -> None:
    long = sheet.width - 2 * MARGIN
    scale = long / float(casing)
    for top, length, fill, message, name in (
        (y, casing, "#f1e3d3", "figure-elastic-casing", "casing"),
        (y + 34, loop, ELASTIC, "figure-elastic-loop", "loop"),
    ):
        end = MARGIN + float(length) * scale
        sheet.line([(MARGIN, top), (end, top), (end, top + 12), (MARGIN, top + 12)], INK, PLAIN, fill=fill, closed=True)
        sheet.write((MARGIN, top + 27), words.text(message, {name: Length(length)}))
