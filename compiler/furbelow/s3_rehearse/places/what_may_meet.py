"""The table of what may meet what, as `what_may_meet.txt` has it."""

from __future__ import annotations

import os
from collections.abc import Mapping
from functools import cache
from typing import Literal

from furbelow.garment.lying import Lies, Occupant
from furbelow.named import NamedTuple

Verdict = Literal["+", ">", "!", "x"]
_PARTS = ("ALONG THE PIECE", "AT AN END", "TWICE AT AN END", "REASONS")


class Meeting(NamedTuple):
    """What the table says of one thing that comes to where another lies."""

    verdict: Verdict
    reason: str

    @property
    def may_be(self) -> bool:
        return self.verdict in ("+", ">")


def meeting(there: Occupant, comes: Occupant) -> Meeting:
    """What the table says of two things that overlap on one piece; what comes over an end meets only what may not be sewn over."""
    if comes.across:
        return _table()["TWICE AT AN END" if there.across else "AT AN END"][there.kind, comes.kind]
    if there.across:
        # What lies along a piece ends in the margin of its end, or is carried over it; a hole needs firm cloth.
        if there.kind is Lies.ZIP:
            return _table()["ALONG THE PIECE"][there.kind, comes.kind]
        return _table()["AT AN END"][comes.kind, there.kind] if comes.kind is Lies.HOLE else Meeting("+", "")
    return _table()["ALONG THE PIECE"][there.kind, comes.kind]


@cache
def _table() -> Mapping[str, Mapping[tuple[Lies, Lies], Meeting]]:
    with open(os.path.join(os.path.dirname(__file__), "what_may_meet.txt"), encoding="utf-8") as file:
        lines = file.read().splitlines()
    parts: dict[str, list[str]] = {}
    for line in lines:
        name = line.partition(":")[0]
        if name in _PARTS:
            parts[name] = []
        elif parts and line.strip():
            parts[list(parts)[-1]].append(line)
    reasons = {number: text.strip() for number, _, text in (row.partition(" ") for row in parts.pop("REASONS"))}
    return {name: _cells(rows, reasons) for name, rows in parts.items()}


def _cells(rows: list[str], reasons: Mapping[str, str]) -> dict[tuple[Lies, Lies], Meeting]:
    columns = [Lies(word) for word in rows[0].split()]
    cells = {}
    for row in rows[1:]:
        there, *signs = row.split()
        for column, sign in zip(columns, signs, strict=True):
            verdict: Verdict = sign[0]  # type: ignore[assignment]  # the file is ours, and a test reads it whole
            cells[Lies(there.rstrip(":")), column] = Meeting(verdict, reasons.get(sign[1:], ""))
    return cells
