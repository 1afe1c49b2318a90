from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, settings

from compiler.s4_cut.exact import Limits
from compiler.s4_cut.planner import best_plan, plain_plan, plan_cutting
from compiler.s4_cut.problem import Bolt, CutPrices, Strip
from tests.s4_cut.cases import Case, cm, small_cases
from tests.s4_cut.verify_plan import faults

# Four flounces and eight yokes on a 10 cm grid, no seam at joins. The lengths below were proven with a model of
# the same question in another solver, written before this planner.
FLOUNCES = (
    Strip("flounce", cm(540), cm(28), 4, piecing=True, most_joins=9),
    Strip("yoke", cm(270), cm(14), 8, piecing=True, most_joins=9),
)
CLOTH_FIRST = CutPrices(Fraction(1), Fraction(1, 10), Fraction(1, 10))


@pytest.mark.parametrize(
    ("joins", "sections", "length"),
    [(0, 1, 1080), (0, 2, 810), (1, 1, 810), (2, 1, 720), (3, 2, 680), (4, 2, 650)],
)
def test_least_cloth_for_so_many_joins_and_sections(joins: int, sections: int, length: int) -> None:
    plan = best_plan(FLOUNCES, Bolt(cm(140), cm(10)), CLOTH_FIRST, Limits(joins, sections))
    assert plan is not None
    assert plan.laid_length == cm(length)
    assert plan.proven
    assert faults(plan, FLOUNCES, Bolt(cm(140), cm(10)), CLOTH_FIRST) == []


@settings(max_examples=60, deadline=None)
@given(small_cases())
def test_a_plan_is_right_and_never_dearer_than_first_fit(case: Case) -> None:
    plan = plan_cutting(*case)
    assert faults(plan, *case) == []
    assert plan.cost <= plain_plan(*case).cost
