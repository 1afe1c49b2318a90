"""What tests of several folders ask for."""

from __future__ import annotations

from pathlib import Path

import pytest
from furbelow import resources

from tests.s6_write.words.made_up import templates_with_made_up


@pytest.fixture(scope="session")
def _templates_with_made_up(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return templates_with_made_up(tmp_path_factory.mktemp("words"), resources.template("."))


@pytest.fixture
def made_up_language(_templates_with_made_up: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """furbelow speaks the made-up language too."""
    shipped = resources._folder
    monkeypatch.setattr(
        resources, "_folder", lambda name: _templates_with_made_up if name == "templates" else shipped(name)
    )
