"""The order of work: as few machine set-ups as a search through every order finds, and every precedence kept."""

from __future__ import annotations

from itertools import permutations

from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.s3_rehearse.order_of_work import _search, fewest_set_ups, machine_changes, must_follow
from furbelow.s3_rehearse.rehearse import in_good_order
from furbelow.techniques import technique_of
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.demos.demos import EVERY_SIZE, order

SETUPS = ("", "straight stitch", "overlocker", "zigzag")


@st.composite
def _work(draw: st.DrawFn) -> tuple[list[frozenset[int]], list[str]]:
    count = draw(st.integers(1, 6))
    setups = draw(st.lists(st.sampled_from(SETUPS), min_size=count, max_size=count))
    before = [frozenset(draw(st.sets(st.integers(0, at - 1)))) if at else frozenset[int]() for at in range(count)]
    return before, setups


def _cost(places: tuple[int, ...], setups: list[str]) -> int:
    cost, on = 0, ""
    for at in places:
        if setups[at] not in ("", on):
            cost, on = cost + 1, setups[at]
    return cost


@settings(deadline=None, max_examples=150)
@given(_work())
def test_no_other_order_has_fewer_set_ups(work: tuple[list[frozenset[int]], list[str]]) -> None:
    before, setups = work
    found = _search(before, setups)
    assert found is not None
    allowed = [
        places
        for places in permutations(range(len(setups)))
        if all(before[at] <= set(places[:place]) for place, at in enumerate(places))
    ]
    assert found in allowed
    best = min(_cost(places, setups) for places in allowed)
    assert _cost(found, setups) == best
    # Among the best it is the one nearest to the written order.
    assert found == min(places for places in allowed if _cost(places, setups) == best)


def test_every_demo_is_proved_in_the_order_found_and_needs_no_more_set_ups() -> None:
    for name, size in EVERY_SIZE:
        for wish in ("as written", "each part together", "fewest set-ups"):
            rehearsal = prove(order(name, size, Workroom(order_of_work=wish))).value
            assert rehearsal is not None
            again = in_good_order(rehearsal, technique_of)
            assert sum(machine_changes(again.run.performed)) <= sum(machine_changes(rehearsal.run.performed))
            assert again.run.final == rehearsal.run.final or set(again.run.final.edges) == set(
                rehearsal.run.final.edges
            )
            assert again.run.drops == rehearsal.run.drops


def test_fewest_set_ups_save_two_on_the_underskirt() -> None:
    rehearsal = prove(order("larkspur", "M", Workroom(neaten_with="overlocker"))).value
    assert rehearsal is not None
    performed = rehearsal.run.performed
    best = fewest_set_ups(performed, parts_together=False)
    assert sum(machine_changes(performed)) - sum(machine_changes([performed[at] for at in best])) == 2


def test_steps_on_the_same_piece_keep_their_order() -> None:
    rehearsal = prove(order("larkspur", "M")).value
    assert rehearsal is not None
    performed = rehearsal.run.performed
    best = fewest_set_ups(performed, parts_together=False)
    for at, firsts in enumerate(must_follow(performed)):
        assert all(best.index(first) < best.index(at) for first in firsts)
