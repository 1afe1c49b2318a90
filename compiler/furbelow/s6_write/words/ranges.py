"""Whole numbers said shortly, those that follow each other as one range: 1–4, 6 and 7."""

from __future__ import annotations

from collections.abc import Iterable

from furbelow.garment.message import Part, Things, Value

_WORTH = 3  # numbers: two are said sooner by themselves


def ranges(numbers: Iterable[int]) -> Things:
    """In their order, each once."""
    said: list[Value] = []
    for run in runs(numbers):
        said += [Part("number-range", {"from": run[0], "to": run[-1]})] if len(run) >= _WORTH else run
    return Things(tuple(said))


def runs(numbers: Iterable[int]) -> list[list[int]]:
    """Those that follow each other together, in their order, each once."""
    found: list[list[int]] = []
    for number in sorted(set(numbers)):
        if found and number == found[-1][-1] + 1:
            found[-1].append(number)
        else:
            found.append([number])
    return found
