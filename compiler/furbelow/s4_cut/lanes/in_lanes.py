"""The cheapest sections and lanes: over every way in which each piece may lie, with the bound on what is left out."""

from __future__ import annotations

from fractions import Fraction
from itertools import islice
from math import ceil, floor, inf

from furbelow.named import NamedTuple
from furbelow.s4_cut.lanes.across import lanes_across, shared_across
from furbelow.s4_cut.lanes.exact import Search
from furbelow.s4_cut.lanes.first_fit import first_fit
from furbelow.s4_cut.lanes.grid import Kind, Scale
from furbelow.s4_cut.lanes.lay import Laying, price
from furbelow.s4_cut.lanes.limits import MOST_SECTIONS, Found, Limits, Work
from furbelow.s4_cut.lanes.ways import MOST_CHOICES, cloth_bound, way_choices, ways_split
from furbelow.s4_cut.problem import Bolt, Strip


def in_lanes(strips: tuple[Strip, ...], bolt: Bolt, scale: Scale, limits: Limits, work: Work, below: float) -> Found:
    """The cheapest sections of lanes found within the limits; none where none costs less than `below`, in coins."""
    best: list[Laying] | None = None
    cost = below
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
    more = next(islice(way_choices(strips, bolt), MOST_CHOICES, None), None) is not None
    if more or (best is not None and _sections(best) > MOST_SECTIONS):
        open_bound = cloth_bound(strips, bolt, scale)  # beyond what was searched only the area is known
    return Found(best, cost, min(open_bound, cost))


class _Candidate(NamedTuple):
    """One choice of ways: `bound` for the whole plan, the pieces laid along, the lanes over the width, their bound."""

    bound: float
    along: tuple[Kind, ...]
    over: list[Laying]
    over_bound: float


def _candidates(strips: tuple[Strip, ...], bolt: Bolt, scale: Scale, limits: Limits) -> list[_Candidate]:
    """Every choice of ways with the lanes over the width already planned, most promising first."""
    found = []
    for along, across in ways_split(strips, bolt, scale):
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


def _area(kinds: tuple[Kind, ...], scale: Scale) -> Fraction:
    """Grid steps of the bolt that the pieces would take if nothing were lost."""
    return Fraction(sum(kind.length * kind.depth * kind.count for kind in kinds), scale.width)


def _sections(layings: list[Laying]) -> int:
    """Sections along the bolt."""
    return sum(1 for laying in layings if not laying.across)


def _joins(layings: list[Laying]) -> int:
    return sum(1 for laying in layings for strand in laying.strands for cut in strand.cuts if cut.part > 1)
