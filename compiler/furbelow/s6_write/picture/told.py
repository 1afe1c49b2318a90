"""What a picture shows, in words: from the same facts as the drawing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import Literal, get_args

from furbelow.garment.message import Length, One, Own, Part, Pieces, Ratio, Things, Values, flag
from furbelow.garment.technique import word_of
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.picture.marks import GATHERED
from furbelow.s6_write.picture.shape import AT_LEFT, Layer, Shape, Tier
from furbelow.s6_write.picture.worn import Worn
from furbelow.s6_write.words.words import Words

View = Literal["front", "side", "left", "back", "peeled"]
Held = Literal["elastic", "cord", "band", "ties", "button", "zip", "slit"]
LEAST_RISE = 3.0  # mm by which a hem must rise above what it hides before it is said


def told(run: Run, words: Words, shape: Shape, layers: Sequence[Worn], view: View) -> tuple[str, str]:
    """The text alternative of a view, and its caption."""
    words.read("picture")
    across = 2 * max(each.outline[-1].radius for each in layers)
    values: Values = {
        "title": Own(run.solved.spec.title),
        "view": One(view, get_args(View)),
        "long": Length(max(run.drops.values())),
        "across": Length(Fraction(round(across)), "about"),
        "closed": One(_closed(shape), get_args(Held)),
        "at-left": flag(shape.way and shape.way.at == AT_LEFT),
        "count": sum(layer.alike for layer in shape.layers),
        "layers": Things(tuple(_layer(layer, run) for layer in shape.layers), "clauses"),
    }
    caption, alt = [words.text("picture-caption", values)], words.text("picture-alt", values)
    if left_out := _not_drawn(run):
        said = words.text("picture-not-drawn", {"pieces": Pieces(left_out)})
        alt = f"{alt} {said}"
        caption += [said] if view == "front" else []
    if view == "front":
        caption += [words.text("picture-shows", shown) for shown in _showing(layers, run)]
    return alt, " ".join(caption)


def _not_drawn(run: Run) -> tuple[str, ...]:
    """What is seen of the finished garment and is not in its picture: straps, and pockets that lie on it."""
    pockets = (done.step.written for done in run.performed if done.step.written.technique == "patch pocket")
    seen = {*run.final.straps, *(word_of(written, "pocket") for written in pockets)}
    return tuple(piece for piece in run.final.cloths if piece in seen)


def _closed(shape: Shape) -> Held:
    if shape.way:
        return shape.way.closed
    if shape.band and shape.band.cord:
        return "cord"
    return "elastic" if shape.band and shape.band.drawn else "band"


def _layer(layer: Layer, run: Run) -> Part:
    tiers = Things(tuple(_tier(tier, run) for tier in layer.tiers), "row")
    return Part("picture-layer", {"alike": layer.alike, "tiers": tiers})


def _tier(tier: Tier, run: Run) -> Part:
    values: Values = {
        "piece": Pieces((tier.piece,)),
        "deep": Length(run.final.depth(tier.piece)),
        "full": Ratio(Fraction(round(tier.fullness * 100), 100)),
    }
    if tier.pleats:
        return Part("picture-tier-pleated", values)
    return Part("picture-tier-gathered" if tier.fullness > GATHERED else "picture-tier-plain", values)


def _showing(layers: Sequence[Worn], run: Run) -> Iterator[Values]:
    """What comes to hang below a layer outside it that is longer: a full hem flares, and so it rises."""
    for inner, outer in zip(layers, layers[1:], strict=False):
        lower = inner.outline[-1].down - outer.outline[-1].down
        longer = outer.outline[-1].along + outer.layer.start - inner.outline[-1].along - inner.layer.start
        if longer > 0 and lower > LEAST_RISE:
            piece = run.solved.pieces[inner.layer.tiers[-1].piece]
            yield {
                "now": Length(piece.cut_depth, "cut"),
                "cut": Length(piece.cut_depth - Fraction(round(lower)), "cut"),
                "outer": Pieces((outer.layer.tiers[-1].piece,)),
                "inner": Pieces((inner.layer.tiers[-1].piece,)),
                "longer": Length(Fraction(round(longer))),
                "lower": Length(Fraction(round(lower)), "about"),
            }
