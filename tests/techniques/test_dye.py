"""Dye by the weight of the cloth, of a class that its fibre takes, on the list that goes to the shop."""

from __future__ import annotations

import json
from fractions import Fraction

import pytest
from furbelow.diagnose.fault import Severity
from furbelow.garment.workroom import Workroom
from furbelow.order.make_one import make_guide
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.body import size_body

from tests.techniques.small import refused, sound, spec_text, work

SKIRT = "skirt: {from: lawn, length: 200 cm, depth: 50 cm}"
STEPS = """- join ends: {of: skirt, seam: 1 cm}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 6 mm, gap: 3 cm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 60 cm}
- close gap: {of: skirt.top}"""
DYE = "- dye: {piece: skirt, with: red, depth: 4%}"
RED = "  red: {kind: dye, about: red powder, sold by: 10 g, price: 3 EUR}\n"
# Lawn of 80 g/m2, cut 202 cm long and 50 cm deep with a hem of 15 mm and a casing of 25 and 6 mm.
CLOTH = 80 * Fraction("2.02") * (Fraction("0.5") + Fraction("0.015") + Fraction("0.031"))


def _guide(materials: str, steps: str = f"{STEPS}\n{DYE}") -> dict[str, object]:
    text = spec_text(SKIRT, steps, materials=materials + "  thread: {kind: thread, reel: 100 m}\n")
    spec = read_spec(("small.yaml", text.encode())).value
    assert spec is not None
    body = size_body(spec, "M").value
    assert body is not None
    made = make_guide(Order(spec, "size M", body, {}, Workroom()), with_pdf=False)
    assert made.value is not None, made.faults
    guide: dict[str, object] = json.loads(made.value.files["guide.json"])
    (line,) = (line for line in guide["materials"] if line["name"] == "red")  # type: ignore[attr-defined]
    return {"line": line, "all": json.dumps(guide)}


def test_the_dye_is_weighed_by_the_dry_cloth() -> None:
    worked = sound(SKIRT, f"{STEPS}\n{DYE}", materials=RED)
    (used,) = worked.performed[-1].used
    assert worked.solved.pieces["skirt"].cut_depth == 546
    assert used.amount == CLOTH * Fraction(4, 100)


def test_the_list_names_packets_and_the_class_that_the_fibre_takes() -> None:
    line = _guide(RED)["line"]
    assert isinstance(line, dict)
    # 88.2 g of lawn take 3.6 g, of which a packet of 10 g is bought.
    assert line["amount"] == "10 g"
    assert line["need"] == "3.6 g"
    assert line["cost"] == "3.00 EUR"
    assert "reactive dye, for cotton" in line["description"]


def test_a_class_of_the_makers_own_is_named_where_the_fibre_takes_it() -> None:
    line = _guide(RED.replace("kind: dye", "kind: dye, class: direct"))["line"]
    assert isinstance(line, dict)
    assert "direct dye, for cotton" in line["description"]


def test_the_guide_says_what_can_hurt() -> None:
    told = _guide(RED)["all"]
    assert isinstance(told, str)
    for words in ("do not breathe it in", "used for food", "scalds", "dye maker's sheet", "local rules"):
        assert words in told


@pytest.mark.parametrize(
    ("fibre", "dye_class"), [("cotton", "acid"), ("nylon", "reactive"), ("polyester", "direct"), ("wool", "disperse")]
)
def test_a_dye_that_does_not_take_on_the_fibre_is_refused(fibre: str, dye_class: str) -> None:
    cloth = f"  other: {{kind: cloth, fibre: {fibre}, width: 140 cm, weight: 80 g/m2, ravels: no}}\n"
    red = RED.replace("kind: dye", f"kind: dye, class: {dye_class}")
    fault = refused("FB355", SKIRT.replace("lawn", "other"), f"{STEPS}\n{DYE}", materials=cloth + red)
    assert fibre in fault.headline
    assert dye_class in fault.headline


def test_a_fibre_that_takes_no_dye_is_refused_and_one_that_is_not_known_is_warned_of() -> None:
    cloth = "  other: {{kind: cloth, fibre: {}, width: 140 cm, weight: 80 g/m2, ravels: no}}\n"
    other = SKIRT.replace("lawn", "other")
    refused("FB355", other, f"{STEPS}\n{DYE}", materials=cloth.format("polypropylene") + RED)
    worked = work(other, f"{STEPS}\n{DYE}", materials=cloth.format("bamboo") + RED)
    assert "FB356" in {fault.code for fault in worked.warnings}
    assert not worked.faults


@pytest.mark.parametrize(
    ("depth", "severity"),
    [("0%", Severity.ERROR), ("20%", None), ("21%", Severity.WARNING), ("200%", Severity.WARNING)],
)
def test_a_depth_that_no_dye_has_is_told(depth: str, severity: Severity | None) -> None:
    worked = work(SKIRT, f"{STEPS}\n{DYE.replace('4%', depth)}", materials=RED)
    told = [fault.severity for fault in (*worked.faults, *worked.warnings) if fault.code == "FB313"]
    assert told == ([] if severity is None else [severity])


def test_a_dye_that_no_step_uses_is_told() -> None:
    worked = work(SKIRT, STEPS, materials=RED)
    assert [fault.code for fault in worked.warnings if "red powder" in fault.headline] == ["FB407"]
