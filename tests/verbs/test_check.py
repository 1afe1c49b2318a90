"""What a check says beyond the proofs of each body."""

from __future__ import annotations

from pathlib import Path

import pytest
from furbelow.verbs.command import run

from tests.test_faults import GARMENTS

LARKSPUR = (GARMENTS / "larkspur.yaml").read_text(encoding="utf-8")


def _told(spec: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> str:
    path = tmp_path / "spec.yaml"
    path.write_text(spec, encoding="utf-8")
    run(["check", str(path)])
    return capsys.readouterr().err


def test_the_ends_of_a_choice_are_asked_too(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    wide = LARKSPUR.replace("from: 1.5, to: 3}", "from: 1.5, to: 9}")
    assert wide != LARKSPUR
    assert "FB431" in _told(wide, tmp_path, capsys)
    assert "FB431" not in _told(LARKSPUR, tmp_path, capsys)


def test_a_piece_that_no_width_holds_is_told_before_anyone_plans(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    narrow = LARKSPUR.replace("    width: 150 cm\n", "    width: 15 cm\n")
    assert narrow != LARKSPUR
    assert "FB501" in _told(narrow, tmp_path, capsys)
