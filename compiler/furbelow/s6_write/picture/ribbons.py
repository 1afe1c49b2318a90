"""Where cloth can be seen: runs of columns that show one face, those further from the eye first.

A run that shows the outside is one area, so that no line parts it; shade is laid over it. Where a fold turns over, its
inside shows below the height at which it does.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import hypot
from typing import NamedTuple

from furbelow.s6_write.picture.folds import Column

LIT = 0.42  # how much cloth must face the light; it comes from the upper left in front
ROUND = 12  # columns within which cloth turns away round the form
TURNS = (0.0, 0.3, 0.5, 0.65, 0.8)  # heights at which a fold may turn over


class Ribbon(NamedTuple):
    """inside: the inner face shows. left, right: whether the cloth folds over at that side."""

    columns: tuple[Column, ...]
    inside: bool
    left: bool
    right: bool

    @property
    def near(self) -> float:
        return sum(column.hem.near for column in self.columns) / len(self.columns)


def ribbons_of(columns: Sequence[Column], scale: float) -> list[Ribbon]:
    """The runs of a tier, far ones first."""
    found = []
    inside = [b.hem.x <= a.hem.x for a, b in zip(columns, columns[1:], strict=False)]
    start = 0
    for end in range(1, len(inside) + 1):
        if end == len(inside) or inside[end] != inside[start]:
            found.append(Ribbon(tuple(columns[start : end + 1]), inside[start], start > 0, end < len(inside)))
            start = end
    return sorted(found, key=lambda ribbon: ribbon.near)


def shaded(ribbon: Ribbon, scale: float) -> Iterator[tuple[Column, ...]]:
    """The parts of a run that turn away from the light."""
    run: list[Column] = []
    for a, b in zip(ribbon.columns, ribbon.columns[1:], strict=False):
        across, ahead = (b.hem.x - a.hem.x) / scale, b.hem.near - a.hem.near
        if (0.55 * ahead + 0.84 * across) / (hypot(across, ahead) + 1e-9) < LIT:
            run = run or [a]
            run.append(b)
        elif run:
            yield tuple(run)
            run = []
    if run:
        yield tuple(run)


def turns_at(ribbon: Ribbon) -> float:
    """The share of the way down below which the inside shows."""
    first, last = ribbon.columns[0], ribbon.columns[-1]
    return next((share for share in TURNS if first.at(share)[0] > last.at(share)[0]), 1.0)


def cut_out(
    columns: Sequence[Column], top: float = 0.0, *, left: bool = True, right: bool = True
) -> list[tuple[float, float]]:
    """The outline of a run from a height down: down its left side, along the hem, up its right side, back along the top.

    left, right: whether it ends there at a fold; where not, it goes round the form, and its side is where it is widest.
    """
    shares = [top + (1 - top) * share for share in (0.0, 0.12, 0.3, 0.6)]
    first, last = (columns[:1] if left else columns[:ROUND]), (columns[-1:] if right else columns[-ROUND:])
    return [
        *(min(column.at(share) for column in first) for share in shares),
        *((column.hem.x, column.hem.y) for column in columns),
        *(max(column.at(share) for column in last) for share in reversed(shares)),
        *(column.at(top) for column in columns[-2:0:-2]),
    ]
