from fractions import Fraction

import pytest
from furbelow.s5_buy.elastic import (
    ElasticCut,
    Passage,
    cut_by_length,
    cut_by_share,
    girth_to_pass,
    pass_girth,
    shortest_ring,
    stretch,
)
from furbelow.s5_buy.out_of_range import OutOfRange
from hypothesis import given, settings
from hypothesis import strategies as st

girths = st.fractions(400, 1600, max_denominator=16)
ratings = st.fractions(0, 1, max_denominator=100)


def test_the_overlap_is_cut_on_and_vanishes_in_the_ring() -> None:
    cut = cut_by_share(Fraction(700), Fraction(10, 100), Fraction(20))
    assert cut == ElasticCut(Fraction(630), Fraction(650), Fraction(10, 100))


def test_both_ways_to_shorten_meet() -> None:
    assert cut_by_length(Fraction(700), Fraction(70), Fraction(20)) == cut_by_share(
        Fraction(700), Fraction(1, 10), Fraction(20)
    )


@pytest.mark.parametrize(
    "cut",
    [
        cut_by_share(Fraction(700), Fraction(1), Fraction(0)),
        cut_by_share(Fraction(700), Fraction(-1, 10), Fraction(0)),
        cut_by_share(Fraction(700), Fraction(1, 10), Fraction(-1)),
        cut_by_length(Fraction(700), Fraction(700), Fraction(0)),
    ],
)
def test_elastic_cut_to_nothing_longer_than_the_waist_or_lapped_backwards_is_told(cut: object) -> None:
    assert isinstance(cut, OutOfRange)


def test_a_waist_of_nothing_is_our_mistake() -> None:
    with pytest.raises(ValueError):
        cut_by_share(Fraction(0), Fraction(1, 10), Fraction(0))


def test_elastic_that_is_too_short_for_the_hips_says_by_how_much() -> None:
    passage = pass_girth(Fraction(600), Fraction(1000), Fraction(1, 2))
    assert passage == Passage(Fraction(2, 3), Fraction(1, 2), Fraction(100))
    assert not passage.passes


def test_a_ring_larger_than_the_girth_needs_no_stretch() -> None:
    passage = pass_girth(Fraction(900), Fraction(800), Fraction(0))
    assert isinstance(passage, Passage)
    assert passage.passes
    assert passage.needed == 0


def test_lengths_and_ratings_that_cannot_be_are_told() -> None:
    assert isinstance(stretch(Fraction(0), Fraction(1)), OutOfRange)
    assert isinstance(stretch(Fraction(2), Fraction(1)), OutOfRange)
    assert isinstance(pass_girth(Fraction(0), Fraction(1), Fraction(1, 2)), OutOfRange)
    assert isinstance(pass_girth(Fraction(1), Fraction(1), Fraction(-1, 2)), OutOfRange)
    assert isinstance(shortest_ring(Fraction(1000), Fraction(2)), OutOfRange)


@settings(deadline=None, max_examples=50)
@given(girth=girths, rated=ratings)
def test_the_shortest_ring_just_passes_and_any_shorter_does_not(girth: Fraction, rated: Fraction) -> None:
    ring = shortest_ring(girth, rated)
    assert isinstance(ring, Fraction)
    just, short = pass_girth(ring, girth, rated), pass_girth(ring - Fraction(1, 1000), girth, rated)
    assert isinstance(just, Passage)
    assert isinstance(short, Passage)
    assert just.passes
    assert just.needed == rated
    assert not short.passes


@settings(deadline=None, max_examples=50)
@given(waist=girths, hip=girths)
def test_the_girth_to_pass_is_never_below_waist_or_hip(waist: Fraction, hip: Fraction) -> None:
    assert girth_to_pass(waist, hip) >= waist
    assert girth_to_pass(waist, hip) >= hip
