"""Dye and starch sums against published examples."""

from fractions import Fraction

import pint
import pytest
from furbelow.s5_buy.dye import (
    Auxiliary,
    Dose,
    DyeBath,
    auxiliary_mass,
    bath_volume,
    dye_bath,
    dye_mass,
    match_dye,
    stock_volume,
)
from furbelow.techniques.shared.kitchen_starch import CUP_ML, KITCHEN_STARCH, TABLESPOON_ML, StarchRecipe

PERCENT = Fraction(1, 100)


def test_2_percent_on_5_g_from_half_percent_stock_is_20_ml() -> None:
    """textilecalculation.blogspot.com, Dyes and chemicals measuring formula, December 2014."""
    dye = dye_mass(Fraction(5), 2 * PERCENT)
    assert isinstance(dye, Fraction)
    assert stock_volume(dye, PERCENT / 2) == 20


def test_salt_of_20_g_a_litre_at_1_to_10_from_quarter_stock_is_4_ml() -> None:
    """textilecalculation.blogspot.com, December 2014, the same page, on 5 g of cloth."""
    bath = bath_volume(Fraction(5), Fraction(10))
    assert isinstance(bath, Fraction)
    salt = auxiliary_mass(bath, Fraction(20))
    assert isinstance(salt, Fraction)
    assert stock_volume(salt, 25 * PERCENT) == 4


def test_the_whole_bath_holds_the_same_figures() -> None:
    """textilecalculation.blogspot.com, December 2014: 50 ml of bath with 20 ml dye and 4 ml salt stock."""
    bath = dye_bath(
        Fraction(5), 2 * PERCENT, Fraction(10), PERCENT / 2, (Auxiliary("salt", Fraction(20), 25 * PERCENT),)
    )
    assert bath == DyeBath(
        Fraction(1, 10), Fraction(20), Fraction(50), Fraction(26), (Dose("salt", Fraction(1), Fraction(4)),)
    )


def test_3_percent_on_5_g_is_0_15_g() -> None:
    """studylib.net, document 7937187, dyeing laboratory sheet."""
    assert dye_mass(Fraction(5), 3 * PERCENT) == Fraction("0.15")


def test_100_kg_at_1_to_10_is_1000_litres_and_4_percent_is_4_kg() -> None:
    """V. Bairabathina, dyeing calculation slides (slideshare.net)."""
    assert bath_volume(Fraction(100_000), Fraction(10)) == 1_000_000
    assert dye_mass(Fraction(100_000), 4 * PERCENT) == 4000


@pytest.mark.parametrize("fibre", ["wool", "silk", "nylon"])
def test_acid_dye_takes_on_wool_silk_and_nylon(fibre: str) -> None:
    """cdquestions.com, dyes used for printing polyester, worked answer."""
    assert match_dye(fibre, "acid").takes


def test_polyester_takes_disperse_dye_and_no_acid_reactive_or_direct_dye() -> None:
    """cdquestions.com, dyes used for printing polyester, worked answer."""
    assert match_dye("polyester", "disperse").takes
    assert not match_dye("polyester", "acid").takes
    assert not match_dye("polyester", "reactive").takes
    assert not match_dye("polyester", "direct").takes


@pytest.mark.parametrize("fibre", ["cotton", "linen", "viscose"])
def test_cellulose_takes_reactive_and_direct_dye_and_no_acid_dye(fibre: str) -> None:
    """P. Burch, About the Different Types of Dyes (pburch.net)."""
    assert match_dye(fibre, "reactive").takes
    assert match_dye(fibre, "direct").takes
    assert not match_dye(fibre, "acid").takes


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
