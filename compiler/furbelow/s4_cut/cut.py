"""Plan the cutting of every cloth of a garment, in each width it is offered in."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction
from functools import lru_cache

from furbelow.diagnose.fault import Fault, Label, Staged
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved, SolvedMaterial
from furbelow.garment.spec import OnSelvedge
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.s4_cut.plan import CuttingPlan
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip
from furbelow.s4_cut.uncuttable import laid_on, offers_of, strips_of

# A cloth without a price is planned as if it cost one unit a metre: least cloth, few joins.
NO_PRICE = Fraction(1, 1000)


class Sheet(NamedTuple):
    """One cloth as it will be cut. `width` is that of the shop, edge to edge; price is per mm, None if not known."""

    material: SolvedMaterial
    width: Fraction
    price: Fraction | None
    strips: tuple[Strip, ...]
    bolt: Bolt
    plan: CuttingPlan


class Cutting(NamedTuple):
    """The sheets of each cloth, the cheapest offered width first, and the number of each piece on drawings and tags.

    selvedges: which edge of a piece is the selvedge of its cloth, for those that have one there.
    """

    sheets: Mapping[str, tuple[Sheet, ...]]
    marks: Mapping[str, str]
    selvedges: Mapping[str, OnSelvedge] = {}

    def sheet(self, cloth: str) -> Sheet:
        """The sheet to cut from."""
        return self.sheets[cloth][0]

    @property
    def lengths(self) -> Mapping[str, tuple[tuple[Fraction, ...], ...]]:
        """How each copy of each piece is cut: the lengths of its segments in order, seams included."""
        found: dict[str, dict[int, dict[int, Fraction]]] = {}
        for sheets in self.sheets.values():
            for section in sheets[0].plan.sections:
                for lane in section.lanes:
                    for each in lane.segments:
                        length = lane.depth if each.turned else each.length
                        found.setdefault(each.strip, {}).setdefault(each.copy, {})[each.part] = length
                for panel in section.panels:
                    length = panel.width if panel.turned else panel.length
                    found.setdefault(panel.strip, {})[panel.copy] = {1: length}
        return {
            piece: tuple(tuple(parts[part] for part in sorted(parts)) for _, parts in sorted(copies.items()))
            for piece, copies in found.items()
        }

    @property
    def joins(self) -> Mapping[str, int]:
        """How many joins each piece has, over all its copies."""
        joins: dict[str, int] = {}
        for sheets in self.sheets.values():
            segments = {
                (piece.strip, piece.copy): piece.parts - 1
                for section in sheets[0].plan.sections
                for piece in section.pieces
            }
            for (piece, _), count in segments.items():
                joins[piece] = joins.get(piece, 0) + count
        return joins


# The plan for a problem; None where no plan keeps to the limits of the bolt.
Planner = Callable[[tuple[Strip, ...], Bolt, CutPrices], CuttingPlan | None]


@lru_cache(maxsize=64)  # in a class several have the same pieces of a cloth
def planned_afresh(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan | None:
    """The cheapest plan with no more joins and sections than the bolt allows."""
    # The search is heavy to load, and not needed where a plan was kept.
    from furbelow.s4_cut.lanes.limits import Limits
    from furbelow.s4_cut.planner import best_plan

    return best_plan(strips, bolt, prices, Limits(bolt.most_joins, bolt.most_sections))


def cut_prices(price: Fraction | None, room: Workroom) -> CutPrices:
    """What cutting costs: the cloth at its price per mm, the work as the workroom values it."""
    return CutPrices(price or NO_PRICE, room.join_price, room.setup_price, room.cut_price)


def cut(solved: Solved, room: Workroom, planner: Planner | None = None) -> Staged[Cutting]:
    """A plan for each cloth and each width it is offered in.

    planner: `planned_afresh` unless another is given.
    Fails: FB501 for a piece that no offered width holds, FB502 where no plan keeps to the workroom's limits.
    """
    planner = planner or planned_afresh
    sheets: dict[str, tuple[Sheet, ...]] = {}
    faults: list[Fault] = []
    for name, material in solved.materials.items():
        strips = strips_of(solved, material)
        if not strips:
            continue
        planned: list[Sheet] = []
        refused: list[Fault] = []
        for width, price in offers_of(solved, material):
            bolt, wrong = laid_on(solved, room, material, width, strips)
            if wrong:
                refused += wrong
                continue
            prices = cut_prices(price, room)
            plan = planner(strips, bolt, prices)
            if plan is None:
                refused.append(_beyond_limits(solved, room, material, strips, bolt, prices))
            else:
                planned.append(Sheet(material, width, price, strips, bolt, plan))
        if planned:
            sheets[name] = tuple(sorted(planned, key=lambda sheet: sheet.plan.cost))
        else:
            faults += refused
    marks = {piece: str(number) for number, piece in enumerate(solved.pieces, 1)}
    selvedges = {name: each.piece.selvedge for name, each in solved.pieces.items() if each.piece.selvedge}
    return Staged(None if faults else Cutting(sheets, marks, selvedges), tuple(faults))


def _beyond_limits(
    solved: Solved,
    room: Workroom,
    material: SolvedMaterial,
    strips: tuple[Strip, ...],
    bolt: Bolt,
    prices: CutPrices,
) -> Fault:
    from furbelow.s4_cut.planner import plan_cutting
    from furbelow.s4_cut.trade_off import trade_off

    say, name = Phrasing(solved, room), material.material.name
    limits = (
        (bolt.most_joins, "join", "most joins"),
        (bolt.most_sections, "section", "most sections"),
    )

    def beyond(plan: CuttingPlan) -> list[tuple[int, int, str, str]]:
        """How many joins and sections it has, of those that are too many, and how many are allowed."""
        needs = (plan.joins, plan.setups)
        return [
            (need, most, word, key)
            for need, (most, word, key) in zip(needs, limits, strict=True)
            if most is not None and need > most
        ]

    possible = trade_off(strips, bolt, prices) or (plan_cutting(strips, bolt, prices),)
    nearest = min(possible, key=lambda plan: (sum(need - most for need, most, _, _ in beyond(plan)), plan.cost))
    too_many = " and ".join(
        f"{say.count(need, word)} where {most} may be, {need - most} too many"
        for need, most, word, _ in beyond(nearest)
    )
    ways = "; ".join(
        f"{say.count(plan.joins, 'join')} in {say.count(plan.setups, 'section')}: {say.buy(plan.bolt_length)}"
        for plan in possible
    )
    return Fault(
        "FB502",
        f"`{name}` can't be cut within the limits: the nearest plan has {too_many}",
        Label(material.material.span, f"{say.length(bolt.usable_width)} wide to use"),
        notes=(f"it can be cut with {ways}",),
        help="allow " + " and ".join(f"`{key}: {need}`" for need, _, _, key in beyond(nearest)),
    )
