"""Texts of a booklet: letters in the place of numbers, and versions for some of the sizes.

A letter stands as the place of its number in the booklet between two signs of the private use of Unicode (plane 16). A
version begins with the places of its sizes between two such signs and goes on to the next version or to the end. Texts are
told apart by their kinds of numbers and the words between them; what the numbers are decides which of them get a letter.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import count
from typing import TypeVar

from furbelow.garment.tags import explained_letter
from furbelow.named import NamedTuple
from furbelow.s6_write.booklet.booklet import SizedNumber
from furbelow.s6_write.words.holes import KINDS, Hole, parted

_LETTER, _SIZES, _CLOSE = "\U0010ff02", "\U0010ff03", "\U0010ff04"
_LETTERS = re.compile(f"{_LETTER}([0-9]+){_CLOSE}")
_VERSIONS = re.compile(f"{_SIZES}([0-9 ]+){_CLOSE}([^{_SIZES}]*)", re.DOTALL)
_ANY = re.compile(f"[{_LETTER}{_SIZES}{_CLOSE}]")

T = TypeVar("T")
S = TypeVar("S", bound=str)
Skeleton = tuple[str, ...]


class Version(NamedTuple):
    """sizes: by their places; empty for a text that is the same for all."""

    sizes: tuple[int, ...]
    text: str


def skeleton(text: str) -> Skeleton:
    """The words of a text, with the kinds of its numbers in their places."""
    return tuple(part if isinstance(part, str) else f"\0{part.kind}" for part in parted(text))


class Letters:
    """The numbers of a booklet so far, and the letters of the operation that is told now.

    sizes: how many there are.
    """

    def __init__(self, sizes: int) -> None:
        self.sizes = sizes
        self.numbers: list[SizedNumber] = []
        self.begin()

    def begin(self) -> None:
        """Begin an operation: its letters are p, q, r ... again."""
        self._here: list[int] = []
        self._free = map(explained_letter, count(1))

    def here(self) -> tuple[int, ...]:
        """The numbers that have a letter in this operation, by their places."""
        return tuple(self._here)

    def told(self, said: Mapping[int, str]) -> str:
        """One text of those of several sizes, by their places. What is alike but for numbers is one version; a size to
        which nothing is said has none.
        """
        groups = grouped({at: text for at, text in said.items() if text}, skeleton)
        if not groups or len(groups[0]) == len(said):
            return self.lettered(said)
        return versions(Version(tuple(group), self.lettered({at: said[at] for at in group})) for group in groups)

    def lettered(self, said: Mapping[int, str]) -> str:
        """Texts with one skeleton: a letter for each number that differs."""
        columns = zip(*(parted(text) for text in said.values()), strict=True)
        return "".join(self._part(dict(zip(said, column, strict=True))) for column in columns)

    def _part(self, parts: Mapping[int, str | Hole]) -> str:
        first = next(iter(parts.values()))
        if isinstance(first, str):
            return first
        shown = {at: each.shown for at, each in parts.items() if isinstance(each, Hole)}
        if len(set(shown.values())) == 1:
            return first.shown
        values = tuple(shown.get(at, "") for at in range(self.sizes))
        place = next((place for place in self._here if self._goes_into(place, first.kind, values)), None)
        if place is None:
            place = len(self.numbers)
            self._here.append(place)
            self.numbers.append(SizedNumber(next(self._free), values, KINDS[first.kind], first.name))
        else:
            known = self.numbers[place]
            filled = tuple(there or here for there, here in zip(known.values, values, strict=True))
            self.numbers[place] = replace(known, values=filled, name=known.name or first.name)
        return f"{_LETTER}{place}{_CLOSE}"

    def _goes_into(self, place: int, kind: str, values: tuple[str, ...]) -> bool:
        """Whether a number is one that has a letter: for no size another, and for two sizes or more the same."""
        known = self.numbers[place]
        both = [(there, here) for there, here in zip(known.values, values, strict=True) if there and here]
        return known.kind == KINDS[kind] and len(both) > 1 and all(there == here for there, here in both)


def grouped(said: Mapping[int, T], key: Callable[[T], object]) -> list[list[int]]:
    """The sizes in groups of those with the same key, each group by its first size."""
    groups: dict[object, list[int]] = {}
    for at, each in said.items():
        groups.setdefault(key(each), []).append(at)
    return list(groups.values())


def versions(each: Iterable[Version]) -> str:
    """A text with a version for each group of sizes."""
    return "".join(f"{_SIZES}{' '.join(map(str, version.sizes))}{_CLOSE}{version.text}" for version in each)


def versions_of(text: str) -> tuple[Version, ...]:
    """The versions of a text; one for all where it has none."""
    found = tuple(Version(tuple(map(int, each[1].split())), each[2]) for each in _VERSIONS.finditer(text))
    return found or (Version((), text),)


def each_version(text: str, written: Callable[[str], S], named: Callable[[tuple[int, ...], S], S]) -> Iterator[S]:
    """A text as a page writes it: its versions, or itself. named: a version with the sizes that it is for."""
    for version in versions_of(text):
        said = written(version.text)
        yield named(version.sizes, said) if version.sizes else said


def said_for(text: str, size: int, numbers: Sequence[SizedNumber]) -> str:
    """The text as the guide of one size says it; empty where no version is for it."""
    told = "".join(version.text for version in versions_of(text) if not version.sizes or size in version.sizes)
    return with_letters(told, lambda number: numbers[number].values[size])


def with_letters(text: str, write: Callable[[int], str]) -> str:
    """The text with something written for each letter, given the place of its number."""
    return _LETTERS.sub(lambda found: write(int(found[1])), text)


def without_letters(text: str) -> str:
    """The words of a text alone."""
    return _LETTERS.sub("", " ".join(version.text for version in versions_of(text))) if is_sized(text) else text


def letters_in(text: str) -> tuple[int, ...]:
    """The numbers that have a letter in the text, by their places in the booklet."""
    return tuple(int(found[1]) for found in _LETTERS.finditer(text))


def is_sized(text: str) -> bool:
    """Whether the text holds a letter or has versions."""
    return _ANY.search(text) is not None
