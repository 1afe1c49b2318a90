"""The finished garment as it will look, drawn from its numbers on a plain form of the wearer's measures.

An impression: lengths down the cloth, girths and levels are those of the garment; how wide it stands comes from a model of
cloth that knows no more than its weight and its stiffness.
"""

from __future__ import annotations

from fractions import Fraction
from math import pi

from furbelow.garment.message import Length, One, Own, Values
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.picture.drawn import drawn
from furbelow.s6_write.picture.shape import Shape, shape_of
from furbelow.s6_write.picture.worn import Worn, worn
from furbelow.s6_write.words.words import Words

VIEWS = ("front", "side")


def picture_of(run: Run, words: Words) -> tuple[Figure, ...]:
    """The garment from the front, then from the side; nothing where its pieces do not hang together."""
    words.read("picture")
    shape = shape_of(run)
    if not shape.layers:
        return ()
    layers = worn(shape)
    turns = {"front": 0.0, "side": pi / 2}
    return tuple(_figure(run, words, shape, layers, view, drawn(shape, layers, turns[view])) for view in VIEWS)


def _figure(run: Run, words: Words, shape: Shape, layers: tuple[Worn, ...], view: str, svg: str) -> Figure:
    across = max(2 * each.outline[-1].radius for each in layers)
    values: Values = {
        "title": Own(run.solved.spec.title),
        "view": One(view, VIEWS),
        "layers": sum(each.alike for each in shape.layers),
        "long": Length(max(run.drops.values())),
        "across": Length(Fraction(across).limit_denominator(10), "about"),
    }
    alt, caption = (words.text(name, values) for name in ("picture-alt", "picture-caption"))
    return Figure(f"picture-{view}", svg, alt, caption)
