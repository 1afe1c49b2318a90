from fractions import Fraction

import pytest
from furbelow.s5_buy.cost import CostLine, CostTable, MarginOn, PriceSuggestion, cost_table, suggest_price
from furbelow.s5_buy.out_of_range import OutOfRange
from hypothesis import given, settings
from hypothesis import strategies as st

amounts = st.fractions(0, 10**4, max_denominator=100)


def test_the_table_sums_materials_and_labour() -> None:
    lines = [
        CostLine("net", Fraction(8500), Fraction("1.80"), Fraction(1000)),
        CostLine("thread", Fraction(2), Fraction("2.35")),
    ]
    table = cost_table(lines, Fraction("4.5"), Fraction(12))
    assert isinstance(table, CostTable)
    assert [line.cost for line in table.lines] == [Fraction("15.30"), Fraction("4.70")]
    assert [table.materials, table.labour, table.total] == [20, 54, 74]


def test_hours_or_a_rate_below_nothing_are_told() -> None:
    assert isinstance(cost_table([], Fraction(-1), Fraction(12)), OutOfRange)
    assert isinstance(cost_table([], Fraction(1), Fraction(-12)), OutOfRange)


def test_a_quarter_of_the_price_is_a_third_of_the_cost_and_both_are_said() -> None:
    suggestion = suggest_price(Fraction(75), Fraction(25, 100), "price")
    assert isinstance(suggestion, PriceSuggestion)
    assert [suggestion.price, suggestion.margin] == [100, 25]
    assert (suggestion.on_price, suggestion.on_cost) == (Fraction(1, 4), Fraction(1, 3))


def test_a_quarter_of_the_cost_is_a_fifth_of_the_price() -> None:
    suggestion = suggest_price(Fraction(80), Fraction(25, 100), "cost")
    assert isinstance(suggestion, PriceSuggestion)
    assert [suggestion.price, suggestion.on_price] == [100, Fraction(1, 5)]


def test_a_margin_of_the_whole_price_is_told_and_of_the_whole_cost_is_not() -> None:
    assert isinstance(suggest_price(Fraction(75), Fraction(1), "price"), OutOfRange)
    doubled = suggest_price(Fraction(75), Fraction(1), "cost")
    assert isinstance(doubled, PriceSuggestion)
    assert doubled.price == 150


def test_a_negative_margin_and_a_price_step_of_nothing_are_told() -> None:
    assert isinstance(suggest_price(Fraction(75), Fraction(-1, 10), "cost"), OutOfRange)
    assert isinstance(suggest_price(Fraction(75), Fraction(1, 10), "cost", Fraction(0)), OutOfRange)


def test_what_costs_nothing_has_no_margin_to_speak_of() -> None:
    free = suggest_price(Fraction(0), Fraction(1, 4), "price")
    assert isinstance(free, PriceSuggestion)
    assert [free.price, free.on_price, free.on_cost] == [0, 0, 0]


@pytest.mark.parametrize("margin_on", ["price", "cost"])
@settings(deadline=None, max_examples=50)
@given(cost=amounts, margin=st.fractions(0, Fraction(9, 10), max_denominator=100))
def test_a_rounded_price_keeps_at_least_the_margin_asked(margin_on: MarginOn, cost: Fraction, margin: Fraction) -> None:
    suggestion = suggest_price(cost, margin, margin_on, Fraction(1, 2))
    assert isinstance(suggestion, PriceSuggestion)
    assert (suggestion.price * 2).denominator == 1
    base = suggestion.price if margin_on == "price" else cost
    assert suggestion.margin >= margin * base
