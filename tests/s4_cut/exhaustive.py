"""The least cost of a tiny cutting problem by trying everything; it shares no code and no idea with the planner.

Every way to part each strip into segments on the grid is taken with every way to put the segments into lanes and the
lanes into sections. Strips lie along the bolt.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction
from itertools import combinations_with_replacement, product
from math import ceil

from furbelow.s4_cut.problem import Bolt, CutPrices, Strip

_Lane = tuple[Fraction, int, bool]  # depth, grid steps filled, whether it lies at a selvedge


def least_cost(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices, most_sections: int) -> Fraction:
    """The cheapest cost of any plan with so many sections at most."""
    cloth = prices.cloth_per_mm * bolt.grid / (1 - bolt.shrinkage)
    per_strip = [list(combinations_with_replacement(_partings(strip, bolt.grid), strip.count)) for strip in strips]
    best: Fraction | None = None
    for choice in product(*per_strip):
        segments: Counter[_Lane] = Counter()
        joins = 0
        for strip, copies in zip(strips, choice, strict=True):
            for parts in copies:
                segments.update((strip.depth, part, strip.selvedge) for part in parts)
                joins += len(parts) - 1
        many = sum(segments.values())
        fixed = joins * prices.per_join + many * prices.per_cut
        ordered = sorted(segments.elements(), reverse=True)
        for sections in set(_packings(ordered, (), bolt, most_sections)):
            length = sum(max(filled for _, filled, _ in lanes) for lanes in sections)
            lanes = sum(map(len, sections))
            cost = fixed + length * cloth + len(sections) * (prices.per_setup + prices.per_cut)
            cost += lanes * prices.per_cut
            best = cost if best is None else min(best, cost)
    assert best is not None
    return best


def _partings(strip: Strip, grid: Fraction) -> list[tuple[int, ...]]:
    """Every multiset of segment lengths that makes one strip."""
    length, takes = ceil(strip.length / grid), ceil(2 * strip.join_allowance / grid)
    found: list[tuple[int, ...]] = [(length,)]
    if strip.piecing:
        shortest = max(ceil(strip.shortest_segment / grid), takes + 1)
        for joins in range(1, strip.most_joins + 1):
            total = length + takes * joins
            found += [
                parts
                for parts in combinations_with_replacement(range(shortest, total), joins + 1)
                if sum(parts) == total
            ]
    return found


def _packings(
    segments: list[_Lane], sections: tuple[tuple[_Lane, ...], ...], bolt: Bolt, most: int
) -> Iterator[tuple[tuple[_Lane, ...], ...]]:
    if not segments:
        yield sections
        return
    (depth, length, selvedge), rest = segments[0], segments[1:]
    options: set[tuple[tuple[_Lane, ...], ...]] = set()
    for number, lanes in enumerate(sections):
        others = (*sections[:number], *sections[number + 1 :])
        for lane in set(lanes):
            if (lane[0], lane[2]) == (depth, selvedge):
                index = lanes.index(lane)
                fuller = (*lanes[:index], (depth, lane[1] + length, selvedge), *lanes[index + 1 :])
                options.add(_sorted(others, fuller))
        more = (*lanes, (depth, length, selvedge))
        if _fits(more, bolt):
            options.add(_sorted(others, more))
    if len(sections) < most:
        options.add(_sorted(sections, ((depth, length, selvedge),)))
    for option in options:
        yield from _packings(rest, option, bolt, most)


def _sorted(others: tuple[tuple[_Lane, ...], ...], lanes: tuple[_Lane, ...]) -> tuple[tuple[_Lane, ...], ...]:
    return tuple(sorted((*others, tuple(sorted(lanes)))))


def _fits(lanes: tuple[_Lane, ...], bolt: Bolt) -> bool:
    sides = [depth for depth, _, selvedge in lanes if selvedge]
    if len(sides) > (1 if bolt.one_way else 2):
        return False
    depths = Counter(depth for depth, _, selvedge in lanes if not selvedge)
    width = sum((depth * number for depth, number in depths.items()), Fraction(0))
    if bolt.folded:
        # Each depth in pairs, but one lane, the deepest of the odd ones, on the fold; both selvedges are slit alike.
        odd = sorted(depth for depth, number in depths.items() if number % 2)
        width += sum(odd[:-1], Fraction(0))
        if len(set(sides)) > 1:
            return False
        sides = 2 * sides[:1]
    return width + sum(sides, Fraction(0)) <= bolt.usable_width
