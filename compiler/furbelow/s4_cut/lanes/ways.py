"""The ways in which all pieces may lie together, and what their cloth costs at least."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice, product
from math import floor

from furbelow.s4_cut.lanes.grid import Kind, Scale, kinds_of
from furbelow.s4_cut.problem import Bolt, Strip, Way, ways_to_lay

# A garment has few strips that may lie either way; more choices than this are cut off, plainest first.
MOST_CHOICES = 243


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


def ways_split(
    strips: tuple[Strip, ...], bolt: Bolt, scale: Scale
) -> Iterator[tuple[tuple[Kind, ...], tuple[Kind, ...]]]:
    """For every choice of ways, the kinds in lanes along the bolt and those in lanes over its width."""
    for choice in islice(way_choices(strips, bolt), MOST_CHOICES):
        yield (
            kinds_of(strips, {index: way for index, way in enumerate(choice) if way != "across"}, scale),
            kinds_of(strips, {index: way for index, way in enumerate(choice) if way == "across"}, scale),
        )


def cloth_bound(strips: tuple[Strip, ...], bolt: Bolt, scale: Scale) -> int:
    """What the pieces' own area costs, in coins."""
    area = sum(strip.length * strip.depth * strip.count for strip in strips)
    return floor(area / bolt.usable_width / bolt.grid * scale.cloth)
