"""What the guide is to say, without a word of it: names of messages and the values that stand in them.

The sentences are in `templates/words/`, one folder a language. Nothing here loads the library that reads them, for
techniques are loaded by `check` too.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Literal, NamedTuple

from furbelow.garment.bench import Edge

FIBRES = ("cotton", "linen", "wool", "silk", "polyester", "viscose", "nylon", "acetate")  # those that have words

# How a length is rounded, by the names of Phrasing. It belongs to the value, so that no translator can choose another.
Rounded = Literal["length", "about", "off", "cut", "buy", "thread_left"]


class Length(NamedTuple):
    mm: Fraction
    how: Rounded = "length"


class Stitch(NamedTuple):
    """A stitch length in mm, with its name: "2 mm stitch"."""

    mm: Fraction


class Number(NamedTuple):
    value: Fraction
    places: int = 2


class Share(NamedTuple):
    value: Fraction


class Ratio(NamedTuple):
    value: Fraction


class Pieces(NamedTuple):
    """Pieces by their names in the spec; with `side`, that edge of them."""

    names: tuple[str, ...]
    side: str = ""


class Supply(NamedTuple):
    """A material by its name in the spec."""

    name: str


class Fibre(NamedTuple):
    """What a material is made of, in the word of the spec: a fibre of FIBRES, or a maker's own."""

    word: str


class Things(NamedTuple):
    """Several values, said as a list."""

    items: tuple[Value, ...]


class Part(NamedTuple):
    """A message said inside another one, with values of its own: one row of a list, an edge that is called differently."""

    message: str
    values: Values = {}


class One(NamedTuple):
    """One of a few words that messages select by, and that none may say: One("bright", ("bright", "plain"))."""

    word: str
    of: tuple[str, ...] = ("yes", "no")


Value = Length | Stitch | Number | Share | Ratio | Pieces | Supply | Fibre | Things | Part | One | int
Values = Mapping[str, Value]


def flag(value: object) -> One:
    """yes or no. A bare bool would reach a message as the number 1 or 0, and 0 is `one` in French."""
    return One("yes" if value else "no")


def edge_said(edge: Edge) -> Pieces:
    """An edge as messages are given it; a stack is always of top edges."""
    return Pieces(edge.pieces, edge.name.rpartition(".")[2] if "." in edge.name else "top")
