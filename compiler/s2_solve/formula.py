"""The value of a formula, worked out exactly, with the place of every fault inside its text."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Never

from compiler.quantity import DimensionClash, Quantity, Rounding, number, round_to_step
from compiler.s2_solve.formula_parser import RESERVED_WORDS as RESERVED_WORDS
from compiler.s2_solve.formula_parser import Amount, Call, Infix, Name, Prefix, Term
from compiler.s2_solve.formula_parser import Formula as Formula
from compiler.s2_solve.formula_parser import FormulaFault as FormulaFault
from compiler.s2_solve.formula_parser import parse_formula as parse_formula
from compiler.units import PLAIN, describe_dims

# Twenty decimals: the error on a skirt of 10 m is far below an atom.
_PI = number("3.14159265358979323846")
# No garment needs more; without a bound, formulas of formulas could square a number without end.
_LARGEST = Fraction(10**15)
_MOST_BITS = 1024
_HIGHEST_POWER = 4
_ROUNDINGS: dict[str, Rounding] = {"round_up": "up", "round_down": "down", "round_near": "near"}


@dataclass(frozen=True, slots=True)
class EvaluationFault:
    """Why a formula has no value: the place in its text, the fault, and a mend where there is one."""

    offset: int
    length: int
    message: str
    help: str | None = None


class _Unworkable(Exception):
    def __init__(self, fault: EvaluationFault) -> None:
        self.fault = fault


def _fail(term: Term, message: str, help_: str | None = None) -> Never:
    raise _Unworkable(EvaluationFault(term.start, term.end - term.start, message, help_))


def evaluate(formula: Formula, lookup: Callable[[str], Quantity]) -> Quantity | bool | EvaluationFault:
    """The quantity, or for a check whether it holds, or why it has no value.

    lookup: the value of a name; a KeyError from it becomes a fault at that name.
    """
    try:
        return _truth(formula.root, lookup) if formula.is_check else _value(formula.root, lookup)
    except _Unworkable as unworkable:
        return unworkable.fault


def substitute_text(formula: Formula, values: Mapping[str, str]) -> str:
    """The formula with values in place of its names, for showing a derivation: `2 * 72 cm`.

    Names without a value stay. A value is put in brackets where it could be misread.
    """
    text, end = "", 0
    for name in names_in(formula.root):
        if name.name not in values:
            continue
        value = values[name.name]
        before, after = formula.text[: name.start], formula.text[name.end :]
        touches = before.endswith(("/", "÷")) or after.startswith(("/", "÷"))
        divides = "/" in value and before.rstrip().endswith(("/", "÷"))
        if value.startswith("-") or touches or divides:
            value = f"({value})"
        text += formula.text[end : name.start] + value
        end = name.end
    return text + formula.text[end:]


def names_in(term: Term) -> Iterator[Name]:
    """Every place in the term where a name stands, in reading order."""
    match term:
        case Name():
            yield term
        case Prefix():
            yield from names_in(term.operand)
        case Infix():
            yield from names_in(term.left)
            yield from names_in(term.right)
        case Call():
            for argument in term.arguments:
                yield from names_in(argument)


def _truth(term: Term, lookup: Callable[[str], Quantity]) -> bool:
    match term:
        case Prefix():
            return not _truth(term.operand, lookup)
        case Infix(sign="and"):
            # Both sides are worked out, so that a fault in the second does not hide behind the first.
            left, right = _truth(term.left, lookup), _truth(term.right, lookup)
            return left and right
        case Infix(sign="or"):
            left, right = _truth(term.left, lookup), _truth(term.right, lookup)
            return left or right
        case Infix():
            return _compared(term, _value(term.left, lookup), _value(term.right, lookup))
    raise AssertionError(f"the parser let {term} stand for true or false")


def _compared(term: Infix, left: Quantity, right: Quantity) -> bool:
    if left.dims != right.dims:
        _fail(term, *_clash(left, right, "compared"))
    match term.sign:
        case "<":
            return left < right
        case "<=":
            return left <= right
        case ">":
            return left > right
        case ">=":
            return left >= right
        case "==":
            return left == right
    return left != right


def _value(term: Term, lookup: Callable[[str], Quantity]) -> Quantity:
    match term:
        case Amount():
            return term.quantity
        case Name(name="pi"):
            return _PI
        case Name():
            try:
                return lookup(term.name)
            except KeyError:
                _fail(term, f"`{term.name}` has no value")
        case Prefix():
            return -_value(term.operand, lookup)
        case Infix():
            return _bounded(term, _joined(term, _value(term.left, lookup), _value(term.right, lookup)))
        case Call():
            return _bounded(term, _called(term, [_value(argument, lookup) for argument in term.arguments]))


def _joined(term: Infix, left: Quantity, right: Quantity) -> Quantity:
    if term.sign == "*":
        return left * right
    if term.sign == "/":
        if not right.value:
            _fail(term.right, f"{left} is divided by 0")
        return left / right
    try:
        return left + right if term.sign == "+" else left - right
    except DimensionClash:
        _fail(term, *_clash(left, right, "added" if term.sign == "+" else "subtracted"))


def _called(term: Call, values: list[Quantity]) -> Quantity:
    first = values[0]
    for argument, value in zip(term.arguments[1:], values[1:], strict=True):
        if value.dims != first.dims:
            _fail(argument, *_clash(first, value, f"put into one `{term.function}`"))
    match term.function:
        case "max":
            return max(values)
        case "min":
            return min(values)
        case "abs":
            return abs(first)
        case "ceil" | "floor":
            if first.dims != PLAIN:
                said = f"`{term.function}` takes a number, and {first} is {describe_dims(first.dims)}"
                _fail(term.arguments[0], said, "divide it by what is counted, or use `round_up(x, 1 cm)`")
            return number(
                round_to_step(first.value, Fraction(1), "up" if term.function == "ceil" else "down")
            )
    step = values[1]
    if step.value <= 0:
        _fail(term.arguments[1], f"a step of {step} rounds nothing", "give a step above 0")
    return Quantity(round_to_step(first.value, step.value, _ROUNDINGS[term.function]), first.dims)


def _clash(left: Quantity, right: Quantity, verb: str) -> tuple[str, str | None]:
    kinds = f"{left} is {describe_dims(left.dims)} and {right} is {describe_dims(right.dims)}"
    bare = next((side for side in (right, left) if side.dims == PLAIN), None)
    return f"{kinds}: they can't be {verb}", f"give {bare} a unit" if bare else None


def _bounded(term: Term, value: Quantity) -> Quantity:
    bits = value.value.numerator.bit_length() + value.value.denominator.bit_length()
    if bits > _MOST_BITS or abs(value.value) > _LARGEST:
        _fail(term, "the value is too large or too fine for a garment")
    if any(abs(exponent) > _HIGHEST_POWER for _, exponent in value.dims):
        _fail(term, f"the value is {describe_dims(value.dims)}, which measures nothing in a garment")
    return value
