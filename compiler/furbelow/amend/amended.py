"""What a record of the work comes to, as values: what was found, and the garment as it will be."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from furbelow.amend.read_record import Measured
from furbelow.amend.verdict import Verdict
from furbelow.amend.worked import SharedOut
from furbelow.order.chain import Planned
from furbelow.order.order import Order

BEFORE_CUTTING, CUT = -2, -1  # where a measurement stands, before the steps by number


class Fix(StrEnum):
    """What comes of a measurement that is no drawn edge's."""

    GO_ON = "go on"
    WITHIN = "within the rounding"
    FOLLOWS = "it stays so"
    AT_HEM = "it stays so, short below"
    PAIR = "it stays so, unlike its like"
    CUT_TO = "cut to what was planned"
    SEWN = "sewn already"
    MORE_JOINS = "enough for another way to cut"


@dataclass(frozen=True)
class Finding:
    """A measurement with what it should have been, what is to be done, and after which performed step it was taken.

    assumed: nobody measured it; it was gathered to the length that the first guide gave, and another is wanted now.
    level: the depth to which all copies that are sewn to one are cut, in mm; None where nothing has to be cut level.
    along: of a ring that flares, where the tape lay: at its cut edge ("cut") or on its seam line ("line").
    """

    measured: Measured
    wanted: Fraction
    after: int
    verdict: Verdict | None  # of an edge that was drawn in
    assumed: bool = False
    level: Fraction | None = None
    fix: Fix = Fix.GO_ON
    along: str = ""


Shared = tuple[int | None, SharedOut]  # the copy that it is for, None for all


@dataclass(frozen=True)
class Amended:
    """The work from now on.

    planned: as it was meant. now: as it will be; `copies` is the same for single copies that came out otherwise, and
    `together` for all of them from step `meet` on, where they are sewn to each other. start: the first performed step
    that is still to do; BEFORE_CUTTING when nothing is cut yet. shared: the edges that no longer have one length.
    """

    order: Order
    planned: Planned
    now: Planned
    copies: Mapping[int, Planned]
    together: Planned
    meet: int
    count: int  # how many copies there are of what is told apart; 0 where nothing is
    findings: tuple[Finding, ...]
    start: int
    joined: frozenset[str] = frozenset()  # operations from there on that were done when their strips were measured
    shared: tuple[Shared, ...] = ()

    @property
    def all_apart(self) -> bool:
        """Whether every copy is among `copies`."""
        return bool(self.copies) and len(self.copies) == self.count


@dataclass(frozen=True)
class Runs:
    """`now` for copies not told apart, `copies` for those that are, `together` for all from step `meet` on."""

    now: Planned
    copies: Mapping[int, Planned]
    together: Planned
    meet: int
    count: int

    @property
    def apart(self) -> Sequence[int | None]:
        """Each copy that is told apart, and None for the others where there are any."""
        return (*(() if self.copies and len(self.copies) == self.count else (None,)), *self.copies)

    def at(self, copy: int | None, step: int) -> Planned:
        """The garment that a copy belongs to at a step."""
        if step >= self.meet:
            return self.together
        return self.now if copy is None else self.copies.get(copy, self.now)
