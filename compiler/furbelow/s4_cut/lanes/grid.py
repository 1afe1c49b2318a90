"""Whole numbers for the search: lengths in grid steps, depths in a common part of a mm, prices in a common coin."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor, lcm

from furbelow.named import NamedTuple
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip, Way, join_takes, joins_allowed, shortest_on_grid


@dataclass(frozen=True, slots=True)
class Kind:
    """Equal pieces: `length` along the lane in grid steps, `depth` of their lane in width steps.

    most: joins allowed in one piece, 0 for a whole one. takes: grid steps that a join takes.
    pieces: (index of the strip, copy counted from 1) of each. selvedge: their lane lies at a selvedge.
    """

    length: int
    depth: int
    most: int
    takes: int
    shortest: int
    turned: bool
    pieces: tuple[tuple[int, int], ...]
    selvedge: bool = False

    @property
    def count(self) -> int:
        return len(self.pieces)

    def parts_in(self, room: int) -> int:
        """Fewest segments, each at most `room` long, that make one piece; 0 if none do."""
        for joins in range(self.most + 1):
            if room * (joins + 1) >= self.length + self.takes * joins:
                return joins + 1
        return 0


class Scale(NamedTuple):
    """How whole numbers stand for lengths and money.

    width: usable width in width steps. lane_over: usable width in grid steps. longest: longest section, or None.
    selvedges: how many lanes of a section may lie at a selvedge.
    cloth, join, setup, cut: whole prices; cloth is for one grid step of the bolt.
    """

    grid: Fraction
    width_step: Fraction
    coin: Fraction
    width: int
    lane_over: int
    longest: int | None
    folded: bool
    selvedges: int
    cloth: int
    join: int
    setup: int
    cut: int

    def depth_on_grid(self, depth: int) -> int:
        """Grid steps of the bolt that a lane of this depth takes when it runs across."""
        steps: Fraction = depth * self.width_step / self.grid
        return ceil(steps)


def scale_of(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> Scale:
    sizes = [bolt.usable_width] + [each.depth for each in strips] + [each.length for each in strips]
    width_step = Fraction(1, lcm(*(size.denominator for size in sizes)))
    cloth = prices.cloth_per_mm * bolt.grid / (1 - bolt.shrinkage)
    money = [cloth, prices.per_join, prices.per_setup, prices.per_cut]
    coin = Fraction(1, lcm(*(each.denominator for each in money)))
    return Scale(
        grid=bolt.grid,
        width_step=width_step,
        coin=coin,
        width=int(bolt.usable_width / width_step),
        lane_over=floor(bolt.usable_width / bolt.grid),
        longest=None if bolt.longest_section is None else floor(bolt.longest_section / bolt.grid),
        folded=bolt.folded,
        selvedges=bolt.selvedges,
        cloth=int(cloth / coin),
        join=int(prices.per_join / coin),
        setup=int(prices.per_setup / coin),
        cut=int(prices.per_cut / coin),
    )


def kinds_of(strips: tuple[Strip, ...], ways: Mapping[int, Way], scale: Scale) -> tuple[Kind, ...]:
    """Strips of like size and like piecing put together; `ways` says which strips take part and how they lie.

    Deepest first, then longest, so that the order never depends on the names.
    """
    alike: dict[tuple[int, int, int, int, int, bool, bool], list[tuple[int, int]]] = {}
    for index, way in ways.items():
        strip, grid = strips[index], scale.grid
        turned = way == "turned"
        along, over = (strip.depth, strip.length) if turned else (strip.length, strip.depth)
        most = 0 if turned else joins_allowed(strip, grid)
        takes, shortest = (join_takes(strip, grid), shortest_on_grid(strip, grid)) if most else (0, 1)
        key = (int(over / scale.width_step), ceil(along / grid), most, takes, shortest, turned, strip.selvedge)
        alike.setdefault(key, []).extend((index, copy) for copy in range(1, strip.count + 1))
    return tuple(
        Kind(
            length,
            depth,
            most,
            takes,
            shortest,
            turned,
            tuple(alike[depth, length, most, takes, shortest, turned, selvedge]),
            selvedge,
        )
        for depth, length, most, takes, shortest, turned, selvedge in sorted(alike, reverse=True)
    )


# A lane's depth in width steps, and whether it lies at a selvedge.
LaneKind = tuple[int, bool]


def width_taken(lanes: Mapping[LaneKind, int], folded: bool) -> int:
    """Width that lanes take, from how many there are of each kind.

    On folded cloth lanes come in pairs; one odd lane may lie on the fold, any other odd one leaves its twin unused. At the
    selvedges there is no fold.
    """
    taken = sum(depth * number for (depth, _), number in lanes.items())
    if folded:
        taken += sum(depth for (depth, _), number in lanes.items() if number % 2)
        taken -= max((depth for (depth, selvedge), number in lanes.items() if number % 2 and not selvedge), default=0)
    return taken


def side_by_side(lanes: Mapping[LaneKind, int], scale: Scale) -> bool:
    """Whether lanes fit beside each other, those at the selvedges there. On folded cloth these are a pair of one depth."""
    sides = [number for (_, selvedge), number in lanes.items() if selvedge and number]
    if sum(sides) > scale.selvedges or (scale.folded and len(sides) > 1):
        return False
    return width_taken(lanes, scale.folded) <= scale.width
