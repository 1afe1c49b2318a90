"""Like drawings once: a seam that is drawn already is only referred to."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from furbelow.s6_write.guide.guide import Figure, Operation, Part


def shown_once(parts: Sequence[Part]) -> tuple[Part, ...]:
    """The parts with each drawing where it first stands; the sentences of those that are like it say where that is.

    The cutting may come as a part, before the others.
    """
    shown: dict[str, str] = {}

    def first(operation: Operation) -> Operation:
        kept: list[Figure] = []
        at: dict[int, str] = {}
        for figure in operation.figures:
            beside = min(figure.shows, default=1)
            if figure.like in shown:
                at.setdefault(beside, shown[figure.like])
                continue
            kept.append(figure)
            if figure.like:
                shown[figure.like] = f"{operation.letter}{beside}"
        steps = tuple(replace(step, drawn_at=at.get(step.number, "")) for step in operation.steps)
        return replace(operation, figures=tuple(kept), steps=steps)

    return tuple(replace(part, operations=tuple(map(first, part.operations))) for part in parts)
