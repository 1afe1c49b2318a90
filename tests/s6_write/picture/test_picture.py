"""The picture of every demo garment in every size, and of the unusual garments."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Iterator
from functools import cache
from math import pi
from pathlib import Path
from xml.etree import ElementTree

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.order.read_order import Asked, OrderReader
from furbelow.resources import template
from furbelow.s1_read.read_spec import read_spec
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.picture import picture_of
from furbelow.s6_write.picture.folds import lower_at
from furbelow.s6_write.picture.shape import shape_of
from furbelow.s6_write.words.words import Words

ROOT = Path(__file__).parents[3]
GARMENTS = [*sorted((ROOT / "specs").glob("*.yaml")), *sorted((ROOT / "tests/mistakes/garments").glob("*.yaml"))]
SVG = "{http://www.w3.org/2000/svg}"


def runs(path: Path) -> Iterator[Run]:
    spec = read_spec(path).value
    assert spec is not None
    for size, body in spec.sizes.items():
        proved = prove(Order(spec, f"size {size}", body, {}, Workroom())).value
        if proved is not None:
            yield proved.run


@cache
def pictures(path: Path) -> tuple[tuple[Figure, ...], ...]:
    return tuple(picture_of(run, Words("en", run.say)) for run in runs(path))


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_every_garment_is_drawn_small_and_in_the_safe_subset(path: Path) -> None:
    assert pictures(path)
    for views in pictures(path):
        assert views[0].key == "picture-front"
        for figure in views:
            assert len(figure.svg.encode()) < 60_000, figure.key
            root = ElementTree.fromstring(figure.svg)
            assert {element.tag for element in root.iter()} == {f"{SVG}svg", f"{SVG}path"}
            allowed = {"d", "fill", "fill-opacity", "stroke", "stroke-width", "stroke-dasharray"}
            assert all(set(element.attrib) <= allowed for element in root)
            assert "nan" not in figure.svg
            assert "inf" not in figure.svg


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_every_mark_lies_on_the_sheet(path: Path) -> None:
    for views in pictures(path):
        for figure in views:
            for data in re.findall(r' d="M([^"a]*)"', figure.svg):
                for part in data.split("M"):
                    x, y = (int(number) for number in re.findall(r"-?\d+", part)[:2])
                    assert 0 <= x <= 4000, figure.key
                    assert 0 <= y <= 5000, figure.key


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_a_picture_says_in_words_what_it_shows(path: Path) -> None:
    for views in pictures(path):
        for figure in views:
            assert re.search(r"\d", figure.alt)
            assert figure.alt.endswith(".")
            assert ("impression" in figure.caption) == (figure is views[0])


def test_a_garment_is_the_same_picture_in_every_language() -> None:
    run = next(runs(ROOT / "specs/larkspur.yaml"))
    drawn = {
        language: tuple(figure.svg for figure in picture_of(run, Words(language, run.say)))
        for language in ("en", "de", "fr", "es")
    }
    assert len(set(drawn.values())) == 1


def test_the_same_garment_is_drawn_alike_to_the_letter_in_every_process() -> None:
    code = (
        "from tests.s6_write.picture.test_picture import *; import hashlib;"
        "print(hashlib.sha256(pictures(ROOT / 'specs/foxglove.yaml')[0][0].svg.encode()).hexdigest())"
    )
    told = {
        subprocess.run(
            [sys.executable, "-c", code],
            cwd=ROOT,
            env={**os.environ, "PYTHONHASHSEED": seed},
            check=True,
            capture_output=True,
        ).stdout
        for seed in ("1", "2")
    }
    assert len(told) == 1


def test_the_page_has_a_colour_by_night_for_each_by_day() -> None:
    look = template("picture.css").read_text(encoding="utf-8")
    used = {
        colour
        for path in GARMENTS
        for views in pictures(path)
        for figure in views
        for colour in re.findall(r'(?:fill|stroke)="#[0-9a-f]{6}"', figure.svg)
    }
    assert all(f"path[{colour}]" in look for colour in used)
    night = [
        set(re.findall(r"--[a-z-]+: #[0-9a-f]{6}", part)) for part in look.split("{") if "--cloth-lit: #6b" in part
    ]
    assert len(night) == 2
    assert night[0] == night[1]


def test_a_full_net_skirt_says_that_its_hem_rises_above_the_lining() -> None:
    def caption(*choices: str) -> str:
        asked = Asked(str(ROOT / "specs/larkspur.yaml"), size="M", choices=choices)
        proved = prove(OrderReader().orders(asked)[0]).value
        assert proved is not None
        return picture_of(proved.run, Words("en", proved.run.say))[0].caption

    assert "above the lining" in caption("fullness=3", "clearance=3 cm")
    assert "above the lining" not in caption("fullness=1.5", "clearance=8 cm")


def test_a_train_is_seen_from_the_side_and_lies_on_the_floor() -> None:
    """By the spec of peony: 10 cm above the floor in front; behind it is 30 cm longer, so 20 cm of it lie on the floor."""
    run = next(runs(ROOT / "specs" / "peony.yaml"))
    shape = shape_of(run)
    (layer,) = shape.layers
    hung = sum(tier.depth for tier in layer.tiers) + layer.start + shape.form.top
    front, side, back = (sum(lower_at(tier.dip, angle) for tier in layer.tiers) for angle in (0, pi / 2, pi))
    assert side == pytest.approx(0)
    assert back - front == pytest.approx(300)
    assert hung + front == pytest.approx(shape.form.floor - 100, abs=2)  # cut sizes are rounded
    assert hung + back == pytest.approx(shape.form.floor + 200, abs=2)
    # Its zip is at the left, so that one view from there shows it and the train.
    assert [figure.key for figure in pictures(ROOT / "specs" / "peony.yaml")[0]] == ["picture-front", "picture-left"]
