"""The ways in of a garment as they are when it is done: each with the girth at which it closes, and what closes it."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Edge, Opening


def ways_in(bench: Bench) -> tuple[Opening, ...]:
    """Every opening; one that its zip closes all the way up, for no band does, closes to the length of its edge."""
    return tuple(
        opening._replace(waist=_top(bench, bench.edge(opening.name)).set_length)
        if opening.zipped and not opening.band and not opening.closed_by
        else opening
        for opening in bench.openings.values()
    )


def closes(opening: Opening) -> bool:
    """Whether a band, a zip or a fastening closes it at the top."""
    return bool(opening.band) or opening.zipped or bool(opening.closed_by)


def band_depth(bench: Bench, opening: Opening) -> Fraction:
    """How much of the way in lies above the edge that was opened, in its band."""
    return bench.depth(opening.band) if opening.band else Fraction(0)


def _top(bench: Bench, edge: Edge) -> Edge:
    """The edge, or the stack that it lies in at last."""
    return _top(bench, bench.edge(bench.layered[edge.name])) if edge.name in bench.layered else edge
