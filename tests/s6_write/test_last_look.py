"""The look at the end: the label that warns of fire is sewn in there where no step of the waist took it up."""

from __future__ import annotations

import pytest
from furbelow.garment.workroom import Workroom

from tests.small_guide import small_guide, texts_of, tools_in

SKIRT = "skirt: {from: CLOTH, length: 150 cm, depth: 50 cm}"
SEWN = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.bottom}\n"
SHIRRED = (
    "- narrow hem: {edge: skirt.top}\n"
    "- shirring: {edge: skirt.top, length: waist_girth - 4 cm, with: fine_elastic, rows: 6, spacing: 8 mm}"
)
CASED = (
    "- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 6 mm, gap: 3 cm}\n"
    "- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}\n- close gap: {of: skirt.top}"
)


@pytest.mark.parametrize(
    ("cloth", "waist", "at_last"), [("lawn", SHIRRED, True), ("lawn", CASED, False), ("twill", SHIRRED, False)]
)
def test_the_label_is_told_once_and_at_the_end_where_no_casing_takes_it(cloth: str, waist: str, at_last: bool) -> None:
    twill = "  twill: {kind: cloth, fibre: wool, width: 140 cm, weight: 200 g/m2, ravels: yes}\n"
    guide = small_guide(SKIRT.replace("CLOTH", cloth), SEWN + waist, materials=twill)
    written = [text for text in texts_of(guide) if "KEEP AWAY FROM FIRE" in text]
    assert len(written) == (cloth == "lawn")
    (look,) = guide.parts[-1].operations
    texts = [step.text for step in look.steps]
    assert any("label" in text for text in texts) is at_last
    assert any(text.startswith("Count the pins") for text in texts)
    if at_last:
        assert texts.index("Count the pins and needles.") > 1, "the label is laid before the pins are counted"
        assert any("thimble" in caution.text for caution in look.cautions)
    # For the label against fire, or for the one that says whose it is and what of.
    assert "hand needle and thimble" in tools_in(guide)
    assert any("cotton tape" in tool for tool in tools_in(guide))


def test_what_lies_in_the_middle_of_the_cloth_is_pinned_where_edges_are_clipped() -> None:
    pieces = "skirt: {from: net, length: 126 cm, depth: 50 cm}\nstrip: {from: net, length: 220 cm, depth: 6 cm}"
    steps = "- join ends: {of: skirt}\n- join ends: {of: strip}\n- ruche: {strip: strip, on: skirt, above hem: 10 cm}"
    guide = small_guide(pieces, steps, room=Workroom(hold_with="clips"))
    (laid,) = [text for text in texts_of(guide) if text.startswith("Lay the strip on the skirt")]
    assert " pin it " in laid
    assert any(tool.startswith("pins") for tool in tools_in(guide))
