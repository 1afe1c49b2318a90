"""The garment on its form as SVG: the form, the layers from the inside out, the band."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import pi

from furbelow.s6_write.picture.band import band, slit
from furbelow.s6_write.picture.body import body
from furbelow.s6_write.picture.form import ABOVE
from furbelow.s6_write.picture.hang import Place
from furbelow.s6_write.picture.layer import Sheet, layer
from furbelow.s6_write.picture.shape import Shape
from furbelow.s6_write.picture.view import View, sheet
from furbelow.s6_write.picture.worn import Worn

WIDEST, LONGEST, LARGEST = 3800.0, 4550.0, 6.2  # units that the garment may take, and units a mm at most
ROOM = 210.0  # mm above and below the garment
HEAVIEST = 58_000  # letters of a drawing
FOLDS = (140, 100, 70, 40)  # that are drawn in all: fewer where the drawing gets too heavy
FEW = 6  # in each tier at least
MOST = 26
MOSTLY = 0.6  # of a sheet: covered so far it is seen through others or below them


def drawn(shape: Shape, layers: Sequence[Worn], turn: float = 0.0, *, peeled: bool = False) -> str:
    """The garment as SVG, no larger than a page can bear.

    turn: of the form, in radians: 0 from the front. peeled: each layer is cut away a little further than the one under it.
    """
    view = _view(shape, layers, turn)
    svg = ""
    for folds in FOLDS:
        svg = _sheet(shape, layers, view, folds, peeled)
        if len(svg) < HEAVIEST:
            break
    return svg


def _sheet(shape: Shape, layers: Sequence[Worn], view: View, folds: int, peeled: bool) -> str:
    marks = [*body(shape.form, view)]
    for each in _sheets(layers, folds, peeled):
        marks += layer(each, shape.form, view)
    if shape.way:
        marks += slit(shape.way, shape, view, layers[-1])
    marks += band(shape, view)
    return sheet([mark for mark in marks if mark])


def _view(shape: Shape, layers: Sequence[Worn], turn: float) -> View:
    low = max(each.outline[-1].down + sum(max(0.0, *tier.dip) for tier in each.layer.tiers) for each in layers)
    lies = max(0.0, low - shape.form.floor) if shape.dips else 0.0
    long = low - lies
    wide = max(place.radius + place.deep for each in layers for place in list(each.sheets)[-1]) + lies
    scale = min(WIDEST / (2.15 * wide), LONGEST / (long + ROOM), LARGEST)
    return View(scale, scale * (ABOVE + 27) + 60, shape.form.hips, turn)


def _covers(outer: Sequence[Place], inner: Sequence[Place]) -> bool:
    """Whether one sheet lies over most of another."""
    top, foot = max(outer[0].down, inner[0].down), min(outer[-1].down, inner[-1].down)
    return foot - top > MOSTLY * (inner[-1].down - inner[0].down)


def _sheets(layers: Sequence[Worn], folds: int, peeled: bool) -> Iterator[Sheet]:
    """Every sheet of cloth that can be seen, the innermost first."""
    every = [(each.layer, outline) for each in layers for outline in each.sheets]
    outer = len(every) - 1
    covered = [
        not peeled and any(_covers(over, outline) for _, over in every[at + 1 :])
        for at, (_, outline) in enumerate(every)
    ]
    tiers = sum(len(each.tiers) for (each, _), under in zip(every, covered, strict=True) if not under)
    most = max(FEW, min(MOST, folds // tiers))
    thin = min(16, 8 + 56 // len(every))
    for number, (cloth, outline) in enumerate(every):
        under = covered[number]
        cut = 1.0 - 1.35 * number / outer if peeled and number else pi
        yield Sheet(cloth, outline, number, under, min(most, thin) if under else most, cut)
