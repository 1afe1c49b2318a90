"""The ends of a flat edge, and what a trim or tape does there."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.garment.bench import Bench, Edge, State

UNDER = Fraction(10)  # of a trim, folded under at each end; common practice, no source
_ACROSS = {"top": ("start", "end"), "bottom": ("start", "end"), "start": ("top", "bottom"), "end": ("top", "bottom")}


def folded_under(bench: Bench, edge: Edge) -> Fraction:
    """How much of a trim is folded under at each end: nothing on a ring, nor where an end of the cloth is still to be sewn."""
    finished = all(end.state in (State.HEMMED, State.ENCLOSED) for end in _ends(bench, edge))
    return UNDER if finished and not bench.ring(edge) else Fraction(0)


def _ends(bench: Bench, edge: Edge) -> Iterator[Edge]:
    side = edge.name.rpartition(".")[2] if "." in edge.name else "top"
    for piece in dict.fromkeys(edge.pieces):
        for across in _ACROSS[side]:
            yield bench.edge(f"{piece}.{across}")
