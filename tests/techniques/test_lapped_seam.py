"""A lapped seam: the upper edge gives its turn, the lower one the lap."""

from __future__ import annotations

from functools import partial

from furbelow.garment.bench import State

from tests.techniques import small

refused = partial(small.refused, hips="70 cm")
sound = partial(small.sound, hips="70 cm")  # narrow pieces, for a narrow body

TIERS = """upper: {from: CLOTH, length: 80 cm, depth: 20 cm}
lower: {from: CLOTH, length: 80 cm, depth: 30 cm}"""
NET, LAWN = TIERS.replace("CLOTH", "net"), TIERS.replace("CLOTH", "lawn")
RINGS = "- join ends: {of: upper}\n- join ends: {of: lower}"


def test_each_edge_gives_what_its_side_takes() -> None:
    worked = sound(
        NET, f"{RINGS}\n- lapped seam: {{edge: upper.bottom, over: lower.top, turn under: 8 mm, lap: 12 mm}}"
    )
    assert worked.solved.pieces["upper"].cut_depth == 208
    assert worked.solved.pieces["lower"].cut_depth == 312
    assert worked.bench.edge("upper.bottom").used == 8
    assert worked.bench.edge("lower.top").used == 12
    assert worked.bench.seams["lower.top"].topstitched


def test_net_is_lapped_without_a_turn() -> None:
    worked = sound(NET, f"{RINGS}\n- lapped seam: {{edge: upper.bottom, over: lower.top, turn under: 0 mm}}")
    assert "slip the upper over the lower, the cut edge on that line" in worked.words()
    assert "2 mm from the edge on top" in worked.words()


def test_a_stack_laid_over_takes_the_turn_of_every_layer() -> None:
    worked = sound(
        NET + "\ninner: {from: net, length: 80 cm, depth: 20 cm}",
        f"""{RINGS}
        - join ends: {{of: inner}}
        - stack layers: {{layers: [upper.bottom, inner.bottom], as: both}}
        - lapped seam: {{edge: both, over: lower.top, turn under: 8 mm, lap: 12 mm}}""",
    )
    assert worked.bench.edge("inner.bottom").used == 8
    assert worked.bench.edge("upper.bottom").used == 8
    assert worked.bench.edge("upper.bottom").state is State.SEWN


def test_neatened_edges_leave_a_neat_margin_on_ravelling_cloth() -> None:
    ends = "- neaten: {seam: [upper.ends, lower.ends]}\n- narrow hem: {edge: upper.top}\n- narrow hem: {edge: lower.bottom}"
    neat = "- neaten: {edge: [upper.bottom, lower.top]}"
    lap = "- lapped seam: {edge: upper.bottom, over: lower.top}"
    worked = sound(LAWN, f"{RINGS}\n{neat}\n{lap}\n{ends}")
    assert worked.bench.seams["lower.top"].state is State.NEATENED
    refused("FB403", LAWN, f"{RINGS}\n{lap}\n{ends}")


def test_a_raw_ravelling_edge_on_top_is_refused() -> None:
    refused("FB335", LAWN, f"{RINGS}\n- lapped seam: {{edge: upper.bottom, over: lower.top, turn under: 0 mm}}")


def test_a_lap_that_the_row_misses_is_refused() -> None:
    fault = refused("FB334", NET, f"{RINGS}\n- lapped seam: {{edge: upper.bottom, over: lower.top, lap: 1 mm}}")
    assert fault.headline == "a lap of 1 mm is not caught by a row 2 mm from the fold"


def test_a_ring_and_a_flat_edge_are_refused() -> None:
    refused("FB304", NET, "- join ends: {of: upper}\n- lapped seam: {edge: upper.bottom, over: lower.top}")


def test_raw_net_beside_a_neat_edge_leaves_a_neat_margin() -> None:
    mixed = "upper: {from: lawn, length: 80 cm, depth: 20 cm}\nlower: {from: net, length: 80 cm, depth: 30 cm}"
    ready = (
        f"{RINGS.replace('- join ends: {of: upper}', '- french seam: {of: upper}')}\n- narrow hem: {{edge: upper.top}}"
    )
    lap = "- lapped seam: {edge: upper.bottom, over: lower.top}"
    worked = sound(mixed, f"{ready}\n- neaten: {{edge: upper.bottom}}\n{lap}")
    assert worked.bench.seams["lower.top"].state is State.NEATENED
    refused("FB403", mixed, f"{ready}\n{lap}")
