"""How the rooms of the compiler stand on each other; the contracts themselves are in pyproject.toml."""

from __future__ import annotations

from pathlib import Path

import pytest
from importlinter.cli import lint_imports

ROOT = Path(__file__).parents[1]


def test_every_room_stands_on_those_below_it_and_no_files_go_round_in_a_circle(
    capsys: pytest.CaptureFixture[str],
) -> None:
    code = lint_imports(config_filename=str(ROOT / "pyproject.toml"), no_cache=True)
    assert code == 0, capsys.readouterr().out
