"""The cloth of one tier as columns: lines down the cloth, close enough for the folds to be seen on the sheet.

Folds stand square to the cloth, so their crests lift a hem that flares and lower one that hangs. How many there are and how
deep follows from the model; which is wider and which narrower is chance, the same for the same piece every time.
"""

from __future__ import annotations

from bisect import bisect
from collections.abc import Sequence
from itertools import pairwise, repeat
from math import cos, exp, inf, pi, sin
from random import Random
from typing import NamedTuple

from furbelow.s6_write.picture.form import Form
from furbelow.s6_write.picture.hang import FIRST, Place
from furbelow.s6_write.picture.shape import Dip
from furbelow.s6_write.picture.view import ABOVE, WIDE, NearPoint, Point, View

LEVELS = (0.0, 0.08, 0.17, 0.27, 0.38, 0.52, 0.74, 1.0)  # shares of a tier's depth at which columns have a spot
FEWEST = 5
ROUGH = 6  # columns to a fold of which only the hem is seen
WAVE = 2.0  # the wave of a hem is drawn deeper than a level eye would see it
UPPER = 0.5  # of a tier that another hangs from, the weight below straightens the folds
FADES = 160.0  # mm in which the folds of a tier above are lost
_SEEN_WAVE = WAVE * sin(ABOVE)
SEEN = 0.56 * pi  # from the middle of the view to where cloth is turned away for good


class Column(NamedTuple):
    """spots: from the top of the tier to its hem, at LEVELS: where on the sheet, and how near to the eye in mm.

    phase: where in its fold, 0 to 1. angle: round the body.
    """

    spots: tuple[NearPoint, ...]
    phase: float
    fold: int
    angle: float

    @property
    def hem(self) -> NearPoint:
        return self.spots[-1]

    @property
    def near(self) -> float:
        """How near to the eye the hem is."""
        return self.spots[-1][2]


def row(columns: Sequence[Column], share: float) -> list[Point]:
    """The place of each column that share of the way down."""
    low = min(bisect(LEVELS, share), len(LEVELS) - 1)
    high = low - 1
    t = (share - LEVELS[high]) / (LEVELS[low] - LEVELS[high])
    found = []
    for column in columns:
        (ax, ay, _), (bx, by, _) = column.spots[high], column.spots[low]
        found.append((ax + (bx - ax) * t, ay + (by - ay) * t))
    return found


def place_at(column: Column, share: float) -> Point:
    """The place that share of the way down a column."""
    return row((column,), share)[0]


class Waved(NamedTuple):
    """The edge that a tier hangs from: how far each place on it stands out of the ring, and how much lower it is."""

    angle: float
    out: float
    lower: float


class _Line(NamedTuple):
    """A line down the cloth before it is laid on the sheet. way: from the left of the view, as an angle.

    wave: how far it stands out where folds are as deep as can be; twice: a wave of half that length. The rest: see `Waved`.
    """

    way: float
    angle: float
    phase: float
    fold: int
    wave: float
    twice: float
    out: float
    lower: float


class _Level(NamedTuple):
    """What all lines have in common at a level.

    drop: how much lower cloth hangs for each mm that it stands out; cosine: of its lean. deep: of its folds. fades: what is
    left of the edge above. least: no fold goes further in. sway: how far folded sides lean over. sideways: on the sheet, and
    nearer: towards the eye, for each mm of radius, by sine and cosine of an angle.
    """

    radius: float
    down: float
    drop: float
    cosine: float
    deep: float
    fades: float
    least: float
    sway: float
    sideways: tuple[float, float]
    nearer: tuple[float, float]


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
    waves = [(step / around, sin(2 * pi * step / around), sin(4 * pi * step / around)) for step in range(around)]
    lines: list[_Line] = []
    start, turned = -pi, view.turn + pi
    for fold in range(folds):
        wide, deep = widths[fold] * across, deeps[fold]
        for phase, wave, twice in waves:
            angle = start + phase * wide
            way = (angle + turned) % (2 * pi)
            if -SEEN <= way - pi <= SEEN and -span <= angle <= span:
                _, out, lower = _waved(above, angle)
                lines.append(_Line(way, angle, phase, fold, deep * wave, deep * twice, out, lower))
        start += wide
    columns, edge = _laid(view, levels, lines, dips, floor)
    # Where the form is turned, what is seen of it begins somewhere within the round.
    first = next((at for at, (one, after) in enumerate(pairwise(lines), 1) if after.way < one.way), 0)
    return columns[first:] + columns[:first], edge


def _laid(
    view: View, levels: Sequence[_Level], lines: Sequence[_Line], dips: Sequence[Dip], floor: float
) -> tuple[tuple[Column, ...], tuple[Waved, ...]]:
    """The lines as columns, and the edge at their hems.

    Level by level, so that what is one for all lines of a level is reckoned once: a guide has ten thousand spots.
    """
    if not lines:
        return (), ()
    middle, waist, scale = WIDE / 2, view.waist, view.scale
    lift, fall = scale * sin(ABOVE), scale * cos(ABOVE)
    _, angles, phases, folds, waves, twice, outs, lowers = zip(*lines, strict=True)
    plumb = list(map(sin, angles)), list(map(cos, angles))
    dipped = [[lower_at(dip, angle) for dip in dips] for angle in angles] if any(map(any, dips)) else []
    rows = []
    for share, level in zip(LEVELS, levels, strict=True):
        radius, down, drop, cosine, deep, fades, least, sway, (x_sine, x_cosine), (near_sine, near_cosine) = level
        sines, cosines = plumb
        if sway:
            leaning = [angle - sway * wave for angle, wave in zip(angles, twice, strict=True)]
            sines, cosines = list(map(sin, leaning)), list(map(cos, leaning))
        dip = [sum(above) + share * own for *above, own in dipped] or repeat(0.0, len(lines))
        spots = []
        for wave, above, hung, lower, s, c in zip(waves, outs, lowers, dip, sines, cosines, strict=True):
            out = wave * deep + above * fades
            if out < least:
                out = least
            ring, reached = radius + out * cosine, down + hung * fades + out * drop + lower
            if reached > floor:  # what is longer lies there
                ring, reached = ring + reached - floor, floor
            near = ring * (near_sine * s + near_cosine * c)
            spots.append((middle + ring * (x_sine * s + x_cosine * c), waist + fall * reached + lift * near, near))
        rows.append(spots)
    hem = levels[-1]
    edge = []
    for _, angle, _, _, wave, _, above, hung in lines:
        out = max(wave * hem.deep + above * hem.fades, hem.least)
        edge.append(Waved(angle, out, hung * hem.fades + out * hem.drop))
    return tuple(map(Column, zip(*rows, strict=True), phases, folds, angles)), tuple(edge)


def _levels(view: View, form: Form, places: Sequence[Place], last: bool) -> list[_Level]:
    hem, top = places[-1], places[0]
    share = 1.0 if last else UPPER
    turn, turned = sin(view.turn), cos(view.turn)
    found = []
    for level in LEVELS:
        place = _at(places, level)
        way = (place.below - FIRST) / max(1.0, hem.below - FIRST)
        grown = way**0.75 if way > 0 else 0.0  # from the gathers to the hem
        folded = max(0.0, place.tip - 0.55) * hem.wide * place.radius / max(1.0, hem.radius)
        flat = view.flat(place.radius)
        found.append(
            _Level(
                radius=place.radius,
                down=place.down,
                drop=_SEEN_WAVE * grown * share - sin(place.lean),
                cosine=cos(place.lean),
                deep=grown * share * min(place.deep, 0.2 * place.radius),
                fades=exp(-(place.below - top.below) / FADES),
                least=form.radius(place.down) + 2 - place.radius,
                sway=0.1 * grown * folded / max(30.0, place.radius),
                sideways=(view.scale * (1 + flat) * turned, view.scale * (1 - flat) * turn),
                nearer=(-(1 + flat) * turn, (1 - flat) * turned),
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
