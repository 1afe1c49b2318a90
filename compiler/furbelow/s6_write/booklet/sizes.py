"""How sizes are called together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from furbelow.garment.message import Own
from furbelow.s6_write.words.messages import Messages


def told_of(message: str, sizes: Sequence[int], names: Sequence[str], words: Messages) -> str:
    """A message about sizes: "Sizes S to XL:", "Cutting, size 8"."""
    return words.text(message, {"sizes": Own(sizes_said(sizes, names, words)), "count": len(sizes)})


def sizes_said(sizes: Sequence[int], names: Sequence[str], words: Messages) -> str:
    """ "XS", "S to XL", "XS and L": sizes by their places among all, three in a row or more by the first and the last."""
    words.read("booklet")
    return words.listed([_run_said([names[at] for at in run], words) for run in _runs(sizes)])


def _runs(sizes: Sequence[int]) -> Iterator[list[int]]:
    """Sizes that follow each other; two that do are told as two."""
    runs: list[list[int]] = []
    for at in sorted(sizes):
        if runs and runs[-1][-1] == at - 1:
            runs[-1].append(at)
        else:
            runs.append([at])
    for run in runs:
        yield from [run] if len(run) > 2 else [[at] for at in run]


def _run_said(run: Sequence[str], words: Messages) -> str:
    return run[0] if len(run) == 1 else words.text("booklet-range", {"first": Own(run[0]), "last": Own(run[-1])})
