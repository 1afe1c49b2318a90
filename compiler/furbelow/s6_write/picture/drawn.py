"""The garment on its form, drawn: from the inside out, each layer from the hem up."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import pi

from furbelow.s6_write.picture.form import ABOVE, Form
from furbelow.s6_write.picture.shape import Shape
from furbelow.s6_write.picture.tints import CLOTH, FORM, FORM_LINE, INK, LINING
from furbelow.s6_write.picture.view import HIGH, WIDE, Spot, View, area, line, sheet
from furbelow.s6_write.picture.worn import Worn

WIDEST, LONGEST, LARGEST = 3800.0, 4550.0, 6.2  # units that the garment may take, and units a mm at most


def drawn(shape: Shape, layers: Sequence[Worn], turn: float = 0.0) -> str:
    """The garment as SVG. turn: of the form to the right, in radians; 0 from the front."""
    view = _view(shape, layers, turn)
    marks = [*_body(shape.form, view)]
    for each in layers:
        marks += _layer(each, view)
    return sheet(marks)


def _view(shape: Shape, layers: Sequence[Worn], turn: float) -> View:
    long = max((each.outline[-1].down for each in layers), default=400.0)
    wide = max((each.outline[-1].radius + each.outline[-1].deep for each in layers), default=200.0)
    scale = min(WIDEST / (2.15 * wide), LONGEST / (long + 210), LARGEST)
    return View(scale, scale * (ABOVE + 27) + 60, shape.form.hips, turn)


def _body(form: Form, view: View) -> Iterator[str]:
    crotch = form.hip_depth + 70
    low = min(form.floor * 0.93, (HIGH - 100 - view.waist) / view.scale)
    side = pi / 2 - view.turn
    trunk = [view.spot(side, form.radius(down), down) for down in range(-int(ABOVE), int(crotch), 15)]
    right = [(spot.x, spot.y) for spot in trunk]
    for share in (0.25, 0.5, 0.75, 1.0):
        down = crotch + (low - crotch) * share
        at = view.spot(side, form.radius(crotch) * (1 - 0.42 * share**0.8), 0)
        right.append((at.x, view.spot(0, 0, down).y))
    left = [(WIDE - x, y) for x, y in right]
    yield area([*right, *left[::-1]], FORM)
    yield line(right, FORM_LINE, 8)
    yield line(left, FORM_LINE, 8)


def _layer(worn: Worn, view: View) -> Iterator[str]:
    tint = LINING if worn.layer.lining else CLOTH
    round_ = [pi * step / 24 - pi / 2 - view.turn for step in range(25)]
    outline = worn.outline

    def ring(at: int) -> list[Spot]:
        return [view.spot(angle, outline[at].radius, outline[at].down) for angle in round_]

    right = [view.spot(round_[-1], place.radius, place.down) for place in outline]
    left = [view.spot(round_[0], place.radius, place.down) for place in outline]
    yield area([*left, *ring(-1), *right[::-1], *ring(0)[::-1]], tint.lit, 0.5 if worn.layer.sheer else 1.0)
    for at, place in enumerate(outline):
        if at == len(outline) - 1 or outline[at + 1].tier != place.tier:
            yield line(ring(at), INK, 9)
    yield line(left, INK, 11)
    yield line(right, INK, 11)
