"""A facing: level with its edge, its margin enclosed, its free edge finished before."""

from __future__ import annotations

from functools import partial

from furbelow.garment.bench import State

from tests.techniques import small
from tests.techniques.small import refused

sound = partial(small.sound, hips="90 cm")  # narrow pieces, for a narrow body

PIECES = """cape: {from: lawn, length: 100 cm, depth: 40 cm}
facing: {from: lawn, length: 100 cm, depth: 6 cm}"""
READY = """- french seam: {of: cape}
- french seam: {of: facing}
- narrow hem: {edge: cape.bottom}
- neaten: {edge: facing.bottom}"""


def test_both_edges_give_the_seam_and_the_margin_is_enclosed() -> None:
    worked = sound(
        PIECES, f"{READY}\n- facing: {{edge: cape.top, with: facing.top, seam: 8 mm}}", worn=", length: 40 cm"
    )
    assert worked.bench.edge("cape.top").used == 8
    assert worked.solved.pieces["facing"].cut_depth == 68
    assert worked.bench.seams["facing.top"].state is State.ENCLOSED
    assert [row.length for row in worked.performed[-1].sewn] == [1000, 1000]


def test_a_raw_free_edge_is_refused() -> None:
    refused("FB335", PIECES, READY.rpartition("\n")[0] + "\n- facing: {edge: cape.top, with: facing.top}")


def test_the_other_edge_of_the_facing_is_refused() -> None:
    fault = refused("FB340", PIECES, f"{READY}\n- facing: {{edge: cape.top, with: facing.bottom}}")
    assert fault.help == "write `with: facing.top`"


def test_a_short_edge_is_refused() -> None:
    refused("FB340", PIECES, "- facing: {edge: cape.start, with: facing.start}")


def test_lengths_must_match() -> None:
    fault = refused(
        "FB401",
        PIECES.replace("facing: {from: lawn, length: 100", "facing: {from: lawn, length: 90"),
        f"{READY}\n- facing: {{edge: cape.top, with: facing.top}}",
    )
    assert "10 cm too short" in fault.headline


def test_a_stack_is_faced_through_every_layer() -> None:
    worked = sound(
        PIECES + "\nunder: {from: net, length: 100 cm, depth: 30 cm}",
        f"""{READY}
        - join ends: {{of: under}}
        - stack layers: {{layers: [cape.top, under.top], as: both}}
        - facing: {{edge: both, with: facing.top}}""",
    )
    assert worked.bench.edge("under.top").state is State.SEWN
    assert worked.bench.edge("under.top").used == 10


def test_the_margin_of_a_curved_edge_is_clipped_before_it_is_turned_and_a_straight_one_is_not() -> None:
    pieces = """cape: {from: lawn, length: 100 cm, depth: 40 cm}
    facing: {from: lawn, length: 100 cm, depth: 6 cm}"""
    cut = "- ring cut: {piece: cape, hem: 180 cm}\n- ring cut: {piece: facing, hem: 110 cm}\n"
    step = "\n- facing: {edge: cape.top, with: facing.top, seam: 8 mm}"
    marks = [action.mark for action in sound(pieces, f"{cut}{READY}{step}").tellings()[-1].actions]
    assert marks[1:4] == ["facing-sew-ring", "facing-clip", "facing-understitch-ring"]
    straight = [action.mark for action in sound(PIECES, f"{READY}{step}").tellings()[-1].actions]
    assert "facing-clip" not in straight
