"""The text of a formula as a tree, every part with its place in the text.

Own grammar, read by precedence climbing; nothing is ever evaluated by Python.
Source: V. R. Pratt, "Top down operator precedence", 1973.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from fractions import Fraction
from typing import Never

from furbelow.measure.formula_tree import Amount, Call, Index, Infix, Name, Prefix, Term
from furbelow.measure.quantity import Quantity, QuantityFault, read_quantity
from furbelow.measure.units import PLAIN
from furbelow.named import NamedTuple

LONGEST_FORMULA = 500
DEEPEST_FORMULA = 60


class Round(NamedTuple):
    """What a formula in one round of a repeat may use besides: numbers by the name of the repeat, and names that are
    repeated, of which `layer(i - 1)` is one. The one with the number 3 is called `layer_3`."""

    numbers: Mapping[str, int] = {}
    repeated: frozenset[str] = frozenset()


NO_ROUND = Round()

COMPARISONS = ("<=", ">=", "==", "!=", "<", ">")
LINKS = ("and", "or", "not")
# Each function and how many arguments it takes, at least and at most.
FUNCTIONS: dict[str, tuple[int, int | None]] = {
    "max": (2, None),
    "min": (2, None),
    "round_up": (2, 2),
    "round_down": (2, 2),
    "round_near": (2, 2),
    "ceil": (1, 1),
    "floor": (1, 1),
    "abs": (1, 1),
}
CONSTANTS = ("pi",)
# Words that a maker can't give to a piece or a choice, besides the names of units.
RESERVED_WORDS = frozenset((*LINKS, *FUNCTIONS, *CONSTANTS, "per"))


class Formula(NamedTuple):
    """A formula as read. `names`: what it needs values for. `is_check`: true or false, no quantity."""

    text: str
    root: Term
    names: frozenset[str]
    is_check: bool


class FormulaFault(NamedTuple):
    """Why a text is no formula: the place in it, the fault, and a mend where there is one."""

    offset: int
    length: int
    message: str
    help: str | None = None


def parse_formula(text: str, *, check: bool = False, within: Round = NO_ROUND) -> Formula | FormulaFault:
    """The formula that the text says, or its first fault.

    check: whether a comparison is wanted (`hip_girth >= waist_girth`) rather than a quantity.
    within: the round of a repeat that it stands in.
    """
    if len(text) > LONGEST_FORMULA:
        said = f"a formula has at most {LONGEST_FORMULA} characters, this one has {len(text)}"
        return FormulaFault(0, len(text), said, "give a part of it a name of its own")
    try:
        return _Parser(text, within).formula(check)
    except _Unreadable as unreadable:
        return unreadable.fault


def is_truth(term: Term) -> bool:
    """Whether the term is true or false rather than a quantity."""
    match term:
        case Infix(sign=sign):
            return sign in COMPARISONS or sign in LINKS
        case Prefix(sign=sign):
            return sign == "not"
    return False


class _Unreadable(Exception):
    def __init__(self, fault: FormulaFault) -> None:
        self.fault = fault


IN_BRACES = "inside braces a comma ends a value: put a formula with commas in straight quotes"


def _fail(start: int, end: int, message: str, help_: str | None = None) -> Never:
    raise _Unreadable(FormulaFault(start, end - start, message, help_))


class _Token(NamedTuple):
    kind: str  # "amount", "name", "attribute", "sign" or "end"
    text: str
    start: int
    end: int
    quantity: Quantity | None = None
    divided: bool = False


_SPACE = re.compile(r"\s*")
_NAME = re.compile(r"[a-z][a-z0-9_]*(?:\.[a-z][a-z0-9_]*)*")
_ATTRIBUTE = re.compile(r"\.[a-z][a-z0-9_]*")
_SIGN = re.compile(r"<=|>=|==|!=|[-+*/()<>=,≤≥≠\u00d7÷\u2212]")
_WORD = re.compile(r"[\w.]+")
_ALIASES = {"=": "==", "≤": "<=", "≥": ">=", "≠": "!=", "\u00d7": "*", "÷": "/", "\u2212": "-"}


def _tokens(text: str) -> Iterator[_Token]:
    place, closed = 0, -1  # closed: where the bracket ends that stands last
    while (place := _end_of(_SPACE, text, place)) < len(text):
        if text[place].isnumeric() or re.compile(r"\.[0-9]").match(text, place):
            read = read_quantity(text, place, in_formula=True)
            if isinstance(read, QuantityFault):
                _fail(read.offset, read.offset + read.length, read.message, read.help)
            token = _Token("amount", text[place : read.end], place, read.end, read.quantity, read.divided)
        elif found := _NAME.match(text, place):
            token = _Token("name", found.group(), place, found.end())
        elif place == closed and (found := _ATTRIBUTE.match(text, place)):
            token = _Token("attribute", found.group(), place, found.end())
        elif found := _SIGN.match(text, place):
            token = _Token("sign", _ALIASES.get(found.group(), found.group()), place, found.end())
        else:
            _stray(text, place)
        word = _WORD.match(text, token.end) if token.kind == "name" else None
        if word:
            _misnamed(text, token.start, word.end())
        yield token
        place = token.end
        closed = place if token.text == ")" else -1
    yield _Token("end", "", len(text), len(text))


def _end_of(pattern: re.Pattern[str], text: str, place: int) -> int:
    found = pattern.match(text, place)
    return found.end() if found else place


_MEANT = {  # by signs that no formula has
    "^": "write `x * x` for a square",
    "%": "write `/ 100` for a share",
    "×": "write `*` for times",
    **dict.fromkeys("“”„‘’«»", "write straight quotes, \" or '"),
    **dict.fromkeys("€£$¥", "write the amount first and then the currency code, as in 11 EUR"),
}


def _stray(text: str, place: int) -> Never:
    if word := _WORD.match(text, place):
        _misnamed(text, place, word.end())
    _fail(place, place + 1, f"`{text[place]}` is no sign of a formula", _MEANT.get(text[place]))


def _misnamed(text: str, start: int, end: int) -> Never:
    word = text[start:end]
    plain = word.lower().rstrip("._")
    help_ = f"did you mean `{plain}`?" if plain != word and _NAME.fullmatch(plain) else None
    _fail(start, end, f"`{word}` is no name: names have small letters a to z, digits and `_`", help_)


# How strongly a sign binds its two sides.
_BINDING = {"or": 1, "and": 2} | dict.fromkeys(COMPARISONS, 4) | {"+": 5, "-": 5, "*": 6, "/": 6}
_NOT_BINDS, _MINUS_BINDS = 3, 7


class _Parser:
    def __init__(self, text: str, within: Round) -> None:
        self._text = text
        self._within = within
        self._tokens = list(_tokens(text))
        self._next = 0
        self._depth = 0
        self._names: set[str] = set()

    def formula(self, check: bool) -> Formula:
        if self._peek.kind == "end":
            _fail(0, len(self._text), "the formula is empty")
        root = self._term(0)
        if self._peek.kind != "end":
            self._left_over()
        truth = is_truth(root)
        if truth and not check:
            _fail(root.start, root.end, "a quantity is wanted here, and this is a comparison")
        if check and not truth:
            _fail(
                root.start,
                root.end,
                "a comparison is wanted here, and this is a quantity",
                "compare it with `<=` or `>=`",
            )
        return Formula(self._text, root, frozenset(self._names), truth)

    @property
    def _peek(self) -> _Token:
        return self._tokens[self._next]

    def _take(self) -> _Token:
        token = self._peek
        # The end stays, however often it is asked for.
        self._next += token.kind != "end"
        return token

    def _takes(self, sign: str) -> bool:
        if self._peek.kind == "sign" and self._peek.text == sign:
            self._take()
            return True
        return False

    def _left_over(self) -> Never:
        token, before = self._peek, self._tokens[self._next - 1]
        if token.text == ")":
            _fail(token.start, token.end, "this bracket closes nothing")
        if token.text == ",":
            _fail(
                token.start,
                token.end,
                "a comma stands outside a function",
                "write a point for decimals, as in 1.5",
            )
        between = f"no sign stands between `{before.text}` and `{token.text}`"
        _fail(token.start, token.end, between, f"write `{before.text} * {token.text}` to multiply")

    def _term(self, least: int) -> Term:
        self._depth += 1
        if self._depth > DEEPEST_FORMULA:
            token = self._peek
            _fail(token.start, token.end, f"the formula is nested deeper than {DEEPEST_FORMULA} levels")
        left = self._first()
        while (binding := _BINDING.get(self._peek.text, 0)) > least and self._peek.kind != "amount":
            sign = self._take()
            following = self._peek
            if sign.text == "/" and following.divided:
                hint = f"write `/ ({following.text})`"
                _fail(following.start, following.end, f"`/ {following.text}` can be read in two ways", hint)
            right = self._term(binding)
            left = self._joined(sign, left, right)
        self._depth -= 1
        return left

    def _joined(self, sign: _Token, left: Term, right: Term) -> Infix:
        wants_truth = sign.text in LINKS
        for side in (left, right):
            if is_truth(side) is wants_truth:
                continue
            if wants_truth:
                _fail(side.start, side.end, f"`{sign.text}` joins comparisons, and this is a quantity")
            twice = sign.text in COMPARISONS
            help_ = "write `a < b and b < c`" if twice else None
            _fail(side.start, side.end, f"`{sign.text}` takes quantities, and this is a comparison", help_)
        return Infix(left.start, right.end, sign.text, left, right)

    def _first(self) -> Term:
        token = self._take()
        if token.quantity is not None:
            return Amount(token.start, token.end, token.quantity)
        if token.kind == "name" and token.text != "not":
            return self._named(token)
        if token.text == "(":
            inner = self._term(0)
            closing = self._peek
            if not self._takes(")"):
                _fail(token.start, token.end, "this bracket is not closed")
            # With its brackets: whoever slices a part out of the text gets one that can be read by itself.
            return inner._replace(start=token.start, end=closing.end)
        if token.text in ("-", "+", "not"):
            operand = self._term(_NOT_BINDS if token.text == "not" else _MINUS_BINDS)
            if is_truth(operand) is not (token.text == "not"):
                wanted = "a comparison" if token.text == "not" else "a quantity"
                _fail(operand.start, operand.end, f"`{token.text}` takes {wanted}")
            return operand if token.text == "+" else Prefix(token.start, operand.end, token.text, operand)
        if token.kind == "end":
            _fail(token.start, token.end, "the formula ends where a quantity is wanted")
        _fail(token.start, token.end, f"a quantity is wanted where `{token.text}` stands")

    def _named(self, token: _Token) -> Term:
        if token.text in LINKS:
            _fail(token.start, token.end, f"a quantity is wanted where `{token.text}` stands")
        if token.text in self._within.numbers:
            return Index(token.start, token.end, token.text, self._within.numbers[token.text])
        if self._takes("("):
            return self._one_of(token) if token.text in self._within.repeated else self._called(token)
        if token.text in FUNCTIONS:
            _fail(token.start, token.end, f"`{token.text}` is a function", f"write `{token.text}(...)`")
        if token.text not in CONSTANTS:
            self._names.add(token.text)
        return Name(token.start, token.end, token.text)

    def _one_of(self, token: _Token) -> Name:
        """One of what is repeated: `layer(i - 1).depth` is the size `layer_2.depth` in the third round."""
        inner = self._term(0)
        if not self._takes(")"):
            _fail(token.start, token.end, f"the bracket of `{token.text}` is not closed")
        attribute = self._take().text if self._peek.kind == "attribute" else ""
        name = f"{token.text}_{whole_number(inner)}{attribute}"
        self._names.add(name)
        return Name(token.start, self._tokens[self._next - 1].end, name)

    def _called(self, token: _Token) -> Call:
        if token.text not in FUNCTIONS:
            from furbelow.diagnose.nearest import nearest

            near = " or ".join(f"`{name}`" for name in nearest(token.text, FUNCTIONS))
            help_ = f"did you mean {near}?" if near else f"the functions are {', '.join(FUNCTIONS)}"
            _fail(token.start, token.end, f"no function is called `{token.text}`", help_)
        arguments: list[Term] = []
        if not self._takes(")"):
            arguments.append(self._argument(token))
            while self._takes(","):
                arguments.append(self._argument(token))
            if not self._takes(")"):
                _fail(token.start, token.end, f"the bracket of `{token.text}` is not closed", IN_BRACES)
        end = self._tokens[self._next - 1].end
        least, most = FUNCTIONS[token.text]
        if len(arguments) < least or (most is not None and len(arguments) > most):
            wanted = f"{least} or more quantities" if most is None else "2 quantities" if most > 1 else "1 quantity"
            _fail(token.start, end, f"`{token.text}` takes {wanted}, and {len(arguments)} stand here")
        return Call(token.start, end, token.text, tuple(arguments))

    def _argument(self, token: _Token) -> Term:
        argument = self._term(0)
        if is_truth(argument):
            _fail(argument.start, argument.end, f"`{token.text}` takes quantities, and this is a comparison")
        return argument


def whole_number(term: Term) -> int:
    """The number in the brackets of something repeated. It chooses a name, so it can't hang on a body or a choice."""
    value = _known(term)
    if value.denominator != 1 or not 0 <= value < 1000:
        _fail(
            term.start, term.end, f"{value} counts nothing that is repeated", "write a whole number, as in `layer(2)`"
        )
    return int(value)


def _known(term: Term) -> Fraction:
    match term:
        case Amount() if term.quantity.dims == PLAIN:
            return term.quantity.value
        case Index():
            return Fraction(term.number)
        case Prefix(sign="-"):
            return -_known(term.operand)
        case Infix(sign="+" | "-" | "*" as sign):
            left, right = _known(term.left), _known(term.right)
            return left + right if sign == "+" else left - right if sign == "-" else left * right
    _fail(term.start, term.end, "a number that is known beforehand is wanted here", "write it as in `layer(i - 1)`")


def parse_number(text: str, within: Round) -> int | FormulaFault:
    """The whole number that a text such as `i - 1` says in this round."""
    formula = parse_formula(text, within=within)
    if isinstance(formula, FormulaFault):
        return formula
    try:
        return whole_number(formula.root)
    except _Unreadable as unreadable:
        return unreadable.fault
