from fractions import Fraction

from furbelow.garment.stitch import StitchType
from furbelow.s5_buy.stitch_table import STITCHES
from furbelow.s5_buy.thread import ReelOrder, SeamRun, reels_to_buy, thread_for_seams
from hypothesis import given, settings
from hypothesis import strategies as st

METRE = Fraction(1000)
NONE = Fraction(0)


def run(stitch: StitchType, metres: int, passes: int = 1, length: str = "4", thickness: str = "0.1") -> SeamRun:
    """Long stitches in thin cloth: the table counts."""
    return SeamRun(stitch, metres * METRE, passes, Fraction(length), Fraction(thickness))


def test_every_stitch_type_has_its_thread() -> None:
    assert set(STITCHES) == set(StitchType)


def test_a_petticoats_seams_are_summed_by_needle_bobbin_and_looper() -> None:
    seams = [run(StitchType.LOCK, 4, 2), run(StitchType.TWO_THREAD_CHAIN, 2), run(StitchType.CHAIN, 1)]
    need = thread_for_seams(seams, NONE)
    # 8 m x 2.5, half and half; 2 m x 5.5, a quarter in the needle; 1 m x 4.
    assert need.needle == 10 * METRE + Fraction("2.75") * METRE + 4 * METRE
    assert need.bobbin == 10 * METRE
    assert need.looper == Fraction("8.25") * METRE
    assert need.total == 35 * METRE
    # Two on the machine with the looper, beside one for the seams.
    assert [need.reels_at_once, need.on_looper] == [3, 2]


def test_no_seams_need_no_thread_and_no_reel() -> None:
    need = thread_for_seams([], NONE)
    assert [need.total, need.reels_at_once] == [0, 0]
    assert reels_to_buy(need.total, 100 * METRE) == ReelOrder(0, NONE, NONE)


def test_short_stitches_in_thick_cloth_take_more_than_the_table() -> None:
    # Two threads along the seam, and one down and up again at each of the 1000 stitches: 2 + 2 x 2.
    assert thread_for_seams([run(StitchType.LOCK, 1, length="1", thickness="2")], NONE).total == 6 * METRE


def test_long_stitches_in_thin_cloth_take_no_less_than_the_table() -> None:
    assert thread_for_seams([run(StitchType.LOCK, 1)], NONE).total == Fraction("2.5") * METRE


def test_a_running_stitch_takes_less_than_any_machine() -> None:
    by_hand = thread_for_seams([run(StitchType.RUNNING, 1)], NONE)
    assert by_hand.total < min(
        thread_for_seams([run(kind, 1)], NONE).total for kind in (StitchType.LOCK, StitchType.CHAIN)
    )
    assert by_hand.bobbin == 0


def test_a_running_stitch_in_thick_cloth_goes_through_it_once_a_stitch() -> None:
    assert thread_for_seams([run(StitchType.RUNNING, 1, length="4", thickness="8")], NONE).total == 3 * METRE


def test_an_overlocker_gets_a_reel_for_each_thread_however_short_the_edge() -> None:
    assert reels_to_buy(METRE, 100 * METRE, 3) == ReelOrder(3, 300 * METRE, 299 * METRE)


@settings(deadline=None, max_examples=50)
@given(need=st.fractions(0, 10**6), reel=st.fractions(1, 10**5), standing=st.integers(0, 5))
def test_reels_cover_the_need_and_one_fewer_would_not(need: Fraction, reel: Fraction, standing: int) -> None:
    order = reels_to_buy(need, reel, standing)
    assert order.bought == order.reels * reel >= need
    assert order.left == order.bought - need
    if order.reels > standing:
        assert (order.reels - 1) * reel < need


def test_every_share_lies_between_none_and_all() -> None:
    for stitch in STITCHES.values():
        assert 0 < stitch.needle_share.value <= 1
        assert (stitch.needle_share.value == 1) == (stitch.under == "none")
