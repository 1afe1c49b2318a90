"""Godets: the hem grows by what each adds, and nothing above the slits does."""

from __future__ import annotations

from math import atan, hypot

import pytest

from tests.techniques.small import sound, work

PIECES = """skirt: {from: lawn, length: 120 cm, depth: 60 cm}
godet: {from: lawn, count: 6, length: 5 mm, depth: 25 cm, grain: across}"""
STEPS = """- french seam: {of: skirt}
- gores: {piece: godet, hem: 30 cm, sides: both slanting}
- godets: {piece: godet, in: skirt.bottom, hem: 15 mm}
- neaten: {seam: godet.ends}
- narrow hem: {edge: skirt.bottom}
- narrow hem: {edge: skirt.top}"""


def test_the_hem_grows_by_the_hem_of_each_godet_and_the_waist_stays() -> None:
    worked = sound(PIECES, STEPS)
    edge = worked.performed[2].after.edge("skirt.bottom")
    # A godet set into a slit of 25 cm ends 25 cm from its point all along: an arc of twice the angle of 14.75 in 25, and 5 mm.
    one = 250 * 2 * atan(147.5 / 250) + 5
    assert float(edge.set_length) == pytest.approx(1200 + 6 * one, abs=0.1)
    # The corners of a straight hem lie hypot(25, 14.75) from the point, and the margin of 1.5 cm is cut with them.
    corner = (hypot(250, 147.5) - 250) * 265 / 250
    words = worked.words()
    assert f"hang {corner / 10:.1f} cm below the edge of the skirt" in words
    cut = 1200 + 6 * (one + 15 * 2 * atan(147.5 / 250))
    assert (
        f"Measure the bottom edge of the skirt: {round(cut / 5) / 2:g} cm." in words or f": {cut / 10:.1f} cm." in words
    )
    assert worked.bench.edge("skirt.top").set_length == 1200
    assert worked.bench.cloth_at("skirt", 100 * worked.solved.rounding + 100) == 1200


def test_a_godet_is_cut_with_the_hem_that_runs_through_it() -> None:
    godet = sound(PIECES, STEPS).solved.pieces["godet"]
    assert godet.cut_depth == 250 + 15


def test_the_guide_tells_where_the_slits_are() -> None:
    words = sound(PIECES, STEPS).words()
    assert "every 20 cm, 6 marks in all, the first 10 cm from" in words
    assert "draw a line 26.5 cm straight up" in words


@pytest.mark.parametrize(
    ("steps", "code"),
    [
        (STEPS.replace("hem: 15 mm", "hem: 1 cm"), "FB312"),
        (STEPS.replace("skirt.bottom, hem: 15", "skirt.top, hem: 15"), "FB340"),
        (STEPS.replace("sides: both slanting", "sides: one slanting"), "FB354"),
        (STEPS.replace("- gores: {piece: godet, hem: 30 cm, sides: both slanting}\n", ""), "FB354"),
        (STEPS.replace("- neaten: {seam: godet.ends}\n", ""), "FB403"),
    ],
)
def test_what_can_not_be_set_in_is_refused(steps: str, code: str) -> None:
    assert code in work(PIECES, steps).codes


def test_a_blunt_godet_is_told() -> None:
    worked = work(PIECES.replace("length: 5 mm", "length: 4 cm"), STEPS)
    assert "the top of a godet of 4 cm" in str([fault.headline for fault in worked.warnings])
