"""Nothing in the compiler that no user reaches, and no check against the world that guards such a thing."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.reach import ROOT, unreached, unreached_imports

OUTSIDE = sorted((ROOT / "tests" / "outside").glob("test_*.py"))


def test_every_module_and_every_public_definition_is_reached_from_a_command() -> None:
    assert list(unreached()) == []


@pytest.mark.parametrize("path", OUTSIDE, ids=lambda path: path.stem)
def test_a_check_against_the_world_asks_what_users_reach(path: Path) -> None:
    assert list(unreached_imports(path)) == []
