"""The cloth of one tier as columns: lines down the cloth, close enough for the folds to be seen on the sheet.

Folds stand square to the cloth, so their crests lift a hem that flares and lower one that hangs. How many there are and how
deep follows from the model; which is wider and which narrower is chance, the same for the same piece every time.
"""

from __future__ import annotations

from bisect import bisect
from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise, repeat
from math import cos, exp, inf, pi, sin
from random import Random

from furbelow.named import NamedTuple
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
    high, low, t = _between(share)
    found = []
    for column in columns:
        (ax, ay, _), (bx, by, _) = column.spots[high], column.spots[low]
        found.append((ax + (bx - ax) * t, ay + (by - ay) * t))
    return found


def place_at(column: Column, share: float) -> Point:
    """The place that share of the way down a column."""
    high, low, t = _between(share)
    (ax, ay, _), (bx, by, _) = column.spots[high], column.spots[low]
    return ax + (bx - ax) * t, ay + (by - ay) * t


def _between(share: float) -> tuple[int, int, float]:
    """The levels above and below that share of the way down, by their places, and how far from the one to the other."""
    low = min(bisect(LEVELS, share), len(LEVELS) - 1)
    return low - 1, low, (share - LEVELS[low - 1]) / (LEVELS[low] - LEVELS[low - 1])


class Waved(NamedTuple):
    """The edge that a tier hangs from: how far each place on it stands out of the ring, and how much lower it is."""

    angle: float
    out: float
    lower: float


_LEVEL = Waved(0.0, 0.0, 0.0)  # any place of a level edge


class _Lines(NamedTuple):
    """Lines down the cloth before they are laid on the sheet, each field with a value for each of them.

    waves: how far each stands out where folds are as deep as can be; twices: a wave of half that length. phases, folds,
    angles: see `Column`. sines, cosines: of the angles. first: the one that lies furthest left.
    """

    angles: tuple[float, ...]
    phases: tuple[float, ...]
    folds: tuple[int, ...]
    waves: tuple[float, ...]
    twices: tuple[float, ...]
    sines: tuple[float, ...]
    cosines: tuple[float, ...]
    first: int


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


@lru_cache(maxsize=16)  # the outer layers stand alike where those under them are peeled back
def columns_of(
    view: View,
    form: Form,
    places: tuple[Place, ...],
    piece: str,
    above: tuple[Waved, ...],
    *,
    last: bool,
    span: float,
    most: int,
    fine: bool,
    dips: tuple[Dip, ...] = (),
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
    around = ROUGH if not fine else 12 if folds < 14 else 8
    lines = _lines(piece, folds, around, view.turn, span)
    if not lines.angles:
        return (), ()
    hangs = [_waved(above, angle) for angle in lines.angles] if above else [_LEVEL] * len(lines.angles)
    columns = _laid(view, levels, lines, hangs, dips, floor)
    return columns[lines.first :] + columns[: lines.first], () if last else _edge(levels[-1], lines, hangs)


@lru_cache(maxsize=32)  # where folds lie is the same for most wearers; how deep they are is not
def _lines(piece: str, folds: int, around: int, turn: float, span: float) -> _Lines:
    """The lines that can be seen, so many to a fold, all round the form. turn: of the form. span: see `columns_of`."""
    luck = Random(piece)
    widths, deeps = [], []
    for _ in range(folds):
        widths.append(0.65 + 0.7 * luck.random())
        deeps.append((0.6 + 0.65 * luck.random()) * min(1.25, widths[-1]))
    across = 2 * pi / sum(widths)
    waves = [(step / around, sin(2 * pi * step / around), sin(4 * pi * step / around)) for step in range(around)]
    ways: list[float] = []  # from the left of the view, as angles
    lines: list[tuple[float, float, int, float, float]] = []
    start, turned = -pi, turn + pi
    for fold in range(folds):
        wide, deep = widths[fold] * across, deeps[fold]
        for phase, wave, twice in waves:
            angle = start + phase * wide
            way = (angle + turned) % (2 * pi)
            if -SEEN <= way - pi <= SEEN and -span <= angle <= span:
                ways.append(way)
                lines.append((angle, phase, fold, deep * wave, deep * twice))
        start += wide
    if not lines:
        return _Lines((), (), (), (), (), (), (), 0)
    # Where the form is turned, what is seen of it begins somewhere within the round.
    first = next((at for at, (one, after) in enumerate(pairwise(ways), 1) if after < one), 0)
    angles, phases, numbers, stood, twices = zip(*lines, strict=True)
    sines, cosines = tuple(map(sin, angles)), tuple(map(cos, angles))
    return _Lines(angles, phases, numbers, stood, twices, sines, cosines, first)


def _laid(
    view: View,
    levels: Sequence[_Level],
    lines: _Lines,
    above: Sequence[Waved],
    dips: Sequence[Dip],
    floor: float,
) -> tuple[Column, ...]:
    """The lines as columns. above: where each line hangs from the tier above.

    Level by level, so that what is one for all lines of a level is reckoned once: a guide has ten thousand spots.
    """
    middle, waist, scale = WIDE / 2, view.waist, view.scale
    lift, fall = scale * sin(ABOVE), scale * cos(ABOVE)
    angles, waves = lines.angles, lines.waves
    _, outs, lowers = zip(*above, strict=True)
    dipped = [[lower_at(dip, angle) for dip in dips] for angle in angles] if any(map(any, dips)) else []
    rows = []
    for share, level in zip(LEVELS, levels, strict=True):
        radius, down, drop, cosine, deep, fades, least, sway, (x_sine, x_cosine), (near_sine, near_cosine) = level
        sines, cosines = lines.sines, lines.cosines
        if sway:
            leaning = [angle - sway * wave for angle, wave in zip(angles, lines.twices, strict=True)]
            sines, cosines = tuple(map(sin, leaning)), tuple(map(cos, leaning))
        dip = [sum(upper) + share * own for *upper, own in dipped] or repeat(0.0, len(angles))
        spots = []
        for wave, stood, hung, lower, s, c in zip(waves, outs, lowers, dip, sines, cosines, strict=True):
            out = wave * deep + stood * fades
            if out < least:
                out = least
            ring, reached = radius + out * cosine, down + hung * fades + out * drop + lower
            if reached > floor:  # what is longer lies there
                ring, reached = ring + reached - floor, floor
            near = ring * (near_sine * s + near_cosine * c)
            spots.append((middle + ring * (x_sine * s + x_cosine * c), waist + fall * reached + lift * near, near))
        rows.append(spots)
    return tuple(map(Column, zip(*rows, strict=True), lines.phases, lines.folds, angles))


def _edge(hem: _Level, lines: _Lines, above: Sequence[Waved]) -> tuple[Waved, ...]:
    """The edge at the hems of the lines, for the tier that hangs from it."""
    edge = []
    for angle, wave, (_, stood, hung) in zip(lines.angles, lines.waves, above, strict=True):
        out = max(wave * hem.deep + stood * hem.fades, hem.least)
        edge.append(Waved(angle, out, hung * hem.fades + out * hem.drop))
    return tuple(edge)


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
    after = bisect(edge, (angle,))
    a, b = edge[max(after - 1, 0)], edge[min(after, len(edge) - 1)]
    t = (angle - a.angle) / (b.angle - a.angle) if b.angle > a.angle else 0.0
    return Waved(angle, a.out + (b.out - a.out) * t, a.lower + (b.lower - a.lower) * t)
