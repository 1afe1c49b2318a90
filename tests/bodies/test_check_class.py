"""What `check --class` tells a teacher."""

from __future__ import annotations

from pathlib import Path

import pytest
from furbelow.verbs.command import run

from tests.bodies.survey import roster, skirt_text

CLASS = [(850, 1011, 942), (727, 1100, 1035), (700, 1080, 1000), (727, 987, 700)]


@pytest.fixture
def files(tmp_path: Path) -> tuple[str, str]:
    spec, table = tmp_path / "skirt.yaml", tmp_path / "class.csv"
    spec.write_text(skirt_text(), encoding="utf-8")
    table.write_text(roster(CLASS), encoding="utf-8")
    return str(spec), str(table)


def test_refusals_are_counted_by_reason_with_the_wearers(
    files: tuple[str, str], capsys: pytest.CaptureFixture[str]
) -> None:
    spec, table = files
    assert run(["check", spec, "--class", table]) == 1
    told = capsys.readouterr()
    assert told.out.splitlines() == [
        f"{spec}: proved for 1 of 4 bodies",
        "      2  FB409  an elastic must stretch further than it can: 2, 3",
        "      1  FB211  a body measure lies outside its range: 4",
    ]
    assert told.err.count("error FB409") == 1  # told once, with the numbers of the first


def test_a_class_that_all_can_wear_is_sound(files: tuple[str, str], capsys: pytest.CaptureFixture[str]) -> None:
    spec, table = files
    Path(table).write_text(roster(CLASS[:1]), encoding="utf-8")
    assert run(["check", spec, "--wearer", table]) == 0
    assert "sound; proved for 1 body" in capsys.readouterr().out
