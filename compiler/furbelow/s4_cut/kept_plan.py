"""Whether a plan that somebody else may have written cuts what is asked for, as it says it does.

Nothing of it is believed: where each piece lies, that it is whole and of its size, that none lies on another, the sums.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from itertools import combinations, pairwise

from furbelow.s4_cut.plan import CuttingPlan, Lane, Panel, Section, Segment
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip
from furbelow.s4_cut.through_cuts import panel_cuts

_Key = tuple[str, str | None, int]  # strip, wearer, copy
_Cut = tuple[Segment | Panel, Fraction, bool]  # with the size over its length, and whether that lies over the bolt


def agrees(plan: CuttingPlan, strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> bool:
    """Whether the plan cuts these strips and no others, in places that hold them, and its totals are right."""
    laid = Fraction(0)
    for section in plan.sections:
        if section.start != laid or not _is_laid(section, bolt):
            return False
        laid += section.length
    found = _cuts(plan)
    wanted = {(strip.name, strip.wearer, copy): strip for strip in strips for copy in range(1, strip.count + 1)}
    if found.keys() != wanted.keys() or not all(_is_cut(wanted[key], found[key], bolt) for key in wanted):
        return False
    if not _selvedges_kept(plan, wanted):
        return False
    return _lie_alike(wanted, found, bolt) and _adds_up(plan, laid, found, bolt, prices)


def _is_laid(section: Section, bolt: Bolt) -> bool:
    """Whether its lanes or panels lie beside each other on the cloth that it has."""
    if section.length <= 0 or not _on_grid(section.length, bolt):
        return False
    if bolt.longest_section is not None and section.length > bolt.longest_section:
        return False
    if section.panels:
        return not (section.lanes or section.across or bolt.folded) and _apart_and_inside(section, bolt)
    along, over = (bolt.usable_width, section.length) if section.across else (section.length, bolt.usable_width)
    folded = bolt.folded and not section.across
    return (
        all(_is_filled(lane, along, bolt) for lane in section.lanes)
        and (_are_folded(section.lanes) if folded else all(lane.layer == "flat" for lane in section.lanes))
        and _beside(_stretch(lane, over, folded) for lane in section.lanes)
        and _at_the_sides(section, over, folded, bolt)
        and all(0 <= low < high <= over for low, high in (_stretch(lane, over, folded) for lane in section.lanes))
    )


def _is_filled(lane: Lane, along: Fraction, bolt: Bolt) -> bool:
    """Whether the segments of the lane follow each other in it."""
    ends = [(each.start, each.start + each.length) for each in lane.segments]
    inside = all(0 <= start < end <= along for start, end in ends)
    in_turn = all(one[1] <= other[0] for one, other in pairwise(ends))
    return inside and in_turn and all(_on_grid(each.length, bolt) for each in lane.segments)


def _are_folded(lanes: Sequence[Lane]) -> bool:
    """Whether the lanes come in mirrored pairs, with at most one on the fold."""
    layers: dict[str, list[tuple[Fraction, Fraction]]] = defaultdict(list)
    for lane in lanes:
        layers[lane.layer].append((lane.offset, lane.depth))
    on_fold = layers.pop("fold", [])
    paired = sorted(layers.pop("upper", [])) == sorted(layers.pop("under", []))
    return paired and not layers and len(on_fold) <= 1 and not any(offset for offset, _ in on_fold)


def _stretch(lane: Lane, over: Fraction, folded: bool) -> tuple[Fraction, Fraction]:
    """Where the lane lies over the opened-out cloth, or along the bolt in a section across."""
    middle = over / 2 if folded else Fraction(0)
    low = {"fold": middle - lane.depth / 2, "under": middle - lane.offset - lane.depth}.get(
        lane.layer, middle + lane.offset
    )
    return low, low + lane.depth


def _beside(stretches: Iterable[tuple[Fraction, Fraction]]) -> bool:
    return all(one[1] <= other[0] for one, other in pairwise(sorted(stretches)))


def _at_the_sides(section: Section, over: Fraction, folded: bool, bolt: Bolt) -> bool:
    """Whether lanes at the selvedges lie there, and no more are cut up than may be."""
    sides = [lane for lane in section.lanes if lane.selvedge]
    ends = (_stretch(lane, over, folded) for lane in sides)
    used = sum(1 for lane in sides if lane.segments)
    return (
        all(low == 0 or high == over for low, high in ends)
        and not (sides and section.across)
        and used <= bolt.selvedges
    )


def _apart_and_inside(section: Section, bolt: Bolt) -> bool:
    """Whether no panel leaves its section or lies on another, and the section ends with the last of them."""
    boxes = [(p.from_end, p.from_edge, p.from_end + p.length, p.from_edge + p.width) for p in section.panels]
    inside = all(
        0 <= near < far <= section.length and 0 <= low < high <= bolt.usable_width for near, low, far, high in boxes
    )
    return (
        inside
        and max(far for _, _, far, _ in boxes) == section.length
        and all(_on_grid(each.length, bolt) for each in section.panels)
        and all(
            one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]
            for one, other in combinations(boxes, 2)
        )
    )


def _selvedges_kept(plan: CuttingPlan, wanted: Mapping[_Key, Strip]) -> bool:
    """Whether all that has an edge on the selvedge, and nothing else, is cut from the lanes there."""
    segments = (
        wanted[each.strip, each.wearer, each.copy].selvedge == lane.selvedge
        for section in plan.sections
        for lane in section.lanes
        for each in lane.segments
    )
    panels = (not wanted[p.strip, p.wearer, p.copy].selvedge for section in plan.sections for p in section.panels)
    return all(segments) and all(panels)


def _cuts(plan: CuttingPlan) -> Mapping[_Key, list[_Cut]]:
    found: dict[_Key, list[_Cut]] = defaultdict(list)
    for section in plan.sections:
        for panel in section.panels:
            found[panel.strip, panel.wearer, panel.copy].append((panel, panel.width, panel.turned))
        for lane in section.lanes:
            for each in lane.segments:
                found[each.strip, each.wearer, each.copy].append((each, lane.depth, section.across or each.turned))
    return found


def _is_cut(strip: Strip, cuts: Sequence[_Cut], bolt: Bolt) -> bool:
    """Whether one copy is all there: its parts, its length when they are joined, its depth over each."""
    parts, joins = len(cuts), len(cuts) - 1
    if sorted((each.part, each.parts) for each, _, _ in cuts) != [(part, parts) for part in range(1, parts + 1)]:
        return False
    turned = any(each.turned for each, _, _ in cuts)
    if joins:
        shortest = min(each.length for each, _, _ in cuts)
        panels = any(isinstance(each, Panel) for each, _, _ in cuts)
        if not strip.piecing or joins > strip.most_joins or turned or panels:
            return False
        if shortest < strip.shortest_segment or shortest <= 2 * strip.join_allowance:
            return False
    length, depth = (strip.depth, strip.length) if turned else (strip.length, strip.depth)
    comes_to = sum((each.length for each, _, _ in cuts), Fraction(0)) - joins * 2 * strip.join_allowance
    # Each join may round its allowance up to the grid, and the whole length is rounded up once.
    return all(over == depth for _, over, _ in cuts) and 0 <= comes_to - length < bolt.grid * parts


def _lie_alike(wanted: Mapping[_Key, Strip], found: Mapping[_Key, Sequence[_Cut]], bolt: Bolt) -> bool:
    """Whether all copies of a strip lie the way of its grain, and on one-way cloth all free ones alike."""
    ways: dict[tuple[str, str | None], set[bool]] = defaultdict(set)
    free: set[bool] = set()
    for key, strip in wanted.items():
        over = {each_over for _, _, each_over in found[key]}
        ways[strip.name, strip.wearer] |= over
        if strip.grain == "free":
            free |= over
        elif over != {strip.grain == "across"}:
            return False
    return all(len(each) == 1 for each in ways.values()) and (len(free) < 2 or not bolt.one_way)


def _adds_up(
    plan: CuttingPlan, laid: Fraction, found: Mapping[_Key, Sequence[_Cut]], bolt: Bolt, prices: CutPrices
) -> bool:
    joins = sum(len(cuts) - 1 for cuts in found.values())
    count = 0
    for section in plan.sections:
        if section.panels:
            count += panel_cuts(section, bolt.usable_width)
        else:  # the other half of a folded pair may be empty
            count += 1 + sum(1 + len(lane.segments) for lane in section.lanes if lane.segments)
    bought = laid / (1 - bolt.shrinkage)
    cost = bought * prices.cloth_per_mm + joins * prices.per_join + count * prices.per_cut
    cost += len(plan.sections) * prices.per_setup
    told = (plan.usable_width, plan.folded, plan.laid_length, plan.bolt_length, plan.joins, plan.cuts, plan.cost)
    sums = told == (bolt.usable_width, bolt.folded, laid, bought, joins, count, cost)
    return sums and plan.bound <= cost and plan.proven == (plan.bound == cost)


def _on_grid(length: Fraction, bolt: Bolt) -> bool:
    return (length / bolt.grid).denominator == 1
