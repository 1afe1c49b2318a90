"""A formula as a tree. Every part has its place in the text: from `start` to before `end`."""

from __future__ import annotations

from typing import TypeAlias

from furbelow.measure.quantity import Quantity
from furbelow.named import NamedTuple


class Amount(NamedTuple):
    """A quantity as written: `2`, `12 1/2 in`, `80%`."""

    start: int
    end: int
    quantity: Quantity


class Name(NamedTuple):
    """A measure, a choice or a dimension of a piece: `waist_girth`, `upper.length`; or `pi`."""

    start: int
    end: int
    name: str


class Index(NamedTuple):
    """The number of the round where the name of a repeat stands."""

    start: int
    end: int
    name: str
    number: int


class Prefix(NamedTuple):
    """`-` before a quantity, or `not` before a comparison."""

    start: int
    end: int
    sign: str
    operand: Term


class Infix(NamedTuple):
    """Two terms and what stands between: `+ - * /`, a comparison, `and`, `or`."""

    start: int
    end: int
    sign: str
    left: Term
    right: Term


class Call(NamedTuple):
    """A function of quantities: `max(a, b)`."""

    start: int
    end: int
    function: str
    arguments: tuple[Term, ...]


Term: TypeAlias = Amount | Name | Index | Prefix | Infix | Call
