"""Pieces with an edge on the selvedge: in the lanes at the sides of the cloth, and nowhere else."""

from __future__ import annotations

from fractions import Fraction

from furbelow.s4_cut.kept_plan import agrees
from furbelow.s4_cut.lanes.pool import pooled
from furbelow.s4_cut.marks import table_marks
from furbelow.s4_cut.plan import CuttingPlan
from furbelow.s4_cut.planner import plan_cutting
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip, misfits
from hypothesis import given, settings

from tests.s4_cut.cases import Case, cm, small_cases
from tests.s4_cut.verify_plan import faults

CLOTH_ALONE = CutPrices(Fraction(1, 1000))
FLOUNCE = Strip("flounce", cm(300), cm(20), 2, selvedge=True)
YOKE = Strip("yoke", cm(300), cm(40), 1)


def _plan(bolt: Bolt, *strips: Strip) -> CuttingPlan:
    plan = plan_cutting(strips, bolt, CLOTH_ALONE)
    assert faults(plan, strips, bolt, CLOTH_ALONE) == []
    assert agrees(plan, strips, bolt, CLOTH_ALONE)
    return plan


def test_two_strips_lie_at_the_two_selvedges_and_the_rest_between() -> None:
    (section,) = _plan(Bolt(cm(100)), FLOUNCE, YOKE).sections
    assert [(lane.offset, lane.selvedge) for lane in section.lanes] == [(0, True), (cm(20), False), (cm(80), True)]
    # Both long edges of the far lane are measured from its own selvedge.
    assert [mark.distance for mark in table_marks(section)] == [cm(20), cm(60)]


def test_on_folded_cloth_both_selvedges_lie_at_the_side_away_from_the_fold() -> None:
    (section,) = _plan(Bolt(cm(100), folded=True), FLOUNCE, YOKE).sections
    assert [(lane.layer, lane.offset) for lane in section.lanes] == [("fold", 0), ("upper", cm(30)), ("under", cm(30))]
    assert [mark.distance for mark in table_marks(section)] == [cm(20)]


def test_on_folded_cloth_a_strip_deeper_than_half_the_width_does_not_fit() -> None:
    deep = Strip("deep", cm(100), cm(60), selvedge=True)
    assert not misfits((deep,), Bolt(cm(100)))
    (misfit,) = misfits((deep,), Bolt(cm(100), folded=True))
    assert (misfit.direction, misfit.size, misfit.room) == ("width", cm(120), cm(100))


def test_a_whole_panel_with_a_selvedge_is_not_laid_freely() -> None:
    strips = (
        Strip("front", cm(90), cm(70), selvedge=True),
        Strip("bib", cm(30), cm(28)),
        Strip("tab", cm(20), cm(9), 3),
    )
    plan = _plan(Bolt(cm(140)), *strips)
    assert "front" not in {panel.strip for section in plan.sections for panel in section.panels}


@settings(max_examples=60, deadline=None)
@given(small_cases())
def test_a_class_keeps_the_selvedges_too(case: Case) -> None:
    strips, bolt, prices = case
    plan = pooled(strips, bolt, prices)
    assert faults(plan, strips, bolt, prices) == []
    assert agrees(plan, strips, bolt, prices)
