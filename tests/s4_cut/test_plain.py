from __future__ import annotations

from furbelow.s4_cut.plain_plan import plain_plan
from furbelow.s4_cut.problem import Bolt, Strip
from hypothesis import given, settings

from tests.s4_cut.cases import PRICES, Case, cm, small_cases
from tests.s4_cut.verify_plan import faults


@settings(deadline=None)
@given(small_cases())
def test_a_plain_plan_is_always_right(case: Case) -> None:
    assert faults(plain_plan(*case), *case) == []


def test_two_strips_that_fill_the_width_share_one_section() -> None:
    strips = (Strip("upper", cm(300), cm(40)), Strip("lower", cm(300), cm(100)))
    plan = plain_plan(strips, Bolt(cm(140)), PRICES)
    assert plan.laid_length == cm(300)
    assert [lane.offset for lane in plan.sections[0].lanes] == [0, cm(100)]


def test_on_folded_cloth_one_lane_lies_on_the_fold() -> None:
    strips = (Strip("flounce", cm(300), cm(50), count=2), Strip("yoke", cm(300), cm(40)))
    plan = plain_plan(strips, Bolt(cm(140), folded=True), PRICES)
    assert [(lane.layer, lane.offset) for lane in plan.sections[0].lanes] == [
        ("fold", 0),
        ("upper", cm(20)),
        ("under", cm(20)),
    ]
