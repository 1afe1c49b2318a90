"""Lines that tell cloth from a shape: gathers, creases, the edges of folds, and what is sewn on."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from random import Random

from furbelow.garment.lying import Lies
from furbelow.s6_write.picture.folds import Column, place_at, row
from furbelow.s6_write.picture.ribbons import Ribbon
from furbelow.s6_write.picture.shape import Mark, Tier
from furbelow.s6_write.picture.tints import INK, TRIM
from furbelow.s6_write.picture.view import NearPoint, Point, area, line, track

OUTLINE, SEAM, FINE = 11, 9, 6
STITCHES = "26 18"
GATHERED = 1.05  # fuller than this, gathers can be seen
SHALLOW = 60.0  # mm: a tier so low shows its gathers down to the middle


def gathers(columns: Sequence[Column], tier: Tier, luck: Random) -> str:
    """Short strokes below a gathered seam: closer and longer the fuller it is. Nothing where the cloth lies flat."""
    full = tier.fullness
    if full <= GATHERED or not columns:
        return ""
    marks, last = [], float("-inf")
    apart, shallow, longest = max(28.0, 85 - 17 * full), tier.depth <= SHALLOW, min(1.6, 0.55 + 0.35 * full)
    for a, b in pairwise(columns):
        top, after = a.spots[0], b.spots[0]
        for half in (0.0, 0.5):
            drawn = 0.0 if shallow else luck.random()
            x, y = _between(top, after, half)
            if abs(x - last) >= apart:
                last = x
                deep = 0.5 if shallow else (0.05 + 0.22 * drawn**1.6) * longest
                deep = min(0.75, max(12 / tier.depth, deep))
                foot = _between(place_at(a, deep), place_at(b, deep), half)
                marks.append(f"M{x - 6:.0f} {y:.0f}h13L{foot[0]:.0f} {foot[1]:.0f}z")
    return _strokes(marks)


def creases(columns: Sequence[Column], luck: Random) -> str:
    """Soft lines in the hollows of the folds."""
    marks = []
    for column in columns:
        if abs(column.phase - 0.75) < 0.04 and luck.random() < 0.8:
            high = 0.3 + 0.45 * luck.random()
            top, middle, foot = (place_at(column, share) for share in (high, (high + 1) / 2, 0.985))
            marks.append(track([top, (middle[0] - 5, middle[1]), foot, (middle[0] + 5, middle[1])], closed=True))
    return _strokes(marks)


def pleats(columns: Sequence[Column]) -> str:
    """The folded edge of each pleat, from the band down."""
    marks = []
    for a, b in pairwise(columns):
        if a.fold != b.fold:
            *way, (x, y) = (place_at(b, share) for share in (0.0, 0.3, 0.6, 1.0))
            marks.append(track([*way, (x + 4, y)]))
    return f'<path d="{"".join(marks)}" stroke="{INK}" stroke-width="{FINE}"/>' if marks else ""


def fold_edges(ribbon: Ribbon, full: float, luck: Random) -> Iterator[str]:
    """Where cloth folds over, a line that tapers upwards."""
    for turns, column in ((ribbon.left, ribbon.columns[0]), (ribbon.right, ribbon.columns[-1])):
        rise = 0.15 + 0.5 * luck.random() * max(0.2, min(1.0, full - 0.6))
        if turns:
            way = [place_at(column, rise + (1 - rise) * step / 3) for step in range(4)]
            left = [(x - 2.2 * step, y) for step, (x, y) in enumerate(way)]
            right = [(x + 2.2 * step, y) for step, (x, y) in enumerate(way)]
            yield area([*left, *right[:0:-1]], INK, 0.8)


def sewn_on(columns: Sequence[Column], marks: Sequence[Mark], inside: bool = False) -> Iterator[str]:
    """What lies along a run of cloth: the stitching of a hem, trims, tucks, hoops, ruches."""
    for mark in marks:
        near, far = max(0.0, mark.near), min(1.0, mark.far)
        if near >= 1 or far <= 0:
            continue
        top = row(columns, near)
        if mark.kind is Lies.TRIM:
            foot = row(columns, 1.0 if far > 0.97 else far)
            yield area([*top, *foot[::-1]], TRIM.inside if inside else TRIM.lit, 0.85)
        elif inside:
            continue
        elif mark.kind is Lies.HEM:
            yield line(top, INK, FINE, STITCHES)
        elif mark.kind is Lies.TUCK:
            yield line(row(columns, far), INK, FINE)
        elif mark.kind is Lies.STEEL:
            for share in (near, far):
                yield line(row(columns, share), INK, FINE, STITCHES)
        elif mark.kind is Lies.STRIP:
            yield from _ruche(columns, near, far)


def _ruche(columns: Sequence[Column], near: float, far: float) -> Iterator[str]:
    middle, reach = (near + far) / 2, (far - near) / 2
    upper = [place_at(column, middle - reach * (1.0 if at % 2 else 0.75)) for at, column in enumerate(columns)]
    lower = [place_at(column, middle + reach * (0.75 if at % 2 else 1.0)) for at, column in enumerate(columns)]
    yield area([*upper, *lower[::-1]], TRIM.lit, 0.6)
    yield line(upper, INK, FINE)
    yield line(lower, INK, FINE)
    strokes = (track([high, low]) for high, low in zip(upper[::2], lower[::2], strict=True))
    yield f'<path d="{"".join(strokes)}" stroke="{INK}" stroke-width="4"/>'


def _between(a: Point | NearPoint, b: Point | NearPoint, share: float) -> Point:
    return a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share


def _strokes(marks: Sequence[str]) -> str:
    return f'<path d="{"".join(marks)}" fill="{INK}" fill-opacity="0.75"/>' if marks else ""
