"""A message as plain values: what it says and chooses by, without the classes of the library that reads it.

A pattern is the parts of a sentence, one behind the other. A part is a text, or a place that is filled in:

    ("value", name)                                      a value that is given
    ("call", function, (argument, ...), {name: literal})
    ("message", name, attribute)                         another message; "" for its own sentence
    ("choice", selector, {key: pattern, ...}, default)   keys are words and numbers; the default is one of them
    ("term", name)                                       a term of Fluent; none is shipped, and none may be said

Selectors and arguments are places, or the text or number that stands there.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any

from furbelow.named import NamedTuple

Literal = str | int | float
Place = tuple[Any, ...]
Pattern = tuple[str | Place, ...]

_QUOTED = re.compile("[{}\u00a0]")  # what no text holds as it stands


class WordsFault(Exception):
    """A file that can't be read, or a message that can't be said with the values given. line: of the file, 0 for none."""

    def __init__(self, said: str, line: int = 0) -> None:
        super().__init__(said)
        self.said, self.line = said, line


class Message(NamedTuple):
    """Its sentence, where it has one, and its attributes by their names."""

    value: Pattern | None
    attributes: Mapping[str, Pattern]


def over(shipped: Message, own: Message) -> Message:
    """A shipped message with a teacher's own laid over it: what hers leaves out, sentence or attribute, stays."""
    return Message(own.value or shipped.value, {**shipped.attributes, **own.attributes})


def texts(pattern: Pattern) -> Iterator[str]:
    """The bare text of each variant of each place, for what may not be empty."""
    for part in pattern:
        match part:
            case str():
                yield part
            case ("choice", _, variants, _):
                for variant in variants.values():
                    yield from texts(variant)
            case _:
                yield "value"


def shown(pattern: Pattern) -> str:
    """The pattern as it may be written in a file of messages, on one line."""
    return " ".join("".join(map(_part_shown, pattern)).split())


def _part_shown(part: str | Place) -> str:
    if isinstance(part, str):
        return _QUOTED.sub(lambda sign: '{ "\\u00A0" }' if sign[0] == "\u00a0" else f'{{ "{sign[0]}" }}', part)
    return f"{{ {_place_shown(part)} }}"


def _place_shown(place: Place | Literal) -> str:
    match place:
        case ("value", name):
            return f"${name}"
        case ("call", function, arguments, named):
            told = [*map(_place_shown, arguments), *(f"{name}: {_place_shown(each)}" for name, each in named.items())]
            return f"{function}({', '.join(told)})"
        case ("message", name, attribute):
            return f"{name}.{attribute}" if attribute else str(name)
        case ("term", name):
            return f"-{name}"
        case ("choice", selector, variants, default):
            told = [f"{'*' * (key == default)}[{key}] {shown(each)}" for key, each in variants.items()]
            return f"{_place_shown(selector)} -> {' '.join(told)}"
    return f'"{place}"' if isinstance(place, str) else str(place)
