"""What a message says, known without saying it: the values in its text, what it chooses by, whom it asks."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from functools import reduce

from furbelow.named import NamedTuple
from furbelow.s6_write.words.pattern import Literal, Message, Pattern, Place

# The words of CLDR for how many there are; a language has those that it needs.
PLURALS = frozenset({"zero", "one", "two", "few", "many", "other"})


class Says(NamedTuple):
    """What stands in a text or decides about it, the messages that it refers to included.

    always: values that stand in it whichever variant is chosen. ever: in some variant. needs: these, and those it chooses
    by. chosen: (what it chooses by, word), as ("parts", "8") or ("COUNT $to", "one"). calls: (function, value).
    forms: (function, form, word). refers: other messages. parts: how many parts it is made of, in all variants.
    """

    always: frozenset[str] = frozenset()
    ever: frozenset[str] = frozenset()
    needs: frozenset[str] = frozenset()
    chosen: frozenset[tuple[str, str]] = frozenset()
    calls: frozenset[tuple[str, str]] = frozenset()
    forms: frozenset[tuple[str, str, str]] = frozenset()
    refers: frozenset[str] = frozenset()
    parts: int = 0

    def beside(self, other: Says) -> Says:
        """Both stand in the text."""
        return Says(
            self.always | other.always,
            self.ever | other.ever,
            self.needs | other.needs,
            self.chosen | other.chosen,
            self.calls | other.calls,
            self.forms | other.forms,
            self.refers | other.refers,
            self.parts + other.parts,
        )

    def or_else(self, other: Says) -> Says:
        """One of the two stands in the text."""
        return self.beside(other)._replace(always=self.always & other.always)

    def keys(self, chooser: str) -> frozenset[str]:
        """The words that it chooses by under a value."""
        return frozenset(key for chosen, key in self.chosen if chosen == chooser)

    def strange_keys(self, given: Says) -> Iterator[tuple[str, str]]:
        """(what it chooses by, word) where that is never this word, as far as is known from what is given.

        A number may be chosen by as any number, and by the words for how many that a language has.
        """
        for chooser, key in sorted(self.chosen):
            known = given.keys(chooser)
            is_number = not known or bool(known & PLURALS) or any(each.isdecimal() for each in known)
            if key not in known and not (is_number and (key.isdecimal() or key in PLURALS)):
                yield chooser, key


class Unsayable(Exception):
    """A message that refers to itself, or to one that is not there: `name`."""

    def __init__(self, name: str) -> None:
        super().__init__(name)
        self.name = name


class Table:
    """The messages of a language, by `message` and by `message.attribute`, and what each says."""

    def __init__(self, messages: Mapping[str, Message]) -> None:
        self.patterns: dict[str, Pattern] = {}
        for name, message in messages.items():
            if message.value:
                self.patterns[name] = message.value
            self.patterns |= {f"{name}.{attribute}": pattern for attribute, pattern in message.attributes.items()}
        self._says: dict[str, Says] = {}
        self._through: list[str] = []

    def says(self, name: str) -> Says:
        """Fails: Unsayable for a circle of messages, or a name that is not there."""
        if name in self._says:
            return self._says[name]
        if name in self._through or name not in self.patterns:
            raise Unsayable(name)
        self._through.append(name)
        try:
            found = self._says[name] = self._pattern(self.patterns[name])
        finally:
            self._through.pop()
        return found

    def _pattern(self, pattern: Pattern) -> Says:
        found = Says(parts=len(pattern))
        for part in pattern:
            if not isinstance(part, str):
                found = found.beside(self._place(part))
        return found

    def _place(self, place: Place) -> Says:
        match place:
            case ("value", name):
                value = frozenset({name})
                return Says(value, value, value)
            case ("call", _, _, _):
                return _call(place)
            case ("message", name, attribute):
                called = f"{name}.{attribute}" if attribute else name
                return self.says(called).beside(Says(refers=frozenset({called})))
            case ("choice", selector, variants, _):
                told = [self._pattern(variant) for variant in variants.values()]
                return reduce(Says.or_else, told).beside(_selector(selector, map(str, variants)))
        raise Unsayable(f"-{place[1]}")  # a term sees no values, and none is shipped


def _call(place: Place) -> Says:
    _, function, arguments, named = place
    values = frozenset(each[1] for each in arguments if isinstance(each, tuple) and each[0] == "value")
    forms = frozenset((function, form, str(word)) for form, word in named.items())
    calls = frozenset((function, value) for value in values or {""})
    return Says(values, values, values, calls=calls, forms=forms)


def _selector(selector: Place | Literal, keys: Iterable[str]) -> Says:
    """A value that is only chosen by is not said."""
    match selector:
        case ("value", name):
            return Says(needs=frozenset({name}), chosen=frozenset((name, key) for key in keys))
        case ("call", _, _, _):
            call, keys = _call(selector), tuple(keys)
            chosen = frozenset((f"{name} ${value}", key) for name, value in call.calls for key in keys)
            return Says(needs=call.needs, chosen=chosen, calls=call.calls)
        case ("term", name):
            raise Unsayable(f"-{name}")
    return Says()
