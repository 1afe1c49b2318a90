"""How full the garment is: the sweep of each layer's hem, all of them together, and the cloth that is gathered in.

Exact, from the edges as the rehearsal left them. The waist is that before elastic or cord draws it in.
Source of the measure: flounces counted by the length above them, as in instructions for a petticoat of 1907 (flounce
4/3 of the skirt, lower flounce 3/2 of that); sweep of the hem: Ingalls, Text-Book on Domestic Art, 1911.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from furbelow.garment.bench import Edge, State
from furbelow.garment.solved import Because, Derivation
from furbelow.measure.quantity import mm, number
from furbelow.named import NamedTuple
from furbelow.s3_rehearse.run import Run
from furbelow.s3_rehearse.ways_in import closes, ways_in

AS_WORKED = Because("reason-as-worked")
BEFORE_DRAWN = Because("reason-before-drawn")


class Hem(NamedTuple):
    """The free lower edge of a piece: length of one ring, how many like rings, how far below the waist; in mm."""

    piece: str
    round: Fraction
    copies: int
    drop: Fraction

    @property
    def name(self) -> str:
        return f"{self.piece}.hem_round"


class Volume(NamedTuple):
    """hems: outermost cloth first, as the spec lists its pieces; longest: the lowest of them.

    waist: round the top before it is drawn in. strips: gathered pieces by cloth, each with its number and cut length.
    reasons: `flounce.hem_round`, `hems_together`, `hem_layers`, `fullness_to_hem`, `net.gathered_strips`.
    """

    hems: tuple[Hem, ...]
    longest: Hem
    waist: Fraction
    strips: Mapping[str, tuple[tuple[int, Fraction], ...]]
    reasons: Mapping[str, Derivation]

    @property
    def together(self) -> Fraction:
        return sum((hem.copies * hem.round for hem in self.hems), Fraction(0))

    @property
    def layers(self) -> int:
        return sum(hem.copies for hem in self.hems)

    @property
    def fullness(self) -> Fraction:
        """Hem for each length of waist: the fullness of all tiers multiplied."""
        return self.longest.round / self.waist


def volume_of(run: Run) -> Volume:
    """The volume of a garment whose pieces all hang together."""
    lowest = max(run.drops, key=lambda piece: run.drops[piece])
    carries = {edge for seam in run.final.seams.values() for edge in seam.edges if len(seam.edges) == 2}
    pieces = [piece for piece in run.final.cloths if _free(run, piece, carries)] or [lowest]
    hems = tuple(_hem(run, piece) for piece in pieces)
    longest = max(hems, key=lambda hem: hem.drop)
    top, waist = _waist(run)
    strips = _strips(run)
    volume = Volume(hems, longest, waist, strips, {})
    return volume._replace(reasons={reason.name: reason for reason in _reasons(run, volume, top)})


def _free(run: Run, piece: str, sewn: set[str]) -> bool:
    """A ring that hangs from its top and carries nothing."""
    cloth, top = run.final.cloths[piece], run.final.edge(f"{piece}.top")
    hung = top.state in (State.SEWN, State.ENCLOSED, State.HEMMED) or top.name in run.final.layered
    return cloth.ring and not cloth.folded and hung and f"{piece}.bottom" not in sewn


def _hem(run: Run, piece: str) -> Hem:
    edge = run.final.edge(f"{piece}.bottom")
    return Hem(piece, edge.cloth_length, edge.copies, run.drops[piece])


def _waist(run: Run) -> tuple[str, Fraction]:
    """The piece at the top of the garment, and its length there: of a closed band, of a casing, or of the edge itself."""
    final, at_top = run.final, [piece for piece, hangs in run.hangs.items() if hangs == 0]
    for opening in ways_in(final):
        if closes(opening):
            return opening.band or opening.piece, opening.waist
    for casing in final.casings.values():
        if casing.piece in at_top:
            return casing.piece, casing.length
    return at_top[0], final.edge(f"{at_top[0]}.top").set_length


def _strips(run: Run) -> dict[str, tuple[tuple[int, Fraction], ...]]:
    found: dict[str, list[tuple[int, Fraction]]] = {}
    for piece in run.solved.pieces.values():
        if any(edge.gathered and edge.ratio > 1 for edge in _worked_as(run, f"{piece.name}.top")):
            found.setdefault(piece.piece.cloth.text, []).append((piece.count, piece.cut_length))
    return {cloth: tuple(strips) for cloth, strips in found.items()}


def _worked_as(run: Run, name: str) -> Iterator[Edge]:
    """An edge and the stacks that it lies in."""
    yield run.final.edge(name)
    if name in run.final.layered:
        yield from _worked_as(run, run.final.layered[name])


def _reasons(run: Run, volume: Volume, top: str) -> Iterator[Derivation]:
    def show(length: Fraction) -> str:
        return mm(length).show(run.solved.spec.system)

    for hem in volume.hems:
        piece = run.solved.pieces[hem.piece]
        parts = piece.count // hem.copies
        plain = piece.length * parts == hem.round
        formula = (f"{parts} * " if parts > 1 else "") + f"{hem.piece}.length" if plain else ""
        because = None if plain else AS_WORKED
        with_values = (f"{parts} * " if parts > 1 else "") + show(piece.length) if plain else show(hem.round)
        needs = (f"{hem.piece}.length",) if plain else ()
        yield Derivation(
            hem.name, mm(hem.round), formula, with_values, needs, None, piece.piece.span, "volume", because
        )
    yield Derivation(
        "hems_together",
        mm(volume.together),
        " + ".join(f"{hem.copies} * {hem.name}" for hem in volume.hems),
        " + ".join(f"{hem.copies} * {show(hem.round)}" for hem in volume.hems),
        tuple(hem.name for hem in volume.hems),
        None,
        None,
        "volume",
    )
    counts = " + ".join(str(hem.copies) for hem in volume.hems)
    yield Derivation("hem_layers", number(volume.layers), counts, counts, (), None, None, "volume")
    name = f"{top}.top_round"
    yield Derivation(
        name,
        mm(volume.waist),
        "",
        show(volume.waist),
        (),
        None,
        run.solved.pieces[top].piece.span,
        "volume",
        BEFORE_DRAWN,
    )
    yield Derivation(
        "fullness_to_hem",
        number(volume.fullness),
        f"{volume.longest.name} / {name}",
        f"{show(volume.longest.round)} / {show(volume.waist)}",
        (volume.longest.name, name),
        None,
        None,
        "volume",
    )
    for cloth, strips in volume.strips.items():
        total = sum((count * length for count, length in strips), Fraction(0))
        said = " + ".join(f"{count} * {show(length)}" for count, length in strips)
        yield Derivation(f"{cloth}.gathered_strips", mm(total), said, said, (), None, None, "volume")
