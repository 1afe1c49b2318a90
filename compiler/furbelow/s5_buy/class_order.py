"""One order for a class or a size range: all strips of a cloth on one bolt, all that is used up bought together."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction

from furbelow.garment.message import Part
from furbelow.garment.solved import Solved, SolvedMaterial
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.s4_cut.cut import Cutting, Sheet
from furbelow.s5_buy.class_cutting import ClassCutting, Garment, Lot
from furbelow.s5_buy.offers import offered
from furbelow.s5_buy.shop_units import in_steps
from furbelow.s5_buy.shopping import Line, ShoppingList, Unit, each_once
from furbelow.s5_buy.thread import ThreadNeed, reels_to_buy


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

    lists: of each number, with the joins of the shared cutting. The hours are those of all garments.
    of_several: specs, so that no text of one stands for all.
    """

    garments: Mapping[int, Garment]
    lists: Mapping[int, ShoppingList]
    solved: Solved
    room: Workroom
    cutting: Cutting
    shopping: ShoppingList
    bought: tuple[Bought, ...]
    of_several: bool = False
    lots: tuple[Lot, ...] = ()  # what was planned together, the first of each cloth first

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


def class_order(
    garments: Mapping[int, Garment],
    shared: ClassCutting,
    solved: Solved,
    room: Workroom,
    lists: Mapping[int, ShoppingList] | None = None,
    *,
    of_several: bool = False,
) -> ClassOrder:
    """The order for all garments, under their numbers, cut as `shared` has it.

    solved: one of them, for the texts of the spec. lists: what each takes with the joins of the shared cutting; without
    them as each alone. of_several: garments of several specs, so that the use of a material can't be told for all.
    """
    lists = lists or {number: garment.shopping for number, garment in garments.items()}
    bought: list[Bought] = []
    for material, lines in shared.lines:
        name = material.material.name
        if name not in shared.cutting.sheets:
            now = {number: _line_now(lists[number], line) for number, line in lines.items()}
            bought.append(_together(material, now, lines, lists))
            continue
        joins = sum(garments[number].cutting.sheet(line.name).plan.joins for number, line in lines.items())
        bought.append(_beside(_cloth_line(material, shared.cutting.sheets[name], lines.values()), lines, joins))
    if of_several:
        bought = [each._replace(line=each.line._replace(placement=())) for each in bought]
    materials = {each.line.name: each.line.material for each in bought}
    return ClassOrder(
        garments,
        lists,
        solved._replace(materials={**solved.materials, **materials}),
        room,
        shared.cutting,
        _list(lists.values(), tuple(each.line for each in bought)),
        tuple(bought),
        of_several,
        shared.lots,
    )


def _line_now(shopping: ShoppingList, alone: Line) -> Line:
    """The same line with the joins of the shared cutting."""
    return next((line for line in shopping.lines if line.name == alone.name), alone)


def _cloth_line(material: SolvedMaterial, sheets: tuple[Sheet, ...], lines: Iterable[Line]) -> Line:
    offers = tuple(offered(sheet) for sheet in sheets)
    best = offers[0]
    return Line(material, best.need, best.bought, Unit.LENGTH, best.cost, _placement(lines), offers)


def _together(
    material: SolvedMaterial,
    lines: Mapping[int, Line],
    alone: Mapping[int, Line],
    lists: Mapping[int, ShoppingList],
) -> Bought:
    """What is used up, or cut apart: the needs added, then rounded up to what the shop sells once instead of for each."""
    one = next(iter(lines.values()))
    need = _total(line.need for line in lines.values())
    sold = material.amounts.get("sold_by")
    if one.unit is Unit.REELS:
        at_once = max(lists[number].thread.reels_at_once for number in lines)
        bought = Fraction(reels_to_buy(need, one.reel, at_once).reels)
    else:
        bought = in_steps(need, sold, one.unit.dims)
    # A price is for so much of what is bought, so any line that buys some tells what one more would cost.
    priced = next((line for line in lines.values() if line.cost is not None and line.bought), None)
    cost = one.cost if priced is None or priced.cost is None else priced.cost / priced.bought * bought
    return _beside(
        Line(material, need, bought, one.unit, cost, _placement(lines.values()), fibres=one.fibres, reel=one.reel),
        alone,
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


def _list(of_each: Iterable[ShoppingList], lines: tuple[Line, ...]) -> ShoppingList:
    """All garments as one list, without what belongs to one maker's own work: steps, bobbins, her price."""
    lists = list(of_each)
    threads = [each.thread for each in lists]
    needle, bobbin, looper = (
        _total(getattr(thread, part) for thread in threads) for part in ("needle", "bobbin", "looper")
    )
    at_once = max(thread.reels_at_once for thread in threads)
    on_looper = max(thread.on_looper for thread in threads)
    thread = ThreadNeed(needle, bobbin, looper, threads[0].waste, at_once, on_looper)
    planned = sum(each.planned_minutes for each in lists)
    cutting_minutes = _total(each.cutting_minutes for each in lists)
    return ShoppingList(lines, thread, None, (), cutting_minutes, planned, lists[0].currency, None)


def _total(amounts: Iterable[Fraction | None]) -> Fraction:
    return sum((amount for amount in amounts if amount is not None), Fraction(0))
