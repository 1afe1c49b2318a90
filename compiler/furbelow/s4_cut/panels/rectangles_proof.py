"""Can these rectangles lie on so much cloth? A complete depth-first search that answers yes or no.

For few rectangles only: it proves a length to be the shortest, where the beam search can only find one.

It looks for a plan in which nothing can slide down or left; if there is any plan there is such a one. Take
the lowest dip of the skyline, at height y. Either no rectangle rests on its floor: then nothing is below the
lower of its two walls, for whatever hangs lowest in the dip must rest on a wall. Or take the leftmost
that rests there. Either it stands in the left corner, or something to its left stops it from sliding.
That can only rest on the left wall, so everything beside the rectangle is waste up to that wall, and the
rectangle is higher than the wall. Waste beyond what the cloth allows cuts the search, and so do skylines
that failed before.

Source: bottom-left normal form, Christofides & Whitlock 1977, Oper. Res. 25:30-44; waste bound and the
search over one ceiling after the other, Kenmochi et al. 2009, Eur. J. Oper. Res. 198:73-83.
"""

from __future__ import annotations

from collections.abc import Sequence

from furbelow.s4_cut.panels.rectangles_bound import OutOfWork
from furbelow.s4_cut.panels.rectangles_search import Laid, Spend
from furbelow.s4_cut.panels.rectangles_skyline import Stock, floor, raised

_REMEMBERED = 200_000  # failed skylines kept: about 100 MB at most


def decide(rects: Sequence[tuple[int, int]], width: int, ceiling: int, *, turns: bool, spend: Spend) -> Laid | None:
    """A plan within `width` and `ceiling`, or None when there is none.

    Fails: OutOfWork when `spend`, asked once for each rectangle tried, says that no work is left.
    """
    budget = width * ceiling - sum(w * h for w, h in rects)
    if budget < 0:
        return None
    stock = Stock(rects, turns, lambda w, h: w * h)
    w, h = stock.w, stock.h
    wide_sums = _sums(w, width)
    high_sums = _sums(h, ceiling)
    failed: set[tuple[tuple[int, ...], tuple[int, ...], int]] = set()
    laid: Laid = []

    def lay(xs: tuple[int, ...], ys: tuple[int, ...], left: int, waste: int) -> bool:
        if not left:
            return True
        y = min(ys)
        i = ys.index(y)
        key = (ys, xs, left)
        if y >= ceiling or key in failed:
            return False
        x, end = xs[i], xs[i + 1]
        wall, lower = ys[i - 1], min(ys[i - 1], ys[i + 1])
        above = sum((xs[j + 1] - xs[j]) * _short(high_sums, ceiling - ys[j]) for j in range(1, len(ys) - 1))
        beside = _short(wide_sums, end - x) * (min(lower, ceiling) - y)
        if waste + max(above, beside) <= budget:
            furthest = 0 if i == 1 else min(end - x - 1, (budget - waste) // (wall - y))
            for shift in range(furthest + 1):
                # Something that rests on the left wall ends here, so widths must add up to here.
                if shift and not wide_sums >> (x + shift) & 1:
                    continue
                gap = end - x - shift
                fitting = stock.one_of_each(left) & stock.no_wider(gap) & stock.no_higher(ceiling - y)
                bxs, bys, bi = xs, ys, i
                if shift:
                    fitting &= ~stock.no_higher(wall - y)
                    bxs, bys = raised(xs, ys, i, x, x + shift, wall)
                    bi = bys.index(y)
                fitting_bits = (k for k in range(fitting.bit_length()) if fitting >> k & 1)
                # First what comes level with the walls.
                for _, k in sorted(((w[k] != gap) + (h[k] != wall - y), k) for k in fitting_bits):
                    if not spend(1):
                        raise OutOfWork
                    laid.append((stock.owner[k], x + shift, y, stock.turned[k]))
                    after = raised(bxs, bys, bi, x + shift, x + shift + w[k], y + h[k])
                    if lay(*after, left & ~stock.ways[k], waste + shift * (wall - y)):
                        return True
                    laid.pop()
            closed = waste + (end - x) * (lower - y)
            if lower <= ceiling and closed <= budget and lay(*raised(xs, ys, i, x, end, lower), left, closed):
                return True
        if len(failed) < _REMEMBERED:
            failed.add(key)
        return False

    return laid if lay(*floor(width, ceiling), stock.everything, 0) else None


def _sums(sizes: Sequence[int], most: int) -> int:
    """The numbers up to `most` that some of the sizes add up to, as the bits of one number."""
    sums = 1
    for size in sizes:
        sums |= sums << size
    return sums & ((1 << (most + 1)) - 1)


def _short(sums: int, room: int) -> int:
    """How much of `room` must stay empty whatever is put in."""
    return room - ((sums & ((1 << (room + 1)) - 1)).bit_length() - 1)
