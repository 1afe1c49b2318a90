"""The cutting plan of one garment: which way each piece lies, and the cheapest sections, lanes and joins."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import islice, product
from math import ceil, floor, inf

from compiler.s4_cut.across import lanes_across, shared_across
from compiler.s4_cut.exact import MOST_SECTIONS, Limits, Search, Work
from compiler.s4_cut.grid import Kind, Scale, kinds_of, scale_of
from compiler.s4_cut.lay import Laying, lay_out, price
from compiler.s4_cut.plain import first_fit, first_fit_across
from compiler.s4_cut.plan import CuttingPlan
from compiler.s4_cut.problem import Bolt, CutPrices, Strip, Way, ways_to_lay

# A garment has few strips that may lie either way; more choices than this are cut off, plainest first.
MOST_CHOICES = 243
# First fit has to be there at once, so it tries only a few.
PLAIN_CHOICES = 12


def way_choices(strips: tuple[Strip, ...], bolt: Bolt) -> Iterator[tuple[Way, ...]]:
    """Every allowed choice of a way for each strip. Raises ValueError for a strip that `misfits` would name."""
    ways = []
    for strip in strips:
        possible = ways_to_lay(strip, bolt)
        if not possible:
            raise ValueError(f"{strip.name} does not fit on the bolt in any way")
        ways.append(possible)
    for choice in product(*ways):
        free = {way == "along" for strip, way in zip(strips, choice, strict=True) if strip.grain == "free"}
        if not bolt.one_way or len(free) < 2:
            yield choice


def plain_plan(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan:
    """The cheapest first-fit plan over the ways to lay the pieces: at once, and with nothing proven but the area."""
    scale = scale_of(strips, bolt, prices)
    _, layings = min(
        (
            (price(layings, scale), layings)
            for along, across in islice(_split(strips, bolt, scale), PLAIN_CHOICES)
            for layings in [first_fit(along, scale) + first_fit_across(across, scale)]
        ),
        key=lambda each: each[0],
    )
    bound = _cloth_bound(strips, bolt, scale)
    how = "Laid longest first, each piece in the first place with room."
    return lay_out(layings, strips, bolt, prices, scale, bound, how)


def plan_cutting(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan:
    """The cheapest plan found, with the bound that says how near to the best it is.

    The bound holds for plans of this kind: sections slit into lanes of the strips' own depths, all copies of a strip
    laid the same way, strips that share lanes cut one after the other from lane to lane, and no more than three
    sections along the bolt.
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
    best: list[Laying] | None = None
    cost = inf if below is None else ceil(below / scale.coin)
    open_bound = inf
    for candidate in _candidates(strips, bolt, scale, limits):
        if candidate.bound >= cost:
            open_bound = min(open_bound, candidate.bound)
            break
        over, over_cost = candidate.over, price(candidate.over, scale)
        rest = limits.less(_joins(over), len(over))
        plain = first_fit(candidate.along, scale)
        if price(plain, scale) + over_cost < cost and rest.allow(_joins(plain), len(plain)):
            best, cost = plain + over, price(plain, scale) + over_cost
        low = candidate.over_bound
        if candidate.along:
            # First fit may have cut more sections than are searched; a plan of few at the same cost is better.
            many = best is not None and _sections(best) > MOST_SECTIONS
            found = Search(candidate.along, scale, rest, work, cost - over_cost + many).run()
            if found.layings is not None:
                best, cost = found.layings + over, found.cost + over_cost
            low += found.bound
        open_bound = min(open_bound, low)
    if best is None:
        return None
    if _sections(best) > MOST_SECTIONS or next(islice(way_choices(strips, bolt), MOST_CHOICES, None), None):
        open_bound = _cloth_bound(strips, bolt, scale)  # beyond what was searched only the area is known
    bound = int(min(open_bound, cost))
    if bound == cost:
        within = "" if limits == Limits() else "within the limits "
        how = f"Proven: {within}no plan of up to {MOST_SECTIONS} sections along the bolt costs less at these prices."
    else:
        how = f"The best plan found in the work allowed; another could save {float(1 - bound / cost):.1%} at most."
    return lay_out(best, strips, bolt, prices, scale, bound, how)


@dataclass(frozen=True, slots=True)
class _Candidate:
    """One choice of ways: `bound` for the whole plan, the pieces laid along, the lanes over the width, their bound."""

    bound: float
    along: tuple[Kind, ...]
    over: list[Laying]
    over_bound: float


def _candidates(strips: tuple[Strip, ...], bolt: Bolt, scale: Scale, limits: Limits) -> list[_Candidate]:
    """Every choice of ways with the lanes over the width already planned, most promising first."""
    found = []
    for along, across in _split(strips, bolt, scale):
        area = _area(along, scale) * scale.cloth + scale.setup * bool(along)
        options = lanes_across(across, scale)
        if options is None:
            good = shared_across(across, scale)
            overs = [(_joins(good), good)]
        else:
            overs = options if limits.joins is not None else options[-1:]
        for joins, over in overs:
            if limits.allow(joins, len(over)):
                if options is None:
                    low = floor(_area(across, scale) * scale.cloth)
                else:
                    low = price(over, scale) - _doubtful_setups(over, scale) * (scale.setup + scale.cut)
                found.append(_Candidate(low + floor(area), along, over, low))
    return sorted(found, key=lambda each: each.bound)


def _doubtful_setups(over: list[Laying], scale: Scale) -> int:
    """Sections over the width that might be saved if their lanes were put together otherwise."""
    if scale.longest is None:
        return 0
    return len(over) - ceil(sum(laying.length for laying in over) / scale.longest)


def _split(
    strips: tuple[Strip, ...], bolt: Bolt, scale: Scale
) -> Iterator[tuple[tuple[Kind, ...], tuple[Kind, ...]]]:
    """For every choice of ways, the kinds in lanes along the bolt and those in lanes over its width."""
    for choice in islice(way_choices(strips, bolt), MOST_CHOICES):
        yield (
            kinds_of(strips, {index: way for index, way in enumerate(choice) if way != "across"}, scale),
            kinds_of(strips, {index: way for index, way in enumerate(choice) if way == "across"}, scale),
        )


def _area(kinds: tuple[Kind, ...], scale: Scale) -> Fraction:
    """Grid steps of the bolt that the pieces would take if nothing were lost."""
    return Fraction(sum(kind.length * kind.depth * kind.count for kind in kinds), scale.width)


def _cloth_bound(strips: tuple[Strip, ...], bolt: Bolt, scale: Scale) -> int:
    """What the pieces' own area costs, in coins."""
    area = sum(strip.length * strip.depth * strip.count for strip in strips)
    return floor(area / bolt.usable_width / bolt.grid * scale.cloth)


def _sections(layings: list[Laying]) -> int:
    """Sections along the bolt."""
    return sum(1 for laying in layings if not laying.across)


def _joins(layings: list[Laying]) -> int:
    return sum(1 for laying in layings for strand in laying.strands for cut in strand.cuts if cut.part > 1)
