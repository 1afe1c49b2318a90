"""Shop rounding and cloth widths against published examples."""

from fractions import Fraction

import pint
import pytest
from furbelow.s5_buy.shop_units import (
    BY_EIGHTH_YARD,
    BY_QUARTER_YARD,
    gsm_from_ounces,
    rounded_up,
    widths_needed,
)

INCH = Fraction("25.4")
YARD = 36 * INCH


def yards(inches: int) -> Fraction:
    return rounded_up(inches * INCH, BY_QUARTER_YARD) / YARD


def test_14_cuts_of_13_inches_and_5_more_are_5_and_a_quarter_yards() -> None:
    """annasmountaintreasures.blogspot.com, July 2013: 182 + 5 = 187 in = 5.19 yd."""
    assert yards((2 + 4 + 8) * 13 + 5) == Fraction("5.25")


def test_98_inches_are_2_and_three_quarter_yards() -> None:
    """lara_the_lacemaker, skirt page (webpages.charter.net): 49 in x 2 = 2.72 yd."""
    assert yards(49 * 2) == Fraction("2.75")


def test_147_inches_are_4_08_yards_and_sold_as_4_and_a_quarter() -> None:
    """lara_the_lacemaker, skirt page (webpages.charter.net): 49 in x 3 = 4.08 yd; the rounding is ours."""
    assert round(float(49 * 3 * INCH / YARD), 2) == 4.08
    assert yards(49 * 3) == Fraction("4.25")


def test_352_5_inches_of_48_inch_cloth_are_8_widths_and_960_inches_long() -> None:
    """mylltd.com, Commonly used formulas: 141 x 2.5 = 352.5, / 48 = 7.34, 8 widths of 120 in."""
    widths = widths_needed(141 * Fraction("2.5") * INCH, 48 * INCH)
    assert widths == 8
    assert widths * 120 == 960


@pytest.mark.parametrize(("gsm", "ounces"), [("33.906", 1), ("339.06", 10)])
def test_ounces_a_square_yard_times_33_906_are_grams_a_square_metre(gsm: str, ounces: int) -> None:
    """smfabricblog.com, 2023: three decimals kept there."""
    assert abs(gsm_from_ounces(Fraction(ounces)) - Fraction(gsm)) <= ounces * Fraction("0.0005")


def test_shop_units_agree_with_the_reference_units() -> None:
    """pint 0.25."""
    units: pint.UnitRegistry[Fraction] = pint.UnitRegistry(non_int_type=Fraction)
    yard = (Fraction(1) * units.yard).to("mm").magnitude
    assert BY_QUARTER_YARD.step == yard / 4
    assert BY_EIGHTH_YARD.step == yard / 8
    weight = (Fraction(1) * units.ounce / units.yard**2).to("g/m**2").magnitude
    assert gsm_from_ounces(Fraction(1)) == weight
