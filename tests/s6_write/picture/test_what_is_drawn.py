"""The cloth of a garment is drawn, all of it, and what lies in or on it does not make a layer or a length."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

import pytest
from furbelow.garment.spec import EdgeName, Word
from furbelow.order.chain import prove
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.figures.overview import overview
from furbelow.s6_write.picture.shape import shape_of
from furbelow.s6_write.words.words import Words

from tests.s6_write.picture.test_picture import GARMENTS, runs
from tests.small_guide import small_order
from tests.techniques.test_every_technique_in_a_guide import GARMENTS as TOLD
from tests.techniques.test_every_technique_in_a_guide import OWN, SUPPLIES
from tests.techniques.test_pockets import BAG, GAP, HEMS, NEAT, PATCH, READY, SIDE, STEP

# The argument of a technique that names what is sewn in or on the cloth of a garment: common practice, no source.
LIES_ON = {
    "patch pocket": "pocket",
    "side pocket": "bag",
    "placket": "strip",
    "piping": "strip",
    "ruche": "strip",
    "facing": "with",
    "tie ends": "tie",
    "straps": "strap",
    "godets": "piece",
}
PIPED = """skirt: {from: lawn, length: 120 cm, depth: 60 cm}
guard: {from: lawn, length: 120 cm, depth: 20 cm}
cover: {from: lawn, length: 120 cm, depth: 16 mm, grain: free}"""
PIPING = """- french seam: {of: skirt}
- french seam: {of: guard}
- bias strip: {piece: cover}
- join ends: {of: cover, seam: 1 cm}
- piping: {strip: cover, cord: cord, in: skirt.bottom, seam: 1 cm}
- attach: {edge: guard.top, to: skirt.bottom, seam: 1 cm}
- neaten: {seam: guard.top}
- narrow hem: {edge: guard.bottom}
- narrow hem: {edge: skirt.top}"""
SMALL: Mapping[str, tuple[str, str]] = {
    "a patch pocket": (PATCH, f"{READY}\n{STEP}"),
    "a pocket in a seam": (BAG, f"{NEAT}\n{GAP}\n{SIDE}\n{HEMS}"),
    "a piped seam": (PIPED, PIPING),
    **TOLD,
}


def small_run(name: str) -> Run:
    pieces, steps = SMALL[name]
    proved = prove(small_order(pieces, steps, own=OWN, materials=SUPPLIES))
    assert proved.value is not None, [fault.headline for fault in proved.faults]
    return proved.value.run


def cloth_of(run: Run) -> set[str]:
    """The pieces that are neither a folded band nor sewn in or on another."""
    lies = set()
    for done in run.performed:
        arg = LIES_ON.get(done.step.written.technique)
        if arg:
            named = done.step.written.args[arg].value
            assert isinstance(named, Word | EdgeName)
            lies.add(named.piece if isinstance(named, EdgeName) else named.text)
    return {name for name, cloth in run.final.cloths.items() if not cloth.folded} - lies


def drawn(run: Run) -> list[str]:
    return [tier.piece for layer in shape_of(run).layers for tier in layer.tiers]


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_all_cloth_of_a_demo_is_drawn_once(path: Path) -> None:
    for run in runs(path):
        assert sorted(drawn(run)) == sorted(cloth_of(run))


@pytest.mark.parametrize("name", SMALL)
def test_all_cloth_of_a_garment_is_drawn_once(name: str) -> None:
    run = small_run(name)
    assert sorted(drawn(run)) == sorted(cloth_of(run))


def test_piping_adds_nothing_to_the_length() -> None:
    run = small_run("a piped seam")
    assert max(run.drops.values()) == run.drops["guard"]
    assert run.drops["cover"] <= run.drops["skirt"]
    assert "Sewn on the skirt" in overview(run, Words("en", run.say)).alt
