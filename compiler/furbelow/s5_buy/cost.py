"""What the garment costs and what to ask for it."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from furbelow.named import NamedTuple

CENT = Fraction(1, 100)


class Costs(NamedTuple):
    """Costs of one garment in the currency's unit, and a price that keeps the margin, which is a share of them.

    The price is rounded up to the cent, so the margin kept is at least the one asked for.
    """

    materials: Fraction
    labour: Fraction
    margin: Fraction

    @property
    def total(self) -> Fraction:
        """Materials and labour."""
        return self.materials + self.labour

    @property
    def price(self) -> Fraction:
        """Source: definition, cost x (1 + margin)."""
        return ceil(self.total * (1 + self.margin) / CENT) * CENT
