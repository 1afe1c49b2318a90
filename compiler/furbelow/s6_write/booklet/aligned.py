"""Sequences of several sizes laid beside each other, as few places in all as may be."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import TypeVar

T = TypeVar("T")


def aligned(each: Mapping[int, Sequence[T]], likeness: Callable[[T, T], int]) -> list[dict[int, T]]:
    """Places in order, each with what the sizes have there; the order of every size is kept.

    likeness: how well two go into one place, 0 where they may not. The sum over a size is the most that its order lets be:
    longest common subsequence with weights, worked out for one size after another, the longest first.
    Source: Needleman and Wunsch, Journal of Molecular Biology 48, 1970, without a price for what is left alone.
    """
    places: list[dict[int, T]] = []
    for size in sorted(each, key=lambda size: -len(each[size])):
        places = _with_one_more(places, size, each[size], likeness)
    return [{size: place[size] for size in sorted(place)} for place in places]


def _with_one_more(
    places: list[dict[int, T]], size: int, more: Sequence[T], likeness: Callable[[T, T], int]
) -> list[dict[int, T]]:
    fits = [[max(likeness(there, one) for there in place.values()) for one in more] for place in places]
    best = [[0] * (len(more) + 1) for _ in range(len(places) + 1)]
    for at in range(len(places) - 1, -1, -1):
        for by in range(len(more) - 1, -1, -1):
            together = fits[at][by] + best[at + 1][by + 1] if fits[at][by] else 0
            best[at][by] = max(together, best[at + 1][by], best[at][by + 1])
    found: list[dict[int, T]] = []
    at = by = 0
    while at < len(places) and by < len(more):
        if fits[at][by] and best[at][by] == fits[at][by] + best[at + 1][by + 1]:
            found.append({**places[at], size: more[by]})
            at, by = at + 1, by + 1
        elif best[at][by] == best[at + 1][by]:
            found.append(places[at])
            at += 1
        else:
            found.append({size: more[by]})
            by += 1
    return [*found, *places[at:], *({size: one} for one in more[by:])]
