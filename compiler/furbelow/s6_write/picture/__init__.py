"""The finished garment as it will look, drawn from its numbers on a plain form of the wearer's measures.

An impression: lengths down the cloth, girths and levels are those of the garment; how wide it stands comes from a model of
cloth that knows no more than its weight and its stiffness.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from math import pi

from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.picture.drawn import drawn
from furbelow.s6_write.picture.shape import BEHIND, Shape, shape_of
from furbelow.s6_write.picture.told import View, told
from furbelow.s6_write.picture.worn import worn
from furbelow.s6_write.words.words import Words

TURNS: Mapping[View, float] = {"front": 0.0, "side": pi / 2, "left": -pi / 2, "back": pi, "peeled": 0.0}


def picture_of(run: Run, words: Words) -> tuple[Figure, ...]:
    """The garment from the front; from the side, or from where it is closed; from the side and from behind where its hem dips;
    with its layers peeled back.

    Nothing where no cloth of it hangs.
    """
    shape = shape_of(run)
    if not shape.layers:
        return ()
    behind = shape.way is not None and shape.way.at == BEHIND
    views: list[View] = ["front"]
    if shape.dips and behind or shape.way is None:
        views.append("side")
    if shape.way is not None:
        views.append("back" if behind else "left")  # closed at a side it is seen from that side
    if sum(layer.alike for layer in shape.layers) > 1:
        views.append("peeled")
    return tuple(_figure(run, words, shape, view) for view in views)


def front_of(run: Run, words: Words) -> Figure | None:
    """The garment from the front alone, for who looks on while choosing."""
    shape = shape_of(run)
    return _figure(run, words, shape, "front") if shape.layers else None


def _figure(run: Run, words: Words, shape: Shape, view: View) -> Figure:
    alt, caption = told(run, words, shape, _hung(shape), view)
    return Figure(f"picture-{view}", _drawn(shape, view), alt, caption)


# A preview builds the same garment again at each save, and a class has sizes that several wear.
_hung = lru_cache(maxsize=64)(worn)


@lru_cache(maxsize=64)
def _drawn(shape: Shape, view: View) -> str:
    return drawn(shape, _hung(shape), TURNS[view], peeled=view == "peeled")
