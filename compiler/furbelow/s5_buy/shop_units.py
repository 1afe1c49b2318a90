"""From what the work needs to what a shop sells: something to spare, then whole units."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from furbelow.measure.quantity import Quantity
from furbelow.measure.units import PLAIN, Dims


def with_spare(need: Fraction, spare: Quantity | None) -> Fraction:
    """The need and what the spec wants beyond it: an amount, or a share of it."""
    if spare is None:
        return need
    return need * (1 + spare.value) if spare.dims == PLAIN else need + spare.value


def in_steps(need: Fraction, sold: Quantity | None, dims: Dims) -> Fraction:
    """The need rounded up to what the shop sells, where it sells by this measure; nothing needed, nothing bought."""
    return ceil(need / sold.value) * sold.value if sold and sold.dims == dims else need
