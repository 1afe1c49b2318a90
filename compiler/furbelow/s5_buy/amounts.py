"""What a garment takes, by name: each material, `cost`, `hours`."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from furbelow.garment.spec import Spec
from furbelow.measure.quantity import Quantity, money, number
from furbelow.s5_buy.shopping import Line, ShoppingList

COST, HOURS = "cost", "hours"


def amount_names(spec: Spec) -> tuple[str, ...]:
    """Every name that `amounts` may give."""
    return (*spec.materials, COST, HOURS)


def amounts(shopping: ShoppingList) -> Mapping[str, Quantity]:
    """Materials as they are needed, before the shop rounds them; the cost of what is bought, without labour; hours.

    A material in metres is a length, starch a volume, dye a weight, thread a length. Nothing for what is not used.
    """
    found = {line.name: _need(line) for line in shopping.lines}
    found[COST] = money(sum((line.cost for line in shopping.lines if line.cost), Fraction(0)), shopping.currency)
    found[HOURS] = number(shopping.hours)
    return found


def _need(line: Line) -> Quantity:
    return Quantity(line.need, line.unit.dims)
