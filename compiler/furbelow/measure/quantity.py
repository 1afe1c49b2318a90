"""Exact quantities: a fraction of base units and what it measures; how they are read and shown.

`Quantity` carries every number between the stages. Lengths are in mm. The units stand in units.py.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Never

from furbelow.measure.measure_text import Rounding as Rounding
from furbelow.measure.measure_text import System as System
from furbelow.measure.measure_text import round_to_step as round_to_step
from furbelow.measure.measure_text import show_cloth_length as show_cloth_length
from furbelow.measure.measure_text import show_decimal as show_decimal
from furbelow.measure.measure_text import show_fixed as show_fixed
from furbelow.measure.measure_text import show_length as show_length
from furbelow.measure.measure_text import show_measure as show_measure
from furbelow.measure.measure_text import show_mixed as show_mixed
from furbelow.measure.units import (
    CURRENCIES,
    LENGTH,
    MARKS,
    MASS,
    PLAIN,
    UNITS,
    Dims,
    Unit,
    combine,
    describe_dims,
    near_units,
    unit_named,
)
from furbelow.named import NamedTuple


class DimensionClash(Exception):
    """Two quantities that can't be added or compared, such as a length and a weight."""

    def __init__(self, left: Dims, right: Dims) -> None:
        super().__init__(f"{describe_dims(left)} and {describe_dims(right)}")
        self.left = left
        self.right = right


class Quantity:
    """`value` in base units (mm, g, s, ml, currency) and its dimensions.

    `+`, `-` and the order comparisons raise DimensionClash when the dimensions differ; `/` raises
    ZeroDivisionError. `==` asks for the same value and the same dimensions.
    """

    __slots__ = ("dims", "value")

    # Written out: quantities are made by the thousand, and this is the quickest way to make one.
    def __init__(self, value: Fraction, dims: Dims = PLAIN) -> None:
        self.value = value
        self.dims = dims

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Quantity):
            return NotImplemented
        return self.value == other.value and self.dims == other.dims

    def __hash__(self) -> int:
        return hash((self.value, self.dims))

    def __repr__(self) -> str:
        return f"Quantity({self.value!r}, {self.dims!r})"

    def __add__(self, other: Quantity) -> Quantity:
        return Quantity(self.value + self._alike(other), self.dims)

    def __sub__(self, other: Quantity) -> Quantity:
        return Quantity(self.value - self._alike(other), self.dims)

    def __mul__(self, other: Quantity) -> Quantity:
        return Quantity(self.value * other.value, combine(self.dims, other.dims))

    def __truediv__(self, other: Quantity) -> Quantity:
        return Quantity(self.value / other.value, combine(self.dims, other.dims, -1))

    def __neg__(self) -> Quantity:
        return Quantity(-self.value, self.dims)

    def __abs__(self) -> Quantity:
        return Quantity(abs(self.value), self.dims)

    def __lt__(self, other: Quantity) -> bool:
        return self.value < self._alike(other)

    def __le__(self, other: Quantity) -> bool:
        return self.value <= self._alike(other)

    def __gt__(self, other: Quantity) -> bool:
        return self.value > self._alike(other)

    def __ge__(self, other: Quantity) -> bool:
        return self.value >= self._alike(other)

    def _alike(self, other: Quantity) -> Fraction:
        if self.dims != other.dims:
            raise DimensionClash(self.dims, other.dims)
        return other.value

    @property
    def currency(self) -> str:
        """The code of the money that it measures, if only per length or time; empty for anything else."""
        return next((base for base, exponent in self.dims if base in CURRENCIES and exponent == 1), "")

    def _in(self, dims: Dims) -> Fraction:
        if self.dims != dims:
            raise DimensionClash(self.dims, dims)
        return self.value

    def as_length_mm(self) -> Fraction:
        """The length in mm; DimensionClash when it is no length. Its siblings likewise."""
        return self._in(LENGTH)

    def as_number(self) -> Fraction:
        return self._in(PLAIN)

    def as_mass_g(self) -> Fraction:
        return self._in(MASS)

    def show(self, system: System = "metric") -> str:
        """The quantity as a maker writes it: `72 cm`, `2.5`, `25 g/m2`, `1.80 EUR/m`, `1 h 30 min`."""
        return show_measure(self.value, self.dims, system)

    def __str__(self) -> str:
        return self.show()


def mm(length: Fraction | int | str) -> Quantity:
    return Quantity(Fraction(length), LENGTH)


def number(value: Fraction | int | str) -> Quantity:
    return Quantity(Fraction(value))


def money(amount: Fraction | int | str, currency: str) -> Quantity:
    return Quantity(Fraction(amount), ((currency, 1),))


# --- reading ---------------------------------------------------------------------------------------------

LONGEST_QUANTITY = 60
_MOST_DIGITS = 12
_VULGAR = {
    "½": Fraction(1, 2),
    "⅓": Fraction(1, 3),
    "⅔": Fraction(2, 3),
    "¼": Fraction(1, 4),
    "¾": Fraction(3, 4),
    "⅕": Fraction(1, 5),
    "⅖": Fraction(2, 5),
    "⅗": Fraction(3, 5),
    "⅘": Fraction(4, 5),
    "⅙": Fraction(1, 6),
    "⅚": Fraction(5, 6),
    "⅛": Fraction(1, 8),
    "⅜": Fraction(3, 8),
    "⅝": Fraction(5, 8),
    "⅞": Fraction(7, 8),
}
_NUMBER = re.compile(
    rf"""(?:(?P<over>[0-9]+)[/\u2044](?P<under>[0-9]+)
    |(?P<whole>[0-9]+)(?:
        \s*(?P<and_vulgar>[{"".join(_VULGAR)}])|\s+(?P<and_over>[0-9]+)[/\u2044](?P<and_under>[0-9]+))
    |(?P<decimal>[0-9]+(?:\.[0-9]+)?|\.[0-9]+)
    |(?P<vulgar>[{"".join(_VULGAR)}]))""",
    re.VERBOSE,
)
_UNIT = re.compile(rf"(?P<mark>[{re.escape(MARKS)}])|(?P<word>[^\W\d_²³]+)(?:\^?(?P<power>[23²³]))?(?![\w.^])")
_POWER = {"2": 2, "3": 3, "²": 2, "³": 3}
_BEGIN = "write a number and its unit, such as 30 cm"
_LINKS = ("and", "or", "not")


class QuantityFault(NamedTuple):
    """Why a text is no quantity: the place in it, the fault, and a mend where there is one."""

    offset: int
    length: int
    message: str
    help: str | None = None


class ReadQuantity(NamedTuple):
    """A quantity read from part of a text, which ends before `end`. `divided`: written like `1/2 in`."""

    quantity: Quantity
    end: int
    divided: bool


class _Unreadable(Exception):
    def __init__(self, fault: QuantityFault) -> None:
        self.fault = fault


def parse_quantity(text: str) -> Quantity | QuantityFault:
    """The quantity that a text says, such as `12 1/2 in`, `5' 6"`, `80%`, `25 g/m2`, or what is wrong."""
    if len(text) > LONGEST_QUANTITY:
        said = f"a quantity has at most {LONGEST_QUANTITY} characters, this one has {len(text)}"
        return QuantityFault(0, len(text), said)
    start = len(text) - len(text.lstrip())
    sign = 1
    if text[start : start + 1] in ("-", "\u2212", "+") and text[start:]:
        sign = 1 if text[start] == "+" else -1
        start += 1
        start += len(text[start:]) - len(text[start:].lstrip())
    read = read_quantity(text, start, in_formula=False)
    if isinstance(read, QuantityFault):
        return read
    rest = text[read.end :].strip()
    if rest:
        return _unread(text, read.end + len(text[read.end :]) - len(text[read.end :].lstrip()), rest)
    return Quantity(sign * read.quantity.value, read.quantity.dims)


def read_quantity(text: str, start: int, *, in_formula: bool) -> ReadQuantity | QuantityFault:
    """The quantity that begins at `start`.

    In a formula `/` binds a unit only when nothing stands between (`3 EUR/m`), and `1/2` is left to the
    formula unless a unit follows (`1/2 in`).
    """
    try:
        return _quantity(text, start, in_formula)
    except _Unreadable as unreadable:
        return unreadable.fault


def _fail(offset: int, length: int, message: str, help_: str | None = None) -> Never:
    raise _Unreadable(QuantityFault(offset, length, message, help_))


def _quantity(text: str, start: int, in_formula: bool) -> ReadQuantity:
    value, end, divided = _number(text, start)
    unit, unit_end = _unit(text, end, in_formula)
    if unit is None:
        if in_formula and divided:
            # Left for the formula, where "x / 1/2" means (x / 1) / 2.
            over = re.compile("[0-9]+").match(text, start)
            assert over
            return ReadQuantity(number(over.group()), over.end(), False)
        return ReadQuantity(Quantity(value), end, False)
    total, dims, last, end = value * unit.factor, unit.dims, unit, unit_end
    # Smaller parts of the same kind: 2 yd 6 in, 5' 6", 1 h 30 min.
    while len(dims) == 1 and (gap := re.compile(r"\s*(?=[0-9.¼-¾⅓-⅞])").match(text, end)):
        try:
            value, number_end, _ = _number(text, gap.end())
            smaller, unit_end = _unit(text, number_end, in_formula)
        except _Unreadable:
            if in_formula:
                break
            raise
        if smaller is None or smaller.dims != dims or smaller.factor >= last.factor:
            break
        total, last, end = total + value * smaller.factor, smaller, unit_end
    return ReadQuantity(Quantity(total, dims), end, divided)


def _number(text: str, start: int) -> tuple[Fraction, int, bool]:
    found = _NUMBER.match(text, start)
    if not found:
        _not_a_number(text, start)
    parts = found.groupdict()
    end = found.end()
    if any(part and sum(map(str.isdigit, part)) > _MOST_DIGITS for part in parts.values()):
        _fail(start, end - start, f"the number has more than {_MOST_DIGITS} digits")
    if text[end : end + 1] == "," and text[end + 1 : end + 2].isdigit():
        _fail(end, 1, "a comma stands in the number", "write a point for decimals, as in 1.5")
    if re.compile(r"[eE][+-]?[0-9]").match(text, end):
        _fail(end, 1, "the number is written with a power of ten", "write the number in full")
    if text[end : end + 1].isdigit() and text[end] not in _POWER:
        _fail(end, 1, "a digit is not one of 0 to 9")
    if parts["decimal"]:
        if text[end : end + 1] == "." and not text[end + 1 : end + 2].isalpha():
            _fail(end, 1, "the point in the number has no digits after it")
        return Fraction(parts["decimal"]), end, False
    under = parts["under"] or parts["and_under"]
    if under and not int(under):
        _fail(end - len(under), len(under), "the fraction divides by 0")
    if parts["over"]:
        return Fraction(int(parts["over"]), int(parts["under"])), end, True
    if parts["vulgar"]:
        return _VULGAR[parts["vulgar"]], end, False
    vulgar = parts["and_vulgar"]
    share = _VULGAR[vulgar] if vulgar else Fraction(int(parts["and_over"]), int(under))
    return int(parts["whole"]) + share, end, False


def _not_a_number(text: str, start: int) -> Never:
    rest = text[start:].strip()
    if not rest:
        _fail(start, 0, "the quantity is empty", _BEGIN)
    if rest[0].isdigit():
        _fail(start, 1, "a digit is not one of 0 to 9")
    if rest[0] in "€£$" or rest[:3] in CURRENCIES:
        _fail(start, len(rest), "the currency stands before the amount", "write the amount first: 1.80 EUR")
    _fail(start, len(rest), f"`{rest}` does not begin with a number", _BEGIN)


def _unit(text: str, start: int, in_formula: bool) -> tuple[Unit | None, int]:
    """The unit after a number, and where it ends; None when there is no unit."""
    tight = "" if in_formula else r"\s*"
    factor, dims, end, terms, sign = Fraction(1), PLAIN, start, 0, 1
    link = re.compile(r"\s*").match(text, start)
    slash, per = re.compile(rf"{tight}/{tight}"), re.compile(r"\s+per\s+")
    if over := slash.match(text, start) or per.match(text, start):
        link, sign = over, -1
    while link:
        known = _unit_term(text, link.end(), must=not (in_formula and "/" in link.group()))
        if known is None:
            break
        if (terms := terms + 1) > 3:
            _fail(link.start(), known[1] - link.start(), "the unit has more than three parts")
        factor, dims, end = factor * known[0].factor ** sign, combine(dims, known[0].dims, sign), known[1]
        link, sign = slash.match(text, end) or per.match(text, end), -1
    return (Unit(factor, dims) if terms else None), end


def _unit_term(text: str, start: int, must: bool) -> tuple[Unit, int] | None:
    rest = re.compile(r"[^\W\d][\w.]*").match(text, start)
    if not (found := _UNIT.match(text, start)):
        if rest and must:
            word = rest.group()
            _fail(start, len(word), f"`{word}` is no unit", _mend_of_unit(word))
        if text[start : start + 1] == "$":
            _fail(start, 1, "`$` may mean several currencies", "write the currency code, such as USD or CAD")
        return None
    word, power = found["mark"] or found["word"], _POWER.get(found["power"] or "", 1)
    if word in _LINKS:
        return None
    unit = unit_named(word) if must else UNITS.get(word)
    if unit is None:
        if must:
            _fail(start, len(word), f"`{word}` is no unit", _mend_of_unit(word))
        return None
    dims: Dims = tuple((base, exponent * power) for base, exponent in unit.dims)
    return Unit(unit.factor**power, dims), found.end()


def _mend_of_unit(word: str) -> str:
    if word.lower() == "x":
        return "write `*` for times"
    if word.lower().rstrip("s") in ("euro", "dollar", "franc", "yen"):
        return "write the currency code, as in 11 EUR"
    near = near_units(word)
    if not near:
        as_name = f"`* {word}` when it is a name"
        return f"write {as_name}" if "_" in word else f"write a unit, such as cm, or {as_name}"
    return "did you mean " + " or ".join(f"`{name}`" for name in near) + "?"


def _unread(text: str, offset: int, rest: str) -> QuantityFault:
    if rest[0] == ",":
        return QuantityFault(offset, 1, "a comma stands in the number", "write a point for decimals, as in 1.5")
    if rest[0].isdigit() and text[:offset].strip()[-1:].isdigit():
        return QuantityFault(offset, len(rest), "the number has a space in it", "write it without spaces")
    return QuantityFault(offset, len(rest), f"`{rest}` is left over after the quantity")
