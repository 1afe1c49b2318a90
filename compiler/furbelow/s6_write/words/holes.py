"""The numbers in a text, marked as they are said, so that texts for several sizes can be held beside each other.

A marked number stands between two signs of the private use of Unicode (plane 16), with its kind behind the first. They are
there only where a garment is told for a booklet of sizes; no text that a reader sees holds one.
"""

from __future__ import annotations

import re

from furbelow.named import NamedTuple

_OPEN, _CLOSE, _NAMED = "\U0010ff00", "\U0010ff01", "\U0010ff05"
_HOLE = re.compile(f"{_OPEN}(.)([^{_OPEN}{_NAMED}{_CLOSE}]*){_NAMED}([^{_OPEN}{_CLOSE}]*){_CLOSE}", re.DOTALL)
_NAMELESS = re.compile(f"({_OPEN}.)(?={_NAMED})", re.DOTALL)
_WORD = re.compile(rf"(?:{_OPEN}[^{_OPEN}{_CLOSE}]*{_CLOSE}|\S)+")
# The signs of the kinds of numbers, and what messages select them by.
KINDS = {
    "l": "length",
    "s": "stitch",
    "n": "count",
    "%": "share",
    "r": "ratio",
    "w": "weight",
    "v": "volume",
    "m": "money",
}
SENTENCE = "#"  # the kind of the number of a sentence: it is where it stands, and no number of the garment


class Hole(NamedTuple):
    """A number as it is shown, with its unit.

    kind: a sign, the same for numbers that measure the same sort of thing. name: of the value, as its message has it; of one of several with which it is, "mark 2".
    """

    kind: str
    shown: str
    name: str = ""


class SentenceNumber(int):
    """The number of a sentence: what is called 3 for one size may be called 4 in the booklet."""


class MarkedNumber(SentenceNumber):
    """That number where it is drawn, written marked."""

    def __str__(self) -> str:
        return hole(SENTENCE, repr(int(self)))


def hole(kind: str, shown: str, name: str = "") -> str:
    """The number marked in its text. What is marked inside it is a part of it."""
    return f"{_OPEN}{kind}{name}{_NAMED}{bare(shown)}{_CLOSE}"


def called(text: str, name: str) -> str:
    """The text with that name for every number in it that has none."""
    return _NAMELESS.sub(rf"\g<1>{name}", text) if _OPEN in text else text


def bare(text: str) -> str:
    """The text as it reads, nothing marked."""
    return _HOLE.sub(r"\3", text) if _OPEN in text else text


def parted(text: str) -> tuple[str | Hole, ...]:
    """The text in pieces: what is said, and the numbers in it."""
    found: list[str | Hole] = []
    after = 0
    for each in _HOLE.finditer(text):
        found += [bare(text[after : each.start()]), Hole(each[1], each[3], each[2])]
        after = each.end()
    return (*found, bare(text[after:]))


def words_of(text: str) -> list[str]:
    """The words of the text; a marked number with its unit is one."""
    return _WORD.findall(text) if _OPEN in text else text.split()


def without_last(text: str) -> str:
    """The text without its last letter, or without the marked number that it ends with."""
    return text[: text.rindex(_OPEN)] if text.endswith(_CLOSE) else text[:-1]
