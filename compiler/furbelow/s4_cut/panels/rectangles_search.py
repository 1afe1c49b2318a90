"""Can these rectangles lie on so much cloth? A beam search that answers yes with a plan, or gives up.

Built up from the floor: always the lowest dip of the skyline is filled, against its higher side wall,
and a dip that nothing fits any more is waste. Of all part plans with the same number of rectangles only
the most promising are kept: little waste, a smooth skyline, the awkward (tall) rectangles placed early.
The beam is narrow at first and wide towards the end, where it is decided.

Source: beam search is textbook matter (Ow & Morton 1988, Int. J. Prod. Res. 26:35-62); the lowest dip and
its higher wall come from the best-fit skyline rules of Burke, Kendall & Whitwell 2004, Oper. Res. 52:655-671,
and Leung, Zhang & Sim 2011, Eur. J. Oper. Res. 215:57-69. The score is this project's own.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import inf
from operator import itemgetter

from furbelow.named import NamedTuple
from furbelow.s4_cut.panels.rectangles_skyline import Stock, floor, raised

Laid = list[tuple[int, int, int, bool]]  # rectangle, x, y, lies on its side
Spend = Callable[[int], bool]  # books so much work and says whether any is left
# xs, ys, bits left, waste, gain so far, rank of the narrowest width left, the plan before, the last move.
Part = tuple[tuple[int, ...], tuple[int, ...], int, int, float, int, "Part | None", tuple[int, int, int] | None]

_score = itemgetter(0)


class Taste(NamedTuple):
    """What one search holds to be promising.

    waste: as a share of a mean rectangle, the waste as bad as one more stretch of skyline.
    tall: how much it counts that tall rectangles are out of the way. bend: 1 in proportion to their
    height, less than 1 less so.
    """

    waste: float
    tall: float
    bend: float


def search(
    rects: Sequence[tuple[int, int]],
    width: int,
    ceiling: int,
    *,
    turns: bool,
    beam: int,
    taste: Taste,
    spend: Spend,
) -> Laid | None:
    """A plan within `width` and `ceiling`, or None when this search finds none (there may be one all the same).

    beam: how many part plans are kept, about. spend: asked once for each rank of part plans.
    """
    count = len(rects)
    area = sum(w * h for w, h in rects)
    budget = width * ceiling - area
    if budget < 0:
        return None
    cost = count / (taste.waste * area)
    gain_of_unit = taste.tall * cost / ceiling**taste.bend
    stock = Stock(rects, turns, lambda w, h: gain_of_unit * w * h ** (1 + taste.bend))
    w, h, ways, widths, no_wider, no_higher = (
        stock.w,
        stock.h,
        stock.ways,
        stock.widths,
        stock.no_wider,
        stock.no_higher,
    )
    gain = [gain_of_unit * w[k] * h[k] ** (1 + taste.bend) for k in range(len(w))]
    ranks: list[Part] = [(*floor(width, ceiling), stock.everything, 0, 0.0, 0, None, None)]
    for placed in range(count):
        keep = max(2, int(beam * (0.4 + 3 * (placed / count) ** 3)))
        looked_at: list[tuple[float, int, Part, int, int, int]] = []
        worst = inf
        before = 0
        for plan in ranks:
            if len(looked_at) > 6 * keep:
                before += len(looked_at) - 3 * keep
                looked_at.sort(key=_score)
                del looked_at[3 * keep :]
                worst = looked_at[-1][0]
            xs, ys, left, waste, gained, narrowest = plan[:6]
            y = min(ys)
            i = ys.index(y)
            gap = xs[i + 1] - xs[i]
            near, far = ys[i - 1] - y, ys[i + 1] - y
            if near < far:
                near, far = far, near
            while not left & no_wider(widths[narrowest]):
                narrowest += 1
            slim = widths[narrowest]
            base = waste * cost + len(ys) - gained
            # Later bits gain less: from here on even one that levels both walls is too bad.
            enough = base - 2 - worst
            fitting = stock.one_of_each(left) & no_wider(gap) & no_higher(ceiling - y)
            while fitting:
                bit = fitting & -fitting
                fitting ^= bit
                k = bit.bit_length() - 1
                if gain[k] < enough:
                    break
                high = h[k]
                rest = gap - w[k]
                score = base - gain[k]
                if rest >= slim:
                    if high != near:
                        score += 1
                elif rest:
                    # What is left beside it is too narrow for anything: it fills up to the lower wall.
                    lost = rest * (high if high < far else far)
                    if waste + lost > budget:
                        continue
                    score += lost * cost
                    if high == near:
                        score -= 1
                    if high == far:
                        score -= 1
                else:
                    if high == near:
                        score -= 1
                    if high == far:
                        score -= 1
                looked_at.append((score, k, plan, narrowest, i, y))
        if not spend(before + len(looked_at)):
            return None
        looked_at.sort(key=_score)
        del looked_at[3 * keep :]
        found = []
        seen = set()
        for _, k, plan, narrowest, i, y in looked_at:
            xs, ys, left, waste, gained = plan[:5]
            x = xs[i] if ys[i - 1] >= ys[i + 1] else xs[i + 1] - w[k]
            nxs, nys = raised(xs, ys, i, x, x + w[k], y + h[k])
            left &= ~ways[k]
            if left:
                # Close every dip that nothing fits any more; it counts as waste.
                while waste <= budget:
                    low = min(nys)
                    j = nys.index(low)
                    gap = nxs[j + 1] - nxs[j]
                    if left & no_wider(gap) & no_higher(ceiling - low):
                        break
                    wall = min(nys[j - 1], nys[j + 1])
                    if wall > ceiling:
                        waste = budget + 1
                        break
                    waste += gap * (wall - low)
                    nxs, nys = raised(nxs, nys, j, nxs[j], nxs[j + 1], wall)
                if waste > budget:
                    continue
            key = (nys, nxs, left)
            if key in seen:
                continue
            seen.add(key)
            gained += gain[k]
            found.append((waste * cost + len(nys) - gained, nxs, nys, left, waste, gained, narrowest, plan, (k, x, y)))
        if not found:
            return None
        found.sort(key=_score)
        ranks = [plan[1:] for plan in found[:keep]]
    laid: Laid = []
    last: Part | None = ranks[0]
    while last is not None:
        if last[7] is not None:
            k, x, y = last[7]
            laid.append((stock.owner[k], x, y, stock.turned[k]))
        last = last[6]
    return laid
