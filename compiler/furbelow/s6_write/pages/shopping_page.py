"""shopping.md: the list to take to the shop."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.garment.message import Length, Money, Number, Share, Supply, Things, Value, flag
from furbelow.garment.shop_step import SOLD_BY, is_usual
from furbelow.s5_buy.shopping import Line, ShoppingList
from furbelow.s6_write.guide.material_lines import described, material_lines
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.pages.markdown_page import escaped
from furbelow.s6_write.words.words import Words


def shopping_markdown(shopping: ShoppingList, title: str, whose: str, words: Words) -> str:
    """One tick box a material, the widths compared, the thread by its parts, hours and price."""
    words.read("shopping")
    told = [f"# {escaped(words.text('shopping-title', {'title': title, 'whose': whose}))}", ""]
    for line, row in zip(shopping.lines, material_lines(shopping, words), strict=True):
        cost = f" ({row.cost})" if row.cost else ""
        told.append(f"- [ ] **{escaped(row.amount)}** {escaped(described(line, words))}{cost}")
        told.append(f"    - {escaped(words.text('shopping-needed', {'amount': row.need, 'use': row.use}))}")
        told += _offers(line, words, shopping.currency)
        told += _thread(shopping, words) if line.unit == "reels" else []
    told += _cut_to(shopping, words)
    told += ["", *(f"- {line}" for line in _money(shopping, words)), ""]
    return "\n".join(told)


def _offers(line: Line, words: Words, currency: str) -> list[str]:
    if len(line.offers) < 2:
        return []
    told = [f"    - {words.text('shopping-widths')}"]
    for at, offer in enumerate(line.offers):
        values: dict[str, Value | str] = {
            "width": Length(offer.width),
            "amount": Length(offer.bought, "buy"),
            "cost": words.text("shopping-no-price") if offer.cost is None else Money(offer.cost, currency),
            "joins": offer.joins,
        }
        told.append(f"        - {words.text('shopping-width' if at else 'shopping-width-chosen', values)}")
    return told


def _cut_to(shopping: ShoppingList, words: Words) -> list[str]:
    """That lengths are rounded up to what shops usually cut, where the spec does not say how they are sold."""
    steps = {line.name: line.material.amounts[SOLD_BY] for line in shopping.lines if is_usual(line.material)}
    if not steps:
        return []
    named = Things(tuple(map(Supply, steps)))
    step = Length(next(iter(steps.values())).as_length_mm(), "about")
    return ["", escaped(words.text("shopping-cut-to", {"materials": named, "step": step}))]


def _thread(shopping: ShoppingList, words: Words) -> list[str]:
    thread = shopping.thread
    parts: dict[str, Value | str] = {
        "needle": Length(thread.needle, "buy"),
        "bobbin": Length(thread.bobbin, "buy"),
        "looped": flag(thread.looper),
        "looper": Length(thread.looper, "buy"),
        "waste": Share(thread.waste),
        "reels": thread.reels_at_once,
    }
    told = [f"    - {words.text('shopping-thread', parts)}"]
    if shopping.bobbins:
        told.append(f"    - {words.text('shopping-bobbins', {'bobbins': shopping.bobbins.bobbins})}")
    return told


def _money(shopping: ShoppingList, words: Words) -> Iterator[str]:
    def money(amount: Fraction) -> Money:
        return Money(amount, shopping.currency)

    materials = money(sum((line.cost for line in shopping.lines if line.cost is not None), Fraction(0)))
    if unpriced := [words.name(line.name) for line in shopping.lines if line.cost is None]:
        yield words.text("shopping-cost-without", {"cost": materials, "materials": ", ".join(unpriced)})
    else:
        yield words.text("shopping-cost", {"cost": materials})
    yield words.text("shopping-work", {"time": duration(shopping.planned_minutes)})
    if costs := shopping.costs:
        yield words.text("shopping-labour", {"labour": money(costs.labour), "cost": money(costs.total)})
        yield words.text("shopping-price", {"price": money(costs.price), "margin": Number(costs.margin * 100, 4)})
