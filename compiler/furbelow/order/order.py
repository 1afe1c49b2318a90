"""What is to be made, for whom and where."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.garment.spec import Spec, Written
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple


class Order(NamedTuple):
    """A spec for one body, with choices, in a workroom.

    `wearer`: "size M", "Bo"; `size`: "M", where the body is nobody's. `number`: that of the wearer in the class, 0 where
    none is given yet; `notes`: of whoever leads it.
    """

    spec: Spec
    wearer: str
    body: Mapping[str, Written]
    choices: Mapping[str, Written]
    room: Workroom
    size: str = ""
    number: int = 0
    notes: str = ""
