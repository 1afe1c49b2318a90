"""Where the bobbin runs out, so that a fresh one can go in before a seam and not in the middle of it."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from typing import NamedTuple

from furbelow.s5_buy.out_of_range import OutOfRange, outside


class BobbinWork(NamedTuple):
    """One step at the lockstitch machine: `per_piece` mm of bobbin thread, for `pieces` pieces in a chain."""

    step: str
    per_piece: Fraction
    pieces: int = 1


class FreshBobbin(NamedTuple):
    """Put a fresh bobbin in before piece `piece` (from 1) of `step`; `left` mm stay on the old one."""

    step: str
    piece: int
    left: Fraction


class RunsOutInside(NamedTuple):
    """One piece needs more than a full bobbin: `changes` changes fall inside its seam in any case."""

    step: str
    piece: int
    changes: int


class BobbinPlan(NamedTuple):
    """Bobbins to wind, the fresh starts between pieces and the changes no start can avoid."""

    bobbins: int
    fresh: tuple[FreshBobbin, ...]
    inside: tuple[RunsOutInside, ...]


def plan_bobbins(
    work: Iterable[BobbinWork], capacity: Fraction, keep_back: Fraction = Fraction(0)
) -> BobbinPlan | OutOfRange:
    """Before which step and piece to start with a fresh bobbin, so that none runs out in a seam.

    work: the steps in the order they are sewn, all with one and the same thread.
    capacity: mm of thread on a full bobbin. No default: bobbin, thread and winding decide; measure one.
    keep_back: mm at the end of a bobbin not to count on.
    The old bobbin is changed as late as it can be: right before the piece it no longer reaches through.
    Fails: a bobbin without capacity; keep_back that leaves nothing of it.
    """
    if wrong := outside("bobbin capacity", capacity, "mm", above=0):
        return wrong
    if wrong := outside("thread kept back on the bobbin", keep_back, "mm", at_least=0, below=capacity):
        return wrong
    full = capacity - keep_back
    left = Fraction(0)
    bobbins = 0
    fresh: list[FreshBobbin] = []
    inside: list[RunsOutInside] = []
    for step in work:
        if step.per_piece < 0 or step.pieces < 0:
            raise ValueError("bobbin thread and pieces can't be below 0")
        if step.per_piece == 0:
            continue
        done = 0
        while done < step.pieces:
            if left < step.per_piece:
                if bobbins:
                    fresh.append(FreshBobbin(step.step, done + 1, left + keep_back))
                bobbins, left = bobbins + 1, full
            if left < step.per_piece:
                changes = -(-step.per_piece // full) - 1
                inside.append(RunsOutInside(step.step, done + 1, changes))
                bobbins += changes
                left = full * (changes + 1) - step.per_piece
                done += 1
            else:
                reach = min(step.pieces - done, left // step.per_piece)
                left -= reach * step.per_piece
                done += reach
    return BobbinPlan(bobbins, tuple(fresh), tuple(inside))
