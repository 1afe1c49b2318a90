"""The names that files of a set may have."""

from __future__ import annotations

import re
from collections.abc import Iterable

from furbelow.diagnose.fault import Fault

LIST_NAME = "furbelow.json"

_PLAIN_PART = re.compile(r"[A-Za-z0-9][A-Za-z0-9._-]{0,99}")
# Names that stand for devices on some systems, whatever their ending. Source: Microsoft, "Naming Files, Paths, and
# Namespaces".
_DEVICE = re.compile(r"(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9])(\..*)?")


def is_plain_name(name: str) -> bool:
    """Plain letters, or one folder and a plain name, on every system; never the list's own."""
    parts = name.split("/")
    return (
        len(parts) <= 2
        and all(_PLAIN_PART.fullmatch(part) and part[-1] != "." for part in parts)
        and not any(_DEVICE.fullmatch(part) for part in parts)
        and parts[-1].casefold() != LIST_NAME
    )


def name_faults(files: Iterable[str]) -> tuple[Fault, ...]:
    """FB650 for each name that is not plain, or that some systems take for another of the set."""
    bad = tuple(
        Fault("FB650", f"{name!r} is no plain file name", help="use letters, digits, dots and hyphens")
        for name in files
        if not is_plain_name(name)
    )
    # Some systems take large and small letters for the same.
    folded: dict[str, str] = {}
    twice = tuple(
        Fault("FB650", f"the files {folded[name.casefold()]!r} and {name!r} would have the same name")
        for name in files
        if folded.setdefault(name.casefold(), name) != name
    )
    return bad + twice
