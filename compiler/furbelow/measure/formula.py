"""The value of a formula, worked out exactly, with the place of every fault inside its text."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from fractions import Fraction
from typing import Never

from furbelow.measure.formula_parser import NO_ROUND as NO_ROUND
from furbelow.measure.formula_parser import RESERVED_WORDS as RESERVED_WORDS
from furbelow.measure.formula_parser import Formula as Formula
from furbelow.measure.formula_parser import FormulaFault as FormulaFault
from furbelow.measure.formula_parser import Round as Round
from furbelow.measure.formula_parser import parse_formula as parse_formula
from furbelow.measure.formula_parser import parse_number as parse_number
from furbelow.measure.formula_tree import Amount, Call, Index, Infix, Name, Prefix, Term
from furbelow.measure.quantity import DimensionClash, Quantity, Rounding, System, number, round_to_step
from furbelow.measure.units import PLAIN, describe_dims
from furbelow.named import NamedTuple

# Twenty decimals: the error on a skirt of 10 m is far below an atom.
_PI = number("3.14159265358979323846")
# No garment needs more; without a bound, formulas of formulas could square a number without end.
_LARGEST = Fraction(10**15)
_MOST_BITS = 1024
_HIGHEST_POWER = 4
_ROUNDINGS: dict[str, Rounding] = {"round_up": "up", "round_down": "down", "round_near": "near"}


class EvaluationFault(NamedTuple):
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


def evaluate(
    formula: Formula, lookup: Callable[[str], Quantity], system: System = "metric"
) -> Quantity | bool | EvaluationFault:
    """The quantity, or for a check whether it holds, or why it has no value.

    lookup: the value of a name; a KeyError from it becomes a fault at that name.
    system: how a fault shows lengths.
    """
    worker = _Worker(lookup, system)
    try:
        return worker.truth(formula.root) if formula.is_check else worker.value(formula.root)
    except _Unworkable as unworkable:
        return unworkable.fault


def substitute_text(formula: Formula, values: Mapping[str, str]) -> str:
    """The formula with values in place of its names, for showing a derivation: `2 * 72 cm`.

    Names without a value stay. A value is put in brackets where it could be misread.
    """
    text, end = "", 0
    for name in _leaves(formula.root):
        if isinstance(name, Name) and name.name not in values:
            continue
        value = values[name.name] if isinstance(name, Name) else str(name.number)
        before, after = formula.text[: name.start], formula.text[name.end :]
        touches = before.endswith(("/", "÷")) or after.startswith(("/", "÷"))
        divides = "/" in value and before.rstrip().endswith(("/", "÷"))
        if value.startswith("-") or touches or divides:
            value = f"({value})"
        text += formula.text[end : name.start] + value
        end = name.end
    return text + formula.text[end:]


def spelled_out(formula: Formula) -> str:
    """The formula as it is in its round of a repeat: with the number of the round, and the names that it chooses."""
    text, end = "", 0
    for leaf in _leaves(formula.root):
        said = leaf.name if isinstance(leaf, Name) else str(leaf.number)
        text += formula.text[end : leaf.start] + (
            formula.text[leaf.start : leaf.end] if _bracketed(leaf, formula) else said
        )
        end = leaf.end
    return text + formula.text[end:]


def _bracketed(leaf: Name | Index, formula: Formula) -> bool:
    """Whether the place of a name includes brackets of its own: `(waist)`."""
    return formula.text[leaf.start : leaf.start + 1] == "("


def names_in(term: Term) -> Iterator[Name]:
    """Every place in the term where a name stands, in reading order."""
    return (leaf for leaf in _leaves(term) if isinstance(leaf, Name))


def _leaves(term: Term) -> Iterator[Name | Index]:
    match term:
        case Name() | Index():
            yield term
        case Prefix():
            yield from _leaves(term.operand)
        case Infix():
            yield from _leaves(term.left)
            yield from _leaves(term.right)
        case Call():
            for argument in term.arguments:
                yield from _leaves(argument)


class _Worker(NamedTuple):
    """Works out the terms of one formula; raises _Unworkable at the first that has no value."""

    lookup: Callable[[str], Quantity]
    system: System

    def truth(self, term: Term) -> bool:
        match term:
            case Prefix():
                return not self.truth(term.operand)
            case Infix(sign="and"):
                # Both sides are worked out, so that a fault in the second does not hide behind the first.
                left, right = self.truth(term.left), self.truth(term.right)
                return left and right
            case Infix(sign="or"):
                left, right = self.truth(term.left), self.truth(term.right)
                return left or right
            case Infix():
                return self._compared(term, self.value(term.left), self.value(term.right))
        raise AssertionError(f"the parser let {term} stand for true or false")

    def _compared(self, term: Infix, left: Quantity, right: Quantity) -> bool:
        if left.dims != right.dims:
            _fail(term, *self._clash(left, right, "compared"))
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

    def value(self, term: Term) -> Quantity:
        match term:
            case Amount():
                return term.quantity
            case Name(name="pi"):
                return _PI
            case Name():
                try:
                    return self.lookup(term.name)
                except KeyError:
                    _fail(term, f"`{term.name}` has no value")
            case Index():
                return number(term.number)
            case Prefix():
                return -self.value(term.operand)
            case Infix():
                return self._bounded(term, self._joined(term, self.value(term.left), self.value(term.right)))
            case Call():
                return self._bounded(term, self._called(term, [self.value(argument) for argument in term.arguments]))

    def _joined(self, term: Infix, left: Quantity, right: Quantity) -> Quantity:
        if term.sign == "*":
            return left * right
        if term.sign == "/":
            if not right.value:
                _fail(term.right, f"{self._show(left)} is divided by 0")
            return left / right
        try:
            return left + right if term.sign == "+" else left - right
        except DimensionClash:
            _fail(term, *self._clash(left, right, "added" if term.sign == "+" else "subtracted"))

    def _called(self, term: Call, values: list[Quantity]) -> Quantity:
        first = values[0]
        for argument, value in zip(term.arguments[1:], values[1:], strict=True):
            if value.dims != first.dims:
                _fail(argument, *self._clash(first, value, f"put into one `{term.function}`"))
        match term.function:
            case "max":
                return max(values)
            case "min":
                return min(values)
            case "abs":
                return abs(first)
            case "ceil" | "floor":
                if first.dims != PLAIN:
                    said = f"`{term.function}` takes a number, and {self._show(first)} is {describe_dims(first.dims)}"
                    _fail(term.arguments[0], said, "divide it by what is counted, or use `round_up(x, 1 cm)`")
                return number(round_to_step(first.value, Fraction(1), "up" if term.function == "ceil" else "down"))
        step = values[1]
        if step.value <= 0:
            _fail(term.arguments[1], f"a step of {self._show(step)} rounds nothing", "give a step above 0")
        return Quantity(round_to_step(first.value, step.value, _ROUNDINGS[term.function]), first.dims)

    def _clash(self, left: Quantity, right: Quantity, verb: str) -> tuple[str, str | None]:
        kinds = " and ".join(f"{self._show(side)} is {describe_dims(side.dims)}" for side in (left, right))
        bare = next((side for side in (right, left) if side.dims == PLAIN), None)
        return f"{kinds}: they can't be {verb}", f"give {self._show(bare)} a unit" if bare else None

    def _bounded(self, term: Term, value: Quantity) -> Quantity:
        bits = value.value.numerator.bit_length() + value.value.denominator.bit_length()
        if bits > _MOST_BITS or abs(value.value) > _LARGEST:
            _fail(term, "the value is too large or too fine for a garment")
        if any(abs(exponent) > _HIGHEST_POWER for _, exponent in value.dims):
            _fail(term, f"the value is {describe_dims(value.dims)}, which measures nothing in a garment")
        return value

    def _show(self, quantity: Quantity) -> str:
        return quantity.show(self.system)
