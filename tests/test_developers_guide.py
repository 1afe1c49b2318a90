"""DEVELOPERS.md can't drift: every folder and every module that it names exists."""

from __future__ import annotations

import importlib.util
import re
from pathlib import Path

ROOT = Path(__file__).parents[1]
GUIDE = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_every_folder_named_there_exists() -> None:
    folders = set(re.findall(r"`((?:compiler|schemas|templates|specs|tests)[\w/]*/)`", GUIDE))
    assert len(folders) > 15
    assert [folder for folder in folders if not (ROOT / folder).is_dir()] == []


def test_every_folder_of_the_compiler_is_named_there() -> None:
    folders = {
        f"compiler/furbelow/{path.name}/"
        for path in (ROOT / "compiler" / "furbelow").iterdir()
        if path.is_dir() and (path / "__init__.py").is_file()
    }
    assert [folder for folder in sorted(folders) if f"`{folder}`" not in GUIDE] == []


def test_every_command_named_there_can_be_run() -> None:
    modules = set(re.findall(r"python -m ([\w.]+)", GUIDE)) - {"venv"}
    assert modules
    assert [name for name in modules if importlib.util.find_spec(name) is None] == []
