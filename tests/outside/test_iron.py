"""The heat of the iron, against the table of a maker of irons."""

from __future__ import annotations

import pytest

from tests.small_guide import small_guide, texts_of
from tests.techniques.small import sound

SKIRT = "skirt: {from: of_it, length: 160 cm, depth: 50 cm}"
STEPS = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.bottom}\n- narrow hem: {edge: skirt.top}\n- press: {piece: skirt}"


# An iron's manual (enkho 139618-01, page 29, manualshive.com): its thermostat for each kind of cloth, in the dots of labels.
# It sets silk and viscose to one dot, where labels by ISO 3758 often have two; what is cooler than a label asks harms nothing.
@pytest.mark.parametrize(
    ("fibre", "dots", "celsius"),
    [
        ("nylon", "one", 110),
        ("acetate", "one", 110),
        ("wool", "two", 150),
        ("cotton", "three", 200),
        ("linen", "three", 200),
    ],
)
def test_each_fibre_is_pressed_at_the_setting_of_the_manual(fibre: str, dots: str, celsius: int) -> None:
    """How hot the dots are at the most: ISO 3758:2012, as lolaglenn.com, A guide to laundry symbols, gives two and three."""
    cloth = f"  of_it: {{kind: cloth, fibre: {fibre}, width: 140 cm, weight: 90 g/m2, ravels: yes}}\n"
    said = " ".join(texts_of(small_guide(SKIRT, STEPS, materials=cloth)))
    assert f"{dots} dot" in said
    assert f"{celsius} °C" in said


def test_of_two_fibres_the_cooler_is_asked() -> None:
    """The same manual: where there is more than one fibre, set the iron for the one that takes less heat."""
    cloth = "  of_it: {kind: cloth, fibre: cotton, width: 140 cm, weight: 90 g/m2, ravels: yes}\n"
    lace = "  nylon_lace: {kind: trim, fibre: nylon, width: 20 mm}\n"
    steps = STEPS.replace("narrow hem: {edge: skirt.bottom}", "edge with trim: {edge: skirt.bottom, trim: nylon_lace}")
    assert "FB432" in {fault.code for fault in sound(SKIRT, steps, materials=cloth + lace).warnings}
