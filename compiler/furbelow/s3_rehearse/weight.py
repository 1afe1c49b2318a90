"""What the garment weighs: its cloth as cut, its trims and its elastic, each with the reason for it.

Exact: areas are those of the cut pieces, lengths those that the steps used. Not counted: thread, the margins inside
joined strips, and what is trimmed off; a few grams in a skirt.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from furbelow.garment.gore import Gore
from furbelow.garment.ring_sector import RingSector
from furbelow.garment.solved import Derivation, SolvedMaterial, SolvedPiece
from furbelow.garment.spec import SupplyKind
from furbelow.measure.measure_text import System, show_decimal
from furbelow.measure.quantity import Quantity, mm, number
from furbelow.measure.units import MASS, UNITS
from furbelow.named import NamedTuple
from furbelow.s3_rehearse.run import Run

_AREA = (("length", 2),)
_SEWN_IN = (SupplyKind.TRIM, SupplyKind.CORD, SupplyKind.BONE, SupplyKind.ELASTIC, SupplyKind.INTERFACING)


class Weight(NamedTuple):
    """`reasons`: `weight` where it is known, `flounce.weight` for each piece, `edging.used_weight` for what is sewn in.

    unknown: cloths without a weight; then nothing is said of the whole. left_out: trims and elastic without one, by their names.
    """

    reasons: Mapping[str, Derivation]
    unknown: tuple[str, ...]
    left_out: tuple[str, ...]

    @property
    def grams(self) -> Fraction | None:
        return self.reasons["weight"].value.as_mass_g() if "weight" in self.reasons else None


def weight_of(run: Run) -> Weight:
    """The weight of the garment and of each of its parts."""
    reasons: dict[str, Derivation] = {}
    parts, unknown, left_out = [], [], []
    for piece in run.solved.pieces.values():
        cloth = piece.piece.cloth.text
        if "weight" not in run.solved.materials[cloth].amounts:
            unknown.append(cloth)
            continue
        found = tuple(_piece(run, piece))
        parts.append(found[-1].name)
        reasons |= {reason.name: reason for reason in found}
    for material in run.solved.materials.values():
        used = _used(run, material) if material.material.kind in _SEWN_IN else None
        if used is None:
            continue
        if "weight" not in material.amounts:
            left_out.append(material.material.name)
            continue
        found = tuple(_sewn_in(run, material, used))
        parts.append(found[-1].name)
        reasons |= {reason.name: reason for reason in found}
    if not unknown:
        whole = sum((reasons[part].value for part in parts), Quantity(Fraction(0), MASS))
        reasons["weight"] = _reason(run, "weight", whole, " + ".join(parts), parts, {**reasons})
    return Weight(reasons, tuple(dict.fromkeys(unknown)), tuple(left_out))


def grams_of(run: Run) -> Fraction | None:
    """The weight of the garment alone, without its reasons; None where that of a cloth is not known."""
    total, materials = Fraction(0), run.solved.materials
    for piece in run.solved.pieces.values():
        per_area = materials[piece.piece.cloth.text].amounts.get("weight")
        if per_area is None:
            return None
        total += piece.count * piece.cut_area * per_area.value
    for use in (use for done in run.performed for use in done.used):
        amounts = materials[use.material].amounts
        if materials[use.material].material.kind not in _SEWN_IN or "weight" not in amounts:
            continue
        used = mm(use.amount * use.copies) * amounts["weight"]
        total += (used if used.dims == MASS else used * amounts["width"]).as_mass_g()
    return total


def show_weight(grams: Fraction, system: System) -> str:
    """To the gram, or to the tenth of an ounce with the grams beside it."""
    metric = f"{show_decimal(grams / 1000, 2)} kg" if grams >= 1000 else f"{show_decimal(grams, 0)} g"
    return metric if system == "metric" else f"{show_decimal(grams / UNITS['oz'].factor, 1)} oz ({metric})"


def _piece(run: Run, piece: SolvedPiece) -> Iterator[Derivation]:
    """The weight of all copies of a piece, last; before it the area, where it is no rectangle."""
    values, name, cloth = run.solved.values, piece.name, piece.piece.cloth.text
    count, per_area = number(piece.count), values[f"{cloth}.weight"].value
    names = [f"{name}.count", f"{name}.cut_length", f"{name}.cut_depth", f"{cloth}.weight"]
    area, known = Quantity(piece.cut_length * piece.cut_depth, _AREA), dict(values)
    if piece.ring is not None:
        known[f"{name}.cut_area"] = _ring_area(run, piece, piece.ring)
        area = known[f"{name}.cut_area"].value
        yield known[f"{name}.cut_area"]
        names[1:3] = [f"{name}.cut_area"]
    if piece.gore is not None:
        known[f"{name}.cut_area"] = _gore_area(run, piece, piece.gore)
        area = known[f"{name}.cut_area"].value
        yield known[f"{name}.cut_area"]
        names[1:3] = [f"{name}.cut_area"]
    yield _reason(run, f"{name}.weight", count * area * per_area, " * ".join(names), names, known)


def _ring_area(run: Run, piece: SolvedPiece, ring: RingSector) -> Derivation:
    """The part of a ring between its cut arcs, and the margins at its straight ends."""
    angle, arcs = (
        show_decimal(ring.angle, 3),
        tuple(mm(arc).show(run.solved.spec.system) for arc in (ring.outer, ring.inner)),
    )
    outer, inner = arcs
    return Derivation(
        f"{piece.name}.cut_area",
        Quantity(ring.area, _AREA),
        "angle / 2 * (outer^2 - inner^2) + 2 * ends * (outer - inner)",
        f"{angle} / 2 * (({outer})^2 - ({inner})^2) + 2 * {mm(ring.ends).show(run.solved.spec.system)} * ({outer} - {inner})",
        (),
        None,
        piece.piece.span,
        "piece",
    )


def _gore_area(run: Run, piece: SolvedPiece, gore: Gore) -> Derivation:
    """The cut gore, with its margins: the mean of its ends by its depth."""
    top, bottom, deep = (
        mm(each).show(run.solved.spec.system) for each in (gore.cut_top, gore.cut_bottom, gore.cut_depth)
    )
    return Derivation(
        f"{piece.name}.cut_area",
        Quantity(gore.area, _AREA),
        "(cut top + cut bottom) / 2 * cut depth",
        f"({top} + {bottom}) / 2 * {deep}",
        (),
        None,
        piece.piece.span,
        "piece",
    )


def _used(run: Run, material: SolvedMaterial) -> Derivation | None:
    """The length of a trim or elastic that the steps used, or None where it is not used by length."""
    used = [use for done in run.performed for use in done.used if use.material == material.material.name]
    if not used:
        return None
    total = sum((use.amount * use.copies for use in used), Fraction(0))
    system = run.solved.spec.system
    terms = (
        f"{use.copies} * {mm(use.amount).show(system)}" if use.copies > 1 else mm(use.amount).show(system)
        for use in used
    )
    said = " + ".join(terms)
    return Derivation(f"{material.material.name}.used", mm(total), said, said, (), None, material.material.span, "step")


def _sewn_in(run: Run, material: SolvedMaterial, used: Derivation) -> Iterator[Derivation]:
    """The length used, and what it weighs by the metre, or by the area of its width."""
    name, values = material.material.name, run.solved.values
    names = [used.name, f"{name}.weight"]
    weight = values[f"{name}.weight"].value
    total = used.value * weight
    if total.dims != MASS:  # the weight is that of an area
        names.insert(1, f"{name}.width")
        total = total * values[f"{name}.width"].value
    yield used
    yield _reason(run, f"{name}.used_weight", total, " * ".join(names), names, {**values, used.name: used})


def _reason(
    run: Run, name: str, value: Quantity, formula: str, names: list[str], known: Mapping[str, Derivation]
) -> Derivation:
    """A product or sum of named values, in words and with its numbers put in."""
    system = run.solved.spec.system
    with_values = " ".join(known[word].value.show(system) if word in known else word for word in formula.split(" "))
    return Derivation(name, value, formula, with_values, tuple(names), None, None, "weight")
