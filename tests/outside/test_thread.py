"""Thread sums against published tables and worked examples."""

from fractions import Fraction

import pint
import pytest
from furbelow.s5_buy.stitch_table import FORMULA_504_ELSEWHERE, FORMULAS, STITCHES, geometric_ratio
from furbelow.s5_buy.thread import (
    WASTE_HIGH,
    WASTE_LOW,
    MeasuredFactors,
    ReelOrder,
    SeamRun,
    ThreadNeed,
    cone_length,
    factors_from_swatch,
    reels_to_buy,
    stitches_per_inch,
    thread_for_seams,
)

INCH = Fraction("25.4")
YARD = 36 * INCH
CM = Fraction(10)


def to_hundredths(value: Fraction) -> Fraction:
    return Fraction(round(value * 100), 100)


def need_of(run: SeamRun, waste: Fraction = Fraction(0)) -> ThreadNeed:
    need = thread_for_seams([run], waste)
    assert isinstance(need, ThreadNeed)
    assert not need.refused
    return need


def shape(code: str, per_inch: int, thickness_in: str, width_in: str | None = None) -> Fraction:
    """Thread in inches per inch of seam; all measures in inches, as the sources give them."""
    width = None if width_in is None else Fraction(width_in) * INCH
    ratio = geometric_ratio(code, INCH / per_inch, Fraction(thickness_in) * INCH, width)
    assert ratio is not None
    return ratio


@pytest.mark.parametrize(
    ("thickness", "inches"),
    [(".055", "4.88"), (".060", "4.96"), (".065", "5.04"), (".070", "5.12"), (".075", "5.20")],
)
def test_the_401_formula_reproduces_the_chart_for_8_stitches_an_inch(thickness: str, inches: str) -> None:
    """Technical Bulletin, American & Efird, 2008, chart of stitch type 401."""
    assert shape("401", 8, thickness) == Fraction(inches)


def test_a_42_inch_401_seam_unpicked_over_3_inches_takes_the_published_yards() -> None:
    """Technical Bulletin, American & Efird, 2008: 9 in and 8 in from 3 in, each step rounded."""
    factors = factors_from_swatch(3 * INCH, 9 * INCH, 8 * INCH)
    assert isinstance(factors, MeasuredFactors)
    rounded = MeasuredFactors(to_hundredths(factors.needle), to_hundredths(factors.under))
    assert rounded == MeasuredFactors(Fraction(3), Fraction("2.67"))
    seam = to_hundredths(42 * INCH / YARD) * YARD
    assert seam == Fraction("1.17") * YARD

    plain = need_of(SeamRun("401", seam, measured=rounded))
    needle, looper = to_hundredths(plain.needle / YARD), to_hundredths(plain.looper / YARD)
    assert (needle, looper) == (Fraction("3.51"), Fraction("3.12"))
    assert to_hundredths((needle + looper) * (1 + WASTE_LOW)) == Fraction("7.62")


def test_the_same_seam_without_rounding_differs_by_less_than_half_a_percent() -> None:
    """Technical Bulletin, American & Efird, 2008: the 7.62 yd come from rounded steps."""
    factors = factors_from_swatch(3 * INCH, 9 * INCH, 8 * INCH)
    assert isinstance(factors, MeasuredFactors)
    exact = need_of(SeamRun("401", 42 * INCH, measured=factors), WASTE_LOW).total / YARD
    assert exact == Fraction(42, 36) * Fraction(17, 3) * Fraction(115, 100)
    assert abs(exact / Fraction("7.62") - 1) < Fraction(1, 200)


def test_usual_waste_is_15_to_20_percent() -> None:
    """Technical Bulletin, American & Efird, 2008."""
    run = SeamRun("301", 1000 * CM)
    assert (Fraction("0.15"), Fraction("0.20")) == (WASTE_LOW, WASTE_HIGH)
    assert need_of(run, Fraction("0.15")).usual_waste
    assert need_of(run, Fraction("0.20")).usual_waste
    assert not need_of(run, Fraction("0.14")).usual_waste


def test_a_metre_of_401_takes_130_and_410_cm_and_621_with_waste() -> None:
    """apparelscience.com, Measuring actual thread consumption: 62/15 is rounded there to 4.1."""
    factors = factors_from_swatch(15 * CM, Fraction("19.5") * CM, 62 * CM)
    assert isinstance(factors, MeasuredFactors)
    assert factors.needle == Fraction("1.3")
    rounded = MeasuredFactors(factors.needle, Fraction(round(factors.under * 10), 10))
    run = SeamRun("401", 100 * CM, measured=rounded)
    assert (need_of(run).needle, need_of(run).looper, need_of(run).total) == (130 * CM, 410 * CM, 540 * CM)
    assert need_of(run, Fraction("0.15")).total == 621 * CM


def test_an_inch_of_301_at_10_stitches_and_a_hundredth_thick_takes_2_2_inches() -> None:
    """textilecalculations.com, Calculate amount of sewing thread consumption."""
    assert shape("301", 10, ".01") == Fraction("2.2")


def test_an_inch_of_101_at_9_stitches_and_five_thousandths_thick_takes_3_09_inches() -> None:
    """textilecalculations.com, Calculate amount of sewing thread consumption."""
    assert shape("101", 9, ".005") == Fraction("3.09")


@pytest.mark.parametrize("per_inch", [8, 12])
@pytest.mark.parametrize(("thickness", "width"), [("0.02", "0.125"), ("0.05", "0.25")])
def test_overedge_formulas_are_the_published_equations(per_inch: int, thickness: str, width: str) -> None:
    """textiletechinsight.com, Thread consumption equations, written out here as printed there."""
    s, t, w = per_inch, Fraction(thickness), Fraction(width)
    assert shape("406", per_inch, thickness, width) == 7 + 2 * s * (t + w)
    assert shape("504", per_inch, thickness, width) == 4 * s * (w + t) + 5
    assert shape("514", per_inch, thickness, width) == 5 + 2 * s * (3 * t + 2 * w)
    assert shape("516", per_inch, thickness, width) == 2 * s * (2 * w + 3 * t) + 9


def test_of_the_two_published_504_formulas_the_larger_is_used() -> None:
    """5+4S(W+T): textiletechinsight.com. 3+4WS+4TS: textilecalculations.com. Two seam lengths apart."""
    used, other = FORMULAS["504"], FORMULA_504_ELSEWHERE
    assert (used.by_thickness, used.by_width) == (other.by_thickness, other.by_width) == (4, 4)
    assert (used.along, other.along) == (5, 3)


@pytest.mark.parametrize(
    ("code", "ratio"),
    [("301", "2.5"), ("101", "4"), ("401", "5.5"), ("504", "14"), ("516", "20"), ("406", "18")],
)
def test_total_ratios_are_those_of_the_thread_makers_guide(code: str, ratio: str) -> None:
    """A thread maker's guide, quoted in published figure code (secondary): cm for a cm, at 7 stitches/cm."""
    assert need_of(SeamRun(code, 100 * CM)).total == 100 * CM * Fraction(ratio)


@pytest.mark.parametrize(("code", "needle"), [("301", "0.50"), ("401", "0.25"), ("406", "0.30")])
def test_needle_shares_are_those_of_the_thread_makers_guide(code: str, needle: str) -> None:
    """A thread maker's guide, quoted in published figure code (secondary)."""
    need = need_of(SeamRun(code, 100 * CM))
    assert need.needle / need.total == Fraction(needle)


def test_the_301_formula_lies_within_the_tolerance_of_the_tabled_ratio() -> None:
    """The guide states +/- 12 %; the formula for 7 stitches/cm and 0.5 mm gives 2.7 against 2.5."""
    formula = geometric_ratio("301", CM / 7, Fraction("0.5"))
    assert formula == Fraction("2.7")
    assert abs(formula / STITCHES["301"].ratio.value - 1) <= Fraction(12, 100)


def test_zigzag_takes_5_5_times_its_seam() -> None:
    """apparelscience.com, ISO stitch types 300-400; it asks for equal needle and bobbin thread."""
    need = need_of(SeamRun("304", 100 * CM))
    assert (need.total, need.needle, need.bobbin) == (550 * CM, 275 * CM, 275 * CM)


def test_220_cm_of_lockstitch_takes_550_cm() -> None:
    """melgeecrafts.com, How do you calculate embroidery thread consumption: its total only."""
    assert need_of(SeamRun("301", 220 * CM)).total == 550 * CM


def test_a_2_5_mm_stitch_is_10_16_to_the_inch() -> None:
    """melgeecrafts.com, What is the ideal length of thread when doing hand stitching."""
    assert stitches_per_inch(Fraction("2.5")) == Fraction("10.16")


def test_95_grams_of_ne_25_are_4021_6_metres() -> None:
    """textilelearningplatform.blogspot.com, October 2016: metres = Ne x g x 1.6933 there."""
    metres = cone_length(Fraction(25), Fraction(95)) / 1000
    assert abs(metres / Fraction("4021.6") - 1) < Fraction(1, 10_000)


def test_the_cotton_count_agrees_with_the_reference_units() -> None:
    """pint 0.25: 840 yards to the pound."""
    units: pint.UnitRegistry[Fraction] = pint.UnitRegistry(non_int_type=Fraction)
    length = (25 * 840 * units.yard / units.pound * (95 * units.gram)).to("mm").magnitude
    assert cone_length(Fraction(25), Fraction(95)) == length


@pytest.mark.parametrize("reel_metres", [100, 500, 1000, 2500, 5000])
def test_reels_of_the_lengths_on_sale_cover_a_petticoats_thread(reel_metres: int) -> None:
    """tohproblemkyahai.com, Thread packages: spools 100-500 m, cops 1,000-2,500 m, cones 5,000 m and more."""
    order = reels_to_buy(Fraction(621_000), Fraction(reel_metres * 1000))
    assert isinstance(order, ReelOrder)
    assert order.reels == {100: 7, 500: 2, 1000: 1, 2500: 1, 5000: 1}[reel_metres]
