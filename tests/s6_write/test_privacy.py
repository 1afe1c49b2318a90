"""Body measures are personal: a guide shows those that its numbers stand on, and no others."""

from __future__ import annotations

import json
from io import BytesIO
from pathlib import Path
from zipfile import ZipFile

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.make_one import make_guide
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s1_read.read_wearers import read_wearers
from furbelow.verbs.command import run

from tests.demos.demos import SPECS

SPEC = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")
HEADING = "wearer;waist_girth;hip_girth;waist_height;knee_height;chest_girth"


def _written(roster: str, spec: str = SPEC) -> dict[str, str]:
    """All texts of the guide of the first wearer."""
    read = read_spec(("larkspur.yaml", spec.encode())).value
    wearers = read_wearers(("class.csv", roster.encode())).value
    assert read is not None
    assert wearers is not None
    made = make_guide(Order(read, wearers[0].name, wearers[0].body, wearers[0].choices, Workroom()), with_pdf=False)
    assert made.value is not None, made.faults
    return {name: _text(name, content) for name, content in made.value.files.items()}


def _text(name: str, content: bytes) -> str:
    """All that is in a file; of a book, all that is packed in it."""
    if not name.endswith(".epub"):
        return content.decode()
    with ZipFile(BytesIO(content)) as packed:
        return "\n".join(packed.read(each).decode() for each in packed.namelist())


def test_a_measure_that_the_garment_does_not_ask_for_is_nowhere_in_the_guide() -> None:
    for name, text in _written(f"{HEADING}\n7;70.3 cm;96.1 cm;101 cm;45 cm;93.7 cm").items():
        assert "93.7" not in text, name
        assert "chest" not in text, name


def test_a_measure_that_is_asked_for_and_used_by_no_number_is_not_shown() -> None:
    spec = SPEC.replace("\nsizes:", "  chest_girth: {from: 70 cm, to: 140 cm}\n\nsizes:", 1)
    lines = [f"{line[:-1]}, chest_girth: 93.7 cm}}" if "knee_height: 4" in line else line for line in spec.split("\n")]
    texts = _written(f"{HEADING}\n7;70.3 cm;96.1 cm;101 cm;45 cm;93.7 cm", "\n".join(lines))
    assert "70.3" in texts["guide.html"]
    assert all("93.7" not in text for text in texts.values())


def test_a_reason_stands_on_no_measure_that_the_guide_does_not_show_and_names_no_file_of_the_wearer() -> None:
    texts = _written(f"{HEADING}\n7;70.3 cm;96.1 cm;101 cm;45 cm;93.7 cm")
    read = json.loads(texts["guide.json"])
    shown = {fact["name"] for fact in read["facts"]}
    reasons = [reason for line in read["cutting"] for reason in line["why"]]
    measures = set()
    while reasons:
        reason = reasons.pop()
        reasons += reason.get("from", ())
        if reason["text"] == "a body measure":
            measures.add(reason["name"])
            assert "place" not in reason
    assert measures == {"waist_girth", "hip_girth", "waist_height", "knee_height"} <= shown
    assert all("class.csv" not in text for text in texts.values())


def test_a_guide_shows_nothing_of_the_others_in_its_class(tmp_path: Path) -> None:
    roster = tmp_path / "class.csv"
    roster.write_text(
        f"{HEADING}\n7;70.3 cm;96.1 cm;101 cm;45 cm;\nOlive;81.9 cm;107.7 cm;104 cm;46 cm;", encoding="utf-8"
    )
    assert (
        run(
            [
                "make",
                str(SPECS / "larkspur.yaml"),
                "--class",
                str(roster),
                "--no-pdf",
                "--data",
                "--out",
                str(tmp_path / "out"),
            ]
        )
        == 0
    )
    for path in (tmp_path / "out" / "7").rglob("*"):
        if path.is_file():
            text = _text(path.name, path.read_bytes())
            assert "Olive" not in text, path.name
            assert "81.9" not in text, path.name
    # Nothing of a body lies outside the folders of its wearers.
    for path in (tmp_path / "out").glob("*.*"):
        if path.is_file():
            text = _text(path.name, path.read_bytes())
            assert not any(measure in text for measure in ("70.3", "96.1", "81.9", "107.7")), path.name
            assert "<details" not in text, path.name


@pytest.mark.parametrize("verb", ["check", "make"])
def test_nothing_is_written_outside_the_folder_that_was_chosen(
    verb: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    home, here = tmp_path / "home", tmp_path / "here"
    home.mkdir()
    here.mkdir()
    for name in ("HOME", "XDG_CACHE_HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "TMPDIR"):
        monkeypatch.setenv(name, str(home))
    monkeypatch.chdir(here)
    out = ["--no-pdf", "--out", "guide"] if verb == "make" else []
    assert run([verb, str(SPECS / "larkspur.yaml"), "--size", "M", *out]) == 0
    assert list(home.iterdir()) == []
    assert [path.name for path in here.iterdir()] == (["guide"] if verb == "make" else [])
