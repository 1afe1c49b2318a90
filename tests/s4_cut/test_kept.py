"""A kept plan is used for the same problem only, and whatever harm comes to the file, the plan is the same."""

from __future__ import annotations

import json
from collections.abc import Iterator
from fractions import Fraction
from typing import Any

import pytest
from furbelow.s4_cut import plan_cache
from furbelow.s4_cut.kept_plan import agrees
from furbelow.s4_cut.plain_plan import plain_plan
from furbelow.s4_cut.plan import CuttingPlan
from furbelow.s4_cut.plan_cache import KeptPlans
from furbelow.s4_cut.plan_text import from_json, to_json
from furbelow.s4_cut.planner import plan_cutting
from furbelow.s4_cut.problem import Bolt, Strip
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.s4_cut.cases import PRICES, Case, cm, small_cases
from tests.s4_cut.verify_plan import faults

STRIPS = (
    Strip("flounce", cm(300), cm(40), 2, piecing=True, join_allowance=cm(1), shortest_segment=cm(30)),
    Strip("yoke", cm(150), cm(20), 3),
)
BOLT = Bolt(cm(140))


def _file() -> bytes:
    plans = KeptPlans()
    assert plans.planner(STRIPS, BOLT, PRICES) == PLAN
    return plans.as_file()


PLAN = plan_cutting(STRIPS, BOLT, PRICES)
FILE = _file()


@pytest.fixture
def afresh(monkeypatch: pytest.MonkeyPatch) -> list[Any]:
    """The problems that are really planned; the planner stays idle and finds nothing."""
    asked: list[Any] = []

    monkeypatch.setattr(plan_cache, "planned_afresh", lambda *problem: asked.append(problem))
    return asked


def test_a_proven_plan_comes_out_of_the_file_and_nothing_is_planned(afresh: list[Any]) -> None:
    assert PLAN.proven
    plans = KeptPlans(FILE)
    assert plans.planner(STRIPS, BOLT, PRICES) == PLAN
    assert afresh == []
    assert plans.as_file() == FILE


@pytest.mark.parametrize(
    "problem",
    [
        ((STRIPS[0]._replace(length=cm(310)), STRIPS[1]), BOLT, PRICES),
        (STRIPS, BOLT._replace(usable_width=cm(150)), PRICES),
        (STRIPS, BOLT, PRICES._replace(per_join=cm(1))),
        (STRIPS, BOLT._replace(most_joins=0), PRICES),
        (STRIPS, BOLT._replace(most_sections=1), PRICES),
    ],
)
def test_another_problem_is_planned_afresh(problem: Any, afresh: list[Any]) -> None:
    strips, bolt, prices = problem
    plans = KeptPlans(FILE)
    assert plans.planner(strips, bolt, prices) is None
    assert len(afresh) == 1
    assert json.loads(plans.as_file())["plans"] == {}  # what this run did not use is dropped


def test_a_plan_that_is_not_proven_is_not_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(plan_cache, "planned_afresh", plain_plan)
    plans = KeptPlans()
    plan = plans.planner(STRIPS, BOLT, PRICES)
    assert plan is not None
    assert not plan.proven
    assert json.loads(plans.as_file())["plans"] == {}


@settings(deadline=None)
@given(st.integers(0, len(FILE) - 1), st.binary(max_size=3))
def test_a_damaged_file_gives_the_same_plan_or_none(at: int, put: bytes) -> None:
    damaged = FILE[:at] + put + FILE[at + 1 :]
    plans = KeptPlans(damaged)
    found = plan_cache._whole(next(iter(plans._earlier.values()), None))
    assert found in (None, PLAN)


@settings(deadline=None)
@given(st.integers(0, len(FILE) - 1))
def test_a_file_that_was_cut_short_gives_no_plan(end: int) -> None:
    assert plan_cache._entries(FILE[:end]) == {} or FILE[:end].strip() == FILE.strip()


@pytest.mark.parametrize(
    "file",
    [
        b"",
        b"[]",
        b"null",
        b"\xff\xfe",
        b"[" * 100_000,
        b'{"furbelow_plans": 1}',
        b'{"furbelow_plans": 1, "plans": []}',
        b'{"furbelow_plans": 2, "plans": {}}',
    ],
)
def test_any_other_file_holds_no_plans(file: bytes) -> None:
    assert KeptPlans(file)._earlier == {}


def _signed(change: dict[str, Any]) -> bytes:
    """The file with values of the plan changed by someone who also mended the digest."""
    told = json.loads(FILE)
    (entry,) = told["plans"].values()
    entry["plan"] |= change
    entry["digest"] = plan_cache._digest(entry["plan"])
    return json.dumps(told).encode()


@pytest.mark.parametrize(
    "change",
    [
        {"sections": []},
        {"sections": [1]},
        {"sections": None},
        {"joins": 50},
        {"joins": "many"},
        {"laid_length": "1"},
        {"bolt_length": "1/0"},
        {"bolt_length": "1e999999999"},
        {"cost": 7},
        {"folded": True},
        {"more": 1},
    ],
)
def test_a_plan_that_does_not_add_up_is_made_afresh(change: dict[str, Any], afresh: list[Any]) -> None:
    assert KeptPlans(_signed(change)).planner(STRIPS, BOLT, PRICES) is None
    assert len(afresh) == 1


@settings(deadline=None)
@given(small_cases())
def test_every_plan_agrees_with_its_own_problem(case: Case) -> None:
    assert agrees(plain_plan(*case), *case)


def _with_first_segment(plan: CuttingPlan, **change: Any) -> CuttingPlan:
    section, lane = plan.sections[0], plan.sections[0].lanes[0]
    lane = lane._replace(segments=(lane.segments[0]._replace(**change), *lane.segments[1:]))
    return plan._replace(sections=(section._replace(lanes=(lane, *section.lanes[1:])), *plan.sections[1:]))


@pytest.mark.parametrize(
    "change",
    [{"length": cm(10)}, {"length": cm(9000)}, {"copy": 9}, {"part": 3}, {"strip": "pocket"}, {"wearer": "Bo"}],
)
def test_a_plan_with_one_segment_changed_no_longer_agrees(change: dict[str, Any]) -> None:
    assert agrees(PLAN, STRIPS, BOLT, PRICES)
    assert not agrees(_with_first_segment(PLAN, **change), STRIPS, BOLT, PRICES)


def test_a_plan_for_a_wider_bolt_or_other_strips_does_not_agree() -> None:
    assert not agrees(PLAN, STRIPS, BOLT._replace(usable_width=cm(100)), PRICES)
    assert not agrees(PLAN, STRIPS[:1], BOLT, PRICES)
    assert not agrees(PLAN, (*STRIPS, Strip("band", cm(50), cm(5))), BOLT, PRICES)
    assert not agrees(PLAN, (STRIPS[0], STRIPS[1]._replace(count=4)), BOLT, PRICES)
    assert not agrees(PLAN, (STRIPS[0]._replace(depth=cm(41)), STRIPS[1]), BOLT, PRICES)


@settings(deadline=None, max_examples=60)
@given(small_cases())
def test_whatever_agrees_is_a_plan_that_can_be_cut(case: Case) -> None:
    """Against the checker of the tests, which shares no code with this one, on plans with one value changed."""
    plan = plain_plan(*case)
    for changed in _one_value_changed(json.loads(to_json(plan))):
        try:
            told = from_json(json.dumps(changed))
        except ValueError:
            continue
        if agrees(told, *case):
            assert faults(told, *case) == []


def _one_value_changed(told: Any, top: Any = None) -> Iterator[Any]:
    """The whole with each value in turn taken from its neighbour, turned round, moved, or of another kind."""
    top = told if top is None else top
    places = list(told.items() if isinstance(told, dict) else enumerate(told))
    for key, value in places:
        others: list[Any] = [None, "x", -1]
        match value:
            case bool():
                others.append(not value)
            case int():
                others.append(value + 1)
            case str() if value.lstrip("-")[:1].isdigit():
                others += ["0", f"-{value}", str(2 * Fraction(value)), str(Fraction(value) + 5)]
            case str():
                others += ["under", "fold", "flat", ""]
            case list():
                others += [[], value[1:], value + value[:1]]
                yield from _one_value_changed(value, top)
            case dict():
                yield from _one_value_changed(value, top)
        for other in others:
            told[key] = other
            yield top
        told[key] = value


def test_a_forged_plan_that_wastes_cloth_is_made_afresh() -> None:
    """Whole, of the right pieces, with its digest and its bound redone: only it lays out the cloth ten times as long."""
    told = json.loads(FILE)
    (entry,) = told["plans"].values()
    last = entry["plan"]["sections"][-1]
    more = Fraction(last["length"]) * 9
    last["length"] = str(Fraction(last["length"]) + more)
    for name in ("laid_length", "bolt_length"):
        entry["plan"][name] = str(Fraction(entry["plan"][name]) + more)
    for name in ("cost", "bound"):
        entry["plan"][name] = str(Fraction(entry["plan"][name]) + more * PRICES.cloth_per_mm)
    entry["digest"] = plan_cache._digest(entry["plan"])
    forged = from_json(json.dumps(entry["plan"]))
    assert agrees(forged, STRIPS, BOLT, PRICES)
    assert KeptPlans(json.dumps(told).encode()).planner(STRIPS, BOLT, PRICES) == PLAN
