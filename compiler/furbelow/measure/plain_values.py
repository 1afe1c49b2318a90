"""Quantities as plain values, in one way for every answer in JSON: a number, its unit, and how a maker reads it."""

from __future__ import annotations

from fractions import Fraction

from furbelow.measure.quantity import Quantity
from furbelow.measure.units import Dims

Plain = dict[str, int | float | str]

_BASES = {"length": "mm", "mass": "g", "time": "s", "volume": "ml"}  # money by its own code
NO_UNIT = "1"  # of counts, shares and ratios. Source: ISO 80000-1:2022, the unit one


def as_plain(value: Quantity, shown: str) -> Plain:
    """`{"number": 3000, "unit": "mm", "shown": "300 cm"}`."""
    return {"number": plain_number(value.value), "unit": unit_of(value.dims), "shown": shown}


def plain_number(value: Fraction) -> int | float:
    """Whole numbers exactly, others to a millionth."""
    return int(value) if value.denominator == 1 else round(float(value), 6)


def unit_of(dims: Dims) -> str:
    """The base unit: mm, g, s, ml, a currency, or what is made of these, such as g/mm2."""
    over = [_power(base, exponent) for base, exponent in dims if exponent > 0]
    under = [_power(base, -exponent) for base, exponent in dims if exponent < 0]
    return "/".join([" ".join(over) or NO_UNIT, *under])


def _power(base: str, exponent: int) -> str:
    return _BASES.get(base, base) + (str(exponent) if exponent > 1 else "")
