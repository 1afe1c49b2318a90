"""A sheet to draw on: lines, cloth and fitted words as SVG in the safe subset.

Coordinates are units of the sheet, y downwards; they are written in tenths. The subset: svg, g, path and text with presentation attributes only, so that
a browser under a strict policy and the PDF writer draw the same. No style, class, marker, pattern, clip, filter or link.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import cache, lru_cache
from html import escape
from math import atan2, cos, hypot, pi, sin

from furbelow.diagnose.unseen import without_unseen
from furbelow.named import NamedTuple
from furbelow.s6_write.figures import advances
from furbelow.s6_write.figures.language import (
    ACCENT,
    ASCENT,
    DESCENT,
    GROUND,
    INK,
    LEADING,
    MARGIN,
    PLAIN,
    SIZE,
    SOFT,
    THIN,
    WIDTH,
)
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.holes import bare, without_last, words_of

Point = tuple[float, float]
# The font by its name in the page, by its own name in the printed guide, and what may stand in for it elsewhere.
FAMILY = "'Furbelow Text', 'Source Sans 3', 'Segoe UI', Helvetica, Arial, sans-serif"


class Box(NamedTuple):
    """The room that words take."""

    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: Box) -> bool:
        return (
            self.left < other.right and other.left < self.right and self.top < other.bottom and other.top < self.bottom
        )


class Mark(NamedTuple):
    """A path, and how far up and down it reaches."""

    drawn: str
    top: float
    bottom: float


class Sheet:
    """Marks as they are made; `svg()` gives the drawing, cut to what was drawn in height."""

    def __init__(self, width: float = WIDTH) -> None:
        self.width = width
        self.words: list[Box] = []
        self.heading = ""
        self._said: list[str] = []
        self.marks: list[Mark] = []
        self._last: list[str] = []  # words and their grounds lie above everything
        self._top, self._bottom = float("inf"), float("-inf")

    # --- lines and areas ---

    def line(
        self,
        points: Sequence[Point],
        colour: str = INK,
        width: float = PLAIN,
        dash: Sequence[float] = (),
        fill: str = "none",
        closed: bool = False,
        round_cap: bool = False,
    ) -> None:
        """A line through the points; `closed` with a fill is an area."""
        self.add(_marked((tuple(points),), colour, width, tuple(dash), fill, closed, round_cap))

    def lines(self, strokes: Iterable[Sequence[Point]], colour: str = SOFT, width: float = THIN) -> None:
        """Many lines of one kind as a single path: hatching, ticks."""
        drawn = tuple([tuple(stroke) for stroke in strokes if len(stroke) > 1])
        if drawn:
            self.add(_marked(drawn, colour, width))

    def area(self, points: Sequence[Point], fill: str, colour: str = "none", width: float = PLAIN) -> None:
        self.line(points, colour, width, (), fill, closed=True)

    def arrow(self, start: Point, end: Point, colour: str = INK, width: float = PLAIN, head: float = 5) -> None:
        """A line with its head, a filled triangle, at the end."""
        way = atan2(end[1] - start[1], end[0] - start[0])
        foot = (end[0] - head * 0.8 * cos(way), end[1] - head * 0.8 * sin(way))
        self.line([start, foot], colour, width)
        self.area(_head(end, way, head), colour)

    def disc(self, centre: Point, radius: float, fill: str, colour: str = "none", width: float = PLAIN) -> None:
        x, y = centre
        r = number(radius)
        drawn = f"M{number(x - radius)} {number(y)}a{r} {r} 0 1 0 {number(2 * radius)} 0a{r} {r} 0 1 0 {number(-2 * radius)} 0z"
        self.add(Mark(_path(drawn, colour, width, (), fill, False), y - radius, y + radius))

    def add(self, *marks: Mark) -> None:
        for mark in marks:
            self._reach(mark.top, mark.bottom)
        self.marks += marks

    # --- words ---

    def write(
        self,
        at: Point,
        words: str,
        anchor: str = "start",
        bold: bool = False,
        colour: str = INK,
        ground: bool = False,
    ) -> Box:
        """One line of words with its base line at the point; the length is fixed, so any font fits the same box."""
        words = without_unseen(words)
        self._said.append(words)
        return self._set(at, words, anchor, bold, colour, ground)

    def _set(self, at: Point, words: str, anchor: str, bold: bool, colour: str, ground: bool = False) -> Box:
        length = width_of(words, bold)
        left = at[0] - {"start": 0.0, "middle": length / 2, "end": length}[anchor]
        # Words of a language may be longer than was foreseen: none leaves the sheet.
        left = max(0.0, min(left, self.width - length))
        box = Box(left, at[1] - ASCENT, left + length, at[1] + DESCENT)
        if not words:
            return box
        self._reach(box.top, box.bottom)
        self.words.append(box)
        if ground:
            corners = [
                (box.left - 2, box.top),
                (box.right + 2, box.top),
                (box.right + 2, box.bottom),
                (box.left - 2, box.bottom),
            ]
            drawn = _track(corners) + "z"
            self._last.append(_path(drawn, "none", 0, (), GROUND, False))
        self._last.append(_worded(left, at[1], length, words, bold, colour))
        return box

    def paragraph(
        self, at: Point, words: str, width: float, anchor: str = "start", bold: bool = False, colour: str = INK
    ) -> float:
        """Words broken to lines of at most that width; the base line after the last one."""
        y = at[1]
        for row in broken(words, width, bold):
            self.write((at[0], y), row, anchor, bold, colour)
            y += LEADING
        return y

    def callout(self, at: Point, figure: int | None, to: Point | None = None) -> None:
        """The number of the sentence that a place belongs to, in a ring, with a line to the place."""
        if figure is None:
            return
        shown = str(figure)
        radius = max(9.0, width_of(shown, True) / 2 + 3.5)
        if to is not None:
            way = atan2(to[1] - at[1], to[0] - at[0])
            if hypot(to[0] - at[0], to[1] - at[1]) > radius:
                self.line([(at[0] + radius * cos(way), at[1] + radius * sin(way)), to], ACCENT, THIN)
        self.disc(at, radius, GROUND, ACCENT, 1.5)
        self._set((at[0], at[1] + 4.4), shown, "middle", True, ACCENT)

    def head(self, at: Point, words: str, ground: bool = False) -> None:
        """A line that says what is drawn below it; the first of them is what the drawing is called elsewhere."""
        self.heading = self.heading or without_unseen(words)
        self.write(at, words, bold=True, ground=ground)

    def place(self, at: Point, letters: Sequence[str], anchor: str = "start", shown: str = "") -> None:
        """The signs by which a place is explained beside the drawing. shown: as they are written together."""
        self.write(at, shown or ", ".join(letters), anchor, bold=True)

    # --- dimensions ---

    def across(
        self, left: float, right: float, y: float, words: str, from_y: float | None = None, below: bool = False
    ) -> None:
        """A level dimension; `from_y` is where its extension lines begin. Words too wide for it stand beside it."""
        self._extend(
            [((left, from_y), (left, y)), ((right, from_y), (right, y))] if from_y is not None else [], y, None
        )
        self._dimension((left, y), (right, y))
        middle = (left + right) / 2
        half = width_of(words) / 2
        middle = min(max(middle, MARGIN + half), self.width - MARGIN - half)
        # Words that are longer than the dimension keep clear of the ends of its extension lines.
        clear = 6 if 2 * half > right - left else 3
        self.write((middle, y + (ASCENT + clear if below else -4)), words, "middle")

    def upright(
        self, top: float, bottom: float, x: float, words: str, from_x: float | None = None, side: str = "right"
    ) -> None:
        """An upright dimension with its words to the right or left."""
        self._extend(
            [((from_x, top), (x, top)), ((from_x, bottom), (x, bottom))] if from_x is not None else [], None, x
        )
        self._dimension((x, top), (x, bottom))
        anchor, shift = ("start", 6.0) if side == "right" else ("end", -6.0)
        self.write((x + shift, (top + bottom) / 2 + 4.5), words, anchor)

    def slanting(self, start: Point, end: Point, words: str) -> None:
        """A dimension along a slanting line, its words right of the middle."""
        self._dimension(start, end)
        self.write(((start[0] + end[0]) / 2 + 6, (start[1] + end[1]) / 2 + 4.5), words, ground=True)

    def _extend(self, pairs: list[tuple[Point, Point]], y: float | None, x: float | None) -> None:
        past = 3.0
        strokes = []
        for near, far in pairs:
            if y is not None:
                way = 1 if y > near[1] else -1
                strokes.append([(near[0], near[1] + 2 * way), (far[0], far[1] + past * way)])
            else:
                way = 1 if far[0] > near[0] else -1
                strokes.append([(near[0] + 2 * way, near[1]), (far[0] + past * way, far[1])])
        self.lines(strokes)

    def _dimension(self, start: Point, end: Point) -> None:
        way = atan2(end[1] - start[1], end[0] - start[0])
        size = min(5.0, hypot(end[0] - start[0], end[1] - start[1]) / 2.5)
        self.line([start, end], SOFT, THIN)
        self.area(_head(end, way, size), SOFT)
        self.area(_head(start, way + pi, size), SOFT)

    # --- the drawing ---

    @property
    def said(self) -> str:
        """All that is written in it, the numbers of sentences aside: alike in drawings of which one can be shown for both."""
        return " / ".join(self._said)

    def room(self, box: Box) -> bool:
        """Whether words could stand there: nothing else is written, and it lies on the sheet."""
        inside = box.left >= MARGIN / 2 and box.right <= self.width - MARGIN / 2
        return inside and not any(box.meets(other) for other in self.words)

    @property
    def bottom(self) -> float:
        return self._bottom

    def figure(self, key: str, alt: str, caption: str, *, like: str = "") -> Figure:
        """The drawing with its heading and the letters of its places."""
        return Figure(key, self.svg(), alt, caption, like=like, heading=self.heading)

    def svg(self) -> str:
        top, height = self._top - MARGIN, self._bottom - self._top + 2 * MARGIN
        drawn = "".join([mark.drawn for mark in self.marks])
        size = f'width="{round(self.width)}" height="{round(height)}"'
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" {size} viewBox="0 {number(top)} {number(self.width)} {number(height)}"'
            f' font-family="{FAMILY}" fill="none" stroke-linejoin="round">{drawn}{"".join(self._last)}</svg>'
        )

    def _reach(self, top: float, bottom: float) -> None:
        if top < self._top:
            self._top = top
        if bottom > self._bottom:
            self._bottom = bottom


def number(value: float) -> str:
    """A coordinate as it is written: in whole tenths of a unit, which is short and the same on every machine."""
    return str(round(value * 10))


@lru_cache(maxsize=4096)  # a guide says the same words many times
def width_of(words: str, bold: bool = False) -> float:
    """The length of words set in the shipped font at SIZE."""
    table = _widths(bold)
    return sum(table.get(letter, 1000 if ord(letter) > 0x2FFF else 620) for letter in bare(words)) * SIZE / 1000


def broken(words: str, width: float, bold: bool = False) -> list[str]:
    """Words in lines of at most that width; a single word that is longer gets a line of its own."""
    rows: list[str] = []
    for word in words_of(words):
        if rows and width_of(f"{rows[-1]} {word}", bold) <= width:
            rows[-1] += f" {word}"
        else:
            rows.append(word)
    return rows


def shortened(words: str, width: float, bold: bool = False) -> str:
    """The words, cut with an ellipsis where they are longer than that width."""
    if width_of(words, bold) <= width:
        return words
    while words and width_of(f"{words}…", bold) > width:
        words = without_last(words).rstrip()
    return f"{words}…"


def spread(wanted: Sequence[float], heights: Sequence[float], low: float, high: float) -> list[float]:
    """Middles for labels of these heights, in order, as near to where they are wanted as they fit one below another."""
    placed: list[float] = []
    edge = low
    for middle, height in zip(wanted, heights, strict=True):
        placed.append(max(middle, edge + height / 2))
        edge = placed[-1] + height / 2
    edge = max(high, low + sum(heights))  # what does not fit reaches further down
    for index in range(len(placed) - 1, -1, -1):
        placed[index] = min(placed[index], edge - heights[index] / 2)
        edge = placed[index] - heights[index] / 2
    return placed


@cache
def _widths(bold: bool) -> dict[str, int]:
    table = advances.SEMIBOLD if bold else advances.REGULAR
    return {letter: width for width, letters in table.items() for letter in letters}


def _head(tip: Point, way: float, size: float) -> list[Point]:
    wide = size * 0.36
    back = (tip[0] - size * cos(way), tip[1] - size * sin(way))
    return [
        tip,
        (back[0] - wide * sin(way), back[1] + wide * cos(way)),
        (back[0] + wide * sin(way), back[1] - wide * cos(way)),
    ]


@lru_cache(maxsize=2048)  # the guides of a class are drawn mostly alike
def _worded(left: float, base: float, length: float, words: str, bold: bool, colour: str) -> str:
    """One line of words as long as that."""
    weight = ' font-weight="600"' if bold else ""
    return (
        f'<text x="{number(left)}" y="{number(base)}" font-size="{number(SIZE)}"{weight} fill="{colour}"'
        f' textLength="{number(length)}" lengthAdjust="spacingAndGlyphs">{escape(words, quote=False)}</text>'
    )


@lru_cache(maxsize=2048)  # see `_worded`
def _marked(
    strokes: tuple[tuple[Point, ...], ...],
    colour: str,
    width: float,
    dash: tuple[float, ...] = (),
    fill: str = "none",
    closed: bool = False,
    round_cap: bool = False,
) -> Mark:
    """Lines of one kind as a single path."""
    heights = [y for stroke in strokes for _, y in stroke]
    drawn = "".join(map(_track, strokes)) + ("z" if closed else "")
    return Mark(_path(drawn, colour, width, dash, fill, round_cap), min(heights), max(heights))


def _track(points: Sequence[Point]) -> str:
    """Path data of a line through the points: steps from one rounded place to the next, which keeps it short."""
    rest = iter(points)
    first_x, first_y = next(rest)
    start_x, start_y = before_x, before_y = round(first_x * 10), round(first_y * 10)
    steps = []
    for point_x, point_y in rest:
        x, y = round(point_x * 10), round(point_y * 10)
        steps.append(f"{x - before_x} {y - before_y}")
        before_x, before_y = x, y
    return f"M{start_x} {start_y}l{' '.join(steps)}".replace(" -", "-")


def _path(drawn: str, colour: str, width: float, dash: Sequence[float], fill: str, round_cap: bool) -> str:
    stroke = "" if colour == "none" else f' stroke="{colour}" stroke-width="{number(width)}"'
    if dash:
        stroke += f' stroke-dasharray="{" ".join(number(length) for length in dash)}"'
    if round_cap:
        stroke += ' stroke-linecap="round"'
    filled = "" if fill == "none" else f' fill="{fill}"'
    return f'<path d="{drawn}"{filled}{stroke}/>'
