"""How stiff a cloth is, by a strip of it pushed over the edge of a table until it hangs.

The strip bends under its own weight alone, so how far its tip hangs down, for a length beyond the edge, tells its bending
length c, where c^3 is its bending rigidity by its weight for each area. The curve of the strip is worked out as a heavy
elastica, clamped level at the edge: theta'' = -(s / c^3) cos theta, s from the free end.
Source: Peirce, The "Handle" of Cloth as a Measurable Quantity, Journal of the Textile Institute 21, 1930. His approximate
formula is not used. In ASTM D1388 the tip is let down to a slope of 41.5 degrees, and c is half of the overhang.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import cos, pi, sin

from furbelow.diagnose.fault import Fault, Label, Span, Staged
from furbelow.measure.quantity import mm
from furbelow.named import NamedTuple

_STEP = 0.01  # of a bending length
_HALVINGS = 50
# Shares of the overhang: hanging less, the reading of the ruler decides; hanging more, the strip does, whatever its stiffness.
FLATTEST, STEEPEST = Fraction(1, 10), Fraction(19, 20)


class Overhang(NamedTuple):
    """A strip over an edge, in mm: how much of it is beyond, along the cloth, and how far its tip hangs below."""

    overhang: Fraction
    drop: Fraction
    span: Span

    @property
    def share(self) -> Fraction:
        return self.drop / self.overhang


def fallen(tip: float) -> tuple[float, float, float]:
    """A strip whose tip points so steeply down, in bending lengths: its overhang, how far it reaches out and down.

    tip: in radians, more than 0 and less than a right angle.
    """
    angle, bend, along, out, down = tip, 0.0, 0.0, 0.0, 0.0
    while angle > 0:
        # A step by its middle, from the free end to the edge.
        half_angle = angle - bend * _STEP / 2
        half_bend = bend + along * cos(angle) * _STEP / 2
        step = min(1.0, angle / (half_bend * _STEP)) if half_bend * _STEP > angle else 1.0
        angle -= half_bend * _STEP * step
        bend += (along + _STEP / 2) * cos(half_angle) * _STEP * step
        out += cos(half_angle) * _STEP * step
        down += sin(half_angle) * _STEP * step
        along += _STEP * step
        if step < 1:
            break
    return along, out, down


def bending_length(strip: Overhang) -> Staged[Fraction]:
    """The bending length in mm. Fails: FB724 where the strip hangs too little or too much to tell."""
    if strip.drop >= strip.overhang:
        said = f"{mm(strip.overhang).show()} of a strip can't hang {mm(strip.drop).show()} down"
        mend = "measure the overhang along the cloth, and the drop straight down from the top of the table"
        return Staged(None, (Fault("FB724", said, Label(strip.span), help=mend),))
    if not FLATTEST <= strip.share <= STEEPEST:
        far = "hardly" if strip.share < FLATTEST else "almost straight"
        said = f"{mm(strip.overhang).show()} of a strip hangs {far} down: {mm(strip.drop).show()}"
        mend = f"push it {'further out' if strip.share < FLATTEST else 'back'} until its tip hangs down by half of the overhang or a little more"
        return Staged(None, (Fault("FB724", said, Label(strip.span), help=mend),))
    low, high = 0.0, pi / 2
    for _ in range(_HALVINGS):
        tip = (low + high) / 2
        along, _, down = fallen(tip)
        low, high = (tip, high) if down / along < strip.share else (low, tip)
    return Staged(strip.overhang / Fraction(fallen(low)[0]).limit_denominator(10**6))


class Stiffness(NamedTuple):
    """What the strips of a cloth say together, in mm: the mean, and the least and the most that one of them said."""

    strips: int
    mean: Fraction
    least: Fraction
    most: Fraction


def stiffness(strips: Sequence[Overhang]) -> Staged[Stiffness]:
    """The bending length of a cloth by all of its strips."""
    read = [bending_length(strip) for strip in strips]
    found = [each.value for each in read if each.value is not None]
    faults = tuple(fault for each in read for fault in each.faults)
    if faults:
        return Staged(None, faults)
    return Staged(Stiffness(len(found), sum(found, Fraction(0)) / len(found), min(found), max(found)))
