"""What shrinks is washed before anything is measured, each trim once; common practice, no source."""

from __future__ import annotations

from pathlib import Path

import pytest
import yaml
from furbelow.s6_write.guide.guide import GuideStep
from furbelow.verbs.command import run

from tests.demos.demos import SPECS, cutting_of
from tests.small_guide import small_guide, texts_of
from tests.techniques.test_every_technique_in_a_guide import GARMENTS


def _washing(steps: tuple[GuideStep, ...]) -> list[GuideStep]:
    return [step for step in steps if step.text.startswith("Wash and dry the ") and "a trim that shrinks" in step.text]


def test_all_trims_are_washed_in_the_first_step_and_bones_are_not() -> None:
    guide = small_guide(*GARMENTS["a skirt with a placket"])
    (step,) = _washing(cutting_of(guide))
    assert step.number == 1
    for trim in ("seam tape", "beading lace", "satin ribbon"):
        assert step.text.count(trim) == 1
    assert "boning" not in step.text
    assert not any(text.startswith("Wash") for text in texts_of(guide))


def test_a_garment_without_trims_washes_none() -> None:
    pieces, steps = GARMENTS["a circular skirt on a cord"]
    assert [step.text.partition(" as ")[0] for step in _washing(cutting_of(small_guide(pieces, steps)))] == [
        "Wash and dry the cotton cord"
    ]
    plain = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.bottom}\n- folded casing: {edge: skirt.top, depth: 25 mm}"
    elastic = "- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}\n- close gap: {of: skirt.top}"
    guide = small_guide("skirt: {from: lawn, length: 120 cm, depth: 50 cm}", f"{plain}\n{elastic}")
    assert _washing(cutting_of(guide)) == []


def _cloth_washed(material: str) -> list[str]:
    guide = small_guide(
        "skirt: {from: cloth, length: 120 cm, depth: 50 cm}",
        "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.bottom}\n- narrow hem: {edge: skirt.top}",
        materials=f"  cloth: {{kind: cloth, width: 140 cm, weight: 120 g/m2, ravels: yes, {material}}}\n",
    )
    return [step.text for step in cutting_of(guide) if "Press it" in step.text]


@pytest.mark.parametrize(
    ("material", "said"),
    [
        ("fibre: cotton, shrinkage: 5%", "it shrinks about 5 %"),
        ("fibre: linen", "by how much is not said"),
        ("fibre: linen, shrinkage: 0%", ""),
        ("fibre: polyester", ""),
    ],
)
def test_cloth_that_shrinks_is_washed_whether_or_not_it_says_by_how_much(material: str, said: str) -> None:
    washed = _cloth_washed(material)
    assert len(washed) == bool(said)
    assert all(said in text for text in washed)


def test_the_cutting_for_a_class_washes_all_trims_first(tmp_path: Path) -> None:
    roster = tmp_path / "class.csv"
    roster.write_text(
        "wearer;waist_girth;hip_girth;waist_height\n1;70 cm;96 cm;101 cm\n2;78 cm;104 cm;104 cm\n", "utf-8"
    )
    spec = str(SPECS / "foxglove.yaml")
    assert run(["make", spec, "--class", str(roster), "--no-pdf", "--out", str(tmp_path / "out")]) == 0
    told = (tmp_path / "out" / "class-cutting.html").read_text("utf-8")
    assert told.count("Wash and dry the cotton edging lace") == 1
    assert told.index("Wash and dry the cotton edging lace") < told.index("Cut off the selvedges")


@pytest.mark.parametrize("language", ["en", "de", "fr", "es"])
def test_the_list_for_the_shop_names_what_is_bought_in_every_language(language: str, tmp_path: Path) -> None:
    spec = SPECS / "foxglove.yaml"
    call = ["make", str(spec), "--size", "C", "--language", language, "--no-pdf", "--out", str(tmp_path / "out")]
    assert run(call) == 0
    told = (tmp_path / "out" / "shopping.md").read_text("utf-8")
    materials = yaml.safe_load(spec.read_text("utf-8"))["materials"]
    assert [each["about"][language] for each in materials.values() if each["about"][language] not in told] == []
