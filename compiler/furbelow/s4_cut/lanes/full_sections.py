"""Sections without a join, taken one after the other from many strips while they fill the cloth well."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from functools import cached_property
from math import inf
from operator import ge, itemgetter, sub
from typing import TypeAlias

from furbelow.named import NamedTuple
from furbelow.s4_cut.lanes.depths import Depth
from furbelow.s4_cut.lanes.grid import Scale
from furbelow.s4_cut.lanes.lay import Cut, Laying, Strand

# Section lengths tried for each section: enough to meet most sums of strips, few enough for a moment's work.
LENGTHS_TRIED = 240
# A lane that is filled to less than this share is left to later sections.
LEAST_FILL = 0.8


class Stage(NamedTuple):
    """What is left after the first so many sections: for each depth, how many of each kind."""

    layings: tuple[Laying, ...]
    left: tuple[tuple[int, ...], ...]


class _Fill(NamedTuple):
    """A lane's content: how many of each kind, and their length."""

    counts: tuple[int, ...]
    length: int


class _Choice(NamedTuple):
    """A lane, or a mirrored pair: its width, what it covers, and the depth's index and content of each lane; how many of
    them lie at a selvedge."""

    width: int
    covered: int
    lanes: tuple[tuple[int, _Fill], ...]
    sides: int


_Left: TypeAlias = tuple[tuple[int, ...], ...]  # of each depth, how many of each kind
_Picked: TypeAlias = "tuple[_Picked, int] | None"  # the choices before, and the last


class FullSections:
    """The ways to fill section after section with some pieces: what can be done with what is left of them is found once."""

    def __init__(self, depths: Sequence[Depth], scale: Scale) -> None:
        self.depths, self.scale = depths, scale
        self._known: dict[tuple[_Left, int], list[_Tried]] = {}

    def stages(self, strips_long: Fraction, setup: int) -> list[Stage]:
        """The stages of filling section after section, from nothing cut to nothing left.

        Each section is the one that covers most for its cost, over all its lengths and the lanes' best fillings.
        strips_long: a section is at most so many times as long as the longest strip left.
        setup: what a section is taken to cost besides its cloth; the dearer, the longer and fewer the sections.
        """
        depths, scale = self.depths, self.scale
        left = tuple([each.counts for each in depths])
        stages = [Stage((), left)]
        while any(map(any, left)):
            longest = max(
                kind.length
                for depth, counts in zip(depths, left, strict=True)
                for kind, number in zip(depth.kinds, counts, strict=True)
                if number
            )
            limit = int(longest * strips_long)
            if scale.longest is not None:
                limit = min(limit, scale.longest)
            hoped = [((each.length * scale.cloth + setup) / each.most, each) for each in self._tried(left, limit)]
            rate, lanes = inf, list[tuple[int, _Fill]]()
            for least, each in sorted(hoped, key=lambda one: (one[0], one[1].length)):
                if least >= rate:
                    break
                covered, tried = each.best
                if (cost := (each.length * scale.cloth + setup) / covered) < rate:
                    rate, lanes = cost, tried
            if not lanes:
                return stages  # only strips that need joins are left
            laying = Laying(max(fill.length for _, fill in lanes))
            after = list(left)
            for index, fill in lanes:
                laying.strands.append(_strand(depths[index], after[index], fill))
                after[index] = tuple(map(sub, after[index], fill.counts))
            left = tuple(after)
            stages.append(Stage((*stages[-1].layings, laying), left))
        return stages

    def _tried(self, left: _Left, limit: int) -> list[_Tried]:
        """The lengths at which something can be covered, up to a limit."""
        if (known := self._known.get((left, limit))) is None:
            sums = [sums_of(depth, counts, limit) for depth, counts in zip(self.depths, left, strict=True)]
            tried = (
                _Tried(length, _choices(self.depths, left, sums, length, self.scale), self.scale)
                for length in _lengths(sums, limit)
            )
            self._known[left, limit] = known = [each for each in tried if each.most]
        return known


class _Tried:
    """A section of one length. most: that its lanes can cover at the most."""

    def __init__(self, length: int, choices: list[_Choice], scale: Scale) -> None:
        self.length, self._choices, self._scale = length, choices, scale
        self.most = _most_covered(choices, scale.width)

    @cached_property
    def best(self) -> tuple[int, list[tuple[int, _Fill]]]:
        """How much the lanes side by side cover that cover most, and those lanes."""
        return _best_lanes(self._choices, self._scale)


def sums_of(depth: Depth, counts: tuple[int, ...], limit: int) -> list[int]:
    """Bit sets of the lengths that pieces of the first kinds can add up to; the last one is for all kinds."""
    mask = (1 << (limit + 1)) - 1
    reached = [1]
    for kind, number in zip(depth.kinds, counts, strict=True):
        now = reached[-1]
        for _ in range(number):
            now |= (now << kind.length) & mask
        reached.append(now)
    return reached


def pieces_of(depth: Depth, sums: list[int], total: int) -> tuple[int, ...]:
    """How many pieces of each kind add up to a total that the bit sets of `sums_of` reach."""
    taken = [0] * len(depth.kinds)
    for index in range(len(taken) - 1, -1, -1):
        while not sums[index] >> total & 1:
            total -= depth.kinds[index].length
            taken[index] += 1
    return tuple(taken)


def fullest_sum(depth: Depth, counts: tuple[int, ...], room: int) -> tuple[int, ...]:
    """The pieces that fill `room` best when laid end to end, how many of each kind."""
    sums = sums_of(depth, counts, room)
    return pieces_of(depth, sums, sums[-1].bit_length() - 1)


def _lengths(sums: list[list[int]], limit: int) -> list[int]:
    """Lengths worth trying: those at which the lanes of some depth are full, thinned out evenly."""
    reached = 0
    for each in sums:
        reached |= each[-1]
    lengths = [length for length in range(1, limit + 1) if reached >> length & 1]
    step = max(1, -(-len(lengths) // LENGTHS_TRIED))
    return lengths[::-1][::step]


def _fillings(depth: Depth, counts: tuple[int, ...], sums: list[int], length: int, most: int) -> list[_Fill]:
    """The fullest lanes of this length, each from what those before it leave."""
    found: list[_Fill] = []
    while len(found) < most and any(counts):
        room = sums[-1] & ((1 << (length + 1)) - 1)
        best = room.bit_length() - 1
        if best < LEAST_FILL * length:
            break
        fill = _Fill(pieces_of(depth, sums, best), best)
        while len(found) < most and all(map(ge, counts, fill.counts)):
            found.append(fill)
            counts = tuple(map(sub, counts, fill.counts))
        if len(found) < most and any(counts):
            sums = sums_of(depth, counts, length)
    return found


def _choices(depths: Sequence[Depth], left: _Left, sums: list[list[int]], length: int, scale: Scale) -> list[_Choice]:
    """The lanes that may lie side by side, fullest first. On folded cloth they come in pairs."""
    size = 2 if scale.folded else 1
    choices = []
    for index, depth in enumerate(depths):
        most = scale.width // depth.depth
        if depth.selvedge:
            most = min(most, scale.selvedges)
        fills = _fillings(depth, left[index], sums[index], length, most)
        for first in range(0, len(fills) - size + 1, size):
            group = tuple((index, fill) for fill in fills[first : first + size])
            covered = depth.depth * sum(fill.length for _, fill in group)
            choices.append(_Choice(depth.depth * size, covered, group, size * depth.selvedge))
    return sorted(choices, key=lambda each: -each.covered / each.width)


def _most_covered(choices: list[_Choice], width: int) -> float:
    """What the choices cover at most: the fullest side by side, the last one slit to the width that is left."""
    covered = 0.0
    for choice in choices:
        if choice.width >= width:
            return covered + choice.covered * width / choice.width
        covered += choice.covered
        width -= choice.width
    return covered


def _best_lanes(choices: list[_Choice], scale: Scale) -> tuple[int, list[tuple[int, _Fill]]]:
    """How much the lanes side by side cover that cover most cloth, and those lanes."""
    # Width and selvedges used so far, as one number -> most that can be covered, with the choices that do it, the last one first.
    each = scale.selvedges + 1
    full = (scale.width + 1) * each
    best: dict[int, tuple[int, _Picked]] = {0: (0, None)}
    for number, choice in enumerate(choices):
        more, covered, sides = choice.width * each + choice.sides, choice.covered, choice.sides
        for used, (value, picked) in list(best.items()):
            total = used + more
            if total >= full or (sides and used % each + sides > scale.selvedges):
                continue
            known = best.get(total)
            if known is None or value + covered > known[0]:
                best[total] = value + covered, (picked, number)
    most, picked = max(best.values(), key=itemgetter(0))
    numbers = []
    while picked is not None:
        picked, number = picked
        numbers.append(number)
    return most, [lane for number in reversed(numbers) for lane in choices[number].lanes]


def _strand(depth: Depth, left: tuple[int, ...], fill: _Fill) -> Strand:
    strand = Strand(depth.depth, selvedge=depth.selvedge)
    for kind, number, taken in zip(depth.kinds, left, fill.counts, strict=True):
        first = kind.count - number
        strand.cuts += [Cut(kind, first + i, 1, 1, kind.length) for i in range(taken)]
    return strand
