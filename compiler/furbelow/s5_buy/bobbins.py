"""Where the bobbin runs out, so that a fresh one can go in before a seam and not in the middle of it."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from furbelow.named import NamedTuple


class Rows(NamedTuple):
    """Like rows of stitches in one step.

    step: its place in the order of work, from 0. before: the rows of that step sewn before these. all: its rows together.
    """

    step: int
    before: int
    all: int


class BobbinWork(NamedTuple):
    """Rows at the lockstitch machine: `per_piece` mm of bobbin thread, for `pieces` pieces in a chain."""

    rows: Rows
    per_piece: Fraction
    pieces: int = 1


class FreshBobbin(NamedTuple):
    """Put a fresh bobbin in before piece `piece` (from 1) of these rows; `left` mm stay on the old one."""

    rows: Rows
    piece: int
    left: Fraction


class RunsOutInside(NamedTuple):
    """One piece needs more than a full bobbin: `changes` changes fall inside its seam in any case."""

    rows: Rows
    piece: int
    changes: int


class BobbinPlan(NamedTuple):
    """Bobbins to wind, the fresh starts between pieces and the changes no start can avoid."""

    bobbins: int
    fresh: tuple[FreshBobbin, ...]
    inside: tuple[RunsOutInside, ...]


def plan_bobbins(work: Iterable[BobbinWork], capacity: Fraction) -> BobbinPlan:
    """Before which rows and piece to start with a fresh bobbin, so that none runs out in a seam.

    work: in the order in which it is sewn, all with one and the same thread.
    capacity: mm of thread on a full bobbin, above 0. No default: bobbin, thread and winding decide; measure one.
    The old bobbin is changed as late as it can be: right before the piece it no longer reaches through.
    """
    left = Fraction(0)
    bobbins = 0
    fresh: list[FreshBobbin] = []
    inside: list[RunsOutInside] = []
    for each in work:
        if each.per_piece == 0:
            continue
        done = 0
        while done < each.pieces:
            if left < each.per_piece:
                if bobbins:
                    fresh.append(FreshBobbin(each.rows, done + 1, left))
                bobbins, left = bobbins + 1, capacity
            if left < each.per_piece:
                changes = -(-each.per_piece // capacity) - 1
                inside.append(RunsOutInside(each.rows, done + 1, changes))
                bobbins += changes
                left = capacity * (changes + 1) - each.per_piece
                done += 1
            else:
                reach = min(each.pieces - done, left // each.per_piece)
                left -= reach * each.per_piece
                done += reach
    return BobbinPlan(bobbins, tuple(fresh), tuple(inside))
