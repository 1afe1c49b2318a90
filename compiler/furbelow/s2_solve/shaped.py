"""The shape of a piece that a step cuts out of rectangles: between two arcs, to gores, or on the bias."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from furbelow.garment.bias import BiasStrip
from furbelow.garment.gore import BACK, FRONT, SIDE, Gore, Width
from furbelow.garment.ring_sector import RingSector
from furbelow.garment.solved import Allowance
from furbelow.garment.spec import Piece, Spec, Step
from furbelow.measure.quantity import Quantity
from furbelow.s2_solve.equations import step_name

Values = Mapping[str, Quantity]
Shaped = RingSector | Gore | BiasStrip
SPARE = Fraction(10)  # of the width, for crooked selvedges: as in a workroom that says nothing else


def shape_of_piece(
    spec: Spec, name: str, values: Values, steps: tuple[Step, ...], takes: Mapping[int, tuple[Allowance, ...]]
) -> Shaped | None:
    """What a step makes of the rectangle; None where it stays one, or where its hem is no longer than its top."""
    for step in steps:
        for each in takes.get(step.index, ()):
            if each.piece != name:
                continue
            if each.bias:
                cut = values[f"{name}.cut_length"].value, values[f"{name}.cut_depth"].value
                return BiasStrip(*cut, values[step_name(step, each.bias)].as_length_mm())
            hem = each.hem or each.gore
            if not hem:
                continue
            if (long := values[step_name(step, hem)].as_length_mm()) > values[f"{name}.length"].value:
                return _ring(spec, name, values, long) if each.hem else _gore(spec, name, values, step, each, long)
    return None


def _ring(spec: Spec, name: str, values: Values, hem: Fraction) -> RingSector:
    """So many copies to a rectangle, one close below the other, as the cloth is wide enough for."""
    ring = RingSector(values[f"{name}.length"].value, hem, *_around(name, values))
    many = int(values[f"{name}.count"].as_number())
    rounding = values["rounding"].value
    wide, high = ring.blank(rounding)
    if many < 2 or ring.next_down is None:
        return ring
    room = _room(spec, spec.pieces[name], values)
    if spec.pieces[name].grain == "across":
        stacks = max(room // wide, 1)
        each = -(-many // stacks)
    else:
        fit = max((room - high) // ring.next_down + 1, 1)
        each = -(-many // -(-many // fit))
    return ring._replace(stacked=int(each))


def _gore(spec: Spec, name: str, values: Values, step: Step, taken: Allowance, hem: Fraction) -> Gore:
    top, many = values[f"{name}.length"].value, int(values[f"{name}.count"].as_number())
    cloth = spec.materials.get(spec.pieces[name].cloth.text)
    gore = Gore(
        top,
        hem,
        *_around(name, values),
        (Width(SIDE, top, hem, many),),
        taken.both_slant,
        cloth is not None and cloth.one_way,
        _room(spec, spec.pieces[name], values),
        values["rounding"].value,
    )
    own = tuple(_own_gores(gore, values, step, taken))
    left = many - sum(each.many for each in own)
    if not own or left < 1:
        return gore
    # What front and back leave of both edges is shared by the others.
    rest_top = (top * many - sum(each.top * each.many for each in own)) / left
    rest_hem = (hem * many - sum(each.hem * each.many for each in own)) / left
    place = BACK if left == 1 and all(each.place == FRONT for each in own) else SIDE
    return gore._replace(widths=(*own, Width(place, rest_top, rest_hem, left)))


def _own_gores(gore: Gore, values: Values, step: Step, taken: Allowance) -> Iterator[Width]:
    """The gores with a width of their own; without a hem they widen as much as all do."""
    for place, top, hem, count in taken.gores:
        if top not in step.args:
            continue
        narrow = values[step_name(step, top)].as_length_mm()
        many = values[step_name(step, count)].as_number() if count else Fraction(1)
        broad = values[step_name(step, hem)].as_length_mm() if hem in step.args else narrow + gore.hem - gore.top
        yield Width(place, narrow, broad, int(many))


def _around(name: str, values: Values) -> tuple[Fraction, Fraction, Fraction, Fraction]:
    """The depth of a shaped piece, and what is taken above, below and at each end of it."""
    depth = values[f"{name}.depth"].value
    above = values[f"{name}.top_takes"].value if f"{name}.top_takes" in values else Fraction(0)
    ends = (values[f"{name}.cut_length"].value - values[f"{name}.length"].value) / 2
    return depth, above, values[f"{name}.cut_depth"].value - depth - above, ends


def _room(spec: Spec, piece: Piece, values: Values) -> Fraction:
    """What the narrowest width that the cloth comes in leaves across, once it is washed and its selvedges are off."""
    name = piece.cloth.text
    material = spec.materials[name]
    names = [f"{name} offer {number}.width" for number in range(1, len(material.offers) + 1)] or [f"{name}.width"]
    width = min(values[each].as_length_mm() for each in names)
    selvedge = values[f"{name}.selvedge"].as_length_mm() if "selvedge" in material.amounts else Fraction(0)
    shrinkage = values[f"{name}.shrinkage"].value if "shrinkage" in material.amounts else Fraction(0)
    return (width - 2 * selvedge) * (1 - shrinkage) - SPARE
