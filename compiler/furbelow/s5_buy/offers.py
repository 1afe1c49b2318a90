"""The widths a cloth is offered in, compared by what they cost when bought in the shop's steps."""

from __future__ import annotations

from fractions import Fraction

from furbelow.measure.units import LENGTH
from furbelow.named import NamedTuple
from furbelow.s4_cut.cut import NO_PRICE, Cutting, Sheet
from furbelow.s5_buy.shop_units import in_steps, with_spare


class Offered(NamedTuple):
    """One width: what its plan needs with a straight end and the spare, what to buy, and its cost (None without a price). In mm."""

    width: Fraction
    need: Fraction
    bought: Fraction
    cost: Fraction | None
    joins: int


def offered(sheet: Sheet) -> Offered:
    """What this width takes from the shop."""
    amounts = sheet.material.amounts
    need = with_spare(sheet.plan.bolt_length + sheet.bolt.squared, amounts.get("spare"))
    bought = in_steps(need, amounts.get("sold_by"), LENGTH)
    return Offered(sheet.width, need, bought, None if sheet.price is None else sheet.price * bought, sheet.plan.joins)


def cheapest_first(cutting: Cutting) -> Cutting:
    """The same sheets with the one that costs least first: cloth as sold, and joins and set-ups as the plan prices them."""
    sheets = {cloth: tuple(sorted(each, key=_cost_as_sold)) for cloth, each in cutting.sheets.items()}
    return cutting._replace(sheets=sheets)


def _cost_as_sold(sheet: Sheet) -> Fraction:
    price = sheet.price or NO_PRICE
    return sheet.plan.cost + price * (offered(sheet).bought - sheet.plan.bolt_length)
