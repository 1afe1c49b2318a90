"""Edges that lie in a stack: what a seam or turn on the stack does to each layer."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Edge, State
from furbelow.garment.levels import levels_of
from furbelow.garment.message import Length, One, Value

HOLDING_ROW = Fraction(2)  # mm from the edge, the row that holds the layers and stays in: gathering rows lie further in
LEAST_STEP = Fraction(5)  # mm: by less one layer is not told to end above another; house rule, maker to confirm


def hangs_below(bench: Bench, edge: str) -> Fraction:
    """How far below this top edge ends what hangs from it, in mm; 0 for a bottom edge."""
    levels, piece = levels_of(bench), bench.edge(edge).pieces[0]
    if edge.endswith(".bottom"):
        return Fraction(0)
    return max(levels.bottoms[each] for each in bench.unit(piece)) - levels.tops[piece]


def ends_beside(lower: Fraction) -> dict[str, Value]:
    """How messages are told where a layer ends that ends so many mm lower than another, or by less than 0 higher."""
    where = "level" if abs(lower) < LEAST_STEP else "below" if lower > 0 else "above"
    return {"ends": One(where, ("above", "below", "level")), "by": Length(abs(lower))}


def taken(bench: Bench, edge: Edge, amount: Fraction) -> Bench:
    """The bench with a turn or seam taken at the edges that lie in a stack; a plain edge has its own books."""
    if "." in edge.name:
        return bench
    for below, stack in bench.layered.items():
        if stack != edge.name:
            continue
        layer = bench.edge(below)
        layer = layer._replace(state=State.SEWN, used=layer.used + amount, held=True)
        bench = taken(bench.with_edges(layer), layer, amount)
    return bench
