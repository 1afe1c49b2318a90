"""The closed rings of a garment: each line round it, at its level, as long as it is at rest and as it can be opened.

Edges that are sewn or stacked together are one line. Elastic or a cord in a line, or in a band on it, draws all of it in.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Casing, Edge
from furbelow.garment.levels import Levels
from furbelow.garment.solved import Solved
from furbelow.named import NamedTuple


class Ring(NamedTuple):
    """name: one of its edges, the first in the order of the pieces. level: mm below the top of the garment.

    flat: its length when nothing draws it in; rest: at rest; open: stretched as far as its elastic gives, or drawn open.
    cord: a cord draws it to whatever it is tied to.
    """

    name: str
    pieces: tuple[str, ...]
    level: Fraction
    flat: Fraction
    rest: Fraction
    open: Fraction
    casing: Casing | None = None

    @property
    def cord(self) -> bool:
        return bool(self.casing and self.casing.cord)

    @property
    def elastic(self) -> bool:
        return bool(self.casing and self.casing.elastic)


def rings_of(bench: Bench, solved: Solved, levels: Levels) -> tuple[Ring, ...]:
    """Every closed line of the garment, the highest first. What is only sewn on cloth has no line of its own."""
    sewn_on = _sewn_on(bench)
    lines: list[set[str]] = []
    for piece, cloth in bench.cloths.items():
        if cloth.ring and piece not in sewn_on:
            lines += [{f"{piece}.top", f"{piece}.bottom"}] if cloth.folded else [{f"{piece}.top"}, {f"{piece}.bottom"}]
    lines = _merged(lines, _together(bench))
    rings = [_ring(bench, solved, levels, line) for line in lines if not _open(bench, line)]
    return tuple(sorted(rings, key=lambda ring: ring.level))


def _open(bench: Bench, line: set[str]) -> bool:
    """A slit opens the line."""
    return any(_outermost(bench, bench.edge(name)).slit for name in line)


def _sewn_on(bench: Bench) -> set[str]:
    """Pieces that no seam along an edge holds while others hang together: strips sewn on cloth, ties, loops."""
    held = {each.partition(".")[0] for group in _together(bench) for each in group}
    return set(bench.cloths) - held if held else set()


def _together(bench: Bench) -> list[set[str]]:
    """Piece edges that are one line: the layers of a stack, and both sides of a seam."""
    groups = [set(bench.opened(name)) for name in bench.edges if "." not in name and name not in bench.layered]
    for seam in bench.seams.values():
        if len(seam.edges) == 2 and not seam.edges[0].endswith((".start", ".end")):
            groups.append({each for name in seam.edges for each in bench.opened(name)})
    return groups


def _merged(lines: list[set[str]], groups: list[set[str]]) -> list[set[str]]:
    for group in groups:
        touched = [line for line in lines if line & group]
        if touched:
            lines = [line for line in lines if not line & group]
            lines.append(set().union(*touched))
    return lines


def _ring(bench: Bench, solved: Solved, levels: Levels, line: set[str]) -> Ring:
    names = [f"{piece}.{side}" for piece in bench.cloths for side in ("top", "bottom") if f"{piece}.{side}" in line]
    pieces = tuple(dict.fromkeys(name.partition(".")[0] for name in names))
    flat = min(_outermost(bench, bench.edge(name)).set_length for name in names)
    level = min(_level(levels, name) for name in names)
    casing = next((each for each in bench.casings.values() if _draws(each, names, pieces, bench)), None)
    rest = open_ = flat
    if casing and casing.elastic:
        stretch = solved.materials[casing.elastic].amounts.get("stretch")
        flat = casing.length
        rest = casing.elastic_length
        open_ = min(flat, rest * (1 + stretch.value)) if stretch else flat
    elif casing:
        flat = open_ = casing.length
        rest = casing.length
    return Ring(names[0], pieces, level, flat, rest, open_, casing)


def _draws(casing: Casing, names: list[str], pieces: tuple[str, ...], bench: Bench) -> bool:
    """Whether this casing lies in the line: in its band, or under one of its edges."""
    if casing.name in bench.edges:
        return any(each in names for each in bench.opened(casing.name))
    return casing.piece in pieces


def _outermost(bench: Bench, edge: Edge) -> Edge:
    """The edge, or the stack that it lies in at last."""
    return _outermost(bench, bench.edge(bench.layered[edge.name])) if edge.name in bench.layered else edge


def _level(levels: Levels, name: str) -> Fraction:
    piece, _, side = name.partition(".")
    return levels.tops[piece] if side == "top" else levels.bottoms[piece]
