"""A deep hem: its depth lies on the same piece, and its edge is turned under or neat."""

from __future__ import annotations

import pytest
from furbelow.garment.bench import State

from tests.techniques.small import INCH, refused, sound, work

SKIRT = "skirt: {from: lawn, length: 200 cm, depth: 60 cm}"
RING = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.top}"


def test_it_takes_the_turn_and_the_depth() -> None:
    worked = sound(
        SKIRT, f"{RING}\n- deep hem: {{edge: skirt.bottom, depth: 3 in, turn under: 1/4 in}}", units="inches"
    )
    assert worked.bench.edge("skirt.bottom").used == 3 * INCH + INCH / 4
    assert worked.bench.edge("skirt.bottom").state is State.HEMMED
    assert worked.performed[-1].setup == "hand"
    assert "3 in deep all along" in worked.words()


def test_by_machine_it_is_a_row_of_lockstitch() -> None:
    worked = sound(SKIRT, f"{RING}\n- deep hem: {{edge: skirt.bottom, by: machine}}")
    assert [(row.kind, row.length) for row in worked.performed[-1].sewn] == [("301", 2000)]


def test_a_neatened_edge_needs_no_turn() -> None:
    worked = sound(
        SKIRT, f"{RING}\n- neaten: {{edge: skirt.bottom}}\n- deep hem: {{edge: skirt.bottom, turn under: 0 mm}}"
    )
    assert worked.solved.pieces["skirt"].cut_depth == 600 + 15 + 50


def test_a_raw_edge_without_a_turn_is_refused() -> None:
    refused("FB335", SKIRT, f"{RING}\n- deep hem: {{edge: skirt.bottom, turn under: 0 mm}}")


def test_a_hem_deeper_than_what_is_left_is_refused() -> None:
    fault = refused(
        "FB312",
        "skirt: {from: net, length: 200 cm, cut depth: 20 cm}",
        "- deep hem: {edge: skirt.bottom, depth: 12 cm, turn under: 1 cm}",
    )
    assert fault.headline == "a hem of 12 cm leaves 7 cm of `skirt` to lie on, 5 cm too little"


def test_a_gathered_edge_is_refused() -> None:
    refused("FB333", SKIRT, "- gather: {edge: skirt.bottom, length: 100 cm}\n- deep hem: {edge: skirt.bottom}")


def test_a_stack_is_hemmed_layer_by_layer() -> None:
    layers = "one: {from: net, length: 80 cm, depth: 20 cm}\ntwo: {from: net, length: 80 cm, depth: 20 cm}"
    steps = "- stack layers: {layers: [one.top, two.top], as: both}\n- deep hem: {edge: both}"
    assert "a stack of 2 layers" in refused("FB302", layers, steps).headline


GORES = """- gores: {{piece: gore, hem: {hem}, sides: both slanting}}
- join ends: {{of: gore, seam: 1 cm, into: one ring}}
- neaten: {{seam: gore.ends}}
- narrow hem: {{edge: gore.top}}
- neaten: {{edge: gore.bottom}}
- deep hem: {{edge: gore.bottom, depth: {depth}, turn under: 0 mm}}"""
GORE = "gore: {from: lawn, count: 6, length: 20 cm, depth: 60 cm}"


@pytest.mark.parametrize(
    ("hem", "depth", "code", "eased"),
    [
        ("23 cm", "2 cm", "", 0),  # 2 mm a gore
        ("24 cm", "2 cm", "", 16),
        ("26 cm", "4 cm", "", 48),
        ("40 cm", "4 cm", "FB422", 160),
        ("60 cm", "5 cm", "FB422", 400),
    ],
)
def test_of_gores_the_hem_is_longer_than_its_line_and_is_eased(hem: str, depth: str, code: str, eased: int) -> None:
    """Over 60 cm each of six grows by its hem less 20 cm; the edge comes to lie twice the depth higher: similar triangles."""
    worked = work(GORE, GORES.format(hem=hem, depth=depth))
    fault = next((fault for fault in (*worked.faults, *worked.warnings) if fault.code == "FB422"), None)
    assert (fault.code if fault else "") == code
    told = [step for step in worked.tellings() if step.title.startswith("Turn up a deep hem")]
    said = " ".join(action.text for step in told for action in step.actions)
    assert (f"The inner edge is {eased / 10:g} cm longer" in said) == (eased > 0)
    assert ("Sew one row, 5 mm stitch, 5 mm from the neatened edge" in said) == (eased > 0)
