"""What stands in a row of a roster is what the wearer's garment is made by; a class is refused where one is meant."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from furbelow.order.read_order import Asked
from furbelow.preview.build import Builder
from furbelow.verbs.command import run

LARKSPUR = str(Path(__file__).parents[2] / "specs" / "larkspur.yaml")
HEADING = "wearer;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm)"
ADA, BO = "Ada;70;96;101;45", "Bo;78;104;104;46"


def roster(folder: Path, *rows: str) -> str:
    file = folder / "class.csv"
    file.write_text("\n".join(rows) + "\n", encoding="utf-8")
    return str(file)


def value_of(capsys: pytest.CaptureFixture[str], *arguments: str) -> str:
    assert run(["why", LARKSPUR, *arguments, "--format", "json"]) == 0
    told = json.loads(capsys.readouterr().out)
    return str(told["value"]["shown"])


def test_a_choice_in_a_column_is_made(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = roster(tmp_path, f"{HEADING};fullness", f"{ADA};2", f"{BO};3")
    assert value_of(capsys, "fullness", "--class", file, "--only", "Ada") == "2"
    assert value_of(capsys, "fullness", "--class", file, "--only", "Bo") == "3"


def test_a_row_may_name_another_workroom(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "at-home.yaml").write_text("workroom: 1\nunits: inches\n", encoding="utf-8")
    file = roster(tmp_path, f"{HEADING};workroom", f"{ADA};at-home.yaml", f"{BO};")
    assert run(["cutting", LARKSPUR, "--class", file, "--only", "Ada"]) == 0
    assert " in" in capsys.readouterr().out
    assert run(["cutting", LARKSPUR, "--class", file, "--only", "Bo"]) == 0
    assert " cm" in capsys.readouterr().out


@pytest.mark.parametrize("named", ["nowhere.yaml", "../outside.yaml"])
def test_a_workroom_that_is_not_beside_the_roster_is_told_at_its_cell(
    named: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "outside.yaml").write_text("workroom: 1\n", encoding="utf-8")
    (tmp_path / "in").mkdir()
    file = roster(tmp_path / "in", f"{HEADING};workroom", f"{ADA};{named}")
    assert run(["check", LARKSPUR, "--class", file]) == 1
    told = capsys.readouterr().err
    assert "error FB165" in told
    assert "class.csv:2:18" in told


@pytest.mark.parametrize(
    "call",
    [
        ["why", LARKSPUR, "weight"],
        ["fit", LARKSPUR, "--free", "layers"],
        ["amend", LARKSPUR, "--measured", str(Path(LARKSPUR).parent / "records" / "larkspur-m.yaml")],
    ],
)
def test_a_class_where_one_wearer_is_meant_is_refused(
    call: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = roster(tmp_path, HEADING, ADA, BO)
    assert run([*call, "--class", file]) == 2
    assert "say which: --only NAME (Ada, Bo)" in capsys.readouterr().err


def test_a_preview_of_a_class_asks_for_one_wearer(tmp_path: Path) -> None:
    file = roster(tmp_path, HEADING, ADA, BO)
    built = Builder(Asked(LARKSPUR, wearer=file)).build()
    assert built.guide is None
    assert "--only NAME (Ada, Bo)" in built.report
    assert Builder(Asked(LARKSPUR, wearer=file, only=["Bo"])).build().guide is not None
