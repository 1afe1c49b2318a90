"""Proven cutting plans kept in a file, so that the same cloth need not be planned twice.

A plan out of the file is used only if it is whole, as a digest tells, still cuts the very pieces that are asked for (see
kept_plan.py), and costs no more than a plain one. Anything else in the file is passed over, and the plan is made afresh.
"""

from __future__ import annotations

import json
from hashlib import sha256
from typing import Any

from furbelow.s4_cut.cut import planned_afresh
from furbelow.s4_cut.kept_plan import agrees
from furbelow.s4_cut.plan import CuttingPlan
from furbelow.s4_cut.plan_text import from_json, plan_key, to_json
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip

PLANS_FILE = "plans.json"

_FORMAT = 1


class KeptPlans:
    """The plans of an earlier run, and those that this run has used."""

    def __init__(self, file: bytes = b"") -> None:
        self._earlier = _entries(file)
        self._used: dict[str, CuttingPlan] = {}

    def planner(self, strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan | None:
        """A plan from those kept, and where none is, the one that is found."""
        key = plan_key(strips, bolt, prices)
        plan = _whole(self._earlier.get(key))
        if plan is None or not _is_good(plan, strips, bolt, prices):
            plan = planned_afresh(strips, bolt, prices)
        if plan is not None and plan.proven:
            self._used[key] = plan
        return plan

    def as_file(self) -> bytes:
        """The proven plans that were used, as a file. The rest is left out, or it would grow for ever."""
        plans = {}
        for key, plan in sorted(self._used.items()):
            told = json.loads(to_json(plan))
            plans[key] = {"digest": _digest(told), "plan": told}
        return (json.dumps({"furbelow_plans": _FORMAT, "plans": plans}, ensure_ascii=False) + "\n").encode()


def _is_good(plan: CuttingPlan, strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> bool:
    """Whether it cuts just what is asked for within the limits, and costs no more than the plainest plan does.

    That it is the best of all can't be known without planning anew; whoever forges a plan gains no cloth by it.
    """
    if not (plan.proven and _keeps_to(plan, bolt) and agrees(plan, strips, bolt, prices)):
        return False
    from furbelow.s4_cut.plain_plan import plain_plan

    plainest = plain_plan(strips, bolt, prices)
    return plan.cost <= plainest.cost or not _keeps_to(plainest, bolt)


def _keeps_to(plan: CuttingPlan, bolt: Bolt) -> bool:
    limits = ((plan.joins, bolt.most_joins), (plan.setups, bolt.most_sections))
    return all(most is None or has <= most for has, most in limits)


def _entries(file: bytes) -> dict[str, Any]:
    try:
        told = json.loads(file)
    except (ValueError, RecursionError):
        return {}
    if not isinstance(told, dict) or told.get("furbelow_plans") != _FORMAT or not isinstance(told.get("plans"), dict):
        return {}
    plans: dict[str, Any] = told["plans"]
    return plans


def _whole(entry: Any) -> CuttingPlan | None:
    """The plan of an entry, unless something in it has changed since it was written."""
    if not isinstance(entry, dict) or "plan" not in entry or entry.get("digest") != _digest(entry["plan"]):
        return None
    try:
        return from_json(json.dumps(entry["plan"]))
    except ValueError:
        return None


def _digest(told: Any) -> str:
    return sha256(json.dumps(told, sort_keys=True).encode()).hexdigest()
