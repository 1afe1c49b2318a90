"""What the steps take of every piece, read from the spec alone, before any number is known."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.garment.solved import Allowance
from furbelow.garment.spec import EdgeName, LayerName, Spec, each_of
from furbelow.techniques import technique_of


def allowances(spec: Spec) -> Mapping[int, tuple[Allowance, ...]]:
    """For each step by its index: what it takes at which edge of which piece.

    A step on a stacked edge takes of every layer in it, so stacks are opened down to piece edges.
    """
    stacks: dict[str, tuple[EdgeName, ...]] = {}

    def edges_in(edge: EdgeName) -> tuple[EdgeName, ...]:
        if edge.side is not None:
            return (edge,)
        return tuple(below for layer in stacks.get(edge.piece, ()) for below in edges_in(layer))

    taken = {}
    for step in spec.steps:
        taken[step.index] = technique_of(step).allowances(step, edges_in)
        if step.technique == "stack layers":
            layers, name = step.args["layers"].value, step.args["as"].value
            known = tuple(row.edge for row in each_of(layers) if isinstance(row, LayerName))
            stacks[name.text] = known  # type: ignore[union-attr]
    return taken
