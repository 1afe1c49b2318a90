"""Whole numbers said shortly, those that follow each other as one range: 1–4, 6 and 7."""

from __future__ import annotations

from collections.abc import Iterable

from furbelow.garment.message import Part, Things, Value

_WORTH = 3  # numbers: two are said sooner by themselves


def ranges(numbers: Iterable[int]) -> Things:
    """In their order, each once."""
    runs: list[list[int]] = []
    for number in sorted(set(numbers)):
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    said: list[Value] = []
    for run in runs:
        said += [Part("number-range", {"from": run[0], "to": run[-1]})] if len(run) >= _WORTH else run
    return Things(tuple(said))
