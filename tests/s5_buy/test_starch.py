from fractions import Fraction

from furbelow.s5_buy.out_of_range import OutOfRange
from furbelow.s5_buy.starch import KITCHEN_STARCH, StarchRecipe, starch_for_cloth, starch_for_liquid


def test_starch_for_cloth_has_the_water_asked_for_in_the_recipes_shares() -> None:
    starch = starch_for_cloth(Fraction(250), Fraction(8))
    assert isinstance(starch, StarchRecipe)
    assert starch.liquid == 2000
    assert starch.hot_water == 15 * starch.cold_water
    assert starch.cornflour / starch.liquid == KITCHEN_STARCH.cornflour / KITCHEN_STARCH.liquid


def test_double_strength_doubles_the_cornflour_only() -> None:
    plain, stiff = starch_for_liquid(Fraction(1000)), starch_for_liquid(Fraction(1000), Fraction(2))
    assert isinstance(plain, StarchRecipe)
    assert isinstance(stiff, StarchRecipe)
    assert (stiff.cornflour, stiff.liquid) == (2 * plain.cornflour, plain.liquid)


def test_no_water_or_no_strength_is_told() -> None:
    assert isinstance(starch_for_liquid(Fraction(0)), OutOfRange)
    assert isinstance(starch_for_cloth(Fraction(100), Fraction(8), Fraction(0)), OutOfRange)
