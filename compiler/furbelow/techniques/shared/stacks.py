"""Edges that lie in a stack: what a seam or turn on the stack does to each layer."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Edge, State

HOLDING_ROW = Fraction(2)  # mm from the edge, the row that holds the layers and stays in: gathering rows lie further in


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
