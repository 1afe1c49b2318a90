"""Cloth folded lengthwise: lanes in mirrored pairs, and one lane on the fold that opens to double."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction

import pytest
from furbelow.s4_cut.marks import table_marks
from furbelow.s4_cut.offcuts import Offcut, offcuts
from furbelow.s4_cut.plan import CuttingPlan, Lane
from furbelow.s4_cut.planner import plan_cutting
from furbelow.s4_cut.problem import Bolt, Strip, misfits
from hypothesis import assume, given, settings

from tests.s4_cut.cases import PRICES, Case, cm, small_cases
from tests.s4_cut.verify_plan import faults

BOLT = Bolt(cm(140), folded=True)
THREE_ALIKE = (Strip("flounce", cm(300), cm(40), 3),)


def lanes(plan: CuttingPlan) -> list[tuple[str, int, int]]:
    (section,) = plan.sections
    return [(lane.layer, int(lane.offset / 10), int(lane.depth / 10)) for lane in section.lanes]


def test_a_half_lane_at_the_fold_opens_to_a_full_one() -> None:
    # Common practice, no source.
    strips = (Strip("flounce", cm(300), cm(90)),)
    plan = plan_cutting(strips, BOLT, PRICES)
    assert faults(plan, strips, BOLT, PRICES) == []
    assert lanes(plan) == [("fold", 0, 90)]
    (mark,) = table_marks(plan.sections[0])
    assert (mark.distance, mark.depth, mark.on_fold) == (cm(45), cm(45), True)


def test_two_alike_lie_in_one_mirrored_pair_slit_at_one_tape() -> None:
    strips = (Strip("flounce", cm(300), cm(60), 2),)
    plan = plan_cutting(strips, BOLT, PRICES)
    assert faults(plan, strips, BOLT, PRICES) == []
    assert lanes(plan) == [("upper", 0, 60), ("under", 0, 60)]
    (mark,) = table_marks(plan.sections[0])
    assert (mark.distance, mark.lanes) == (cm(60), (1, 2))


def test_of_three_alike_one_lies_on_the_fold_and_two_in_a_pair_beyond_it() -> None:
    plan = plan_cutting(THREE_ALIKE, BOLT, PRICES)
    assert faults(plan, THREE_ALIKE, BOLT, PRICES) == []
    assert lanes(plan) == [("fold", 0, 40), ("upper", 20, 40), ("under", 20, 40)]
    # From the fold: half of the lane on it, then the pair.
    assert [mark.distance for mark in table_marks(plan.sections[0])] == [cm(20), cm(60)]


def test_of_two_odd_depths_only_the_deeper_lies_on_the_fold_and_the_twin_of_the_other_stays_over() -> None:
    strips = (Strip("flounce", cm(300), cm(60)), Strip("yoke", cm(300), cm(40)))
    plan = plan_cutting(strips, BOLT, PRICES)
    assert faults(plan, strips, BOLT, PRICES) == []
    assert lanes(plan) == [("fold", 0, 60), ("upper", 30, 40), ("under", 30, 40)]
    assert Offcut(1, cm(300), cm(40)) in offcuts(plan)


def test_the_width_left_beside_the_lanes_is_half_of_it_in_each_layer() -> None:
    plan = plan_cutting(THREE_ALIKE, BOLT, PRICES)
    assert [each.width for each in offcuts(plan)] == [cm(10), cm(10)]


@settings(max_examples=40, deadline=None)
@given(small_cases())
def test_folding_the_cloth_never_saves_any(case: Case) -> None:
    strips, bolt, prices = case
    assume(not misfits(strips, bolt._replace(folded=True)))
    folded, flat = (plan_cutting(strips, bolt._replace(folded=fold), prices) for fold in (True, False))
    assert faults(folded, strips, bolt._replace(folded=True), prices) == []
    assert faults(flat, strips, bolt._replace(folded=False), prices) == []
    # What can be cut folded can be cut flat.
    assert flat.bound <= folded.cost
    assert not flat.proven or flat.cost <= folded.cost


PLAN = plan_cutting(THREE_ALIKE, BOLT, PRICES)


def _lane(number: int, change: Callable[[Lane], Lane | None]) -> CuttingPlan:
    section = PLAN.sections[0]
    changed = change(section.lanes[number])
    kept = (*section.lanes[:number], *((changed,) if changed else ()), *section.lanes[number + 1 :])
    return PLAN._replace(sections=(section._replace(lanes=kept),))


@pytest.mark.parametrize(
    ("damaged", "seen"),
    [
        (_lane(0, lambda lane: lane._replace(offset=cm(1))), "isn't at it"),
        (_lane(1, lambda lane: lane._replace(layer="fold", offset=Fraction(0))), "more than one lane on the fold"),
        (_lane(2, lambda lane: None), "not in mirrored pairs"),
        (_lane(2, lambda lane: lane._replace(offset=lane.offset + 10)), "not in mirrored pairs"),
        (_lane(0, lambda lane: lane._replace(layer="flat")), "a single lane on folded cloth"),
        (_lane(0, lambda lane: lane._replace(depth=lane.depth + 100)), "lanes overlap"),
    ],
)
def test_a_wrong_fold_is_seen(damaged: CuttingPlan, seen: str) -> None:
    assert faults(PLAN, THREE_ALIKE, BOLT, PRICES) == []
    assert re.search(seen, "\n".join(faults(damaged, THREE_ALIKE, BOLT, PRICES)))
