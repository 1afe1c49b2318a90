"""A gore: a panel wider at its hem, one side straight and the other slanting, two of them cut from one rectangle."""

from __future__ import annotations

from fractions import Fraction
from math import ceil
from typing import NamedTuple


class Gore(NamedTuple):
    """All lengths in mm. top, hem: the finished edges of one gore, hem the longer; depth: between them.

    above, below: what seams and turns take beyond the two; ends: the margin at each side, measured level.
    paired: two lie head to tail in one rectangle; not on cloth with a way up.
    """

    top: Fraction
    hem: Fraction
    depth: Fraction
    above: Fraction
    below: Fraction
    ends: Fraction
    paired: bool

    @property
    def cut_top(self) -> Fraction:
        """Level across the cut top: the slanting side runs on through the margin."""
        return self.top - (self.hem - self.top) * self.above / self.depth + 2 * self.ends

    @property
    def cut_bottom(self) -> Fraction:
        return self.hem + (self.hem - self.top) * self.below / self.depth + 2 * self.ends

    @property
    def cut_depth(self) -> Fraction:
        return self.above + self.depth + self.below

    @property
    def area(self) -> Fraction:
        """Of one cut gore in mm2."""
        return (self.cut_top + self.cut_bottom) / 2 * self.cut_depth

    @property
    def blank(self) -> tuple[Fraction, Fraction]:
        """Width and height of the rectangle. Of a pair nothing stays over: its width is both ends of one gore."""
        return (self.cut_top + self.cut_bottom if self.paired else self.cut_bottom), self.cut_depth

    def rectangles(self, gores: int) -> int:
        return ceil(gores / 2) if self.paired else gores
