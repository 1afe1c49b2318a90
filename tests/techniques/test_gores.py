"""Gores: two from each rectangle, by one slanting line."""

from __future__ import annotations

from fractions import Fraction

import pytest

from tests.techniques.small import sound, work

SKIRT = "gore: {from: lawn, count: 6, length: 20 cm, depth: 60 cm}"
STEPS = """- gores: {piece: gore, hem: 40 cm}
- join ends: {of: gore, seam: 1 cm, into: one ring}
- neaten: {seam: gore.ends}
- narrow hem: {edge: gore.bottom}
- narrow hem: {edge: gore.top}"""


def test_six_gores_become_one_ring_wider_at_the_hem() -> None:
    worked = sound(SKIRT, STEPS)
    assert worked.bench.edge("gore.top").set_length == 6 * 200
    assert worked.bench.edge("gore.bottom").set_length == 6 * 400


def test_a_pair_lies_in_a_rectangle_as_wide_as_both_its_ends_with_nothing_left() -> None:
    gore = sound(SKIRT, STEPS).solved.pieces["gore"]
    assert gore.gore is not None
    # 20 cm finished at the top, 1.5 cm hem above it and below 40 cm: the sides run on, 20 cm wider over 60 cm.
    top = 200 - Fraction(200, 600) * 15 + 20
    bottom = 400 + Fraction(200, 600) * 15 + 20
    assert gore.blank == (top + bottom, 600 + 15 + 15)
    assert gore.rectangles == 3
    assert 2 * gore.cut_area == gore.blank[0] * gore.blank[1]


def test_cloth_with_a_way_up_gives_one_gore_from_a_rectangle() -> None:
    nap = "  velvet: {kind: cloth, fibre: cotton, width: 140 cm, weight: 200 g/m2, ravels: yes, one way: yes}\n"
    worked = work(SKIRT.replace("lawn", "velvet"), STEPS, materials=nap)
    gore = worked.solved.pieces["gore"]
    assert gore.gore is not None
    assert (gore.rectangles, gore.blank[0]) == (6, gore.gore.cut_bottom)
    assert "to the lower right corner" in worked.words()


def test_an_odd_gore_leaves_half_a_rectangle_over() -> None:
    worked = sound(SKIRT.replace("count: 6, length: 20", "count: 5, length: 24"), STEPS)
    assert worked.solved.pieces["gore"].rectangles == 3
    assert "Of the last rectangle keep one gore" in worked.words()


def test_a_line_across_gores_is_as_long_as_the_cloth_there() -> None:
    """Half way down, six gores of 20 and 40 cm are 6 x 30 cm round."""
    pieces = f"{SKIRT}\nrow: {{from: net, length: 360 cm, depth: 10 cm}}".replace("from: lawn", "from: net")
    steps = """- gores: {piece: gore, hem: 40 cm}
    - join ends: {of: gore, into: one ring}
    - join ends: {of: row}
    - gather: {edge: row.top, length: 180 cm}
    - sew on: {edge: row.top, on: gore, below top: 30 cm}"""
    assert sound(pieces, steps).bench.seams["row.top"].length == 1800


@pytest.mark.parametrize(
    ("piece", "steps", "code"),
    [
        (SKIRT, STEPS.replace("40 cm", "18 cm"), "FB314"),
        (
            SKIRT,
            STEPS.replace("- gores: {piece: gore, hem: 40 cm}\n", "") + "\n- gores: {piece: gore, hem: 40 cm}",
            "FB353",
        ),
        (SKIRT.replace("60 cm}", "60 cm, piecing: {seam: 1 cm, shortest: 10 cm, most joins: 1}}"), STEPS, "FB354"),
        (SKIRT, STEPS.replace("\n- join", "\n- gores: {piece: gore, hem: 40 cm}\n- join", 1), "FB354"),
    ],
)
def test_what_can_not_be_cut_to_gores_is_refused(piece: str, steps: str, code: str) -> None:
    assert code in work(piece, steps).codes


def test_a_side_on_the_bias_is_told() -> None:
    worked = work(SKIRT, STEPS.replace("40 cm", "70 cm"))
    assert "a widening of 50 cm is 5 cm too much" in str([fault.headline for fault in worked.warnings])
