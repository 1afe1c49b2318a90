"""Interfacing, petersham and elastic sewn to an edge."""

from __future__ import annotations

import pytest
from furbelow.garment.bench import State

from tests.techniques.small import refused, sound, work

SKIRT = "skirt: {from: lawn, length: 116 cm, depth: 60 cm}"
FUSIBLE = "  fusible: {kind: interfacing, width: 90 cm, about: fusible interfacing}\n"
ZIPS = "  zip: {kind: zip, length: 22 cm}\n  petersham: {kind: trim, width: 25 mm}\n"
OPEN = """- neaten: {edge: skirt.start}
- neaten: {edge: skirt.end}
- join ends: {of: skirt, seam: 2 cm, open: 20 cm}
- zip: {in: skirt.ends, zip: zip}
- gather: {edge: skirt.top, length: 80 cm}
- narrow hem: {edge: skirt.bottom}"""
RIBBON = "- petersham: {edge: skirt.top, ribbon: petersham}"
ELASTIC = "- sewn elastic: {edge: skirt.top, elastic: elastic, length: waist_girth - 8 cm}"
RING = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.bottom}"


def test_interfacing_covers_what_shows_and_is_bought_off_its_roll() -> None:
    pieces = f"{SKIRT}\nwaistband: {{from: lawn, length: 83 cm, depth: 3 cm}}"
    steps = (
        OPEN
        + """
    - interface: {piece: waistband, with: fusible, cover: COVER}
    - fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm, fasten: hook and bar}"""
    )
    half, whole = (
        sound(pieces, steps.replace("COVER", cover), materials=FUSIBLE + ZIPS) for cover in ("half", "whole")
    )
    used = [
        next(done.used[0].amount for done in each.performed if done.step.written.technique == "interface")
        for each in (half, whole)
    ]
    # 83 cm fit across 90 cm of roll, so the roll gives no more than the depth: 3 cm less 2 mm, 6 cm less 2 mm.
    assert used == [28, 58]
    assert "on one half of it" in half.words()


def test_interfacing_longer_than_its_roll_is_wide_lies_lengthwise() -> None:
    pieces = (
        "skirt: {from: net, length: 116 cm, depth: 60 cm}\nband: {from: net, count: 2, length: 116 cm, depth: 10 cm}"
    )
    steps = "- interface: {piece: band, with: fusible}"
    used = work(pieces, steps, materials=FUSIBLE).performed[0].used[0].amount
    assert used == 1160 - 4  # both lie beside each other in 90 cm


def test_interfacing_comes_before_the_sewing() -> None:
    late = "- french seam: {of: skirt}\n- interface: {piece: skirt, with: fusible}"
    assert (
        "lies flat on a free piece"
        in refused("FB302", SKIRT, f"{late}\n- narrow hem: {{edge: skirt.bottom}}", materials=FUSIBLE).headline
    )


def test_another_kind_of_material_is_refused_where_it_is_read() -> None:
    with pytest.raises(AssertionError, match="tape"):
        work(SKIRT, "- interface: {piece: skirt, with: tape}")


def test_a_ribbon_finishes_a_waist_that_a_zip_closes() -> None:
    worked = sound(SKIRT, f"{OPEN}\n{RIBBON}", materials=ZIPS)
    assert worked.bench.edge("skirt.top").state is State.ENCLOSED
    assert worked.bench.openings["skirt.top"].length == 200
    assert worked.performed[-1].used[0].amount == 800 + 20
    assert worked.solved.pieces["skirt"].cut_depth == 600 + 10 + 15
    assert "The ribbon is 80 cm long on the edge." in worked.words()
    assert "FB346" not in [fault.code for fault in worked.warnings]


def test_a_waist_that_is_looser_than_the_body_is_told_though_its_zip_closes_it() -> None:
    loose = work(SKIRT, f"{OPEN.replace('length: 80 cm', 'length: 90 cm')}\n{RIBBON}", materials=ZIPS)
    assert "`skirt.top` closes to 90 cm and the waist is 78 cm, 12 cm loose" in str(
        [f.headline for f in loose.warnings]
    )


def test_a_ribbon_too_narrow_to_cover_its_margin_is_refused() -> None:
    narrow = ZIPS.replace("25 mm", "10 mm")
    refused("FB421", SKIRT, f"{OPEN}\n{RIBBON}", materials=narrow)


def test_a_zipped_and_faced_waist_is_whole_too() -> None:
    """A facing as the finish of a waist: its seam shortens the opening, and the zip closes it to the top."""
    pieces = SKIRT.replace("116", "80") + "\nfacing: {from: lawn, length: 80 cm, depth: 6 cm}"
    steps = """- neaten: {edge: skirt.start}
    - neaten: {edge: skirt.end}
    - join ends: {of: skirt, seam: 2 cm, open: 20 cm, open at hem: 30 cm}
    - zip: {in: skirt.ends, zip: zip}
    - narrow hem: {edge: facing.start}
    - narrow hem: {edge: facing.end}
    - narrow hem: {edge: facing.bottom}
    - facing: {edge: skirt.top, with: facing.top}
    - slit: {in: skirt.ends}
    - narrow hem: {edge: skirt.bottom}"""
    worked = work(pieces, steps, materials=ZIPS, hips="60 cm")
    assert "FB346" not in [fault.code for fault in (*worked.faults, *worked.warnings)]
    assert worked.bench.openings["skirt.top"].length == 200


def test_elastic_on_an_edge_draws_it_in_and_holds_it() -> None:
    worked = sound(SKIRT, f"{RING}\n{ELASTIC}")
    casing = worked.bench.casings["skirt.top"]
    assert (casing.length, casing.elastic_length) == (1160, 700)
    assert worked.solved.pieces["skirt"].cut_depth == 600 + 20 + 15
    assert worked.performed[-1].used[0].amount == 700 + 20
    # Quarters of 70 and of 116 cm.
    assert "Mark the loop in quarters, every 17.5 cm, and the top edge of the skirt every 29 cm" in worked.words()


@pytest.mark.parametrize(
    ("step", "code"),
    [
        (ELASTIC.replace("waist_girth - 8 cm", "120 cm"), "FB324"),
        (ELASTIC.replace("8 cm}", "8 cm, turn: 3 cm}"), "FB323"),
    ],
)
def test_elastic_that_does_not_fit_is_refused(step: str, code: str) -> None:
    refused(code, SKIRT, f"{RING}\n{step}")


def test_elastic_on_a_flat_edge_is_refused() -> None:
    steps = f"{ELASTIC}\n- narrow hem: {{edge: skirt.start}}\n- narrow hem: {{edge: skirt.end}}\n- narrow hem: {{edge: skirt.bottom}}"
    refused("FB304", SKIRT, steps)
