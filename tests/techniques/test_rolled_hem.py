"""A rolled hem: two small turns, or one in the overlocker, and only of thin cloth."""

from __future__ import annotations

import pytest
from furbelow.garment.bench import State
from furbelow.garment.workroom import Workroom

from tests.techniques.small import refused, sound

SCARF = "scarf: {from: lawn, length: 100 cm, depth: 40 cm}"
RING = "- french seam: {of: scarf}\n- narrow hem: {edge: scarf.top, first turn: 5 mm, second turn: 5 mm}"


@pytest.mark.parametrize(
    ("by", "taken", "stitch"), [("hemming foot", 6, "301"), ("hand", 6, "200"), ("overlocker", 3, "504")]
)
def test_each_way_takes_its_turns(by: str, taken: int, stitch: str) -> None:
    room = Workroom(neaten_with="overlocker")
    worked = sound(
        SCARF, f"{RING}\n- rolled hem: {{edge: scarf.bottom, roll: 3 mm, by: {by}}}", room=room, hips="90 cm"
    )
    assert worked.solved.pieces["scarf"].cut_depth == 400 + 10 + taken
    assert worked.bench.edge("scarf.bottom").state is State.HEMMED
    assert [row.kind for row in worked.performed[-1].sewn] == [stitch]
    assert worked.performed[-1].sewn[0].length == 1000


def test_a_wide_roll_is_no_roll() -> None:
    fault = refused("FB338", SCARF, f"{RING}\n- rolled hem: {{edge: scarf.bottom, roll: 9 mm}}")
    assert fault.headline == "a roll of 9 mm is wider than 6 mm, by 3 mm"


def test_heavy_cloth_does_not_roll() -> None:
    fault = refused("FB338", SCARF.replace("lawn", "denim"), "- rolled hem: {edge: scarf.bottom}")
    assert fault.headline == "`denim` of 340 g/m2 does not roll; up to 120 g/m2 does"


def test_a_workroom_without_an_overlocker_is_told() -> None:
    refused("FB339", SCARF, f"{RING}\n- rolled hem: {{edge: scarf.bottom, by: overlocker}}")


def test_a_hemmed_edge_is_not_hemmed_again() -> None:
    refused("FB302", SCARF, f"{RING}\n- rolled hem: {{edge: scarf.top}}")


def test_a_stack_is_hemmed_layer_by_layer() -> None:
    layers = "one: {from: net, length: 80 cm, depth: 20 cm}\ntwo: {from: net, length: 80 cm, depth: 20 cm}"
    steps = "- stack layers: {layers: [one.top, two.top], as: both}\n- rolled hem: {edge: both}"
    assert "a stack of 2 layers" in refused("FB302", layers, steps).headline
