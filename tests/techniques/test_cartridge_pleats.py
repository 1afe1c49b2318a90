"""Cartridge pleats: drawn and whipped by hand, where the cloth in them has room to stand."""

from __future__ import annotations

from furbelow.garment.bench import State
from furbelow.garment.technique import facts_of
from furbelow.techniques.cartridge_pleats import DrawnUp

from tests.techniques.small import refused, sound

PIECES = """yoke: {from: net, cut length: 60 cm, depth: 12 cm}
skirt: {from: net, cut length: 240 cm, depth: 50 cm}"""
STEP = "- cartridge pleats: {edge: skirt.top, to: yoke.bottom, turn: 1 cm, stitch: 8 mm, rows: 3}"


def test_both_edges_turn_and_all_is_sewn_by_hand() -> None:
    worked = sound(PIECES, STEP)
    assert worked.solved.pieces["skirt"].cut_depth == 510
    assert worked.solved.pieces["yoke"].cut_depth == 130
    assert worked.bench.edge("skirt.top").state is State.SEWN
    assert worked.bench.edge("skirt.top").ratio == 4
    assert [(row.kind, row.length) for row in worked.performed[0].sewn] == [("209", 2400)] * 3 + [("200", 600)]
    assert worked.performed[0].setup == "hand"
    # 240 cm in stitches of 8 mm, two to a pleat.
    assert facts_of(worked.performed[0], DrawnUp).pleats == 150


def test_cloth_that_would_fill_more_than_the_line_is_refused() -> None:
    thick = PIECES.replace("net", "denim").replace("240", "400")
    neat = "- neaten: {edge: [skirt.top, yoke.bottom]}\n"
    fault = refused("FB342", thick, neat + STEP)
    assert "stand on 60 cm" in fault.headline


def test_raw_ravelling_folds_are_refused() -> None:
    refused("FB335", PIECES.replace("net", "lawn"), STEP)


def test_less_cloth_than_line_is_refused() -> None:
    refused("FB314", PIECES.replace("240", "55"), STEP)


def test_a_ring_and_a_flat_edge_are_refused() -> None:
    refused("FB304", PIECES, f"- join ends: {{of: yoke}}\n{STEP}")


def test_one_row_is_refused() -> None:
    refused("FB341", PIECES, STEP.replace("rows: 3", "rows: 1"))
