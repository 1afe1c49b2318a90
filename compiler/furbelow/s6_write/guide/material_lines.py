"""The rows of the materials table and of materials.csv, from the shopping list."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.phrasing import Phrasing
from furbelow.measure.quantity import show_cloth_length, show_decimal, show_fixed
from furbelow.s5_buy.bom import MaterialRow
from furbelow.s5_buy.shopping import Line, ShoppingList
from furbelow.s6_write.guide.guide import MaterialLine

_METRE = Fraction(1000)
_YARD = Fraction(9144, 10)


def material_lines(shopping: ShoppingList, say: Phrasing) -> tuple[MaterialLine, ...]:
    """What to buy, one row a material."""
    return tuple(
        MaterialLine(
            name=line.name.replace("_", " "),
            description=_description(line, say),
            amount=_amount(line, line.bought, say),
            need=_amount(line, line.need, say, need=True),
            use=_use(line, shopping, say),
            cost="" if line.cost is None else f"{show_fixed(line.cost, 2)} {shopping.currency}",
        )
        for line in shopping.lines
    )


def material_rows(shopping: ShoppingList, size: str) -> tuple[MaterialRow, ...]:
    """The bill of materials: consumption in m, ml or reels; cost of what is bought."""
    rows = []
    for line in shopping.lines:
        material = line.material.material
        consumption = line.need / _METRE if line.unit in ("length", "reels") else line.need
        rows.append(
            MaterialRow(
                name=line.name,
                code=material.code,
                consumption=consumption,
                unit="ml" if line.unit == "volume" else "m",
                supplier=material.supplier,
                cost=line.cost,
                currency=shopping.currency if line.cost is not None else "",
                specification=_specification(line),
                colour=material.colour,
                size=size,
                placement=line.placement,
            )
        )
    return tuple(rows)


def _amount(line: Line, amount: Fraction, say: Phrasing, need: bool = False) -> str:
    if line.unit == "volume":
        return f"{show_decimal(amount, 0, 'up')} ml"
    if line.unit == "reels" and need:
        step = _METRE if say.system == "metric" else _YARD
        return show_cloth_length(amount, say.system, step)
    if line.unit == "reels":
        reel = say.buy(line.material.amounts["reel"].as_length_mm())
        return f"{say.count(int(amount), 'reel')} of {reel}"
    return say.buy(amount)


def _use(line: Line, shopping: ShoppingList, say: Phrasing) -> str:
    """Where it goes; of thread, why so many reels, and how many bobbins to wind first."""
    if line.unit != "reels":
        return line.placement
    told = [line.placement]
    if shopping.thread.reels_at_once > 1:
        told.append(f"the overlocker takes {shopping.thread.reels_at_once} reels at once")
    if shopping.bobbins:
        told.append(f"wind {say.count(shopping.bobbins.bobbins, 'bobbin')} first")
    return "; ".join(told)


def _description(line: Line, say: Phrasing) -> str:
    amounts, material = line.material.amounts, line.material.material
    parts = [material.about or line.name]
    if "width" in amounts:
        parts.append(f"{say.length(amounts['width'].as_length_mm())} wide")
    if "stretch" in amounts:
        parts.append(f"stretches by {say.share(amounts['stretch'].value)} or more")
    if material.colour:
        parts.append(material.colour)
    return ", ".join(parts)


def _specification(line: Line) -> str:
    amounts, material = line.material.amounts, line.material.material
    shown = [
        f"{key.replace('_', ' ')} {amounts[key].show()}"
        for key in ("width", "weight", "stretch", "reel")
        if key in amounts
    ]
    return ", ".join([material.about or line.name, *([material.fibre] if material.fibre else []), *shown])
