"""From what the work needs to what a shop sells: shrinkage, safety, whole units, the cheapest offer."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from fractions import Fraction
from math import ceil
from typing import NamedTuple

from furbelow.measure.units import UNITS
from furbelow.s5_buy.out_of_range import OutOfRange, outside

_YARD = UNITS["yd"].factor
_INCH = UNITS["in"].factor


class SoldBy(NamedTuple):
    """How a shop sells: in whole multiples of `step`, no less than `least`; mm, g or a count."""

    step: Fraction
    least: Fraction = Fraction(0)


BY_10_CM = SoldBy(Fraction(100))
BY_HALF_METRE = SoldBy(Fraction(500))
BY_METRE = SoldBy(Fraction(1000))
BY_EIGHTH_YARD = SoldBy(_YARD / 8)
BY_QUARTER_YARD = SoldBy(_YARD / 4)
BY_PIECE = SoldBy(Fraction(1))


def packets_of(contents: Fraction) -> SoldBy:
    """Sold by the packet, card or reel of so much: 10 buttons, 5 m of tape, 100 m of thread."""
    return SoldBy(contents)


class FatSize(NamedTuple):
    """A rectangle cut off the bolt and folded for sale: mm along the bolt by mm across it."""

    name: str
    along: Fraction
    across: Fraction

    def holds(self, length: Fraction, width: Fraction, turning: bool = True) -> bool:
        """Whether one piece of that size can be cut from it; `turning` allows the other way round."""
        straight = length <= self.along and width <= self.across
        return straight or (turning and length <= self.across and width <= self.along)


FAT_SIZES: tuple[FatSize, ...] = (
    FatSize("fat quarter (yard)", 18 * _INCH, 22 * _INCH),
    FatSize("fat eighth (yard)", 9 * _INCH, 22 * _INCH),
    FatSize("fat quarter (metre)", Fraction(500), Fraction(550)),
    FatSize("fat eighth (metre)", Fraction(250), Fraction(550)),
)
"""Common practice, no source: half a width of cloth 44 in or 110 cm wide. Shops differ: set your own."""


def rounded_up(need: Fraction, sold: SoldBy) -> Fraction:
    """The least amount on sale that covers `need`; nothing needed, nothing bought."""
    if need < 0 or sold.step <= 0:
        raise ValueError("a need can't be below 0, nor a selling step be 0")
    if need == 0:
        return Fraction(0)
    return ceil(max(need, sold.least) / sold.step) * sold.step


def before_shrinkage(need: Fraction, shrinkage: Fraction) -> Fraction | OutOfRange:
    """What to buy so that `need` is left after washing: need / (1 - shrinkage).

    Fails: a shrinkage below 0 or of 100 % and more. Source: definition.
    """
    return outside("shrinkage", shrinkage, "share", at_least=0, below=1) or need / (1 - shrinkage)


def with_safety(need: Fraction, share: Fraction) -> Fraction | OutOfRange:
    """`need` and a safety share on top of it. Fails: a share below 0."""
    return outside("safety share", share, "share", at_least=0) or need * (1 + share)


def widths_needed(length: Fraction, width: Fraction) -> int | OutOfRange:
    """How many whole widths of cloth, seamed side by side without allowances, reach `length`.

    Fails: a cloth without width.
    """
    return outside("cloth width", width, "mm", above=0) or ceil(length / width)


def gsm_from_ounces(ounces_per_square_yard: Fraction) -> Fraction:
    """Cloth weight in g/m2 from oz/yd2. Definition of ounce and yard."""
    per_mm2 = ounces_per_square_yard * UNITS["oz"].factor / _YARD**2
    return per_mm2 / UNITS["gsm"].factor


class Offer(NamedTuple):
    """One thing on sale: cloth of some width (mm), `price` for every `price_per` (mm, g or a count)."""

    name: str
    width: Fraction
    price: Fraction
    price_per: Fraction
    sold: SoldBy


class OfferRow(NamedTuple):
    """One line of the comparison; need, bought and left are in the offer's own measure.

    need: what the work takes, shrinkage and safety included; None when this offer can't do the job.
    bought: need rounded up to what is sold; cost: its price.
    """

    offer: Offer
    need: Fraction | None
    bought: Fraction | None
    cost: Fraction | None

    @property
    def left(self) -> Fraction | None:
        """Bought and not needed."""
        return None if self.bought is None or self.need is None else self.bought - self.need


class OfferChoice(NamedTuple):
    """The cheapest offer that works, None when none does, and the table it was chosen from."""

    best: OfferRow | None
    rows: tuple[OfferRow, ...]


def cheapest_offer(
    offers: Iterable[Offer],
    needed: Callable[[Offer], Fraction | None] | Mapping[Fraction, Fraction],
    shrinkage: Fraction = Fraction(0),
    safety: Fraction = Fraction(0),
) -> OfferChoice | OutOfRange:
    """The offer that costs least after shrinkage, safety and rounding to shop units; the table keeps all.

    needed: what the work takes, washed and without safety: a function of the offer (None: can't be made from
    it), or a table by width in which a width that can't do is missing.
    Equal cost: the one that leaves least, then the one named first.
    Fails: a shrinkage or safety share out of range.
    """
    rows: list[OfferRow] = []
    for offer in offers:
        if offer.price_per <= 0:
            raise ValueError("a price is for more than 0")
        washed = needed(offer) if callable(needed) else needed.get(offer.width)
        if washed is None:
            rows.append(OfferRow(offer, None, None, None))
            continue
        unwashed = before_shrinkage(washed, shrinkage)
        if isinstance(unwashed, OutOfRange):
            return unwashed
        need = with_safety(unwashed, safety)
        if isinstance(need, OutOfRange):
            return need
        bought = rounded_up(need, offer.sold)
        rows.append(OfferRow(offer, need, bought, bought * offer.price / offer.price_per))
    working = [row for row in rows if row.cost is not None]
    return OfferChoice(min(working, key=_cost_then_leftover, default=None), tuple(rows))


def _cost_then_leftover(row: OfferRow) -> tuple[Fraction, Fraction]:
    return row.cost or Fraction(0), row.left or Fraction(0)
