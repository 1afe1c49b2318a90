"""Trapezes and arcs laid one in the other, against every placement tried: plane geometry, no rule of ours."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import permutations, product
from math import atan2, cos, hypot, pi, sin

import pytest
from furbelow.garment.gore import Gore, Width
from furbelow.garment.ring_sector import RingSector

Sides = tuple[tuple[Fraction, Fraction], tuple[Fraction, Fraction]]


def _every_row(gores: list[tuple[int, int]], *, turn: bool) -> Iterator[Fraction]:
    """How wide a row is, for every order of these symmetric trapezes (narrow, broad) and every way up that is allowed.

    Two straight sides do not cross where they do not at both ends, so each is pushed left until one end meets.
    """
    for order in permutations(gores):
        for ups in product((True, False) if turn else (True,), repeat=len(order)):
            above = below = Fraction(0)
            for (narrow, broad), up in zip(order, ups, strict=True):
                in_by = Fraction(broad - narrow, 2)
                top, bottom = ((in_by, narrow), (Fraction(0), broad)) if up else ((Fraction(0), broad), (in_by, narrow))
                left = max(above - top[0], below - bottom[0])
                above, below = left + top[0] + top[1], left + bottom[0] + bottom[1]
            yield max(above, below)


@pytest.mark.parametrize("one_way", [False, True])
@pytest.mark.parametrize(
    "gores",
    [
        [(200, 360), (200, 360)],
        [(200, 360), (200, 360), (200, 360), (200, 360)],
        [(300, 460), (150, 250), (150, 250), (150, 250)],
        [(300, 400), (180, 360), (180, 360), (150, 420)],
        [(300, 340), (200, 300), (200, 300), (250, 500), (250, 500)],
    ],
)
def test_no_order_and_no_turning_of_gores_makes_a_narrower_row(gores: list[tuple[int, int]], one_way: bool) -> None:
    widths = tuple(Width("side", Fraction(narrow), Fraction(broad), 1) for narrow, broad in gores)
    nothing = Fraction(0)
    mean = [sum(each) / Fraction(len(gores)) for each in zip(*gores, strict=True)]
    gore = Gore(mean[0], mean[1], Fraction(700), nothing, nothing, nothing, widths, True, one_way, Fraction(10_000))
    assert len(gore.rows) == 1
    assert gore.blank[0] == min(_every_row(gores, turn=not one_way))


def test_one_way_cloth_takes_more_of_the_same_gores() -> None:
    gores = [(200, 360)] * 4
    assert min(_every_row(gores, turn=False)) == 4 * 360
    assert min(_every_row(gores, turn=True)) == 4 * 280 + 80


RINGS = [
    # A yoke that is a cone frustum: 75 to 105 cm in two halves, 18 cm deep; a flounce; a quarter of a circle.
    RingSector(Fraction(375), Fraction(525), Fraction(180), Fraction(10), Fraction(10), Fraction(10)),
    RingSector(Fraction(900), Fraction(1400), Fraction(250), Fraction(10), Fraction(15), Fraction(12)),
    RingSector(Fraction(330), Fraction(330) + Fraction(pi / 2) * 200, Fraction(200), ends=Fraction(15)),
]


@pytest.mark.parametrize("ring", RINGS)
def test_the_next_copy_touches_the_one_before_and_does_not_cross_it(ring: RingSector) -> None:
    assert ring.next_down is not None
    assert not _cross(ring, 0, float(ring.next_down) + 0.1)
    assert _cross(ring, 0, float(ring.next_down) - 4)


@pytest.mark.parametrize("ring", RINGS)
def test_no_shift_of_two_copies_the_same_way_up_needs_a_smaller_rectangle(ring: RingSector) -> None:
    """Every shift on a grid of 2 cm: none that keeps the copies apart beats ours by more than the grid allows."""
    wide, high = ring.blank(Fraction(0))
    stacked = ring._replace(stacked=2).blank(Fraction(0))
    ours = float(stacked[0] * stacked[1])
    for across, down in product(range(0, int(wide) + 1, 20), range(0, int(high) + 1, 20)):
        if (float(wide) + across) * (float(high) + down) < ours * 0.98:
            assert _cross(ring, across, down)


def _cross(ring: RingSector, across: float, down: float) -> bool:
    """Whether a point of the outline of a copy that is shifted so lies well inside the one that is not, or the reverse."""
    return any(_inside(ring, x + across, y - down) or _inside(ring, x - across, y + down) for x, y in _outline(ring))


def _outline(ring: RingSector) -> Iterator[tuple[float, float]]:
    """Points round the cut piece, 1 mm within it; the centre at 0, the arcs above it."""
    half, ends = float(ring.angle / 2), float(ring.ends)
    inner, outer = float(ring.inner) + 1, float(ring.outer) - 1
    for part in range(201):
        angle, radius = half * (part / 100 - 1), inner + (outer - inner) * part / 200
        yield inner * sin(angle), inner * cos(angle)
        yield outer * sin(angle), outer * cos(angle)
        for side in (-1, 1):
            off = max(ends - 1, 0)
            yield side * (radius * sin(half) + off * cos(half)), radius * cos(half) - off * sin(half)


def _inside(ring: RingSector, x: float, y: float) -> bool:
    half, radius = float(ring.angle / 2), hypot(x, y)
    angle = abs(atan2(x, y))
    if angle <= half:
        return float(ring.inner) < radius < float(ring.outer)
    # In the margin beside a straight end: near to its line, between the two arcs measured along it.
    along, beside = radius * cos(angle - half), radius * sin(angle - half)
    return beside < float(ring.ends) and float(ring.inner) < along < float(ring.outer)


def test_a_yoke_from_waist_to_hips_is_a_cone_cut_open() -> None:
    """Plane geometry: the slant heights of a cone are as its circles, and its mantle opens to the angle of circle by slant."""
    waist, hips, deep = Fraction(780), Fraction(1080), Fraction(180)
    ring = RingSector(waist, hips, deep)
    # By similar triangles from the point of the cone: slant : (slant + 180) = 780 : 1080.
    slant = waist * deep / (hips - waist)
    assert slant / (slant + deep) == waist / hips
    assert ring.radius == slant == 468
    assert ring.angle == waist / slant
    assert round(ring.degrees, 2) == 95.49


def test_a_dart_takes_twice_half_its_width_and_its_legs_are_hypotenuses() -> None:
    """Pythagoras: a dart 4.5 cm wide and 30 cm long, with legs of 30.08 cm; and one of 5, 12 and 13, made twice as wide."""
    from tests.techniques.small import work

    pieces = "skirt: {from: net, length: 110 cm, depth: 60 cm}"
    steps = "- darts: {edge: skirt.top, length: LONG, count: 2, long: DEEP}"
    plain = work(pieces, steps.replace("LONG", "90 cm").replace("DEEP", "12 cm")).performed[0]
    assert plain.sewn[0].length == 130  # (110 - 90) / 2 = 10 cm, half of it 5 cm
    long = work(pieces, steps.replace("LONG", "101 cm").replace("DEEP", "30 cm")).performed[0]
    assert float(long.sewn[0].length) == pytest.approx(hypot(300, 22.5), abs=0.05)
