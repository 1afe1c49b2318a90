"""The rows of the materials table and of materials.csv, from the shopping list."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from math import ceil

from furbelow.garment.dyeing import DyeClass, usual_class
from furbelow.garment.message import Amount, Fibre, Length, Money, Number, One, Own, Part, Share, Supply, Things, Value
from furbelow.garment.spec import SupplyKind
from furbelow.measure.quantity import Quantity
from furbelow.measure.units import LENGTH
from furbelow.s5_buy.bom import COLUMNS, MaterialRow, materials_csv
from furbelow.s5_buy.shopping import Line, ShoppingList, Unit
from furbelow.s6_write.guide.guide import MaterialLine
from furbelow.s6_write.words.words import Words

_METRE, _YARD = Fraction(1000), Fraction(9144, 10)
_WEIGHED = (Unit.VOLUME, Unit.MASS)
_SPECIFIED = {
    "width": "bom-width",
    "length": "bom-length",
    "weight": "bom-weight",
    "stretch": "bom-stretch",
    "reel": "bom-reel",
    "count": "bom-count",
}


def material_lines(shopping: ShoppingList, words: Words) -> tuple[MaterialLine, ...]:
    """What to buy, one row a material."""
    words.read("buying")
    return tuple(
        MaterialLine(
            name=words.name(line.name),
            description=words.said(Things((*_beside_its_name(line, words), *_colour_as(line, shopping)), "row")),
            amount=words.said(bought(line)),
            need=words.said(_needed(line)),
            use=words.said(Things((Things(line.placement, "row"), *_thread(line, shopping)), "clauses")),
            cost="" if line.cost is None else words.said(Money(line.cost, shopping.currency)),
        )
        for line in shopping.lines
    )


def material_rows(shopping: ShoppingList, size: str, words: Words) -> tuple[MaterialRow, ...]:
    """The bill of materials: consumption in m or yd, or ml; cost of what is bought."""
    words.read("buying")
    unit, step = ("m", _METRE) if words.say.system == "metric" else ("yd", _YARD)
    rows, translated = [], words.say.solved.spec.is_translated
    for line in shopping.lines:
        material = line.material.material
        consumption = line.need / step if line.unit in (Unit.LENGTH, Unit.REELS) else line.need
        rows.append(
            MaterialRow(
                name=words.name(line.name) if translated or material.fastener else line.name,
                code=material.code,
                consumption=consumption,
                unit={Unit.VOLUME: "ml", Unit.MASS: "g", Unit.PIECES: words.text("bom-pieces")}.get(line.unit, unit),
                supplier=material.supplier,
                cost=line.cost,
                currency=shopping.currency if line.cost is not None else "",
                specification=words.said(Things(tuple(_specification(line)), "row")),
                colour=material.colour,
                size=size,
                placement=words.said(Things(line.placement, "row")),
            )
        )
    return tuple(rows)


def materials_table(rows: Iterable[MaterialRow], words: Words) -> bytes:
    """The bill of materials as CSV, its headings and decimal signs those of the language."""
    words.read("buying")
    return materials_csv(rows, [words.text(column) for column in COLUMNS], words.local("."))


def bought(line: Line) -> Value:
    """So much as the shop sells."""
    if line.unit is Unit.PIECES:
        return Part("buy-pieces", {"pieces": int(line.bought)})
    if line.unit in _WEIGHED:
        return _measured(line.unit, line.bought)
    if line.unit is Unit.REELS:
        return Part("buy-reels", {"reels": int(line.bought), "length": Length(line.reel, "buy")})
    return Length(line.bought, "buy")


def _needed(line: Line) -> Value:
    if line.unit is Unit.PIECES:
        return Part("buy-pieces", {"pieces": ceil(line.need)})
    if line.unit in _WEIGHED:
        return _measured(line.unit, line.need)
    return Length(line.need, "thread" if line.unit is Unit.REELS else "buy")


def _measured(unit: Unit, amount: Fraction) -> Part:
    """In ml, or in tenths of a gram; never less than is needed."""
    if unit is Unit.VOLUME:
        return Part("buy-volume", {"amount": ceil(amount)})
    return Part("buy-mass", {"amount": Number(Fraction(ceil(amount * 10), 10), 1)})


def _thread(line: Line, shopping: ShoppingList) -> Iterator[Part]:
    """Of thread, why so many reels, and how many bobbins to wind first."""
    if line.unit is not Unit.REELS:
        return
    if loopers := shopping.thread.on_looper:
        yield Part("use-reels-at-once", {"reels": loopers, "sewing": shopping.thread.reels_at_once - loopers})
    if shopping.bobbins:
        yield Part("use-bobbins", {"bobbins": shopping.bobbins.bobbins})


def described(line: Line, words: Words) -> str:
    """What it is and what to look for, where its name does not stand beside it."""
    return words.said(Things((Supply(line.name), *_description(line)), "row"))


def _beside_its_name(line: Line, words: Words) -> Iterator[Value]:
    # Its name may be all that is said of it; in another language than that of the spec it is what the maker says it is.
    if words.said(Supply(line.name)) != words.name(line.name):
        yield Supply(line.name)
    yield from _description(line)


def _colour_as(line: Line, shopping: ShoppingList) -> Iterator[Value]:
    """Thread of no colour that the spec names is bought to match the cloth of which there is most."""
    cloths = [each for each in shopping.lines if each.material.material.kind is SupplyKind.CLOTH]
    if line.unit is Unit.REELS and not line.material.material.colour and cloths:
        most = max(cloths, key=lambda each: each.need)
        yield Part("buy-colour-as", {"cloth": Supply(most.name)})


def _description(line: Line) -> Iterator[Value]:
    amounts, material = line.material.amounts, line.material.material
    if "width" in amounts:
        yield Part("buy-wide", {"width": Length(amounts["width"].as_length_mm())})
    if "length" in amounts:
        yield Part("buy-long", {"length": Length(amounts["length"].as_length_mm())})
    if "stretch" in amounts:
        yield Part("buy-stretches", {"stretch": Share(amounts["stretch"].value)})
    if line.fibres:
        named = material.dye_class or usual_class(line.fibres) or "any"
        fibres = Things(tuple(map(Fibre, line.fibres)))
        yield Part("buy-dye", {"class": One(named, (*DyeClass, "any")), "fibres": fibres})
    if material.colour:
        yield Own(material.colour)


def _specification(line: Line) -> Iterator[Value]:
    amounts, material = line.material.amounts, line.material.material
    yield Supply(line.name)
    if material.fibre:
        yield Fibre(material.fibre)
    for key, message in _SPECIFIED.items():
        if key in amounts:
            yield Part(message, {"amount": _shown(key, amounts[key])})


def _shown(key: str, amount: Quantity) -> Value:
    """As it stands on a label: a width in cm or inches, a reel in m or yards or g, a stretch in per cent, a weight in g/m2."""
    if key in ("width", "length"):
        return Length(amount.as_length_mm())
    if key == "reel" and amount.dims == LENGTH:
        return Length(amount.as_length_mm(), "buy")
    return Share(amount.value) if key == "stretch" else Amount(amount, "metric")
