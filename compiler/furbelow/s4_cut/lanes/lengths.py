"""Section lengths: the least total that satisfies what the lanes must hold, as a bound and on the grid.

A demand (a, b) asks that a[0] * length[0] + a[1] * length[1] + ... be at least b. There are at most a handful of
sections, so the linear programs are solved by adding one demand at a time: either the best lengths so far already
satisfy it, or the new best lies on its edge, where there is one length less to choose (Seidel, "Small-dimensional
linear programming and convex hulls made easy", Discrete & Computational Geometry 6, 1991).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil, floor

Demand = tuple[tuple[int, ...], int]
Row = tuple[tuple[float, ...], float]

# Lengths are counted in grid steps, so a millionth of a step is nothing that could be cut.
TOLERANCE = 1e-6


def box(sections: int, longest: float) -> list[Row]:
    """The rows that keep every length between 0 and `longest`; they come before all others."""
    unit = [tuple(float(i == j) for j in range(sections)) for i in range(sections)]
    return [(row, 0.0) for row in unit] + [(tuple(-x for x in row), -longest) for row in unit]


def tighten(rows: Sequence[Row], best: tuple[float, ...], more: Sequence[Row]) -> tuple[float, ...] | None:
    """The least lengths once `more` rows are added to `rows`, whose least lengths are `best`; None if none do."""
    for at, (a, b) in enumerate(more):
        if _dot(a, best) < b - TOLERANCE:
            found = _on_row((1.0,) * len(best), [*rows, *more[:at]], (a, b))
            if found is None:
                return None
            best = found
    return best


def minimum(weights: tuple[float, ...], rows: Sequence[Row], upper: float) -> tuple[float, ...] | None:
    """The x with 0 <= x <= upper, a . x >= b for each row (a, b), and the least weights . x; None if there is none."""
    return _minimum(weights, [*box(len(weights), upper), *rows], upper)


def _minimum(weights: tuple[float, ...], rows: Sequence[Row], upper: float) -> tuple[float, ...] | None:
    """As `minimum`, where the box comes first in the rows: its cheapest corner is where to start."""
    size = len(weights)
    best = tuple(0.0 if weight >= 0 else upper for weight in weights)
    for index in range(2 * size, len(rows)):
        a, b = rows[index]
        if _dot(a, best) < b - TOLERANCE:
            found = _on_row(weights, rows[:index], rows[index])
            if found is None:
                return None
            best = found
    return best


def _dot(one: Sequence[float], two: Sequence[float]) -> float:
    # Two and three lengths are by far the most frequent.
    if len(one) == 2:
        return one[0] * two[0] + one[1] * two[1]
    if len(one) == 3:
        return one[0] * two[0] + one[1] * two[1] + one[2] * two[2]
    return sum([p * q for p, q in zip(one, two, strict=True)])


def _on_row(weights: tuple[float, ...], rows: Sequence[Row], row: Row) -> tuple[float, ...] | None:
    """The cheapest x under the rows with a . x = b."""
    a, b = row
    size = len(weights)
    sizes = list(map(abs, a))
    pivot = sizes.index(max(sizes))
    if sizes[pivot] < 1e-9:
        return None
    if size == 1:
        value = b / a[0]
        return (value,) if all(c[0] * value >= d - TOLERANCE for c, d in rows) else None
    return _on_line(weights, rows, a, b, pivot) if size == 2 else _on_plane(weights, rows, a, b, pivot)


def _on_line(
    weights: tuple[float, ...], rows: Sequence[Row], a: tuple[float, ...], b: float, pivot: int
) -> tuple[float, ...] | None:
    other = 1 - pivot
    slope, base = -a[other] / a[pivot], b / a[pivot]
    low, high = 0.0, float("inf")
    for c, d in rows:
        at_pivot = c[pivot]
        per, rest = c[other] + at_pivot * slope, d - at_pivot * base
        if per > 1e-9:
            if rest > low * per:
                low = rest / per
        elif per < -1e-9:
            if rest > high * per:
                high = rest / per
        elif rest > TOLERANCE:
            return None
    if low > high + TOLERANCE:
        return None
    value = low if weights[other] + weights[pivot] * slope >= 0 else high
    return (value, base + slope * value) if pivot else (base + slope * value, value)


def _on_plane(
    weights: tuple[float, ...], rows: Sequence[Row], a: tuple[float, ...], b: float, pivot: int
) -> tuple[float, ...] | None:
    """The same question with one length less, the pivot's, which the others now give."""
    size = len(weights)
    kept = [i for i in range(size) if i != pivot]
    share = [a[i] / a[pivot] for i in kept]
    base = b / a[pivot]

    # The box of the lengths that stay comes first; the pivot's own box is now a demand like any other.
    order = [rows[i] for i in range(2 * size) if i % size != pivot]
    order += [rows[pivot], rows[size + pivot], *rows[2 * size :], (weights, 0.0)]
    reduced: list[Row]
    if size == 3:  # by far the most frequent
        (i, j), (p, q) = kept, share
        reduced = [((c[i] - c[pivot] * p, c[j] - c[pivot] * q), d - c[pivot] * base) for c, d in order]
    else:
        reduced = [
            (tuple([c[i] - c[pivot] * p for i, p in zip(kept, share, strict=True)]), d - c[pivot] * base)
            for c, d in order
        ]
    found = _minimum(reduced.pop()[0], reduced, -rows[size][1])
    if found is None:
        return None
    whole = list(found)
    whole.insert(pivot, base - _dot(share, found))
    return tuple(whole)


def whole_lengths(
    demands: Sequence[Demand], sections: int, least: float, most: int, longest: int
) -> Iterator[tuple[int, ...]]:
    """Whole lengths that meet every demand, those with the least total first; totals from `least` to `most`."""
    for total in range(ceil(least - TOLERANCE), most + 1):
        yield from _with_total(demands, sections, total, longest)


def _with_total(demands: Sequence[Demand], sections: int, total: int, longest: int) -> Iterator[tuple[int, ...]]:
    """Whole lengths that sum to `total`; where the first may lie follows from the demands."""
    if sections == 1:
        if 0 <= total <= longest and all(a[0] * total >= b for a, b in demands):
            yield (total,)
        return
    if sections == 2:
        low, high = max(0, total - longest), min(total, longest)
        for (one, two), b in demands:
            # one * x + two * (total - x) >= b
            per, need = one - two, b - two * total
            if per > 0:
                low = max(low, -(-need // per))
            elif per < 0:
                high = min(high, need // per)
            elif need > 0:
                return
        for length in range(low, high + 1):
            yield length, total - length
        return
    first = tuple(float(i == 0) for i in range(sections))
    everything = (1.0,) * sections
    rows: list[Row] = [*demands, (everything, total), (tuple(-x for x in everything), -total)]
    lowest = minimum(first, rows, longest)
    if lowest is None:
        return
    highest = minimum(tuple(-x for x in first), rows, longest)
    assert highest is not None
    for length in range(ceil(lowest[0] - TOLERANCE), floor(highest[0] + TOLERANCE) + 1):
        rest = [(a[1:], b - a[0] * length) for a, b in demands]
        for others in _with_total(rest, sections - 1, total - length, longest):
            yield length, *others
