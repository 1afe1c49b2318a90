"""The layers as they are worn: each over what lies under it, from the form outwards."""

from __future__ import annotations

from typing import NamedTuple

from furbelow.s6_write.picture.hang import Place, hang, standing_out
from furbelow.s6_write.picture.shape import Layer, Shape

PACK = 0.30  # share of half a fold's depth by which each further like layer stands out; by eye


class Worn(NamedTuple):
    """A layer and its outline."""

    layer: Layer
    outline: tuple[Place, ...]


def worn(shape: Shape) -> tuple[Worn, ...]:
    """Every layer of the garment, the innermost first."""
    found: list[Worn] = []
    inside = None
    for layer in reversed(shape.layers):
        outline = hang(layer, shape.form, shape.waist, shape.form.top + layer.start, inside)
        found.append(Worn(layer, outline))
        inside = standing_out(outline, PACK * (layer.alike - 1))
    return tuple(found)
