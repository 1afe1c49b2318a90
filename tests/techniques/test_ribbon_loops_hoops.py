"""Ribbon in a trim, hang loops and a hoop: supplies measured, limits kept."""

from __future__ import annotations

import pytest

from tests.techniques.small import refused, sound, work

FLOUNCE = "flounce: {from: net, length: 200 cm, depth: 30 cm}"
TRIM = "- join ends: {of: flounce, seam: 1 cm}\n- edge with trim: {edge: flounce.bottom, trim: beading, turn up: 5 mm}"


def test_a_sewn_ribbon_takes_the_edge_and_an_overlap() -> None:
    worked = sound(FLOUNCE, f"{TRIM}\n- ribbon threading: {{edge: flounce.bottom, ribbon: ribbon}}")
    assert worked.performed[-1].used[0].amount == 2000 + 20


def test_a_tied_ribbon_takes_both_ends() -> None:
    worked = sound(
        FLOUNCE, f"{TRIM}\n- ribbon threading: {{edge: flounce.bottom, ribbon: ribbon, ends: 30 cm, for: grown-up}}"
    )
    assert worked.performed[-1].used[0].amount == 2000 + 600
    assert "30 cm hang out at each end" in worked.words()


def test_free_ribbon_ends_on_a_child_are_refused() -> None:
    fault = refused(
        "FB348", FLOUNCE, f"{TRIM}\n- ribbon threading: {{edge: flounce.bottom, ribbon: ribbon, ends: 30 cm}}"
    )
    assert fault.headline == "ribbon ends of 30 cm hang from `flounce.bottom`, and on a child 0 cm may"


def test_no_trim_no_ribbon() -> None:
    refused("FB350", FLOUNCE, "- join ends: {of: flounce}\n- ribbon threading: {edge: flounce.bottom, ribbon: ribbon}")


def test_a_ribbon_wider_than_its_trim_is_refused() -> None:
    steps = TRIM.replace("beading", "ribbon") + "\n- ribbon threading: {edge: flounce.bottom, ribbon: beading}"
    assert "`beading` is 2.5 cm wide and the trim `ribbon` 1 cm" in refused("FB350", FLOUNCE, steps).headline


SKIRT = """skirt: {from: net, length: 120 cm, depth: 50 cm}
band: {from: net, length: 120 cm, depth: 3 cm}"""
RINGS = "- join ends: {of: skirt}\n- join ends: {of: band}"
BAND = "- band casing: {band: band, to: skirt.top}\n- insert elastic: {elastic: elastic, into: band, length: 70 cm}\n- close gap: {of: band}"


def test_loops_are_basted_before_the_band() -> None:
    worked = sound(SKIRT, f"{RINGS}\n- hang loops: {{edge: skirt.top, tape: ribbon, length: 24 cm, count: 2}}\n{BAND}")
    used = worked.performed[2].used[0]
    assert (used.amount, used.copies) == (240, 2)
    assert "Each loop hangs down 12 cm and lies flat." in worked.words()


def test_loops_after_the_band_are_refused() -> None:
    refused("FB302", SKIRT, f"{RINGS}\n{BAND}\n- hang loops: {{edge: skirt.top, tape: ribbon}}")


def test_a_loop_too_short_for_a_hook_is_refused() -> None:
    fault = refused("FB349", SKIRT, f"{RINGS}\n- hang loops: {{edge: skirt.top, tape: ribbon, length: 4 cm}}")
    assert "6 cm, 2 cm more" in fault.headline


@pytest.mark.parametrize(("loop", "told"), [(24, False), (90, False), (104, False), (110, True), (190, True)])
def test_a_loop_may_be_longer_than_its_piece_and_not_than_the_garment(loop: int, told: bool) -> None:
    """A yoke of 10 cm, a skirt of 43 cm below it: a loop hangs half as long as its tape, from the top of the yoke."""
    pieces = """yoke: {from: net, length: 120 cm, depth: 10 cm}
    skirt: {from: net, length: 120 cm, depth: 43 cm}
    band: {from: net, length: 120 cm, depth: 3 cm}"""
    steps = f"""- join ends: {{of: yoke}}
    - hang loops: {{edge: yoke.top, tape: ribbon, length: {loop} cm}}
    - join ends: {{of: skirt}}
    - attach: {{edge: skirt.top, to: yoke.bottom}}
    - join ends: {{of: band}}
    {BAND.replace("skirt.top", "yoke.top")}"""
    worked = work(pieces, steps)
    assert worked.faults == []
    assert ("FB349" in [fault.code for fault in worked.warnings]) == told


def test_half_a_loop_is_refused() -> None:
    refused("FB341", SKIRT, f"{RINGS}\n- hang loops: {{edge: skirt.top, tape: ribbon, count: 1/2}}")


HOOP = "- boning channel: {piece: flounce, above hem: 10 cm, tape: tape, bone: bone, overlap: 6 cm}"


def test_tape_and_boning_go_all_round() -> None:
    worked = sound(FLOUNCE, f"- join ends: {{of: flounce, seam: 1 cm}}\n{HOOP}")
    assert [(use.material, use.amount) for use in worked.performed[-1].used] == [("tape", 2020), ("bone", 2060)]
    # The upper row leaves a gap of twice the width of the boning and 2 cm.
    assert [row.length for row in worked.performed[-1].sewn] == [2000, 2000 - (2 * 7 + 20)]
    assert "eye protection" in worked.words()


def test_boning_that_does_not_slide_is_refused_with_the_sum() -> None:
    fault = refused(
        "FB323",
        FLOUNCE,
        f"- join ends: {{of: flounce}}\n{HOOP.replace('bone: bone', 'bone: ribbon').replace('tape: tape', 'tape: ribbon')}",
    )
    assert "the channel is 6 mm inside and the boning 1 cm wide, 6 mm too narrow" in fault.headline


@pytest.mark.parametrize(
    "drawn", ["gather: {edge: flounce.%s, length: 150 cm}", "pleats: {edge: flounce.%s, length: 150 cm, count: 20}"]
)
def test_a_hoop_lies_below_what_is_drawn_in_at_the_top_and_not_where_the_hem_is(drawn: str) -> None:
    steps = f"- join ends: {{of: flounce}}\n- {drawn}\n{HOOP}"
    worked = work(FLOUNCE, steps % "top")
    assert "FB333" not in worked.codes
    assert [use.amount for use in worked.performed[-1].used] == [2020, 2060]  # all the cloth that lies there
    assert "FB333" in work(FLOUNCE, steps % "bottom").codes


def test_a_hoop_in_flat_cloth_is_refused() -> None:
    refused("FB304", FLOUNCE, HOOP)


def test_a_channel_above_its_piece_is_refused() -> None:
    refused("FB312", FLOUNCE, f"- join ends: {{of: flounce}}\n{HOOP.replace('10 cm', '29 cm')}")
