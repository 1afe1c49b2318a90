"""The verifier itself: each kind of damage to a right plan is seen."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from furbelow.s4_cut.plan import CuttingPlan, Lane, Section, Segment
from furbelow.s4_cut.planner import plan_cutting
from furbelow.s4_cut.problem import Bolt, Strip

from tests.s4_cut.cases import PRICES, cm
from tests.s4_cut.verify_plan import faults

STRIPS = (
    Strip("flounce", cm(300), cm(30), 3, True, cm(1), cm(30), 2),
    Strip("yoke", cm(200), cm(20), 2, True, cm(1), cm(30), 1),
    Strip("panel", cm(60), cm(50)),
)
BOLT = Bolt(cm(140))
PLAN = plan_cutting(STRIPS, BOLT, PRICES)


def _section(change: Callable[[Section], Section]) -> CuttingPlan:
    return PLAN._replace(sections=(change(PLAN.sections[0]), *PLAN.sections[1:]))


def _lane(change: Callable[[Lane], Lane]) -> CuttingPlan:
    return _section(lambda section: section._replace(lanes=(change(section.lanes[0]), *section.lanes[1:])))


def _segment(change: Callable[[Segment], Segment]) -> CuttingPlan:
    return _lane(lambda lane: lane._replace(segments=(change(lane.segments[0]), *lane.segments[1:])))


@pytest.mark.parametrize(
    ("damaged", "seen"),
    [
        (_segment(lambda cut: cut._replace(length=cut.length - 10)), "when joined|wrong length"),
        (_segment(lambda cut: cut._replace(copy=9)), "not all there"),
        (_segment(lambda cut: cut._replace(strip="collar")), "nobody asked for"),
        (_segment(lambda cut: cut._replace(start=cut.start + 5000)), "a lane is filled to"),
        (_lane(lambda lane: lane._replace(segments=())), "not all there"),
        (_lane(lambda lane: lane._replace(depth=lane.depth - 10)), "it is .* deep"),
        (_lane(lambda lane: lane._replace(layer="fold")), "a folded lane on flat cloth"),
        (
            _section(lambda section: section._replace(lanes=(section.lanes[0], *section.lanes))),
            "lanes overlap",
        ),
        (_section(lambda section: section._replace(length=section.length - 5)), "a lane is filled to"),
        (PLAN._replace(joins=PLAN.joins + 1), "the plan says"),
        (PLAN._replace(cost=PLAN.cost - 1), "the plan says"),
        (PLAN._replace(bound=PLAN.cost + 1), "bound"),
    ],
)
def test_damage_is_seen(damaged: CuttingPlan, seen: str) -> None:
    assert faults(PLAN, STRIPS, BOLT, PRICES) == []
    found = "\n".join(faults(damaged, STRIPS, BOLT, PRICES))
    assert re.search(seen, found), found
