"""An independent check of a cutting plan: it shares no code with the planner and looks only at the drawn plan.

Every segment and panel becomes a rectangle on the opened-out cloth, x along the bolt, y over the width. Checked are:
nothing overlaps or leaves the cloth, a person can cut it with through cuts (section, lane, segment; of free panels it is
found out whether straight cuts do), every piece of every copy is there once, joined lengths and allowances are right,
and the totals and the cost are what the plan says.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from fractions import Fraction

from furbelow.s4_cut.plan import CuttingPlan, Lane, Panel, Section, Segment
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip

Box = tuple[Fraction, Fraction, Fraction, Fraction]


def faults(plan: CuttingPlan, strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> list[str]:
    """Everything wrong with the plan, in words; empty when it is right."""
    return [
        *_section_faults(plan, bolt),
        *_piece_faults(plan, strips, bolt),
        *_total_faults(plan, bolt, prices),
    ]


def _section_faults(plan: CuttingPlan, bolt: Bolt) -> list[str]:
    wrong = []
    end = Fraction(0)
    for number, section in enumerate(plan.sections, 1):
        if section.start != end:
            wrong.append(f"section {number} starts at {section.start}, not where the last one ends, {end}")
        end = section.start + section.length
        if (section.length / bolt.grid).denominator != 1 or section.length <= 0:
            wrong.append(f"section {number} is {section.length} long, off the grid")
        if bolt.longest_section is not None and section.length > bolt.longest_section:
            wrong.append(f"section {number} is longer than the longest section")
        if section.panels:
            wrong += [f"section {number}: {fault}" for fault in _panel_faults(section, bolt)]
            continue
        boxes: list[Box] = []
        for lane in section.lanes:
            lane_box = _lane_box(section, lane, bolt)
            boxes.append(lane_box)
            left, low, right, high = lane_box
            if left < section.start or right > end or high - low > bolt.usable_width:
                wrong.append(f"section {number}: a lane leaves the section")
            if not section.across and not (low >= 0 and high <= bolt.usable_width):
                wrong.append(f"section {number}: a lane leaves the cloth")
            wrong += _lane_faults(lane, section, bolt, number)
        if any(_overlap(one, two) for one, two in _beside(boxes)):
            wrong.append(f"section {number}: lanes overlap")
        sides = [(lane, box) for lane, box in zip(section.lanes, boxes, strict=True) if lane.selvedge]
        if any(box[1] > 0 and box[3] < bolt.usable_width for _, box in sides) or (sides and section.across):
            wrong.append(f"section {number}: a lane of the selvedge lies elsewhere")
        if sum(1 for lane, _ in sides if lane.segments) > (1 if bolt.one_way else 2):
            wrong.append(f"section {number}: too many lanes at the selvedges")
        folds = [lane for lane in section.lanes if lane.layer == "fold"]
        if len(folds) > 1 or any(lane.offset for lane in folds):
            wrong.append(f"section {number}: more than one lane on the fold, or one that isn't at it")
        if bolt.folded and not section.across:
            upper = sorted((lane.offset, lane.depth) for lane in section.lanes if lane.layer == "upper")
            under = sorted((lane.offset, lane.depth) for lane in section.lanes if lane.layer == "under")
            if upper != under:
                wrong.append(f"section {number}: lanes are not in mirrored pairs")
            if any(lane.layer == "flat" for lane in section.lanes):
                wrong.append(f"section {number}: a single lane on folded cloth")
        elif any(lane.layer != "flat" for lane in section.lanes):
            wrong.append(f"section {number}: a folded lane on flat cloth")
    return wrong


def _panel_faults(section: Section, bolt: Bolt) -> list[str]:
    wrong = []
    if section.lanes or section.across or bolt.folded:
        wrong.append("panels among lanes, or on folded cloth")
    boxes = panel_boxes(section)
    for panel, (left, low, right, high) in zip(section.panels, boxes, strict=True):
        if left < 0 or low < 0 or right > section.length or high > bolt.usable_width:
            wrong.append(f"{panel.strip} {panel.copy} leaves the section")
        if right <= left or high <= low or ((right - left) / bolt.grid).denominator != 1:
            wrong.append(f"{panel.strip} {panel.copy} is cut off the grid")
    if any(_overlap(one, two) for one, two in _beside(boxes)):
        wrong.append("panels overlap")
    if boxes and max(box[2] for box in boxes) != section.length:
        wrong.append("it is longer than its panels")
    return wrong


def panel_boxes(section: Section) -> list[Box]:
    """Left, low, right, high of each panel, from the near end of the section and from the edge."""
    return [
        (each.from_end, each.from_edge, each.from_end + each.length, each.from_edge + each.width)
        for each in section.panels
    ]


def comes_apart(boxes: list[Box]) -> bool:
    """Whether straight cuts, each through all that it meets, part the boxes; every line is tried."""
    if len(boxes) < 2:
        return True
    for low, high in ((0, 2), (1, 3)):
        for line in {box[low] for box in boxes}:
            before, beyond = [box for box in boxes if box[high] <= line], [box for box in boxes if box[low] >= line]
            if before and beyond and len(before) + len(beyond) == len(boxes):
                # What one such cut parts, the others still do: a cut shortens those that cross it and spoils none.
                return comes_apart(before) and comes_apart(beyond)
    return False


def _lane_faults(lane: Lane, section: Section, bolt: Bolt, number: int) -> list[str]:
    room = bolt.usable_width if section.across else section.length
    wrong = []
    end = Fraction(0)
    for segment in lane.segments:
        if segment.start < end or segment.length <= 0:
            wrong.append(f"section {number}: segments overlap in a lane")
        end = segment.start + segment.length
        if (segment.length / bolt.grid).denominator != 1:
            wrong.append(f"section {number}: a segment of {segment.length} is off the grid")
    if end > room:
        wrong.append(f"section {number}: a lane is filled to {end}, it has {room}")
    return wrong


def _lane_box(section: Section, lane: Lane, bolt: Bolt) -> Box:
    """Left, low, right, high of the lane on the opened-out cloth; the fold is at the middle of the width."""
    if section.across:
        left = section.start + lane.offset
        return left, Fraction(0), left + lane.depth, bolt.usable_width
    middle = bolt.usable_width / 2 if bolt.folded else Fraction(0)
    low = {
        "flat": lane.offset,
        "fold": middle - lane.depth / 2,
        "upper": middle + lane.offset,
        "under": middle - lane.offset - lane.depth,
    }[lane.layer]
    return section.start, low, section.start + section.length, low + lane.depth


def _beside(boxes: list[Box]) -> Iterator[tuple[Box, Box]]:
    """Pairs of boxes that lie over the same stretch of the bolt."""
    ordered = sorted(boxes)
    for index, one in enumerate(ordered):
        for two in ordered[index + 1 :]:
            if two[0] >= one[2]:
                break
            yield one, two


def _overlap(one: Box, two: Box) -> bool:
    return one[0] < two[2] and two[0] < one[2] and one[1] < two[3] and two[1] < one[3]


def _piece_faults(plan: CuttingPlan, strips: tuple[Strip, ...], bolt: Bolt) -> list[str]:
    wrong = []
    found: dict[tuple[str, str | None, int], list[tuple[Segment, Section, Lane]]] = defaultdict(list)
    for section in plan.sections:
        for lane in section.lanes:
            for segment in lane.segments:
                found[segment.strip, segment.wearer, segment.copy].append((segment, section, lane))
    freely: dict[tuple[str, str | None, int], list[Panel]] = defaultdict(list)
    for section in plan.sections:
        for panel in section.panels:
            freely[panel.strip, panel.wearer, panel.copy].append(panel)
    directions: set[bool] = set()
    for strip in strips:
        across_ways = set()
        for copy in range(1, strip.count + 1):
            name, key = f"{strip.name} {copy}", (strip.name, strip.wearer, copy)
            panels = freely.pop(key, [])
            if panels:
                wrong += [f"{name}: {fault}" for fault in _panel_copy_faults(strip, panels, bolt)]
                wrong += [f"{name}: in lanes and laid freely"] if key in found else []
                across_ways |= {panel.turned for panel in panels}
                continue
            cuts = found.pop(key, [])
            parts = sorted(cut.part for cut, _, _ in cuts)
            if parts != list(range(1, len(cuts) + 1)) or any(cut.parts != len(cuts) for cut, _, _ in cuts) or not cuts:
                wrong.append(f"{name}: parts {parts} are not all there once")
                continue
            wrong += [f"{name}: {fault}" for fault in _copy_faults(strip, cuts, bolt)]
            across_ways |= {section.across or cut.turned for cut, section, _ in cuts}
        if len(across_ways) > 1:
            wrong.append(f"{strip.name}: copies with different grain")
        if across_ways and strip.grain != "free" and across_ways != {strip.grain == "across"}:
            wrong.append(f"{strip.name}: against its grain")
        if strip.grain == "free":
            directions |= across_ways
    if bolt.one_way and len(directions) > 1:
        wrong.append("free pieces lie both ways on one-way cloth")
    return wrong + [f"{key}: a piece that nobody asked for" for key in (*found, *freely)]


def _panel_copy_faults(strip: Strip, panels: list[Panel], bolt: Bolt) -> list[str]:
    wrong = [] if len(panels) == 1 else [f"it is there {len(panels)} times"]
    wrong += ["laid freely, though its edge is the selvedge"] if strip.selvedge else []
    for panel in panels:
        along, over = (strip.depth, strip.length) if panel.turned else (strip.length, strip.depth)
        if panel.width != over or not along <= panel.length < along + bolt.grid:
            wrong.append(f"a panel of {panel.length} x {panel.width}, it has to be {along} x {over}")
    return wrong


def _copy_faults(strip: Strip, cuts: list[tuple[Segment, Section, Lane]], bolt: Bolt) -> list[str]:
    wrong = []
    for cut, _, lane in cuts:
        over, along = (strip.length, strip.depth) if cut.turned else (strip.depth, strip.length)
        if lane.selvedge != strip.selvedge:
            wrong.append("a selvedge that is asked for is not kept, or one that is not")
        if lane.depth != over:
            wrong.append(f"lies in a lane of {lane.depth}, it is {over} deep")
        if cut.turned and (cut.parts > 1 or not along <= cut.length < along + bolt.grid):
            wrong.append("a turned piece that is joined or of the wrong length")
    if any(cut.turned for cut, _, _ in cuts):
        return wrong
    joins = len(cuts) - 1
    if joins and not strip.piecing:
        wrong.append("joined, but has to be whole")
    if joins > strip.most_joins:
        wrong.append(f"{joins} joins, at most {strip.most_joins} allowed")
    if joins and min(cut.length for cut, _, _ in cuts) < strip.shortest_segment:
        wrong.append("a segment is too short")
    if joins and min(cut.length for cut, _, _ in cuts) <= 2 * strip.join_allowance:
        wrong.append("a segment is all allowance")
    length = sum((cut.length for cut, _, _ in cuts), Fraction(0)) - joins * 2 * strip.join_allowance
    # Each join may round its allowance up to the grid, and the whole length is rounded up once.
    slack = bolt.grid * (1 + joins)
    if not strip.length <= length < strip.length + slack:
        wrong.append(f"comes to {length} when joined, it has to be {strip.length}")
    return wrong


def _total_faults(plan: CuttingPlan, bolt: Bolt, prices: CutPrices) -> list[str]:
    wrong = []
    laid = sum((section.length for section in plan.sections), Fraction(0))
    cuts = joins = 0
    for section in plan.sections:
        used = [lane for lane in section.lanes if lane.segments]
        cuts += 1 + len(used) + sum(len(lane.segments) for lane in used)
        joins += sum(1 for lane in used for segment in lane.segments if segment.part > 1)
        # Each panel: its place measured both ways and two cuts, or four where shears go round it.
        cuts += len(section.panels) * (4 if comes_apart(panel_boxes(section)) else 6)
    bought = laid / (1 - bolt.shrinkage)
    cost = bought * prices.cloth_per_mm + joins * prices.per_join + cuts * prices.per_cut
    cost += len(plan.sections) * prices.per_setup
    told = (plan.laid_length, plan.bolt_length, plan.joins, plan.cuts, plan.cost)
    if told != (laid, bought, joins, cuts, cost):
        wrong.append(f"the plan says {told}, it comes to {(laid, bought, joins, cuts, cost)}")
    if plan.bound > plan.cost or plan.proven != (plan.bound == plan.cost):
        wrong.append(f"bound {plan.bound} against cost {plan.cost}, proven {plan.proven}")
    # Crossing line: no plan is shorter than the area of the cloth it cuts.
    area = sum((s.length * lane.depth for c in plan.sections for lane in c.lanes for s in lane.segments), Fraction(0))
    area += sum((p.length * p.width for c in plan.sections for p in c.panels), Fraction(0))
    if area > laid * bolt.usable_width:
        wrong.append("more cloth cut than there is")
    return wrong
