"""Pockets: a patch sewn on the cloth, and a bag in the gap of a seam."""

from __future__ import annotations

import pytest
from furbelow.garment.bench import State
from furbelow.garment.levels import levels_of

from tests.techniques.small import refused, sound, work

SKIRT = "skirt: {from: lawn, length: 120 cm, depth: 60 cm}"
PATCH = f"{SKIRT}\npocket: {{from: lawn, length: 15 cm, depth: 16 cm}}"
READY = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.bottom}\n- narrow hem: {edge: skirt.top}"
STEP = "- patch pocket: {pocket: pocket, on: skirt, below top: 10 cm, from start: 20 cm}"
BAG = f"{SKIRT}\nbag: {{from: lawn, count: 2, length: 16 cm, depth: 28 cm}}"
NEAT = "- neaten: {edge: skirt.start}\n- neaten: {edge: skirt.end}"
GAP = "- join ends: {of: skirt, seam: 2 cm, gap: 16 cm, gap below top: 6 cm}"
SIDE = "- side pocket: {bag: bag, in: skirt.ends}\n- neaten: {seam: [bag.top, bag.start]}"
HEMS = "- narrow hem: {edge: skirt.bottom}\n- narrow hem: {edge: skirt.top}"


def test_a_patch_pocket_is_cut_with_its_hem_and_turns() -> None:
    worked = sound(PATCH, f"{READY}\n{STEP}")
    cut = worked.solved.pieces["pocket"]
    assert (cut.cut_length, cut.cut_depth) == (150 + 10 + 10, 160 + 25 + 10 + 10)
    assert worked.bench.edge("pocket.top").state is State.HEMMED
    # Stitched at both sides and the bottom; a triangle of 1 cm at both corners.
    assert worked.performed[-1].sewn[1].length == 150 + 2 * 160 + 60


def test_a_patch_pocket_hangs_where_it_is_placed() -> None:
    worked = sound(PATCH, f"{READY}\n{STEP}")
    levels = levels_of(worked.bench)
    assert (levels.tops["pocket"], levels.bottoms["pocket"]) == (100, 260)
    assert "10 cm below its top seam: 20 cm and 35 cm from the side seam" in worked.words()


def test_two_pockets_lie_at_both_sides_and_do_not_meet() -> None:
    two = PATCH.replace("pocket: {from: lawn,", "pocket: {from: lawn, count: 2,")
    words = sound(two, f"{READY}\n{STEP}").words()
    assert "Mark the other pocket at the same height and as far from the other side." in words
    fault = refused("FB427", two, f"{READY}\n{STEP.replace('20 cm', '50 cm')}")
    assert "reaches 5 cm beyond its room" in fault.headline


def test_three_pockets_want_steps_of_their_own() -> None:
    refused("FB305", PATCH.replace("pocket: {from: lawn,", "pocket: {from: lawn, count: 3,"), f"{READY}\n{STEP}")


def test_a_pocket_below_the_hem_is_refused() -> None:
    assert "beyond its room" in refused("FB427", PATCH, f"{READY}\n{STEP.replace('10 cm', '50 cm')}").headline


def test_a_pocket_too_small_for_a_hand_is_told() -> None:
    worked = work(PATCH.replace("15 cm", "9 cm"), f"{READY}\n{STEP}")
    assert "a pocket of 9 cm is 4 cm too little" in str([fault.headline for fault in worked.warnings])


@pytest.mark.parametrize(("start", "told"), [("20 cm", True), ("40 cm", False)])
def test_two_pockets_on_one_place_meet_and_beside_each_other_do_not(start: str, told: bool) -> None:
    pieces = f"{PATCH}\nother: {{from: lawn, length: 15 cm, depth: 16 cm}}"
    steps = f"{READY}\n{STEP}\n{STEP.replace('pocket: pocket', 'pocket: other').replace('20 cm', start)}"
    worked = work(pieces, steps)
    assert ("FB420" in [fault.code for fault in (*worked.warnings, *worked.faults)]) == told


def test_a_bag_fills_the_gap_of_its_seam() -> None:
    worked = sound(BAG, f"{NEAT}\n{GAP}\n{SIDE}\n{HEMS}")
    seam = worked.bench.seams["skirt.ends"]
    assert seam.gap is not None
    assert seam.gap.closed
    assert worked.solved.pieces["bag"].cut_length == 160 + 20
    words = worked.words()
    assert "mark a gap from 7.5 cm to 23.5 cm below the top edge" in words  # 1.5 cm of it goes into the hem
    assert "The gap of 16 cm opens into a bag 16 cm wide and 28 cm high." in words


def test_a_bag_wants_a_gap_and_two_pieces() -> None:
    closed = GAP.replace(", gap: 16 cm, gap below top: 6 cm", "")
    assert "no seam `skirt.ends` with a gap" in str(
        [f.headline for f in work(BAG, f"{NEAT}\n{closed}\n{SIDE}\n{HEMS}").faults]
    )
    assert (
        "a pocket takes 2" in refused("FB305", BAG.replace("count: 2, ", ""), f"{NEAT}\n{GAP}\n{SIDE}\n{HEMS}").headline
    )


def test_a_bag_that_hangs_out_below_the_hem_is_refused() -> None:
    assert (
        "ends 3 cm below the hem"
        in refused("FB427", BAG.replace("28 cm", "58 cm"), f"{NEAT}\n{GAP}\n{SIDE}\n{HEMS}").headline
    )


def test_a_shallow_bag_is_told() -> None:
    worked = work(BAG.replace("28 cm", "20 cm"), f"{NEAT}\n{GAP}\n{SIDE}\n{HEMS}")
    assert "a bag of 20 cm is 7 cm too little" in str([fault.headline for fault in worked.warnings])


def test_a_pocket_on_a_flat_piece_is_measured_from_its_end_as_it_is_with_the_seam_that_is_still_to_come() -> None:
    flat = f"{STEP}\n- narrow hem: {{edge: skirt.bottom}}\n- narrow hem: {{edge: skirt.top}}\n{NEAT}\n"
    worked = sound(PATCH, f"{flat}- join ends: {{of: skirt, seam: 2 cm}}")
    assert "22 cm and 37 cm from the left end as it is now" in worked.words()
    hemmed = f"- narrow hem: {{edge: skirt.start}}\n- narrow hem: {{edge: skirt.end}}\n{flat.replace(NEAT, '')}"
    assert "20 cm and 35 cm from the left end as it is now" in work(PATCH, hemmed).words()
