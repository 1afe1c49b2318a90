"""Formulas: read with places, worked out exactly, never a crash."""

from __future__ import annotations

from fractions import Fraction as F

import pytest
from furbelow.measure.formula import (
    RESERVED_WORDS,
    EvaluationFault,
    Formula,
    FormulaFault,
    evaluate,
    parse_formula,
    substitute_text,
)
from furbelow.measure.formula_parser import DEEPEST_FORMULA, LONGEST_FORMULA
from furbelow.measure.quantity import Quantity, mm, money, number, parse_quantity, show_length
from hypothesis import given, settings
from hypothesis import strategies as st

VALUES = {
    "waist_girth": mm(720),
    "hip_girth": mm(1040),
    "fullness": number(2),
    "upper.length": mm(3000),
    "upper.bottom.length": mm(2980),
    "weight": Quantity(F(50), (("mass", 1),)),
    "x": mm(10),
    "nothing": number(0),
}


def worked(text: str) -> Quantity:
    formula = parse_formula(text)
    assert isinstance(formula, Formula), formula
    value = evaluate(formula, VALUES.__getitem__)
    assert isinstance(value, Quantity), value
    return value


def holds(text: str) -> bool:
    formula = parse_formula(text, check=True)
    assert isinstance(formula, Formula), formula
    value = evaluate(formula, VALUES.__getitem__)
    assert isinstance(value, bool), value
    return value


@pytest.mark.parametrize(
    ("text", "millimetres"),
    [
        ("2 * waist_girth", 1440),
        ("upper.length * fullness", 6000),
        ("upper.bottom.length", 2980),
        ("max(hip_girth, waist_girth) + 5 cm", 1090),
        ("min(hip_girth, waist_girth, 1 m)", 720),
        ("2 yd 6 in + 1/2 in", F("1981.2") + F("12.7")),
        ("12 1/2 in", F("317.5")),
        ("1/2 in", F("12.7")),
        ("½ in * 2", F("25.4")),
        ("5' 6\" - 6 in", F("1524")),
        ("80% * x", 8),
        ("1/2 * x", 5),
        ("x / 1/2", 5),
        ("x / (1/2)", 20),
        ("x / (1/2 in) * 1 in", 20),
        ("x - 2 mm - 3 mm", 5),
        ("x / 2 / 5", 1),
        ("2 + 3 * 4 - 14 + x / 1 mm * 0", 0),
        ("-x + 2 cm", 10),
        ("- -x", 10),
        ("+x", 10),
        ("-2 * -x", 20),
        ("(waist_girth + x) * 2", 1460),
        ("round_up(x, 3 mm)", 12),
        ("round_down(x, 3 mm)", 9),
        ("round_near(x, 4 mm)", 12),
        ("round_up(-x, 3 mm)", -9),
        ("abs(x - 2 cm)", 10),
        ("ceil(hip_girth / waist_girth) * x", 20),
        ("floor(hip_girth / waist_girth) * x", 10),
        ("waist_girth \u00d7 2 \u2212 40 cm", 1040),
        ("waist_girth ÷ 2", 360),
        ("upper.length\n  * fullness", 6000),
        ("10 stitches/in * 1 in * x", 100),
    ],
)
def test_a_formula_is_worked_out_exactly(text: str, millimetres: F) -> None:
    value = worked(text)
    assert value.value == F(millimetres)


def test_money_and_weight_come_out_of_prices_and_cloth() -> None:
    assert worked("upper.length * 1.80 EUR/m") == money(F("5.4"), "EUR")
    assert worked("12 EUR/h * 45 min") == money(9, "EUR")
    assert worked("upper.length * 1.40 m * 25 g/m2").as_mass_g() == 105


def test_pi_is_true_to_twenty_decimals() -> None:
    # Source: DLMF, NIST Digital Library of Mathematical Functions, 3.12.1.
    assert abs(worked("pi").as_number() - F("3.14159265358979323846264338")) < F(1, 10**20)


def test_the_names_that_a_formula_needs_are_known() -> None:
    formula = parse_formula("max(upper.length, x) + pi * x - abs(hip_girth)")
    assert isinstance(formula, Formula)
    assert formula.names == {"upper.length", "x", "hip_girth"}
    assert not formula.is_check


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("x <= 10 mm", True),
        ("x < 10 mm", False),
        ("x >= 1 cm and waist_girth = 72 cm", True),
        ("x == 1 cm", True),
        ("x != 1 cm", False),
        ("x > 2 cm or not waist_girth > 80 cm", True),
        ("not x > 2 cm and x > 2 cm", False),
        ("x > 2 cm and x > 2 cm or x = x", True),
        ("(x ≤ 2 cm)", True),
        ("x ≥ 2 cm or x ≠ x", False),
    ],
)
def test_a_check_holds_or_not(text: str, answer: bool) -> None:
    assert holds(text) is answer


@pytest.mark.parametrize(
    ("text", "offset", "length", "part", "mend"),
    [
        ("", 0, 0, "empty", None),
        ("  ", 0, 2, "empty", None),
        ("2 waist_girth", 2, 11, "`waist_girth` is no unit", "write `* waist_girth`"),
        ("x y", 2, 1, "no sign stands between `x` and `y`", "x * y"),
        ("3 (x)", 2, 1, "no sign stands between", "3 * ("),
        ("1,5 * x", 1, 1, "a comma stands in the number", "a point"),
        ("max(1,5)", 5, 1, "a comma stands in the number", "a point"),
        ("x, y", 1, 1, "a comma stands outside a function", "a point"),
        ("x / 1/2 in", 4, 6, "two ways", "(1/2 in)"),
        ("(x", 0, 1, "not closed", None),
        ("max(x, x", 0, 3, "bracket of `max` is not closed", None),
        ("x)", 1, 1, "closes nothing", None),
        ("()", 1, 1, "a quantity is wanted where `)` stands", None),
        ("x +", 3, 0, "ends where a quantity is wanted", None),
        ("x * / x", 4, 1, "a quantity is wanted where `/` stands", None),
        ("x ^ 2", 2, 1, "`^` is no sign", "x * x"),
        ("x ** 2", 3, 1, "a quantity is wanted where `*` stands", None),
        ("maxi(x, x)", 0, 4, "no function is called `maxi`", "`max`"),
        ("sqrt(x)", 0, 4, "no function is called `sqrt`", "round_up"),
        ("max", 0, 3, "`max` is a function", "max(...)"),
        ("max(x)", 0, 6, "takes 2 or more quantities, and 1", None),
        ("ceil()", 0, 6, "takes 1 quantity, and 0", None),
        ("round_up(x)", 0, 11, "takes 2 quantities, and 1", None),
        ("Waist_girth", 0, 11, "is no name", "`waist_girth`"),
        ("größe * 2", 0, 5, "is no name", None),
        ("\u0430bc", 0, 3, "is no name", None),
        ("a..b", 0, 4, "is no name", None),
        ("__import__('os')", 0, 10, "is no name", None),
        ("x; y", 1, 1, "`;` is no sign", None),
        ("1e400 * x", 1, 1, "power of ten", "in full"),
        ("\u0663 * x", 0, 1, "not one of 0 to 9", None),
        ("x < 1 cm", 0, 8, "a quantity is wanted here", None),
        ("x + (x < x)", 4, 7, "`+` takes quantities", None),
        ("max(x < x, x)", 4, 5, "`max` takes quantities", None),
        ("-(x < x)", 1, 7, "`-` takes a quantity", None),
        ("x and x", 0, 1, "`and` joins comparisons", None),
        ("and", 0, 3, "a quantity is wanted where `and` stands", None),
    ],
)
def test_what_is_no_formula_is_refused_at_its_place(
    text: str, offset: int, length: int, part: str, mend: str | None
) -> None:
    fault = parse_formula(text)
    assert isinstance(fault, FormulaFault), fault
    assert (fault.offset, fault.length) == (offset, length)
    assert part in fault.message
    if mend:
        assert fault.help is not None
        assert mend in fault.help


@pytest.mark.parametrize(
    ("text", "offset", "length", "part"),
    [
        ("x", 0, 1, "a comparison is wanted"),
        ("x < x < x", 0, 5, "`<` takes quantities"),
        ("not x", 4, 1, "`not` takes a comparison"),
        ("x < 1 cm and x", 13, 1, "`and` joins comparisons"),
    ],
)
def test_a_check_must_be_a_comparison(text: str, offset: int, length: int, part: str) -> None:
    fault = parse_formula(text, check=True)
    assert isinstance(fault, FormulaFault)
    assert (fault.offset, fault.length) == (offset, length)
    assert part in fault.message


@pytest.mark.parametrize(
    ("text", "offset", "length", "part"),
    [
        ("2 + x", 0, 5, "2 is a number and 1 cm is a length: they can't be added"),
        ("1 cm + x - weight", 0, 17, "2 cm is a length and 50 g is a weight: they can't be subtracted"),
        ("max(x, 2)", 7, 1, "1 cm is a length and 2 is a number: they can't be put into one `max`"),
        ("x / (x - 1 cm)", 4, 10, "1 cm is divided by 0"),
        ("x / nothing", 4, 7, "1 cm is divided by 0"),
        ("hem_depth * 2", 0, 9, "`hem_depth` has no value"),
        ("ceil(x)", 5, 1, "`ceil` takes a number, and 1 cm is a length"),
        ("round_up(x, 0 mm)", 12, 4, "a step of 0 cm rounds nothing"),
        ("round_up(x, 2)", 12, 1, "1 cm is a length and 2 is a number"),
        ("x * x * x * x * x", 0, 17, "a length to the power 5"),
        ("999999999999 * 999999999999", 0, 27, "too large or too fine"),
    ],
)
def test_what_can_not_be_worked_out_is_told_at_its_place(text: str, offset: int, length: int, part: str) -> None:
    formula = parse_formula(text)
    assert isinstance(formula, Formula), formula
    fault = evaluate(formula, VALUES.__getitem__)
    assert isinstance(fault, EvaluationFault)
    assert (fault.offset, fault.length) == (offset, length)
    assert part in fault.message


def test_a_fault_shows_lengths_in_the_makers_system() -> None:
    formula = parse_formula("x + 2")
    assert isinstance(formula, Formula)
    fault = evaluate(formula, {"x": mm(F("317.5"))}.__getitem__, "inch")
    assert isinstance(fault, EvaluationFault)
    assert fault.message == "12 1/2 in is a length and 2 is a number: they can't be added"
    assert fault.help == "give 2 a unit"


def test_both_sides_of_a_check_are_worked_out() -> None:
    formula = parse_formula("x > 2 cm and x > 2", check=True)
    assert isinstance(formula, Formula)
    fault = evaluate(formula, VALUES.__getitem__)
    assert isinstance(fault, EvaluationFault)
    assert fault.offset == 13


def test_squaring_again_and_again_stays_bounded() -> None:
    formula = parse_formula("a * a / 1.000000001")
    assert isinstance(formula, Formula)
    value = number(F(1, 3))
    for _ in range(200):
        result = evaluate(formula, {"a": value}.__getitem__)
        if isinstance(result, EvaluationFault):
            assert "too large or too fine" in result.message
            return
        assert isinstance(result, Quantity)
        value = result
    pytest.fail("the value grew without bound")


def test_a_formula_has_a_longest_length_and_a_deepest_nesting() -> None:
    assert isinstance(parse_formula("x" + " " * (LONGEST_FORMULA - 1)), Formula)
    too_long = parse_formula("x" + " " * LONGEST_FORMULA)
    assert isinstance(too_long, FormulaFault)
    assert "at most 500 characters, this one has 501" in too_long.message
    inside = DEEPEST_FORMULA - 1
    assert isinstance(parse_formula("(" * inside + "x" + ")" * inside), Formula)
    for opening in ("(", "-", "not ", "max(x,", "+"):
        deep = parse_formula(opening * 65 + "x")
        assert isinstance(deep, FormulaFault)
        assert "nested deeper than 60" in deep.message


def test_the_longest_sum_is_worked_out() -> None:
    assert worked("x+" * 249 + "x") == mm(2500)


def test_a_derivation_shows_the_values_in_place_of_the_names() -> None:
    formula = parse_formula("2 * waist_girth / fullness - max(x, upper.length)")
    assert isinstance(formula, Formula)
    shown = substitute_text(formula, {"waist_girth": "72 cm", "fullness": "1 1/2", "x": "-1 cm"})
    assert shown == "2 * 72 cm / (1 1/2) - max((-1 cm), upper.length)"


def test_words_of_the_language_are_reserved() -> None:
    assert {"and", "or", "not", "pi", "max", "per"} <= RESERVED_WORDS


# --- any text, any formula -------------------------------------------------------------------------------

WORDS = (
    "x|upper.length|waist_girth|nothing|weight|pi|max(|round_up(|ceil(|and |or |not |cm| in|1/2 in|12 1/2 in"
    "|2 yd 6 in|EUR/m|1e400|NaN|per "
)
PIECES = st.sampled_from([*"0123456789 +-*/(),<>=!.'\"%½²^\n\u0663\u00d7\ud800\x00é$", *WORDS.split("|")])


@settings(max_examples=500, deadline=None)
@given(
    st.one_of(
        st.text(max_size=80),
        st.lists(PIECES, max_size=40).map("".join),
        st.lists(PIECES, max_size=300).map("".join),
    ),
    st.booleans(),
)
def test_any_text_is_a_formula_or_a_fault_inside_it(text: str, check: bool) -> None:
    formula = parse_formula(text, check=check)
    result = evaluate(formula, VALUES.__getitem__) if isinstance(formula, Formula) else formula
    if isinstance(result, FormulaFault | EvaluationFault):
        assert 0 <= result.offset <= result.offset + result.length <= len(text)
        assert result.message
    elif check:
        assert isinstance(result, bool)
    else:
        assert isinstance(result, Quantity)
        assert str(result)


def numbers_as_text() -> st.SearchStrategy[tuple[str, F]]:
    """Random formulas of plain numbers, each with its value by Python's own fractions."""

    def join(children: st.SearchStrategy[tuple[str, F]]) -> st.SearchStrategy[tuple[str, F]]:
        pairs = st.tuples(children, children)
        return st.one_of(
            pairs.map(lambda p: (f"({p[0][0]} + {p[1][0]})", p[0][1] + p[1][1])),
            pairs.map(lambda p: (f"({p[0][0]} - {p[1][0]})", p[0][1] - p[1][1])),
            pairs.map(lambda p: (f"{p[0][0]} * {p[1][0]}", p[0][1] * p[1][1])),
            pairs.map(lambda p: (f"max({p[0][0]}, {p[1][0]})", max(p[0][1], p[1][1]))),
            children.map(lambda p: (f"-{p[0]}", -p[1])),
            children.map(lambda p: (f"abs({p[0]})", abs(p[1]))),
            st.tuples(children, st.integers(1, 9)).map(lambda p: (f"{p[0][0]} / {p[1]}", p[0][1] / p[1])),
        )

    leaves = st.one_of(
        st.integers(0, 99).map(lambda n: (str(n), F(n))),
        st.tuples(st.integers(0, 99), st.integers(0, 99)).map(lambda p: (f"{p[0]}.{p[1]:02}", p[0] + F(p[1], 100))),
        st.tuples(st.integers(0, 9), st.integers(1, 7)).map(lambda p: (f"{p[0]} {p[1]}/8", p[0] + F(p[1], 8))),
    )
    return st.recursive(leaves, join, max_leaves=12)


@settings(max_examples=300, deadline=None)
@given(numbers_as_text())
def test_a_random_formula_agrees_with_exact_fractions(case: tuple[str, F]) -> None:
    text, expected = case
    if len(text) <= LONGEST_FORMULA:
        formula = parse_formula(text)
        assert isinstance(formula, Formula), formula
        value = evaluate(formula, VALUES.__getitem__)
        if isinstance(value, EvaluationFault):
            assert "too large or too fine" in value.message
        else:
            assert value == number(expected)


@settings(deadline=None)
@given(
    st.sampled_from(
        ["2 * a", "a/b", "a / b", "1/b * a", "a - b * a", "max(a, -a) + a", "b/2*a", "(a + a)/b", "-a / -b"]
    ),
    st.integers(-4000, 4000),
    st.integers(1, 80),
    st.sampled_from(["metric", "inch"]),
)
def test_a_derivation_read_again_gives_the_same_value(text: str, steps: int, eighths: int, system: str) -> None:
    formula = parse_formula(text)
    assert isinstance(formula, Formula)
    step = F(1, 2) if system == "metric" else F("25.4") / 16
    a = mm(steps * step)
    whole, rest = divmod(eighths, 8)
    shown = {"a": show_length(a.value, system), "b": f"{whole} {rest}/8" if rest else str(whole)}  # type: ignore[arg-type]
    b = parse_quantity(shown["b"])
    assert isinstance(b, Quantity)
    again = parse_formula(substitute_text(formula, shown))
    assert isinstance(again, Formula), (again, substitute_text(formula, shown))
    assert evaluate(again, VALUES.__getitem__) == evaluate(formula, {"a": a, "b": b}.__getitem__)
