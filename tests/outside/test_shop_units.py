"""Shop rounding and cloth widths against published examples."""

from fractions import Fraction

import pint
import pytest
from furbelow.measure.quantity import Quantity, parse_quantity
from furbelow.measure.units import LENGTH
from furbelow.s5_buy.shop_units import in_steps

INCH = Fraction("25.4")
YARD = 36 * INCH


def read(text: str) -> Quantity:
    """The quantity as a maker writes it in a spec."""
    quantity = parse_quantity(text)
    assert isinstance(quantity, Quantity)
    return quantity


def yards(inches: int) -> Fraction:
    return in_steps(inches * INCH, read("1/4 yd"), LENGTH) / YARD


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


@pytest.mark.parametrize(("gsm", "ounces"), [("33.906", 1), ("339.06", 10)])
def test_ounces_a_square_yard_times_33_906_are_grams_a_square_metre(gsm: str, ounces: int) -> None:
    """smfabricblog.com, 2023: three decimals kept there."""
    difference = read(f"{ounces} oz/yd2").value - read(f"{gsm} g/m2").value
    assert abs(difference) <= ounces * read("0.0005 g/m2").value


def test_shop_units_agree_with_the_reference_units() -> None:
    """pint 0.25."""
    units: pint.UnitRegistry[Fraction] = pint.UnitRegistry(non_int_type=Fraction)
    yard = (Fraction(1) * units.yard).to("mm").magnitude
    assert read("1/4 yd").value == yard / 4
    assert read("1/8 yd").value == yard / 8
    weight = (Fraction(1) * units.ounce / units.yard**2).to("g/mm**2").magnitude
    assert read("1 oz/yd2").value == weight
