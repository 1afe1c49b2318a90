"""One cutting for a class or a size range: all strips of a cloth on one bolt, and what is planned already stays as it is.

Garments are known by their number in the class, never by a name. A strip, and the number of its piece, is marked with
the number before it: `3-2` is piece 2 of number 3. What is planned together is a lot; a later lot takes only what no earlier
one cuts, so nobody's cut cloth is planned anew when somebody comes, leaves or is measured again.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from fractions import Fraction

from furbelow.garment.solved import SolvedMaterial, SolvedPiece
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import Quantity
from furbelow.measure.units import LENGTH
from furbelow.named import NamedTuple
from furbelow.s4_cut.cut import NO_PRICE, Cutting, Sheet
from furbelow.s4_cut.lanes.pool import pooled
from furbelow.s4_cut.plan import CuttingPlan, How, Section
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip, on_the_table, ways_to_lay
from furbelow.s5_buy.offers import cheapest_first
from furbelow.s5_buy.shopping import Line, ShoppingList

# More garments than this are planned in lots, lot after lot on the same bolt: the work grows with the class, not faster.
LOT = 30
# A table of a classroom, where the workroom names none: no section is longer, or its tapes have to be laid again and
# again. House rule, maker to confirm.
CLASSROOM_TABLE = Fraction(3000)

Planner = Callable[[tuple[Strip, ...], Bolt, CutPrices], CuttingPlan]
BEFORE = "-"  # between whose a piece is and its number: 5-2
_Offer = tuple[Fraction, Fraction | None, Bolt]  # width, price, bolt
SPARE = " spare"  # of a strip that is planned and nobody's any more; a piece's name has no space


class Garment(NamedTuple):
    """One garment of the order, planned and counted on its own."""

    pieces: Mapping[str, SolvedPiece]
    cutting: Cutting
    shopping: ShoppingList


class Lot(NamedTuple):
    """What of a cloth was planned together. strips, marks: under their marked names; all of them are cut by `plan`.

    width: of the cloth in the shop, edge to edge.
    """

    cloth: str
    width: Fraction
    bolt: Bolt
    prices: CutPrices
    strips: tuple[Strip, ...]
    marks: Mapping[str, str]
    plan: CuttingPlan


class ClassCutting(NamedTuple):
    """The cutting for all, in lots. lines: whose cloth each is, with the line of each alone, in the order of the spec."""

    cutting: Cutting
    lots: tuple[Lot, ...]
    lines: tuple[tuple[SolvedMaterial, Mapping[int, Line]], ...]


def class_cutting(
    garments: Mapping[int, Garment], room: Workroom, kept: Sequence[Lot] = (), planner: Planner = pooled
) -> ClassCutting:
    """The cutting for all garments, under their numbers; there is at least one.

    Materials of one name that differ in an amount, such as an elastic whose width follows a choice, are bought apart:
    the second kind is called `elastic 2`. A cloth comes off one bolt, in the offered width that costs least of those
    that serve everybody; where none does, off one bolt for each width that was chosen alone.
    kept: lots of an earlier run. One of a bolt that is no longer offered is left out.
    """
    marks = {
        marked(number, piece): f"{number}{BEFORE}{mark}"
        for number, garment in garments.items()
        for piece, mark in garment.cutting.marks.items()
    }
    selvedges = {
        marked(number, piece): edge
        for number, garment in garments.items()
        for piece, edge in garment.cutting.selvedges.items()
    }
    sheets: dict[str, tuple[Sheet, ...]] = {}
    lots: list[Lot] = []
    bought: list[tuple[SolvedMaterial, Mapping[int, Line]]] = []
    for name, lines in _named(_alike(garments)):
        material = renamed(next(iter(lines.values())).material, name)
        bought.append((material, lines))
        if not any(line.offers for line in lines.values()):
            continue
        own = {number: garments[number].cutting.sheets[lines[number].name] for number in lines}
        made = [
            _sheet(material, offer, own, marks, room, [lot for lot in kept if lot.cloth == name], planner)
            for offer in _offers(own, [lot for lot in kept if lot.cloth == name])
        ]
        best = cheapest_first(Cutting({name: tuple(sheet for sheet, _ in made)}, {})).sheets[name]
        sheets[name] = best
        chosen = next(lots for sheet, lots in made if sheet is best[0])
        lots += chosen
        planned = {f"{strip}{SPARE}": f"{mark}*" for lot in chosen for strip, mark in lot.marks.items()}
        marks |= {strip.name: planned[strip.name] for strip in best[0].strips if strip.name in planned}
    return ClassCutting(Cutting(sheets, marks, selvedges), tuple(lots), tuple(bought))


def cut_apart(garments: Mapping[int, Garment]) -> ClassCutting:
    """Nothing is cut together: each garment cuts by its own plan. lines: as in `class_cutting`, each width by itself."""
    bought = [
        (renamed(next(iter(lines.values())).material, name), lines)
        for name, lines in _named(_alike(garments, apart=True))
    ]
    return ClassCutting(Cutting({}, {}), (), tuple(bought))


def marked(number: int, piece: str) -> str:
    """The name that a piece of one garment has in the order's cutting."""
    # A piece's name in the spec has no space, so this is no other piece's name.
    return f"{number} {piece}"


# --- which materials are alike ---


def _alike(garments: Mapping[int, Garment], *, apart: bool = False) -> list[dict[int, Line]]:
    """The lines of like material, by number, in the order of the spec; where there are several, what they say of it counts.

    apart: cloth of each chosen width by itself, for nobody can cut from another's.
    """
    kinds: dict[object, dict[int, Line]] = {}
    for number, garment in garments.items():
        for line in garment.shopping.lines:
            amounts, told = line.material.amounts, line.material.material
            words = (told.kind, told.fibre, told.about, told.colour, told.supplier, told.code, told.one_way)
            kinds.setdefault((line.name, *words, *((key, amounts[key]) for key in sorted(amounts))), {})[number] = line
    kinds_apart: list[dict[int, Line]] = []
    for lines in kinds.values():
        of_cloth = any(line.offers for line in lines.values())
        kinds_apart += _by_bolt(lines, garments, apart=apart) if of_cloth else [lines]
    written = list(dict.fromkeys(line.name for garment in garments.values() for line in garment.shopping.lines))
    return sorted(kinds_apart, key=lambda lines: written.index(next(iter(lines.values())).name))


def _by_bolt(lines: dict[int, Line], garments: Mapping[int, Garment], *, apart: bool) -> list[dict[int, Line]]:
    """All lines of a cloth, or those of each chosen width apart where no width serves everybody."""
    sheets = {number: garments[number].cutting.sheets[line.name] for number, line in lines.items()}
    if not apart and _for_all(sheets):
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


def renamed(material: SolvedMaterial, name: str) -> SolvedMaterial:
    """The same cloth under another name."""
    return material._replace(material=material.material._replace(name=name))


# --- one cloth ---


def _offer(sheet: Sheet) -> _Offer:
    """The cloth as it is offered: what stays spare across hangs on the pieces of each body."""
    return sheet.width, sheet.price, _as_offered(sheet.bolt, sheet.width)


def _as_offered(bolt: Bolt, width: Fraction) -> Bolt:
    return bolt._replace(usable_width=width, spared=Fraction(0), longest_section=None)


def _for_all(sheets: Mapping[int, tuple[Sheet, ...]]) -> list[_Offer]:
    """The offers from which everybody can cut."""
    first, *others = ([_offer(sheet) for sheet in each] for each in sheets.values())
    return [offer for offer in first if all(offer in each for each in others)]


def _offers(sheets: Mapping[int, tuple[Sheet, ...]], kept: Sequence[Lot]) -> list[_Offer]:
    """Those from which everybody can cut; where some of it is planned, the one of that plan, for its cloth is bought."""
    offers = _for_all(sheets)
    planned = [offer for offer in offers if any(_is_of(lot, offer) for lot in kept)]
    return planned[:1] or offers


def _is_of(lot: Lot, offer: _Offer) -> bool:
    """Whether the lot is of that cloth."""
    width, _, bolt = offer
    return lot.width == width and _as_offered(lot.bolt, width) == bolt


def _sheet(
    material: SolvedMaterial,
    offer: _Offer,
    sheets: Mapping[int, tuple[Sheet, ...]],
    marks: Mapping[str, str],
    room: Workroom,
    kept: Sequence[Lot],
    planner: Planner,
) -> tuple[Sheet, list[Lot]]:
    """One sheet for all numbers in one width, and the lots that it is planned in."""
    width, price, _ = offer
    name = material.material.name
    spare = material.amounts.get("spare")
    if spare is not None and spare.dims == LENGTH:
        # Each garment keeps the length that the spec lays by for it; a share grows by itself.
        material = material._replace(
            amounts={**material.amounts, "spare": Quantity(spare.value * len(sheets), spare.dims)}
        )
    own = {number: next(sheet for sheet in each if _offer(sheet) == offer) for number, each in sheets.items()}
    plain = max((sheet.bolt for sheet in own.values()), key=lambda each: each.usable_width)
    prices = CutPrices(price or NO_PRICE, room.join_price, room.setup_price, room.cut_price)
    wanted = {number: _strips(number, sheet) for number, sheet in own.items()}
    lots = [lot for lot in kept if _is_of(lot, offer)]
    planned: set[Strip] = set()
    plans, left_over = [], []
    for lot in lots:
        of_lot = set(lot.strips)
        stays = {strip for strips in wanted.values() for strip in strips if strip in of_lot} - planned
        planned |= stays
        left_over += [_spared(strip) for strip in lot.strips if strip not in stays]
        plans.append(_marked_spare(lot.plan, {strip.name for strip in stays}))
    to_plan = {number: [each for each in strips if each not in planned] for number, strips in wanted.items()}
    to_plan = {number: strips for number, strips in to_plan.items() if strips}
    if to_plan:
        numbers = list(to_plan)
        to_lay = tuple(strip for strips in to_plan.values() for strip in strips)
        bolt = on_the_table(plain, to_lay, room.table_length or CLASSROOM_TABLE)
        each_lot = [
            _best(
                {n: to_plan[n] for n in numbers[at : at + LOT]},
                {n: own[n].plan for n in numbers[at : at + LOT] if to_plan[n] == wanted[n]},
                bolt,
                prices,
                planner,
            )
            for at in range(0, len(numbers), LOT)
        ]
        # Lot after lot, so that the piles of one are whole before those of the next are begun.
        plan = each_lot[0] if len(each_lot) == 1 else _in_turn(each_lot, [s for one in each_lot for s in one.sections])
        strips = tuple(strip for each in to_plan.values() for strip in each)
        lots.append(Lot(name, width, bolt, prices, strips, {each.name: marks[each.name] for each in strips}, plan))
        plans.append(plan)
    strips = tuple(strip for each in wanted.values() for strip in each)
    bolt = plain._replace(longest_section=max(lot.bolt.longest_section or Fraction(0) for lot in lots))
    plan = plans[0] if len(plans) == 1 else _in_turn(plans, [s for plan in plans for s in plan.sections])
    return Sheet(material, width, price, (*strips, *left_over), bolt, plan), lots


def _strips(number: int, sheet: Sheet) -> list[Strip]:
    return [strip._replace(name=marked(number, strip.name), wearer=str(number)) for strip in sheet.strips]


def _spared(strip: Strip) -> Strip:
    return strip._replace(name=f"{strip.name}{SPARE}", wearer=None)


def _marked_spare(plan: CuttingPlan, stays: set[str]) -> CuttingPlan:
    """The plan with the pieces that nobody needs any more marked as such."""

    def name(strip: str) -> str:
        return strip if strip in stays else f"{strip}{SPARE}"

    return _renamed_in(plan, name, lambda strip, wearer: wearer if strip in stays else None)


def _best(
    wanted: Mapping[int, Sequence[Strip]],
    alone: Mapping[int, CuttingPlan],
    bolt: Bolt,
    prices: CutPrices,
    planner: Planner,
) -> CuttingPlan:
    """The shared plan, or the own plans after each other where they cost no more.

    alone: the own plans of those of whom nothing is planned yet.
    """
    strips = _one_way(tuple(strip for each in wanted.values() for strip in each), bolt)
    own = [_of_number(number, plan) for number, plan in alone.items()] if len(alone) == len(wanted) else []
    fit = all(section.length <= (bolt.longest_section or section.length) for plan in own for section in plan.sections)
    if own and (strips is None or (len(own) == 1 and fit)):
        return _after_each_other(own)
    # Where the free ones can't agree, each cloth lies as the first of them may.
    shared = planner(strips or tuple(strip for each in wanted.values() for strip in each), bolt, prices)
    together = _after_each_other(own) if own and fit else None
    return shared if together is None or shared.cost < together.cost else together


def _one_way(strips: tuple[Strip, ...], bolt: Bolt) -> tuple[Strip, ...] | None:
    """On one-way cloth the grain is settled for all that are free to lie either way; None where they can't agree."""
    free = [strip for strip in strips if bolt.one_way and strip.grain == "free"]
    if all("along" in ways_to_lay(strip, bolt) for strip in free):
        return tuple(strip._replace(grain="along") if strip in free else strip for strip in strips)
    if all(set(ways_to_lay(strip, bolt)) - {"along"} for strip in free):
        return tuple(strip._replace(grain="across") if strip in free else strip for strip in strips)
    return None


def _of_number(number: int, plan: CuttingPlan) -> CuttingPlan:
    """The plan with every segment marked with its wearer's number."""
    return _renamed_in(plan, lambda strip: marked(number, strip), lambda strip, wearer: str(number))


def _renamed_in(
    plan: CuttingPlan, name: Callable[[str], str], whose: Callable[[str, str | None], str | None]
) -> CuttingPlan:
    sections = tuple(
        section._replace(
            lanes=tuple(
                lane._replace(
                    segments=tuple(
                        each._replace(strip=name(each.strip), wearer=whose(each.strip, each.wearer))
                        for each in lane.segments
                    ),
                )
                for lane in section.lanes
            ),
            panels=tuple(
                each._replace(strip=name(each.strip), wearer=whose(each.strip, each.wearer)) for each in section.panels
            ),
        )
        for section in plan.sections
    )
    return plan._replace(sections=sections)


def _after_each_other(plans: Sequence[CuttingPlan]) -> CuttingPlan:
    """All sections of the plans on one bolt, longest first; the bound holds for plans that part the work likewise."""
    if len(plans) == 1:
        return plans[0]
    sections = [section for plan in plans for section in plan.sections]
    return _in_turn(plans, sorted(sections, key=lambda each: (each.across, -each.length)))


def _in_turn(plans: Sequence[CuttingPlan], sections: Iterable[Section]) -> CuttingPlan:
    """The plans as one, with its sections in this order."""
    placed, start = [], Fraction(0)
    for section in sections:
        placed.append(section._replace(start=start))
        start += section.length
    cost, bound = (sum((getattr(plan, name) for plan in plans), Fraction(0)) for name in ("cost", "bound"))
    return plans[0]._replace(
        usable_width=max(plan.usable_width for plan in plans),
        sections=tuple(placed),
        laid_length=start,
        bolt_length=sum((plan.bolt_length for plan in plans), Fraction(0)),
        joins=sum(plan.joins for plan in plans),
        cuts=sum(plan.cuts for plan in plans),
        cost=cost,
        bound=bound,
        proven=cost == bound,
        how=How.AFTER_EACH_OTHER,
    )
