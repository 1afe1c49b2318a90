"""The messages of one language, said with values: code gives the values, messages the grammar."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from functools import cache, lru_cache
from typing import Any, NamedTuple

from babel import Locale
from babel.lists import format_list
from fluent.runtime import FluentBundle, resolver
from fluent.runtime.types import FluentInt, FluentNone, FluentType

from furbelow.garment.message import Joined, Money, Number, One, Own, Part, Things, Value, Values
from furbelow.measure.measure_text import show_decimal, show_fixed
from furbelow.s6_write.words.own_words import read_own
from furbelow.s6_write.words.plain_patterns import PlainPatterns
from furbelow.s6_write.words.read_words import WordsFault, laid_over, shipped

# CLDR's plain English list has a comma before "and", the British one has none.
_LIST_LOCALES = {"en": "en_GB"}
# The library refuses a value of more than 2,500 signs, against messages that grow out of each other. The list of all pieces
# of a garment may be longer; how many parts a message may have stays limited.
resolver.MAX_PART_LENGTH = 1_000_000
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


class Given(FluentType):
    """A value inside a message; bare, as in `{ $short }`, it says itself."""

    def __init__(self, value: Value, words: Messages) -> None:
        self.value, self.words = value, words

    def format(self, locale: Locale) -> str:
        return self.words.said(self.value)


class _Chosen(FluentType):
    """A word that messages select by. It is code's word, in no language, so it may not stand in a text."""

    def __init__(self, one: One) -> None:
        self.one = one

    def __eq__(self, other: object) -> bool:
        return self.one.word == other

    __hash__ = None  # type: ignore[assignment]  # compared by the library, never kept

    def format(self, locale: Locale) -> str:
        raise TypeError(f"{self.one.word!r} chooses among sentences and can't stand in one")


class Messages:
    """The messages of a language, enough for texts that name nothing of a garment. A file is read when it is asked for.

    language: a folder of `templates/words/`. own: a folder of a teacher's own messages, laid over the shipped ones.
    """

    def __init__(self, language: str, own: str | None = None) -> None:
        self.language = language
        mine = read_own(own, language).value if own else None
        self._own = {name: each.message for name, each in (mine or {}).items()}
        self.locale = Locale.parse(language.replace("-", "_"))
        self._point = self.locale.number_symbols["latn"]["decimal"]
        self.bundle, self._plain, self._read = _bundle(language) if own else _shared(language)
        self.read("common")

    def read(self, *files: str) -> None:
        """Make the messages of these files known; a file that is known already costs nothing."""
        for file in files:
            if file in self._read:
                continue
            self._read.add(file)
            self.bundle.add_resource(laid_over(shipped(self.language, file), self._own))

    def action(self, name: str, values: Values) -> Said:
        """A message with whatever attributes it has."""
        attributes = self._message(name).attributes
        said = {key: self._say(f"{name}.{key}", attributes[key], values) for key in attributes}
        return Said(self.text(name, values), **said)

    def text(self, name: str, values: Mapping[str, Value | str] | None = None) -> str:
        """A message; with `name.attribute`, that attribute of it."""
        message, _, attribute = name.partition(".")
        found = self._message(message)
        pattern = found.attributes.get(attribute) if attribute else found.value
        return self._say(name, pattern, values or {})

    def why(self, name: str, values: Mapping[str, Value | str] | None = None) -> str:
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
        raise TypeError(f"{value!r} has no words")

    def listed(self, items: Sequence[str]) -> str:
        """ "a, b and c", as the language has it."""
        if not items:
            return ""
        told = format_list(list(items), locale=_LIST_LOCALES.get(self.language, str(self.locale)))
        start = told.removesuffix(items[-1])
        if self.locale.language == "es" and start.endswith(" y ") and _SOUNDS_I.match(items[-1]):
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

    def _message(self, name: str) -> Any:
        if not self.bundle.has_message(name):
            raise WordsFault(f"no message `{name}` in {self.language}")
        return self.bundle.get_message(name)

    def _say(self, name: str, pattern: Any, values: Mapping[str, Value | str]) -> str:
        if pattern is None:
            raise WordsFault(f"`{name}` has no sentence in {self.language}")
        given = AsAsked(values, self._given)
        with suppress(Exception):  # the library then tells what is wrong
            return _one_paragraph(self._plain.said(pattern, given))
        try:
            text, errors = self.bundle.format_pattern(pattern, given.whole())
        except (TypeError, RecursionError) as wrong:  # what the library neither catches nor lists
            raise WordsFault(f"`{name}` in {self.language}: {wrong}") from wrong
        if errors:
            raise WordsFault(f"`{name}` in {self.language}: {'; '.join(map(str, errors))}") from errors[0]
        return _one_paragraph(str(text))

    def _given(self, value: Value | str) -> Any:
        if isinstance(value, One):
            return _Chosen(value)
        if isinstance(value, int):
            return whole(value)
        return value if isinstance(value, str) else Given(value, self)

    def pieces(self, given: object, at: str = "", form: str = "full", case: str = "nominative") -> str:
        """Pieces of a garment by their names; who speaks of no garment has none."""
        raise TypeError(f"speaks of no garment, and is asked for {named(given)}")

    def edge(self, given: object, at: str = "", form: str = "full", case: str = "nominative") -> str:
        """An edge of pieces; who speaks of no garment has none."""
        raise TypeError(f"speaks of no garment, and is asked for {named(given)}")

    def count(self, given: object) -> FluentInt:
        """How many, to select by: `{ COUNT($to) -> [one] lies *[other] lie }`."""
        match value := value_of(given):
            case Things():
                return whole(len(value.items))
            case int():
                return whole(value)
        raise TypeError(f"counts pieces, things and whole numbers, not {named(given)}")


class AsAsked(dict[str, Any]):
    """What a message is given, made ready as it is asked for: a step gives fifteen values, and a sentence of it says two."""

    def __init__(self, values: Mapping[str, Value | str], given: Callable[[Value | str], Any]) -> None:
        super().__init__()
        self._values, self._given = values, given

    def __missing__(self, key: str) -> Any:
        self[key] = made = self._given(self._values[key])
        return made

    def whole(self) -> dict[str, Any]:
        """All of it, for who asks what there is."""
        return {key: self[key] for key in self._values}


class _Bundle(FluentBundle):
    """Says a message with values as they are given; the library would make plain numbers of those that say themselves."""

    def format_pattern(self, pattern: Any, args: Mapping[str, Any] | None = None) -> tuple[Any, list[Exception]]:
        errors: list[Exception] = []
        given = resolver.CurrentEnvironment(args=dict(args or {}))
        try:
            return pattern(resolver.ResolverEnvironment(context=self, current=given, errors=errors)), errors
        except ValueError as wrong:
            return "", [*errors, wrong]


def _one_paragraph(text: str) -> str:
    """A message that is broken into lines in its file."""
    return _LINE_END.sub(" ", text) if "\n" in text else text


def _bundle(language: str) -> tuple[FluentBundle, PlainPatterns, set[str]]:
    """The messages of a language that were asked for so far, and the files that they are from."""
    functions: dict[str, Any] = {"COUNT": _count, "PIECE": _piece, "EDGE": _edge}
    bundle = _Bundle([language], functions=functions, use_isolating=False)
    return bundle, PlainPatterns(Locale.parse(language.replace("-", "_")), functions, bundle), set()


# Shared by all guides of a class, for what a message says hangs on its values alone.
_shared = cache(_bundle)


def _words_of(given: object) -> Messages:
    if not isinstance(given, Given):
        raise TypeError(f"takes a value of the garment, not {named(given)}")
    return given.words


def _count(given: object) -> FluentInt:
    return whole(int(given)) if isinstance(given, FluentInt) else _words_of(given).count(given)


def _piece(given: object, **how: str) -> str:
    return _words_of(given).pieces(given, **how)


def _edge(given: object, **how: str) -> str:
    return _words_of(given).edge(given, **how)


@lru_cache(maxsize=4096)
def whole(number: int) -> FluentInt:
    """A plain int may select, but not stand in a message; 1500 pins are written without a mark between."""
    return FluentInt(number, useGrouping=False)


def value_of(given: object) -> object:
    return given.value if isinstance(given, Given) else given


def named(given: object) -> str:
    if isinstance(given, FluentNone):
        return f"nothing: ${given.name} is not given"
    return repr(value_of(given))
