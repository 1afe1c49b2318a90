"""What a spec says of its cloth decides how the garment stands."""

from __future__ import annotations

from pathlib import Path

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s6_write.picture.shape import Shape, shape_of
from furbelow.s6_write.picture.worn import worn

LARKSPUR = (Path(__file__).parents[3] / "specs/larkspur.yaml").read_text(encoding="utf-8")
NET = "    weight: 25 g/m2\n"


def shape(text: str) -> Shape:
    spec = read_spec(("larkspur.yaml", text.encode())).value
    assert spec is not None
    proved = prove(Order(spec, "size M", spec.sizes["M"], {}, Workroom())).value
    assert proved is not None
    return shape_of(proved.run)


def bending(text: str) -> dict[str, float]:
    return {tier.piece: tier.bending for layer in shape(text).layers for tier in layer.tiers}


def test_the_bending_length_that_is_written_is_that_of_the_cloth() -> None:
    written = bending(LARKSPUR.replace(NET, NET + "    bending length: 42 mm\n"))
    assert written["upper"] == 42
    assert written["lining"] == bending(LARKSPUR)["lining"]
    inches = bending(LARKSPUR.replace(NET, NET + "    bending length: 1 1/2 in\n"))
    assert inches["upper"] == pytest.approx(38.1)


def test_stiffer_net_makes_a_wider_skirt_whose_hem_is_higher() -> None:
    soft, stiff = (
        worn(shape(LARKSPUR.replace(NET, f"{NET}    bending length: {length} mm\n")))[-1].outline[-1]
        for length in (15, 50)
    )
    assert stiff.radius > soft.radius + 50
    assert stiff.down < soft.down


def test_starch_stiffens_the_piece_that_is_starched_and_no_other() -> None:
    with_starch = bending(LARKSPUR)
    assert with_starch["flounce"] > with_starch["upper"]
    without = bending(LARKSPUR.replace("  - starch: {piece: flounce, with: starch}\n", ""))
    assert without["flounce"] == without["upper"] == with_starch["upper"]


@pytest.mark.parametrize(("light", "heavy"), [(60, 90), (90, 140), (140, 200), (200, 400)])
def test_of_cloths_that_are_not_measured_the_heavier_is_the_stiffer(light: int, heavy: int) -> None:
    lining = LARKSPUR.index("    weight: 95 g/m2")
    lengths = [
        bending(LARKSPUR[:lining] + LARKSPUR[lining:].replace("95 g/m2", f"{weight} g/m2", 1))["lining"]
        for weight in (light, heavy)
    ]
    assert lengths[0] < lengths[1]


def test_a_length_that_no_cloth_has_is_refused() -> None:
    for wrong in ("0 mm", "2 m", "42"):
        read = read_spec(("larkspur.yaml", LARKSPUR.replace(NET, f"{NET}    bending length: {wrong}\n").encode()))
        spec = read.value
        proved = prove(Order(spec, "size M", spec.sizes["M"], {}, Workroom())) if spec else read
        assert any("bending length" in fault.headline.replace("_", " ") for fault in proved.faults), wrong
