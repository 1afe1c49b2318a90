from __future__ import annotations

import pytest
from furbelow.s4_cut.plain_plan import plain_plan
from furbelow.s4_cut.plan_text import from_json, plan_key, to_json
from furbelow.s4_cut.problem import Bolt, Strip
from hypothesis import given, settings

from tests.s4_cut.cases import PRICES, Case, cm, small_cases


@settings(deadline=None)
@given(small_cases())
def test_a_kept_plan_comes_back_the_same(case: Case) -> None:
    plan = plain_plan(*case)
    assert from_json(to_json(plan)) == plan


def test_the_key_changes_with_every_part_of_the_problem_and_stays_for_the_same() -> None:
    strips, bolt = (Strip("band", cm(80), cm(8)),), Bolt(cm(140))
    key = plan_key(strips, bolt, PRICES)
    assert key == plan_key((Strip("band", cm(80), cm(8)),), Bolt(cm(140)), PRICES)
    others = {
        plan_key((strips[0]._replace(count=2),), bolt, PRICES),
        plan_key((strips[0]._replace(wearer="Ines"),), bolt, PRICES),
        plan_key(strips, bolt._replace(folded=True), PRICES),
        plan_key(strips, bolt, PRICES._replace(per_join=PRICES.per_join * 2)),
    }
    assert len(others | {key}) == 5


def test_text_that_is_no_plan_is_refused() -> None:
    for text in ("", "[]", "{}", '{"sections": [1]}'):
        with pytest.raises(ValueError, match="plan|Expecting"):
            from_json(text)
