"""shopping.md: the list to take to the shop."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.phrasing import Phrasing
from furbelow.measure.quantity import show_fixed
from furbelow.s5_buy.shopping import Line, ShoppingList
from furbelow.s6_write.guide.material_lines import material_lines
from furbelow.s6_write.pages.markdown_page import escaped


def shopping_markdown(shopping: ShoppingList, title: str, wearer: str, say: Phrasing) -> str:
    """One tick box a material, the widths compared, the thread by its parts, hours and price."""
    told = [f"# Shopping for {escaped(title)}, {escaped(wearer)}", ""]
    for line, row in zip(shopping.lines, material_lines(shopping, say), strict=True):
        cost = f" ({row.cost})" if row.cost else ""
        told.append(f"- [ ] **{escaped(row.amount)}** {escaped(row.description)}{cost}")
        told.append(f"    - needed: {escaped(row.need)}, for {escaped(row.use)}")
        told += _offers(line, say, shopping.currency)
        if line.unit == "reels":
            thread = shopping.thread
            told.append(
                f"    - needle {say.buy(thread.needle)}, bobbin {say.buy(thread.bobbin)}, looper {say.buy(thread.looper)},"
                f" {say.share(thread.waste)} for waste; {say.count(thread.reels_at_once, 'reel')} on the machine at once"
            )
            if shopping.bobbins:
                told.append(f"    - wind {say.count(shopping.bobbins.bobbins, 'bobbin')}")
    told += ["", *_money(shopping), ""]
    return "\n".join(told)


def _offers(line: Line, say: Phrasing, currency: str) -> list[str]:
    if len(line.offers) < 2:
        return []
    told = ["    - the widths compared:"]
    for at, offer in enumerate(line.offers):
        cost = "no price" if offer.cost is None else f"{show_fixed(offer.cost, 2)} {currency}"
        chosen = ", chosen" if at == 0 else ""
        told.append(
            f"        - {say.length(offer.width)} wide: {say.buy(offer.bought)}, {cost}, {say.count(offer.joins, 'join')}{chosen}"
        )
    return told


def _money(shopping: ShoppingList) -> list[str]:
    currency = shopping.currency
    materials = sum((line.cost for line in shopping.lines if line.cost is not None), Fraction(0))
    unpriced = [line.name for line in shopping.lines if line.cost is None]
    told = [
        f"Materials: **{show_fixed(materials, 2)} {currency}**"
        + (f", without {', '.join(unpriced)}" if unpriced else "")
    ]
    told.append(f"Work: about **{show_fixed(shopping.time.hours, 1)} h**, cutting included")
    if shopping.costs and shopping.price:
        told.append(
            f"Labour: {show_fixed(shopping.costs.labour, 2)} {currency}; all together {show_fixed(shopping.costs.total, 2)} {currency}"
        )
        told.append(f"Price to ask: **{show_fixed(shopping.price.price, 2)} {currency}**, {shopping.price.explained}")
    return [f"- {line}" for line in told]
