"""Elastic sums against published examples."""

from fractions import Fraction

import pytest
from furbelow.s5_buy.elastic import (
    MOST_STRETCH,
    REDUCTIONS,
    ElasticCut,
    Passage,
    cut_by_length,
    cut_by_share,
    girth_to_pass,
    pass_girth,
    stretch,
)
from furbelow.s5_buy.out_of_range import OutOfRange

INCH = Fraction("25.4")
CM = Fraction(10)
NONE = Fraction(0)


@pytest.mark.parametrize(("stretched", "share"), [(28, "0.40"), (40, "1.00")])
def test_20_cm_stretched_to_28_is_40_percent_and_to_40_is_100(stretched: int, share: str) -> None:
    """afiatelier.com, Elastics' stretch amount, May 2016."""
    assert stretch(20 * CM, stretched * CM) == Fraction(share)


def test_firm_elastic_is_2_inches_shorter_than_the_waist() -> None:
    """sewingtrip.com, How to measure elastic for waistband."""
    preset = REDUCTIONS["firm"]
    cut = cut_by_length(30 * INCH, preset.least, NONE)
    assert isinstance(cut, ElasticCut)
    assert cut.ring == 28 * INCH


def test_usual_elastic_is_2_to_4_inches_shorter_than_the_waist() -> None:
    """lightsalmonsweet.pages.dev, How to sew elastic with pictures."""
    preset = REDUCTIONS["usual"]
    assert (preset.least, preset.most) == (2 * INCH, 4 * INCH)


def test_knitted_elastic_is_90_to_95_percent_of_the_waist_and_woven_all_of_it() -> None:
    """habipax.co.nz, Types of elastic."""
    rings = []
    for kind, share in (("knitted", "least"), ("knitted", "most"), ("woven", "most")):
        cut = cut_by_share(100 * CM, getattr(REDUCTIONS[kind], share), NONE)
        assert isinstance(cut, ElasticCut)
        rings.append(cut.ring)
    assert rings == [95 * CM, 90 * CM, 100 * CM]


def test_a_plain_opening_is_the_hip_and_an_inch() -> None:
    """prolificprojectstarter.wordpress.com, September 2013: waist of the skirt = hip + 1 in."""
    assert girth_to_pass(28 * INCH, 38 * INCH, INCH) == 39 * INCH


def test_the_larger_of_hip_and_waist_counts_and_2_inches() -> None:
    """squaredancesewing.com, Tiered skirt calculations."""
    assert girth_to_pass(28 * INCH, 38 * INCH, 2 * INCH) == 40 * INCH
    assert girth_to_pass(42 * INCH, 38 * INCH, 2 * INCH) == 44 * INCH


def test_no_rating_above_twice_the_length_is_believed() -> None:
    """infosekolah.net, Elastic (notion): good elastic returns from 2 x its length."""
    assert stretch(CM, 2 * CM) == MOST_STRETCH
    assert isinstance(pass_girth(70 * CM, 100 * CM, Fraction("1.01")), OutOfRange)
    passage = pass_girth(50 * CM, 100 * CM, Fraction(1))
    assert isinstance(passage, Passage)
    assert passage.passes
