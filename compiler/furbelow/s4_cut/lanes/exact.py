"""The cheapest sections, lanes and joins for pieces laid along the bolt, with a proof where the work allows it.

Strips that share n lanes are joined n - 1 times and need the sum of their lengths, and of what the joins take, on
those lanes. Choosing such *groups* one after the other, deepest use of cloth first, gives demands on the section
lengths; the least lengths that meet them (`lengths.py`) bound what all plans with these groups cost. Three more
things sharpen the bound:

- width: each depth gets a weight such that no set of lanes that fits on the cloth weighs more than 1. The width that
  is left beside the chosen lanes, so weighed, must still hold what is not yet in a group.
- joins: for every depth alone, how long the sections must be if it has at most 0, 1, 2 ... joins.
- sections are told apart only by their lengths, so they are taken in falling order.

Work is limited by the number of groups looked at, never by the clock: the same problem gives the same plan anywhere.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from itertools import product
from math import ceil, inf

from furbelow.named import NamedTuple
from furbelow.s4_cut.lanes.chains import TooManyOrders, chain
from furbelow.s4_cut.lanes.depths import Lanes, depths_of, width_weights
from furbelow.s4_cut.lanes.grid import Kind, Scale, side_by_side
from furbelow.s4_cut.lanes.lay import Laying, Strand, cut_chain, price
from furbelow.s4_cut.lanes.lengths import TOLERANCE, Demand, Row, box, minimum, tighten, whole_lengths
from furbelow.s4_cut.lanes.limits import MOST_SECTIONS, Found, Limits, Work

MOST_LENGTHS = 200


class Group(NamedTuple):
    """Pieces of one depth that share lanes: how many of each kind, on how many lanes of each section."""

    lanes: Lanes
    counts: tuple[int, ...]


class Search:
    """One search over sections for the pieces of `kinds`; `found` holds the best plan and the bound so far."""

    def __init__(self, kinds: tuple[Kind, ...], scale: Scale, limits: Limits, work: Work, cost_to_beat: float) -> None:
        # Depths that take most cloth come first: they leave the least choice to the others.
        self.depths = sorted(depths_of(kinds), key=lambda each: -each.depth * each.length(each.counts))
        self.scale = scale
        self.limits = limits
        self.work = work
        all_in_one = sum((kind.length + kind.takes * kind.most) * kind.count for kind in kinds)
        self.longest = scale.longest if scale.longest is not None else all_in_one
        self.join = scale.join + scale.cut
        self.setup = scale.setup + scale.cut
        self.fixed = sum(kind.count for kind in kinds) * scale.cut
        self.weights = width_weights(self.depths, scale)
        self.open_bound = inf  # least bound of what was not looked into
        self.found = Found(None, cost_to_beat, 0)

    def run(self) -> Found:
        """Only plans cheaper than `cost_to_beat` count; without one the bound says that there is none."""
        width = sum(w * each.length(each.counts) for w, each in zip(self.weights, self.depths, strict=True))
        least = self.fixed + len(self.depths) * self.scale.cut + ceil(width - TOLERANCE) * self.scale.cloth
        last = MOST_SECTIONS if self.limits.sections is None else min(self.limits.sections, MOST_SECTIONS)
        for sections in range(1, last + 1):
            bound = least + self.setup * sections
            if bound >= self.found.cost:
                break
            if not self.work.left:
                self.open_bound = min(self.open_bound, bound)
                break
            # More sections find the better plans, so fewer must not use up the work.
            kept = self.work.left - self.work.left // (last - sections + 1)
            self.work.left -= kept
            _Sections(self, sections).run()
            self.work.left += kept
        self.found.bound = min(self.open_bound, self.found.cost)
        return self.found


class _Asked(NamedTuple):
    """What a group takes: lanes, the weighed length of its pieces, and what it asks of the section lengths."""

    lanes: int
    length: float
    demands: tuple[Demand, ...]


class _Node(NamedTuple):
    """Groups chosen so far and what follows from them.

    rows: what is asked of the section lengths, the widths' demand last. lengths: the least that satisfy them.
    used: width steps taken in each section. sides: its lanes at a selvedge. spare: share of the weighed width left in each section, which has to
    hold `rest`, the weighed length of all pieces not yet in a group.
    """

    groups: tuple[tuple[int, Group], ...]
    rows: tuple[Row, ...]
    lengths: tuple[float, ...]
    used: tuple[int, ...]
    sides: tuple[int, ...]
    spare: tuple[float, ...]
    rest: float
    lanes: int
    joins: int

    @property
    def total(self) -> int:
        return ceil(sum(self.lengths) - TOLERANCE)


class _Sections:
    """The search with a given number of sections: group after group, depth after depth."""

    def __init__(self, search: Search, sections: int) -> None:
        self.search = search
        self.sections = sections
        self.depths = search.depths
        self.order = tuple(
            (tuple((i == first) - (i == first + 1) for i in range(sections)), 0) for first in range(sections - 1)
        )
        self.start = search.fixed + search.setup * sections
        self.asked: dict[tuple[int, Group], _Asked] = {}
        # later[d]: (total length, joins that the depths from d on need at the least for it), lengths rising.
        self.later: list[list[tuple[int, int]]] = []

    def run(self) -> None:
        depths, weights = self.depths, self.search.weights
        rest = sum(w * each.length(each.counts) for w, each in zip(weights, depths, strict=True))
        sections = self.sections
        rows = (*box(sections, self.search.longest), *self.order)
        demand: Row = ((1.0,) * sections, rest)
        lengths = tighten(rows, (0.0,) * sections, [demand])
        if lengths is None:
            return
        none = (0,) * sections
        root = _Node((), (*rows, demand), lengths, none, none, (1.0,) * sections, rest, 0, 0)
        self.later = self._joins_needed(root)
        if not self.search.work.left:
            # Cut short, what the depths need by themselves is no bound.
            self.later = [[(0, 0)]] * (len(depths) + 1)
        if self._bound(root, 0) < self.search.found.cost:
            self._extend(root, 0, depths[0].counts, None)

    def _bound(self, node: _Node, depth: int) -> float:
        """The least cost of any plan with the node's groups, the depths from `depth` on still to come."""
        search, scale = self.search, self.search.scale
        fixed = self.start + node.joins * search.join + (node.lanes + len(self.depths) - depth) * scale.cut
        total = node.total
        return fixed + min(
            (
                max(total, length) * scale.cloth + joins * (search.join + scale.cut)
                for length, joins in self.later[depth]
            ),
            default=inf,
        )

    def _joins_needed(self, root: _Node) -> list[list[tuple[int, int]]]:
        """For the depths from each one on: pairs of a total length and the joins without which none is so short."""
        alone = [self._join_steps(root, depth) for depth in range(len(self.depths))]
        later: list[list[tuple[int, int]]] = [[(0, 0)]]
        for steps in reversed(alone):
            totals: dict[int, int] = {}
            for (length, joins), (other, more) in product(steps, later[0]):
                key = joins + more
                totals[key] = min(totals.get(key, 10**9), max(length, other))
            later.insert(0, [(length, joins) for joins, length in sorted(totals.items())])
        return later

    def _join_steps(self, root: _Node, depth: int) -> list[tuple[int, int]]:
        """For one depth alone: the least total length with at most 0, 1, 2 ... joins, as (length, joins)."""
        search = self.search
        steps: list[tuple[int, int]] = []
        joins = 0
        while True:
            spend = search.found.cost - self.start - joins * search.join
            most = int(min(spend / search.scale.cloth if search.scale.cloth else inf, 10**9))
            if root.total > most:
                # So many joins are never worth it: take them as the cheapest way for all that follow.
                steps.append((root.total, joins))
                return steps
            least = self._least_total(root, depth, joins, most)
            if least is not None:
                steps.append((least, joins))
                if least <= root.total:
                    return steps
            if joins >= self.depths[depth].joins(self.depths[depth].counts) or (
                search.limits.joins is not None and joins >= search.limits.joins
            ):
                return steps
            joins += 1

    def _least_total(self, root: _Node, depth: int, joins: int, most: int) -> int | None:
        """The least total length, up to `most`, at which the pieces of one depth need only so many joins."""
        best = self._less_than(most + 1, root.total, root, depth, self.depths[depth].counts, None, joins)
        return best if best <= most else None

    def _less_than(
        self, best: int, least: int, node: _Node, depth: int, left: tuple[int, ...], last: Group | None, joins: int
    ) -> int:
        """The total length once the pieces `left` of one depth lie in groups, where that is less than the best so far; else that.

        least: no total is less.
        """
        if not any(left):
            return min(best, node.total)
        children: list[tuple[int, int, _Node, Group]] = []
        for group in self._groups(node, depth, left, last, joins - node.joins):
            child = self._with(node, depth, group)
            if child is not None and child.total < best:
                children.append((child.total, len(children), child, group))
        for total, _, child, group in sorted(children, key=lambda each: each[:2]):
            if total < best and best > least:
                best = self._less_than(best, least, child, depth, _less(left, group.counts), group, joins)
        return best

    def _extend(self, node: _Node, depth: int, left: tuple[int, ...], last: Group | None) -> None:
        """Put the pieces `left` of one depth into groups, then those of the depths that follow."""
        search = self.search
        if not any(left):
            if search.scale.folded:
                folded = self._folded(node, depth)
                if folded is None or self._bound(folded, depth + 1) >= search.found.cost:
                    return
                node = folded
            depth += 1
            if depth == len(self.depths):
                self._finish(node)
                return
            left, last = self.depths[depth].counts, None
        more = self._joins_worth(node, depth)
        children: list[tuple[float, int, _Node, tuple[int, ...], Group]] = []
        for group in self._groups(node, depth, left, last, more):
            child = self._with(node, depth, group)
            if child is None:
                continue
            after = _less(left, group.counts)
            bound = self._bound(child, depth + 1)
            if bound < search.found.cost:
                children.append((bound, len(children), child, after, group))
        if not search.work.left:  # not all groups were looked at
            search.open_bound = min(search.open_bound, self._bound(node, depth + 1))
            return
        for bound, _, child, after, group in sorted(children, key=lambda each: each[:2]):
            if bound >= search.found.cost:
                return
            self._extend(child, depth, after, group)

    def _joins_worth(self, node: _Node, depth: int) -> int:
        """How many more joins may still give a plan that is cheaper than the best, within the limits."""
        search = self.search
        spare = search.found.cost - self._bound(node, depth + 1)
        joins = 10**6 if search.join == 0 or spare == inf else int(spare // search.join)
        return joins if search.limits.joins is None else min(joins, search.limits.joins - node.joins)

    def _groups(
        self, node: _Node, index: int, left: tuple[int, ...], last: Group | None, joins: int
    ) -> Iterator[Group]:
        """Groups that may come next. They come in falling order, so that each set of groups is met once."""
        depth, scale, work = self.depths[index], self.search.scale, self.search.work
        room = tuple([(scale.width - used) // depth.depth for used in node.used])
        if depth.selvedge:
            room = tuple([min(free, scale.selvedges - taken) for free, taken in zip(room, node.sides, strict=True)])
        first = next(i for i, number in enumerate(left) if number)
        ranges = [range(number, -1, -1) for number in left]
        ranges[first] = range(left[first], 0, -1)
        for counts in product(*ranges):
            if last is not None and counts > last.counts:
                continue
            most = 1 + min(joins, depth.joins(counts))
            for lanes in _lane_choices(room, most):
                if last is not None and counts == last.counts and lanes > last.lanes:
                    continue
                if not work.left:
                    return
                work.left -= 1
                yield Group(lanes, counts)

    def _with(self, node: _Node, index: int, group: Group) -> _Node | None:
        """The node with one group more; None if no section lengths can hold it."""
        depth, weight = self.depths[index], self.search.weights[index]
        asked = self._asked(index, group)
        spare = tuple([s - weight * n for s, n in zip(node.spare, group.lanes, strict=True)])
        rest = node.rest - asked.length
        demands = (*asked.demands, (spare, rest))
        lengths = tighten(node.rows, node.lengths, demands)
        if lengths is None:
            return None
        return _Node(
            (*node.groups, (index, group)),
            (*node.rows[:-1], *demands),
            lengths,
            tuple([u + depth.depth * n for u, n in zip(node.used, group.lanes, strict=True)]),
            tuple([s + n * depth.selvedge for s, n in zip(node.sides, group.lanes, strict=True)]),
            spare,
            rest,
            node.lanes + asked.lanes,
            node.joins + asked.lanes - 1,
        )

    def _asked(self, index: int, group: Group) -> _Asked:
        """One group is looked at from many nodes."""
        asked = self.asked.get((index, group))
        if asked is None:
            length = self.search.weights[index] * self.depths[index].length(group.counts)
            asked = self.asked[index, group] = _Asked(sum(group.lanes), length, tuple(self._demands(index, group)))
        return asked

    def _folded(self, node: _Node, index: int) -> _Node | None:
        """The node once the lanes of a depth are all chosen, with the width that odd ones waste on folded cloth.

        Odd lanes leave their twin unused, but for one on the fold. None if the lanes don't fit.
        """
        scale = self.search.scale
        lanes = [[0] * (index + 1) for _ in range(self.sections)]
        for number, group in node.groups:
            for section, more in enumerate(group.lanes):
                lanes[section][number] += more
        spare = []
        for section, numbers in enumerate(lanes):
            chosen = {each.lane: number for each, number in zip(self.depths, numbers, strict=False)}
            if not side_by_side(chosen, scale):
                return None
            spare.append(node.spare[section] - self._wasted(numbers) + self._wasted(numbers[:-1]))
        demand: Row = (tuple(spare), node.rest)
        lengths = tighten(node.rows, node.lengths, [demand])
        if lengths is None:
            return None
        return node._replace(rows=(*node.rows[:-1], demand), lengths=lengths, spare=tuple(spare))

    def _wasted(self, numbers: list[int]) -> float:
        """The weight of the twins that odd lanes of the first depths leave unused: all of them but for one on the fold."""
        odd = [
            (weight, depth.selvedge)
            for weight, depth, number in zip(self.search.weights, self.depths, numbers, strict=False)
            if number % 2
        ]
        on_fold = max((weight for weight, selvedge in odd if not selvedge), default=0.0)
        return sum(weight for weight, _ in odd) - on_fold

    def _finish(self, node: _Node) -> None:
        """Find the least whole section lengths for which every group can really be cut, and keep the plan."""
        search = self.search
        cost = self.start + node.joins * search.join + node.lanes * search.scale.cut
        demands = [
            *self.order,
            *(demand for index, group in node.groups for demand in self._asked(index, group).demands),
        ]
        if search.found.cost < inf and search.scale.cloth:
            most = int((search.found.cost - cost) // search.scale.cloth)
        else:
            most = node.total + search.longest
        wholes = whole_lengths(demands, self.sections, sum(node.lengths), most, search.longest)
        try:
            for tried, whole in enumerate(wholes):
                least = cost + sum(whole) * search.scale.cloth
                if least >= search.found.cost:
                    return
                layings = self._lay(whole, node.groups)
                if layings is not None:
                    total = price(layings, search.scale)
                    if total < search.found.cost:
                        search.found.layings, search.found.cost = layings, total
                    return
                # What can't be cut from the longest sections that are worth it can't be cut from any.
                if tried == 0 and self._lay(self._longest(demands, most), node.groups) is None:
                    return
                if tried >= MOST_LENGTHS:
                    raise TooManyOrders
        except TooManyOrders:
            search.open_bound = min(search.open_bound, least)

    def _longest(self, demands: list[Demand], total: int) -> tuple[int, ...]:
        """The longest that each section may be, for itself, when all together are `total` at most."""
        longest = []
        rows: list[Row] = [*demands, ((-1.0,) * self.sections, -total)]
        for section in range(self.sections):
            weights = tuple(-float(i == section) for i in range(self.sections))
            lengths = minimum(weights, rows, self.search.longest)
            assert lengths is not None
            longest.append(ceil(lengths[section]))
        return tuple(longest)

    def _demands(self, index: int, group: Group) -> list[Demand]:
        """What a group asks of the section lengths: room for all, and for each piece in the lanes it may lie on."""
        depth = self.depths[index]
        lanes = sum(group.lanes)
        demands = [(group.lanes, depth.length(group.counts) + depth.allowances(group.counts) * (lanes - 1))]
        for kind, number in zip(depth.kinds, group.counts, strict=True):
            if number and kind.most + 1 < lanes:
                # Sections come in falling order, so the first lanes are the longest.
                left = kind.most + 1
                longest = []
                for each in group.lanes:
                    longest.append(min(left, each))
                    left -= longest[-1]
                demands.append((tuple(longest), kind.length + kind.takes * kind.most))
        return demands

    def _lay(self, lengths: tuple[int, ...], groups: tuple[tuple[int, Group], ...]) -> list[Laying] | None:
        """The sections with every group cut up; None when one can't be. Raises TooManyOrders."""
        layings = [Laying(length) for length in lengths]
        given = [[0] * len(depth.kinds) for depth in self.depths]
        for index, group in groups:
            depth = self.depths[index]
            free = [laying for laying, number in zip(layings, group.lanes, strict=True) for _ in range(number)]
            links = chain([laying.length for laying in free], depth.kinds, group.counts)
            if links is None:
                return None
            for lane, cuts in cut_chain(links, depth.kinds, given[index]):
                laying = next(each for each in free if each.length == lane)
                free.remove(laying)
                laying.strands.append(Strand(depth.depth, cuts, depth.selvedge))
            given[index] = [p + q for p, q in zip(given[index], group.counts, strict=True)]
        return [laying for laying in layings if laying.strands]


@cache
def _lane_choices(room: Lanes, most: int) -> tuple[Lanes, ...]:
    """One to `most` lanes spread over sections that have room for so many each, in falling order."""
    found: list[Lanes] = [()]
    for free in room:
        found = [(*lanes, number) for lanes in found for number in range(min(free, most - sum(lanes)), -1, -1)]
    return tuple(lanes for lanes in found if any(lanes))


def _less(left: tuple[int, ...], taken: tuple[int, ...]) -> tuple[int, ...]:
    return tuple([p - q for p, q in zip(left, taken, strict=True)])
