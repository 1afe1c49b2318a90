from __future__ import annotations

from fractions import Fraction
from math import inf

from furbelow.s4_cut.lanes.grid import scale_of
from furbelow.s4_cut.lanes.in_lanes import in_lanes
from furbelow.s4_cut.lanes.lay import lay_out
from furbelow.s4_cut.lanes.limits import Limits, Work
from furbelow.s4_cut.plan import How
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.s4_cut.cases import cm
from tests.s4_cut.exhaustive import least_cost
from tests.s4_cut.verify_plan import faults


@st.composite
def tiny_cases(draw: st.DrawFn) -> tuple[tuple[Strip, ...], Bolt, CutPrices]:
    """A few pieces on a 20 cm grid, at most seven segments, and prices at which all of it matters."""
    strips: list[Strip] = []
    segments = 7  # more would take the exhaustive search too long
    while segments and len(strips) < draw(st.integers(1, 3)):
        count = draw(st.integers(1, min(2, segments)))
        # Two pieced strips may cross from lane to lane where joins are cheap; a plan of ours lets them follow each other.
        pieced = count == 1 and not any(strip.piecing for strip in strips)
        most_joins = draw(st.integers(0, min(2, segments - 1))) if pieced else 0
        segments -= count * (most_joins + 1)
        strips.append(
            Strip(
                f"strip {len(strips)}",
                cm(20 * draw(st.integers(1, 7))),
                cm(draw(st.sampled_from([20, 30, 45, 60]))),
                count,
                piecing=most_joins > 0,
                join_allowance=draw(st.sampled_from([Fraction(0), Fraction(50)])),
                shortest_segment=draw(st.sampled_from([Fraction(0), cm(40)])),
                most_joins=most_joins,
                selvedge=draw(st.booleans()),
            )
        )
    folded, one_way = draw(st.booleans()), draw(st.booleans())
    bolt = Bolt(cm(draw(st.sampled_from([120, 130] if folded else [60, 75, 100]))), cm(20), folded, one_way)
    prices = CutPrices(
        Fraction(1, 100),
        Fraction(draw(st.sampled_from([0, 5, 15])), 10),
        Fraction(draw(st.sampled_from([0, 7, 20])), 10),
        Fraction(draw(st.sampled_from([0, 1])), 10),
    )
    return tuple(strips), bolt, prices


@settings(max_examples=25, deadline=None)
@given(tiny_cases())
def test_the_lanes_are_the_cheapest_of_all(case: tuple[tuple[Strip, ...], Bolt, CutPrices]) -> None:
    strips, bolt, prices = case
    scale = scale_of(strips, bolt, prices)
    found = in_lanes(strips, bolt, scale, Limits(), Work(), inf)
    assert found.layings is not None
    plan = lay_out(found.layings, strips, bolt, prices, scale, int(found.bound), How.BY_AREA)
    assert faults(plan, strips, bolt, prices) == []
    assert plan.proven
    assert plan.cost == least_cost(strips, bolt, prices, most_sections=3)
