"""Which dye takes on which fibre, and how much of it, against published examples."""

from fractions import Fraction

import pytest
from furbelow.garment.dyeing import FIBRE_TAKES, DyeClass, dye_mass

PERCENT = Fraction(1, 100)


def test_3_percent_on_5_g_is_0_15_g() -> None:
    """studylib.net, document 7937187, dyeing laboratory sheet."""
    assert dye_mass(Fraction(5), 3 * PERCENT) == Fraction("0.15")


def test_4_percent_on_100_kg_are_4_kg() -> None:
    """V. Bairabathina, dyeing calculation slides (slideshare.net)."""
    assert dye_mass(Fraction(100_000), 4 * PERCENT) == 4000


@pytest.mark.parametrize("fibre", ["wool", "silk", "nylon"])
def test_acid_dye_takes_on_wool_silk_and_nylon(fibre: str) -> None:
    """cdquestions.com, dyes used for printing polyester, worked answer."""
    assert DyeClass.ACID in FIBRE_TAKES[fibre]


def test_polyester_takes_disperse_dye_and_no_other() -> None:
    """cdquestions.com, dyes used for printing polyester, worked answer."""
    assert set(FIBRE_TAKES["polyester"]) == {DyeClass.DISPERSE}


@pytest.mark.parametrize("fibre", ["cotton", "linen", "viscose"])
def test_cellulose_takes_reactive_and_direct_dye_and_no_acid_dye(fibre: str) -> None:
    """P. Burch, About the Different Types of Dyes (pburch.net)."""
    assert set(FIBRE_TAKES[fibre]) == {DyeClass.REACTIVE, DyeClass.DIRECT}
