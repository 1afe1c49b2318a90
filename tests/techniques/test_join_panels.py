"""Panels sewn side by side to one flat length, for what wraps."""

from __future__ import annotations

import pytest

from tests.techniques.small import sound, work

GORES = "skirt: {from: lawn, count: 5, length: 22 cm, depth: 60 cm}"
STEPS = """- gores: {piece: skirt, hem: 40 cm}
- join panels: {of: skirt, seam: 15 mm}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.start}
- narrow hem: {edge: skirt.end}
- narrow hem: {edge: skirt.bottom}
- narrow hem: {edge: skirt.top}"""


def test_five_gores_become_one_flat_length_that_is_hemmed_at_both_sides() -> None:
    worked = sound(GORES, STEPS)
    assert worked.bench.edge("skirt.top").set_length == 5 * 220
    assert worked.bench.edge("skirt.bottom").set_length == 5 * 400
    assert not worked.bench.cloths["skirt"].ring
    assert worked.performed[1].sewn[0].copies == 4


def test_darts_in_each_panel_are_counted_for_all() -> None:
    pieces = "skirt: {from: lawn, count: 3, length: 60 cm, depth: 60 cm}"
    steps = STEPS.replace("- gores: {piece: skirt, hem: 40 cm}", "- darts: {edge: skirt.top, length: 53 cm, count: 3}")
    # 63 cm with the margins close in to 53; 50 finished, of 60.
    assert sound(pieces, steps).bench.edge("skirt.top").set_length == 3 * 500


def test_the_guide_does_not_close_the_length_to_a_ring() -> None:
    words = sound(GORES, STEPS).words()
    assert "but not the last on the first" in words
    # 5 x 40 cm and 2 x 1.5 at the sides; each gore widens 18 cm over 60, and the hem takes 1.5 cm below.
    assert "measure the lower edge from side to side: 205.3 cm" in words


@pytest.mark.parametrize(
    ("steps", "code"),
    [
        (STEPS.replace("seam: 15 mm", "seam: 1 cm"), "FB312"),
        (STEPS.replace("- narrow hem: {edge: skirt.end}\n", ""), "FB312"),
        (STEPS.replace("- join panels", "- join ends: {of: skirt, into: one ring}\n- join panels"), "FB307"),
        (
            STEPS.replace("- narrow hem: {edge: skirt.start}\n", "").replace(
                "- join", "- narrow hem: {edge: skirt.start}\n- join"
            ),
            "FB302",
        ),
    ],
)
def test_panels_that_can_not_be_joined_flat_are_refused(steps: str, code: str) -> None:
    assert code in work(GORES, steps).codes


def test_one_panel_is_not_joined() -> None:
    assert "FB305" in work(GORES.replace("count: 5, ", ""), STEPS).codes


def test_a_raw_margin_between_panels_ravels() -> None:
    assert "FB403" in work(GORES, STEPS.replace("- neaten: {seam: skirt.ends}\n", "")).codes
