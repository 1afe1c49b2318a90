"""The cutting: each size has its own plan, and sizes that are cut alike share one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields, is_dataclass, replace
from typing import TypeVar, cast

from furbelow.s6_write.booklet.booklet import SizedFigure, SizedOperation, SizedStep, WayToCut
from furbelow.s6_write.booklet.texts import grouped
from furbelow.s6_write.guide.cautions import each_once
from furbelow.s6_write.guide.guide import Guide, Operation, Part
from furbelow.s6_write.guide.shown_once import shown_once
from furbelow.s6_write.words.holes import bare

T = TypeVar("T")


def ways_to_cut(each: Sequence[Guide]) -> tuple[WayToCut, ...]:
    """each: the guides of all sizes."""
    told = {
        at: (all_bare(guide.cutting), all_bare(shown_once(each_once((Part("", guide.cut),), ()))[0].operations))
        for at, guide in enumerate(each)
    }
    ways = []
    for way, group in enumerate(grouped(told, lambda cut: cut), 1):
        sizes = () if len(group) == len(each) else tuple(group)
        pieces, operations = told[group[0]]
        cut = tuple(_cut(operation, sizes, way, len(each)) for operation in operations)
        ways.append(WayToCut(sizes, pieces, cut))
    return tuple(ways)


def _cut(operation: Operation, sizes: tuple[int, ...], way: int, of_all: int) -> SizedOperation:
    values = {each.name: getattr(operation, each.name) for each in fields(operation)}
    figures = tuple(replace(figure, key=f"{figure.key}-{way}") for figure in operation.figures)
    steps = tuple(
        SizedStep(**{each.name: getattr(step, each.name) for each in fields(step)}) for step in operation.steps
    )
    minutes = tuple(operation.minutes if not sizes or at in sizes else "" for at in range(of_all))
    return SizedOperation(
        **{**values, "key": f"{operation.key}-{way}", "figures": figures, "steps": steps},
        sizes=sizes,
        sized_minutes=minutes,
        drawings=tuple(SizedFigure(figure) for figure in figures),
        cut_for=way,
    )


def all_bare(value: T) -> T:
    """The value with no number marked in any of its texts."""
    return cast(T, _bare(value))


def _bare(value: object) -> object:
    if isinstance(value, str):
        return bare(value)
    if isinstance(value, tuple):
        return tuple(map(_bare, value))
    if is_dataclass(value) and not isinstance(value, type):
        return replace(value, **{each.name: _bare(getattr(value, each.name)) for each in fields(value)})
    return value
