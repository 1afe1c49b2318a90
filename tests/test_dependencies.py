"""What the package asks of other libraries, and that its oldest ones are the ones that are tested."""

from __future__ import annotations

import tomllib
from pathlib import Path

ROOT = Path(__file__).parents[1]
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))


def test_the_oldest_libraries_that_are_tested_are_the_oldest_that_are_allowed() -> None:
    asked = {line.replace(">=", "==") for line in PROJECT["project"]["dependencies"]}
    assert asked == set(PROJECT["tool"]["tox"]["env"]["oldest"]["deps"])


def test_the_version_has_a_part_among_the_changes() -> None:
    from furbelow import __version__

    assert f"### [{__version__}]" in (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_every_demo_garment_comes_with_the_wheel() -> None:
    shipped = PROJECT["tool"]["hatch"]["build"]["targets"]["wheel"]["force-include"]
    assert {f"specs/{path.name}" for path in (ROOT / "specs").glob("*.yaml")} <= shipped.keys()
