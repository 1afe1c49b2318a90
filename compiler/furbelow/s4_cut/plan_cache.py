"""Proven cutting plans kept in a file, so that the same cloth need not be planned twice.

A plan out of the file is used only if it is whole, as a digest tells, and still cuts the very pieces that are asked
for. Anything else in the file is passed over, and the plan is made afresh.
"""

from __future__ import annotations

import json
from collections import defaultdict
from fractions import Fraction
from hashlib import sha256
from itertools import combinations
from typing import Any

from furbelow.garment.workroom import Workroom
from furbelow.s4_cut.cut import Planner, planned_afresh
from furbelow.s4_cut.plan import CuttingPlan, Panel, Section, Segment
from furbelow.s4_cut.plan_text import from_json, plan_key, to_json
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip

PLANS_FILE = "plans.json"

_FORMAT = 1


class KeptPlans:
    """The plans of an earlier run, and those that this run has used."""

    def __init__(self, file: bytes = b"") -> None:
        self._earlier = _entries(file)
        self._used: dict[str, CuttingPlan] = {}

    def planner(self, room: Workroom) -> Planner:
        """Allowance a plan from those kept, and finds it within the limits of the workroom where none is."""
        within = (room.most_joins, room.most_sections)
        afresh = planned_afresh(room)

        def planner(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan | None:
            key = plan_key(strips, bolt, prices, within)
            plan = _whole(self._earlier.get(key))
            if plan is None or not agrees(plan, strips, bolt, prices) or not _keeps_to(plan, within):
                plan = afresh(strips, bolt, prices)
            if plan is not None and plan.proven:
                self._used[key] = plan
            return plan

        return planner

    def as_file(self) -> bytes:
        """The proven plans that were used, as a file. The rest is left out, or it would grow for ever."""
        plans = {}
        for key, plan in sorted(self._used.items()):
            told = json.loads(to_json(plan))
            plans[key] = {"digest": _digest(told), "plan": told}
        return (json.dumps({"furbelow_plans": _FORMAT, "plans": plans}, ensure_ascii=False) + "\n").encode()


def agrees(plan: CuttingPlan, strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> bool:
    """Whether the plan cuts these strips and no others, in lanes that hold them, and its totals are right."""
    found: dict[tuple[str, str | None, int], list[tuple[Segment | Panel, Fraction]]] = defaultdict(list)
    laid, cuts = Fraction(0), 0
    for section in plan.sections:
        depths = sum((lane.depth for lane in section.lanes), Fraction(0))
        along, over = (bolt.usable_width, section.length) if section.across else (section.length, bolt.usable_width)
        if section.start != laid or depths > over:
            return False
        laid += section.length
        if section.panels:
            if section.lanes or not _apart_and_inside(section, bolt):
                return False
            from furbelow.s4_cut.through_cuts import panel_cuts

            cuts += panel_cuts(section, bolt.usable_width)
            for panel in section.panels:
                found[panel.strip, panel.wearer, panel.copy].append((panel, panel.width))
            continue
        cuts += 1
        for lane in section.lanes:
            end = Fraction(0)
            for segment in lane.segments:
                if segment.start < end or segment.length <= 0:
                    return False
                end = segment.start + segment.length
                found[segment.strip, segment.wearer, segment.copy].append((segment, lane.depth))
            if end > along:
                return False
            cuts += 1 + len(lane.segments) if lane.segments else 0  # the other half of a folded pair may be empty
    joins = sum(len(pieces) - 1 for pieces in found.values())
    wanted = {(strip.name, strip.wearer, copy): strip for strip in strips for copy in range(1, strip.count + 1)}
    if found.keys() != wanted.keys() or not all(_is_cut(wanted[key], found[key], bolt) for key in wanted):
        return False
    bought = laid / (1 - bolt.shrinkage)
    cost = bought * prices.cloth_per_mm + joins * prices.per_join + cuts * prices.per_cut
    cost += len(plan.sections) * prices.per_setup
    told = (plan.usable_width, plan.folded, plan.laid_length, plan.bolt_length, plan.joins, plan.cuts, plan.cost)
    return told == (bolt.usable_width, bolt.folded, laid, bought, joins, cuts, cost)


def _is_cut(strip: Strip, pieces: list[tuple[Segment | Panel, Fraction]], bolt: Bolt) -> bool:
    """Whether one copy is all there: its parts, its length when they are joined, its depth over each."""
    parts, joins = len(pieces), len(pieces) - 1
    if sorted((each.part, each.parts) for each, _ in pieces) != [(part, parts) for part in range(1, parts + 1)]:
        return False
    if joins > (strip.most_joins if strip.piecing else 0):
        return False
    turned = any(each.turned for each, _ in pieces)
    length, depth = (strip.depth, strip.length) if turned else (strip.length, strip.depth)
    comes_to = sum((each.length for each, _ in pieces), Fraction(0)) - joins * 2 * strip.join_allowance
    # Each join may round its allowance up to the grid, and the whole length is rounded up once.
    return all(over == depth for _, over in pieces) and 0 <= comes_to - length < bolt.grid * parts


def _apart_and_inside(section: Section, bolt: Bolt) -> bool:
    """Whether no panel leaves its section or lies on another."""
    boxes = [(p.from_end, p.from_edge, p.from_end + p.length, p.from_edge + p.width) for p in section.panels]
    inside = all(
        0 <= near < far <= section.length and 0 <= low < high <= bolt.usable_width for near, low, far, high in boxes
    )
    return inside and all(
        one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]
        for one, other in combinations(boxes, 2)
    )


def _keeps_to(plan: CuttingPlan, within: tuple[int | None, int | None]) -> bool:
    return all(most is None or has <= most for has, most in zip((plan.joins, plan.setups), within, strict=True))


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
