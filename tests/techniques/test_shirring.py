"""Shirring: rows of elastic thread under a finished edge, which must pass the hips and hold the waist."""

from __future__ import annotations

from tests.techniques.small import refused, sound, work

SKIRT = "skirt: {from: lawn, length: 150 cm, depth: 50 cm}"
READY = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.top}\n- narrow hem: {edge: skirt.bottom}"
STEP = "- shirring: {edge: skirt.top, length: waist_girth - 4 cm, with: fine_elastic, rows: 6, spacing: 8 mm}"


def test_it_draws_in_and_still_passes_the_hips() -> None:
    worked = sound(SKIRT, f"{READY}\n{STEP}")
    edge, casing = worked.bench.edge("skirt.top"), worked.bench.casings["skirt.top"]
    assert (edge.cloth_length, edge.set_length) == (1500, 740)
    assert edge.held
    assert not casing.open
    assert (casing.length, casing.elastic_length) == (1500, 740)
    used = worked.performed[-1].used[0]
    assert used.amount == 6 * (740 + 160)
    assert [row.length for row in worked.performed[-1].sewn] == [1500] * 6


def test_a_shirred_waist_too_narrow_for_the_hips_is_told() -> None:
    assert work(SKIRT.replace("150", "100"), f"{READY}\n{STEP}").codes == ["FB408"]


def test_elastic_that_cannot_stretch_so_far_is_told() -> None:
    assert work(
        SKIRT, f"{READY}\n{STEP.replace('waist_girth - 4 cm', '50 cm').replace('fine_elastic', 'elastic')}"
    ).codes == ["FB421", "FB409"]  # elastic 20 mm wide is no thread for a bobbin either


def test_a_waist_that_would_slide_is_told() -> None:
    assert work(SKIRT, f"{READY}\n{STEP.replace('- 4 cm', '+ 2 cm')}").codes == ["FB410"]


def test_a_flat_piece_is_refused() -> None:
    refused("FB304", SKIRT, f"- narrow hem: {{edge: skirt.top}}\n{STEP}")


def test_a_raw_edge_is_refused() -> None:
    refused("FB335", SKIRT, f"- french seam: {{of: skirt}}\n{STEP}")


def test_cloth_takes_only_so_much() -> None:
    worked = work(SKIRT, f"{READY}\n{STEP.replace('waist_girth - 4 cm', '30 cm')}")
    fault = next(fault for fault in worked.faults if fault.code == "FB315")
    assert "5 to 1, and `lawn` takes 3 to 1" in fault.headline


def test_rows_deeper_than_the_piece_are_refused() -> None:
    refused("FB312", SKIRT, f"{READY}\n{STEP.replace('8 mm', '20 cm')}")


def test_drawing_in_to_more_than_there_is_is_refused() -> None:
    refused("FB314", SKIRT, f"{READY}\n{STEP.replace('waist_girth - 4 cm', '160 cm')}")


def test_half_a_row_is_refused() -> None:
    refused("FB341", SKIRT, f"{READY}\n{STEP.replace('rows: 6', 'rows: 2.5')}")
