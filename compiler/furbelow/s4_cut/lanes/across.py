"""The cheapest lanes over the width of the cloth: every lane is the usable width long, so each depth stands alone."""

from __future__ import annotations

from itertools import product
from math import prod
from typing import TypeVar

from furbelow.s4_cut.lanes.chains import TooManyOrders, chain
from furbelow.s4_cut.lanes.depths import Depth, depths_of
from furbelow.s4_cut.lanes.first_fit import first_fit_across, stack_across
from furbelow.s4_cut.lanes.full_sections import fullest_sum
from furbelow.s4_cut.lanes.grid import Kind, Scale
from furbelow.s4_cut.lanes.lay import Laying, Strand, cut_chain, price

T = TypeVar("T")

# Sets of pieces looked at before the search is given up and first fit has to do.
MOST_SETS = 20_000
# A group may have so many lanes more than its longest piece needs.
LANES_MORE = 4

# Joins -> (cost of lanes and joins, groups of pieces that share so many lanes), cheaper with every join more.
_Shares = dict[int, tuple[int, tuple[tuple[tuple[int, ...], int], ...]]]


def lanes_across(kinds: tuple[Kind, ...], scale: Scale) -> list[tuple[int, list[Laying]]] | None:
    """Sections of lanes over the width: the cheapest for each number of joins that makes them cheaper.

    Cheapest last. None if there are too many sets of pieces to look at. With a longest section the lanes are put into
    sections by first fit, which may use a set-up too many.
    """
    options: dict[int, tuple[int, list[Strand]]] = {0: (0, [])}
    for depth in depths_of(kinds):
        shares = _shares(depth, scale)
        if not shares:
            return None
        both: dict[int, tuple[int, list[Strand]]] = {}
        for (joins, (cost, strands)), (more, (dearer, groups)) in product(options.items(), shares.items()):
            total = joins + more
            if total not in both or cost + dearer < both[total][0]:
                both[total] = cost + dearer, strands + _strands(depth, groups, scale.lane_over)
        options = _cheaper_only(both)
    return [(joins, stack_across(strands, scale)) for joins, (_, strands) in options.items()]


def shared_across(kinds: tuple[Kind, ...], scale: Scale) -> list[Laying]:
    """Sections of lanes over the width for any number of pieces: good, without a claim to be the cheapest.

    Of each depth, the longest piece left shares some lanes with those that fill them best, and so on; where first fit
    is cheaper, that.
    """
    strands: list[Strand] = []
    for depth in depths_of(kinds):
        left = depth.counts
        groups: list[tuple[tuple[int, ...], int]] = []
        while any(left):
            counts, lanes = _fullest(depth, left, scale)
            groups.append((counts, lanes))
            left = tuple(p - q for p, q in zip(left, counts, strict=True))
        strands += _strands(depth, tuple(groups), scale.lane_over)
    return min(stack_across(strands, scale), first_fit_across(kinds, scale), key=lambda each: price(each, scale))


def _fullest(depth: Depth, left: tuple[int, ...], scale: Scale) -> tuple[tuple[int, ...], int]:
    """The longest piece left and others that fill so many lanes together, at the least cost for their length."""
    room = scale.lane_over
    first = max((i for i, number in enumerate(left) if number), key=lambda i: depth.kinds[i].length)
    longest = depth.kinds[first]
    least = longest.parts_in(room)
    best: tuple[float, tuple[int, ...], int] | None = None
    for lanes in range(least, least + LANES_MORE + 1):
        free = lanes * room - longest.length - (lanes - 1) * longest.takes
        rest = tuple(number - (i == first) for i, number in enumerate(left))
        filling = fullest_sum(depth, rest, max(0, free))
        counts = tuple(number + (i == first) for i, number in enumerate(filling))
        try:
            if chain([room] * lanes, depth.kinds, counts) is None:
                continue
        except TooManyOrders:
            continue
        cost = lanes * (scale.depth_on_grid(depth.depth) * scale.cloth + scale.cut)
        cost += (lanes - 1) * (scale.join + scale.cut)
        rate = cost / depth.length(counts)
        if best is None or rate < best[0]:
            best = rate, counts, lanes
    if best is not None:
        return best[1], best[2]
    return tuple(int(i == first) for i in range(len(left))), least


def _cheaper_only(options: dict[int, tuple[int, T]]) -> dict[int, tuple[int, T]]:
    kept: dict[int, tuple[int, T]] = {}
    for joins in sorted(options):
        if not kept or options[joins][0] < min(cost for cost, _ in kept.values()):
            kept[joins] = options[joins]
    return kept


def _shares(depth: Depth, scale: Scale) -> _Shares:
    """The cheapest sharing of lanes among the pieces of one depth, by joins; empty when given up."""
    if prod(number + 1 for number in depth.counts) ** 2 > 2 * MOST_SETS:
        return {}
    sharing = _Sharing(depth, scale)
    shares = sharing.best(depth.counts)
    return {} if sharing.looked_at > MOST_SETS or sharing.doubtful else shares


class _Sharing:
    """Which pieces of one depth share lanes over the width."""

    def __init__(self, depth: Depth, scale: Scale) -> None:
        self.depth, self.room = depth, scale.lane_over
        self.lane_price = scale.depth_on_grid(depth.depth) * scale.cloth + scale.cut
        self.join_price = scale.join + scale.cut
        self.looked_at = 0
        self.doubtful = False
        self._fitting: dict[tuple[tuple[int, ...], int], bool] = {}
        self._best: dict[tuple[int, ...], _Shares] = {}

    def fits(self, counts: tuple[int, ...], lanes: int) -> bool:
        if (known := self._fitting.get((counts, lanes))) is None:
            try:
                known = chain([self.room] * lanes, self.depth.kinds, counts) is not None
            except TooManyOrders:
                self.doubtful, known = True, False
            self._fitting[counts, lanes] = known
        return known

    def best(self, left: tuple[int, ...]) -> _Shares:
        """The cheapest sharing of so many pieces of each kind, by joins."""
        if (known := self._best.get(left)) is None:
            self._best[left] = known = self._found(left) if any(left) else {0: (0, ())}
        return known

    def _found(self, left: tuple[int, ...]) -> _Shares:
        depth, room = self.depth, self.room
        first = next(index for index, number in enumerate(left) if number)
        ranges = [range(number + 1) for number in left]
        ranges[first] = range(1, left[first] + 1)
        found: _Shares = {}
        for counts in product(*ranges):
            self.looked_at += 1
            if self.looked_at > MOST_SETS:
                return {}
            need, takes = depth.length(counts), depth.allowances(counts)
            most = 1 + depth.joins(counts)
            lanes = 1
            while lanes <= most and (need + takes * (lanes - 1) > lanes * room or not self.fits(counts, lanes)):
                lanes += 1
            if lanes > most:
                continue
            here = lanes * self.lane_price + (lanes - 1) * self.join_price
            for joins, (cost, groups) in self.best(tuple(p - q for p, q in zip(left, counts, strict=True))).items():
                total = joins + lanes - 1
                if total not in found or cost + here < found[total][0]:
                    found[total] = cost + here, ((counts, lanes), *groups)
        return _cheaper_only(found)


def _strands(depth: Depth, groups: tuple[tuple[tuple[int, ...], int], ...], room: int) -> list[Strand]:
    given = [0] * len(depth.kinds)
    strands = []
    for counts, lanes in groups:
        links = chain([room] * lanes, depth.kinds, counts)
        assert links is not None
        strands += [Strand(depth.depth, cuts) for _, cuts in cut_chain(links, depth.kinds, given)]
        given = [p + q for p, q in zip(given, counts, strict=True)]
    return strands
