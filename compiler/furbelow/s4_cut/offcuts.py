"""What stays over of the cloth, as far as it is worth keeping."""

from __future__ import annotations

from fractions import Fraction

from furbelow.named import NamedTuple
from furbelow.s4_cut.plan import CuttingPlan, Section
from furbelow.s4_cut.through_cuts import cut_apart


class Offcut(NamedTuple):
    """A rectangle that stays over: from which section (counted from 1), and its size."""

    section: int
    length: Fraction
    width: Fraction


# An offcut smaller than this is not worth its place in the drawer (house rule, maker to confirm).
KEEP_LENGTH, KEEP_WIDTH = Fraction(200), Fraction(100)


def offcuts(
    plan: CuttingPlan, least_length: Fraction = KEEP_LENGTH, least_width: Fraction = KEEP_WIDTH
) -> tuple[Offcut, ...]:
    """Rectangles left over that are at least so long and so wide, largest first.

    They are the ends of lanes, one lane each, and the width left beside the lanes; and what straight cuts leave of a
    section of panels.
    """
    found: list[Offcut] = []
    for number, section in enumerate(plan.sections, 1):
        if section.panels:
            found += _beside_panels(section, number, plan.usable_width)
            continue
        lane_room = plan.usable_width if section.across else section.length
        for lane in section.lanes:
            found.append(Offcut(number, lane_room - lane.used, lane.depth))
        beside = (
            Fraction(0)
            if section.across
            else plan.usable_width - sum((lane.depth for lane in section.lanes), Fraction(0))
        )
        if plan.folded and not section.across:
            # What is left lies at the open edges, half of it in either layer.
            found += [Offcut(number, section.length, beside / 2)] * 2
        else:
            found.append(Offcut(number, section.length, beside))
    kept = [
        each
        for each in found
        if (each.length >= least_length and each.width >= least_width)
        or (each.width >= least_length and each.length >= least_width)
    ]
    return tuple(sorted(kept, key=lambda each: (-each.length * each.width, each.section)))


def _beside_panels(section: Section, number: int, width: Fraction) -> list[Offcut]:
    """Nothing where shears go round each panel: what is left then is one ragged piece."""
    apart = cut_apart(section.panels, section.length, width)
    left = apart.left if apart is not None else ()
    return [Offcut(number, each.far - each.near, each.high - each.low) for each in left]
