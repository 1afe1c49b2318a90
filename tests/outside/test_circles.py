"""Circular flounces and circle skirts against a handbook of 1916, published radii and the definition."""

from __future__ import annotations

from fractions import Fraction
from math import isclose, pi

import pytest
from furbelow.garment.ring_sector import RingSector

from tests.techniques.small import INCH, sound, work


def ring_of(pieces: str, hem: str) -> RingSector:
    """The ring of the piece `flounce`, through reading, solving and rehearsal."""
    ring = sound(pieces, f"- ring cut: {{piece: flounce, hem: {hem}}}", units="inches").solved.pieces["flounce"].ring
    assert ring is not None
    return ring


def test_a_circular_flounce_of_1916_has_its_radius() -> None:
    """Baldt, Clothing for Women, 1916, draft of a circular flounce: 72 in to 112 in, 12 in deep; R = 72 x 12 / 40."""
    ring = ring_of("flounce: {from: net, length: 72 in, depth: 12 in}", "112 in")
    assert ring.radius / INCH == Fraction(216, 10)
    # Derived from the same figures: 72 in of arc at 21.6 in.
    assert round(ring.degrees, 2) == 190.99
    assert ring.outer / INCH == Fraction(336, 10)


def test_the_arcs_have_the_lengths_that_were_asked() -> None:
    """Definition: an arc is its radius times its angle."""
    ring = ring_of("flounce: {from: net, length: 72 in, depth: 12 in}", "112 in")
    assert ring.radius * ring.angle == 72 * INCH
    assert (ring.radius + ring.depth) * ring.angle == 112 * INCH


CIRCLES = [
    # part of a circle, copies, radius printed for a waist of 26 in (a sewing blog, 2014; printed short by up to 0.08).
    ("a whole circle in two halves", Fraction(1), 2, 4.13),
    ("half a circle", Fraction(1, 2), 1, 8.2),
    ("a third of a circle", Fraction(1, 3), 1, 12.4),
    ("a quarter of a circle", Fraction(1, 4), 1, 16.56),
]


@pytest.mark.parametrize(("name", "part", "copies", "printed"), CIRCLES, ids=[row[0] for row in CIRCLES])
def test_a_circle_skirt_has_the_published_radius(name: str, part: Fraction, copies: int, printed: float) -> None:
    """Radius = waist / (2 pi x part of the circle): definition, worked exactly; the printed figures are within 0.1 in."""
    arc = part / copies  # of a whole circle, in each copy
    ring = (
        ring_of(
            f"flounce: {{from: net, count: {copies}, length: 26 in / {copies}, depth: 22 in}}",
            f"26 in / {copies} + 2 * pi * 22 in * {arc}",
        )
        if copies == 1
        else _halves(copies, arc)
    )
    radius = float(ring.radius / INCH)
    assert isclose(radius, 26 / (2 * pi * float(part)), rel_tol=1e-12)
    assert abs(radius - printed) < 0.1
    assert round(ring.degrees, 6) == round(360 * float(arc), 6)


def _halves(copies: int, arc: Fraction) -> RingSector:
    # The ring is printed for a smaller waist than that of the wearer here, who could not put it on.
    worked = work(
        f"flounce: {{from: net, count: {copies}, length: 26 in / {copies}, depth: 22 in}}",
        f"""- ring cut: {{piece: flounce, hem: 26 in / {copies} + 2 * pi * 22 in * {arc}}}
        - join ends: {{of: flounce, into: one ring}}""",
        units="inches",
    )
    ring = worked.solved.pieces["flounce"].ring
    assert ring is not None
    assert worked.bench.edge("flounce.top").set_length == 26 * INCH
    return ring


def test_a_hoop_half_way_up_a_flared_skirt_is_as_long_as_the_arc_there() -> None:
    """Definition: between arcs of 120 cm and 200 cm, 40 cm apart, the arc 10 cm above the hem is 180 cm long, for an arc grows
    as its radius does. The channel's tape of 16 mm lies from 9.2 cm to 10.8 cm."""
    hoop = "- boning channel: {piece: base, above hem: 9.2 cm, tape: tape, bone: bone, overlap: 6 cm}"
    pieces = "base: {from: net, length: 120 cm, depth: 40 cm}"
    worked = sound(pieces, f"- ring cut: {{piece: base, hem: 200 cm}}\n- join ends: {{of: base}}\n{hoop}")
    assert {used.material: used.amount for used in worked.performed[-1].used}["bone"] == 1800 + 60
    # The end seams take nothing of an arc that is told as finished.
    assert worked.bench.edge("base.bottom").set_length == 2000
