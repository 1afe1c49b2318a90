"""A piece cut between two arcs: its edges, its rectangle, and what can't be cut."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.ring_sector import RingSector

from tests.techniques.small import refused, sound, work

FLOUNCE = """skirt: {from: net, length: 180 cm, depth: 40 cm}
flounce: {from: net, count: 2, length: 90 cm, depth: 25 cm}"""
CUT = "- ring cut: {piece: flounce, hem: 140 cm}"
SEW = """- join ends: {of: skirt, seam: 1 cm}
- join ends: {of: flounce, seam: 1 cm, into: one ring}
- attach: {edge: flounce.top, to: skirt.bottom, seam: 1 cm}"""


def test_the_top_matches_and_the_hem_is_longer() -> None:
    worked = sound(FLOUNCE, f"{CUT}\n{SEW}")
    assert worked.bench.edge("flounce.top").set_length == 1800
    assert worked.bench.edge("flounce.bottom").set_length == 2 * 1400
    assert worked.bench.depth("flounce") == 250


def test_the_plan_gets_a_rectangle_that_holds_the_ring_with_its_margins() -> None:
    piece = sound(FLOUNCE, f"{CUT}\n{SEW}").solved.pieces["flounce"]
    ring = piece.ring
    assert ring is not None
    assert (ring.above, ring.below, ring.ends) == (10, 0, 10)
    assert ring.radius == 900 * 250 / Fraction(500)
    assert ring.outer == 450 + 250
    assert piece.blank[0] > piece.cut_length
    assert piece.blank[1] > piece.cut_depth


def test_the_guide_tells_both_radii() -> None:
    words = sound(FLOUNCE, f"{CUT}\n{SEW}").words()
    assert "draw the outer arc at 70 cm" in words
    assert "Draw the inner arc at 44 cm." in words
    assert "measures 90 cm between the end seams" in words


@pytest.mark.parametrize("degrees", [20, 90, 150, 180, 200, 270, 300, 350])
def test_every_point_of_the_ring_lies_in_its_rectangle(degrees: int) -> None:
    from math import cos, pi, sin

    top, depth = Fraction(600), Fraction(250)
    ring = RingSector(top, top + depth * Fraction(degrees * pi / 180), depth, Fraction(10), Fraction(15), Fraction(12))
    width, height = ring.blank(Fraction(0))
    half = degrees * pi / 360
    # The centre lies on the middle line, the outer radius above the lower edge; points run downwards from it.
    points = []
    for radius in (float(ring.inner), float(ring.outer)):
        points += [(radius * sin(half * part / 60), radius * cos(half * part / 60)) for part in range(61)]
        points.append((radius * sin(half) + 12 * cos(half), radius * cos(half) - 12 * sin(half)))
    assert max(across for across, _ in points) * 2 <= float(width) + 0.1
    highest = float(ring.outer) - float(height)
    assert min(down for _, down in points) >= highest - 0.1
    # No more than half the margin of slack on either side: the rectangle is not simply the whole circle.
    assert float(width) - 2 * max(across for across, _ in points) < 12.1
    assert min(down for _, down in points) - highest < 12.1


def test_steps_before_the_ring_is_cut_are_refused() -> None:
    fault = refused("FB353", FLOUNCE, f"{SEW}\n{CUT}")
    assert fault.headline == "`flounce` is still a rectangle, and its ring is not cut out yet"


def test_a_hem_no_longer_than_the_top_is_refused() -> None:
    refused("FB314", FLOUNCE, f"{CUT.replace('140', '90')}\n{SEW}")


def test_a_whole_circle_is_refused_with_the_angle() -> None:
    fault = refused("FB354", FLOUNCE, f"{CUT.replace('140 cm', '90 cm + 2 * pi * 25 cm')}\n{SEW}")
    assert fault.notes[0] == "(247.1 cm - 90 cm) / 25 cm = 360.0 degrees"
    # Of two whole circles three are made, 240 degrees each.
    assert fault.notes[1] == "`hem` is of one copy, and there are 2 of `flounce`"
    assert "in 3 copies or more" in (fault.help or "")


def test_a_ring_is_not_pieced_of_strips() -> None:
    pieced = FLOUNCE.replace("depth: 25 cm}", "depth: 25 cm, piecing: {seam: 1 cm, shortest: 20 cm, most joins: 2}}")
    assert "pieced of strips" in refused("FB354", pieced, f"{CUT}\n{SEW}").headline


def test_a_radius_used_up_by_the_seam_is_refused() -> None:
    tight = "skirt: {from: net, length: 4 cm, depth: 40 cm}\nflounce: {from: net, length: 4 cm, depth: 25 cm}"
    steps = SEW.replace(", into: one ring", "").replace("to: skirt.bottom, seam: 1 cm", "to: skirt.bottom, seam: 15 mm")
    refused("FB354", tight, f"{CUT.replace('140 cm', '110 cm')}\n{steps}")


def test_a_ring_drops_for_a_night_before_its_lower_edge_is_finished() -> None:
    """Measured from the seam that it hangs from; a straight piece, or the ring's other edge, does not wait."""
    hem = "- rolled hem: {edge: flounce.bottom}"
    told = sound(FLOUNCE, f"{CUT}\n{SEW}\n{hem}").tellings()
    assert "Measure 25.6 cm down from the upper seam of the flounce" in told[-1].waits[0].text
    loose = sound(FLOUNCE, f"{CUT}\n{SEW.replace('- attach', f'{hem}' + chr(10) + '- attach')}").tellings()
    assert "Hang the flounce up by its upper edge overnight" in loose[-2].waits[0].text
    straight = sound(FLOUNCE, f"{CUT}\n{SEW}\n- rolled hem: {{edge: skirt.top}}").tellings()
    assert not straight[-1].waits


def test_a_yoke_that_carries_a_skirt_is_not_told_to_hang_before_its_hem() -> None:
    pieces = "yoke: {from: net, length: 100 cm, depth: 18 cm}\nskirt: {from: net, length: 230 cm, depth: 40 cm}"
    cut = "- ring cut: {piece: yoke, hem: 115 cm}\n- join ends: {of: yoke}"
    sewn = f"{cut}\n- join ends: {{of: skirt}}\n- gather: {{edge: skirt.top, to: yoke.bottom}}\n- attach: {{edge: skirt.top, to: yoke.bottom}}"
    assert "Do not hem it yet" not in work(pieces, sewn).words()
    assert "Do not hem it yet" in work(pieces.splitlines()[0], cut).words()
