from fractions import Fraction

from furbelow.s5_buy.bobbins import BobbinPlan, BobbinWork, FreshBobbin, Rows, RunsOutInside, plan_bobbins
from hypothesis import given, settings
from hypothesis import strategies as st

METRE = Fraction(1000)

HEM, CLOSE, ATTACH = (Rows(at, 0, 5) for at in range(3))
BASTE, LONG_HEM, BAND = (Rows(at, 0, 1) for at in range(3))


def plan(*work: BobbinWork, capacity: Fraction) -> BobbinPlan:
    return plan_bobbins(work, capacity)


def test_a_fresh_bobbin_goes_in_before_the_piece_the_old_one_no_longer_reaches() -> None:
    planned = plan(BobbinWork(HEM, 12 * METRE, 5), capacity=30 * METRE)
    assert planned == BobbinPlan(3, (FreshBobbin(HEM, 3, 6 * METRE), FreshBobbin(HEM, 5, 6 * METRE)), ())


def test_what_is_left_serves_the_next_step() -> None:
    planned = plan(BobbinWork(CLOSE, 10 * METRE, 2), BobbinWork(ATTACH, 15 * METRE), capacity=30 * METRE)
    assert planned.fresh == (FreshBobbin(ATTACH, 1, 10 * METRE),)


def test_a_bobbin_that_just_reaches_is_not_changed() -> None:
    assert plan(BobbinWork(HEM, 10 * METRE, 3), capacity=30 * METRE).fresh == ()


def test_a_seam_longer_than_a_bobbin_starts_fresh_and_says_how_often_it_changes_inside() -> None:
    planned = plan(
        BobbinWork(BASTE, 5 * METRE),
        BobbinWork(LONG_HEM, 70 * METRE),
        BobbinWork(BAND, 20 * METRE),
        capacity=30 * METRE,
    )
    assert planned.fresh == (FreshBobbin(LONG_HEM, 1, 25 * METRE),)
    assert planned.inside == (RunsOutInside(LONG_HEM, 1, 2),)
    assert planned.bobbins == 4


def test_steps_without_bobbin_thread_wind_no_bobbin() -> None:
    assert plan(BobbinWork(HEM, Fraction(0), 9), capacity=METRE) == BobbinPlan(0, (), ())


@settings(deadline=None, max_examples=50)
@given(
    chains=st.lists(st.tuples(st.integers(1, 30), st.integers(0, 40)), max_size=6),
    capacity=st.integers(30, 90),
)
def test_the_plan_agrees_with_sewing_piece_by_piece(chains: list[tuple[int, int]], capacity: int) -> None:
    planned = plan(
        *(BobbinWork(Rows(n, 0, pieces), Fraction(need), pieces) for n, (need, pieces) in enumerate(chains)),
        capacity=Fraction(capacity),
    )
    fresh, left, wound = [], 0, 0
    for number, (need, pieces) in enumerate(chains):
        for piece in range(1, pieces + 1):
            if need > left:
                if wound:
                    fresh.append(FreshBobbin(Rows(number, 0, pieces), piece, Fraction(left)))
                left, wound = capacity, wound + 1
            left -= need
    assert planned == BobbinPlan(wound, tuple(fresh), ())
