"""A piece cut between two arcs round one centre: a circular flounce or a circle skirt."""

from __future__ import annotations

from fractions import Fraction
from math import ceil, cos, degrees, pi, sin, sqrt, tan

from furbelow.named import NamedTuple

WIDEST_STACKED = 1.4  # radians of half the angle: beyond, the ends lie nearly level


class RingSector(NamedTuple):
    """A part of a ring. All lengths in mm.

    top, hem: the two finished arcs, hem the longer; depth: between them.
    above, below: what seams and turns take beyond the two arcs; ends: the margin at each of the straight ends.
    stacked: so many lie in one rectangle, each close below the one before.
    Source: R = top x depth / (bottom - top): Baldt, Clothing for Women, 1916, draft of a circular flounce.
    """

    top: Fraction
    hem: Fraction
    depth: Fraction
    above: Fraction = Fraction(0)
    below: Fraction = Fraction(0)
    ends: Fraction = Fraction(0)
    stacked: int = 1

    @property
    def radius(self) -> Fraction:
        """From the centre to the finished top."""
        return self.top * self.depth / (self.hem - self.top)

    @property
    def angle(self) -> Fraction:
        """Between the straight ends without their margins, as arc by radius."""
        return (self.hem - self.top) / self.depth

    @property
    def degrees(self) -> float:
        return degrees(float(self.angle))

    @property
    def inner(self) -> Fraction:
        """From the centre to the cut top; nothing is left to cut at where it is not above 0."""
        return self.radius - self.above

    @property
    def outer(self) -> Fraction:
        """From the centre to the cut bottom."""
        return self.radius + self.depth + self.below

    @property
    def cut_top(self) -> Fraction:
        """Along the cut top, with the margins at the ends."""
        return self.angle * self.inner + 2 * self.ends

    @property
    def area(self) -> Fraction:
        """Of the cut piece in mm2, with its margins; exact, for the angle is a plain ratio."""
        return self.angle / 2 * (self.outer**2 - self.inner**2) + 2 * self.ends * (self.outer - self.inner)

    @property
    def apart(self) -> Fraction:
        """Arc that is left between the two straight ends at the cut top, where they are nearest; below 0 none is."""
        return (2 * Fraction(pi) - self.angle) * self.inner - 2 * self.ends

    @property
    def next_down(self) -> Fraction | None:
        """How far below this one the next lies in the same rectangle, its outer arc in the inner one of this; None for
        nearly half a ring and more, whose ends reach down beside each other. In whole mm.

        The two come nearest at the lower corner of the margin at an end, for from there on the arc falls and the end rises.
        """
        half, inner_mm, outer_mm, ends_mm = (
            float(each) for each in (self.angle / 2, self.inner, self.outer, self.ends)
        )
        if half > WIDEST_STACKED or inner_mm <= 0:
            return None
        across_mm = inner_mm * sin(half) + ends_mm * cos(half)
        corner_mm = outer_mm * sin(half)
        arc_mm = outer_mm * cos(half) - (across_mm - corner_mm) * tan(half)
        if across_mm <= corner_mm:
            arc_mm = sqrt(outer_mm**2 - across_mm**2)
        return Fraction(ceil(round(arc_mm - (inner_mm * cos(half) - ends_mm * sin(half)), 6)))

    def rectangles(self, copies: int) -> int:
        return ceil(copies / self.stacked)

    def blank(self, rounding: Fraction) -> tuple[Fraction, Fraction]:
        """Width and height of the rectangle that it is cut from, the bisector upright, each rounded up.

        rounding: mm, 0 rounds to 0.1 mm.
        """
        half, inner_mm, outer_mm, ends_mm = (
            float(each) for each in (self.angle / 2, self.inner, self.outer, self.ends)
        )
        inner_mm, half = max(inner_mm, 0.0), min(half, pi)
        corner_mm = outer_mm * sin(half) + ends_mm * cos(half)
        width_mm = 2 * (outer_mm if half >= pi / 2 else min(corner_mm, outer_mm))
        # The highest point: the ends of the outer arc beyond a half ring, the inner ones below it.
        end_mm = outer_mm if half > pi / 2 else inner_mm
        height_mm = outer_mm + min(outer_mm, ends_mm * sin(half) - end_mm * cos(half))
        step = rounding or Fraction(1, 10)
        if self.stacked > 1 and self.next_down is not None:
            height_mm += (self.stacked - 1) * float(self.next_down)
        width, height = (step * ceil(Fraction(round(size_mm, 6)) / step) for size_mm in (width_mm, height_mm))
        return width, height
