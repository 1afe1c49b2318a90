"""The same spec with every piece as it lies on the table: cut sizes fixed, those that were measured as measured.

Everything that is worked out later - rings, gathers, elastic, the finished length - then follows from what is really
there, and no formula can change a piece that is cut.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from furbelow.amend.read_record import Measured
from furbelow.diagnose.fault import Span
from furbelow.garment.exact import as_written, exact_text
from furbelow.garment.solved import Solved, SolvedPiece, SolvedStep
from furbelow.garment.spec import Material, Spec, Written
from furbelow.garment.technique import Performed
from furbelow.measure.quantity import System, mm, number
from furbelow.s2_solve.takes import allowances
from furbelow.techniques import technique_of

Sizes = Mapping[tuple[str, str], tuple[Fraction, Span]]  # (piece, length or depth) -> cut size in mm and its place
# (index of a step, its argument) -> length in mm and its place
Amounts = Mapping[tuple[int, str], tuple[Fraction, Span]]


def cut_size(piece: SolvedPiece, size: str) -> Fraction:
    """To what length or depth a piece is cut as planned, in mm."""
    return piece.cut_length if size == "length" else piece.cut_depth


def as_cut(planned: Solved, measured: Sizes) -> Spec:
    """The spec whose pieces are cut as planned, but for the sizes that were measured."""
    spec = planned.spec
    pieces = {}
    for name, piece in spec.pieces.items():
        solved = planned.pieces[name]
        length, length_at = measured.get((name, "length"), (solved.cut_length, piece.span))
        depth, depth_at = measured.get((name, "depth"), (solved.cut_depth, piece.span))
        pieces[name] = piece._replace(
            length=None,
            depth=None,
            cut_length=_written(length, length_at, spec.system),
            cut_depth=_written(depth, depth_at, spec.system),
            lies_cut=True,
        )
    return spec._replace(pieces=pieces)


def hem_arguments(
    solved: Solved, performed: Sequence[Performed], piece: str
) -> Iterator[tuple[SolvedStep, str, Fraction]]:
    """The step that makes a piece wider below than above, each of its arguments for a lower edge, and by how much that edge is
    longer for each length that it lies lower."""
    taken, shaped = allowances(solved.spec, technique_of), solved.pieces[piece]
    for done in performed:
        for each in taken.get(done.step.written.index, ()):
            shape = shaped.gore or shaped.ring
            if each.piece != piece or shape is None or not (argument := each.hem or each.gore):
                continue
            yield done.step, argument, (shape.hem - shape.top) / shape.depth
            for width in shaped.gore.widths if shaped.gore else ():
                own = next((hem for place, _, hem, _ in each.gores if place == width.place), "")
                if own in done.step.written.args:
                    yield done.step, own, (width.hem - width.top) / shape.depth


def hems_of_short(solved: Solved, performed: Sequence[Performed], sizes: Sizes) -> Amounts:
    """The lower edges of flared pieces that were cut short below: less wide by what they flare over that depth."""
    return {
        (step.written.index, argument): (step.mm(argument) - flare * (solved.pieces[name].cut_depth - depth), place)
        for (name, size), (depth, place) in sizes.items()
        if size == "depth" and depth != solved.pieces[name].cut_depth
        for step, argument, flare in hem_arguments(solved, performed, name)
    }


def with_cloth(spec: Spec, measured: Measured) -> Spec:
    """The spec with a cloth as it came: of that width, or shrinking by so much. How long it is changes no plan."""
    cloth: Material = spec.materials[measured.name]
    if measured.size == "length":
        return spec
    if measured.size == "shrinkage":
        shrinks = {"shrinkage": as_written(exact_text(number(measured.value), spec.system), measured.span)}
        seen = cloth._replace(amounts={**cloth.amounts, **shrinks})
        return spec._replace(materials={**spec.materials, cloth.name: seen})
    # What the shop offers besides the width that came is left out.
    amounts = {**cloth.amounts, "width": _written(measured.value, measured.span, spec.system)}
    priced = next((offer.price for offer in cloth.offers if offer.price), None)
    if priced is not None and "price" not in amounts:
        amounts["price"] = priced
    return spec._replace(materials={**spec.materials, cloth.name: cloth._replace(amounts=amounts, offers=())})


def with_amounts(spec: Spec, amounts: Amounts) -> Spec:
    """The spec whose steps have these lengths: an elastic as it was put in, a flared edge as it came out."""
    steps = []
    for step in spec.steps:
        own = {
            name: step.args[name]._replace(value=_written(*amount, spec.system))
            for (index, name), amount in amounts.items()
            if index == step.index
        }
        steps.append(step._replace(args={**step.args, **own}) if own else step)
    return spec._replace(steps=tuple(steps))


def _written(length: Fraction, place: Span, system: System) -> Written:
    return as_written(exact_text(mm(length), system), place)
