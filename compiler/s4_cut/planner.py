"""The cutting plan of one garment: which way each piece lies, and the cheapest sections, lanes and joins."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product

from compiler.s4_cut.grid import kinds_of, scale_of
from compiler.s4_cut.lay import Laying, lay_out, price
from compiler.s4_cut.plain import first_fit, first_fit_across
from compiler.s4_cut.plan import CuttingPlan
from compiler.s4_cut.problem import Bolt, CutPrices, Strip, Way, ways_to_lay

# A maker's garment has few strips that may lie either way; more choices than this are cut off, plainest first.
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


def plain_plan(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan:
    """The cheapest first-fit plan over the ways to lay the pieces: at once, and with nothing proven but the area."""
    scale = scale_of(strips, bolt, prices)
    best: tuple[int, list[Laying]] | None = None
    for choice, _ in zip(way_choices(strips, bolt), range(MOST_CHOICES), strict=False):
        along = {index: way for index, way in enumerate(choice) if way != "across"}
        across = {index: way for index, way in enumerate(choice) if way == "across"}
        layings = first_fit(kinds_of(strips, along, scale), scale)
        layings += first_fit_across(kinds_of(strips, across, scale), scale)
        cost = price(layings, scale)
        if best is None or cost < best[0]:
            best = cost, layings
    assert best is not None
    area = sum(strip.length * strip.depth * strip.count for strip in strips)
    bound = int(area / bolt.usable_width / bolt.grid * scale.cloth)
    how = "Laid longest first, each piece in the first place with room."
    return lay_out(best[1], strips, bolt, prices, scale, bound, how)
