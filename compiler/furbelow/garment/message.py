"""What the guide is to say, without a word of it: names of messages and the values that stand in them.

The sentences are in `templates/words/`, one folder a language. Nothing here loads the library that reads them, for
techniques are loaded by `check` too.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Literal

from furbelow.garment.bench import Edge
from furbelow.measure.measure_text import System
from furbelow.measure.quantity import Quantity
from furbelow.named import NamedTuple

FIBRES = ("cotton", "linen", "wool", "silk", "polyester", "viscose", "nylon", "acetate")  # those that have words

# How a length is rounded, by the names of Phrasing. It belongs to the value, so that no translator can choose another.
Rounded = Literal["length", "about", "off", "cut", "buy", "thread", "thread_left"]


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


class Weight(NamedTuple):
    """A weight that is worked out in g, as a kitchen scale shows it."""

    grams: Fraction


class Volume(NamedTuple):
    """A volume that is worked out in ml, as a kitchen measures it: in ml and l in every room."""

    ml: Fraction


class Amount(NamedTuple):
    """A number as the spec has it, in the units that the spec is written in."""

    quantity: Quantity
    system: System


class Money(NamedTuple):
    value: Fraction
    currency: str


class Pieces(NamedTuple):
    """Pieces by their names in the spec; with `side`, that edge of them; with `stack`, the layers that bear this name."""

    names: tuple[str, ...]
    side: str = ""
    stack: str = ""


class Supply(NamedTuple):
    """A material by its name in the spec."""

    name: str


class Fibre(NamedTuple):
    """What a material is made of, in the word of the spec: a fibre of FIBRES, or a maker's own."""

    word: str


class Own(NamedTuple):
    """A maker's own words, or a letter of the drawing: said as they stand."""

    text: str


# How several values stand behind each other: "a, b and c", "a, b", "a; b", "a, then b", "a + b".
Joined = Literal["list", "row", "clauses", "then", "sum"]


class Things(NamedTuple):
    """Several values, said one behind the other."""

    items: tuple[Value, ...]
    joined: Joined = "list"


class Part(NamedTuple):
    """A message said inside another one, with values of its own: one row of a list, an edge that is called differently."""

    message: str
    values: Values = {}


class One(NamedTuple):
    """One of a few words that messages select by, and that none may say: One("bright", ("bright", "plain"))."""

    word: str
    of: tuple[str, ...] = ("yes", "no")


Value = (
    Length
    | Stitch
    | Number
    | Share
    | Ratio
    | Weight
    | Volume
    | Amount
    | Money
    | Pieces
    | Supply
    | Fibre
    | Own
    | Things
    | Part
    | One
    | int
)
Values = Mapping[str, Value]


def flag(value: object) -> One:
    """yes or no. A bare bool would reach a message as the number 1 or 0, and 0 is `one` in French."""
    return One("yes" if value else "no")


def piece_said(name: str) -> Part:
    """A piece by the maker's word alone: "flounce", where no sentence is built round it."""
    return Part("piece-alone", {"piece": Pieces((name,))})


def edge_said(edge: Edge) -> Pieces:
    """An edge as messages are given it; a stack, which is always of top edges, by the name its maker gave it."""
    if "." not in edge.name:
        return Pieces(edge.pieces, "top", edge.name)
    return Pieces(edge.pieces, edge.name.rpartition(".")[2])
