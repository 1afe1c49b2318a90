"""The whole guide of a small garment, as a value."""

from __future__ import annotations

from furbelow.garment.workroom import Workroom
from furbelow.order.chain import guide_of, planned
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.body import size_body
from furbelow.s6_write.guide.guide import Guide

from tests.techniques.small import spec_text

# A skirt with a gathered flounce of several strips, on elastic: pieces and steps.
FLOUNCED = """skirt: {from: lawn, length: 130 cm, depth: 40 cm}
flounce: {from: lawn, length: 240 cm, depth: 20 cm, piecing: {seam: 1 cm, shortest: 30 cm, most joins: 2}}"""
FLOUNCED_STEPS = """- french seam: {of: skirt}
- join strips: {of: flounce}
- neaten: {seam: flounce.joins}
- french seam: {of: flounce}
- narrow hem: {edge: flounce.bottom}
- gather: {edge: flounce.top, to: skirt.bottom}
- attach: {edge: flounce.top, to: skirt.bottom}
- neaten: {seam: flounce.top}
- folded casing: {edge: skirt.top, depth: 25 mm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}
- close gap: {of: skirt.top}"""


def small_order(pieces: str, steps: str, *, room: Workroom | None = None, materials: str = "", own: str = "") -> Order:
    """For size M, at a home table. Fails the test where the spec can't be read."""
    read = read_spec(("small.yaml", spec_text(pieces, steps, materials=materials, own=own).encode()))
    assert read.value is not None, [fault.headline for fault in read.faults]
    body = size_body(read.value, "M")
    assert body.value is not None
    return Order(read.value, "size M", body.value, {}, room or Workroom())


def small_guide(pieces: str, steps: str, *, room: Workroom | None = None, materials: str = "", own: str = "") -> Guide:
    """For size M, at a home table. Fails the test where the garment can't be made."""
    found = planned(small_order(pieces, steps, room=room, materials=materials, own=own))
    assert found.value is not None, [f"{fault.code} {fault.headline}" for fault in found.faults if fault.is_error]
    return guide_of(found.value, "size M")


def tools_in(guide: Guide) -> set[str]:
    return {tool.name for tool in guide.tools}


def texts_of(guide: Guide, title: str = "") -> list[str]:
    """The sentences of the work, or of the one operation whose heading begins so."""
    operations = [operation for part in guide.parts for operation in part.operations]
    return [step.text for each in operations if each.title.startswith(title) for step in each.steps]
