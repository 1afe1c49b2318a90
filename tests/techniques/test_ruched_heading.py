"""A ruched heading: the frill stands above the rows, the carrying edge reaches behind them."""

from __future__ import annotations

from furbelow.garment.bench import State

from tests.techniques.small import refused, sound

PIECES = """skirt: {from: lawn, length: 100 cm, depth: 40 cm}
flounce: {from: lawn, length: 150 cm, depth: 20 cm}"""
READY = """- join ends: {of: skirt}
- join ends: {of: flounce}
- neaten: {seam: [skirt.ends, flounce.ends]}
- narrow hem: {edge: skirt.top}
- narrow hem: {edge: flounce.bottom}"""
NEAT = "- rolled hem: {edge: flounce.top, by: hand}\n- neaten: {edge: skirt.bottom}"
STEP = "- ruched heading: {edge: flounce.top, to: skirt.bottom, heading: 2 cm, lap: 15 mm}"


def test_the_drop_is_counted_from_the_rows() -> None:
    worked = sound(PIECES, f"{READY}\n{NEAT}\n{STEP}", worn=", length: 60 cm", hips="90 cm")
    assert worked.solved.pieces["flounce"].cut_depth == 200 + 6 + 20 + 15
    assert worked.solved.pieces["skirt"].cut_depth == 400 + 15 + 15
    assert worked.bench.edge("flounce.top").set_length == 1000
    assert worked.bench.seams["flounce.top"].state is State.NEATENED
    assert "The frill stands 2 cm above the seam all along." in worked.words()


def test_a_raw_frill_of_ravelling_cloth_is_refused() -> None:
    fault = refused("FB335", PIECES, f"{READY}\n- neaten: {{edge: skirt.bottom}}\n{STEP}")
    assert "stands open at the frill" in fault.headline


def test_a_raw_edge_behind_is_refused() -> None:
    fault = refused("FB335", PIECES, f"{READY}\n- rolled hem: {{edge: flounce.top, by: hand}}\n{STEP}")
    assert "lies loose behind the flounce" in fault.headline


def test_a_lap_that_the_lower_row_misses_is_refused() -> None:
    refused("FB334", PIECES, f"{READY}\n{NEAT}\n{STEP.replace('15 mm', '5 mm')}")


def test_too_full_a_flounce_is_refused() -> None:
    fault = refused("FB315", PIECES.replace("150", "460"), f"{READY}\n{NEAT}\n{STEP}", hips="90 cm")
    assert "4.6 to 1, and `lawn` takes 3 to 1" in fault.headline


def test_a_short_flounce_is_refused() -> None:
    refused("FB314", PIECES.replace("150", "90"), f"{READY}\n{NEAT}\n{STEP}")


def test_a_heading_deeper_than_its_piece_is_refused() -> None:
    # Hem 15 mm, roll 6 mm and heading 4 cm leave 3 mm, and the second row lies 5 mm below the first.
    refused(
        "FB312", PIECES.replace("depth: 20 cm", "cut depth: 64 mm"), f"{READY}\n{NEAT}\n{STEP.replace('2 cm', '4 cm')}"
    )
