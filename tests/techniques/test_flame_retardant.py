"""An agent against fire: how much of it, on which fibres, and what is said before and after."""

from __future__ import annotations

import pytest

from tests.techniques.small import sound, work

SKIRT = "skirt: {from: lawn, length: 120 cm, depth: 50 cm}"
NET = SKIRT.replace("lawn", "net")
AGENT = "  agent: {kind: other, about: agent against fire, sold by: 1000 ml, price: 18 EUR}\n"
SEWN = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.bottom}\n- rolled hem: {edge: skirt.top}\n"
TREATED = f"{SEWN}- flame retardant: {{piece: skirt, with: agent, takes: 1.5}}"


def test_it_takes_so_many_millilitres_for_each_gram_of_dry_cloth() -> None:
    worked = work(SKIRT, TREATED, materials=AGENT)
    cut = worked.solved.pieces["skirt"]
    # 80 g/m2: a square metre is 1,000,000 mm2.
    grams = cut.cut_length * cut.cut_depth * 80 / 1_000_000
    done = worked.performed[-1]
    assert [(use.material, use.amount) for use in done.used] == [("agent", grams * 3 / 2)]


def test_label_test_and_local_rules_come_first() -> None:
    words = sound(SKIRT, TREATED, materials=AGENT).words()
    assert "No treatment makes cloth safe from fire: it still burns." in words
    assert "your local rules, and the word of a fire officer for a stage or hall come before this guide" in words
    assert "Never try it with a flame yourself" in words
    assert "DO NOT WASH" in words
    assert "mist" not in words
    assert (
        "Do not breathe the mist" in sound(SKIRT, TREATED.replace("takes: 1.5", "by: spray"), materials=AGENT).words()
    )


@pytest.mark.parametrize(("piece", "told"), [(SKIRT, False), (NET, True)])
def test_cloth_that_drinks_no_water_is_told(piece: str, told: bool) -> None:
    """Technical Note on flame retarding, theatre engineering course 21M.735, MIT, 2004: natural fibres take a solution of salts;
    nylons and acetates are not recommended."""
    warned = [fault.code for fault in work(piece, TREATED, materials=AGENT).warnings]
    assert ("FB372" in warned) is told


def test_too_little_to_wet_it_is_told() -> None:
    codes = [fault.code for fault in work(SKIRT, TREATED.replace("1.5", "0.1"), materials=AGENT).warnings]
    assert "FB421" in codes
