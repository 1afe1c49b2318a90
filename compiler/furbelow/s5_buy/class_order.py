"""One order for a class or a size range: all strips of a cloth on one bolt, all that is used up bought together.

Garments are known by their number in the class, never by a name. A strip, and the letter of its piece, is marked with
the number before it: `3B` is the B of number 3.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from fractions import Fraction
from typing import NamedTuple

from furbelow.garment.message import Part
from furbelow.garment.solved import Solved, SolvedMaterial
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import Quantity
from furbelow.measure.units import LENGTH
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import NO_PRICE, Cutting, Sheet
from furbelow.s4_cut.lanes.pool import pooled
from furbelow.s4_cut.plan import CuttingPlan, How
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip, ways_to_lay
from furbelow.s5_buy.offers import cheapest_first, offered
from furbelow.s5_buy.shop_units import in_steps
from furbelow.s5_buy.shopping import Line, ShoppingList, Unit, each_once
from furbelow.s5_buy.thread import ThreadNeed, reels_to_buy

# More garments than this are planned in lots, lot after lot on the same bolt: the work grows with the class, not faster.
LOT = 30

Planner = Callable[[tuple[Strip, ...], Bolt, CutPrices], CuttingPlan]


class Garment(NamedTuple):
    """One garment of the order, planned and counted on its own; all of one order come from one spec."""

    rehearsal: Rehearsal
    cutting: Cutting
    shopping: ShoppingList


class Bought(NamedTuple):
    """One line of the order beside the same bought by each alone: mm, ml or reels as the line says."""

    line: Line
    garments: int  # that use it
    need_alone: Fraction
    bought_alone: Fraction
    cost_alone: Fraction | None
    joins_alone: int = 0


class ClassOrder(NamedTuple):
    """`shopping` and `cutting` are for all garments; `solved` speaks of the order's materials.

    The hours are those of all garments, each cut on its own.
    """

    garments: Mapping[int, Garment]
    solved: Solved
    room: Workroom
    cutting: Cutting
    shopping: ShoppingList
    bought: tuple[Bought, ...]

    @property
    def cost(self) -> Fraction:
        """Of all lines that have a price."""
        return _total(line.cost for line in self.shopping.lines)

    @property
    def cost_alone(self) -> Fraction:
        """What the same would cost if each bought for itself."""
        return _total(each.cost_alone for each in self.bought)

    @property
    def cost_per_head(self) -> Fraction:
        return self.cost / len(self.garments)


def class_order(garments: Mapping[int, Garment], planner: Planner = pooled) -> ClassOrder:
    """The order for all garments, under their numbers; there is at least one.

    Materials of one name that differ in an amount, such as an elastic whose width follows a choice, are bought apart:
    the second kind is called `elastic 2`. A cloth comes off one bolt, in the offered width that costs least of those
    that serve everybody; where none does, off one bolt for each width that was chosen alone.
    """
    first = next(iter(garments.values()))
    room = first.rehearsal.run.room
    sheets: dict[str, tuple[Sheet, ...]] = {}
    bought: list[Bought] = []
    for name, lines in _named(_alike(garments)):
        material = _renamed(next(iter(lines.values())).material, name)
        if not any(line.offers for line in lines.values()):
            bought.append(_together(material, lines, garments))
            continue
        sheets[name] = _one_bolt(
            material, {number: _sheets(garments[number], lines[number]) for number in lines}, room, planner
        )
        line = _cloth_line(material, sheets[name], lines.values())
        bought.append(_beside(line, lines, sum(_sheets(garments[n], lines[n])[0].plan.joins for n in lines)))
    letters = {
        marked(number, piece): f"{number}{letter}"
        for number, garment in garments.items()
        for piece, letter in garment.cutting.letters.items()
    }
    solved = first.rehearsal.solved
    materials = {each.line.name: each.line.material for each in bought}
    return ClassOrder(
        garments,
        solved._replace(materials={**solved.materials, **materials}),
        room,
        Cutting(sheets, letters),
        _list(garments.values(), tuple(each.line for each in bought)),
        tuple(bought),
    )


def marked(number: int, piece: str) -> str:
    """The name that a piece of one garment has in the order's cutting."""
    # A piece's name in the spec has no space, so this is no other piece's name.
    return f"{number} {piece}"


def _alike(garments: Mapping[int, Garment]) -> list[dict[int, Line]]:
    """The lines of like material, by number, in the order of the spec."""
    kinds: dict[object, dict[int, Line]] = {}
    for number, garment in garments.items():
        for line in garment.shopping.lines:
            amounts = line.material.amounts
            kinds.setdefault((line.name, *((key, amounts[key]) for key in sorted(amounts))), {})[number] = line
    apart: list[dict[int, Line]] = []
    for lines in kinds.values():
        apart += _by_bolt(lines, garments) if any(line.offers for line in lines.values()) else [lines]
    written = list(next(iter(garments.values())).rehearsal.solved.materials)
    return sorted(apart, key=lambda lines: written.index(next(iter(lines.values())).name))


def _by_bolt(lines: dict[int, Line], garments: Mapping[int, Garment]) -> list[dict[int, Line]]:
    """All lines of a cloth, or those of each chosen width apart where no width serves everybody."""
    sheets = {number: _sheets(garments[number], line) for number, line in lines.items()}
    if _for_all(sheets):
        return [lines]
    chosen: dict[object, dict[int, Line]] = {}
    for number, line in lines.items():
        chosen.setdefault(_offer(sheets[number][0]), {})[number] = line
    return list(chosen.values())


def _named(kinds: Iterable[dict[int, Line]]) -> list[tuple[str, dict[int, Line]]]:
    seen: dict[str, int] = {}
    named = []
    for lines in kinds:
        name = next(iter(lines.values())).name
        seen[name] = seen.get(name, 0) + 1
        named.append((name if seen[name] == 1 else f"{name} {seen[name]}", lines))
    return named


def _renamed(material: SolvedMaterial, name: str) -> SolvedMaterial:
    return material._replace(material=material.material._replace(name=name))


def _sheets(garment: Garment, line: Line) -> tuple[Sheet, ...]:
    return garment.cutting.sheets[line.name]


def _offer(sheet: Sheet) -> tuple[Fraction, Fraction | None, Bolt]:
    """The cloth as it is offered: what stays spare across hangs on the pieces of each body."""
    return sheet.width, sheet.price, replace(sheet.bolt, usable_width=sheet.width, spared=Fraction(0))


def _for_all(sheets: Mapping[int, tuple[Sheet, ...]]) -> list[tuple[Fraction, Fraction | None, Bolt]]:
    """The offers from which everybody can cut."""
    first, *others = ([_offer(sheet) for sheet in each] for each in sheets.values())
    return [offer for offer in first if all(offer in each for each in others)]


def _one_bolt(
    material: SolvedMaterial, sheets: Mapping[int, tuple[Sheet, ...]], room: Workroom, planner: Planner
) -> tuple[Sheet, ...]:
    """One sheet for all numbers in each width that serves everybody, the cheapest first."""
    spare = material.amounts.get("spare")
    if spare is not None and spare.dims == LENGTH:
        # Each garment keeps the length that the spec lays by for it; a share grows by itself.
        kept = Quantity(spare.value * len(sheets), spare.dims)
        material = material._replace(amounts={**material.amounts, "spare": kept})
    made = []
    for offer in _for_all(sheets):
        width, price, _ = offer
        own = {n: next(sheet for sheet in each if _offer(sheet) == offer) for n, each in sheets.items()}
        bolt = max((sheet.bolt for sheet in own.values()), key=lambda each: each.usable_width)
        prices = CutPrices(price or NO_PRICE, room.join_price, room.setup_price, room.cut_price)
        lots = [dict(list(own.items())[at : at + LOT]) for at in range(0, len(own), LOT)]
        plan = _after_each_other([_best(lot, bolt, prices, planner) for lot in lots])
        strips = tuple(strip for number, sheet in own.items() for strip in _strips(number, sheet))
        made.append(Sheet(material, width, price, strips, bolt, plan))
    return cheapest_first(Cutting({material.material.name: tuple(made)}, {})).sheets[material.material.name]


def _strips(number: int, sheet: Sheet) -> list[Strip]:
    return [replace(strip, name=marked(number, strip.name), wearer=str(number)) for strip in sheet.strips]


def _best(own: Mapping[int, Sheet], bolt: Bolt, prices: CutPrices, planner: Planner) -> CuttingPlan:
    """The shared plan, or the own plans after each other where they cost no more."""
    alone = _after_each_other([_plan_of(number, sheet.plan) for number, sheet in own.items()])
    strips = _one_way(tuple(strip for number, sheet in own.items() for strip in _strips(number, sheet)), bolt)
    if len(own) == 1 or strips is None:
        return alone
    shared = planner(strips, bolt, prices)
    return shared if shared.cost < alone.cost else alone


def _one_way(strips: tuple[Strip, ...], bolt: Bolt) -> tuple[Strip, ...] | None:
    """On one-way cloth the grain is settled for all that are free to lie either way; None where they can't agree."""
    free = [strip for strip in strips if bolt.one_way and strip.grain == "free"]
    if all("along" in ways_to_lay(strip, bolt) for strip in free):
        return tuple(replace(strip, grain="along") if strip in free else strip for strip in strips)
    if all(set(ways_to_lay(strip, bolt)) - {"along"} for strip in free):
        return tuple(replace(strip, grain="across") if strip in free else strip for strip in strips)
    return None


def _plan_of(number: int, plan: CuttingPlan) -> CuttingPlan:
    """The plan with every segment marked with its wearer's number."""
    sections = tuple(
        replace(
            section,
            lanes=tuple(
                replace(
                    lane,
                    segments=tuple(
                        replace(each, strip=marked(number, each.strip), wearer=str(number)) for each in lane.segments
                    ),
                )
                for lane in section.lanes
            ),
            panels=tuple(
                panel._replace(strip=marked(number, panel.strip), wearer=str(number)) for panel in section.panels
            ),
        )
        for section in plan.sections
    )
    return replace(plan, sections=sections)


def _after_each_other(plans: Sequence[CuttingPlan]) -> CuttingPlan:
    """All sections of the plans on one bolt, longest first; the bound holds for plans that part the work likewise."""
    if len(plans) == 1:
        return plans[0]
    sections, start = [], Fraction(0)
    for section in sorted((s for plan in plans for s in plan.sections), key=lambda each: (each.across, -each.length)):
        sections.append(replace(section, start=start))
        start += section.length
    cost, bound = (_total(getattr(plan, name) for plan in plans) for name in ("cost", "bound"))
    return replace(
        plans[0],
        sections=tuple(sections),
        usable_width=max(plan.usable_width for plan in plans),
        laid_length=start,
        bolt_length=_total(plan.bolt_length for plan in plans),
        joins=sum(plan.joins for plan in plans),
        cuts=sum(plan.cuts for plan in plans),
        cost=cost,
        bound=bound,
        proven=cost == bound,
        how=How.AFTER_EACH_OTHER,
    )


def _cloth_line(material: SolvedMaterial, sheets: tuple[Sheet, ...], lines: Iterable[Line]) -> Line:
    offers = tuple(offered(sheet) for sheet in sheets)
    best = offers[0]
    return Line(material, best.need, best.bought, Unit.LENGTH, best.cost, _placement(lines), offers)


def _together(material: SolvedMaterial, lines: Mapping[int, Line], garments: Mapping[int, Garment]) -> Bought:
    """What is used up: the needs added, then rounded up to what the shop sells once instead of for each."""
    one = next(iter(lines.values()))
    need = _total(line.need for line in lines.values())
    sold = material.amounts.get("sold_by")
    if one.unit is Unit.REELS:
        at_once = max(garments[number].shopping.thread.reels_at_once for number in lines)
        bought = Fraction(reels_to_buy(need, one.reel, at_once).reels)
    else:
        bought = in_steps(need, sold, one.unit.dims)
    # A price is for so much of what is bought, so any line that buys some tells what one more would cost.
    priced = next((line for line in lines.values() if line.cost is not None and line.bought), None)
    cost = one.cost if priced is None or priced.cost is None else priced.cost / priced.bought * bought
    return _beside(
        Line(material, need, bought, one.unit, cost, _placement(lines.values()), fibres=one.fibres, reel=one.reel),
        lines,
    )


def _beside(line: Line, lines: Mapping[int, Line], joins_alone: int = 0) -> Bought:
    own = lines.values()
    cost = None if line.cost is None else _total(each.cost for each in own)
    return Bought(
        line,
        len(lines),
        _total(each.need for each in own),
        _total(each.bought for each in own),
        cost,
        joins_alone,
    )


def _placement(lines: Iterable[Line]) -> tuple[Part, ...]:
    return each_once(place for line in lines for place in line.placement)


def _list(garments: Iterable[Garment], lines: tuple[Line, ...]) -> ShoppingList:
    """All garments as one list, without what belongs to one maker's own work: steps, bobbins, her price."""
    lists = [garment.shopping for garment in garments]
    threads = [each.thread for each in lists]
    needle, bobbin, looper = (
        _total(getattr(thread, part) for thread in threads) for part in ("needle", "bobbin", "looper")
    )
    at_once = max(thread.reels_at_once for thread in threads)
    thread = ThreadNeed(needle, bobbin, looper, threads[0].waste, at_once)
    planned = sum(each.planned_minutes for each in lists)
    cutting_minutes = _total(each.cutting_minutes for each in lists)
    return ShoppingList(lines, thread, None, (), cutting_minutes, planned, lists[0].currency, None)


def _total(amounts: Iterable[Fraction | None]) -> Fraction:
    return sum((amount for amount in amounts if amount is not None), Fraction(0))
