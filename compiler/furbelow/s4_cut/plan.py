"""A cutting plan: sections of the bolt, lanes in a section, segments in a lane; or whole panels, laid freely.

All lengths are fractions of a mm.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from fractions import Fraction
from typing import Literal

from furbelow.garment.tags import tag
from furbelow.named import NamedTuple

# Where a lane lies: on a single layer; on the fold, opening to double; in the upper or under layer of a pair.
Layer = Literal["flat", "fold", "upper", "under"]


class How(StrEnum):
    """How a plan was found and how good it is known to be, by the message that says so."""

    BY_AREA = "plan-by-area"
    FIRST_FIT = "plan-first-fit"
    PROVEN = "plan-proven"
    PROVEN_STRAIGHT = "plan-proven-straight"  # among plans with free panels that straight cuts part
    PROVEN_PANELS = "plan-proven-panels"
    PROVEN_WITHIN = "plan-proven-within"
    PROVEN_WITHIN_STRAIGHT = "plan-proven-within-straight"
    PROVEN_WITHIN_PANELS = "plan-proven-within-panels"
    BEST_FOUND = "plan-best-found"
    BEST_OF_CLASS = "plan-best-of-class"
    AFTER_EACH_OTHER = "plan-after-each-other"
    SHORTEST_PROVEN = "plan-shortest-proven"
    SHORTEST_FOUND = "plan-shortest-found"


class Segment(NamedTuple):
    """Part `part` of `parts` of one copy of a strip, `length` along its lane from `start`.

    turned: the strip's length lies over the lane, so `length` is its depth.
    """

    strip: str
    wearer: str | None
    copy: int
    part: int
    parts: int
    length: Fraction
    start: Fraction
    turned: bool = False


class Lane(NamedTuple):
    """One slit lane, `depth` deep when opened.

    offset: from the edge or, on folded cloth, from the fold; in an across section, along the bolt from its start.
    selvedge: it lies at a selvedge, which is an edge of what is cut from it.
    """

    offset: Fraction
    depth: Fraction
    layer: Layer
    segments: tuple[Segment, ...]
    selvedge: bool = False

    @property
    def used(self) -> Fraction:
        """Length from the lane's beginning to the end of its last segment."""
        return max((each.start + each.length for each in self.segments), default=Fraction(0))


class Panel(NamedTuple):
    """One copy of a whole piece, laid freely: `from_end` of its section and `from_edge` of the cloth is its near corner.

    length: along the bolt. width: over it. turned: the piece's own length lies over the cloth.
    """

    strip: str
    wearer: str | None
    copy: int
    from_end: Fraction
    from_edge: Fraction
    length: Fraction
    width: Fraction
    turned: bool = False

    @property
    def part(self) -> int:
        return 1

    @property
    def parts(self) -> int:
        return 1


def tag_of(cut: Segment | Panel, marks: Mapping[str, str]) -> str:
    """What stands on its tag: "2b" for the second copy of 2, "2b·1" for the first of its parts. marks: of the cutting."""
    return tag(marks[cut.strip], cut.copy, cut.part if cut.parts > 1 else 0)


class Section(NamedTuple):
    """One laying of the cloth, `length` of the bolt from `start`.

    across: the lanes run over the opened-out width, one below the other along the bolt.
    panels: whole pieces that are chalked one by one; such a section has no lanes.
    """

    start: Fraction
    length: Fraction
    lanes: tuple[Lane, ...]
    across: bool = False
    panels: tuple[Panel, ...] = ()

    @property
    def pieces(self) -> tuple[Segment | Panel, ...]:
        """All that is cut from it, lane after lane."""
        return (*(segment for lane in self.lanes for segment in lane.segments), *self.panels)


class CuttingPlan(NamedTuple):
    """The plan, what it costs, and how near to the best it is proven to be.

    laid_length: the sections' lengths added up, on shrunk cloth. bolt_length: what to buy, before shop rounding.
    bound: no plan of this kind costs less. gap: share of the cost by which the bound is missed; 0 when proven.
    """

    sections: tuple[Section, ...]
    usable_width: Fraction
    folded: bool
    laid_length: Fraction
    bolt_length: Fraction
    joins: int
    cuts: int
    cost: Fraction
    bound: Fraction
    proven: bool
    how: How

    @property
    def gap(self) -> Fraction:
        return Fraction(0) if self.cost <= self.bound else (self.cost - self.bound) / self.cost

    @property
    def setups(self) -> int:
        return len(self.sections)
