from fractions import Fraction

import pytest
from furbelow.s5_buy.out_of_range import OutOfRange
from furbelow.s5_buy.stitch_table import STITCHES, geometric_ratio
from furbelow.s5_buy.thread import (
    MeasuredFactors,
    ReelOrder,
    SeamRun,
    ThreadNeed,
    UnknownStitch,
    factors_from_swatch,
    reels_to_buy,
    stitches_per_inch,
    thread_for_seams,
)
from hypothesis import given, settings
from hypothesis import strategies as st

NONE = Fraction(0)
METRE = Fraction(1000)


def need_of(*runs: SeamRun, waste: Fraction = NONE) -> ThreadNeed:
    need = thread_for_seams(runs, waste)
    assert isinstance(need, ThreadNeed)
    return need


def test_a_petticoats_seams_are_summed_by_needle_bobbin_and_looper() -> None:
    need = need_of(SeamRun("301", 4 * METRE, passes=2), SeamRun("401", 2 * METRE), SeamRun("101", METRE))
    # 8 m x 2.5, half and half; 2 m x 5.5, a quarter in the needle; 1 m x 4.
    assert need.needle == 10 * METRE + Fraction("2.75") * METRE + 4 * METRE
    assert need.bobbin == 10 * METRE
    assert need.looper == Fraction("8.25") * METRE
    assert need.total == 35 * METRE
    assert need.reels_at_once == 2


def test_an_unknown_stitch_is_refused_and_the_rest_still_counted() -> None:
    need = need_of(SeamRun("999", METRE), SeamRun("301", METRE))
    assert need.total == Fraction("2.5") * METRE
    assert need.refused == (UnknownStitch("999", tuple(STITCHES)),)


def test_a_stitch_length_of_nothing_is_refused_with_both_numbers() -> None:
    need = need_of(SeamRun("301", METRE, stitch_length=NONE))
    (fault,) = need.refused
    assert isinstance(fault, OutOfRange)
    assert fault.headline == "stitch length of 0 mm is not above 0 mm"


@pytest.mark.parametrize(
    "run",
    [
        SeamRun("301", METRE, thickness=Fraction(-1)),
        SeamRun("304", METRE, width=Fraction(-1)),
    ],
)
def test_a_thickness_or_width_below_nothing_is_refused(run: SeamRun) -> None:
    need = need_of(run)
    assert need.runs == ()
    assert len(need.refused) == 1


@pytest.mark.parametrize("waste", [Fraction(-1, 100), Fraction(1)])
def test_a_waste_below_nothing_or_of_everything_is_told(waste: Fraction) -> None:
    assert isinstance(thread_for_seams([], waste), OutOfRange)


def test_no_seams_need_no_thread_and_no_reel() -> None:
    need = need_of()
    assert [need.total, need.reels_at_once] == [0, 0]
    assert reels_to_buy(need.total, 100 * METRE) == ReelOrder(0, NONE, NONE)


def test_a_seam_with_passes_or_length_below_nothing_is_our_mistake() -> None:
    with pytest.raises(ValueError):
        thread_for_seams([SeamRun("301", -METRE)])
    with pytest.raises(ValueError):
        thread_for_seams([SeamRun("301", METRE, passes=-1)])


def test_short_stitches_in_thick_cloth_take_more_than_the_table() -> None:
    need = need_of(SeamRun("301", METRE, stitch_length=Fraction(1), thickness=Fraction(2)))
    assert need.runs[0].basis == "geometry"
    assert need.total == 6 * METRE


def test_long_stitches_in_thin_cloth_take_no_less_than_the_table() -> None:
    need = need_of(SeamRun("301", METRE, stitch_length=Fraction(4), thickness=Fraction(1, 10)))
    assert need.runs[0].basis == "table"
    assert need.total == Fraction("2.5") * METRE


def test_a_measured_swatch_overrides_table_and_geometry() -> None:
    measured = MeasuredFactors(Fraction("1.2"), Fraction("1.1"))
    need = need_of(SeamRun("301", METRE, 1, Fraction(1), Fraction(2), measured=measured))
    assert need.runs[0].basis == "measured"
    assert [need.needle, need.bobbin] == [1200, 1100]


def test_figures_recalled_or_put_in_say_so_on_every_run() -> None:
    need = need_of(SeamRun("503", METRE), SeamRun("103", METRE), SeamRun("301", METRE))
    assert [run.grounds.split(":")[0] for run in need.runs] == ["from memory", "stand-in", "read"]


def test_a_zigzag_of_3_by_4_mm_follows_its_slope_of_5() -> None:
    assert geometric_ratio("304", Fraction(3), NONE, Fraction(4)) == Fraction(10, 3) + Fraction(1, 1500)


def test_a_zigzag_without_swing_is_a_lockstitch() -> None:
    assert geometric_ratio("304", Fraction(2), Fraction(1, 2), NONE) == geometric_ratio(
        "301", Fraction(2), Fraction(1, 2)
    )


def test_an_overedge_of_unknown_width_and_an_unformulated_stitch_have_no_geometry() -> None:
    assert geometric_ratio("504", Fraction(2), Fraction(1)) is None
    assert geometric_ratio("304", Fraction(2), Fraction(1)) is None
    assert geometric_ratio("512", Fraction(2), Fraction(1), Fraction(4)) is None


@settings(deadline=None, max_examples=50)
@given(
    stitch_length=st.fractions(Fraction(1, 2), 6, max_denominator=40),
    width=st.fractions(0, 8, max_denominator=40),
)
def test_the_zigzag_root_is_never_short_and_at_most_a_thousandth_long(stitch_length: Fraction, width: Fraction) -> None:
    ratio = geometric_ratio("304", stitch_length, NONE, width)
    assert ratio is not None
    square = 1 + (width / stitch_length) ** 2
    assert (ratio / 2) ** 2 >= square
    assert (ratio / 2 - Fraction(1, 1000)) ** 2 < square


def test_a_needle_thread_shorter_than_its_seam_is_told() -> None:
    fault = factors_from_swatch(METRE, METRE / 2, METRE)
    assert isinstance(fault, OutOfRange)
    assert fault.headline == "needle thread unpicked of 500 mm is 500 mm below the least, 1000 mm"


def test_an_unpicked_seam_without_length_or_thread_below_nothing_is_told() -> None:
    assert isinstance(factors_from_swatch(NONE, NONE, NONE), OutOfRange)
    assert isinstance(factors_from_swatch(METRE, METRE, -METRE), OutOfRange)


def test_an_overlocker_gets_a_reel_for_each_thread_however_short_the_edge() -> None:
    assert reels_to_buy(METRE, 100 * METRE, 3) == ReelOrder(3, 300 * METRE, 299 * METRE)


def test_a_reel_without_length_is_told() -> None:
    assert isinstance(reels_to_buy(METRE, NONE), OutOfRange)


@settings(deadline=None, max_examples=50)
@given(need=st.fractions(0, 10**6), reel=st.fractions(1, 10**5), standing=st.integers(0, 5))
def test_reels_cover_the_need_and_one_fewer_would_not(need: Fraction, reel: Fraction, standing: int) -> None:
    order = reels_to_buy(need, reel, standing)
    assert isinstance(order, ReelOrder)
    assert order.bought == order.reels * reel >= need
    assert order.left == order.bought - need
    if order.reels > standing:
        assert (order.reels - 1) * reel < need


def test_a_stitch_without_length_has_no_count_to_the_inch() -> None:
    with pytest.raises(ValueError):
        stitches_per_inch(NONE)
    with pytest.raises(ValueError):
        geometric_ratio("301", NONE, NONE)


def test_every_share_lies_between_none_and_all() -> None:
    for stitch in STITCHES.values():
        assert 0 < stitch.needle_share.value <= 1
        assert (stitch.needle_share.value == 1) == (stitch.under == "none")
