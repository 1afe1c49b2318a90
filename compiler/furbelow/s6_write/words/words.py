"""The words of one language for one guide: messages said with typed values. Code gives the values, messages the grammar."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from fractions import Fraction
from pathlib import Path
from typing import Any, NamedTuple

from babel import Locale
from babel.lists import format_list
from fluent.runtime import FluentBundle
from fluent.runtime.types import FluentInt, FluentNone, FluentType

from furbelow.garment.message import (
    Length,
    Number,
    One,
    Part,
    Pieces,
    Ratio,
    Share,
    Stitch,
    Supply,
    Things,
    Value,
    Values,
)
from furbelow.garment.phrasing import Phrasing
from furbelow.measure.measure_text import show_decimal
from furbelow.resources import template
from furbelow.s6_write.words.read_words import WordsFault, laid_over, read_words

# CLDR's plain English list has a comma before "and", the British one has none.
_LIST_LOCALES = {"en": "en_GB"}
_INCH = Fraction("25.4")
_LINE_END = re.compile(r"[ ]*\n[ ]*")  # not `split()`, which takes no-break spaces too


class Said(NamedTuple):
    """A message as said: its sentence and its attributes."""

    text: str
    check: str = ""
    tolerance: str = ""
    remedy: str = ""


class _Given(FluentType):
    """A value inside a message; bare, as in `{ $short }`, it says itself."""

    def __init__(self, value: Value, words: Words) -> None:
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


class Words:
    """The words of one language for one guide. Files are read when one of their messages is first asked for.

    language: a folder of `templates/words/`. own: a folder of a teacher's own messages, laid over the shipped ones.
    `say` rounds the numbers; letters: the letter of each piece on the cutting plan, where there is one.
    """

    def __init__(
        self, language: str, say: Phrasing, letters: Mapping[str, str] | None = None, own: Path | None = None
    ) -> None:
        self.language, self.say, self.letters, self._own = language, say, letters or {}, own
        self.locale = Locale.parse(language.replace("-", "_"))
        self._point = self.locale.number_symbols["latn"]["decimal"]
        functions: dict[str, Callable[..., Any]] = {"COUNT": self._count, "PIECE": self._pieces, "EDGE": self._edge}
        self.bundle = FluentBundle([language], functions=functions, use_isolating=False)
        self._read: set[str] = set()
        self.read("common")

    def read(self, *files: str) -> None:
        """Make the messages of these files known; a file that is known already costs nothing."""
        for file in files:
            if file in self._read:
                continue
            self._read.add(file)
            name = f"words/{self.language}/{file}.ftl"
            resource = read_words(name, template(name).read_text(encoding="utf-8"))
            mine = self._own / f"{file}.ftl" if self._own else None
            if mine and mine.is_file():
                resource = laid_over(resource, read_words(str(mine), mine.read_text(encoding="utf-8")))
            self.bundle.add_resource(resource)

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

    def said(self, value: Value) -> str:
        """A value on its own."""
        match value:
            case Length(mm, how):
                number, _, unit = getattr(self.say, how)(mm).rpartition(" ")
                return self.text("unit", {"number": self._local(number), "unit": One(unit, UNITS_SAID)})
            case Stitch(mm):
                number = self._local(show_decimal(mm, 1))
                if self.say.system == "metric":
                    return self.text("stitch", {"number": number})
                return self.text("stitch-inches", {"number": number, "per-inch": round(_INCH / mm)})
            case Number(number, places):
                return self._local(show_decimal(number, places))
            case Share(share):
                return self.text("share", {"number": self._local(f"{float(share * 100):.3g}")})
            case Ratio(ratio):
                return self._local(f"{float(ratio):.3g}")
            case Things(items):
                return self.listed([self.said(item) for item in items])
            case Part(message, values):
                return self.text(message, values)
            case Pieces():
                return self._edge(value) if value.side else self._pieces(value)
            case Supply(name):
                material = self.say.solved.materials[name].material
                return material.about or name.replace("_", " ")
            case int():
                return str(value)
        raise TypeError(f"{value!r} has no words")

    def listed(self, items: Sequence[str]) -> str:
        """ "a, b and c", as the language has it."""
        return format_list(list(items), locale=_LIST_LOCALES.get(self.language, str(self.locale))) if items else ""

    # --- messages ---

    def _message(self, name: str) -> Any:
        if not self.bundle.has_message(name):
            raise WordsFault(f"no message `{name}` in {self.language}")
        return self.bundle.get_message(name)

    def _say(self, name: str, pattern: Any, values: Mapping[str, Value | str]) -> str:
        if pattern is None:
            raise WordsFault(f"`{name}` has no sentence in {self.language}")
        given = {key: self._given(value) for key, value in values.items()}
        try:
            text, errors = self.bundle.format_pattern(pattern, given)
        except (TypeError, RecursionError) as wrong:  # what the library neither catches nor lists
            raise WordsFault(f"`{name}` in {self.language}: {wrong}") from wrong
        if errors:
            raise WordsFault(f"`{name}` in {self.language}: {'; '.join(map(str, errors))}") from errors[0]
        # A message that is broken into lines in its file is one paragraph.
        return _LINE_END.sub(" ", str(text))

    def _given(self, value: Value | str) -> Any:
        if isinstance(value, One):
            return _Chosen(value)
        if isinstance(value, int):
            return _whole(value)
        return value if isinstance(value, str) else _Given(value, self)

    # --- functions that messages may call ---

    def _count(self, given: object) -> FluentInt:
        """How many, to select by: `{ COUNT($to) -> [one] lies *[other] lie }`."""
        match value := _value(given):
            case Pieces():
                return _whole(len(dict.fromkeys(value.names)))
            case Things():
                return _whole(len(value.items))
            case int():
                return _whole(value)
        raise TypeError(f"counts pieces, things and whole numbers, not {_named(given)}")

    def _pieces(self, given: object, at: str = "", form: str = "full", case: str = "nominative") -> str:
        pieces = _value(given)
        if not isinstance(pieces, Pieces):
            raise TypeError(f"takes pieces, not {_named(given)}")
        return _begun(self.listed([self._piece(name, form, case) for name in dict.fromkeys(pieces.names)]), at)

    def _piece(self, name: str, form: str, case: str) -> str:
        values = {"label": self.say.piece(name), "letter": self.letters.get(name, "")}
        return self.text("piece", {**values, "form": form, "case": case})

    def _edge(self, given: object, at: str = "", form: str = "full", case: str = "nominative") -> str:
        edge = _value(given)
        if not isinstance(edge, Pieces) or not edge.side:
            raise TypeError(f"takes an edge, not {_named(given)}")
        told: dict[str, Value | str] = {
            "side": edge.side,
            "count": len(dict.fromkeys(edge.names)),
            "pieces": self._pieces(edge, form=form),
            "case": case,
        }
        return _begun(self.text("edge", told), at)

    def _local(self, shown: str) -> str:
        """A number with the decimal sign of the language; how it is rounded stands in measure alone."""
        return shown.replace(".", self._point)


UNITS_SAID = ("mm", "cm", "m", "in", "yd")  # the units that messages have words for


def _whole(number: int) -> FluentInt:
    """A plain int may select, but not stand in a message; 1500 pins are written without a mark between."""
    return FluentInt(number, useGrouping=False)


def _value(given: object) -> object:
    return given.value if isinstance(given, _Given) else given


def _named(given: object) -> str:
    if isinstance(given, FluentNone):
        return f"nothing: ${given.name} is not given"
    return repr(_value(given))


def _begun(text: str, at: str) -> str:
    return text[:1].upper() + text[1:] if at == "start" else text
