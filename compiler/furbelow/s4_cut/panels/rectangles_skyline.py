"""The upper edge of the cloth already given out, and which rectangles still fit into its lowest dip.

A skyline is two tuples. Stretch i covers the columns xs[i] to xs[i + 1] at height ys[i]. The first and
last ys are the two walls, one unit above the ceiling so that no rectangle ever comes level with them;
the first two xs are both 0. Plain tuples, because the searches make some hundred thousand of them.

Rectangles still to be placed are the bits of one whole number, so that "fits the gap, stays under the
ceiling, not yet placed, not the twin of one just tried" is a few operations on whole numbers.
"""

from bisect import bisect_right
from collections.abc import Callable, Sequence

Skyline = tuple[tuple[int, ...], tuple[int, ...]]


def floor(width: int, ceiling: int) -> Skyline:
    """The skyline of an empty bolt."""
    return (0, 0, width), (ceiling + 1, 0, ceiling + 1)


def raised(xs: tuple[int, ...], ys: tuple[int, ...], i: int, a: int, b: int, top: int) -> Skyline:
    """The skyline after the columns a to b of stretch i have risen to `top`.

    a..b touches at least one end of the stretch. Stretches that come level with a neighbour melt into it.
    """
    if b < xs[i + 1]:
        if top == ys[i - 1]:
            return xs[:i] + (b,) + xs[i + 1 :], ys
        return xs[: i + 1] + (b,) + xs[i + 1 :], ys[:i] + (top,) + ys[i:]
    if a > xs[i]:
        if top == ys[i + 1]:
            return xs[: i + 1] + (a,) + xs[i + 2 :], ys
        return xs[: i + 1] + (a,) + xs[i + 1 :], ys[: i + 1] + (top,) + ys[i + 1 :]
    if top == ys[i - 1]:
        if top == ys[i + 1]:
            return xs[:i] + xs[i + 2 :], ys[:i] + ys[i + 2 :]
        return xs[:i] + xs[i + 1 :], ys[:i] + ys[i + 1 :]
    if top == ys[i + 1]:
        return xs[: i + 1] + xs[i + 2 :], ys[:i] + ys[i + 1 :]
    return xs, ys[:i] + (top,) + ys[i + 1 :]


class Stock:
    """The rectangles to place, each way it may lie a bit, in an order of preference.

    rects: width and height of each. turns: each may also lie on its side.
    prefer: the larger, the earlier a way of lying is tried.

    w, h, owner, turned: width, height, rectangle and whether on its side, of each bit.
    ways: the bits of the same rectangle, to clear together. everything: all bits.
    """

    def __init__(self, rects: Sequence[tuple[int, int]], turns: bool, prefer: Callable[[int, int], float]) -> None:
        ways = []
        for k, (w, h) in enumerate(rects):
            # Twins must stand side by side, whichever way round they were written.
            kind = (min(w, h), max(w, h)) if turns else (w, h)
            for turned in (False, True) if turns and w != h else (False,):
                wide, high = (h, w) if turned else (w, h)
                ways.append((-prefer(wide, high), wide, high, kind, k, turned))
        ways.sort()
        self.w = [way[1] for way in ways]
        self.h = [way[2] for way in ways]
        self.owner = [way[4] for way in ways]
        self.turned = [way[5] for way in ways]
        self.everything = (1 << len(ways)) - 1
        of_owner = [0] * len(rects)
        for bit, k in enumerate(self.owner):
            of_owner[k] |= 1 << bit
        self.ways = [of_owner[k] for k in self.owner]
        self._twins = sum(1 << b for b in range(1, len(ways)) if ways[b][1:3] == ways[b - 1][1:3])
        self.widths, self._no_wider = _cumulated(self.w)
        self._heights, self._no_higher = _cumulated(self.h)

    def no_wider(self, gap: int) -> int:
        """The bits of what is at most `gap` wide."""
        return self._no_wider[bisect_right(self.widths, gap)]

    def no_higher(self, room: int) -> int:
        """The bits of what is at most `room` high."""
        return self._no_higher[bisect_right(self._heights, room)]

    def one_of_each(self, left: int) -> int:
        """The bits of `left` without all but the first of each group of twins."""
        return left & ~((left << 1) & self._twins)


def _cumulated(sizes: list[int]) -> tuple[list[int], list[int]]:
    """The sizes that occur, rising, and for each count of them the bits of what is no larger."""
    steps = sorted(set(sizes))
    at = dict.fromkeys(steps, 0)
    for bit, size in enumerate(sizes):
        at[size] |= 1 << bit
    bits = [0]
    for size in steps:
        bits.append(bits[-1] | at[size])
    return steps, bits
