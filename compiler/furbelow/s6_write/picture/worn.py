"""The layers as they are worn: each over what lies under it, from the form outwards."""

from __future__ import annotations

from collections.abc import Iterator
from math import exp

from furbelow.named import NamedTuple
from furbelow.s6_write.picture.hang import FIRST, Place, hang, standing_out
from furbelow.s6_write.picture.shape import Layer, Shape

PACK = 0.30  # share of half a fold's depth by which each further like layer stands out; by eye
GROWS, LASTS = 150.0, 400.0  # mm below gathers in which that comes about, and below a seam in which it is lost


class Worn(NamedTuple):
    """A layer and its outline."""

    layer: Layer
    outline: tuple[Place, ...]

    @property
    def sheets(self) -> Iterator[tuple[Place, ...]]:
        """The outlines of all that lie in it alike, the innermost first."""
        out = _room(self.outline)
        for number in range(self.layer.alike):
            yield tuple(
                place._replace(radius=place.radius + number * more)
                for place, more in zip(self.outline, out, strict=True)
            )


def worn(shape: Shape) -> tuple[Worn, ...]:
    """Every layer of the garment, the innermost first."""
    found: list[Worn] = []
    inside = None
    for layer in reversed(shape.layers):
        outline = hang(layer, shape.form, shape.waist, shape.form.top + layer.start, inside)
        found.append(Worn(layer, outline))
        inside = standing_out(list(found[-1].sheets)[-1])
    return tuple(found)


def _room(outline: tuple[Place, ...]) -> list[float]:
    """How much room each place of a layer needs for the next like one: its folds nest by half."""
    room, carried = [], 0.0
    for place, after in zip(outline, (*outline[1:], None), strict=True):
        way = place.below - FIRST
        own = max(place.deep * min(1.0, way / GROWS), carried * exp(-way / LASTS))
        room.append(PACK * own)
        if after is None or after.tier != place.tier:
            carried = own
    return room
