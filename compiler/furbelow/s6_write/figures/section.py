"""A cut through the work, seen from the side: plies with thickness, folds and stitches going through them.

In the manner of ISO 4916 (Textiles, Seam types, 1991), which draws each seam as the cut through its plies with the needle's
way through them. Here the inside of the garment is up; widths are to scale, plies are drawn thicker than they are; the
wrong half of a ply is hatched, as wrong sides are everywhere; plies of cloth without a right side are plain.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import lru_cache
from itertools import pairwise
from math import cos, hypot, pi, sin

from furbelow.garment.message import Value, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed
from furbelow.s6_write.figures.language import (
    ACCENT,
    ELASTIC,
    INK,
    MARGIN,
    PLAIN,
    RIGHT_SIDE,
    SOFT,
    THICK,
    THIN,
    WRONG_SIDE,
)
from furbelow.s6_write.figures.pen import Mark, Point, Sheet
from furbelow.s6_write.words.words import Words

LEVEL = 12.5  # units from one ply to the next
PLY = 8.5  # units that a ply is thick


class Section:
    """A cut with its own zero: x in mm to the right, levels upwards, one ply each."""

    def __init__(self, sheet: Sheet, zero: Point, scale: float) -> None:
        self.sheet, self.zero, self.scale = sheet, zero, scale

    def at(self, x_mm: float, level: float) -> Point:
        return (self.zero[0] + x_mm * self.scale, self.zero[1] - level * LEVEL)

    def turn(self, x_mm: float, low: float, high: float, to_right: bool = True) -> list[Point]:
        """A fold at x from one level to another, bulging to one side."""
        x, start = self.at(x_mm, low)
        end = self.at(x_mm, high)[1]
        radius, middle = abs(end - start) / 2, (start + end) / 2
        side, way = (1 if to_right else -1), (1 if end > start else -1)
        bulge = min(radius, 7.0)
        return [(x + side * bulge * sin(pi * i / 6), middle - way * radius * cos(pi * i / 6)) for i in range(7)]

    def ply(self, points: Sequence[Point], wrong: int = 0, gathered: bool = False, trim: bool = False) -> None:
        """A ply along the points; `wrong` is 1 where its wrong side lies left of the way along it, -1 right, 0 unmarked."""
        self.sheet.add(*_ply(tuple(points), wrong, gathered, trim))

    def stitch(self, x_mm: float, low: float, high: float, worked: bool = True) -> Point:
        """A stitch through the plies from one level to another; where its upper end is."""
        ink = ACCENT if worked else INK
        (x, bottom), (_, top) = self.at(x_mm, low), self.at(x_mm, high)
        bottom, top = bottom + 6, top - 6
        self.sheet.line([(x, bottom), (x, top)], ink, THICK)
        self.sheet.lines([[(x - 3.5, bottom), (x + 3.5, bottom)], [(x - 3.5, top), (x + 3.5, top)]], ink, THICK)
        return (x, top)

    def overcast(self, x_mm: float, low: float, high: float, worked: bool = True, way: int = 1) -> None:
        """The thread of a neatening stitch round the cut edges of plies that end at x, to the right or, with way -1, left."""
        (x, bottom), (_, top) = self.at(x_mm, low), self.at(x_mm, high)
        back, out = x - 9 * way, x + 6 * way
        points = [(back, top - 6), (out, top - 6), (out, bottom + 6), (back, bottom + 6), (back, top - 6)]
        self.sheet.line(points, ACCENT if worked else INK, THICK)

    def bar(self, left_mm: float, right_mm: float, level: float) -> None:
        """Elastic, cut through: a filled bar with cross lines."""
        (left, y), (right, _) = self.at(left_mm, level), self.at(right_mm, level)
        self.sheet.line(
            [(left, y - 3), (right, y - 3), (right, y + 3), (left, y + 3)], INK, PLAIN, fill=ELASTIC, closed=True
        )
        count = max(2, round((right - left) / 5))
        xs = [left + (right - left) * i / count for i in range(1, count)]
        self.sheet.lines([[(x, y - 3), (x, y + 3)] for x in xs], INK, THIN)


@lru_cache(maxsize=256)  # as `pen` keeps marks
def _ply(points: Sequence[Point], wrong: int, gathered: bool, trim: bool) -> tuple[Mark, ...]:
    sheet = Sheet()
    if gathered:
        points = _rippled(points)
    sheet.line(points, INK, PLY)
    sheet.line(points, ELASTIC if trim else RIGHT_SIDE, PLY - 2 * PLAIN)
    if wrong:
        half = PLY / 2 - PLAIN
        sheet.line(_beside(points, wrong * half / 2), WRONG_SIDE, half)
        sheet.lines(_slants(points, wrong), SOFT, THIN)
    return tuple(sheet.marks)


def _rippled(points: Sequence[Point]) -> list[Point]:
    """The way along a gathered ply, with small waves."""
    rippled: list[Point] = []
    for (x0, y0), (x1, y1) in pairwise(points):
        length = hypot(x1 - x0, y1 - y0)
        steps = max(1, round(length / 2.5))
        for i in range(steps + 1):
            share, off = i / steps, 1.6 * sin(2 * pi * i / 6)
            across = (-(y1 - y0) / (length or 1), (x1 - x0) / (length or 1))
            rippled.append((x0 + share * (x1 - x0) + off * across[0], y0 + share * (y1 - y0) + off * across[1]))
    return rippled


def _beside(points: Sequence[Point], off: float) -> list[Point]:
    """The way moved sideways, to its left where `off` is positive."""
    moved = []
    for index, (x, y) in enumerate(points):
        (x0, y0), (x1, y1) = points[max(index - 1, 0)], points[min(index + 1, len(points) - 1)]
        length = hypot(x1 - x0, y1 - y0) or 1.0
        moved.append((x + off * (y1 - y0) / length, y - off * (x1 - x0) / length))
    return moved


def _slants(points: Sequence[Point], side: int) -> list[list[Point]]:
    """Slanting strokes from the middle of a ply to one of its sides, evenly spaced."""
    strokes: list[list[Point]] = []
    left_over = 3.0
    for (x0, y0), (x1, y1) in pairwise(points):
        length = hypot(x1 - x0, y1 - y0)
        if not length:
            continue
        along = ((x1 - x0) / length, (y1 - y0) / length)
        out = (along[1] * side, -along[0] * side)
        at, far = left_over, PLY / 2 - PLAIN / 2
        while at < length:
            x, y = x0 + at * along[0], y0 + at * along[1]
            strokes.append([(x, y), (x + far * out[0] + 2 * along[0], y + far * out[1] + 2 * along[1])])
            at += 4.5
        left_over = at - length
    return strokes


def named_below(sheet: Sheet, y: float, left: str, right: str = "") -> float:
    """The names of the cloth left and right under a cut; the base line after the last row."""
    room = 180.0 if right else 300.0
    return max(
        sheet.paragraph((MARGIN, y), left, room),
        sheet.paragraph((sheet.width - MARGIN, y), right, room, "end"),
    )


def captioned(words: Words, done: Performed, message: str, values: Mapping[str, Value | str]) -> str:
    """A caption that ends with `{ figure-hatched }`: what the hatching means, where a cloth in the cut has a right side."""
    words.read("figures-section")
    return words.text(message, {**values, "sided": flag(_sided(done, words.say))})


def _sided(done: Performed, say: Phrasing) -> bool:
    solved = say.solved
    cloths = {solved.pieces[piece].piece.cloth.text for piece in done.touches}
    return any(solved.materials[cloth].material.has_right_side for cloth in cloths)
