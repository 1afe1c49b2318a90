"""Edges of cloth, each state with a line pattern of its own, and the faces of cloth between them."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise
from math import hypot, pi, sin
from typing import assert_never

from furbelow.s6_write.figures.language import (
    ACCENT,
    ELASTIC,
    FOLD,
    HEAVY,
    HIDDEN,
    INK,
    PLAIN,
    RIGHT_SIDE,
    SEAM,
    SOFT,
    THICK,
    THIN,
    WRONG_SIDE,
    Pattern,
)
from furbelow.s6_write.figures.pen import Mark, Point, Sheet

HATCH = 8.0  # between the lines of a wrong side
TRIM = 8.0  # units that a trim is wide, which would be too narrow to see


def face(sheet: Sheet, outline: Sequence[Point], wrong: bool) -> None:
    """An area of cloth: the right side tinted, the wrong side white and hatched."""
    sheet.area(outline, WRONG_SIDE if wrong else RIGHT_SIDE)
    if wrong:
        sheet.lines(hatching(tuple(outline)))


def left_over(sheet: Sheet, outline: Sequence[Point]) -> None:
    """An area of cloth that stays over: white, hatched both ways."""
    sheet.area(outline, WRONG_SIDE)
    sheet.lines([*hatching(tuple(outline)), *_mirrored(hatching(_mirrored([outline])[0]))])
    sheet.line(outline, SOFT, THIN, closed=True)


def _mirrored(lines: Sequence[Sequence[Point]]) -> list[tuple[Point, ...]]:
    return [tuple([(-x, y) for x, y in line]) for line in lines]


@lru_cache(maxsize=128)  # as `pen` keeps marks
def hatching(outline: tuple[Point, ...], gap: float = HATCH) -> tuple[tuple[Point, Point], ...]:
    """Slanting lines inside an outline, worked out rather than clipped."""
    corners = list(pairwise([*outline, outline[0]]))
    slants = [x + y for x, y in outline]
    strokes: list[tuple[Point, Point]] = []
    slant = (int(min(slants) / gap) + 1) * gap
    while slant < max(slants):
        met = []
        for (x0, y0), (x1, y1) in corners:
            before, after = x0 + y0 - slant, x1 + y1 - slant
            if (before < 0) != (after < 0):
                share = before / (before - after)
                met.append((x0 + share * (x1 - x0), y0 + share * (y1 - y0)))
        met.sort()
        strokes += [(met[index], met[index + 1]) for index in range(0, len(met) - 1, 2)]
        slant += gap
    return tuple(strokes)


def edge(sheet: Sheet, start: Point, end: Point, pattern: Pattern, inward: Point, worked: bool = False) -> None:
    """An edge from start to end in the pattern of its state; `inward` is the unit way into the cloth.

    worked: this step changes it, so that it is drawn thicker and in the accent.
    """
    sheet.add(*_edge(start, end, pattern, inward, worked))


@lru_cache(maxsize=256)  # as `pen` keeps marks
def _edge(start: Point, end: Point, pattern: Pattern, inward: Point, worked: bool) -> tuple[Mark, ...]:
    sheet = Sheet()
    ink = ACCENT if worked else INK
    bold = 0.6 if worked else 0.0
    ruler = _Along(start, end, inward)
    if pattern == "raw":
        sheet.line([start, end], ink, PLAIN + bold)
        sheet.lines(
            ([ruler.at(s, 0), ruler.at(s + (2 if i % 2 else -2), -4)] for i, s in enumerate(ruler.steps(9))), ink, THIN
        )
    elif pattern == "selvedge":
        sheet.line([start, end], ink, THICK + bold)
        sheet.line([ruler.at(0, 4), ruler.at(ruler.length, 4)], ink, PLAIN, (1.2, 4))
    elif pattern == "neatened":
        sheet.line([start, end], ink, PLAIN + bold)
        points = [ruler.at(s, 4 if i % 2 else -1.5) for i, s in enumerate(ruler.steps(4, ends=True))]
        sheet.line(points, ink, PLAIN)
    elif pattern == "hemmed":
        sheet.line([start, end], ink, HEAVY + bold)
        sheet.line([ruler.at(0, 5.5), ruler.at(ruler.length, 5.5)], ink, PLAIN, SEAM)
    elif pattern == "trimmed":
        band = [start, end, ruler.at(ruler.length, TRIM), ruler.at(0, TRIM)]
        sheet.line(band, ink, PLAIN + bold, fill=ELASTIC, closed=True)
        sheet.line([ruler.at(0, TRIM / 2), ruler.at(ruler.length, TRIM / 2)], ink, PLAIN, SEAM)
    elif pattern == "gathered":
        sheet.line(ruler.wave(1.8, 8), ink, PLAIN + bold)
        sheet.lines(
            ([ruler.at(s, 3), ruler.at(s + 1.5, 11 if i % 2 else 7)] for i, s in enumerate(ruler.steps(6))), ink, THIN
        )
    elif pattern == "sewn":
        sheet.line([start, end], ink, PLAIN + bold)
        sheet.line([ruler.at(0, 3.5), ruler.at(ruler.length, 3.5)], ink, PLAIN, SEAM)
    elif pattern == "enclosed":
        sheet.line([start, end], ink, HEAVY + bold, HIDDEN)
    elif pattern == "fold":
        sheet.line([start, end], ink, PLAIN + bold, FOLD)
    else:
        assert_never(pattern)
    return tuple(sheet.marks)


def break_line(sheet: Sheet, points: Sequence[Point]) -> None:
    """The wavy line at which a drawing is broken off."""
    sheet.line(points, SOFT, PLAIN)


@lru_cache(maxsize=128)
def wave(start: Point, end: Point, height: float = 3, length: float = 16) -> tuple[Point, ...]:
    """Points of a wavy line from start to end."""
    return tuple(_Along(start, end, (0, 0)).wave(height, length))


class _Along:
    """Places along an edge: `at(s, d)` is s along it and d into the cloth."""

    def __init__(self, start: Point, end: Point, inward: Point) -> None:
        self.start, self.inward = start, inward
        self.length = hypot(end[0] - start[0], end[1] - start[1]) or 1.0
        self.way = ((end[0] - start[0]) / self.length, (end[1] - start[1]) / self.length)

    def at(self, along: float, into: float) -> Point:
        along = min(max(along, 0.0), self.length)
        return (
            self.start[0] + along * self.way[0] + into * self.inward[0],
            self.start[1] + along * self.way[1] + into * self.inward[1],
        )

    def steps(self, gap: float, ends: bool = False) -> list[float]:
        count = max(1, round(self.length / gap))
        return [self.length * i / count for i in range(0 if ends else 1, count + 1 if ends else count)]

    def wave(self, height: float, length: float) -> list[Point]:
        count = max(1, round(self.length / length))
        across = (-self.way[1], self.way[0])
        points = []
        for i in range(count * 8 + 1):
            along, off = self.length * i / (count * 8), height * sin(2 * pi * i / 8)
            points.append(
                (
                    self.start[0] + along * self.way[0] + off * across[0],
                    self.start[1] + along * self.way[1] + off * across[1],
                )
            )
        return points
