"""The cloth of one tier as columns: lines down the cloth, close enough for the folds to be seen on the sheet.

Folds stand square to the cloth, so their crests lift a hem that flares and lower one that hangs. How many there are and how
deep follows from the model; which is wider and which narrower is chance, the same for the same piece every time.
"""

from __future__ import annotations

from bisect import bisect
from collections.abc import Sequence
from math import cos, exp, inf, pi, sin
from random import Random
from typing import NamedTuple

from furbelow.s6_write.picture.form import Form
from furbelow.s6_write.picture.hang import FIRST, Place
from furbelow.s6_write.picture.shape import Dip
from furbelow.s6_write.picture.view import ABOVE, Spot, View

LEVELS = (0.0, 0.08, 0.17, 0.27, 0.38, 0.52, 0.74, 1.0)  # shares of a tier's depth at which columns have a spot
FEWEST = 5
ROUGH = 6  # columns to a fold of which only the hem is seen
WAVE = 2.0  # the wave of a hem is drawn deeper than a level eye would see it
UPPER = 0.5  # of a tier that another hangs from, the weight below straightens the folds
FADES = 160.0  # mm in which the folds of a tier above are lost
_SEEN_WAVE = WAVE * sin(ABOVE)
SEEN = 0.56 * pi  # from the middle of the view to where cloth is turned away for good


class Column(NamedTuple):
    """spots: from the top of the tier to its hem, at LEVELS. phase: where in its fold, 0 to 1. angle: round the body."""

    spots: tuple[Spot, ...]
    phase: float
    fold: int
    angle: float

    @property
    def hem(self) -> Spot:
        return self.spots[-1]

    def at(self, share: float) -> tuple[float, float]:
        """The place on the sheet that share of the way down."""
        low = min(bisect(LEVELS, share), len(LEVELS) - 1)
        high = low - 1
        t = (share - LEVELS[high]) / (LEVELS[low] - LEVELS[high])
        a, b = self.spots[high], self.spots[low]
        return a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t


class Waved(NamedTuple):
    """The edge that a tier hangs from: how far each place on it stands out of the ring, and how much lower it is."""

    angle: float
    out: float
    lower: float


class _Level(NamedTuple):
    radius: float
    down: float
    sine: float  # of its lean
    cosine: float
    grown: float  # 0 at the gathers, 1 at the hem
    fades: float
    deep: float
    least: float  # no fold goes further in
    sway: float  # how far folded sides lean over
    flat: float  # how much wider than deep the ring is


def columns_of(
    view: View,
    form: Form,
    places: Sequence[Place],
    piece: str,
    above: Sequence[Waved],
    *,
    last: bool,
    span: float,
    most: int,
    fine: bool,
    dips: Sequence[Dip] = (),
    floor: float = inf,
) -> tuple[tuple[Column, ...], tuple[Waved, ...]]:
    """The columns that can be seen, and the edge for the tier below.

    above: the edge that the tier hangs from. last: nothing hangs from it. span: how far round it reaches, to each side of
    the middle of the front. most: so many folds at most are drawn. fine: their curves are seen from near, and not only through other cloth.
    dips: of the tiers above and of this one. floor: what would hang below it lies on it.
    """
    levels = _levels(view, form, places, last)
    hem = places[-1]
    folds = min(most, max(FEWEST, round(hem.cloth / hem.wide)))
    luck = Random(piece)
    widths, deeps = [], []
    for _ in range(folds):
        widths.append(0.65 + 0.7 * luck.random())
        deeps.append((0.6 + 0.65 * luck.random()) * min(1.25, widths[-1]))
    across = 2 * pi / sum(widths)
    around = ROUGH if not fine else 16 if folds < 14 else 12 if folds < 20 else 8
    columns, edge, start = [], [], -pi
    for fold in range(folds):
        wide = widths[fold] * across
        for step in range(around):
            phase = step / around
            angle = start + phase * wide
            if abs((angle + view.turn + pi) % (2 * pi) - pi) > SEEN or abs(angle) > span:
                continue
            column, waved = _column(
                view,
                levels,
                angle,
                phase,
                fold,
                deeps[fold],
                _waved(above, angle),
                [lower_at(dip, angle) for dip in dips],
                floor,
            )
            columns.append(column)
            edge.append(waved)
        start += wide
    order = sorted(range(len(columns)), key=lambda i: (columns[i].angle + view.turn + pi) % (2 * pi))
    return tuple(columns[i] for i in order), tuple(sorted(edge))


def _levels(view: View, form: Form, places: Sequence[Place], last: bool) -> list[_Level]:
    hem, top = places[-1], places[0]
    share = 1.0 if last else UPPER
    found = []
    for level in LEVELS:
        place = _at(places, level)
        way = (place.below - FIRST) / max(1.0, hem.below - FIRST)
        grown = way**0.75 if way > 0 else 0.0
        folded = max(0.0, place.tip - 0.55) * hem.wide * place.radius / max(1.0, hem.radius)
        found.append(
            _Level(
                place.radius,
                place.down,
                sin(place.lean),
                cos(place.lean),
                grown * share,
                exp(-(place.below - top.below) / FADES),
                min(place.deep, 0.2 * place.radius),
                form.radius(place.down) + 2 - place.radius,
                0.1 * grown * folded / max(30.0, place.radius),
                view.flat(place.radius),
            )
        )
    return found


def _at(places: Sequence[Place], share: float) -> Place:
    """The place that share of the way down a tier."""
    at = share * (len(places) - 1)
    high = min(int(at), len(places) - 2)
    above, below, t = places[high], places[high + 1], at - high
    return above._replace(
        below=above.below + (below.below - above.below) * t,
        radius=above.radius + (below.radius - above.radius) * t,
        down=above.down + (below.down - above.down) * t,
        lean=above.lean + (below.lean - above.lean) * t,
        deep=above.deep + (below.deep - above.deep) * t,
        tip=above.tip + (below.tip - above.tip) * t,
    )


def _column(
    view: View,
    levels: Sequence[_Level],
    angle: float,
    phase: float,
    fold: int,
    deep: float,
    above: Waved,
    dips: Sequence[float],
    floor: float,
) -> tuple[Column, Waved]:
    wave, twice = deep * sin(2 * pi * phase), deep * sin(4 * pi * phase)
    spots, out, lower = [], 0.0, 0.0
    _, above_out, above_lower = above
    hung, own = sum(dips[:-1]), sum(dips[-1:])
    for share, (radius, down, sine, cosine, grown, fades, deepest, least, sway, flat) in zip(
        LEVELS, levels, strict=True
    ):
        out = max(wave * grown * deepest + above_out * fades, least)
        lower = above_lower * fades + out * (_SEEN_WAVE * grown - sine)
        at = angle - sway * twice
        reached = down + lower + hung + share * own
        lies = max(0.0, reached - floor)
        spots.append(view.place(sin(at), cos(at), flat, radius + out * cosine + lies, reached - lies))
    return Column(tuple(spots), phase, fold, angle), Waved(angle, out, lower)


def lower_at(dip: Dip, angle: float) -> float:
    """How much lower a bottom that dips is at an angle round the body than at the sides."""
    front, back = dip
    return (front - back) / 2 * cos(angle) + (front + back) / 2 * cos(angle) ** 2


def _waved(edge: Sequence[Waved], angle: float) -> Waved:
    """The edge at this angle."""
    if not edge:
        return Waved(angle, 0.0, 0.0)
    after = bisect(edge, (angle,))
    a, b = edge[max(after - 1, 0)], edge[min(after, len(edge) - 1)]
    t = (angle - a.angle) / (b.angle - a.angle) if b.angle > a.angle else 0.0
    return Waved(angle, a.out + (b.out - a.out) * t, a.lower + (b.lower - a.lower) * t)
