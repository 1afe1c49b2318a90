"""Repeats: pieces and steps that stand once in the spec and are there several times, each with its number.

`for: layer from 1 to layers` makes a piece `net` into `net_1`, `net_2` and so on; `net(layer - 1)` names the one before. How
far a repeat may go is known when the spec is read, from the ranges of the choices; how far it does go, when a body and its
choices are known.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.garment.spec import Choice, Condition, Within, Written
from furbelow.measure.formula import Formula, FormulaFault, evaluate, parse_number
from furbelow.measure.quantity import Quantity, number
from furbelow.measure.units import PLAIN
from furbelow.named import NamedTuple
from furbelow.s1_read.values import Formulas, value_at
from furbelow.s1_read.yaml_tree import MapTree, TextTree, Tree

MOST_ROUNDS = 60  # of one repeat; no garment has more layers or tiers
MOST_ROWS = 2000  # of the steps, when all repeats are written out
_MOST_VALUES = 1000  # of a choice, tried for the furthest that a repeat goes
GROUP = ("for", "when", "called", "steps")  # the keys of a row that holds several
_FOR = re.compile(r"\s*([a-z][a-z0-9_]*)\s+from\s+(\S.*?)\s+to\s+(\S.*?)\s*")
_ONE = re.compile(r"([a-z][a-z0-9_]*)\s*\((.*)\)(?:\.(.*))?")


class Repeat(NamedTuple):
    """`for: name from first to most`, where most may be so high as last."""

    name: str
    numbers: range
    most: Written

    def within(self, number: int) -> tuple[Condition, ...]:
        """When the round of this number is there; always, where no choice decides it."""
        return (Within(number, self.most),) if self.most.formula.names else ()


class Row(NamedTuple):
    """A row of the steps in one round of the repeats around it."""

    tree: MapTree
    numbers: Mapping[str, int]
    only: tuple[Condition, ...]


class Rounds:
    """The repeats of one spec: what is repeated, and the round that is being read."""

    def __init__(self, formulas: Formulas, choices: Mapping[str, Choice]) -> None:
        self.faults: list[Fault] = []
        self._formulas = formulas
        self._choices = choices
        self._made: dict[str, list[str]] = {}  # what is repeated -> its names in order
        self._read: dict[tuple[Span, tuple[tuple[str, int], ...]], Repeat | None] = {}

    def add(self, name: str, made: str) -> None:
        """Note that something repeated has this name in one of its rounds."""
        self._made.setdefault(name, []).append(made)
        self._formulas.round = self._formulas.round._replace(repeated=frozenset(self._made))

    def every(self, name: str) -> tuple[str, ...]:
        """The names of something repeated, in the order of its numbers; none of what is not."""
        return tuple(self._made.get(name, ()))

    @contextmanager
    def inside(self, numbers: Mapping[str, int]) -> Iterator[None]:
        """While it lasts, formulas are read as in this round."""
        before = self._formulas.round
        self._formulas.round = before._replace(numbers={**before.numbers, **numbers})
        try:
            yield
        finally:
            self._formulas.round = self._formulas.round._replace(numbers=before.numbers)

    def in_words(self, text: str, called: str = "") -> str:
        """A maker's text with the number in place of `{layer}`. called: give the number where the text has no place for it."""
        numbers = self._formulas.round.numbers
        for name, count in numbers.items():
            told = text.replace(f"{{{name}}}", str(count))
            if told == text and name == called and text:
                told = f"{text} {count}"
            text = told
        return text

    def one(self, value: TextTree) -> str:
        """The name that `net(layer - 1)` or `net(2).top` means in this round; any other text as it is."""
        found = _ONE.fullmatch(value.text)
        if found is None:
            return value.text
        name, inner, side = found.groups()
        which = parse_number(inner, self._formulas.round)
        if isinstance(which, FormulaFault):
            place = value.place(found.start(2) + which.offset, max(which.length, 1))
            self.faults.append(Fault("FB170", which.message, Label(place), help=which.help))
            return ""
        return f"{name}_{which}" + (f".{side}" if side is not None else "")

    def repeat(self, at: Tree) -> Repeat | None:
        """What stands under `for`; None where nothing does, or where it can't be read. Fails: FB170, FB171."""
        value = value_at(at, "for")
        if not isinstance(value, TextTree) or not value.text:
            return None
        # A repeat inside another may go as far as the number of that.
        key = value.span, tuple(self._formulas.round.numbers.items())
        if key not in self._read:
            self._read[key] = self._repeat(value)
        return self._read[key]

    def rows(self, rows: tuple[Tree, ...]) -> list[Row]:
        """The rows of the steps as they are done, repeats written out and groups opened. Fails: FB170, FB171."""
        found: list[Row] = []
        waiting: list[tuple[Tree, Mapping[str, int], tuple[Condition, ...]]] = [(row, {}, ()) for row in reversed(rows)]
        while waiting:
            tree, numbers, only = waiting.pop()
            if not isinstance(tree, MapTree):
                continue
            with self.inside(numbers):
                when = self._formulas.at(tree, "when", check=True)
                repeat = self.repeat(tree)
            only = (*only, when) if when else only
            inner = value_at(tree, "steps")
            if inner is not None and (beside := next((each for each in tree.entries if each.key not in GROUP), None)):
                said = f"`{beside.key}` stands in one row with a group of steps"
                help_ = "give it a row of its own, under `steps` or beside it"
                self.faults.append(Fault("FB136", said, Label(beside.key_span), help=help_))
            if inner is None:
                found.append(Row(tree, numbers, only))
            else:
                rounds = [(numbers, only)] if value_at(tree, "for") is None else []
                if repeat:
                    rounds = [
                        ({**numbers, repeat.name: each}, (*only, *repeat.within(each))) for each in repeat.numbers
                    ]
                below = getattr(inner, "rows", ())
                waiting += [(row, *each) for each in reversed(rounds) for row in reversed(below)]
            if len(found) + len(waiting) > MOST_ROWS:
                said = f"the repeats make more than {MOST_ROWS} steps"
                self.faults.append(Fault("FB171", said, Label(tree.span), help="let them go less far"))
                break
        return found

    def _repeat(self, value: TextTree) -> Repeat | None:
        found = _FOR.fullmatch(value.text)
        if found is None:
            self._refuse(value, f"`{value.text[:60]}` says no repeat", "write it as in `for: layer from 1 to layers`")
            return None
        name = found.group(1)
        low, high = (self._bound(value, found, group) for group in (2, 3))
        if low is None or high is None:
            return None
        first, most = self._furthest(low), self._furthest(high)
        if first is None or low.formula.names:
            said = f"`{low.text}` is no number from which to count"
            self._refuse(value, said, "begin with a whole number, such as 1", found.span(2))
            return None
        if most is None:
            said = f"nothing says how far `{high.text}` may go"
            help_ = "name a choice with `from` and `to`, or write a whole number"
            self._refuse(value, said, help_, found.span(3))
            return None
        count = int(most // 1) - int(first) + 1
        if count > MOST_ROUNDS:
            said = f"this repeats up to {count} times, {count - MOST_ROUNDS} more than the {MOST_ROUNDS} allowed"
            self.faults.append(Fault("FB171", said, Label(value.span), help="let it go less far"))
            return None
        return Repeat(name, range(int(first), int(first) + max(count, 0)), high)

    def _bound(self, value: TextTree, found: re.Match[str], group: int) -> Written | None:
        start, end = found.span(group)
        place = value.place(start, end - start)
        return self._formulas.read(TextTree(place, value.text[start:end], quoted=False))

    def _furthest(self, bound: Written) -> Fraction | None:
        """The highest that the bound comes to for any of the choices that it names; None where it hangs on more."""
        values: dict[str, list[Quantity]] = {name: self._values(name) for name in bound.formula.names}
        if len(values) > 1 or not all(values.values()):
            return None
        tried = [{name: value} for name, each in values.items() for value in each] or [{}]
        found = [evaluate(bound.formula, one.__getitem__) for one in tried]
        numbers = [each.value for each in found if isinstance(each, Quantity) and each.dims == PLAIN]
        return max(numbers) if len(numbers) == len(tried) else None

    def _values(self, name: str) -> list[Quantity]:
        choice = self._choices.get(name)
        if choice is None or choice.low is None or choice.high is None:
            return []
        low, high = _plain(choice.low.formula), _plain(choice.high.formula)
        step = _plain(choice.step.formula) if choice.step else Fraction(1)
        if low is None or high is None or not step or step < 0 or (high - low) / step > _MOST_VALUES:
            return []
        return [number(low + step * count) for count in range(int((high - low) // step) + 1)] if high >= low else []

    def _refuse(self, value: TextTree, said: str, help_: str, part: tuple[int, int] | None = None) -> None:
        place = value.place(part[0], part[1] - part[0]) if part else value.span
        self.faults.append(Fault("FB170", said, Label(place), help=help_))


def _plain(formula: Formula) -> Fraction | None:
    nothing: Mapping[str, Quantity] = {}
    value = evaluate(formula, nothing.__getitem__)
    return value.value if isinstance(value, Quantity) and value.dims == PLAIN else None
