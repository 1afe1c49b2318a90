"""The list of the files that are ours in a folder, and of what they were made from: `furbelow.json`."""

from __future__ import annotations

import json
import os
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path

from furbelow.named import NamedTuple
from furbelow.s6_write.plain_names import LIST_NAME, is_plain_name
from furbelow.s6_write.safe_writing import passing_path, settle, write_safely

_LIST_FORMAT = 1
_LONGEST_LIST = 4 * 1024 * 1024


class Listed(NamedTuple):
    complete: bool = False
    known: Mapping[str, set[str]] = {}  # the hashes by name
    kind: str = ""
    made_from: str = ""
    keys: Mapping[str, str] = {}  # of what single files were made from, by name


def read_list(path: Path) -> Listed | None:
    """What the list says; nothing if the file is no list of ours."""
    if path.stat().st_size > _LONGEST_LIST:
        return None
    try:
        listed = json.loads(path.read_bytes())
    except (ValueError, RecursionError):
        return None
    if not isinstance(listed, dict) or listed.get("furbelow_files") != _LIST_FORMAT:
        return None
    known: dict[str, set[str]] = {}
    for column in ("files", "coming"):
        entries = listed.get(column, {})
        if not isinstance(entries, dict):
            return None
        for name, is_hash in entries.items():
            if not is_plain_name(name) or not isinstance(is_hash, str):
                return None
            known.setdefault(name, set()).add(is_hash)
    kind, made_from = (said if isinstance(said := listed.get(key), str) else "" for key in ("kind", "made_from"))
    keys = said if isinstance(said := listed.get("keys"), dict) else {}
    return Listed(listed.get("complete") is True, known, kind, made_from, keys)


def put_list(folder: Path, columns: Mapping[str, object]) -> None:
    text = json.dumps({"furbelow_files": _LIST_FORMAT, **columns}, indent=1, sort_keys=True) + "\n"
    passing = passing_path(folder, 0)
    try:
        write_safely(passing, text.encode())
        os.replace(passing, folder / LIST_NAME)
    finally:
        with suppress(OSError):
            passing.unlink()
    settle(folder)
