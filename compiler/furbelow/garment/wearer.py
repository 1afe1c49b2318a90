"""A wearer as read: body measures and choices, each with its place."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.diagnose.fault import Span
from furbelow.garment.spec import Word, Written
from furbelow.named import NamedTuple


class Wearer(NamedTuple):
    """`body` and `choices` are under the names that the garment spec uses; `name` tells wearers apart."""

    name: str
    body: Mapping[str, Written]
    choices: Mapping[str, Written]
    span: Span
    language: Word | None = None  # of the guide; None leaves it to the workroom and the spec
    number: int = 0  # in the class, on every cut piece; 0 where none is given
    notes: str = ""  # of whoever leads the class
    workroom: Word | None = None  # the file of another workroom than the class works in
    spec: Word | None = None  # in a table of orders, the file of the garment
    size: Word | None = None  # in a table of orders, a size of that spec in the place of measures
