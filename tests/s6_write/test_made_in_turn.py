"""Files that are made when they are asked for: whoever puts them into a folder has each made once."""

from __future__ import annotations

from collections import Counter
from functools import partial
from pathlib import Path

import pytest
from furbelow.s6_write.folder import write_folder
from furbelow.s6_write.made_in_turn import MadeInTurn, Make

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


def test_what_was_made_from_the_same_key_is_not_made_again(tmp_path: Path) -> None:
    asked: list[str] = []

    def put(key: str, content: bytes, *, replace: bool = False, also: str = "") -> bool:
        def made() -> bytes:
            asked.append(key)
            return content

        files: dict[str, Make] = {"cutting.pdf": made}
        if also:
            files[also] = partial(bytes, b"also")
        return write_folder(tmp_path, MadeInTurn(files, {"cutting.pdf": lambda: key}), replace=replace).ok

    assert put("one", b"cut")
    assert put("one", b"never asked for", also="index.html")
    assert put("one", b"never asked for")
    assert asked == ["one"]
    assert (tmp_path / "cutting.pdf").read_bytes() == b"cut"
    assert put("two", b"cut")  # the same content made from something else
    assert put("two", b"never asked for")
    assert asked == ["one", "two"]
    # Files put beside the set leave its keys as they are.
    assert write_folder(tmp_path, {"class.json": b"{}"}, beside=True).ok
    assert put("two", b"never asked for", also="class.json")
    assert asked == ["one", "two"]
    # One that was edited or is gone is made again.
    (tmp_path / "cutting.pdf").write_bytes(b"edited")
    assert not put("two", b"cut")
    assert put("two", b"cut", replace=True)
    (tmp_path / "cutting.pdf").unlink()
    assert put("two", b"cut")
    assert (tmp_path / "cutting.pdf").read_bytes() == b"cut"
