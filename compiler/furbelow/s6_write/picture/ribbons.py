"""Where cloth can be seen: runs of columns that show one face, those further from the eye first.

A run that shows the outside is one area, so that no line parts it; shade is laid over it. Where a fold turns over, its
inside shows below the height at which it does.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import hypot

from furbelow.named import NamedTuple
from furbelow.s6_write.picture.folds import Column
from furbelow.s6_write.picture.view import NearPoint

LIT = 0.42  # how much cloth must face the light; it comes from the upper left in front
ROUND = 12  # columns within which cloth turns away round the form


class Ribbon(NamedTuple):
    """inside: the inner face shows. left, right: whether the cloth folds over at that side."""

    columns: tuple[Column, ...]
    inside: bool
    left: bool
    right: bool

    @property
    def near(self) -> float:
        return sum(column.near for column in self.columns) / len(self.columns)


def ribbons_of(columns: Sequence[Column], scale: float) -> list[Ribbon]:
    """The runs of a tier, far ones first."""
    found = []
    hem = [column.spots[-1][0] for column in columns]
    inside = [b <= a for a, b in pairwise(hem)]
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
        across, ahead = (b.hem[0] - a.hem[0]) / scale, b.near - a.near
        if (0.55 * ahead + 0.84 * across) / (hypot(across, ahead) + 1e-9) < LIT:
            run = run or [a]
            run.append(b)
        elif run:
            yield tuple(run)
            run = []
    if run:
        yield tuple(run)


def turns_at(ribbon: Ribbon) -> int:
    """The level below which the inside shows; the last one where it shows nowhere."""
    first, last = ribbon.columns[0].spots, ribbon.columns[-1].spots
    return next((level for level in range(len(first) - 1) if first[level][0] > last[level][0]), len(first) - 1)


def cut_out(columns: Sequence[Column], top: int = 0, *, left: bool = True, right: bool = True) -> list[NearPoint]:
    """The outline of a run from a level down: down its left side, along the hem, up its right side, back along the top.

    left, right: whether it ends there at a fold; where not, it goes round the form, and its side is where it is widest.
    """
    down, up = columns[0].spots, columns[-1].spots
    if not left:
        down = tuple(map(min, zip(*(column.spots for column in columns[:ROUND]), strict=True)))
    if not right:
        up = tuple(map(max, zip(*(column.spots for column in columns[-ROUND:]), strict=True)))
    return [
        *down[top:-1],
        *(column.spots[-1] for column in columns),
        *up[top:-1][::-1],
        *(column.spots[top] for column in columns[-2:0:-2]),
    ]
