"""Binding with a strip of cloth: the strip is cut double, and what shows of it adds to the depth."""

from __future__ import annotations

from furbelow.garment.bench import State

from tests.techniques.small import refused, sound

PIECES = """cape: {from: net, length: 120 cm, depth: 50 cm}
strip: {from: lawn, length: 120 cm, depth: 8 mm}"""
RINGS = "- join ends: {of: cape}\n- join ends: {of: strip}"


def test_the_strip_is_cut_double_and_encloses_everything() -> None:
    worked = sound(
        PIECES,
        f"{RINGS}\n- binding strip: {{strip: strip, edge: cape.bottom, seam: 8 mm, turn under: 6 mm}}",
        worn=", length: 508 mm",
    )
    # 2 x 8 mm that show, 8 mm of seam and 6 mm of turn.
    assert worked.solved.pieces["strip"].cut_depth == 30
    # The cape ends at the seam and the strip adds 8 mm below it: 50.8 cm in all, as `worn: length` asks.
    assert worked.bench.depth("cape") == 500
    assert worked.bench.depth("strip") == 8
    assert {worked.bench.edge(f"strip.{side}").state for side in ("top", "bottom")} == {State.ENCLOSED}
    assert worked.bench.seams["strip.ends"].state is State.ENCLOSED
    assert worked.bench.edge("cape.bottom").state is State.ENCLOSED


def test_gathers_are_held_by_their_binding() -> None:
    worked = sound(
        PIECES.replace("120 cm, depth: 50 cm", "240 cm, depth: 50 cm"),
        f"{RINGS}\n- gather: {{edge: cape.top, length: 120 cm}}\n- binding strip: {{strip: strip, edge: cape.top}}",
    )
    assert worked.bench.edge("cape.top").held


def test_a_strip_of_another_length_is_refused() -> None:
    fault = refused(
        "FB401",
        PIECES.replace("strip: {from: lawn, length: 120", "strip: {from: lawn, length: 110"),
        f"{RINGS}\n- binding strip: {{strip: strip, edge: cape.bottom}}",
    )
    assert fault.headline == "`strip` is 110 cm and `cape.bottom` is 120 cm, 10 cm too short"


def test_a_margin_deeper_than_the_binding_is_refused() -> None:
    fault = refused("FB336", PIECES, f"{RINGS}\n- binding strip: {{strip: strip, edge: cape.bottom, seam: 12 mm}}")
    assert fault.headline == "the margin of 1.2 cm is deeper than the binding of 8 mm, 4 mm too deep to fold around it"


def test_a_short_edge_is_refused() -> None:
    refused("FB340", PIECES, "- binding strip: {strip: strip, edge: cape.start}")


def test_a_flat_strip_does_not_bind_a_ring() -> None:
    refused("FB304", PIECES, "- join ends: {of: cape}\n- binding strip: {strip: strip, edge: cape.bottom}")
