"""The list of tools: all that the steps ask for, a needle for the thickest place, and as many pins as are in use at once."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.s6_write.guide.guide import Guide

from tests.small_guide import small_guide, texts_of, tools_in
from tests.techniques.test_every_technique_in_a_guide import GARMENTS, SUPPLIES

RING = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.bottom}"
ELASTIC = """- folded casing: {edge: skirt.top, depth: 25 mm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}
- close gap: {of: skirt.top}"""
SKIRT = "skirt: {from: lawn, length: 120 cm, depth: 50 cm}"


def _needle(guide: Guide) -> str:
    (name,) = (tool for tool in tools_in(guide) if tool.startswith("machine needle"))
    return name


def _number(guide: Guide, of: str) -> int:
    (number,) = (
        int(found.group(1)) for tool in tools_in(guide) if (found := re.fullmatch(rf"{of}, about (\d+)", tool))
    )
    return number


def test_the_needle_gets_through_the_heaviest_cloth_and_not_the_lightest_alone() -> None:
    """A net overskirt does not make a needle for net sew denim; common practice, no source."""
    assert _needle(small_guide(SKIRT, f"{RING}\n{ELASTIC}")) == "machine needle 80 (12), new"
    # Denim has 340 g/m2: heavier than all that a 90 is for.
    heavy = small_guide(
        SKIRT.replace("lawn", "denim"),
        f"- join ends: {{of: skirt}}\n- neaten: {{seam: skirt.ends}}\n{ELASTIC}\n- narrow hem: {{edge: skirt.bottom}}",
        room=Workroom(machine_takes=Fraction(9)),
    )
    assert _needle(heavy) == "machine needle 100 (16), new"


@pytest.mark.parametrize(
    ("garment", "tools"),
    [
        ("a circular skirt on a cord", {"safety pin or bodkin", "textile glue", "large sheet of paper"}),
        (
            "a skirt with a placket",
            {"eye protection", "caps or strong tape for the ends of the boning", "bodkin"},
        ),
        ("a hemmed petticoat", {"two safety pins", "old sheet, dry cloth"}),
    ],
)
def test_what_the_steps_ask_for_stands_in_the_list(garment: str, tools: set[str]) -> None:
    assert tools <= tools_in(small_guide(*GARMENTS[garment], materials=SUPPLIES))


def test_a_tool_that_no_step_asks_for_does_not() -> None:
    found = tools_in(small_guide(SKIRT, f"{RING}\n{ELASTIC}"))
    assert not {"eye protection", "bodkin", "hemming foot", "safety pin or bodkin", "large sheet of paper"} & found


def test_zigzag_is_listed_for_what_it_does() -> None:
    def why(guide: Guide) -> str:
        return next(tool.why for tool in guide.tools if tool.name == "zigzag stitch")

    assert why(small_guide(SKIRT, f"{RING}\n{ELASTIC}")) == "joining elastic"
    seam = "- join ends: {of: skirt}\n- neaten: {seam: skirt.ends}\n- narrow hem: {edge: skirt.bottom}"
    assert why(small_guide(SKIRT, f"{seam}\n{ELASTIC}")) == "neatening and joining elastic"


@pytest.mark.parametrize("spacing", [10, 20, 40])
def test_pins_follow_the_workrooms_spacing_and_cover_the_step_that_takes_most(spacing: int) -> None:
    """Gathers hold pins round their thread tails while the same edge is pinned to the next."""
    pieces = f"{SKIRT}\nflounce: {{from: net, length: 240 cm, depth: 20 cm, piecing: {{seam: 1 cm, shortest: 20 cm, most joins: 2}}}}"
    steps = f"""- join strips: {{of: flounce}}
- french seam: {{of: skirt}}
- join ends: {{of: flounce}}
- gather: {{edge: flounce.top, to: skirt.bottom}}
- attach: {{edge: flounce.top, to: skirt.bottom}}
- neaten: {{seam: flounce.top}}
{ELASTIC}"""
    guide = small_guide(pieces, steps, room=Workroom(pin_spacing=Fraction(spacing)))
    (told,) = (
        int(found.group(1))
        for text in texts_of(guide, "Sew the flounce")
        if (found := re.search(r"about (\d+) pins", text))
    )
    assert told == pytest.approx(1200 / spacing, abs=1)
    # 240 cm are more than one thread is pulled through, so each of four runs has a pin at both ends.
    assert told + 8 <= _number(guide, "pins") < told + 8 + 10
