"""How a layer hangs: its outline from the waist to the hem, found by letting its weight and its folds come to rest.

The layer is taken as a strip that runs down the cloth and bends under its own weight (EI theta'' = W sin theta - H cos theta,
both ends free; Love 1927, article 262). Folds that are squeezed push the ring of cloth outwards, and pull it back where
nothing is left to unfold, so no ring gets wider than its cloth. Folds merge down the cloth, their width growing with the
root of the way from the gathers: Cerda and Mahadevan, Geometry and Physics of Wrinkling, Physical Review Letters 90, 2003;
their factor from memory. What is marked "by eye" was chosen until outlines looked right: no test of the model.

All in mm and grams; forces in grams of weight.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import atan2, exp, hypot, pi, sin, sqrt

from furbelow.garment.lying import Lies
from furbelow.named import NamedTuple
from furbelow.s6_write.picture.fold import Fold, folded
from furbelow.s6_write.picture.form import Form
from furbelow.s6_write.picture.shape import Layer, Tier

SPACING = 20.0  # between the places at which the outline is worked out
NARROW = 0.65  # fold width against that of a sheet held flat at its edge; by eye
SPRING = 0.5  # of the bending stiffness that springs back after gathering and wear; by eye
OPEN = 1.10  # fullness that no fold opens to by itself, for creases and friction; by eye
HOLD = 0.15  # by how much each further like layer holds the folds; by eye
FLUTES = 30.0  # stiffening of a strip by its own folds, for each time that it is fuller; by eye
FIRST = 12.0  # below a gathering, where folds begin to merge
CONES = 4.0  # folds of cloth that is not gathered are wider by this; by eye
STEEPEST = 1.45
CLOSE = 3.0  # how near cloth comes to the body
LAPS, STILL = 60, 0.004  # at most so many rounds, or until no angle moves by more than that


class Place(NamedTuple):
    """One place down the outline.

    along: from the top of the layer, down the cloth; below: from the gathers of its tier, and a little more.
    radius, down: where it hangs, `down` from the waist. lean: against the plumb line. wide: cloth in one fold;
    deep: half of its depth; tip: the steepest angle of its folds.
    """

    tier: int
    along: float
    below: float
    cloth: float
    radius: float
    down: float
    lean: float
    wide: float
    deep: float
    tip: float


class _Station(NamedTuple):
    """What of a place does not change while the layer comes to rest."""

    tier: int
    along: float
    below: float
    step: float  # from the place above
    cloth: float
    weight: float  # that hangs below it
    stiff: float
    wide: float
    push: float  # of folds that have just begun
    hoop: tuple[float, float] | None  # the next one: how far down the layer, its radius
    least: float  # fullness that is never opened


_Laid = tuple[float, float, float, Fold]  # radius, how far down, fullness there, and the fold that it stands in


def hang(
    layer: Layer, form: Form, waist: float, top: float, inside: Callable[[float], float] | None = None
) -> tuple[Place, ...]:
    """The outline of a layer, from the top down.

    waist: its girth at the top. top: how far below the waist it begins. inside: how far out what lies under it stands,
    at each height.
    """
    stations = _stations(layer)
    lean = [0.1] * len(stations)
    for lap in range(LAPS):
        new = _bent(stations, _laid(stations, lean, form, waist, top, inside, slack=1.1), layer.alike)
        damp = 0.4 - 0.25 * lap / LAPS
        moved = 0.0
        for at, angle in enumerate(new):
            change = damp * (max(0.0, min(STEEPEST, angle)) - lean[at])
            lean[at] += change
            moved = max(moved, abs(change))
        if moved < STILL:
            break
    laid = _laid(stations, lean, form, waist, top, inside, slack=1.0)
    return tuple(
        [
            Place(at.tier, at.along, at.below, at.cloth, radius, down, angle, at.wide, fold.deep * at.wide, fold.tip)
            for at, angle, (radius, down, _, fold) in zip(stations, lean, laid, strict=True)
        ]
    )


def _stations(layer: Layer) -> list[_Station]:
    tiers = layer.tiers
    rows: list[tuple[int, Tier, float, float, float]] = []  # tier, down it, from the place above
    for number, tier in enumerate(tiers):
        count = max(4, round(tier.depth / SPACING))
        rows += [
            (number, tier, tier.depth * i / count, tier.depth / count if i else 0.0, 0.0) for i in range(count + 1)
        ]
    cloth = [tier.top + (tier.bottom - tier.top) * down / tier.depth for _, tier, down, _, _ in rows]
    weights = [0.0] * len(rows)
    weights[-1] = cloth[-1] * tiers[-1].grams * (2 + 0.8 * layer.trim)
    for i in range(len(rows) - 2, -1, -1):
        below = rows[i + 1]
        weights[i] = weights[i + 1] + below[3] * (cloth[i] + cloth[i + 1]) / 2 * below[1].grams
    tension = {number: weights[i] / cloth[i] for i, (number, _, down, _, _) in enumerate(rows) if down == 0}
    found, along = [], 0.0
    hoops = _hoops(layer)
    for i, (number, tier, down, step, _) in enumerate(rows):
        along += step
        bending = tier.grams * tier.bending**3
        spread = NARROW * 2 * sqrt(pi) * (bending / max(tension[number], 1e-9)) ** 0.25
        below_ = down + FIRST
        if tier.gathered or number == 0:
            wide = min(spread * sqrt(below_), cloth[i] / 5)
        else:
            wide = cloth[i] / max(5, round(tier.bottom / (CONES * spread * sqrt(tier.depth))))
        stiff = bending * cloth[i] * (1 + FLUTES * min(2.0, max(0.0, tier.fullness - 1)))
        push = bending * (2 * pi / wide) ** 2
        least = OPEN if tier.gathered else 1.01
        hoop = next((each for each in hoops if along <= each[0]), None)
        found.append(_Station(number, along, below_, step, cloth[i], weights[i], stiff, wide, push, hoop, least))
    return found


def _hoops(layer: Layer) -> list[tuple[float, float]]:
    """How far down the layer each hoop lies, and its radius: it opens the cloth to a full round."""
    found, start = [], 0.0
    for tier in layer.tiers:
        for mark in tier.marks:
            if mark.kind is Lies.STEEL:
                share = (mark.near + mark.far) / 2
                found.append((start + share * tier.depth, (tier.top + (tier.bottom - tier.top) * share) / (2 * pi)))
        start += tier.depth
    return sorted(found)


def _laid(
    stations: Sequence[_Station],
    lean: Sequence[float],
    form: Form,
    waist: float,
    top: float,
    inside: Callable[[float], float] | None,
    slack: float,
) -> list[_Laid]:
    """The outline at these angles, kept outside what is under it and inside the length of its own cloth."""
    laid: list[_Laid] = []
    radius, down, deep = waist / (2 * pi), top, 0.0
    high, upper = 0.0, radius  # where the cloth was held last: at a seam, by a hoop
    for at, (_, along, below, step, cloth, _, _, wide, _, hoop, least) in enumerate(stations):
        before = radius
        if not step or (hoop and at and stations[at - 1].hoop != hoop):
            high, upper = along - step, radius
        # From there to the next hoop cloth lies on a straight line.
        line = upper + (hoop[1] - upper) * (along - high) / max(1.0, hoop[0] - high) if hoop else 0.0
        body = form.radius(down) + CLOSE
        under = max(body, line, inside(down) if inside else 0.0) + deep * min(1.0, (below - FIRST) / 100)
        radius = min(max(before + sin(lean[at]) * step, under), max(slack * cloth / (2 * pi * least), body))
        if at:
            out = max(-step, min(step, radius - before))
            down += sqrt(max(0.0, step * step - out * out))
            radius = before + out
        fullness = cloth / (2 * pi * radius)
        fold = folded(fullness)
        deep = fold.deep * wide
        laid.append((radius, down, fullness, fold))
    return laid


def _bent(stations: Sequence[_Station], laid: Sequence[_Laid], alike: int) -> list[float]:
    """The angles at which the strip would come to rest under these forces: a linear step of its equation."""
    hold, last = min(1.0, SPRING * (1 + HOLD * (alike - 1))), len(stations) - 1
    thrust = []
    for station, (_, _, fullness, fold) in zip(stations, laid, strict=True):
        # Crowded folds are hairpins: they push harder than the elastica says.
        load = max(fold.load, fullness * fullness / pi)
        thrust.append(hold * station.push * load * (1 - exp(min(2.0, (station.least - fullness) / 0.05))))
    outward = [0.0] * (last + 1)
    for at in range(last - 1, -1, -1):
        outward[at] = outward[at + 1] + pi * stations[at + 1].step * (thrust[at] + thrust[at + 1])
    slope, shift = [0.0] * (last + 1), [0.0] * (last + 1)
    for at, station in enumerate(stations):
        force, way = hypot(outward[at], station.weight), atan2(outward[at], station.weight)
        above = _link(station.stiff, station.step) if at else 0.0
        below = _link(station.stiff, stations[at + 1].step) if at < last else 0.0
        whole = force + above + below - (above * slope[at - 1] if at else 0.0)
        slope[at] = below / whole
        shift[at] = (force * way + (above * shift[at - 1] if at else 0.0)) / whole
    angles, after = [0.0] * (last + 1), 0.0
    for at in range(last, -1, -1):
        after = angles[at] = shift[at] + slope[at] * after
    return angles


def _link(stiff: float, step: float) -> float:
    return stiff / (step * step) if step else 1e12


def standing_out(outline: Sequence[Place]) -> Callable[[float], float]:
    """How far out a layer stands at each height below the waist, for the next one out; 0 below its hem."""

    def out(down: float) -> float:
        if down > outline[-1].down + 5:
            return 0.0
        for high, low in zip(outline, outline[1:], strict=False):
            if down <= low.down:
                if low.down <= high.down:
                    return high.radius
                return high.radius + (low.radius - high.radius) * (max(down, high.down) - high.down) / (
                    low.down - high.down
                )
        return outline[-1].radius

    return out
