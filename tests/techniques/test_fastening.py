"""Closing an opening at a finished top edge: what it closes to, what it takes, and when there is nothing to close."""

from __future__ import annotations

import pytest

from tests.techniques.small import refused, sound, work

PIECES = """skirt: {from: lawn, length: 130 cm, depth: 50 cm, grain: across}
strip: {from: lawn, length: 44 cm, depth: 3 cm}
face: {from: lawn, length: 81 cm, depth: 4 cm, grain: across}"""
OPENED = """- french seam: {of: skirt}
- narrow hem: {edge: skirt.bottom}
- placket: {edge: skirt.top, strip: strip, slit: 22 cm}
- gather: {edge: skirt.top, length: face.length}"""
FACED = f"""{OPENED}
- neaten: {{edge: [face.bottom, face.start, face.end]}}
- facing: {{edge: skirt.top, with: face.top}}"""
HOOK = "  hook: {kind: fastening, price: 0.40 EUR}\n"


@pytest.mark.parametrize("by", ["hook and bar", "hook and eye", "snaps"])
def test_the_waist_closes_to_its_edge_less_the_overlap(by: str) -> None:
    """A faced edge of 81 cm with a placket of 3 cm closes to 78 cm."""
    worked = sound(PIECES, f"{FACED}\n- fastening: {{edge: skirt.top, by: {by}}}")
    opening = worked.bench.openings["skirt.top"]
    assert (opening.waist, opening.closed_by) == (780, by)


def test_a_material_is_used_once_for_each() -> None:
    worked = sound(PIECES, f"{FACED}\n- fastening: {{edge: skirt.top, with: hook, count: 2}}", materials=HOOK)
    assert [(used.material, used.amount) for used in worked.performed[-1].used] == [("hook", 2)]


def test_a_waist_that_closes_too_tight_is_refused() -> None:
    fault = refused("FB345", PIECES.replace("81 cm", "79 cm"), f"{FACED}\n- fastening: {{edge: skirt.top}}")
    assert "76 cm and the waist is 78 cm, 2 cm too tight" in fault.headline


def test_an_edge_that_is_not_finished_is_refused() -> None:
    bare = PIECES.partition("\nface")[0]
    opened = OPENED.replace("face.length", "81 cm")
    fault = refused("FB347", bare, f"{opened}\n- fastening: {{edge: skirt.top}}")
    assert fault.headline == "`skirt.top` is raw still, and a fastening closes a finished edge"


def test_an_edge_without_an_opening_is_refused() -> None:
    steps = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.top}\n- fastening: {edge: skirt.top}"
    skirt = PIECES.partition("\n")[0]
    assert refused("FB347", skirt, steps).headline == "`skirt.top` has no opening to close"


def test_an_opening_is_closed_once() -> None:
    twice = "\n- fastening: {edge: skirt.top}\n- fastening: {edge: skirt.top, by: snaps}"
    assert refused("FB347", PIECES, FACED + twice).headline == "the opening in `skirt.top` is closed already"


def test_half_a_fastener_is_refused() -> None:
    assert work(PIECES, f"{FACED}\n- fastening: {{edge: skirt.top, count: 1.5}}").codes == ["FB341"]
