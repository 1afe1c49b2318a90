"""The operations of a booklet as the guide of one size has them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from furbelow.s6_write.booklet.booklet import Booklet, SizedOperation, SizedStep
from furbelow.s6_write.booklet.texts import said_for
from furbelow.s6_write.guide.guide import Operation


def resolved(booklet: Booklet, size: int) -> Iterator[Operation]:
    """size: by its place. Every number stands in its sentence; sentences keep their numbers in the booklet."""
    for operation in booklet.operations:
        if not operation.sizes or size in operation.sizes:
            yield _resolved(operation, size, booklet)


def _resolved(operation: SizedOperation, size: int, booklet: Booklet) -> Operation:
    def said(text: str) -> str:
        return said_for(text, size, booklet.numbers)

    steps = tuple(
        replace(
            step,
            text=said(step.text),
            check=said(step.check),
            tolerance=said(step.tolerance),
            remedy=said(step.remedy),
            chain=said(step.chain),
        )
        for step in operation.steps
        if not isinstance(step, SizedStep) or not step.sizes or size in step.sizes
    )
    return replace(
        operation,
        title=said(operation.title),
        aim=said(operation.aim),
        number=said(operation.number),
        stop=said(operation.stop),
        all_of_it=said(operation.all_of_it),
        minutes=operation.sized_minutes[size],
        cautions=tuple(replace(each, text=text) for each in operation.cautions if (text := said(each.text))),
        steps=steps,
    )
