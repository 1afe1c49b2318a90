"""What is known of rectangles on a bolt before any search: a length that none goes below."""

from __future__ import annotations

from collections.abc import Sequence


class OutOfWork(Exception):
    """A search was stopped before it had an answer."""


def least_length(rects: Sequence[tuple[int, int]], width: int, turns: bool = False) -> int:
    """A length below which no packing can be: by area, and by what can't lie side by side.

    For each narrowness n: whatever is wider than width - n lies alone, whatever is wider than half the
    width beside none of its kind, and the rest, if at least n wide, needs its area in what these leave.
    Source: Martello & Vigo 1998, Manage. Sci. 44:388-399 (bound L2), each unit of length a bin.
    """
    if not rects:
        return 0
    if turns:
        shortest = max(max(r) if max(r) > width else min(r) for r in rects)
        return max(shortest, -(-sum(w * h for w, h in rects) // width))
    bound = max(h for _, h in rects)
    for least in {1} | {w for w, _ in rects if 2 * w <= width}:
        alone = sum(h for w, h in rects if w > width - least)
        halves = [(w, h) for w, h in rects if width - least >= w and 2 * w > width]
        heights = sum(h for _, h in halves)
        free = sum((width - w) * h for w, h in halves)
        rest = sum(w * h for w, h in rects if 2 * w <= width and w >= least)
        bound = max(bound, alone + heights + max(0, -((free - rest) // width)))
    return bound
