"""The units that makers write, with exact factors, and what they measure.

Base units: mm, g, s, ml, and each currency by its ISO 4217 code. Volume is a base of its own, so that a
dye bath is never mistaken for a stack of cloth. Shares and counts have no dimension.
Sources: the international yard and pound of 1959 (NIST Special Publication 811, 2008, appendix B),
tex and denier (ISO 1144:2016), currency codes (ISO 4217:2015).
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from functools import cache
from typing import TYPE_CHECKING

from furbelow.named import NamedTuple

if TYPE_CHECKING:
    import pint

# Exponents over the bases, sorted by base, never zero: (("length", -2), ("mass", 1)) is g/mm2.
Dims = tuple[tuple[str, int], ...]

PLAIN: Dims = ()
LENGTH: Dims = (("length", 1),)
MASS: Dims = (("mass", 1),)
TIME: Dims = (("time", 1),)
VOLUME: Dims = (("volume", 1),)

_CURRENCY_CODES = """
    AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD
    CAD CDF CHF CLP CNY COP CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP
    GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS INR IQD IRR ISK JMD JOD JPY KES KGS KHR KMF KPW KRW KWD
    KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN
    NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP
    SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TND TOP TRY TTD TWD TZS UAH UGX USD UYU UZS VES VND
    VUV WST XAF XCD XCG XOF XPF YER ZAR ZMW ZWG
"""
CURRENCIES = frozenset(_CURRENCY_CODES.split())


class Unit(NamedTuple):
    """One of it is `factor` in base units."""

    factor: Fraction
    dims: Dims


def combine(left: Dims, right: Dims, sign: int = 1) -> Dims:
    """The dimensions of a product, or of a quotient with sign -1."""
    exponents = dict(left)
    for base, exponent in right:
        exponents[base] = exponents.get(base, 0) + sign * exponent
    return tuple(sorted((base, exponent) for base, exponent in exponents.items() if exponent))


def _table() -> dict[str, Unit]:
    inch, pound = Fraction("25.4"), Fraction("453.59237")
    linear: Dims = combine(MASS, LENGTH, -1)
    areal: Dims = combine(linear, LENGTH, -1)
    rows: tuple[tuple[str, Fraction | int, Dims], ...] = (
        ("mm millimetre millimetres millimeter millimeters", 1, LENGTH),
        ("cm centimetre centimetres centimeter centimeters", 10, LENGTH),
        ("dm", 100, LENGTH),
        ("m metre metres meter meters", 1000, LENGTH),
        ("km", 1_000_000, LENGTH),
        ('in inch inches " \u2033 \u201d', inch, LENGTH),
        ("ft foot feet ' \u2032 \u2019", 12 * inch, LENGTH),
        ("yd yds yard yards", 36 * inch, LENGTH),
        ("mg", Fraction(1, 1000), MASS),
        ("g gram grams", 1, MASS),
        ("kg", 1000, MASS),
        ("oz ounce ounces", pound / 16, MASS),
        ("lb lbs pound pounds", pound, MASS),
        ("s sec second seconds", 1, TIME),
        ("min minute minutes", 60, TIME),
        ("h hr hour hours", 3600, TIME),
        ("ml millilitre millilitres", 1, VOLUME),
        ("cl", 10, VOLUME),
        ("l L litre litres liter liters", 1000, VOLUME),
        ("% percent", Fraction(1, 100), PLAIN),
        ("stitch stitches", 1, PLAIN),
        ("tex", Fraction(1, 1_000_000), linear),
        ("dtex", Fraction(1, 10_000_000), linear),
        ("den denier", Fraction(1, 9_000_000), linear),
        ("gsm", Fraction(1, 1_000_000), areal),
        ("€", 1, (("EUR", 1),)),
        ("£", 1, (("GBP", 1),)),
    )
    units = {word: Unit(Fraction(factor), dims) for words, factor, dims in rows for word in words.split()}
    return units | {code: Unit(Fraction(1), ((code, 1),)) for code in CURRENCIES}


UNITS: dict[str, Unit] = _table()

# Marks that stand after a number without letters; inch and foot marks also as primes and curled.
MARKS = "\"\u2033\u201d'\u2032\u2019%€£"


# Rarer units, whose factors come from pint. It takes over half a second to load, so a slip of the pen
# must not be looked up there, and its one-letter units and prefixes ("pin" as pico-inch) stay out.
_RARER = frozenset(
    (
        *("thou", "hand", "fathom", "rod", "furlong", "mile"),
        *("grain", "dram", "stone", "tonne"),
        *("day", "week", "teaspoon", "tablespoon", "cup", "pint", "quart", "gallon"),
    )
)


def unit_named(word: str) -> Unit | None:
    """The unit of that name, or None. Rarer words are looked up in pint."""
    if known := UNITS.get(word):
        return known
    single = word.removesuffix("s")
    return _from_reference(single) if single in _RARER else None


@cache
def _reference() -> pint.UnitRegistry[Fraction]:
    import pint

    return pint.UnitRegistry(non_int_type=Fraction)


# What one base unit of the reference (metre, kilogram, second) is in ours.
_BASES = {"[length]": ("length", 1000), "[mass]": ("mass", 1000), "[time]": ("time", 1)}


def _from_reference(word: str) -> Unit:
    measured = _reference().Quantity(Fraction(1), word).to_base_units()
    factor = Fraction(measured.magnitude)
    if measured.check("[volume]"):
        return Unit(factor * 1_000_000, VOLUME)
    (base,) = measured.dimensionality
    name, scale = _BASES[base]
    return Unit(factor * scale, ((name, 1),))


def near_units(word: str) -> tuple[str, ...]:
    """Known unit words most like this one, nearest first."""
    from furbelow.diagnose.nearest import nearest

    # A currency is meant only by a code of three capitals.
    codes = len(word) == 3 and word.isupper()
    return nearest(word, [*(name for name in UNITS if codes or name not in CURRENCIES), *sorted(_RARER)])


_PLAIN_WORDS: dict[Dims, str] = {
    PLAIN: "a number",
    LENGTH: "a length",
    (("length", 2),): "an area",
    (("length", 3),): "a length cubed",
    MASS: "a weight",
    TIME: "a time",
    VOLUME: "a volume",
    (("length", -1),): "a count per length",
    (("time", -1),): "a count per time",
    (("length", 1), ("time", -1)): "a speed",
    (("length", -2), ("mass", 1)): "a weight per area",
    (("length", -1), ("mass", 1)): "a weight per length",
}


def describe_dims(dims: Dims) -> str:
    """What such a quantity is, with its article: "a length", "a price per length"."""
    known = _PLAIN_WORDS.get(dims)
    if known:
        return known
    above = [(base, exponent) for base, exponent in dims if exponent > 0]
    below = [(base, -exponent) for base, exponent in dims if exponent < 0]
    return "a " + " per ".join(_product(part) or "count" for part in (above, below) if part or part is above)


_BASE_WORDS = {"length": "length", "mass": "weight", "time": "time", "volume": "volume"}
_POWERS = {1: "", 2: " squared", 3: " cubed"}


def _product(part: Iterable[tuple[str, int]]) -> str:
    return " by ".join(
        f"{_BASE_WORDS.get(base, f'price in {base}')}{_POWERS.get(exponent, f' to the power {exponent}')}"
        for base, exponent in part
    )
