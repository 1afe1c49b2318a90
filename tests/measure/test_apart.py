"""Two lengths that differ are told apart: the sum that a maker reads can be followed, and never comes to nothing."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from furbelow.measure.measure_text import System, show_apart
from furbelow.measure.quantity import Quantity, parse_quantity
from hypothesis import assume, given
from hypothesis import strategies as st

LENGTHS = st.fractions(min_value=Fraction(1, 10), max_value=Fraction(20_000), max_denominator=5_000)


@pytest.mark.parametrize("system", ["metric", "inch"])
@given(one=LENGTHS, other=LENGTHS, near=st.booleans())
def test_the_sum_that_is_shown_can_be_followed(system: System, one: Fraction, other: Fraction, near: bool) -> None:
    other = one + other / 10_000 if near else other
    assume(one != other)
    long, short, gap = (_read(shown) for shown in show_apart(one, other, system))
    assert gap > 0
    assert abs(long - short) == gap


def _read(shown: str) -> Fraction:
    quantity = parse_quantity(shown)
    assert isinstance(quantity, Quantity), shown
    return quantity.value


def test_a_hair_above_a_bound_is_not_told_as_nothing() -> None:
    forty = 40 * Fraction("25.4")
    told = show_apart(forty + Fraction(1, 100), forty, "inch")
    assert told[0] != told[1]
    assert re.fullmatch(r"0\.0*[1-9]\d* in", told[2])
