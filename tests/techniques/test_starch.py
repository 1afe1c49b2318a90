"""Starch: how much of it each way of putting it on takes, the recipe from cornflour, the tools and the cautions."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.technique import CautionKind
from furbelow.garment.workroom import Workroom

from tests.small_guide import small_guide, texts_of, tools_in
from tests.techniques.small import Worked, work

# 140 cm of lawn by 50 cm at 80 g/m2 weigh 56 g.
SLIP = "slip: {from: lawn, length: 140 cm, depth: 50 cm}"
STARCH = "  starch: {kind: starch, about: liquid starch}\n  flour: {kind: starch, about: cornflour}\n"
HUNG = """
- french seam: {of: slip}
- narrow hem: {edge: slip.bottom}
- folded casing: {edge: slip.top, depth: 25 mm}
- insert elastic: {elastic: elastic, into: slip.top, length: 70 cm}
- close gap: {of: slip.top}
"""


def _starched(rest: str) -> Worked:
    return work(SLIP, f"- starch: {{piece: slip, {rest}}}", materials=STARCH)


@pytest.mark.parametrize(("by", "ml"), [("brush", 56), ("spray", 56), ("dip", 560)])
def test_a_dip_takes_a_bath_and_a_brush_what_the_cloth_holds(by: str, ml: int) -> None:
    """House rules: 1 ml wets a gram of cloth through; a bath is ten times the cloth, as in dyeing (1:10)."""
    worked = _starched(f"with: starch, by: {by}")
    assert worked.performed[-1].used[0].amount == ml


def test_of_cooked_starch_the_flour_alone_is_bought() -> None:
    """breadmoretravels.blogspot.com, August 2012: 1 tablespoon in 4 cups, 1/64 of the water."""
    worked = _starched("with: flour, by: dip, made: from cornflour")
    assert worked.performed[-1].used[0].amount == Fraction(560, 64)
    said = worked.words()
    assert "Stir 9 ml of cornflour into 35 ml of cold water" in said
    assert "Bring 530 ml of water to the boil" in said


def test_less_than_a_quarter_of_a_litre_is_not_cooked() -> None:
    worked = _starched("with: flour, by: brush, made: from cornflour")
    assert worked.performed[-1].used[0].amount == Fraction(250, 64)


@pytest.mark.parametrize(
    ("rest", "kinds", "tools"),
    [
        ("with: starch", {CautionKind.FLAME}, {"wide soft brush, bowl"}),
        ("with: starch, by: spray", {CautionKind.FLAME, CautionKind.AEROSOL}, {"spray bottle or can"}),
        (
            "with: flour, by: dip, made: from cornflour",
            {CautionKind.FLAME, CautionKind.STEAM},
            {"bowl or tub that holds the piece", "pan, long spoon"},
        ),
    ],
)
def test_each_way_names_its_tools_and_its_dangers(rest: str, kinds: set[CautionKind], tools: set[str]) -> None:
    assert {kind for kind, _ in _starched(rest).tellings()[-1].cautions} == kinds
    supply = STARCH.splitlines(keepends=True)["flour" in rest]
    guide = small_guide(SLIP, f"{HUNG}\n- starch: {{piece: slip, {rest}}}", room=Workroom(), materials=supply)
    ways = {
        "wide soft brush, bowl",
        "spray bottle or can",
        "bowl or tub that holds the piece",
        "pan, long spoon",
    }
    assert tools_in(guide) & ways == tools
    assert {"old sheet, dry cloth", "measuring jug"} <= tools_in(guide)


def test_a_skirt_is_dipped_before_it_is_hung_and_hung_before_it_is_brushed() -> None:
    def order_of(rest: str, *words: str) -> list[int]:
        guide = small_guide(SLIP, f"{HUNG}\n- starch: {{piece: slip, {rest}}}", materials=STARCH.splitlines()[0] + "\n")
        texts = texts_of(guide, "Stiffen")
        return [next(at for at, text in enumerate(texts) if text.startswith(word)) for word in words]

    dipped, brushed = order_of("with: starch, by: dip", "Dip", "Hang"), order_of("with: starch", "Hang", "Brush")
    assert dipped == sorted(dipped)
    assert brushed == sorted(brushed)


def test_bright_threads_come_out_before_the_cloth_is_wet_and_once() -> None:
    starch = "- starch: {piece: slip, with: starch, by: brush}"
    told = texts_of(small_guide(SLIP, f"{HUNG}{starch}", materials=STARCH))
    out = [text for text in told if "bright" in text and "ake out" in text]
    assert len(out) == 1
    assert "before the cloth gets wet" in out[0]
    assert "Cut off all loose threads." in told
    dry = texts_of(small_guide(SLIP, HUNG, materials=STARCH))
    assert "Cut off all loose threads and take out the bright ones in the cloth." in dry
