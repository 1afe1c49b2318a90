"""Table marks: where the guide tapes lie, so that cloth drawn over the table is slit without a pattern."""

from __future__ import annotations

from fractions import Fraction

from furbelow.named import NamedTuple
from furbelow.s4_cut.plan import CuttingPlan, Lane, Section, Segment

RULER = Fraction(300)  # mm of a section that a ruler spans; house rule


class Mark(NamedTuple):
    """A tape at `distance` from the fold or edge (from the section's start, where lanes run across).

    lanes: numbers, counted from 1 in the section, of the lanes that end at this tape (two for a mirrored pair).
    depth: the strip between this tape and the one before, as it lies on the table (half, on the fold).
    """

    distance: Fraction
    depth: Fraction
    lanes: tuple[int, ...]
    on_fold: bool


def from_far_side(lane: Lane) -> bool:
    """Whether a lane lies at a selvedge that is not at the near edge of the table; folded, both lie at the far side."""
    return lane.selvedge and (lane.layer != "flat" or lane.offset > 0)


def turned(plan: CuttingPlan, section: Section) -> bool:
    """Whether a section of lanes over the width is laid a quarter round, its cut end on the near edge of the table: cloth that is
    wider than the section is long hangs over a table less that way."""
    return section.across and section.length <= plan.usable_width


def by_ruler(plan: CuttingPlan, section: Section) -> Segment | None:
    """The one strip that a short section is, if it is cut off by a ruler, without tapes on the table."""
    cuts = [each for lane in section.lanes if lane.layer == "flat" and not lane.selvedge for each in lane.segments]
    if plan.folded or len(section.lanes) != 1 or len(cuts) != 1 or section.length > RULER:
        return None
    across = section.lanes[0].depth if section.across else cuts[0].length
    return cuts[0] if across == section.length else None


def table_marks(section: Section) -> tuple[Mark, ...]:
    """The section's tapes in order, each measured from the same fold or edge, so that errors don't add up.

    A lane at the far selvedge has no tape: it is measured from there, for the cloth is seldom of one width.
    """
    marks: dict[Fraction, Mark] = {}
    for number, lane in enumerate(section.lanes, 1):
        if from_far_side(lane):
            continue
        on_fold = lane.layer == "fold"
        depth = lane.depth / 2 if on_fold else lane.depth
        distance = lane.offset + depth
        lanes = marks[distance].lanes if distance in marks else ()
        marks[distance] = Mark(distance, depth, (*lanes, number), on_fold)
    return tuple(marks[distance] for distance in sorted(marks))


def is_taped(plan: CuttingPlan, section: Section) -> bool:
    """Whether a section is cut along tapes: not where it has panels, a ruler does, or all lies at far selvedges."""
    return bool(table_marks(section)) and not by_ruler(plan, section)


def as_taped_before(plan: CuttingPlan, number: int) -> bool:
    """Whether the tapes of section `number` lie on the table already: where they lay for the last section that has any, the same
    way, and long enough."""
    section = plan.sections[number - 1]
    before = next((each for each in reversed(plan.sections[: number - 1]) if is_taped(plan, each)), None)
    if before is None or before.across != section.across or turned(plan, before) != turned(plan, section):
        return False
    too_short = not section.across and before.length < section.length  # over the width all sections are alike
    return not too_short and table_marks(before) == table_marks(section)
