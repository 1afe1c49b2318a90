"""The iron is set before the first fold that is pressed, and anew where it was put away or the cloth takes another heat."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import cache

import pytest
from furbelow.garment.technique import CautionKind
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.iron import IRON_SET, SET_BY_STEP

from tests.small_guide import small_guide, texts_of, tools_in
from tests.techniques.every_technique_told import as_written, instructions_in, worked
from tests.techniques.small import work
from tests.techniques.test_every_technique_in_a_guide import GARMENTS, OWN, SUPPLIES

PRESS_CLOTHS = "two press cloths: clean, thin cotton"
RING = "- french seam: {of: skirt}"
WAIST = """
- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 6 mm, gap: 3 cm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}
- close gap: {of: skirt.top}
"""


def _heats(texts: list[str]) -> list[str]:
    """The fibres that the iron is set for; of another cloth than the one that is pressed: "the nylon of the net"."""
    said = [text.partition("iron for ")[2].partition(":")[0] for text in texts if text.startswith("Set the iron")]
    return [text.removesuffix(", which takes the least heat here") for text in said]


ONE_CLOTH = "skirt: {from: lawn, length: 126 cm, depth: 50 cm}", f"{RING}\n- narrow hem: {{edge: skirt.bottom}}{WAIST}"
IN_ONE_GO = Workroom(sitting=Fraction(6 * 60 * 60))


def test_it_is_set_again_where_the_work_was_put_away() -> None:
    assert _heats(texts_of(small_guide(*ONE_CLOTH))) == ["cotton", "cotton"]


def test_three_pressed_steps_on_one_cloth_set_the_iron_once() -> None:
    guide = small_guide(*ONE_CLOTH, room=IN_ONE_GO)
    texts = texts_of(guide)
    assert _heats(texts) == ["cotton"]
    # A new needle first; the iron is set just before the first seam is pressed.
    pressed = next(at for at, text in enumerate(texts) if text.startswith("Press "))
    assert texts[0].startswith("Put in the new needle")
    assert texts[pressed - 1].startswith("Set the iron")
    assert "iron, ironing board" in tools_in(guide)
    assert PRESS_CLOTHS not in tools_in(guide)


TIERS = "skirt: {from: lawn, length: 126 cm, depth: 50 cm}\nveil: {from: net, length: 126 cm, depth: 50 cm}"
STACKED = f"""
{RING}
- french seam: {{of: veil}}
- narrow hem: {{edge: skirt.bottom}}
- press: {{piece: [skirt, veil]}}
- stack layers: {{layers: [skirt.top, veil.top], as: waist}}
- folded casing: {{edge: waist, depth: 25 mm, turn under: 6 mm, gap: 3 cm}}
- insert elastic: {{elastic: elastic, into: waist, length: 70 cm}}
- close gap: {{of: waist}}
"""


def test_the_iron_is_set_anew_where_the_cloth_takes_another_heat() -> None:
    """Lawn, then net; lawn again; both pressed, net first; and last both in one casing."""
    guide = small_guide(TIERS, STACKED)
    assert _heats(texts_of(guide)) == ["cotton", "nylon", "cotton", "nylon", "cotton", "the nylon of the net"]
    assert PRESS_CLOTHS in tools_in(guide)


def test_several_cloths_are_pressed_the_coolest_first() -> None:
    press = texts_of(small_guide(TIERS, STACKED), "Press")
    assert [text.split(":")[0] for text in press] == [
        "Set the iron for nylon",
        "Press the veil from the wrong side, the seams first. Lay all margins of one seam to the same side. Lift the iron"
        " and set it down, do not drag it.",
        "Set the iron for cotton",
        "Press the skirt from the wrong side, the seams first, then the folds. Lay all margins of one seam to the same"
        " side. Lift the iron and set it down, do not drag it.",
    ]


FUSIBLE = "  fusible: {kind: interfacing, width: 90 cm}\n"


def _fused(cloth: str) -> list[str]:
    pieces = (
        f"skirt: {{from: {cloth}, length: 126 cm, depth: 50 cm}}\nband: {{from: {cloth}, length: 126 cm, depth: 3 cm}}"
    )
    steps = f"""{RING}
    - narrow hem: {{edge: skirt.bottom}}
    - interface: {{piece: band, with: fusible, cover: half}}
    - join ends: {{of: band}}
    - band casing: {{band: band, to: skirt.top, gap: 3 cm}}
    - insert elastic: {{elastic: elastic, into: band.top, length: 70 cm}}
    - close gap: {{of: band.top}}"""
    return texts_of(small_guide(pieces, steps, materials=FUSIBLE))


def test_interfacing_is_fused_at_one_heat_through_one_cloth_that_its_step_gives() -> None:
    texts = _fused("lawn")
    assert "an unknown fibre" not in str(texts)
    at = next(at for at, text in enumerate(texts) if text.startswith("Cut fusible"))
    assert not texts[at - 1].startswith("Set the iron")
    assert texts[at + 1].startswith("Set the iron to two dots")
    assert texts[at + 2].startswith("Fold the band in half along its length, wrong sides together, 4")
    assert texts[at + 4].startswith("Lay a damp press cloth")
    # Afterwards it is set for the cloth again.
    assert next(text for text in texts[at + 4 :] if text.startswith("Set the iron")).startswith(
        "Set the iron for cotton"
    )


def test_on_cloth_that_melts_interfacing_is_fused_no_hotter_and_dry() -> None:
    texts = _fused("net")
    assert any(text.startswith("Set the iron to one dot") for text in texts)
    assert any(text.startswith("Lay a dry press cloth") for text in texts)
    assert "damp press cloth" not in str(texts)


@pytest.mark.parametrize("name", GARMENTS)
def test_no_operation_sets_the_iron_twice_for_one_heat_nor_steams_with_a_dry_one(name: str) -> None:
    pieces, steps = GARMENTS[name]
    guide = small_guide(pieces, steps, own=OWN, materials=SUPPLIES)
    for operation in (operation for part in guide.parts for operation in part.operations):
        texts = [step.text for step in operation.steps]
        heats = [text for text in texts if text.startswith("Set the iron")]
        assert len(set(heats)) == len(heats), texts
        if any("steam them" in text for text in texts):
            assert not any("no steam" in text for text in texts), texts


def test_what_nobody_told_the_fibre_of_is_named() -> None:
    pieces, steps = ONE_CLOTH
    steps += "- boning channel: {piece: skirt, above hem: 6 cm, tape: tape, bone: bone}\n- press: {piece: skirt}"
    assert _heats(texts_of(small_guide(pieces, steps), "Press")) == ["the covered boning, whose fibre is not known"]


def test_buttons_are_pressed_round_and_set_no_heat() -> None:
    pieces, steps = ONE_CLOTH
    eyelets = "- eyelets: {in: skirt.top, as: metal eyelets, with: eyelet, hole: 8 mm}\n- folded casing"
    steps = (
        steps.replace("- folded casing", eyelets, 1)
        .replace(
            "insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}",
            "drawstring: {cord: cord, into: skirt.top, ends: 30 cm, for: grown-up}",
        )
        .replace("- close gap: {of: skirt.top}\n", "")
    )
    told = texts_of(small_guide(pieces, steps.replace(", gap: 3 cm", ""), materials=SUPPLIES))
    assert set(_heats(told)) == {"cotton"}


# Said with "press" or "iron" and not with the hot iron in hand.
NO_IRON = {
    "fastening-snap-beneath",
    "interface-iron",
    "join-ends-margins-open",
    "join-ends-margins-open-panels",
    "shirring-iron",
    "starch-dip",
}


def test_all_sentences_that_press_are_known_as_such() -> None:
    """A sentence of a technique presses if it says so, but for those that set the iron, and "press" of the hand."""
    said = as_written()
    sets = {name for name in said if name.startswith(("iron-", "press-title", "press-aim"))}
    pressing = {name for name, text in said.items() if re.search(r"\b[Pp]ress\b|\biron\b", text)}
    assert pressing - sets - NO_IRON == _ironed()


@cache
def _ironed() -> frozenset[str]:
    """All that techniques declare to be done with the iron in hand."""
    garments = (*worked(), work(*FOLDED, materials=SUPPLIES))
    return frozenset(name for told in instructions_in(garments) for name in told.ironed)


FOLDED = (
    """
skirt: {from: lawn, length: hip_girth + 16 cm, depth: 45 cm}
frill: {from: lawn, length: skirt.length, depth: 10 cm}
""",
    """
- french seam: {of: skirt}
- join ends: {of: frill}
- neaten: {seam: frill.ends}
- stack layers: {layers: [frill.top, frill.bottom], as: folded}
- attach: {edge: folded, to: skirt.bottom, seam: 1 cm}
- neaten: {seam: folded}
- folded casing: {edge: skirt.top, depth: 24 mm}
- insert elastic: {elastic: elastic, into: skirt.top, length: waist_girth - 8 cm}
- close gap: {of: skirt.top}
""",
)


@pytest.mark.parametrize("name", [*sorted(GARMENTS), "folded"])
def test_nothing_is_pressed_before_the_iron_is_set_and_warned_of(name: str) -> None:
    pieces, steps = {**GARMENTS, "folded": FOLDED}[name]
    guide = small_guide(pieces, steps, own=OWN, materials=SUPPLIES)
    is_set = warned = False
    for operation in guide.operations:
        warned |= any(caution.kind is CautionKind.HEAT for caution in operation.cautions)
        for step in operation.steps:
            is_set |= step.message in IRON_SET | SET_BY_STEP
            if step.message in _ironed():
                assert is_set, f"{operation.place(step)} {step.text}"
                assert warned, f"{operation.place(step)} {step.text}"
