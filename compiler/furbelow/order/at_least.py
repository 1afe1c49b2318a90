"""What a garment takes at least, known without its cutting plan."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from furbelow.diagnose.fault import Staged
from furbelow.garment.solved import Solved
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import Quantity, mm
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting, Sheet, cut
from furbelow.s4_cut.plan import CuttingPlan, How
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip
from furbelow.s5_buy.amounts import COST, amounts
from furbelow.s5_buy.buy import buy
from furbelow.s5_buy.offers import offered


def at_least(rehearsal: Rehearsal) -> Staged[Mapping[str, Quantity]]:
    """No plan takes less than this: every cloth by its area alone, without a join, a cut or a scrap.

    Where a cloth is offered in several widths, its length is that of the widest and the cost that of the cheapest.
    FB501 for a piece that no offered width holds.
    """
    by_area = cut(rehearsal.solved, rehearsal.run.room, _by_area)
    if by_area.value is None:
        return Staged(None, by_area.faults)
    sheets = by_area.value.sheets
    shortest = {cloth: min(offered, key=lambda sheet: sheet.plan.bolt_length) for cloth, offered in sheets.items()}
    cheapest = {cloth: min(offered, key=lambda sheet: sheet.plan.cost) for cloth, offered in sheets.items()}
    bought = buy(rehearsal, _cutting(shortest))
    for_less = bought if cheapest == shortest else buy(rehearsal, _cutting(cheapest))
    if bought.value is None or for_less.value is None:
        return Staged(None, (*bought.faults, *for_less.faults))
    return Staged({**amounts(bought.value), COST: amounts(for_less.value)[COST]})


def cloth_at_least(found: Solved, room: Workroom) -> Staged[tuple[Mapping[str, Quantity], Fraction]]:
    """What `at_least` says of each cloth, and what all cloth costs at least: without rehearsing a step."""
    by_area = cut(found, room, _by_area)
    if by_area.value is None:
        return Staged(None, by_area.faults)
    offers = {cloth: [offered(sheet) for sheet in sheets] for cloth, sheets in by_area.value.sheets.items()}
    needs = {cloth: mm(min(offer.need for offer in each)) for cloth, each in offers.items()}
    cost = sum((min(offer.cost or Fraction(0) for offer in each) for each in offers.values()), Fraction(0))
    return Staged((needs, cost))


def _by_area(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan:
    """A plan that wastes nothing, whether or not there is one."""
    laid = sum((strip.length * strip.depth * strip.count for strip in strips), Fraction(0)) / bolt.usable_width
    bought = laid / (1 - bolt.shrinkage)
    cost = bought * prices.cloth_per_mm
    return CuttingPlan((), bolt.usable_width, bolt.folded, laid, bought, 0, 0, cost, cost, False, How.BY_AREA)


def _cutting(sheets: Mapping[str, Sheet]) -> Cutting:
    return Cutting({cloth: (sheet,) for cloth, sheet in sheets.items()}, {})
