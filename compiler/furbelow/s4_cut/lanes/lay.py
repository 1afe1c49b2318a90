"""From the search's whole numbers to a plan: which copy each segment is for, where each lane lies, what it costs."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from fractions import Fraction

from furbelow.named import NamedTuple
from furbelow.s4_cut.lanes.chains import Link
from furbelow.s4_cut.lanes.grid import Kind, Scale
from furbelow.s4_cut.plan import CuttingPlan, How, Lane, Layer, Panel, Section, Segment
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip


class Cut(NamedTuple):
    """One segment of the `number`-th piece of a kind, `length` in grid steps; parts are counted from 1."""

    kind: Kind
    number: int
    part: int
    parts: int
    length: int


@dataclass(slots=True)
class Strand:
    """A lane in the making: its depth in width steps, the cuts end to end, whether it lies at a selvedge."""

    depth: int
    cuts: list[Cut] = field(default_factory=list)
    selvedge: bool = False

    @property
    def used(self) -> int:
        return sum(cut.length for cut in self.cuts)


@dataclass(slots=True)
class Laying:
    """A section in the making, `length` in grid steps of the bolt."""

    length: int
    strands: list[Strand] = field(default_factory=list)
    across: bool = False


def cut_chain(
    links: list[tuple[int, list[Link]]], kinds: Sequence[Kind], given: Sequence[int]
) -> list[tuple[int, list[Cut]]]:
    """The cuts of each lane of a chain, as (lane length, cuts); `given` pieces of each kind are already cut."""
    parts = {(link.kind, link.number): link.part for _, lane in links for link in lane}
    return [
        (
            length,
            [
                Cut(
                    kinds[link.kind],
                    given[link.kind] + link.number,
                    link.part,
                    parts[link.kind, link.number],
                    link.length,
                )
                for link in lane
            ],
        )
        for length, lane in links
    ]


def price(layings: Sequence[Laying], scale: Scale) -> int:
    """Cost in whole coins of cloth, joins, set-ups and cuts."""
    total = 0
    for laying in layings:
        cuts = [cut for strand in laying.strands for cut in strand.cuts]
        joins = sum(1 for cut in cuts if cut.part > 1)
        total += laying.length * scale.cloth + scale.setup + joins * scale.join
        total += (1 + len(laying.strands) + len(cuts)) * scale.cut
    return total


def lay_out(
    layings: Sequence[Laying],
    strips: tuple[Strip, ...],
    bolt: Bolt,
    prices: CutPrices,
    scale: Scale,
    bound: int,
    how: How,
    panels: tuple[Panel, ...] = (),
) -> CuttingPlan:
    """The plan with every length back in mm, and the panels on a section of their own.

    Longest sections come first, then those across, panels last. Lanes keep the order of the section before wherever both have
    a lane of that depth, so that as few guide tapes as possible move. `bound` is in whole coins.
    """
    sections: list[Section] = []
    start = Fraction(0)
    before: list[int] = []
    joins = cuts = 0
    for laying in sorted(layings, key=lambda each: (each.across, -each.length)):
        ordered = _from_side_to_side(laying.strands, before, bolt.folded and not laying.across)
        before = [strand.depth for strand in ordered if not strand.selvedge]
        lanes = _across(ordered, strips, scale) if laying.across else _along(ordered, strips, bolt, scale)
        length = laying.length * bolt.grid
        sections.append(Section(start, length, lanes, laying.across))
        start += length
        parts = [cut.part for strand in laying.strands for cut in strand.cuts]
        joins += sum(1 for part in parts if part > 1)
        cuts += 1 + len(laying.strands) + len(parts)
    if panels:
        from furbelow.s4_cut.through_cuts import panel_cuts

        length = max(each.from_end + each.length for each in panels)
        sections.append(Section(start, length, (), panels=panels))
        start += length
        cuts += panel_cuts(sections[-1], bolt.usable_width)
    bolt_length = start / (1 - bolt.shrinkage)
    cost = bolt_length * prices.cloth_per_mm + joins * prices.per_join
    cost += len(sections) * prices.per_setup + cuts * prices.per_cut
    least = min(bound * scale.coin, cost)
    return CuttingPlan(
        tuple(sections),
        bolt.usable_width,
        bolt.folded,
        start,
        bolt_length,
        joins,
        cuts,
        cost,
        least,
        least == cost,
        how,
    )


def _from_side_to_side(strands: list[Strand], before: list[int], folded: bool) -> list[Strand]:
    """Strands in the order in which they lie: at the near selvedge or the fold, between, at the far selvedge or both."""
    sides = sorted((each for each in strands if each.selvedge), key=lambda each: (-each.depth, -each.used))
    between = _lane_order([each for each in strands if not each.selvedge], before, folded)
    return between + sides if folded else sides[:1] + between + sides[1:]


def _lane_order(strands: list[Strand], before: list[int], folded: bool) -> list[Strand]:
    """Strands in cutting order: the depths of the last section in its order, then the others, deepest first.

    On folded cloth the odd lane leads, then pairs follow each other.
    """
    waiting: dict[int, list[Strand]] = {}
    for strand in sorted(strands, key=lambda each: -each.used):
        waiting.setdefault(strand.depth, []).append(strand)
    stock = Counter({depth: len(alike) for depth, alike in waiting.items()})
    first = [max(depth for depth in stock if stock[depth] % 2)] if folded and _odd(stock) else []
    stock.subtract(first)
    kept = []
    for depth in before:
        if stock[depth]:
            kept.append(depth)
            stock[depth] -= 1
    depths = first + kept + sorted(stock.elements(), reverse=True)
    if folded:
        pairs = depths[len(first) :]
        depths = first + [depth for each in dict.fromkeys(pairs) for depth in [each] * pairs.count(each)]
    return [waiting[depth].pop(0) for depth in depths]


def _alike(one: Strand, two: Strand) -> bool:
    return (one.depth, one.selvedge) == (two.depth, two.selvedge)


def _odd(stock: Counter[int]) -> bool:
    return any(number % 2 for number in stock.values())


def _segments(strand: Strand, strips: tuple[Strip, ...], scale: Scale) -> tuple[Segment, ...]:
    made = []
    start = Fraction(0)
    for cut in strand.cuts:
        index, copy = cut.kind.pieces[cut.number]
        length = cut.length * scale.grid
        strip = strips[index]
        made.append(Segment(strip.name, strip.wearer, copy, cut.part, cut.parts, length, start, cut.kind.turned))
        start += length
    return tuple(made)


def _across(strands: list[Strand], strips: tuple[Strip, ...], scale: Scale) -> tuple[Lane, ...]:
    lanes = []
    offset = Fraction(0)
    for strand in strands:
        depth = strand.depth * scale.width_step
        lanes.append(Lane(offset, depth, "flat", _segments(strand, strips, scale)))
        offset += scale.depth_on_grid(strand.depth) * scale.grid
    return tuple(lanes)


def _along(strands: list[Strand], strips: tuple[Strip, ...], bolt: Bolt, scale: Scale) -> tuple[Lane, ...]:
    lanes: list[Lane] = []
    offset = Fraction(0)
    index = 0
    odd = _odd(Counter(strand.depth for strand in strands if not strand.selvedge))
    while index < len(strands):
        strand = strands[index]
        depth = strand.depth * scale.width_step
        cut = _segments(strand, strips, scale)
        if strand.selvedge and (bolt.folded or index):  # what is not used lies between it and the others
            offset = (bolt.usable_width / 2 if bolt.folded else bolt.usable_width) - depth
        layer: Layer = "flat"
        if bolt.folded and index == 0 and odd:
            layer = "fold"
        elif bolt.folded:
            layer = "upper"
        lanes.append(Lane(offset, depth, layer, cut, strand.selvedge))
        if layer == "upper":
            twin = index + 1 < len(strands) and _alike(strand, strands[index + 1])
            # A lone lane's twin is slit with it and stays over.
            under = _segments(strands[index + 1], strips, scale) if twin else ()
            lanes.append(Lane(offset, depth, "under", under, strand.selvedge))
            index += twin
        offset += depth / 2 if layer == "fold" else depth
        index += 1
    return tuple(lanes)
