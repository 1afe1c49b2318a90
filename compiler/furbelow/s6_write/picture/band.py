"""What closes the waist: the band with its gathers, the ends of a cord, ties, a button, a slit."""

from __future__ import annotations

from collections.abc import Iterator
from math import cos, pi, sin
from random import Random

from furbelow.s6_write.picture.marks import FINE, OUTLINE, STITCHES
from furbelow.s6_write.picture.shape import Shape, Way
from furbelow.s6_write.picture.tints import CLOTH, INK, LINING, Tint
from furbelow.s6_write.picture.view import View, area, line, track
from furbelow.s6_write.picture.worn import Worn

PROUD = 5.0  # mm that a band stands off what it lies on
GATHERS = 46  # lines on a band that elastic draws in


def band(shape: Shape, view: View) -> Iterator[str]:
    """The band, and over it all that closes it and can be seen from here."""
    if shape.band is None:
        return
    tint = LINING if shape.band.lining else CLOTH
    radius, top, deep = shape.waist / (2 * pi) + PROUD, shape.form.top, shape.band.depth
    around = [pi * step / 24 - pi / 2 - view.turn for step in range(25)]
    upper = [view.spot(angle, radius, top) for angle in around]
    lower = [view.spot(angle, radius + 2, top + deep) for angle in around]
    yield area([*upper, *lower[::-1]], tint.lit)
    yield line([*upper, *lower[::-1], upper[0]], INK, OUTLINE)
    if shape.band.drawn:
        yield _gathered(view, radius, top, deep)
    if shape.band.cord and _faces(view, 0.0):
        yield from _bow(view, 0.0, radius, top + deep / 2, shape.band.cord, tint, wide=7)
    if shape.way and _faces(view, shape.way.at):
        if shape.way.ties:
            yield from _bow(view, shape.way.at, radius, top + deep / 2, shape.way.ties * 0.45, tint, wide=deep * 0.8)
        if shape.way.closed == "button":
            yield _button(view, shape.way.at, radius, top + deep / 2)


def slit(way: Way, shape: Shape, view: View, worn: Worn) -> Iterator[str]:
    """The slit below the band, held shut by it. worn: the layer that it is seen in.

    Of a wrap, the edge that lies over the other.
    """
    if not _faces(view, way.at):
        return
    if way.ties:
        if worn.layer.share > 1:
            yield line([view.spot(way.at - 0.35, place.radius, place.down) for place in worn.outline], INK, OUTLINE)
        return
    out = min(worn.outline, key=lambda place: abs(place.along - way.length)).radius
    top = shape.form.top + (shape.band.depth if shape.band else 0.0)
    above = view.spot(way.at, shape.waist / (2 * pi) + PROUD, top)
    foot = view.spot(way.at, out, top + way.length)
    yield area([(above.x - 6, above.y), (above.x + 10, above.y), foot[:2]], INK, 0.8)
    if way.closed == "zip":
        for side in (-32, 32):
            yield line([(above.x + side, above.y), (foot.x + side, foot.y)], INK, FINE, STITCHES)
    else:
        yield line([(foot.x - 40, foot.y), (foot.x + 40, foot.y)], INK, FINE)


def _faces(view: View, angle: float) -> bool:
    return cos(angle + view.turn) > 0.3


def _gathered(view: View, radius: float, top: float, deep: float) -> str:
    luck, strokes = Random("band"), []
    for step in range(GATHERS):
        angle = 3.0 * step / (GATHERS - 1) - 1.5 - view.turn + 0.03 * luck.random()
        high = view.spot(angle, radius, top + deep * 0.12)
        low = view.spot(angle, radius + 1, top + deep * (0.45 + 0.4 * luck.random()))
        strokes.append(track([high, low]))
    return f'<path d="{"".join(strokes)}" stroke="{INK}" stroke-width="7"/>'


def _bow(view: View, angle: float, radius: float, down: float, ends: float, tint: Tint, wide: float) -> Iterator[str]:
    """A bow at the middle, its ends hanging down."""
    knot, mm = view.spot(angle, radius + 6, down), view.scale
    for side in (-1, 1):
        x, y = knot.x + side * 4 * mm, knot.y
        low = min(ends, 420.0) * mm
        half = wide / 2 * mm
        end = [
            (x - half, y),
            (x + half, y),
            (x + side * 30 * mm + half, y + low),
            (x + side * 30 * mm, y + low + half),
            (x + side * 30 * mm - half, y + low),
        ]
        yield area(end, tint.shade)
        yield line([*end, end[0]], INK, FINE)
    for side in (-1, 1):
        reach, rise = 50 * mm * side, (12 + wide / 2) * mm
        # A leaf that droops a little: narrow at the knot, round at its end.
        leaf = [(sin(pi * step / 14), 1 - cos(pi * step / 14)) for step in range(15)]
        loop = [(knot.x + reach * go / 2, knot.y - rise * up * go / 2 + rise * go / 4) for up, go in leaf]
        loop += [(knot.x + reach * go / 2, knot.y + rise * up * go / 3 + rise * go / 4) for up, go in leaf[::-1]]
        yield area(loop, tint.lit)
        yield line([*loop, loop[0]], INK, FINE)
    size = max(6.0, wide / 2) * mm
    middle = [(knot.x - size, knot.y - size), (knot.x + size, knot.y - size), (knot.x + size, knot.y + size)]
    middle.append((knot.x - size, knot.y + size))
    yield area(middle, tint.lit)
    yield line([*middle, middle[0]], INK, FINE)


def _button(view: View, angle: float, radius: float, down: float) -> str:
    at, size = view.spot(angle - 0.08, radius + 3, down), round(8 * view.scale)
    circle = f"M{at.x - size:.0f} {at.y:.0f}a{size} {size} 0 1 0 {2 * size} 0a{size} {size} 0 1 0 {-2 * size} 0z"
    return f'<path d="{circle}" fill="{CLOTH.inside}" stroke="{INK}" stroke-width="{FINE}"/>'
