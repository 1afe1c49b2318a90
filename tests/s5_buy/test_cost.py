from fractions import Fraction

from furbelow.s5_buy.cost import Costs
from hypothesis import given, settings
from hypothesis import strategies as st

amounts = st.fractions(0, 10**4, max_denominator=100)


def test_materials_and_labour_make_the_total() -> None:
    assert Costs(Fraction(20), Fraction(54), Fraction(0)).total == 74


def test_a_quarter_of_the_cost_is_asked_on_top_of_it() -> None:
    assert Costs(Fraction(50), Fraction(30), Fraction(1, 4)).price == 100


def test_what_costs_nothing_is_given_away() -> None:
    assert Costs(Fraction(0), Fraction(0), Fraction(1, 4)).price == 0


@settings(deadline=None, max_examples=50)
@given(materials=amounts, labour=amounts, margin=st.fractions(0, 2, max_denominator=100))
def test_a_price_is_in_cents_and_keeps_at_least_the_margin_asked(
    materials: Fraction, labour: Fraction, margin: Fraction
) -> None:
    costs = Costs(materials, labour, margin)
    assert (costs.price * 100).denominator == 1
    assert 0 <= costs.price - (materials + labour) * (1 + margin) < Fraction(1, 100)
