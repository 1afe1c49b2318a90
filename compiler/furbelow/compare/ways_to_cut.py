"""The cutting of a garment as a maker weighs it: the plan of each cloth, how good it is, and the other ways."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from typing import Any

from furbelow.garment.message import Length, Money, One, Own, Part, Share, Things, Value, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.measure.plain_values import plain_number
from furbelow.measure.quantity import show_fixed
from furbelow.order.chain import Planned
from furbelow.s4_cut.cut import Sheet, cut_prices
from furbelow.s4_cut.lanes.limits import MOST_SECTIONS
from furbelow.s4_cut.marks import table_marks
from furbelow.s4_cut.offcuts import offcuts
from furbelow.s4_cut.plan import CuttingPlan, Section, tag_of
from furbelow.s4_cut.through_cuts import cut_apart
from furbelow.s4_cut.trade_off import trade_off
from furbelow.s6_write.words.words import Words

Ways = Mapping[str, tuple[CuttingPlan, ...]]

_WAYS = ("cut", "sides")
_LAYERS = ("flat", "fold", "upper", "under")


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
    words = _words(planned)
    lines = [f"{solved.spec.title}, {wearer}", ""]
    lines += [f"  {mark}  {words.say.piece(piece)}" for piece, mark in cutting.marks.items()]
    for cloth, found in ways.items():
        lines += ["", *_cloth_lines(planned, cutting.sheet(cloth), found, words)]
    picked = (words.text(each) for each in ("ways-pick-here", "ways-pick-room", "ways-pick-within"))
    return "\n".join([*lines, "", *picked, ""])


def _words(planned: Planned) -> Words:
    say = Phrasing(planned.rehearsal.solved, planned.rehearsal.run.room, planned.cutting.joins)
    words = Words(say.language, say, planned.cutting.marks)
    words.read("plans", "ways-to-cut")
    return words


def _cloth_lines(planned: Planned, sheet: Sheet, ways: tuple[CuttingPlan, ...], words: Words) -> Iterator[str]:
    plan = sheet.plan
    sizes: Values = {
        "cloth": Own(words.name(sheet.material.material.name)),
        "length": Length(plan.bolt_length, "buy"),
        "width": Length(sheet.width),
        "usable": Length(plan.usable_width),
    }
    yield words.text("ways-cloth-folded" if plan.folded else "ways-cloth", sizes)
    if sheet.bolt.spared:
        yield "  " + words.text("ways-spare", {"spare": Length(sheet.bolt.spared)})
    for number, section in enumerate(plan.sections, 1):
        if section.panels:
            yield from _panel_lines(planned, section, number, plan.usable_width, words)
        else:
            yield from _section_lines(planned, section, number, plan.folded, words)
    yield "  " + words.text("ways-cost", {"cost": _costs(planned, sheet, words)})
    if plan.proven:
        yield f"  {_how(plan, words)}"
    else:
        bound: Values = {"bound": _number_of(plan.bound, words), "share": Share(plan.gap)}
        yield f"  {_how(plan, words)} {words.text('ways-bound', bound)}"
    kept: list[Value] = [
        Part("ways-offcut", {"length": Length(each.length), "width": Length(each.width), "section": each.section})
        for each in offcuts(plan)
    ]
    yield "  " + words.text("ways-offcuts", {"offcuts": Things(tuple(kept) or (Part("ways-none"),))})
    yield "  " + words.text("ways-least")
    for way in ways:
        told: Values = {
            "length": Length(way.bolt_length, "buy"),
            "joins": way.joins,
            "sections": Part("ways-sections", {"sections": way.setups}),
            "cost": _number_of(way.cost, words),
        }
        mark = "" if way.proven else f" ({words.text('ways-not-proven')})"
        mark = f" ({words.text('ways-chosen')})" if _same(way, plan) else mark
        yield "    " + words.text("ways-way", told) + mark


def _how(plan: CuttingPlan, words: Words) -> str:
    """How good the plan is known to be."""
    return words.text(plan.how, {"sections": MOST_SECTIONS, "gap": _number_of(100 * plan.gap, words, 1)})


def _number_of(amount: Fraction, words: Words, places: int = 2) -> Own:
    """With all its places, as sums of money have them."""
    return Own(words.local(show_fixed(amount, places)))


def _section_lines(planned: Planned, section: Section, number: int, folded: bool, words: Words) -> Iterator[str]:
    along: Values = {"number": number, "length": Length(section.length, "cut"), "across": flag(section.across)}
    yield "  " + words.text("ways-section", along)
    tapes = Things(tuple(Length(mark.distance, "cut") for mark in table_marks(section)))
    edge = One("start" if section.across else "fold" if folded else "edge", ("start", "fold", "edge"))
    yield "    " + words.text("ways-tapes", {"tapes": tapes, "edge": edge})
    for at, lane in enumerate(section.lanes, 1):
        cuts = "; ".join(
            f"{tag_of(each, planned.cutting.marks)}, {words.said(Length(each.length, 'cut'))}" for each in lane.segments
        )
        told: Values = {
            "number": at,
            "depth": Length(lane.depth, "cut"),
            "layer": One(lane.layer, _LAYERS),
            "cuts": Own(cuts) if cuts else Part("ways-over"),
        }
        yield "    " + words.text("ways-lane-selvedge" if lane.selvedge else "ways-lane", told)


def _panel_lines(planned: Planned, section: Section, number: int, width: Fraction, words: Words) -> Iterator[str]:
    how = "sides" if cut_apart(section.panels, section.length, width) is not None else "cut"
    along: Values = {"number": number, "length": Length(section.length, "cut"), "how": One(how, _WAYS)}
    yield "  " + words.text("ways-panels", along)
    for panel in section.panels:
        told: Values = {
            "mark": Own(tag_of(panel, planned.cutting.marks)),
            "from-end": Length(panel.from_end, "cut"),
            "to-end": Length(panel.from_end + panel.length, "cut"),
            "from-edge": Length(panel.from_edge, "cut"),
            "to-edge": Length(panel.from_edge + panel.width, "cut"),
        }
        yield "    " + words.text("ways-panel", told)


def _costs(planned: Planned, sheet: Sheet, words: Words) -> Own:
    """The cost and what it is made of."""
    plan, prices = sheet.plan, cut_prices(sheet.price, planned.rehearsal.run.room)
    told: Values = {
        "all": Money(plan.cost, planned.shopping.currency),
        "cloth": _number_of(plan.bolt_length * prices.cloth_per_mm, words),
        "joins": plan.joins,
        "joins-cost": _number_of(plan.joins * prices.per_join, words),
        "set-ups": plan.setups,
        "set-ups-cost": _number_of(plan.setups * prices.per_setup, words),
        "cuts": plan.cuts,
        "marked": flag(any(each.panels for each in plan.sections)),
        "cuts-cost": _number_of(plan.cuts * prices.per_cut, words),
    }
    said = words.text("ways-costs", told)
    if sheet.price is None:
        said = words.text("clauses", {"before": said, "after": words.text("ways-unpriced")})
    return Own(said)


def as_data(planned: Planned, ways: Ways, wearer: str) -> Mapping[str, Any]:
    """The same as plain values for JSON; lengths in mm."""
    return {
        "title": planned.rehearsal.solved.spec.title,
        "wearer": wearer,
        "currency": planned.shopping.currency,
        "marks": dict(planned.cutting.marks),
        "cloths": [_cloth_data(planned, cloth, ways[cloth]) for cloth in ways],
    }


def _cloth_data(planned: Planned, cloth: str, ways: tuple[CuttingPlan, ...]) -> dict[str, Any]:
    sheet = planned.cutting.sheet(cloth)
    plan, words = sheet.plan, _words(planned)
    return {
        "cloth": cloth,
        "width": plain_number(sheet.width),
        "usable_width": plain_number(plan.usable_width),
        "spare_across": plain_number(sheet.bolt.spared),
        "folded": plan.folded,
        **_way_data(plan),
        "laid_length": plain_number(plan.laid_length),
        "cuts": plan.cuts,
        "bound": plain_number(plan.bound),
        "gap": plain_number(plan.gap),
        "how": _how(plan, words),
        "plan": [_section_data(planned, section, words) for section in plan.sections],
        "offcuts": [
            {"section": each.section, "length": plain_number(each.length), "width": plain_number(each.width)}
            for each in offcuts(plan)
        ],
        "ways": [{**_way_data(way), "chosen": _same(way, plan)} for way in ways],
    }


def _way_data(plan: CuttingPlan) -> dict[str, Any]:
    return {
        "bolt_length": plain_number(plan.bolt_length),
        "joins": plan.joins,
        "sections": plan.setups,
        "cost": plain_number(plan.cost),
        "proven": plan.proven,
    }


def _section_data(planned: Planned, section: Section, words: Words) -> dict[str, Any]:
    return {
        "start": plain_number(section.start),
        "length": plain_number(section.length),
        "across": section.across,
        "tapes": [
            {"distance": plain_number(mark.distance), "lanes": list(mark.lanes), "on_fold": mark.on_fold}
            for mark in table_marks(section)
        ],
        "lanes": [
            {
                "offset": plain_number(lane.offset),
                "depth": plain_number(lane.depth),
                "layer": lane.layer,
                "selvedge": lane.selvedge,
                "segments": [
                    {
                        "mark": tag_of(each, planned.cutting.marks),
                        "piece": each.strip,
                        "copy": each.copy,
                        "part": each.part,
                    }
                    | {"parts": each.parts, "start": plain_number(each.start), "length": plain_number(each.length)}
                    for each in lane.segments
                ],
            }
            for lane in section.lanes
        ],
        "panels": [
            {"mark": tag_of(each, planned.cutting.marks), "piece": each.strip, "copy": each.copy}
            | {"from_end": plain_number(each.from_end), "from_edge": plain_number(each.from_edge)}
            | {"length": plain_number(each.length), "width": plain_number(each.width), "turned": each.turned}
            for each in section.panels
        ],
    }
