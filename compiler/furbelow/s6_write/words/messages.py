"""The messages of one language, said with values: code gives the values, messages the grammar."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cache
from typing import Any

from furbelow.garment.message import Joined, Money, Number, One, Own, Part, Things, Value, Values
from furbelow.measure.measure_text import show_decimal, show_fixed
from furbelow.named import NamedTuple
from furbelow.s6_write.words.cldr import cldr
from furbelow.s6_write.words.holes import called
from furbelow.s6_write.words.kept_words import shipped
from furbelow.s6_write.words.pattern import Message, Pattern, Place, WordsFault, over

Given = Mapping[str, Value | str]

# Before the sound of i, Spanish says e for y: "aguja e hilo", but "agua y hielo". CLDR's patterns leave that to whoever
# joins; so does ICU's list formatter (from memory).
_SOUNDS_I = re.compile(r"i|hi(?![ae])", re.IGNORECASE)
_LINE_END = re.compile(r"[ ]*\n[ ]*")  # not `split()`, which takes no-break spaces too


class Said(NamedTuple):
    """A message as said: its sentence and its attributes."""

    text: str
    check: str = ""
    tolerance: str = ""
    remedy: str = ""
    number: str = ""  # of a title: the one number that matters


class Messages:
    """The messages of a language, enough for texts that name nothing of a garment. A file is read when it is asked for.

    language: a folder of `templates/words/`. own: a folder of a teacher's own messages, laid over the shipped ones.
    """

    marked = False  # whether numbers stand marked in what is said; see `holes`

    def __init__(self, language: str, own: str | None = None) -> None:
        self.language = language
        self._own = _own_words(own, language) if own else {}
        self._cldr = cldr(language)
        self._point = self._cldr.point
        self._known, self._read = ({}, set()) if own else _shared(language)
        self.read("common")

    @property
    def is_shipped(self) -> bool:
        """Whether no message of a teacher's own is laid over the shipped ones."""
        return not self._own

    def read(self, *files: str) -> None:
        """Make the messages of these files known; a file that is known already costs nothing."""
        for file in files:
            if file in self._read:
                continue
            self._read.add(file)
            known, own = shipped(self.language, file), self._own
            self._known.update(known)
            self._known.update({name: over(known[name], own[name]) for name in own if name in known})

    def action(self, name: str, values: Values) -> Said:
        """A message with whatever attributes it has."""
        attributes = self._message(name).attributes
        said = {key: self._say(f"{name}.{key}", attributes[key], values) for key in attributes}
        return Said(self.text(name, values), **said)

    def text(self, name: str, values: Given | None = None) -> str:
        """A message; with `name.attribute`, that attribute of it."""
        message, _, attribute = name.partition(".")
        found = self._message(message)
        pattern = found.attributes.get(attribute) if attribute else found.value
        return self._say(name, pattern, values or {})

    def why(self, name: str, values: Given | None = None) -> str:
        """What stands beside a message in a table: its attribute `why`."""
        return self.text(f"{name}.why", values)

    def said(self, value: Value) -> str:
        """A value on its own."""
        match value:
            case Number(number, places):
                return self.local(show_decimal(number, places))
            case Money(amount, currency):
                return self.text("money", {"amount": self.local(show_fixed(amount, 2)), "currency": currency})
            case Own(text):
                return text
            case Things(items, joined):
                return self._joined([self.said(item) for item in items], joined)
            case Part(message, values):
                return self.text(message, values)
            case int():
                return str(value)
            case One(word):
                raise TypeError(f"{word!r} chooses among sentences and can't stand in one")
        raise TypeError(f"{value!r} has no words")

    def listed(self, items: Sequence[str]) -> str:
        """ "a, b and c", as the language has it."""
        if not items:
            return ""
        told = self._cldr.listed(tuple(items))
        start = told.removesuffix(items[-1])
        if self.language.partition("-")[0] == "es" and start.endswith(" y ") and _SOUNDS_I.match(items[-1]):
            return f"{start.removesuffix(' y ')} e {items[-1]}"
        return told

    def _joined(self, items: Sequence[str], joined: Joined) -> str:
        match joined:
            case "list":
                return self.listed(items)
            case "sum":
                return " + ".join(items)
        said = ""
        for item in items:
            said = self.text(joined, {"before": said, "after": item}) if said else item
        return said

    def local(self, shown: str) -> str:
        """A number with the decimal sign of the language; how it is rounded stands in measure alone."""
        return shown.replace(".", self._point)

    def _message(self, name: str) -> Message:
        try:
            return self._known[name]
        except KeyError:
            raise WordsFault(f"no message `{name}` in {self.language}") from None

    def _say(self, name: str, pattern: Pattern | None, given: Given) -> str:
        if pattern is None:
            raise WordsFault(f"`{name}` has no sentence in {self.language}")
        try:
            said = self._filled(pattern, given)
        except (TypeError, RecursionError) as wrong:
            raise WordsFault(f"`{name}` in {self.language}: {wrong}") from wrong
        return _LINE_END.sub(" ", said) if "\n" in said else said  # a paragraph that is broken into lines in its file

    def _filled(self, pattern: Pattern, given: Given) -> str:
        """The pattern with its places filled in. Fails: TypeError for what can't be said in its place."""
        if len(pattern) == 1 and isinstance(pattern[0], str):
            return pattern[0]
        return "".join([part if isinstance(part, str) else self._place(part, given) for part in pattern])

    def _place(self, place: Place, given: Given) -> str:
        kind = place[0]
        if kind == "choice":
            return self._filled(self._chosen(place, given), given)
        if kind == "message":
            _, name, attribute = place
            message = self._message(name)
            return self._filled(message.attributes[attribute] if attribute else message.value or (), given)
        found = self._value(place, given)
        if not isinstance(found, str):
            found = self.whole(found) if isinstance(found, int) else self.said(found)
        said: str = found
        # A marked number has the name that its message has for it; in a message inside a message, that one's.
        return called(said, place[1]) if self.marked and kind == "value" else said

    def _chosen(self, choice: Place, given: Given) -> Pattern:
        """The variant of a number, by itself or by the plural rules of the language, or of a word."""
        _, selector, variants, default = choice
        key = self._value(selector, given)
        if isinstance(key, One):
            key = key.word
        elif isinstance(key, _NUMBERS) and key not in variants:
            key = self._cldr.plural(key)
        found: Pattern = variants[key] if isinstance(key, _KEYS) and key in variants else variants[default]
        return found

    def _value(self, place: Any, given: Given) -> Any:
        if not isinstance(place, tuple):
            return place  # a text or a number that is written there
        kind, name = place[0], place[1]
        if kind == "value":
            if name in given:
                return given[name]
            raise TypeError(f"${name} is not given")
        if kind == "call" and name in _ASKED:
            _, _, arguments, named = place
            return getattr(self, _ASKED[name])(*[self._value(each, given) for each in arguments], **named)
        raise TypeError(f"it says {name}, of which nothing is known")

    def whole(self, number: int) -> str:
        """A whole number as it stands in a message: 1500 pins are written without a mark between."""
        return str(int(number))

    def pieces(self, given: object, at: str = "", form: str = "full", case: str = "nominative") -> str:
        """Pieces of a garment by their names; who speaks of no garment has none."""
        raise TypeError(f"speaks of no garment, and is asked for {given!r}")

    def edge(self, given: object, at: str = "", form: str = "full", case: str = "nominative") -> str:
        """An edge of pieces; who speaks of no garment has none."""
        raise TypeError(f"speaks of no garment, and is asked for {given!r}")

    def count(self, given: object) -> int:
        """How many, to select by: `{ COUNT($to) -> [one] lies *[other] lie }`."""
        match given:
            case Things():
                return len(given.items)
            case int():
                return given
        raise TypeError(f"counts pieces, things and whole numbers, not {given!r}")


_NUMBERS, _KEYS = (int, float), (str, int, float)
# What a message may ask, and what answers.
_ASKED = {"PIECE": "pieces", "EDGE": "edge", "COUNT": "count"}


@cache
def _shared(language: str) -> tuple[dict[str, Message], set[str]]:
    """The messages of a language that were asked for so far, and the files that they are from: the same for all guides."""
    return {}, set()


def _own_words(folder: str, language: str) -> Mapping[str, Message]:
    from furbelow.s6_write.words.own_words import read_own  # with the library that reads them

    return {name: own.message for name, own in (read_own(folder, language).value or {}).items()}
