"""Thread sums against published tables and worked examples."""

from fractions import Fraction

import pint
import pytest
from furbelow.garment.stitch import StitchType
from furbelow.s5_buy.stitch_table import STITCHES, geometric_ratio
from furbelow.s5_buy.thread import SeamRun, ThreadNeed, cone_length, reels_to_buy, thread_for_seams

INCH = Fraction("25.4")
CM = Fraction(10)


def need_of(code: str, length: Fraction) -> ThreadNeed:
    """Seven stitches a centimetre in cloth of no thickness: what the tables are for."""
    return thread_for_seams([SeamRun(StitchType(code), length, 1, CM / 7, Fraction(0))], Fraction(0))


def shape(code: str, per_inch: int, thickness_in: str) -> Fraction:
    """Thread in inches per inch of seam; all measures in inches, as the sources give them."""
    return geometric_ratio(StitchType(code), INCH / per_inch, Fraction(thickness_in) * INCH)


@pytest.mark.parametrize(
    ("thickness", "inches"),
    [(".055", "4.88"), (".060", "4.96"), (".065", "5.04"), (".070", "5.12"), (".075", "5.20")],
)
def test_the_401_formula_reproduces_the_chart_for_8_stitches_an_inch(thickness: str, inches: str) -> None:
    """Technical Bulletin, American & Efird, 2008, chart of stitch type 401."""
    assert shape("401", 8, thickness) == Fraction(inches)


def test_an_inch_of_301_at_10_stitches_and_a_hundredth_thick_takes_2_2_inches() -> None:
    """textilecalculations.com, Calculate amount of sewing thread consumption."""
    assert shape("301", 10, ".01") == Fraction("2.2")


def test_an_inch_of_101_at_9_stitches_and_five_thousandths_thick_takes_3_09_inches() -> None:
    """textilecalculations.com, Calculate amount of sewing thread consumption."""
    assert shape("101", 9, ".005") == Fraction("3.09")


@pytest.mark.parametrize(
    ("code", "ratio"),
    [("301", "2.5"), ("101", "4"), ("401", "5.5"), ("504", "14"), ("516", "20"), ("406", "18")],
)
def test_total_ratios_are_those_of_the_thread_makers_guide(code: str, ratio: str) -> None:
    """A thread maker's guide, quoted in published figure code (secondary): cm for a cm, at 7 stitches/cm."""
    assert need_of(code, 100 * CM).total == 100 * CM * Fraction(ratio)


@pytest.mark.parametrize(("code", "needle"), [("301", "0.50"), ("401", "0.25"), ("406", "0.30")])
def test_needle_shares_are_those_of_the_thread_makers_guide(code: str, needle: str) -> None:
    """A thread maker's guide, quoted in published figure code (secondary)."""
    need = need_of(code, 100 * CM)
    assert need.needle / need.total == Fraction(needle)


def test_the_301_formula_lies_within_the_tolerance_of_the_tabled_ratio() -> None:
    """The guide states +/- 12 %; the formula for 7 stitches/cm and 0.5 mm gives 2.7 against 2.5."""
    formula = geometric_ratio(StitchType.LOCK, CM / 7, Fraction("0.5"))
    assert formula == Fraction("2.7")
    assert abs(formula / STITCHES[StitchType.LOCK].ratio.value - 1) <= Fraction(12, 100)


def test_zigzag_takes_5_5_times_its_seam() -> None:
    """apparelscience.com, ISO stitch types 300-400; it asks for equal needle and bobbin thread."""
    need = need_of("304", 100 * CM)
    assert (need.total, need.needle, need.bobbin) == (550 * CM, 275 * CM, 275 * CM)


def test_220_cm_of_lockstitch_takes_550_cm() -> None:
    """melgeecrafts.com, How do you calculate embroidery thread consumption: its total only."""
    assert need_of("301", 220 * CM).total == 550 * CM


@pytest.mark.parametrize("reel_metres", [100, 500, 1000, 2500, 5000])
def test_reels_of_the_lengths_on_sale_cover_a_petticoats_thread(reel_metres: int) -> None:
    """tohproblemkyahai.com, Thread packages: spools 100-500 m, cops 1,000-2,500 m, cones 5,000 m and more."""
    order = reels_to_buy(Fraction(621_000), Fraction(reel_metres * 1000))
    assert order.reels == {100: 7, 500: 2, 1000: 1, 2500: 1, 5000: 1}[reel_metres]


def test_95_grams_of_ne_25_are_4021_6_metres() -> None:
    """textilelearningplatform.blogspot.com, October 2016: metres = Ne x g x 1.6933 there."""
    metres = cone_length(Fraction(25), Fraction(95)) / 1000
    assert abs(metres / Fraction("4021.6") - 1) < Fraction(1, 10_000)


def test_the_cotton_count_agrees_with_the_reference_units() -> None:
    """pint 0.25: 840 yards to the pound."""
    units: pint.UnitRegistry[Fraction] = pint.UnitRegistry(non_int_type=Fraction)
    length = (25 * 840 * units.yard / units.pound * (95 * units.gram)).to("mm").magnitude
    assert cone_length(Fraction(25), Fraction(95)) == length
