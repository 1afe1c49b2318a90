from fractions import Fraction

from furbelow.measure.quantity import mm, number
from furbelow.measure.units import LENGTH, VOLUME
from furbelow.s5_buy.shop_units import in_steps, with_spare
from hypothesis import given, settings
from hypothesis import strategies as st


def test_cloth_is_rounded_up_to_the_next_ten_centimetres() -> None:
    assert in_steps(Fraction(8410), mm(100), LENGTH) == 8500
    assert in_steps(Fraction(8500), mm(100), LENGTH) == 8500


def test_nothing_needed_is_nothing_bought() -> None:
    assert in_steps(Fraction(0), mm(100), LENGTH) == 0


def test_what_is_sold_by_another_measure_or_by_none_is_bought_as_needed() -> None:
    assert in_steps(Fraction(8410), mm(100), VOLUME) == 8410
    assert in_steps(Fraction(8410), None, LENGTH) == 8410


def test_spare_is_a_share_of_the_need_or_a_length_beside_it() -> None:
    assert with_spare(Fraction(2000), number(Fraction(1, 10))) == 2200
    assert with_spare(Fraction(2000), mm(500)) == 2500
    assert with_spare(Fraction(2000), None) == 2000


@settings(deadline=None, max_examples=50)
@given(need=st.fractions(0, 10**5), step=st.fractions(Fraction(1, 10), 10**4))
def test_bought_covers_the_need_by_less_than_one_step(need: Fraction, step: Fraction) -> None:
    bought = in_steps(need, mm(step), LENGTH)
    assert need <= bought < need + step
    assert (bought / step).denominator == 1
