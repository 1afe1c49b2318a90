"""A ruche: a finished strip drawn to the length of the piece that it lies on."""

from __future__ import annotations

import pytest

from tests.techniques.small import refused, sound, work

PIECES = """skirt: {from: net, length: 120 cm, depth: 40 cm}
strip: {from: lawn, length: 240 cm, depth: 6 cm}"""
READY = """- join ends: {of: skirt}
- french seam: {of: strip}
- rolled hem: {edge: strip.top, by: hand}
- rolled hem: {edge: strip.bottom, by: hand}"""
STEP = "- ruche: {strip: strip, on: skirt, above hem: 8 cm, lines: LINES}"


@pytest.mark.parametrize(("lines", "rows"), [("one", 1), ("two", 2)])
def test_each_line_is_gathered_and_sewn_on(lines: str, rows: int) -> None:
    worked = sound(PIECES, f"{READY}\n{STEP.replace('LINES', lines)}", worn=", length: 40 cm")
    assert [row.length for row in worked.performed[-1].sewn] == [2400] * rows + [1200] * rows
    assert worked.bench.edge("strip.top").set_length == worked.bench.edge("strip.bottom").set_length == 1200
    assert "240 cm of strip lies in 120 cm: 2 to 1." in worked.words()


def test_the_lines_are_marked_where_they_will_lie() -> None:
    assert "11 cm above its cut bottom edge" in sound(PIECES, f"{READY}\n{STEP.replace('LINES', 'one')}").words()
    words = sound(PIECES, f"{READY}\n{STEP.replace('LINES', 'two, inset: 1 cm')}").words()
    assert "9 cm above its cut bottom edge" in words
    assert "13 cm above its cut bottom edge" in words


def test_raw_edges_that_stand_free_are_refused() -> None:
    refused(
        "FB335", PIECES, f"- join ends: {{of: skirt}}\n- french seam: {{of: strip}}\n{STEP.replace('LINES', 'one')}"
    )


def test_a_strip_too_long_or_too_short_is_refused() -> None:
    step = f"{READY}\n{STEP.replace('LINES', 'one')}"
    assert "4.58 to 1, and `lawn` takes 3 to 1" in refused("FB315", PIECES.replace("240", "550"), step).headline
    assert "20 cm too little" in refused("FB314", PIECES.replace("240", "100"), step).headline


def test_lines_that_cross_are_refused() -> None:
    refused("FB334", PIECES, f"{READY}\n{STEP.replace('LINES', 'two, inset: 4 cm')}")


def test_a_strip_above_its_piece_is_refused() -> None:
    refused("FB312", PIECES, f"{READY}\n{STEP.replace('LINES', 'one').replace('8 cm', '38 cm')}")


def test_a_gathered_piece_is_refused() -> None:
    refused(
        "FB333", PIECES, f"{READY}\n- gather: {{edge: skirt.bottom, length: 60 cm}}\n{STEP.replace('LINES', 'one')}"
    )


def test_a_ring_on_flat_cloth_is_refused() -> None:
    refused("FB304", PIECES, READY.partition("\n")[2] + f"\n{STEP.replace('LINES', 'one')}")


def test_ends_beside_finished_cloth_are_folded_under_before_the_strip_is_marked() -> None:
    flat = "apron: {from: lawn, length: 60 cm, depth: 40 cm}\nstrip: {from: net, length: 122 cm, depth: 6 cm}"
    step = "- ruche: {strip: strip, on: apron, above hem: 8 cm}"
    hemmed = "- narrow hem: {edge: apron.start}\n- narrow hem: {edge: apron.end}"
    texts = [action.text for action in work(flat, f"{hemmed}\n{step}").tellings()[-1].actions]
    assert texts[0].startswith("Fold 1 cm of the strip to the wrong side at both ends")
    assert "Mark the strip in quarters, every 30 cm" in texts[1]
    open_ends = [action.text for action in work(flat, step).tellings()[-1].actions]
    assert not any(text.startswith("Fold") for text in open_ends)
    assert "Lay the ends of the strip level with the ends of the apron." in open_ends
