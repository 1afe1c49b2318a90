"""The cutting of a garment as a maker weighs it: the plan of each cloth, how good it is, and the other ways."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from typing import Any

from furbelow.garment.message import Own
from furbelow.garment.phrasing import Phrasing, listed
from furbelow.measure.quantity import show_fixed
from furbelow.order.chain import Planned
from furbelow.s4_cut.cut import Sheet, cut_prices
from furbelow.s4_cut.lanes.exact import MOST_SECTIONS
from furbelow.s4_cut.marks import table_marks
from furbelow.s4_cut.offcuts import offcuts
from furbelow.s4_cut.plan import CuttingPlan, Panel, Section, Segment
from furbelow.s4_cut.through_cuts import cut_apart
from furbelow.s4_cut.trade_off import trade_off
from furbelow.s6_write.words.words import Words

Ways = Mapping[str, tuple[CuttingPlan, ...]]

_HOW_TO_PICK = """\
To pick a way with fewer joins or sections, give --most-joins N and --most-sections N, here and with `make`,
or write `most joins: N` and `most sections: N` in the workroom. Within them the cheapest way is taken: for less
cloth with more joins, lower the `join price` and the `setup price` of the workroom.
"""


def ways_to_cut(planned: Planned) -> Ways:
    """For each cloth the plans of which none has less cloth, fewer joins and fewer sections than another.

    The chosen plan is always among them.
    """
    room = planned.rehearsal.run.room
    ways = {}
    for cloth in planned.cutting.sheets:
        sheet = planned.cutting.sheet(cloth)
        found = trade_off(sheet.strips, sheet.bolt, cut_prices(sheet.price, room))
        if not any(_same(plan, sheet.plan) for plan in found):
            found = (*found, sheet.plan)
        ways[cloth] = tuple(sorted(found, key=lambda plan: (plan.joins, plan.setups)))
    return ways


def _same(one: CuttingPlan, other: CuttingPlan) -> bool:
    """Whether the two are one way to cut, wherever their lanes lie."""
    return (one.bolt_length, one.joins, one.setups) == (other.bolt_length, other.joins, other.setups)


# --- telling it ---


def as_text(planned: Planned, ways: Ways, wearer: str) -> str:
    solved, cutting = planned.rehearsal.solved, planned.cutting
    say = Phrasing(solved, planned.rehearsal.run.room)
    lines = [f"{solved.spec.title}, {wearer}", ""]
    lines += [f"  {letter}  {say.piece(piece)}" for piece, letter in cutting.letters.items()]
    for cloth, found in ways.items():
        lines += ["", *_cloth_lines(planned, cutting.sheet(cloth), found, say)]
    return "\n".join([*lines, "", _HOW_TO_PICK])


def _cloth_lines(planned: Planned, sheet: Sheet, ways: tuple[CuttingPlan, ...], say: Phrasing) -> Iterator[str]:
    plan = sheet.plan
    folded = ", folded lengthwise" if plan.folded else ""
    yield (
        f"{sheet.material.material.name}: {say.buy(plan.bolt_length)} of {say.length(sheet.width)} wide,"
        f" {say.length(plan.usable_width)} of it to use{folded}"
    )
    for number, section in enumerate(plan.sections, 1):
        if section.panels:
            yield from _panel_lines(planned, section, number, plan.usable_width, say)
        else:
            yield from _section_lines(planned, section, number, plan.folded, say)
    yield f"  cost {_costs(planned, sheet, say)}"
    if plan.proven:
        yield f"  {_how(plan, say)}"
    else:
        yield f"  {_how(plan, say)} No plan costs less than {show_fixed(plan.bound, 2)}, {say.share(plan.gap)} below."
    kept = [f"{say.length(each.length)} x {say.length(each.width)} of section {each.section}" for each in offcuts(plan)]
    yield f"  offcuts worth keeping: {listed(kept) or 'none'}"
    yield "  the least cloth for each number of joins and sections:"
    for way in ways:
        chosen = " (chosen)" if _same(way, plan) else "" if way.proven else " (not proven)"
        joins = say.count(way.joins, "join") if way.joins else "none"
        yield (
            f"    {say.buy(way.bolt_length)} with {joins} in {say.count(way.setups, 'section')},"
            f" cost {show_fixed(way.cost, 2)}{chosen}"
        )


def _how(plan: CuttingPlan, say: Phrasing) -> str:
    """How good the plan is known to be."""
    words = Words(say.language, say)
    words.read("plans")
    return words.text(plan.how, {"sections": MOST_SECTIONS, "gap": Own(show_fixed(100 * plan.gap, 1))})


def _section_lines(planned: Planned, section: Section, number: int, folded: bool, say: Phrasing) -> Iterator[str]:
    edge = "start" if section.across else "fold" if folded else "long edge"
    across = ", lanes over the width" if section.across else ""
    yield f"  section {number}, {say.cut(section.length)} of the bolt{across}"
    yield f"    tapes from the {edge}: {listed([say.cut(mark.distance) for mark in table_marks(section)])}"
    for at, lane in enumerate(section.lanes, 1):
        cuts = "; ".join(f"{_mark(planned, each)}, {say.cut(each.length)}" for each in lane.segments)
        where = {"flat": "", "fold": " on the fold", "upper": " in the upper layer", "under": " in the under layer"}
        yield f"    lane {at}, {say.cut(lane.depth)} deep{where[lane.layer]}: {cuts or 'stays over'}"


def _panel_lines(planned: Planned, section: Section, number: int, width: Fraction, say: Phrasing) -> Iterator[str]:
    straight = cut_apart(section.panels, section.length, width) is not None
    how = "straight cuts from side to side" if straight else "cut round with shears"
    yield f"  section {number}, {say.cut(section.length)} of the bolt, panels chalked one by one, {how}"
    for panel in section.panels:
        end, edge = panel.from_end + panel.length, panel.from_edge + panel.width
        yield (
            f"    {_mark(planned, panel)}: {say.cut(panel.from_end)} to {say.cut(end)} from the end,"
            f" {say.cut(panel.from_edge)} to {say.cut(edge)} from the long edge"
        )


def _mark(planned: Planned, segment: Segment | Panel) -> str:
    """A1, or B2 part 1 of 3."""
    part = f" part {segment.part} of {segment.parts}" if segment.parts > 1 else ""
    return f"{planned.cutting.letters[segment.strip]}{segment.copy}{part}"


def _costs(planned: Planned, sheet: Sheet, say: Phrasing) -> str:
    """The cost and what it is made of."""
    plan, prices = sheet.plan, cut_prices(sheet.price, planned.rehearsal.run.room)
    parts = [
        f"cloth {show_fixed(plan.bolt_length * prices.cloth_per_mm, 2)}",
        f"{say.count(plan.joins, 'join')} {show_fixed(plan.joins * prices.per_join, 2)}",
        f"{say.count(plan.setups, 'set-up')} {show_fixed(plan.setups * prices.per_setup, 2)}",
        f"{say.count(plan.cuts, 'cut')}{' and marks' if any(each.panels for each in plan.sections) else ''} {show_fixed(plan.cuts * prices.per_cut, 2)}",
    ]
    unpriced = "; the cloth has no price, so a metre counts as 1" if sheet.price is None else ""
    return f"{show_fixed(plan.cost, 2)} {planned.shopping.currency}: {', '.join(parts)}{unpriced}"


def as_data(planned: Planned, ways: Ways, wearer: str) -> Mapping[str, Any]:
    """The same as plain values for JSON; lengths in mm."""
    return {
        "title": planned.rehearsal.solved.spec.title,
        "wearer": wearer,
        "currency": planned.shopping.currency,
        "letters": dict(planned.cutting.letters),
        "cloths": [_cloth_data(planned, cloth, ways[cloth]) for cloth in ways],
    }


def _cloth_data(planned: Planned, cloth: str, ways: tuple[CuttingPlan, ...]) -> dict[str, Any]:
    sheet = planned.cutting.sheet(cloth)
    plan = sheet.plan
    return {
        "cloth": cloth,
        "width": _number(sheet.width),
        "usable_width": _number(plan.usable_width),
        "folded": plan.folded,
        **_way_data(plan),
        "laid_length": _number(plan.laid_length),
        "cuts": plan.cuts,
        "bound": _number(plan.bound),
        "gap": _number(plan.gap),
        "how": _how(plan, Phrasing(planned.rehearsal.solved, planned.rehearsal.run.room)),
        "plan": [_section_data(planned, section) for section in plan.sections],
        "offcuts": [
            {"section": each.section, "length": _number(each.length), "width": _number(each.width)}
            for each in offcuts(plan)
        ],
        "ways": [{**_way_data(way), "chosen": _same(way, plan)} for way in ways],
    }


def _way_data(plan: CuttingPlan) -> dict[str, Any]:
    return {
        "bolt_length": _number(plan.bolt_length),
        "joins": plan.joins,
        "sections": plan.setups,
        "cost": _number(plan.cost),
        "proven": plan.proven,
    }


def _section_data(planned: Planned, section: Section) -> dict[str, Any]:
    return {
        "start": _number(section.start),
        "length": _number(section.length),
        "across": section.across,
        "tapes": [
            {"distance": _number(mark.distance), "lanes": list(mark.lanes), "on_fold": mark.on_fold}
            for mark in table_marks(section)
        ],
        "lanes": [
            {
                "offset": _number(lane.offset),
                "depth": _number(lane.depth),
                "layer": lane.layer,
                "segments": [
                    {"mark": _mark(planned, each), "piece": each.strip, "copy": each.copy, "part": each.part}
                    | {"parts": each.parts, "start": _number(each.start), "length": _number(each.length)}
                    for each in lane.segments
                ],
            }
            for lane in section.lanes
        ],
        "panels": [
            {"mark": _mark(planned, each), "piece": each.strip, "copy": each.copy}
            | {"from_end": _number(each.from_end), "from_edge": _number(each.from_edge)}
            | {"length": _number(each.length), "width": _number(each.width), "turned": each.turned}
            for each in section.panels
        ],
    }


def _number(value: Fraction) -> int | float:
    return int(value) if value.denominator == 1 else round(float(value), 6)
