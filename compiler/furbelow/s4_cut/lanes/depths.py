"""Pieces put together by the depth of their lanes, and how lanes of several depths share the width of the cloth."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import islice
from math import inf

from furbelow.named import NamedTuple
from furbelow.s4_cut.lanes.grid import Kind, LaneKind, Scale, side_by_side
from furbelow.s4_cut.lanes.lengths import minimum
from furbelow.s4_cut.solver.highs import least_cost

Lanes = tuple[int, ...]  # number of lanes, one entry for each depth, or for each section

# Lane sets beyond which a depth's share of the width has to do for its weight.
MOST_LANE_SETS = 500
# Up to so many depths the weights are found without loading a solver.
FEW_DEPTHS = 4


class Depth(NamedTuple):
    """All pieces that need lanes of one depth, at the selvedges or anywhere."""

    depth: int
    kinds: tuple[Kind, ...]
    selvedge: bool = False

    @property
    def lane(self) -> LaneKind:
        return self.depth, self.selvedge

    @property
    def counts(self) -> tuple[int, ...]:
        return tuple(kind.count for kind in self.kinds)

    def length(self, counts: tuple[int, ...]) -> int:
        return sum(kind.length * number for kind, number in zip(self.kinds, counts, strict=True))

    def joins(self, counts: tuple[int, ...]) -> int:
        return sum(kind.most * number for kind, number in zip(self.kinds, counts, strict=True))

    def allowances(self, counts: tuple[int, ...]) -> int:
        """The least that a join in one of these pieces takes."""
        return min((k.takes for k, n in zip(self.kinds, counts, strict=True) if n and k.most), default=0)


def depths_of(kinds: tuple[Kind, ...]) -> tuple[Depth, ...]:
    return tuple(
        Depth(depth, tuple(kind for kind in kinds if (kind.depth, kind.selvedge) == (depth, selvedge)), selvedge)
        for depth, selvedge in sorted({(kind.depth, kind.selvedge) for kind in kinds}, reverse=True)
    )


def full_lane_sets(depths: tuple[Depth, ...], scale: Scale, most: int) -> list[Lanes] | None:
    """Every way to slit a section so that no further useful lane fits; None if there are more than `most`."""
    caps = [sum(depth.counts) + depth.joins(depth.counts) for depth in depths]
    if scale.folded:  # an odd lane may have an unused twin
        caps = [cap + cap % 2 for cap in caps]
    found = list(islice(_filled(depths, scale, caps, ()), 8 * most + 1))
    if len(found) > 8 * most:
        return None
    found.sort(key=lambda lanes: -sum(lanes))
    kept: list[Lanes] = []
    for lanes in found:
        if any(lanes) and not any(all(p <= q for p, q in zip(lanes, other, strict=True)) for other in kept):
            kept.append(lanes)
    return sorted(kept, reverse=True) if len(kept) <= most else None


def _filled(depths: tuple[Depth, ...], scale: Scale, caps: Sequence[int], lanes: Lanes) -> Iterator[Lanes]:
    """Every way to go on from the lanes of the first depths, most of the next one first. caps: of each depth at most."""
    index = len(lanes)
    if index == len(depths):
        yield lanes
        return
    room = 0
    # The fold may save half a lane that a later, odd depth would need, so only whole excess ends the count.
    while room < caps[index] and (room + 1) * depths[index].depth <= scale.width:
        if not scale.folded and not _fit(depths, scale, (*lanes, room + 1)):
            break
        room += 1
    for number in range(room, -1, -1):
        if _fit(depths, scale, (*lanes, number)):
            yield from _filled(depths, scale, caps, (*lanes, number))


def _fit(depths: tuple[Depth, ...], scale: Scale, lanes: Lanes) -> bool:
    # The unused twin of a lane at a selvedge is counted as a lane, so there is always room for a pair.
    sides = scale._replace(selvedges=2) if scale.folded else scale
    return side_by_side({d.lane: n for d, n in zip(depths, lanes, strict=False)}, sides)


def width_weights(depths: list[Depth], scale: Scale) -> tuple[float, ...]:
    """A weight for a lane of each depth: lanes that fit side by side weigh at most 1, all lengths together the most.

    Depth over usable width is such a weight; where depths do not fill the width evenly there is a heavier one.
    """
    sets = full_lane_sets(tuple(depths), scale, MOST_LANE_SETS)
    if sets is None:
        return tuple(each.depth / scale.width for each in depths)
    totals = [float(each.length(each.counts)) for each in depths]
    weights: Sequence[float] | None
    if len(depths) <= FEW_DEPTHS:
        rows = [(tuple(-float(number) for number in lanes), -1.0) for lanes in sets]
        weights = minimum(tuple(-total for total in totals), rows, 1.0)
    else:
        # The same from the other side: what the least section lengths pay for a lane of each depth.
        counted = [
            ({n: float(lanes[index]) for n, lanes in enumerate(sets) if lanes[index]}, total)
            for index, total in enumerate(totals)
        ]
        answer = least_cost([1.0] * len(sets), [inf] * len(sets), counted)
        weights = None if answer is None else answer.worths
    assert weights is not None
    most = max(sum(w * n for w, n in zip(weights, lanes, strict=True)) for lanes in sets)
    return tuple(weight / max(most, 1.0) for weight in weights)
