"""Darts: intake, legs, the waist after them, the cloth below them."""

from __future__ import annotations

from fractions import Fraction
from math import hypot

import pytest

from tests.techniques.small import refused, sound, work

SKIRT = "skirt: {from: lawn, length: 110 cm, depth: 60 cm}\nband: {from: lawn, length: 83 cm, depth: 3 cm}"
OPEN = """- neaten: {edge: skirt.start}
- neaten: {edge: skirt.end}
- join ends: {of: skirt, seam: 2 cm, open: 20 cm}
- zip: {in: skirt.ends, zip: zip}"""
DARTS = "- darts: {edge: skirt.top, length: 80 cm, count: 8, long: 11 cm}"
REST = """- fitted waistband: {band: band, to: skirt.top, overlap: 3 cm, fasten: hook and bar}
- narrow hem: {edge: skirt.bottom}"""
ZIP = "  zip: {kind: zip, length: 20 cm}\n"


def test_the_waist_closes_in_by_what_all_darts_take_and_the_hem_stays() -> None:
    worked = sound(SKIRT, f"{OPEN}\n{DARTS}\n{REST}", materials=ZIP)
    done = next(each for each in worked.performed if each.step.written.technique == "darts")
    assert done.before.edge("skirt.top").set_length == 1100
    assert done.after.edge("skirt.top").set_length == 800
    assert worked.bench.edge("skirt.bottom").set_length == 1100
    # (110 - 80) / 8 = 3.75 cm each on the seam line, 1 cm below the edge; at the edge 3.75 x 11 / 10, half of it 2.0625 cm.
    assert done.sewn[0].length == pytest.approx(hypot(110, 20.625), abs=0.05)
    assert done.sewn[0].copies == 8


def test_half_way_down_the_darts_half_of_the_cloth_is_there_again() -> None:
    worked = work(SKIRT, f"{OPEN}\n{DARTS}", materials=ZIP)
    assert [worked.bench.cloth_at("skirt", Fraction(down)) for down in (0, 55, 110, 300)] == [800, 950, 1100, 1100]


def test_darts_sewn_before_the_side_seams_are_counted_for_every_panel() -> None:
    panels = "skirt: {from: lawn, count: 2, length: 53 cm, depth: 60 cm}"
    steps = """- darts: {edge: skirt.top, length: 42 cm, count: 4}
    - join ends: {of: skirt, seam: 1 cm, into: one ring}"""
    bench = work(panels, steps).bench
    # Flat, 55 cm with their margins close in to 42; the ring is 2 x 40, and 2 x 53 below the darts.
    assert bench.edge("skirt.top").set_length == 800
    assert bench.cloth_at("skirt", Fraction(200)) == 1060


def test_the_guide_tells_how_to_mark_a_dart_with_ruler_and_tape() -> None:
    words = sound(SKIRT, f"{OPEN}\n{DARTS}\n{REST}", materials=ZIP).words()
    assert "every 13.8 cm, 8 in all, the first 6.9 cm from" in words
    assert "On the edge mark 2.1 cm to both sides of the middle" in words
    assert "Both legs are 11.2 cm long." in words
    assert "tie them in a double knot" in words


@pytest.mark.parametrize(
    ("darts", "code"),
    [
        (DARTS.replace("80 cm", "110 cm"), "FB314"),
        (DARTS.replace("80 cm", "50 cm"), "FB315"),
        (DARTS.replace("count: 8", "count: 2.5"), "FB341"),
        (DARTS.replace("11 cm", "61 cm"), "FB312"),
        (DARTS.replace("length: 80 cm, ", ""), "FB313"),
        (DARTS.replace("skirt.top", "skirt.bottom"), "FB340"),
        (f"{DARTS}\n{DARTS}", "FB333"),
        (f"- gather: {{edge: skirt.top, length: 90 cm}}\n{DARTS}", "FB333"),
    ],
)
def test_what_can_not_be_darted_is_refused(darts: str, code: str) -> None:
    assert code in work(SKIRT, f"{OPEN}\n{darts}", materials=ZIP).codes


def test_few_darts_that_take_much_stand_off_at_their_points() -> None:
    worked = work(SKIRT, f"{OPEN}\n{DARTS.replace('count: 8', 'count: 4')}\n{REST}", materials=ZIP)
    assert "a dart that takes of 7.5 cm is 3 cm too much" in str([fault.headline for fault in worked.warnings])


def test_a_pocket_sewn_on_first_is_not_sewn_through_by_a_dart() -> None:
    pieces = "skirt: {from: net, length: 116 cm, depth: 60 cm}\npocket: {from: net, length: 14 cm, depth: 16 cm}"
    pocket = "- patch pocket: {pocket: pocket, on: skirt, below top: 8 cm, from start: 20 cm}"
    darts = "- darts: {edge: skirt.top, length: 90 cm, count: 8, long: 12 cm}"
    assert "FB420" in [fault.code for fault in work(pieces, f"{pocket}\n{darts}").faults]
    refused("FB420", pieces, f"{pocket}\n{darts}")


@pytest.mark.parametrize(("deep", "own", "told"), [(6, False, True), (2, False, True), (6, True, False)])
def test_a_facing_goes_with_the_darts_of_its_edge(deep: int, own: bool, told: bool) -> None:
    """Eight darts take 30 cm out of 110 in 11 cm: a straight facing of 80 cm has 96 cm beside it 6 cm down (and 1 cm of seam)."""
    darts = "- darts: {edge: facing.top, length: 82 cm, count: 8, long: 9 cm}" if own else ""
    pieces = f"{SKIRT.splitlines()[0]}\nfacing: {{from: lawn, length: {110 if own else 80} cm, depth: {deep} cm}}"
    steps = f"""{OPEN}
{DARTS}
{darts.replace("82", "80")}
- neaten: {{edge: facing.bottom}}
- facing: {{edge: skirt.top, with: facing.top, fold ends: 1 cm}}
- narrow hem: {{edge: skirt.bottom}}"""
    worked = work(pieces, steps, materials=ZIP)
    found = [fault for fault in (*worked.faults, *worked.warnings) if fault.code == "FB422"]
    assert ([fault.is_error for fault in found] == [False]) == told
