"""A row sewn on a line across its base: where it hangs, what it may lie on, which seam it hides."""

from __future__ import annotations

import pytest
from furbelow.garment.bench import State

from tests.techniques.small import refused, sound, work

PIECES = """base: {from: lawn, length: 120 cm, depth: 60 cm}
ruffle: {from: net, length: 240 cm, depth: 20 cm}
upper: {from: net, length: 240 cm, depth: 25 cm}"""
READY = """- french seam: {of: base}
- narrow hem: {edge: base.bottom}
- join ends: {of: ruffle}
- join ends: {of: upper}
- gather: {edge: ruffle.top, length: 120 cm}
- gather: {edge: upper.top, length: 120 cm}"""
LOW = "- sew on: {edge: ruffle.top, on: base, below top: 34 cm, covered by: upper}"
HIGH = "- sew on: {edge: upper.top, on: base, above hem: 48 cm}"
WAIST = "- narrow hem: {edge: base.top}"


def levels(steps: str) -> tuple[float, float]:
    from furbelow.garment.levels import levels_of

    found = levels_of(sound(PIECES, f"{READY}\n{steps}\n{WAIST}").bench)
    return float(found.tops["ruffle"]), float(found.bottoms["ruffle"])


def test_the_row_hangs_from_its_line_whatever_the_waist_takes_of_the_base() -> None:
    assert levels(f"{LOW}\n{HIGH}") == (340, 540)


def test_a_height_from_the_hem_is_that_of_the_finished_base() -> None:
    worked = sound(PIECES, f"{READY}\n{LOW}\n{HIGH}\n{WAIST}")
    # 60 cm finished less 48 cm lies 12 cm below the finished top, and its narrow hem takes 15 mm above that.
    assert worked.bench.seams["upper.top"].on is not None
    assert worked.bench.seams["upper.top"].on.down == 120 + 15
    assert "Draw a line on the right side of the base, 48 cm above its bottom edge." in worked.words()


def test_the_row_gives_its_seam_and_the_base_nothing() -> None:
    worked = sound(PIECES, f"{READY}\n{LOW}\n{HIGH}\n{WAIST}")
    assert worked.solved.pieces["ruffle"].cut_depth == 200 + 10
    assert worked.solved.pieces["base"].cut_depth == 600 + 15 + 15
    assert worked.bench.edge("ruffle.top").state is State.SEWN
    assert worked.bench.edge("base.top").cloth_length == 1200


def test_a_row_that_ends_above_the_seam_it_is_to_hide_is_told() -> None:
    worked = sound(PIECES.replace("25 cm", "20 cm"), f"{READY}\n{LOW}\n{HIGH}\n{WAIST}")
    told = [fault for fault in worked.warnings if fault.code == "FB436"]
    assert "`upper` ends 2 cm above the seam of `ruffle.top` that it is to cover, 3 cm too high" in told[0].headline
    mended = sound(PIECES.replace("25 cm", "23 cm"), f"{READY}\n{LOW}\n{HIGH}\n{WAIST}")
    assert "FB436" not in [fault.code for fault in mended.warnings]


def test_a_row_sewn_on_lower_down_covers_nothing() -> None:
    steps = f"{READY}\n{LOW}\n{HIGH.replace('above hem: 48 cm', 'above hem: 10 cm')}\n{WAIST}"
    assert "does not hang above the seam" in refused("FB436", PIECES, steps).headline


@pytest.mark.parametrize("heights", ["", ", below top: 10 cm, above hem: 20 cm"])
def test_one_height_is_needed(heights: str) -> None:
    refused("FB313", PIECES, f"{READY}\n- sew on: {{edge: ruffle.top, on: base{heights}}}\n{HIGH}")


def test_a_line_beside_the_base_is_refused() -> None:
    fault = refused("FB427", PIECES, f"{READY}\n{HIGH.replace('48', '61')}\n{LOW.replace(', covered by: upper', '')}")
    assert "which is 60 cm deep when finished" in fault.headline


def test_a_row_that_is_longer_than_its_line_is_refused_with_the_length_that_it_needs() -> None:
    fault = refused(
        "FB401", PIECES, f"{READY.replace('ruffle.top, length: 120 cm', 'ruffle.top, length: 100 cm')}\n{HIGH}\n{LOW}"
    )
    assert "`ruffle.top` is 100 cm and its line on `base` is 120 cm, 20 cm too short" in fault.headline


def test_a_flat_row_is_sewn_on_without_gathers() -> None:
    pieces = "base: {from: net, length: 60 cm, depth: 50 cm}\nstrip: {from: net, length: 60 cm, depth: 10 cm}"
    worked = sound(pieces, "- sew on: {edge: strip.top, on: base, below top: 20 cm}")
    assert "The row is sewn" not in worked.words()
    assert "Sew 1 cm from the top edge, along the line, 60 cm" in worked.words()


def test_a_raw_edge_that_ravels_is_refused_and_a_neatened_one_is_not() -> None:
    pieces = PIECES.replace("ruffle: {from: net", "ruffle: {from: lawn")
    steps = READY.replace(
        "- join ends: {of: ruffle}", "- french seam: {of: ruffle}\n- narrow hem: {edge: ruffle.bottom}"
    )
    assert "lies loose under its own row" in refused("FB335", pieces, f"{steps}\n{HIGH}\n{LOW}").headline
    neat = steps.replace("- gather: {edge: ruffle.top", "- neaten: {edge: ruffle.top}\n- gather: {edge: ruffle.top")
    sound(pieces, f"{neat}\n{LOW}\n{HIGH}\n{WAIST}")


def test_a_line_on_a_flared_base_is_as_long_as_the_cloth_there() -> None:
    """Half way between arcs of 100 and 200 cm the cloth is 150 cm round."""
    pieces = "base: {from: net, length: 100 cm, depth: 40 cm}\nruffle: {from: net, length: 300 cm, depth: 10 cm}"
    steps = """- ring cut: {piece: base, hem: 200 cm}
    - join ends: {of: base}
    - join ends: {of: ruffle}
    - gather: {edge: ruffle.top, length: 150 cm}
    - sew on: {edge: ruffle.top, on: base, below top: 20 cm}"""
    assert sound(pieces, steps, hips="90 cm").bench.seams["ruffle.top"].length == 1500


def test_two_rows_on_one_line_meet() -> None:
    same = HIGH.replace("above hem: 48 cm", "below top: 34 cm")
    worked = work(PIECES, f"{READY}\n{LOW.replace(', covered by: upper', '')}\n{same}\n{WAIST}")
    assert "FB420" in [fault.code for fault in worked.warnings]
