"""Files that are made when they are asked for: whoever puts them into a folder has each made once."""

from __future__ import annotations

from collections import Counter
from functools import partial
from pathlib import Path

import pytest
from furbelow.s6_write.folder import write_folder
from furbelow.s6_write.made_in_turn import MadeInTurn

NAMES = ("index.html", "cutting.pdf", "later.md")


@pytest.mark.parametrize("standing", [(), NAMES, ("index.html", "gone.pdf")])
def test_a_file_is_made_once(tmp_path: Path, standing: tuple[str, ...]) -> None:
    asked: Counter[str] = Counter()

    def made(name: str) -> bytes:
        asked[name] += 1
        return name.encode()

    assert write_folder(tmp_path, dict.fromkeys(standing, b"before")).ok
    assert write_folder(tmp_path, MadeInTurn({name: partial(made, name) for name in NAMES})).ok
    assert asked == Counter(NAMES)


def test_to_look_for_a_name_makes_nothing() -> None:
    def made() -> bytes:
        raise AssertionError

    files = MadeInTurn({"cutting.pdf": made})
    assert "cutting.pdf" in files
    assert "other.pdf" not in files
    assert list(files) == ["cutting.pdf"]
