"""Two lengths that differ are told apart: the sum that a maker reads can be followed, and never comes to nothing."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from furbelow.measure.measure_text import System, show_apart
from hypothesis import assume, example, given
from hypothesis import strategies as st

LENGTHS = st.fractions(min_value=Fraction(1, 10), max_value=Fraction(20_000), max_denominator=5_000)


@pytest.mark.parametrize("system", ["metric", "inch"])
@given(one=LENGTHS, other=LENGTHS, near=st.booleans())
@example(one=10_000 + Fraction(1, 5_000), other=10_000 + Fraction(1, 4_999), near=False)
def test_the_sum_that_is_shown_can_be_followed(system: System, one: Fraction, other: Fraction, near: bool) -> None:
    other = one + other / 10_000 if near else other
    assume(one != other)
    long, short, gap = (_read(shown) for shown in show_apart(one, other, system))
    assert gap > 0
    assert abs(long - short) == gap


_MM = {
    "mm": Fraction(1),
    "cm": Fraction(10),
    "in": Fraction("25.4"),
}  # source: NIST Special Publication 811 (2008), B.8


def _read(shown: str) -> Fraction:
    """As a person reads it. A maker may write 12 digits; what differs in the thirteenth is shown with more."""
    *numbers, unit = shown.split()
    return sum(map(Fraction, numbers), Fraction(0)) * _MM[unit]


def test_a_hair_above_a_bound_is_not_told_as_nothing() -> None:
    forty = 40 * Fraction("25.4")
    told = show_apart(forty + Fraction(1, 100), forty, "inch")
    assert told[0] != told[1]
    assert re.fullmatch(r"0\.0*[1-9]\d* in", told[2])
