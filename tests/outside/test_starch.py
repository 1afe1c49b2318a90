"""Starch cooked in a kitchen against a published recipe."""

from fractions import Fraction

import pint
import pytest
from furbelow.techniques.shared.kitchen_starch import CUP_ML, KITCHEN_STARCH, TABLESPOON_ML, StarchRecipe


@pytest.mark.parametrize("times", [1, 3])
def test_four_cups_of_starch_are_a_spoon_of_cornflour_a_quarter_cup_cold_and_the_rest_hot(times: int) -> None:
    """breadmoretravels.blogspot.com, August 2012: 1 tbsp, 1/4 cup, 3 3/4 cups."""
    assert KITCHEN_STARCH.for_liquid(times * 4 * CUP_ML) == StarchRecipe(
        times * TABLESPOON_ML, times * CUP_ML / 4, times * CUP_ML * Fraction("3.75")
    )


def test_cup_and_tablespoon_agree_with_the_reference_units() -> None:
    """pint 0.25, US customary measures."""
    units: pint.UnitRegistry[Fraction] = pint.UnitRegistry(non_int_type=Fraction)
    assert (Fraction(1) * units.cup).to("ml").magnitude == CUP_ML
    assert (Fraction(1) * units.tablespoon).to("ml").magnitude == TABLESPOON_ML
