"""Whole panels laid freely on one stretch of the bolt, each chalked by itself.

Straight cuts from side to side are cheaper to make than cutting round every panel with shears, so both are planned: the
shortest layout that comes apart by through cuts (`rectangles_through`) and a shorter one that may not (`rectangles`).
Work is limited by counts, never by the clock.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import islice, product
from math import ceil, inf

from furbelow.named import NamedTuple
from furbelow.s4_cut.lanes.grid import Scale
from furbelow.s4_cut.panels.rectangles_bound import OutOfWork, least_length
from furbelow.s4_cut.panels.rectangles_through import shortest_through
from furbelow.s4_cut.plan import Panel
from furbelow.s4_cut.problem import CHALKED, SHEARED, Bolt, Strip, ways_to_lay
from furbelow.s4_cut.through_cuts import cut_apart

# Choices of which pieces of free grain lie turned; beyond them only the area is a bound.
MOST_TURNINGS = 32
# Pairs of blocks, and placements, that may be tried for one cloth.
MOST_PAIRS = 300_000
MOST_PLACEMENTS = 12_000


class Freely(NamedTuple):
    """The cheapest section of panels found and its cost in coins.

    straight: whether through cuts part it. bound: what any section that they part costs at the least, round_bound: any
    that is cut round with shears.
    """

    panels: tuple[Panel, ...] | None
    cost: float
    straight: bool
    bound: float
    round_bound: float


class _Sides(NamedTuple):
    """One way in which all panels lie: (across, along, how many) of each kind, and the strips of each kind."""

    kinds: tuple[tuple[int, int, int], ...]
    strips: tuple[tuple[tuple[int, bool], ...], ...]  # (index, turned)

    @property
    def rects(self) -> list[tuple[int, int]]:
        return [(w, h) for w, h, many in self.kinds for _ in range(many)]

    @property
    def each(self) -> list[int]:
        """The kind of every panel."""
        return [kind for kind, (_, _, many) in enumerate(self.kinds) for _ in range(many)]


@lru_cache(maxsize=32)  # the table of joins and sections asks for the same panels again and again
def lay_freely(strips: tuple[Strip, ...], bolt: Bolt, scale: Scale, below: float) -> Freely:
    """The cheapest section that holds every piece whole; no panels where none costs less than `below`, in coins.

    All copies of a strip lie the same way.
    """
    many = sum(strip.count for strip in strips)
    through, round_each = (scale.setup + (1 + each * many) * scale.cut for each in (CHALKED, SHEARED))
    longest = inf if scale.longest is None else scale.longest
    turnings = sorted(
        ((least_length(sides.rects, scale.width), sides) for sides in _turnings(strips, bolt, scale)),
        key=lambda each: each[0],
    )
    work = _Pairs(MOST_PAIRS)
    placements = MOST_PLACEMENTS // max(1, len(turnings))
    found = Freely(None, below, True, inf, inf)
    for low, sides in turnings:
        if low > longest:
            continue
        one_by_one = sum(h * number for _, h, number in sides.kinds)
        worth = one_by_one if found.cost == inf else (int(found.cost) - through - 1) // scale.cloth
        try:
            shortest = _shortest_through(sides, scale, low, int(min(worth, longest, one_by_one)), work)
        except OutOfWork:
            found = found._replace(bound=min(found.bound, low * scale.cloth + through))
        else:
            if shortest is not None:
                length, places = shortest
                panels = _panels(sides, strips, scale, places)
                found = found._replace(panels=panels, cost=length * scale.cloth + through, straight=True)
        if low * scale.cloth + round_each >= found.cost:
            continue
        from furbelow.s4_cut.panels.rectangles import Packing, pack  # heavy, and mostly straight cuts are as good

        packing = pack(sides.rects, scale.width, work=placements)
        assert isinstance(packing, Packing)
        round_bound = min(found.round_bound, packing.bound * scale.cloth + round_each)
        found = found._replace(round_bound=round_bound)
        panels = _panels(
            sides, strips, scale, [(k, x, y) for k, (x, y, _) in zip(sides.each, packing.places, strict=True)]
        )
        straight = cut_apart(panels, packing.length * scale.grid, bolt.usable_width) is not None
        cost = packing.length * scale.cloth + (through if straight else round_each)
        if packing.length <= longest and cost < found.cost:
            found = found._replace(panels=panels, cost=cost, straight=straight)
    if any(True for _ in islice(_ways(strips, bolt), MOST_TURNINGS, None)):
        return found._replace(bound=0, round_bound=0)
    return found._replace(bound=min(found.bound, found.cost), round_bound=min(found.round_bound, found.cost))


def _shortest_through(
    sides: _Sides, scale: Scale, low: int, ceiling: int, work: _Pairs
) -> tuple[int, list[tuple[int, int, int]]] | None:
    """As `shortest_through`, under lower ceilings first: the closer the ceiling, the fewer blocks there are."""
    for share in (4, 2, 1):
        lower = low + (ceiling - low) // share
        if lower >= low:
            shortest = shortest_through(sides.kinds, scale.width, lower, work.spend)
            if shortest is not None:
                return shortest
    return None


def _turnings(strips: tuple[Strip, ...], bolt: Bolt, scale: Scale) -> Iterator[_Sides]:
    """Every way in which the panels may lie, all copies of a strip alike, each way once."""
    seen = set()
    for turned in islice(_ways(strips, bolt), MOST_TURNINGS):
        alike: dict[tuple[int, int], list[tuple[int, bool]]] = {}
        for index, (strip, over) in enumerate(zip(strips, turned, strict=True)):
            along, across = (strip.depth, strip.length) if over else (strip.length, strip.depth)
            alike.setdefault((int(across / scale.width_step), ceil(along / scale.grid)), []).append((index, over))
        kinds = sorted(alike, reverse=True)
        sides = _Sides(
            tuple((w, h, sum(strips[index].count for index, _ in alike[w, h])) for w, h in kinds),
            tuple(tuple(alike[size]) for size in kinds),
        )
        if sides.kinds not in seen:
            seen.add(sides.kinds)
            yield sides


def _ways(strips: tuple[Strip, ...], bolt: Bolt) -> Iterator[tuple[bool, ...]]:
    """For each strip, whether it lies turned, in every allowed combination."""
    return product(*(sorted({way != "along" for way in ways_to_lay(strip, bolt)}) for strip in strips))


def _panels(
    sides: _Sides, strips: tuple[Strip, ...], scale: Scale, places: Sequence[tuple[int, int, int]]
) -> tuple[Panel, ...]:
    """The panels at their places, (kind, x across, y along) each; copies are counted from the near end."""
    waiting = [
        [(strips[index], copy, turned) for index, turned in alike for copy in range(1, strips[index].count + 1)]
        for alike in sides.strips
    ]
    panels = []
    for y, x, kind in sorted((y, x, kind) for kind, x, y in places):
        strip, copy, turned = waiting[kind].pop(0)
        w, h, _ = sides.kinds[kind]
        panels.append(
            Panel(
                strip.name,
                strip.wearer,
                copy,
                y * scale.grid,
                x * scale.width_step,
                h * scale.grid,
                w * scale.width_step,
                turned,
            )
        )
    return tuple(panels)


class _Pairs:
    """Pairs of blocks that may still be looked at."""

    def __init__(self, left: int) -> None:
        self.left = left

    def spend(self, tried: int) -> bool:
        self.left -= tried
        return self.left > 0
