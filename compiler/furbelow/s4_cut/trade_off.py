"""Least cloth against joins and table set-ups, so that the maker can pick."""

from __future__ import annotations

from fractions import Fraction

from furbelow.s4_cut.lanes.limits import MOST_SECTIONS, Limits
from furbelow.s4_cut.plan import CuttingPlan, How
from furbelow.s4_cut.planner import best_plan
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip

# More joins than this are never offered: the table is there to be read.
MOST_JOINS = 6


def trade_off(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> tuple[CuttingPlan, ...]:
    """Plans of which none has less cloth, fewer joins and fewer set-ups than another; least joins first.

    Each has the least cloth for its number of joins and of set-ups, as far as it is `proven`, among plans of the kind
    that `plan_cutting` tells; its cost is at the given prices. Raises ValueError for a strip that does not fit (see `misfits`).
    """
    # With joins and set-ups all but free the length decides, and of equal lengths the one with less work.
    length_first = CutPrices(Fraction(1000) / bolt.grid, Fraction(1), Fraction(1))
    found: list[CuttingPlan] = []
    for joins in range(MOST_JOINS + 1):
        for sections in range(1, MOST_SECTIONS + 1):
            rivals = [plan for plan in found if plan.joins <= joins and plan.setups <= sections]
            shortest = min((plan.bolt_length for plan in rivals), default=None)
            below = None if shortest is None else shortest * length_first.cloth_per_mm
            plan = best_plan(strips, bolt, length_first, Limits(joins, sections), below)
            if plan is not None:
                found.append(plan)
    return tuple(_at(prices, plan) for plan in found)


def _at(prices: CutPrices, plan: CuttingPlan) -> CuttingPlan:
    """The plan with its cost at the maker's prices; the bound keeps its share of the cost."""
    cost = plan.bolt_length * prices.cloth_per_mm + plan.joins * prices.per_join
    cost += plan.setups * prices.per_setup + plan.cuts * prices.per_cut
    how = How.SHORTEST_PROVEN if plan.proven else How.SHORTEST_FOUND
    return plan._replace(cost=cost, bound=cost * (1 - plan.gap), how=how)
