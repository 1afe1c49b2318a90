"""The cutting plan of one garment: the cheapest sections, lanes and joins, or panels laid freely where that saves money."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import ceil, inf

from furbelow.garment.spec import Grain
from furbelow.named import NamedTuple
from furbelow.s4_cut.lanes.grid import Scale, scale_of
from furbelow.s4_cut.lanes.in_lanes import in_lanes
from furbelow.s4_cut.lanes.lay import Laying, lay_out
from furbelow.s4_cut.lanes.limits import Found, Limits, Work
from furbelow.s4_cut.lanes.ways import cloth_bound
from furbelow.s4_cut.plan import CuttingPlan, How, Panel
from furbelow.s4_cut.problem import CHALKED, Bolt, CutPrices, Strip, joins_allowed, ways_to_lay


def plan_cutting(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan:
    """The cheapest plan found, with the bound that says how near to the best it is.

    The bound holds for plans of this kind: sections slit into lanes of the strips' own depths, all copies of a strip
    laid the same way, strips that share lanes cut one after the other from lane to lane, and no more than three
    sections along the bolt, only what has an edge on the selvedge in the lanes there; and, where flat cloth has whole panels of several sizes, the same with all these panels
    laid freely on a section of their own and parted by straight cuts. Only where a plan cut round with shears was found
    to cost less does the bound hold for such plans too.
    Raises ValueError for a strip that does not fit (see `misfits`).
    """
    plan = best_plan(strips, bolt, prices, Limits())
    assert plan is not None
    return plan


def best_plan(
    strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices, limits: Limits, below: Fraction | None = None
) -> CuttingPlan | None:
    """The cheapest plan found within the limits on joins and sections; None if none costs less than `below`."""
    scale = scale_of(strips, bolt, prices)
    work = Work()
    lanes = _free_or_settled(strips, bolt, scale, limits, work, inf if below is None else ceil(below / scale.coin))
    best = _Mixed(strips, lanes.layings, (), lanes.cost, lanes.bound)
    proven = (How.PROVEN, How.PROVEN_WITHIN)
    if _least_with_free_panels(strips, bolt, scale) < lanes.cost:
        free = _with_free_panels(strips, bolt, scale, limits, work, lanes.cost)
        best = (best if free.layings is None else free)._replace(bound=min(lanes.bound, free.bound))
        proven = (How.PROVEN_PANELS, How.PROVEN_WITHIN_PANELS)
        if free.straight:
            proven = (How.PROVEN_STRAIGHT, How.PROVEN_WITHIN_STRAIGHT)
    if best.layings is None:
        return None
    bound = int(min(best.bound, best.cost))
    how = proven[limits != Limits()] if bound == best.cost else How.BEST_FOUND
    return lay_out(best.layings, best.strips, bolt, prices, scale, bound, how, best.panels)


def _free_or_settled(
    strips: tuple[Strip, ...], bolt: Bolt, scale: Scale, limits: Limits, work: Work, below: float
) -> Found:
    """The best lanes found, and never dearer than if all pieces of free grain were told to lie along, or across.

    With many of them the ways to lay each are more than can be tried, and the work may end before the best is reached.
    """
    found = in_lanes(strips, bolt, scale, limits, work, below)
    grains: tuple[Grain, ...] = ("along", "across") if any(each.grain == "free" for each in strips) else ()
    for grain in grains:
        if found.bound >= found.cost:
            break
        settled = tuple(each._replace(grain=grain) if each.grain == "free" else each for each in strips)
        if all(ways_to_lay(each, bolt) for each in settled):
            other = in_lanes(settled, bolt, scale, limits, Work(), found.cost)
            if other.layings is not None:
                found = Found(other.layings, other.cost, min(found.bound, other.cost))
    return found


class _Mixed(NamedTuple):
    """Lanes for `strips`, panels beside them, what both cost in coins, and the least that such a plan may cost.

    straight: no shears have to go round a panel. The bound leaves plans with shears out while no better one was found.
    """

    strips: tuple[Strip, ...]
    layings: list[Laying] | None
    panels: tuple[Panel, ...]
    cost: float
    bound: float
    straight: bool = True


def _with_free_panels(
    strips: tuple[Strip, ...], bolt: Bolt, scale: Scale, limits: Limits, work: Work, below: float
) -> _Mixed:
    """The cheapest plan with all whole pieces laid freely and the others in lanes; none where none costs less."""
    from furbelow.s4_cut.panels.panels import lay_freely  # most cloths do without

    best = _Mixed((), None, (), below, inf)
    round_bound = inf
    for settled in _directions(strips, bolt):
        panels = _whole(settled, bolt)
        others = tuple(each for each in settled if each not in panels)
        if not limits.allow(0, 1 + bool(others)):
            continue
        rest: float = _least_in_lanes(others, bolt, scale)
        free = lay_freely(panels, bolt, scale, best.cost - rest)
        if free.panels is not None:
            lanes = Found([], 0, 0)
            if others:
                lanes = in_lanes(others, bolt, scale, limits.less(0, 1), work, best.cost - free.cost)
                rest = lanes.bound
            if lanes.layings is not None:
                best = _Mixed(others, lanes.layings, free.panels, free.cost + lanes.cost, best.bound, free.straight)
        best = best._replace(bound=min(best.bound, free.bound + rest))
        round_bound = min(round_bound, free.round_bound + rest)
    return best if best.straight else best._replace(bound=min(best.bound, round_bound))


def _directions(strips: tuple[Strip, ...], bolt: Bolt) -> Iterator[tuple[Strip, ...]]:
    """On one-way cloth all pieces of free grain lie along or all across: the strips for either."""
    if not bolt.one_way:
        yield strips
        return
    for grain in ("along", "across"):
        settled = tuple(each._replace(grain=grain) if each.grain == "free" else each for each in strips)
        if all(ways_to_lay(each, bolt) for each in settled):
            yield settled


def _whole(strips: tuple[Strip, ...], bolt: Bolt) -> tuple[Strip, ...]:
    return tuple(each for each in strips if not each.selvedge and not joins_allowed(each, bolt.grid))


def _least_with_free_panels(strips: tuple[Strip, ...], bolt: Bolt, scale: Scale) -> float:
    """A cost below which no plan with free panels can be; infinite where none is tried.

    One size of panel lies as well in lanes. Folded cloth stays in lanes too, mirrored at the fold.
    """
    panels = _whole(strips, bolt)
    if bolt.folded or not scale.cloth or len({(each.length, each.depth) for each in panels}) < 2:
        return inf
    others = tuple(each for each in strips if each not in panels)
    chalked = 1 + CHALKED * sum(each.count for each in panels)
    return cloth_bound(panels, bolt, scale) + scale.setup + chalked * scale.cut + _least_in_lanes(others, bolt, scale)


def _least_in_lanes(strips: tuple[Strip, ...], bolt: Bolt, scale: Scale) -> int:
    """What the cloth of these strips costs, with one section, one lane and one cut each."""
    if not strips:
        return 0
    return cloth_bound(strips, bolt, scale) + scale.setup + (2 + sum(each.count for each in strips)) * scale.cut
