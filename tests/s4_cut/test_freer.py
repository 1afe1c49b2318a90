"""A problem with more freedom never costs more: of grain, of joins, of sections, on flat cloth instead of folded."""

from __future__ import annotations

import pytest
from furbelow.garment.spec import Grain
from furbelow.s4_cut.lanes.limits import Limits
from furbelow.s4_cut.planner import best_plan, plan_cutting
from furbelow.s4_cut.problem import Bolt, Strip, misfits, ways_to_lay
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from tests.s4_cut.cases import PRICES, Case, cm, small_cases
from tests.s4_cut.verify_plan import faults

# Seven layers of a child's net skirt, each a little deeper than the one over it, and their band.
LAYERS = tuple(Strip(f"layer {n}", cm(117), cm(18 + n), grain="across") for n in range(7))
NET = Bolt(cm(148))


def _laid(strips: tuple[Strip, ...], grain: Grain) -> tuple[Strip, ...]:
    return tuple(strip._replace(grain=grain) for strip in strips)


@pytest.mark.parametrize("grain", ["along", "across"])
def test_many_layers_of_free_grain_cost_no_more_than_all_laid_one_way(grain: Grain) -> None:
    """The ways to lay seven pieces are more than can be tried, and the plainest of them come first."""
    free = plan_cutting(_laid(LAYERS, "free"), NET, PRICES)
    assert free.cost <= plan_cutting(_laid(LAYERS, grain), NET, PRICES).cost
    assert faults(free, _laid(LAYERS, "free"), NET, PRICES) == []


@settings(deadline=None, max_examples=60)
@given(small_cases(), st.sampled_from(["along", "across"]))
def test_free_grain_never_costs_more(case: Case, grain: Grain) -> None:
    strips, bolt, prices = case
    told = _laid(strips, grain)
    if not all(ways_to_lay(strip, bolt) for strip in told):
        return
    assert plan_cutting(_laid(strips, "free"), bolt, prices).cost <= plan_cutting(told, bolt, prices).cost


@settings(deadline=None, max_examples=60)
@given(small_cases(), st.integers(0, 3), st.integers(1, 3))
def test_more_joins_and_more_sections_never_cost_more(case: Case, joins: int, sections: int) -> None:
    tight = best_plan(*case, Limits(joins, sections))
    if tight is None:
        return
    for looser in (Limits(joins + 1, sections), Limits(joins, sections + 1), Limits(None, None)):
        found = best_plan(*case, looser)
        assert found is not None
        assert found.cost <= tight.cost


@settings(deadline=None, max_examples=60)
@given(small_cases())
def test_flat_cloth_never_takes_more_than_folded(case: Case) -> None:
    """What two layers give at once, one gives one after the other; the lanes and cuts are as many."""
    strips, bolt, prices = case
    assume(not misfits(strips, bolt._replace(folded=True)))
    folded = plan_cutting(strips, bolt._replace(folded=True), prices)
    assert plan_cutting(strips, bolt._replace(folded=False), prices).cost <= folded.cost
