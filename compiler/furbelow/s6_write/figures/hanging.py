"""How pieces hang from each other on the bench, for figures: chains from the top edge down, outer layer first."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from furbelow.garment.bench import Bench, Edge, Seam


def edge_now(bench: Bench, name: str) -> Edge:
    """The edge as it is worked now: the stack's edge where it lies in one, with the gathers of the layer itself."""
    found = bench.edge(name)
    while found.name in bench.layered:
        stack = bench.edge(bench.layered[found.name])
        if found.gathered and found.set_length < found.cloth_length and stack.set_length == stack.cloth_length:
            stack = stack._replace(gathered=found.gathered, cloth_length=found.cloth_length)
        found = stack
    return found


def alike(bench: Bench, piece: str) -> int:
    """How many of what this piece is sewn into lie on the table: layers that are held together count once."""
    return min(edge_now(bench, f"{other}.{side}").copies for other in bench.unit(piece) for side in ("top", "bottom"))


def layered(bench: Bench, piece: str) -> int:
    """How many layers of a piece lie in one garment: 1 until its copies are stacked."""
    return bench.cloths[piece].copies // alike(bench, piece)


def seam_between(bench: Bench, upper: str, lower: str) -> Seam | None:
    """The seam from the bottom of one piece to the top of another (or of a band over a top edge)."""
    for seam in bench.seams.values():
        names = {edge for name in seam.edges for edge in bench.opened(name)}
        if f"{upper}.bottom" in names and f"{lower}.top" in names:
            return seam
    return None


def chains(bench: Bench, pieces: Iterable[str]) -> tuple[tuple[str, ...], ...]:
    """The given pieces as chains of one sewn below another; layers of one top edge are chains of their own.

    A piece that several chains hang from, such as a waistband, leads the first of them only.
    """
    pieces = tuple(pieces)
    below: dict[str, list[str]] = {piece: [] for piece in pieces}
    for seam in bench.seams.values():
        if len(seam.edges) != 2:
            continue
        names = [edge.partition(".") for name in seam.edges for edge in bench.opened(name)]
        uppers = [piece for piece, _, side in names if side == "bottom" and piece in below]
        lowers = [piece for piece, _, side in names if side == "top" and piece in below]
        for upper in uppers:
            below[upper] += [piece for piece in lowers if piece != upper and piece not in below[upper]]
    hung = {piece for others in below.values() for piece in others}
    return tuple([path for piece in pieces if piece not in hung for path in _down(below, (piece,))])


def _down(below: Mapping[str, Sequence[str]], path: tuple[str, ...]) -> Iterator[tuple[str, ...]]:
    """The chain that a path is the beginning of, and those that begin below it."""
    others = below[path[-1]]
    for index, other in enumerate(others):
        yield from _down(below, (*path, other) if index == 0 else (other,))
    if not others:
        yield path
