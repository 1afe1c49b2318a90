"""A booklet is made of sizes that are all sound, or not at all."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path

import pytest
from furbelow.verbs.command import run
from PIL import Image

SPECS = Path(__file__).parents[2] / "specs"
FOXGLOVE = str(SPECS / "foxglove.yaml")


def make(folder: Path, *more: str, spec: str = FOXGLOVE) -> int:
    return run(["make", spec, "--booklet", "--no-pdf", "--out", str(folder / "out"), *more])


def test_one_page_for_all_sizes_with_its_drawings_and_the_list(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert make(tmp_path) == 0
    told = capsys.readouterr()
    assert told.err == ""
    assert "booklet.html" in told.out
    names = {path.name for path in (tmp_path / "out").iterdir()}
    assert names >= {"booklet.html", "booklet.md", "booklet.json", "booklet.epub", "materials.csv", "figures"}
    lists = (tmp_path / "out" / "shopping.md").read_text(encoding="utf-8")
    assert [line for line in lists.splitlines() if line.startswith("# ")] == [
        f"# Shopping for Foxglove flounced half slip, size {size}" for size in "ABCDE"
    ]
    text = (tmp_path / "out" / "booklet.md").read_text(encoding="utf-8")
    linked = {part.partition(")")[0] for part in text.split("](")[1:] if part.startswith("figures/")}
    assert linked
    assert all((tmp_path / "out" / name).is_file() for name in linked)
    rows = list(csv.reader(io.StringIO((tmp_path / "out" / "materials.csv").read_text(encoding="utf-8-sig"))))
    assert {size for row in rows[1:] for size in row if size in "ABCDE"} >= set("ABCDE")
    # What is there already is made again without a word.
    assert make(tmp_path) == 0


def test_cloth_that_is_sold_in_several_widths_is_told_for_each(tmp_path: Path) -> None:
    lines = Path(FOXGLOVE).read_text(encoding="utf-8").splitlines()
    at = next(at for at, line in enumerate(lines) if line.strip() == "width: 140 cm")
    lines.insert(at + 1, "    offers: [{width: 140 cm, price: 9 EUR/m}, {width: 280 cm, price: 21 EUR/m}]")
    spec = tmp_path / "widths.yaml"
    spec.write_text("\n".join(lines) + "\n", encoding="utf-8")
    assert make(tmp_path, spec=str(spec)) == 0
    told = json.loads((tmp_path / "out" / "booklet.json").read_text(encoding="utf-8"))["widths"]
    assert [row["label"].rpartition(", ")[2] for row in told] == ["140 cm wide", "280 cm wide"]
    narrow, wide = ([float(value.split()[0]) for value in row["values"]] for row in told)
    # Twice the width takes no more length.
    assert all(of_wide <= of_narrow for of_narrow, of_wide in zip(narrow, wide, strict=True))


def test_where_a_size_is_not_sound_it_is_told_and_nothing_is_written(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    text = Path(FOXGLOVE).read_text(encoding="utf-8")
    # A body of which the slip is longer than the legs: only the first size is like that.
    spoiled = text.replace("waist_girth: 64 cm,  hip_girth: 90 cm", "waist_girth: 64 cm,  hip_girth: 900 cm")
    assert spoiled != text
    spec = tmp_path / "spoiled.yaml"
    spec.write_text(spoiled, encoding="utf-8")
    assert make(tmp_path, spec=str(spec)) == 1
    assert "error FB" in capsys.readouterr().err
    assert not (tmp_path / "out").exists()


@pytest.mark.parametrize(
    ("more", "said"),
    [
        (["--size", "A"], "--booklet goes with a spec, and with neither --size nor --wearer"),
        (["--every-size"], "--booklet does not go with --every-size"),
        (["--demonstration", "--recut"], "--booklet does not go with --demonstration, --recut"),
    ],
)
def test_what_it_does_not_go_with_is_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], more: list[str], said: str
) -> None:
    assert make(tmp_path, *more) == 2
    assert said in capsys.readouterr().err
    assert not (tmp_path / "out").exists()


def test_one_size_is_no_booklet(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    lines = Path(FOXGLOVE).read_text(encoding="utf-8").splitlines()
    spec = tmp_path / "one.yaml"
    kept = [line for line in lines if not line.startswith(("  B: {", "  C: {", "  D: {", "  E: {"))]
    spec.write_text("\n".join(kept) + "\n", encoding="utf-8")
    assert make(tmp_path, spec=str(spec)) == 2
    assert "has one size; make its guide with --size" in capsys.readouterr().err


def test_without_measures_no_body_is_told(tmp_path: Path) -> None:
    assert make(tmp_path, "--no-measures") == 0
    told = json.loads((tmp_path / "out" / "booklet.json").read_text(encoding="utf-8"))
    assert (told["measures"], told["measuring"], told["picture"]) == ([], None, [])


def test_reasons_are_an_appendix_that_has_each_size(tmp_path: Path) -> None:
    assert make(tmp_path, "--reasons") == 0
    told = json.loads((tmp_path / "out" / "booklet.json").read_text(encoding="utf-8"))
    rows = {row["name"]: row for row in told["reasons"]}
    # From the spec: 60 % of the waist heights 99, 102, 104, 105 and 106 cm.
    assert rows["slip_length"]["values"] == ["59.4 cm", "61.2 cm", "62.4 cm", "63 cm", "63.6 cm"]
    assert "60%" in rows["slip_length"]["below"].replace("\u00a0", "")
    facts = {row["name"]: row["values"] for row in told["facts"]}
    assert facts["waist_girth"] == ["64 cm", "72 cm", "80 cm", "92 cm", "106 cm"]
    shown = [proof["shown"] for proof in told["proofs"]]
    assert all(shown)
    versions = [text for text in shown if isinstance(text, list)]
    assert all([size for version in text for size in version["sizes"]] == list("ABCDE") for text in versions)
    page = (tmp_path / "out" / "booklet.html").read_text(encoding="utf-8")
    assert {f'<section id="{name}">' in page for name in ("proved", "measurements", "reasons")} == {True}
    assert make(tmp_path) == 0
    told = json.loads((tmp_path / "out" / "booklet.json").read_text(encoding="utf-8"))
    assert told["facts"] == told["reasons"] == []


def test_a_makers_own_picture_stands_at_its_step(tmp_path: Path) -> None:
    (tmp_path / "pictures").mkdir()
    Image.new("RGB", (320, 200), "teal").save(tmp_path / "pictures" / "gathered.png")
    gather = next(line for line in Path(FOXGLOVE).read_text(encoding="utf-8").splitlines() if "- gather:" in line)
    row = gather.partition("-")[0] + '- picture: {file: pictures/gathered.png, alt: "Its folds lie evenly."}'
    spec = tmp_path / "shown.yaml"
    spec.write_text(Path(FOXGLOVE).read_text(encoding="utf-8").replace(gather, f"{gather}\n{row}"), encoding="utf-8")
    assert make(tmp_path, spec=str(spec)) == 0
    text = (tmp_path / "out" / "booklet.md").read_text(encoding="utf-8")
    assert text.count("![Its folds lie evenly.](figures/own-step-9-1.png)") == 1
    assert (tmp_path / "out" / "figures" / "own-step-9-1.png").is_file()


def test_a_guide_is_not_written_over_by_a_booklet(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    out = str(tmp_path / "out")
    assert run(["make", FOXGLOVE, "--size", "A", "--no-pdf", "--out", out]) == 0
    assert make(tmp_path) == 1
    assert "error FB657" in capsys.readouterr().err
    assert not (tmp_path / "out" / "booklet.html").exists()
