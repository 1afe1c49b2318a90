"""Sections for many strips that may be pieced: lengths and lanes first, then who shares them with the fewest joins.

Where strips may be joined, only the total length of each depth counts at first, so a linear program over lane sets
finds section lengths that hardly lose cloth. Lane sets are made as needed: the one worth most at the program's
prices comes in until none is worth more than its width (column generation, Gilmore & Gomory, "A linear programming
approach to the cutting-stock problem", Operations Research 9, 1961). An integer program then keeps few sections and
few lanes. Strips start as one chain for each depth; chains are parted wherever some strips nearly fill a lane and
the join saved is worth more than the cloth it takes.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations_with_replacement
from math import ceil, gcd

from furbelow.named import NamedTuple
from furbelow.s4_cut.lanes.chains import TooManyOrders, chain
from furbelow.s4_cut.lanes.depths import Depth
from furbelow.s4_cut.lanes.full_sections import Stage, pieces_of, sums_of
from furbelow.s4_cut.lanes.grid import Scale
from furbelow.s4_cut.lanes.lay import Laying, Strand, cut_chain
from furbelow.s4_cut.solver.highs import Answer, AtLeast, least_cost

# Lanes end inside a strip so often; it prices a lane before its joins are known.
JOINS_A_LANE = 0.7
# Ways to part a chain that are looked into before the next round.
MOST_PARTINGS = 400
MOST_LANE_SETS = 400

LaneSet = dict[int, int]  # index of a depth -> how many lanes of it lie in a section


class Rough(NamedTuple):
    """Sections with lengths that hold every depth's total, and what they cost with the joins guessed."""

    sections: tuple[LaneSet, ...]
    cost: float


class Chain(NamedTuple):
    """Strips of one depth on the lanes they share: how many of each kind, and each lane's section."""

    depth: int
    counts: tuple[int, ...]
    lanes: tuple[int, ...]


def rough_sections(depths: Sequence[Depth], stage: Stage, scale: Scale) -> Rough | None:
    """Few sections that hold what the stage leaves over; None where the solver finds none."""
    totals = {
        index: depth.length(counts)
        for index, (depth, counts) in enumerate(zip(depths, stage.left, strict=True))
        if any(counts)
    }
    sets, _ = lane_sets(depths, totals, scale)
    longest = float(scale.longest or sum(totals.values()))
    many = len(sets)
    costs = [float(scale.cloth)] * many
    rows: list[AtLeast] = []
    for number, lanes in enumerate(sets):
        slits = sum(lanes.values())
        costs.append(scale.setup + scale.cut + slits * (JOINS_A_LANE * (scale.join + scale.cut) + scale.cut))
        most = min(longest, max(totals[index] / often for index, often in lanes.items()))
        least = min(most, max(_shortest_lane(depths[index], stage.left[index]) for index in lanes))
        rows.append(({many + number: most, number: -1.0}, 0.0))
        rows.append(({number: 1.0, many + number: -float(least)}, 0.0))
    for index, total in totals.items():
        rows.append(({n: float(lanes[index]) for n, lanes in enumerate(sets) if index in lanes}, float(total)))
    upper = [longest] * many + [1.0] * many
    answer = least_cost(costs, upper, rows, whole=range(many, 2 * many))
    if answer is None:
        return None
    return Rough(tuple(lanes for n, lanes in enumerate(sets) if answer.values[n] > 1e-6), answer.cost)


def _shortest_lane(depth: Depth, counts: tuple[int, ...]) -> int:
    """A lane shorter than this makes no strip of the depth without breaking its limit on joins."""
    return min(
        -(-(kind.length + kind.takes * kind.most) // (kind.most + 1))
        for kind, number in zip(depth.kinds, counts, strict=True)
        if number
    )


def pieced_sections(depths: Sequence[Depth], stage: Stage, rough: Rough, scale: Scale) -> list[Laying] | None:
    """The rough sections cut up to segments with few joins; None if the limits on joins can't be kept."""
    chains = [
        Chain(
            index,
            counts,
            tuple(n for n, lanes in enumerate(rough.sections) for _ in range(lanes.get(index, 0))),
        )
        for index, counts in enumerate(stage.left)
        if any(counts)
    ]
    sharing = _Sharing(depths, scale, len(rough.sections), chains)
    return sharing.layings(stage) if sharing.part() else None


def lane_sets(depths: Sequence[Depth], totals: dict[int, int], scale: Scale) -> tuple[list[LaneSet], float]:
    """Lane sets among which the least total length is found when lengths may be any, and a bound for that total.

    totals: by index of a depth, the length that its strips come to.
    """
    sets: list[LaneSet] = [
        {index: min(scale.width // depth.depth, scale.selvedges) if depth.selvedge else scale.width // depth.depth}
        for index, depth in enumerate(depths)
        if index in totals
    ]
    while True:
        rows: list[AtLeast] = [
            ({n: float(lanes[index]) for n, lanes in enumerate(sets) if index in lanes}, float(total))
            for index, total in totals.items()
        ]
        answer = least_cost([1.0] * len(sets), [1e9] * len(sets), rows)
        assert answer is not None
        value, lanes = _worthiest(depths, dict(zip(totals, answer.worths, strict=True)), scale)
        # Worths scaled so that no lane set is worth more than 1 are a proof for their total.
        if value <= 1 + 1e-7 or lanes in sets or len(sets) >= MOST_LANE_SETS:
            return sets, answer.cost / max(1.0, value)
        sets.append(lanes)


def _worthiest(depths: Sequence[Depth], worth: dict[int, float], scale: Scale) -> tuple[float, LaneSet]:
    """The lanes side by side that are worth most, and their worth."""
    step = gcd(*(depths[index].depth for index in worth))
    width = scale.width // step
    lanes = 2 if scale.folded else 1  # lanes that come at once
    best = [0.0] * (width + 1)
    last = [-1] * (width + 1)
    between = {index: value for index, value in worth.items() if not depths[index].selvedge}
    sizes = [(index, depths[index].depth // step * lanes, value * lanes) for index, value in between.items()]
    for room in range(1, width + 1):
        most = best[room - 1]
        for index, size, value in sizes:
            if size <= room and best[room - size] + value > most + 1e-12:
                most, last[room] = best[room - size] + value, index
        best[room] = most
    top, room, single = best[width], width, Counter[int]()
    for taken in _single_lanes(depths, worth, between, scale):
        left = width - sum(size // step for _, size in taken)
        value = sum(worth[index] for index, _ in taken)
        if left >= 0 and best[left] + value > top + 1e-12:
            top, room, single = best[left] + value, left, Counter(index for index, _ in taken)
    picked: LaneSet = dict(single)
    while room > 0:
        index = last[room]
        if index < 0:
            room -= 1
        else:
            picked[index] = picked.get(index, 0) + lanes
            room -= depths[index].depth // step * lanes
    return top, dict(sorted(picked.items()))


def _single_lanes(
    depths: Sequence[Depth], worth: Iterable[int], between: Iterable[int], scale: Scale
) -> Iterator[tuple[tuple[int, int], ...]]:
    """Lanes that are there once: at the selvedges, and one on the fold. Each is the index of its depth and the width it takes."""
    at_side = [(index, depths[index].depth) for index in worth if depths[index].selvedge]
    if scale.folded:
        pairs = [((each, each) if scale.selvedges > 1 else ((each[0], 2 * each[1]),)) for each in at_side]
        folds = [((index, depths[index].depth),) for index in between]
        yield from pairs
        yield from folds
        yield from ((*pair, *fold) for pair in pairs for fold in folds)
    else:
        for number in range(1, scale.selvedges + 1):
            yield from combinations_with_replacement(at_side, number)


class _Sharing:
    """Which strips share which lanes; `chains` and the section `lengths` that they ask for."""

    def __init__(self, depths: Sequence[Depth], scale: Scale, sections: int, chains: list[Chain]) -> None:
        self.depths = depths
        self.scale = scale
        self.sections = sections
        self.chains = chains
        self.lengths: list[float] = []
        self.known: dict[tuple[int, tuple[int, ...], tuple[int, ...]], bool] = {}  # whether chains can be cut
        self.extra: dict[Chain, int] = {}  # length beyond its need without which a chain can't be cut

    def part(self) -> bool:
        """Part the chains as long as that pays. False if the first chains can't be cut within their limits."""
        answer = self._answer(self.chains)
        if answer is None:
            return False
        self.lengths = answer.values
        for _ in range(8):
            uncut = [each for each in self.chains if not self._can_cut(each)]
            if not uncut:
                break
            for each in uncut:
                kinds = self.depths[each.depth].kinds
                longer = max(kind.shortest if kind.most else kind.length // 4 for kind in kinds)
                self.extra[each] = self.extra.get(each, 0) + longer
            answer = self._answer(self.chains)
            if answer is None:
                return False
            self.lengths = answer.values
        else:
            return False
        while self._part_once():
            pass
        return True

    def layings(self, stage: Stage) -> list[Laying]:
        """The sections cut up, lengths on the grid; pieces that the stage has not cut yet are numbered on."""
        layings = [Laying(ceil(length - 1e-6)) for length in self.lengths]
        given = [
            [kind.count - left for kind, left in zip(depth.kinds, counts, strict=True)]
            for depth, counts in zip(self.depths, stage.left, strict=True)
        ]
        for each in self.chains:
            depth = self.depths[each.depth]
            free = [layings[section] for section in each.lanes]
            links = chain([laying.length for laying in free], depth.kinds, each.counts)
            assert links is not None
            for length, cuts in cut_chain(links, depth.kinds, given[each.depth]):
                laying = next(one for one in free if one.length == length)
                free.remove(laying)
                laying.strands.append(Strand(depth.depth, cuts, depth.selvedge))
            given[each.depth] = [p + q for p, q in zip(given[each.depth], each.counts, strict=True)]
        used = [laying for laying in layings if laying.strands]
        for laying in used:
            laying.length = max(strand.used for strand in laying.strands)
        return used

    def _part_once(self) -> bool:
        """Take up the partings that pay, those that fit best first. False if there was none."""
        total = sum(self.lengths)
        parted: set[Chain] = set()
        for _, old, new in sorted(self._partings(), key=lambda each: each[0])[:MOST_PARTINGS]:
            if old in parted:
                continue
            chains = [each for each in self.chains if each is not old] + new
            answer = self._answer(chains)
            if answer is None:
                continue
            saved = len(old.lanes) - sum(len(each.lanes) for each in new) + len(new) - 1
            if (sum(answer.values) - total) * self.scale.cloth >= saved * (self.scale.join + self.scale.cut):
                continue
            before, self.lengths = self.lengths, answer.values
            if not all(self._can_cut(each) for each in chains):
                self.lengths = before
                continue
            self.chains = chains
            total = sum(self.lengths)
            parted.add(old)
        return bool(parted)

    def _partings(self) -> Iterator[tuple[float, Chain, list[Chain]]]:
        """Ways to part a chain in two or to leave out a lane, each with the cloth that it would lose by itself."""
        for each in self.chains:
            if len(each.lanes) < 2:
                continue
            depth = self.depths[each.depth]
            need = self._need(each)
            room = sum(self.lengths[section] for section in each.lanes)
            for section in sorted(set(each.lanes)):
                rest = _without(each.lanes, (section,))
                if room - self.lengths[section] >= need - depth.allowances(each.counts) - self.lengths[section] / 2:
                    lost = max(0.0, need - room + self.lengths[section])
                    yield lost * depth.depth, each, [Chain(each.depth, each.counts, rest)]
            for own in self._own_lanes(each.lanes):
                rest = _without(each.lanes, own)
                length = sum(self.lengths[section] for section in own) - depth.allowances(each.counts) * (len(own) - 1)
                for counts in _near(depth, each.counts, length):
                    left = tuple(p - q for p, q in zip(each.counts, counts, strict=True))
                    if any(left):
                        new = [Chain(each.depth, counts, own), Chain(each.depth, left, rest)]
                        yield abs(depth.length(counts) - length) * depth.depth, each, new

    def _own_lanes(self, lanes: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
        """One lane, or two of a longer chain, that some of the strips could have for themselves."""
        yield from ((section,) for section in sorted(set(lanes)))
        if len(lanes) > 3:
            for one in sorted(set(lanes)):
                for two in sorted(set(_without(lanes, (one,)))):
                    if one <= two:
                        yield one, two

    def _need(self, each: Chain) -> int:
        depth = self.depths[each.depth]
        return depth.length(each.counts) + depth.allowances(each.counts) * (len(each.lanes) - 1)

    def _answer(self, chains: list[Chain]) -> Answer | None:
        """The least section lengths that give every chain its need."""
        rows: list[AtLeast] = []
        for each in chains:
            if not each.lanes:
                return None
            counted: dict[int, float] = {}
            for section in each.lanes:
                counted[section] = counted.get(section, 0.0) + 1
            rows.append((counted, float(self._need(each) + self.extra.get(each, 0))))
        longest = float(self.scale.longest or 1e9)
        return least_cost([1.0] * self.sections, [longest] * self.sections, rows)

    def _can_cut(self, each: Chain) -> bool:
        lanes = tuple(ceil(self.lengths[section] - 1e-6) for section in each.lanes)
        key = (each.depth, each.counts, lanes)
        if key not in self.known:
            try:
                links = chain(lanes, self.depths[each.depth].kinds, each.counts)
                self.known[key] = links is not None
            except TooManyOrders:
                self.known[key] = False
        return self.known[key]


def _without(lanes: tuple[int, ...], taken: tuple[int, ...]) -> tuple[int, ...]:
    rest = list(lanes)
    for lane in taken:
        rest.remove(lane)
    return tuple(rest)


def _near(depth: Depth, counts: tuple[int, ...], length: float) -> Iterator[tuple[int, ...]]:
    """Strips whose lengths add up to just under and just over `length`."""
    limit = depth.length(counts)
    sums = sums_of(depth, counts, limit)
    low = int(length + 1e-6)
    under = (sums[-1] & ((1 << (min(low, limit) + 1)) - 1)).bit_length() - 1
    over = sums[-1] >> (low + 1)
    wanted = [under] if under > 0 else []
    if over:
        wanted.append(low + 1 + (over & -over).bit_length() - 1)
    for total in wanted:
        yield pieces_of(depth, sums, total)
