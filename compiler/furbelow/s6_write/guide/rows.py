"""Which sentences and drawings of an operation stand side by side: each drawing begins beside the first sentence it shows.

Paper and screen take the same rows, so a drawing is never overleaf from its sentence. Heights are reckoned, not measured, in
millimetres of the printed column; a row that comes out a little higher or lower only leaves a little white.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil

from furbelow.s6_write.guide.guide import Figure, GuideStep, Operation, Row

PANEL = 88.0  # mm: a drawing on paper; its words are then 8 points high
HIGHEST = 85.0  # mm: drawings of one row together, lest half a page stay empty before it
_LETTERS, _SMALL = 43, 49  # in a line of the sentences' column, and of what stands below them
_LINE, _SMALL_LINE, _BETWEEN = 4.0, 3.45, 1.6  # mm
_SPARE = 0.8  # a column of sentences as short as this share of its drawing takes the next drawing in


def rows(operation: Operation) -> tuple[Row, ...]:
    """The sentences in their order. What no drawing shows fills the column beside one, or stands alone across the page."""
    found: list[Row] = []
    steps, left = list(operation.steps), sorted(operation.figures, key=_begins)
    while steps:
        shown = _taken(left, steps[0])
        if not shown:
            alone = next(
                (at for at, step in enumerate(steps) if any(_begins(each) <= step.number for each in left)), None
            )
            found.append(Row(tuple(steps[:alone]), ()))
            del steps[:alone]
            continue
        beside, high, told = [steps.pop(0)], _high(shown), 0.0
        told = told_high(beside[0])
        while steps:
            more = [each for each in left if _begins(each) <= steps[0].number]
            if more and (told > _SPARE * high or high + _high(more) > HIGHEST):
                break
            if not more and told + told_high(steps[0]) > high:
                break
            shown += _taken(left, steps[0])
            high = _high(shown)
            told += told_high(steps[0])
            beside.append(steps.pop(0))
        if found and not found[-1].figures:
            earlier = list(found.pop().steps)
            before: list[GuideStep] = []
            while earlier and told + told_high(earlier[-1]) <= high:
                told += told_high(earlier[-1])
                before.insert(0, earlier.pop())
            found += [Row(tuple(earlier), ())] if earlier else []
            beside = [*before, *beside]
        found.append(Row(tuple(beside), tuple(shown)))
    return tuple(found)


def told_high(step: GuideStep) -> float:
    """mm that a sentence takes in its column, with what stands below it."""
    below = (step.check, step.tolerance, step.remedy)
    small = ceil(sum(len(text) + 8 for text in below if text) / _SMALL)
    return ceil(len(step.text + step.chain) / _LETTERS) * _LINE + small * _SMALL_LINE + _BETWEEN


def _begins(figure: Figure) -> int:
    return min(figure.shows, default=0)


def _high(figures: Sequence[Figure]) -> float:
    return sum(PANEL * figure.proportion + 8 for figure in figures)


def _taken(left: list[Figure], step: GuideStep) -> list[Figure]:
    """The drawings that begin beside this sentence, no longer left."""
    taken = [each for each in left if _begins(each) <= step.number]
    left[:] = left[len(taken) :]
    return taken
