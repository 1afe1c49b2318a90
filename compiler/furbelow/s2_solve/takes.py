"""What the steps take of every piece, read from the spec alone, before any number is known."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from furbelow.garment.solved import Allowance
from furbelow.garment.spec import EdgeName, LayerName, Spec, Step, Word, each_of
from furbelow.garment.technique import Kind, Technique, TechniqueOf


def allowances(spec: Spec, technique_of: TechniqueOf) -> Mapping[int, tuple[Allowance, ...]]:
    """For each step by its index: what it takes at which edge of which piece.

    A step on a stacked edge takes of every layer in it, so stacks are opened down to piece edges.
    technique_of: how each step is worked.
    """
    stacks: dict[str, tuple[EdgeName, ...]] = {}

    def edges_in(edge: EdgeName) -> tuple[EdgeName, ...]:
        found: list[EdgeName] = []
        waiting, opened = [edge], set[str]()  # a stack may be written as a layer of itself, which the rehearsal refuses
        while waiting:
            at = waiting.pop()
            if at.side is not None:
                found.append(at)
            elif at.piece not in opened:
                opened.add(at.piece)
                waiting += reversed(stacks.get(at.piece, ()))
        return tuple(found)

    taken = {}
    for step in spec.steps:
        technique = technique_of(step)
        taken[step.index] = technique.allowances(step, edges_in)
        if layers := tuple(_layers(step)):
            stacks.update(dict.fromkeys(_named(step, technique), layers))
    return taken


def _layers(step: Step) -> Iterator[EdgeName]:
    """The edges that the step lays on each other: its layers, or both long edges of a piece that it folds."""
    listed = [row.edge for arg in step.args.values() for row in each_of(arg.value) if isinstance(row, LayerName)]
    folded = [word for arg in step.args.values() if arg.kind == Kind.PIECE and isinstance(word := arg.value, Word)]
    yield from listed or [EdgeName(word.text, side, word.span) for word in folded for side in ("top", "bottom")]


def _named(step: Step, technique: Technique) -> Iterator[str]:
    """The names that the step gives to new edges."""
    for name, parameter in technique.parameters.items():
        if parameter.kind is Kind.NAME and name in step.args:
            value = step.args[name].value
            if isinstance(value, Word):
                yield value.text
