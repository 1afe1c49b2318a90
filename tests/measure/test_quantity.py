"""Quantities: read as makers write them, exact, shown without loss."""

from __future__ import annotations

from fractions import Fraction as F

import pint
import pytest
from furbelow.measure.quantity import (
    DimensionClash,
    Quantity,
    QuantityFault,
    mm,
    money,
    number,
    parse_quantity,
    round_to_step,
    show_cloth_length,
    show_length,
)
from furbelow.measure.units import _RARER, CURRENCIES, LENGTH, MARKS, MASS, PLAIN, TIME, UNITS, VOLUME, describe_dims
from hypothesis import given, settings
from hypothesis import strategies as st

AREAL = (("length", -2), ("mass", 1))


def read(text: str) -> Quantity:
    result = parse_quantity(text)
    assert isinstance(result, Quantity), result
    return result


def refused(text: str) -> QuantityFault:
    result = parse_quantity(text)
    assert isinstance(result, QuantityFault), result
    assert 0 <= result.offset <= result.offset + result.length <= len(text)
    return result


@pytest.mark.parametrize(
    ("text", "millimetres"),
    [
        ("30cm", 300),
        ("30 cm", 300),
        ("1.5 m", 1500),
        ("5 mm", 5),
        ("12 1/2 in", F("317.5")),
        ("12 1/2in", F("317.5")),
        ("12½ in", F("317.5")),
        ("12 ½ in", F("317.5")),
        ("½ in", F("12.7")),
        ("1/8 in", F("3.175")),
        ("1\u20442 in", F("12.7")),
        (".5 in", F("12.7")),
        ("2 yd 6 in", F("1981.2")),
        ("5' 6\"", F("1676.4")),
        ("5'6\"", F("1676.4")),
        ("5\u2032 6\u2033", F("1676.4")),
        ("5\u2019 6 1/2\u201d", F("1689.1")),
        ("3 m 5 cm 2 mm", 3052),
        ("1 yard", F("914.4")),
        ("2 feet", F("609.6")),
        ("-3 cm", -30),
        ("\u2212 3 cm", -30),
        ("+3 cm", 30),
        ("  3 cm ", 30),
        ("3\u00a0cm", 30),
    ],
)
def test_a_length_is_read_as_makers_write_it(text: str, millimetres: F) -> None:
    assert read(text) == Quantity(F(millimetres), LENGTH)


@pytest.mark.parametrize(
    ("text", "value", "dims"),
    [
        ("80%", F(4, 5), PLAIN),
        ("12 1/2 %", F(1, 8), PLAIN),
        ("2", 2, PLAIN),
        ("3 1/2", F(7, 2), PLAIN),
        ("012", 12, PLAIN),
        ("25 g/m2", F(25, 10**6), AREAL),
        ("25 g/m²", F(25, 10**6), AREAL),
        ("25 g / m^2", F(25, 10**6), AREAL),
        ("25 gsm", F(25, 10**6), AREAL),
        ("0.5 oz/yd2", F("28.349523125") / 2 / F("914.4") ** 2, AREAL),
        ("1.80 EUR", F("1.8"), (("EUR", 1),)),
        ("1.80 €", F("1.8"), (("EUR", 1),)),
        ("1.80 EUR/m", F("0.0018"), (("EUR", 1), ("length", -1))),
        ("12 EUR/h", F(12, 3600), (("EUR", 1), ("time", -1))),
        ("45 min", 2700, TIME),
        ("1 h 30 min", 5400, TIME),
        ("1 lb 2 oz", F("453.59237") + F("28.349523125") * 2, MASS),
        ("1.5 l", 1500, VOLUME),
        ("10 stitches/in", 10 / F("25.4"), (("length", -1),)),
        ("10 per inch", 10 / F("25.4"), (("length", -1),)),
        ("10/in", 10 / F("25.4"), (("length", -1),)),
        ("800 stitches/min", F(800, 60), (("time", -1),)),
    ],
)
def test_other_quantities_are_read_with_their_dimensions(
    text: str, value: F, dims: tuple[tuple[str, int], ...]
) -> None:
    assert read(text) == Quantity(F(value), dims)


@pytest.mark.parametrize(
    ("text", "offset", "length", "part", "mend"),
    [
        ("1,5 m", 1, 1, "a comma stands in the number", "a point for decimals"),
        ("1,000 m", 1, 1, "a comma stands in the number", "a point for decimals"),
        ("3, cm", 1, 1, "a comma", "a point for decimals"),
        ("1 000 m", 2, 5, "a space in it", "without spaces"),
        ("30 cmm", 3, 3, "`cmm` is no unit", "did you mean `cm`"),
        ("30 metrs", 3, 5, "`metrs` is no unit", "`metres`"),
        ("30 Cm", 3, 2, "`Cm` is no unit", "`cm`"),
        ("3 waist_girth", 2, 11, "`waist_girth` is no unit", "* waist_girth"),
        ("1e400", 1, 1, "power of ten", "in full"),
        ("NaN", 0, 3, "does not begin with a number", "30 cm"),
        ("inf cm", 0, 6, "does not begin with a number", "30 cm"),
        ("", 0, 0, "empty", "30 cm"),
        ("   ", 3, 0, "empty", "30 cm"),
        ("\u0663 cm", 0, 1, "not one of 0 to 9", None),
        ("3\u0663 cm", 1, 1, "not one of 0 to 9", None),
        ("\uff13 cm", 0, 1, "not one of 0 to 9", None),
        ("€1.80", 0, 5, "currency stands before", "1.80 EUR"),
        ("EUR 1.80", 0, 8, "currency stands before", "1.80 EUR"),
        ("3 $", 2, 1, "several currencies", "USD"),
        ("1/0 in", 2, 1, "divides by 0", None),
        ("2 in 6 yd", 5, 4, "left over", None),
        ("2 yd 6", 5, 1, "left over", None),
        ("30 g 5 cm", 5, 4, "left over", None),
        ("3 cm/", 4, 1, "left over", None),
        ("1.5.2 m", 3, 1, "no digits after it", None),
        ("12.", 2, 1, "no digits after it", None),
        ("9" * 13, 0, 13, "more than 12 digits", None),
        ("3 m/s/s/s", 7, 2, "more than three parts", None),
        ("3 celsius", 2, 7, "is no unit", None),
        ("3 radian", 2, 6, "is no unit", None),
        ("3 pin", 2, 3, "is no unit", None),
        ("1" + " " * 60, 0, 61, "at most 60 characters, this one has 61", None),
    ],
)
def test_what_is_no_quantity_is_refused_at_its_place(
    text: str, offset: int, length: int, part: str, mend: str | None
) -> None:
    fault = refused(text)
    assert (fault.offset, fault.length) == (offset, length)
    assert part in fault.message
    if mend:
        assert fault.help is not None
        assert mend in fault.help


REFERENCE = {
    "den": "denier",
    "gsm": "gram / meter ** 2",
    "%": "percent",
    "L": "liter",
    "hr": "hour",
    "sec": "second",
}
TO_BASE = {
    PLAIN: "",
    LENGTH: "mm",
    MASS: "g",
    TIME: "s",
    VOLUME: "ml",
    (("length", -1), ("mass", 1)): "g/mm",
    AREAL: "g/mm**2",
}


def test_every_unit_has_the_factor_of_the_reference_library() -> None:
    # Source: pint, the reference library for units; its factors follow NIST Special Publication 811 (2008).
    registry: pint.UnitRegistry[F] = pint.UnitRegistry(non_int_type=F)
    checked = 0
    for word, unit in UNITS.items():
        if word in CURRENCIES or (word in MARKS and word != "%") or word in ("stitch", "stitches"):
            continue
        measured = registry.Quantity(F(1), REFERENCE.get(word, word)).to(TO_BASE[unit.dims])
        assert F(measured.magnitude) == unit.factor, word
        checked += 1
    assert checked > 50


@pytest.mark.parametrize(
    ("text", "same"),
    [
        ("1 in", "25.4 mm"),
        ("1 yd", "0.9144 m"),
        ("1 ft", "12 in"),
        ("1 lb", "453.59237 g"),
        ("16 oz", "1 lb"),
    ],
)
def test_the_yard_and_the_pound_are_those_of_1959(text: str, same: str) -> None:
    # Source: NIST Special Publication 811, "Guide for the Use of the International System of Units", 2008, B.
    assert read(text) == read(same)


def test_denier_and_tex_are_grams_by_length() -> None:
    # Source: ISO 1144:2016: tex is grams by 1000 m; denier, by definition, grams by 9000 m.
    assert read("9000 den") == read("1 g/m")
    assert read("1000 tex") == read("1 g/m")
    assert read("10 dtex") == read("1 tex")


def test_a_less_common_unit_comes_from_the_reference_library() -> None:
    # Source: NIST Special Publication 811 (2008), B.8: a stone is 14 pounds.
    assert read("1 stone") == read("14 lb")
    assert read("2 stones") == read("28 lb")
    # Source: the same, B.8: a US cup is 236.588 ml, a week 7 days.
    assert abs(read("1 cup").value - F("236.588")) < F("0.001")
    assert read("1 week") == read("168 h")


def test_every_rarer_unit_is_read_and_named_in_plain_words() -> None:
    for word in _RARER:
        unit = read(f"3 {word}")
        assert unit.dims in (LENGTH, MASS, TIME, VOLUME)
        assert unit.value > 0


def test_what_differs_in_kind_can_not_be_added_or_compared() -> None:
    with pytest.raises(DimensionClash) as clash:
        mm(10) + number(2)
    assert (clash.value.left, clash.value.right) == (LENGTH, PLAIN)
    assert str(clash.value) == "a length and a number"
    for compare in (Quantity.__lt__, Quantity.__le__, Quantity.__gt__, Quantity.__ge__, Quantity.__sub__):
        with pytest.raises(DimensionClash):
            compare(mm(10), money(2, "EUR"))
    with pytest.raises(DimensionClash):
        money(2, "EUR") + money(2, "GBP")
    with pytest.raises(DimensionClash):
        mm(10).as_number()


def test_products_and_quotients_carry_their_dimensions() -> None:
    cloth = read("3 m") * read("1.40 m")
    assert cloth.dims == (("length", 2),)
    assert (cloth * read("25 g/m2")).as_mass_g() == 105
    assert read("3 m") * read("1.80 EUR/m") == money(F("5.4"), "EUR")
    assert (read("3 m") / read("1.5 m")).as_number() == 2
    with pytest.raises(ZeroDivisionError):
        mm(1) / number(0)


@pytest.mark.parametrize(
    ("dims", "words"),
    [
        (PLAIN, "a number"),
        (LENGTH, "a length"),
        (AREAL, "a weight per area"),
        ((("EUR", 1),), "a price in EUR"),
        ((("EUR", 1), ("length", -1)), "a price in EUR per length"),
        ((("length", 4),), "a length to the power 4"),
        ((("mass", -1),), "a count per weight"),
    ],
)
def test_dimensions_are_said_in_plain_words(dims: tuple[tuple[str, int], ...], words: str) -> None:
    assert describe_dims(dims) == words


@pytest.mark.parametrize(
    ("millimetres", "metric", "inches"),
    [
        (235, "23.5 cm", "9 1/4 in"),
        (3020, "302 cm", "118 7/8 in"),
        (5, "5 mm", "3/16 in"),
        (F(5, 2), "2.5 mm", "1/8 in"),
        (0, "0 cm", "0 in"),
        (F("317.5"), "31.75 cm", "12 1/2 in"),
        (F("25.4") / 64, "0.4 mm", "1/64 in"),
        (-120, "-12 cm", "-4 3/4 in"),
        (10, "1 cm", "3/8 in"),
    ],
)
def test_a_length_is_shown_in_cm_or_inches(millimetres: F, metric: str, inches: str) -> None:
    assert show_length(F(millimetres), "metric") == metric
    assert show_length(F(millimetres), "inch") == inches


def test_a_length_is_rounded_on_the_step_the_way_that_is_declared() -> None:
    half_cm, eighth = F(5), F("25.4") / 8
    assert show_length(F(232), "metric", half_cm) == "23 cm"
    assert show_length(F(232), "metric", half_cm, "up") == "23.5 cm"
    assert show_length(F(237), "metric", half_cm, "down") == "23.5 cm"
    assert show_length(F(232), "inch", eighth, "up") == "9 1/4 in"


def test_cloth_to_buy_is_shown_in_metres_or_yards_and_never_short() -> None:
    assert show_cloth_length(F(3020), "metric", F(100)) == "3.1 m"
    assert show_cloth_length(F(3020), "metric") == "3.02 m"
    assert show_cloth_length(F("914.4") * F(13, 4), "inch") == "3 1/4 yd"
    assert show_cloth_length(F("914.4") * 3 + 1, "inch", F("914.4") / 4) == "3 1/4 yd"


@pytest.mark.parametrize(
    "text",
    [
        "72 cm",
        "5 mm",
        "2.5",
        "25 g/m2",
        "1.80 EUR/m",
        "12.50 GBP",
        "1 h 30 min",
        "45 min",
        "90 g",
        "4 per cm",
    ],
)
def test_a_quantity_is_shown_as_it_is_written(text: str) -> None:
    assert str(read(text)) == text


@given(st.integers(-(10**6), 10**6), st.sampled_from(["metric", "inch"]))
def test_a_length_on_its_step_survives_being_shown_and_read(steps: int, system: str) -> None:
    if system == "metric":
        length = F(steps) / 2
        assert read(show_length(length, "metric")) == mm(length)
    else:
        length = steps * F("25.4") / 16
        shown = show_length(length, "inch")
        assert read(shown) == mm(length)


@given(st.fractions(), st.fractions(min_value=F(1, 1000)), st.sampled_from(["near", "up", "down"]))
def test_rounding_lands_on_a_step_on_the_declared_side(value: F, step: F, mode: str) -> None:
    rounded = round_to_step(value, step, mode)  # type: ignore[arg-type]
    assert (rounded / step).denominator == 1
    if mode == "near":
        assert abs(rounded - value) <= step / 2
    else:
        assert 0 <= (rounded - value if mode == "up" else value - rounded) < step


PIECES = st.sampled_from(
    [
        *"0123456789 /.,-+%½²³'\"^(e\u0663\uff11\u2044\x00\ud800é",
        *("cm", "in", "yd", "m2", "²2", "EUR", "per", "__", "1e400", "NaN", "inf", "furlong"),
    ]
)


@settings(max_examples=300, deadline=None)
@given(st.one_of(st.text(max_size=70), st.lists(PIECES, max_size=20).map("".join)))
def test_any_text_is_a_quantity_or_a_fault_inside_it(text: str) -> None:
    result = parse_quantity(text)
    if isinstance(result, QuantityFault):
        assert 0 <= result.offset <= result.offset + result.length <= len(text)
        assert result.message
    else:
        assert str(result)
        assert read(f" {text} " if len(text) < 59 else text) == result
