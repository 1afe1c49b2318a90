"""The cutting plan drawn on the cloth: sections, lanes and segments to one scale, with what stays over.

Folded cloth is drawn opened out, its fold in the middle, so that both layers can be seen; the layer under the other lies
below the fold.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from furbelow.garment.message import Length, One, Own, Part, Share, Things, Value, Values, flag
from furbelow.s4_cut.plan import CuttingPlan, Lane, Panel, Section, tag_of
from furbelow.s6_write.figures.free_panels import FreePanels
from furbelow.s6_write.figures.laid_cloth import ACROSS
from furbelow.s6_write.figures.laid_lanes import LaidLanes
from furbelow.s6_write.figures.pen import Sheet, shortened, width_of
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

FINEST = 0.24  # units for a mm at most
DEEP = 150.0  # units of cloth over its width at most
TALL = 250.0  # units of one figure at most, where sections allow it
FLAT = 60.0  # units of cloth over its width; where one scale for all sections leaves less, each has its own

Drawn = LaidLanes | FreePanels


def plan_figures(
    plan: CuttingPlan, marks: Mapping[str, str], words: Words, cloth: Value, key: str, faces: bool
) -> dict[int, Figure]:
    """The sections of one cloth's plan, as many in a figure as are easily read, by the number of its first.

    marks: the number of each piece in the cutting list, by its name. cloth: as it is called.
    faces: whether its sides differ, so that panels are chalked on the wrong one.
    """
    words.read("figures-cutting")
    groups: list[list[Drawn]] = []
    firsts: list[int] = []
    tall = TALL
    for number, (section, scale) in enumerate(zip(plan.sections, _scales(plan), strict=True), 1):
        drawn: Drawn
        if section.panels:
            drawn = FreePanels(section, float(plan.usable_width), marks, words, scale, faces)
        else:
            drawn = LaidLanes(plan, section, marks, words, scale)
        if tall + drawn.high > TALL:
            groups.append([])
            firsts.append(number)
            tall = 0.0
        groups[-1].append(drawn)
        tall += drawn.high
    return {
        first: _figure(plan, first, group, marks, words, cloth, key)
        for first, group in zip(firsts, groups, strict=True)
    }


def _figure(
    plan: CuttingPlan,
    first: int,
    group: Sequence[Drawn],
    marks: Mapping[str, str],
    words: Words,
    cloth: Value,
    key: str,
) -> Figure:
    sheet, y, told = Sheet(), 0.0, []
    for number, drawn in enumerate(group, first):
        rows = Things(tuple(_rows(drawn.section, marks)), "clauses")
        values: Values = {
            "section": number,
            "length": Length(drawn.section.length, "cut"),
            "cloth": cloth,
            "rows": rows,
        }
        heading = words.text("figure-cutting-section", values)
        sheet.head((8, y), heading)
        after = 13 + width_of(heading, True)
        sheet.write((after, y), shortened(words.text("figure-cutting-bolt", values), sheet.width - after - 8))
        y = drawn.draw(sheet, y + 30) + 34
        told.append(words.text("figure-cutting-alt", values))
    opened = [words.text("figure-cutting-opened")] if plan.folded else []
    panels = [words.text("figure-cutting-panels")] if any(drawn.section.panels for drawn in group) else []
    unproven = [] if plan.proven or first > 1 else [words.text("figure-cutting-unproven", {"gap": Share(plan.gap)})]
    caption = " ".join([_caption(plan, first, len(group), words, cloth), *opened, *panels, *unproven])
    return sheet.figure(f"{key}-{first}", " ".join([*told, *opened]), caption)


def _caption(plan: CuttingPlan, first: int, count: int, words: Words, cloth: Value) -> str:
    one_scale = len(set(_scales(plan))) == 1
    return words.text(
        "figure-cutting-caption" if one_scale else "figure-cutting-caption-scales",
        {
            "first": flag(count == 1),
            "from": first,
            "to": first + count - 1,
            "sections": len(plan.sections),
            "cloth": cloth,
        },
    )


def _scales(plan: CuttingPlan) -> tuple[float, ...]:
    """Units for a mm in each section: one scale for all where that leaves the lanes broad enough to see."""
    spans = [float(plan.usable_width if section.across else section.length) for section in plan.sections]
    scales = tuple(min(FINEST, ACROSS / span, DEEP / float(plan.usable_width)) for span in spans)
    together = min(scales)
    return (together,) * len(scales) if together * float(plan.usable_width) >= FLAT else scales


def _rows(section: Section, marks: Mapping[str, str]) -> Iterator[Part]:
    """What the drawing shows, in words."""
    for panel in section.panels:
        yield _panel(panel, marks)
    for number, lane in enumerate(section.lanes, 1):
        yield _lane(number, lane, marks)


def _panel(panel: Panel, marks: Mapping[str, str]) -> Part:
    return Part(
        "figure-cutting-alt-panel",
        {
            "piece": Own(tag_of(panel, marks)),
            "near-end": Length(panel.from_end),
            "far-end": Length(panel.from_end + panel.length, "cut"),
            "near-side": Length(panel.from_edge),
            "far-side": Length(panel.from_edge + panel.width, "cut"),
        },
    )


def _lane(number: int, lane: Lane, marks: Mapping[str, str]) -> Part:
    pieces = [
        Part("figure-cutting-alt-piece", {"piece": Own(tag_of(each, marks)), "length": Length(each.length, "cut")})
        for each in lane.segments
    ]
    return Part(
        "figure-cutting-alt-lane",
        {
            "layer": One(lane.layer, ("flat", "fold", "upper", "under")),
            "lane": number,
            "depth": Length(lane.depth, "cut"),
            "pieces": Things(tuple(pieces) or (Part("figure-cutting-alt-nothing"),)),
        },
    )
