from __future__ import annotations

from fractions import Fraction

from furbelow.s4_cut.lanes.pool import pooled
from furbelow.s4_cut.plain_plan import plain_plan
from furbelow.s4_cut.problem import Bolt, CutPrices, ways_to_lay
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.s4_cut.cases import PRICES, Case, class_of_thirty, cm, small_cases
from tests.s4_cut.verify_plan import faults

CLOTH_DEAR = CutPrices(Fraction(9, 1000), Fraction(30, 100), Fraction(60, 100), Fraction(2, 100))


def test_a_class_of_thirty_is_cut_from_at_most_85_and_a_half_metres() -> None:
    strips, bolt = class_of_thirty(), Bolt(cm(150), cm(1))
    plan = pooled(strips, bolt, CLOTH_DEAR)
    assert faults(plan, strips, bolt, CLOTH_DEAR) == []
    assert cm(8346) < plan.laid_length <= cm(8550)  # 83.46 m is the area bound
    assert not any(section.across for section in plan.sections)
    wearers = {cut.wearer for section in plan.sections for lane in section.lanes for cut in lane.segments}
    assert wearers == {f"wearer {number}" for number in range(1, 31)}


def test_a_class_across_the_cloth_shares_its_lanes() -> None:
    strips = tuple(strip._replace(grain="across", most_joins=4) for strip in class_of_thirty())
    bolt = Bolt(cm(150), cm(1))
    plan = pooled(strips, bolt, PRICES)
    assert faults(plan, strips, bolt, PRICES) == []
    assert all(section.across for section in plan.sections)
    assert plan.laid_length < plain_plan(strips, bolt, PRICES).laid_length * Fraction(95, 100)


@settings(max_examples=25, deadline=None)
@given(st.lists(small_cases(), min_size=1, max_size=4))
def test_a_pooled_plan_is_right(cases: list[Case]) -> None:
    bolt = cases[0][1]._replace(one_way=False)
    strips = tuple(
        strip._replace(wearer=f"wearer {number}")
        for number, (strips, _, _) in enumerate(cases)
        for strip in strips
        if strip.depth <= bolt.usable_width and (bolt.longest_section is None or strip.length <= cm(250))
    )
    strips = tuple(strip._replace(grain="along") if strip.grain == "across" else strip for strip in strips)
    strips = tuple(strip for strip in strips if ways_to_lay(strip, bolt))
    if strips:
        assert faults(pooled(strips, bolt, PRICES), strips, bolt, PRICES) == []
