"""Limits and aims as makers say them: `net <= 9 m`, `cost <= 40 EUR and hours <= 6`; `most fullness, then least cost`."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Span, Staged
from furbelow.diagnose.nearest import nearest
from furbelow.measure.formula import EvaluationFault, Formula, FormulaFault, evaluate, parse_formula
from furbelow.measure.formula_parser import CONSTANTS
from furbelow.measure.formula_tree import Amount, Call, Infix, Name, Prefix, Term
from furbelow.measure.quantity import Quantity

LIMIT = "--so-that"
AIM = "--for"
_MARKS = ("<=", "<", ">=", ">")


@dataclass(frozen=True)
class Limit:
    """One comparison. `left` and `right` are the formulas beside its sign.

    only_grows: what it overruns by can only grow when the amounts grow, so that a bound below rules it out.
    """

    text: str
    sign: str
    left: Formula
    right: Formula
    only_grows: bool

    def overrun(self, values: Mapping[str, Quantity]) -> Quantity:
        """By how much it is missed, in the units of the limit; 0 or less when it holds."""
        left, right = value_of(self.left, values), value_of(self.right, values)
        return left - right if self.sign in ("<=", "<") else right - left

    def holds(self, values: Mapping[str, Quantity]) -> bool:
        over = self.overrun(values).value
        return over < 0 if self.sign in ("<", ">") else over <= 0

    def share(self, values: Mapping[str, Quantity]) -> Fraction:
        """The overrun as a share of the limit, so that metres and money can be weighed; 0 when it holds."""
        if self.holds(values):
            return Fraction(0)
        limit = abs(value_of(self.right, values).value)
        over = self.overrun(values).value
        # A limit of nothing, or one missed by a hair's breadth only because it is strict, still counts as missed.
        return max(over / limit if limit else over, Fraction(1, 10**9))


@dataclass(frozen=True)
class Aim:
    most: bool
    name: str

    @property
    def text(self) -> str:
        return f"{'most' if self.most else 'least'} {self.name}"


def value_of(formula: Formula, values: Mapping[str, Quantity]) -> Quantity:
    value = evaluate(formula, values.__getitem__)
    if not isinstance(value, Quantity):
        raise ValueError(f"{formula.text} was tried before and had a value")
    return value


def read_limits(
    texts: Collection[str], known: Mapping[str, Quantity], amounts: Collection[str]
) -> Staged[tuple[Limit, ...]]:
    """The comparisons in the texts; those linked by `and` one by one.

    known: what a first garment gives for every name, so that each side is tried. amounts: the names that grow with
    what is bought. Fails: FB201 for a text, FB701 for one that is no limit or uses an unknown name.
    """
    limits: list[Limit] = []
    faults: list[Fault] = []
    for option, text in limits_by_option(texts).items():
        place = _place(text, option)
        formula = parse_formula(text, check=True)
        if isinstance(formula, FormulaFault):
            here = place.inside(formula.offset, max(formula.length, 1))
            faults.append(Fault("FB201", formula.message, Label(here), help=formula.help))
            continue
        for term in _linked(formula.root):
            read = _limit(text, place, term, known, frozenset(amounts))
            if isinstance(read, Fault):
                faults.append(read)
            else:
                limits.append(read)
    return Staged(None if faults else tuple(limits), tuple(faults))


def limits_by_option(texts: Collection[str]) -> dict[str, str]:
    """Each text of a limit by the name of its place, for the faults in it: `--so-that`, then `--so-that (2)`."""
    return {LIMIT if number == 1 else f"{LIMIT} ({number})": text for number, text in enumerate(texts, 1)}


def _linked(term: Term) -> Iterator[Term]:
    if isinstance(term, Infix) and term.sign == "and":
        yield from _linked(term.left)
        yield from _linked(term.right)
    else:
        yield term


def _limit(text: str, place: Span, term: Term, known: Mapping[str, Quantity], amounts: frozenset[str]) -> Limit | Fault:
    here = place.inside(term.start, term.end - term.start)
    if not isinstance(term, Infix) or term.sign not in _MARKS:
        return Fault(
            "FB701",
            f"`{text[term.start : term.end]}` sets no limit",
            Label(here),
            help="write it as `net <= 9 m`; several limits are linked by `and`",
        )
    for name in sorted(_names(term) - known.keys() - set(CONSTANTS)):
        return _unknown(name, known, here)
    # The parts keep their places in the whole text, so that a fault in one is found there.
    whole = Formula(text, term, frozenset(_names(term)), True)
    tried = evaluate(whole, known.__getitem__)
    if isinstance(tried, EvaluationFault):
        at = place.inside(tried.offset, max(tried.length, 1))
        return Fault("FB701", f"the limit can't be worked out: {tried.message}", Label(at), help=tried.help)
    left, right = (_side(text, side) for side in (term.left, term.right))
    small, large = (term.left, term.right) if term.sign in ("<=", "<") else (term.right, term.left)
    grows = _rises(small, amounts) and not _names(large) & amounts
    return Limit(text[term.start : term.end], term.sign, left, right, grows)


def _side(text: str, term: Term) -> Formula:
    return Formula(text[term.start : term.end], term, frozenset(_names(term)), False)


def _unknown(name: str, known: Collection[str], place: Span) -> Fault:
    near = nearest(name, known)
    help_ = (
        "did you mean " + " or ".join(f"`{word}`" for word in near) + "?"
        if near
        else (
            "a limit can name a material, `cost`, `hours`, a choice or a number of the garment such as `flounce.length`"
        )
    )
    return Fault("FB701", f"nothing is named `{name}`", Label(place), help=help_)


def read_aims(text: str, free: Collection[str], known: Collection[str]) -> Staged[tuple[Aim, ...]]:
    """What is wanted most, the first thing first; the most of each free choice, in their order, where nothing is said."""
    if not text:
        return Staged(tuple(Aim(True, name) for name in free))
    aims, faults, at = [], [], 0
    for part in text.split(","):
        words = part.split()
        if words[:1] == ["then"]:
            words = words[1:]
        span = _place(text, AIM).inside(at, len(part))
        at += len(part) + 1
        if len(words) != 2 or words[0] not in ("most", "least"):
            faults.append(
                Fault(
                    "FB702",
                    f"`{part.strip()}` says neither the most nor the least of what",
                    Label(span),
                    help="write it as `most fullness`, or `least cost, then most layers`",
                )
            )
        elif words[1] not in known:
            faults.append(_unknown(words[1], known, span))
        else:
            aims.append(Aim(words[0] == "most", words[1]))
    return Staged(None if faults else tuple(aims), tuple(faults))


def _place(text: str, option: str = LIMIT) -> Span:
    return Span(option, 1, 1, 1, len(text) + 1)


def _names(term: Term) -> set[str]:
    match term:
        case Name(name=name):
            return {name}
        case Prefix():
            return _names(term.operand)
        case Infix():
            return _names(term.left) | _names(term.right)
        case Call():
            return set().union(*(_names(argument) for argument in term.arguments))
    return set()


def _rises(term: Term, amounts: frozenset[str]) -> bool:
    """Whether the term, when these amounts grow, surely does not shrink."""
    if not _names(term) & amounts:
        return True
    match term:
        case Name():
            return True
        case Infix(sign="+"):
            return _rises(term.left, amounts) and _rises(term.right, amounts)
        case Infix(sign="-"):
            return _rises(term.left, amounts) and not _names(term.right) & amounts
        case Infix(sign="*"):
            return any(
                isinstance(one, Amount) and one.quantity.value >= 0 and _rises(other, amounts)
                for one, other in ((term.left, term.right), (term.right, term.left))
            )
        case Infix(sign="/"):
            return isinstance(term.right, Amount) and term.right.quantity.value > 0 and _rises(term.left, amounts)
        case Call(function=function) if function in ("max", "min", "ceil", "floor"):
            return all(_rises(argument, amounts) for argument in term.arguments)
    return False
