"""What a search for a plan in lanes may do, and what it has found."""

from __future__ import annotations

from dataclasses import dataclass

from furbelow.named import NamedTuple
from furbelow.s4_cut.lanes.lay import Laying

MOST_GROUPS = 40_000
MOST_SECTIONS = 3


class Limits(NamedTuple):
    """Upper limits on joins and sections that a trade-off sets; None where the prices alone decide."""

    joins: int | None = None
    sections: int | None = None

    def allow(self, joins: int, sections: int) -> bool:
        return (self.joins is None or joins <= self.joins) and (self.sections is None or sections <= self.sections)

    def less(self, joins: int, sections: int) -> Limits:
        """What is left of the limits when so many joins and sections are already spent."""
        return Limits(
            None if self.joins is None else self.joins - joins,
            None if self.sections is None else self.sections - sections,
        )


@dataclass(slots=True)
class Work:
    """Groups that may still be looked at; one count for a whole plan, so that the plan never hangs on the clock."""

    left: int = MOST_GROUPS


@dataclass(slots=True)
class Found:
    """The best plan so far, its cost in coins, and the least that any plan may cost."""

    layings: list[Laying] | None
    cost: float
    bound: float
