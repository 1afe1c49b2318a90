"""What the garment costs and what to ask for it."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from math import ceil
from typing import Literal, NamedTuple

from furbelow.s5_buy.out_of_range import OutOfRange, outside

MarginOn = Literal["price", "cost"]


class CostLine(NamedTuple):
    """One thing bought: `amount` at `price` for every `per` (mm, g or a count)."""

    name: str
    amount: Fraction
    price: Fraction
    per: Fraction = Fraction(1)

    @property
    def cost(self) -> Fraction:
        """Amount x price, not rounded."""
        return self.amount * self.price / self.per


class CostTable(NamedTuple):
    """Costs of one garment, or of one order, in the currency's unit."""

    lines: tuple[CostLine, ...]
    hours: Fraction
    hourly_rate: Fraction

    @property
    def materials(self) -> Fraction:
        """All lines together."""
        return sum((line.cost for line in self.lines), Fraction(0))

    @property
    def labour(self) -> Fraction:
        """Hours at the hourly rate."""
        return self.hours * self.hourly_rate

    @property
    def total(self) -> Fraction:
        """Materials and labour."""
        return self.materials + self.labour


def cost_table(lines: Iterable[CostLine], hours: Fraction, hourly_rate: Fraction) -> CostTable | OutOfRange:
    """The cost table. Fails: hours or an hourly rate below 0."""
    if wrong := outside("hours", hours, "h", at_least=0) or outside("hourly rate", hourly_rate, at_least=0):
        return wrong
    return CostTable(tuple(lines), hours, hourly_rate)


class PriceSuggestion(NamedTuple):
    """A price and where it comes from; `on_price` and `on_cost` are the same margin told both ways.

    The price is rounded up, so the margin kept is at least the one asked for.
    """

    cost: Fraction
    price: Fraction
    asked: Fraction
    margin_on: MarginOn

    @property
    def margin(self) -> Fraction:
        """Price less cost."""
        return self.price - self.cost

    @property
    def on_price(self) -> Fraction:
        """Margin as a share of the price, after rounding."""
        return self.margin / self.price if self.price else Fraction(0)

    @property
    def on_cost(self) -> Fraction:
        """Margin as a share of the cost, after rounding."""
        return self.margin / self.cost if self.cost else Fraction(0)


def suggest_price(
    cost: Fraction, margin: Fraction, margin_on: MarginOn, round_up_to: Fraction = Fraction(1, 100)
) -> PriceSuggestion | OutOfRange:
    """A price that leaves `margin`: of the price, cost / (1 - margin); of the cost, cost x (1 + margin).

    round_up_to: the step prices are set in, 1/100 or 1/2 of the currency's unit.
    Fails: a margin below 0; a margin on the price of 100 % and more; a step of 0 or less.
    Source: definition.
    """
    if wrong := outside("price step", round_up_to, above=0):
        return wrong
    most = 1 if margin_on == "price" else None
    if wrong := outside(f"margin on the {margin_on}", margin, "share", at_least=0, below=most):
        return wrong
    exact = cost / (1 - margin) if margin_on == "price" else cost * (1 + margin)
    return PriceSuggestion(cost, ceil(exact / round_up_to) * round_up_to, margin, margin_on)
