"""What closes an opening is bought and counted like everything else, though the spec does not list it."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest
from furbelow.garment.fasteners import Fastener
from furbelow.garment.spec import FastenerKind
from furbelow.order.chain import guide_of, planned
from furbelow.s6_write.words.kept_words import all_shipped
from furbelow.verbs.command import run

from tests.small_guide import small_guide, small_order, tools_in
from tests.techniques.test_every_technique_in_a_guide import GARMENTS, OWN, SUPPLIES
from tests.techniques.test_fastening import FACED, PIECES
from tests.techniques.test_placket_and_band import ALL
from tests.techniques.test_placket_and_band import PIECES as BAND_PIECES

SPECS = Path(__file__).parents[2] / "specs"
MM = Fraction(1)
WAYS = [
    *(
        (BAND_PIECES, ALL.replace("overlap: 3 cm", f"overlap: 3 cm, fasten: {fasten}"), name, count)
        for fasten, name, count in (
            ("hook and bar", Fastener(FastenerKind.HOOK_AND_BAR), 1),
            ("snaps", Fastener(FastenerKind.SNAP), 2),
            ("button", Fastener(FastenerKind.BUTTON, 20 * MM), 1),
        )
    ),
    *(
        (PIECES, f"{FACED}\n- fastening: {{edge: skirt.top, by: {by}, count: 3}}", name, 3)
        for by, name in (
            ("hook and bar", Fastener(FastenerKind.HOOK_AND_BAR)),
            ("hook and eye", Fastener(FastenerKind.HOOK_AND_EYE)),
            ("snaps", Fastener(FastenerKind.SNAP)),
            ("button and buttonhole", Fastener(FastenerKind.BUTTON, 15 * MM)),
            ("button and loop", Fastener(FastenerKind.BUTTON, 15 * MM)),
        )
    ),
]


@pytest.mark.parametrize(("pieces", "steps", "fastener", "count"), WAYS)
def test_a_fastener_that_the_spec_does_not_list_is_bought_without_a_price(
    pieces: str, steps: str, fastener: Fastener, count: int
) -> None:
    found = planned(small_order(pieces, steps)).value
    assert found is not None
    (line,) = (line for line in found.shopping.lines if line.name == fastener.name)
    assert (line.need, line.bought, line.cost) == (count, count, None)
    guide = guide_of(found, "size M")
    (row,) = (row for row in guide.materials if row.name == fastener.kind.replace("snap", "snap fastener"))
    assert row.amount == f"{count} piece{'s' if count > 1 else ''}"
    assert row.description == (f"{fastener.width / 10}".replace("3/2", "1.5") + " cm wide" if fastener.width else "")


@pytest.mark.parametrize("garment", sorted(GARMENTS))
def test_a_fastener_is_among_the_materials_and_no_tool(garment: str) -> None:
    """Every way of working stands in one of these garments; what is used up stands among the materials."""
    tools = tools_in(small_guide(*GARMENTS[garment], materials=SUPPLIES, own=OWN))
    assert not any(word in tool for tool in tools for word in ("hook", "snap", "button", "eyelets, "))


@pytest.mark.parametrize("language", ["en", "de", "fr", "es"])
def test_no_tool_of_a_language_says_that_it_is_to_be_bought(language: str) -> None:
    said = {name: str(message) for name, message in all_shipped(language).items() if name.startswith("tool-")}
    assert said
    assert not [
        name for name, text in said.items() if any(w in text for w in ("to buy", "zu kaufen", "acheter", "comprar"))
    ]


def test_two_pupils_need_two_and_every_list_says_so(tmp_path: Path) -> None:
    """The order, each guide, shopping list and table for programs; nowhere the name that the program has for it."""
    roster = tmp_path / "class.csv"
    rows = ["wearer;waist_girth (cm);hip_girth (cm);waist_height (cm)", "Ada;70;96;101", "Bo;84;109;105"]
    roster.write_text("\n".join(rows) + "\n", encoding="utf-8")
    call = [
        "make",
        str(SPECS / "peony.yaml"),
        "--class",
        str(roster),
        "--no-pdf",
        "--data",
        "--out",
        str(tmp_path / "out"),
    ]
    assert run(call) == 0
    texts = {
        path: path.read_text("utf-8")
        for path in (tmp_path / "out").rglob("*")
        if path.suffix in (".md", ".html", ".csv", ".json")
    }
    assert not [path for path, text in texts.items() if "any hook" in text]
    order = (
        texts[tmp_path / "out" / "class.html"]
        if tmp_path / "out" / "class.html" in texts
        else texts[tmp_path / "out" / "index.html"]
    )
    assert "hook and bar" in order
    assert "2 pieces" in order
    assert "hook and bar" in texts[tmp_path / "out" / "ada" / "guide.md"]


def test_the_cost_says_what_is_not_in_it(tmp_path: Path) -> None:
    assert run(["make", str(SPECS / "peony.yaml"), "--size", "B", "--no-pdf", "--data", "--out", str(tmp_path)]) == 0
    assert "EUR, without hook and bar" in (tmp_path / "guide.md").read_text("utf-8")
    assert "hook and bar,,1 pieces" in (tmp_path / "materials.csv").read_text("utf-8")
    assert "**1 piece** hook and bar" in (tmp_path / "shopping.md").read_text("utf-8")
