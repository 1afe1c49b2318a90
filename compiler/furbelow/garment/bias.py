"""Strips on the bias from one square, cut in a spiral once its sides are sewn to a tube."""

from __future__ import annotations

from fractions import Fraction
from math import ceil, isqrt

from furbelow.named import NamedTuple


class BiasStrip(NamedTuple):
    """All in mm. length, width: of the cut strip, all of it; seam: of the two seams that make the tube.

    Source: the area of a square less its seams, divided by the width of the strip, is its length. Lines are drawn a width
    apart, so only a whole number of them is of use: n of them in a square of n x width x root 2 give 2 x n^2 x width.
    """

    length: Fraction
    width: Fraction
    seam: Fraction

    @property
    def lines(self) -> int:
        """How many strips lie side by side, the fewest that are long enough."""
        wanted = self.length / (2 * self.width)
        least = isqrt(ceil(wanted))
        return max(least if least * least >= wanted else least + 1, 1)

    @property
    def gives(self) -> Fraction:
        """How long the strip becomes."""
        return 2 * self.lines**2 * self.width

    def side(self, rounding: Fraction) -> Fraction:
        """Of the square to cut, rounded up; 0 rounds to 0.1 mm."""
        step = rounding or Fraction(1, 10)
        # Root 2 a little too large: a square too small gives a line less.
        return step * ceil((self.lines * self.width * Fraction(1_414_214, 1_000_000) + 2 * self.seam) / step)
