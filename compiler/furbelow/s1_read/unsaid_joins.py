"""Joins of strips that a maker does not write, for there is nothing to decide: they come before the piece is worked on."""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.garment.spec import Arg, EdgeName, LayerName, Piece, Step, Word, each_of

JOIN = "join strips"
_PIECE_KINDS = ("piece", "pieces")


def with_joins(steps: tuple[Step, ...], pieces: Mapping[str, Piece]) -> tuple[Step, ...]:
    """The steps with the strips of each pieced piece joined just before the first of them that works on it.

    A piece that some step joins is left to that step: it says when, and with what else.
    """
    said = {name for step in steps if step.technique == JOIN for name in _worked_on(step)}
    left = {name: piece.piecing for name, piece in pieces.items() if piece.piecing and name not in said}
    if not left:
        return steps
    found: list[Step] = []
    for step in steps:
        now = {name: piecing for name in _worked_on(step) if (piecing := left.pop(name, None))}
        if now:
            names = tuple(Word(name, piecing.span) for name, piecing in now.items())
            of = Arg("of", names, names[0].span, given=False, kind="pieces", needed=True)
            found.append(Step(0, JOIN, {"of": of}, step.part, "", names[0].span))
        found.append(step)
    return tuple(step._replace(index=index) for index, step in enumerate(found))


def _worked_on(step: Step) -> tuple[str, ...]:
    """The pieces that a step names, itself or by an edge, each once and in their order."""
    names = []
    for arg in step.args.values():
        for value in each_of(arg.value):
            match value:
                case EdgeName():
                    names.append(value.piece)
                case LayerName():
                    names.append(value.edge.piece)
                case Word() if arg.kind in _PIECE_KINDS:
                    names.append(value.text)
    return tuple(dict.fromkeys(names))
