"""How panels that lie freely come apart: by straight cuts from side to side, where there are such cuts."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.named import NamedTuple
from furbelow.s4_cut.plan import Panel, Section
from furbelow.s4_cut.problem import CHALKED, SHEARED


class Part(NamedTuple):
    """A rectangle of the section, from its near end and from the edge of the cloth."""

    near: Fraction
    far: Fraction
    low: Fraction
    high: Fraction

    @property
    def area(self) -> Fraction:
        return (self.far - self.near) * (self.high - self.low)


class Through(NamedTuple):
    """One straight cut through a part, from side to side.

    over: the cut runs over the width, `at` from the near end; else along the bolt, `at` from the edge.
    panels: those of the part. trims: nothing but what stays over lies beyond it.
    """

    over: bool
    at: Fraction
    panels: tuple[Panel, ...]
    trims: bool


class Apart(NamedTuple):
    """The cuts in their order, and the rectangles that stay over."""

    cuts: tuple[Through, ...]
    left: tuple[Part, ...]


def panel_cuts(section: Section, width: Fraction) -> int:
    """What a section of panels counts as, in cuts: the section itself and so many for each panel."""
    apart = cut_apart(section.panels, section.length, width)
    return 1 + len(section.panels) * (SHEARED if apart is None else CHALKED)


def cut_apart(panels: Sequence[Panel], length: Fraction, width: Fraction) -> Apart | None:
    """How a section of panels comes apart by through cuts alone; None where shears have to go round a panel.

    What stays over at the far end or side of a part comes off first, the larger of the two before the other.
    """
    cuts: list[Through] = []
    left: list[Part] = []
    waiting = [(Part(Fraction(0), length, Fraction(0), width), tuple(panels))]
    while waiting:
        part, held = waiting.pop()
        if not held:
            left.append(part)
            continue
        cut = _trim(part, held) or _parting(held)
        if cut is None:
            if len(held) > 1:
                return None
            continue
        cuts.append(cut)
        nearer, further = _halves(part, cut)
        beyond = [panel for panel in held if (panel.from_end if cut.over else panel.from_edge) >= cut.at]
        waiting += [(further, tuple(beyond)), (nearer, tuple(panel for panel in held if panel not in beyond))]
    return Apart(tuple(cuts), tuple(left))


def _halves(part: Part, cut: Through) -> tuple[Part, Part]:
    if cut.over:
        return part._replace(far=cut.at), part._replace(near=cut.at)
    return part._replace(high=cut.at), part._replace(low=cut.at)


def _trim(part: Part, panels: tuple[Panel, ...]) -> Through | None:
    """The cut that takes off most of what lies beyond, or before, all panels."""
    near, low = min(each.from_end for each in panels), min(each.from_edge for each in panels)
    far = max(each.from_end + each.length for each in panels)
    high = max(each.from_edge + each.width for each in panels)
    off = [
        (part._replace(near=far), True, far),
        (part._replace(low=high), False, high),
        (part._replace(far=near), True, near),
        (part._replace(high=low), False, low),
    ]
    spare, over, at = max(off, key=lambda each: each[0].area)
    return Through(over, at, panels, True) if spare.area else None


def _parting(panels: tuple[Panel, ...]) -> Through | None:
    """The nearest cut with panels on both sides and none across it."""
    for over in (True, False):
        stretches = sorted(
            (each.from_end, each.from_end + each.length) if over else (each.from_edge, each.from_edge + each.width)
            for each in panels
        )
        end = stretches[0][1]
        for start, stop in stretches[1:]:
            if start >= end:
                return Through(over, end, panels, False)
            end = max(end, stop)
    return None
