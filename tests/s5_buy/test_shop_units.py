from fractions import Fraction

import pytest
from furbelow.s5_buy.out_of_range import OutOfRange
from furbelow.s5_buy.shop_units import (
    BY_10_CM,
    BY_HALF_METRE,
    BY_PIECE,
    FAT_SIZES,
    Offer,
    OfferChoice,
    SoldBy,
    before_shrinkage,
    cheapest_offer,
    packets_of,
    rounded_up,
    widths_needed,
    with_safety,
)
from hypothesis import given, settings
from hypothesis import strategies as st

METRE = Fraction(1000)
EURO = Fraction(1)


def net(width: int, price: str, sold: SoldBy = BY_10_CM, name: str = "net") -> Offer:
    return Offer(name, Fraction(width), Fraction(price), METRE, sold)


def choice(*offers: Offer, needed: dict[Fraction, Fraction], **shares: Fraction) -> OfferChoice:
    chosen = cheapest_offer(offers, needed, **shares)
    assert isinstance(chosen, OfferChoice)
    return chosen


def test_cloth_is_rounded_up_to_the_next_ten_centimetres() -> None:
    assert rounded_up(Fraction(8410), BY_10_CM) == 8500
    assert rounded_up(Fraction(8500), BY_10_CM) == 8500


def test_packets_are_whole_and_nothing_needed_is_nothing_bought() -> None:
    assert rounded_up(Fraction(11), packets_of(Fraction(5))) == 15
    assert rounded_up(Fraction(0), SoldBy(Fraction(1), least=Fraction(3))) == 0


def test_the_least_cut_a_shop_makes_is_kept_to() -> None:
    assert rounded_up(Fraction(120), SoldBy(Fraction(100), least=Fraction(250))) == 300


def test_a_need_below_nothing_is_our_mistake() -> None:
    with pytest.raises(ValueError):
        rounded_up(Fraction(-1), BY_PIECE)


@settings(deadline=None, max_examples=50)
@given(need=st.fractions(0, 10**5), step=st.fractions(Fraction(1, 10), 10**4))
def test_bought_covers_the_need_by_less_than_one_step(need: Fraction, step: Fraction) -> None:
    bought = rounded_up(need, SoldBy(step))
    assert need <= bought < need + step
    assert (bought / step).denominator == 1


@settings(deadline=None, max_examples=50)
@given(need=st.fractions(0, 10**5), shrinkage=st.fractions(0, Fraction(99, 100)))
def test_cloth_bought_for_shrinkage_washes_back_to_the_need(need: Fraction, shrinkage: Fraction) -> None:
    bought = before_shrinkage(need, shrinkage)
    assert isinstance(bought, Fraction)
    assert bought * (1 - shrinkage) == need


def test_cloth_that_shrinks_to_nothing_is_told() -> None:
    fault = before_shrinkage(METRE, Fraction(1))
    assert isinstance(fault, OutOfRange)
    assert fault.headline == "shrinkage of 100 % is not below 100 %"


def test_a_safety_share_goes_on_top() -> None:
    assert with_safety(METRE, Fraction(5, 100)) == 1050
    assert isinstance(with_safety(METRE, Fraction(-1)), OutOfRange)


def test_cloth_without_width_is_told() -> None:
    assert isinstance(widths_needed(METRE, Fraction(0)), OutOfRange)


def test_the_cheaper_width_wins_although_it_takes_more_metres() -> None:
    chosen = choice(
        net(140, "3.00"), net(280, "5.00"), needed={Fraction(140): 9 * METRE, Fraction(280): Fraction(4550)}
    )
    assert chosen.best is not None
    assert [chosen.best.offer.width, chosen.best.bought, chosen.best.cost] == [280, 4600, 23]
    assert [row.cost for row in chosen.rows] == [27, 23]


def test_coarse_selling_steps_can_turn_the_choice() -> None:
    needed = {Fraction(140): Fraction(1010), Fraction(150): Fraction(1010)}
    chosen = choice(net(140, "2.00", BY_HALF_METRE), net(150, "2.50"), needed=needed)
    assert chosen.best is not None
    assert chosen.best.offer.width == 150
    assert [row.left for row in chosen.rows] == [490, 90]


def test_a_width_that_cannot_do_stays_in_the_table_without_a_cost() -> None:
    chosen = choice(net(90, "0.10"), net(140, "3.00"), needed={Fraction(140): METRE})
    assert chosen.best is not None
    assert chosen.best.offer.width == 140
    assert (chosen.rows[0].need, chosen.rows[0].cost, chosen.rows[0].left) == (None, None, None)


def test_no_offer_that_works_is_no_choice() -> None:
    assert choice(net(90, "0.10"), needed={}).best is None


def test_of_equal_cost_the_one_that_leaves_least_then_the_first_named_is_taken() -> None:
    needed = {Fraction(140): METRE, Fraction(150): Fraction(950)}
    chosen = choice(net(150, "2", name="a"), net(140, "2", name="b"), net(140, "2", name="c"), needed=needed)
    assert chosen.best is not None
    assert chosen.best.offer.name == "b"


def test_shrinkage_and_safety_are_in_before_rounding() -> None:
    chosen = choice(
        net(140, "1"),
        needed={Fraction(140): Fraction(900)},
        shrinkage=Fraction(1, 10),
        safety=Fraction(1, 100),
    )
    assert chosen.best is not None
    assert [chosen.best.need, chosen.best.bought] == [1010, 1100]


def test_a_planner_may_answer_for_each_offer() -> None:
    fats = Offer("fat quarters", Fraction(550), Fraction("4.50"), EURO, BY_PIECE)
    chosen = cheapest_offer([fats, net(140, "9")], lambda offer: Fraction(3) if offer is fats else None)
    assert isinstance(chosen, OfferChoice)
    assert chosen.best is not None
    assert [chosen.best.bought, chosen.best.cost] == [3, Fraction("13.50")]


def test_shares_out_of_range_are_told() -> None:
    needed = {Fraction(140): METRE}
    assert isinstance(cheapest_offer([net(140, "1")], needed, shrinkage=Fraction(2)), OutOfRange)
    assert isinstance(cheapest_offer([net(140, "1")], needed, safety=Fraction(-1)), OutOfRange)


def test_a_price_for_nothing_is_our_mistake() -> None:
    with pytest.raises(ValueError):
        cheapest_offer([Offer("net", METRE, EURO, Fraction(0), BY_10_CM)], {METRE: METRE})


def test_a_fat_quarter_holds_what_fits_and_turns_only_when_it_may() -> None:
    quarter = next(fat for fat in FAT_SIZES if fat.name == "fat quarter (metre)")
    assert quarter.holds(Fraction(500), Fraction(550))
    assert quarter.holds(Fraction(550), Fraction(500))
    assert not quarter.holds(Fraction(550), Fraction(500), turning=False)
    assert not quarter.holds(Fraction(551), Fraction(100))
