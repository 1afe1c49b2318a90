"""The work of each step and of the cutting, for its hours."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import TYPE_CHECKING

from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import Performed, SetUp
from furbelow.s3_rehearse.order_of_work import machine_changes
from furbelow.s5_buy.hours import Work
from furbelow.s5_buy.sewing import Joins, copies_of

if TYPE_CHECKING:  # a check asks for the work of steps, and plans no cutting
    from furbelow.s4_cut.cut import Cutting


def works_of(performed: Sequence[Performed], joins: Joins) -> list[Work]:
    """The work of each step; a set-up counts where the machine was set up differently before."""
    works = []
    changes = iter(machine_changes([done for done in performed if not _idle(done, joins)]))
    for done in performed:
        if _idle(done, joins):
            works.append(Work())
            continue
        by_hand = done.setup is SetUp.HAND  # whatever its stitch is called, it goes at the pace of a hand
        seams = tuple(
            (StitchType.HAND if by_hand else sewn.kind, sewn.length)
            for sewn in done.sewn
            if sewn.kind and not sewn.singly
            for _ in range(copies_of(sewn, joins))
        )
        pinked = sum((sewn.length * copies_of(sewn, joins) for sewn in done.sewn if not sewn.kind), Fraction(0))
        works.append(
            Work(
                seams,
                int(next(changes)),
                sum(sewn.singly * copies_of(sewn, joins) for sewn in done.sewn),
                done.pinned,
                gathered=Fraction(0) if done.setup in (SetUp.IRON, SetUp.TABLE) else done.handled,
                cut=pinked + (done.handled if done.setup is SetUp.TABLE else Fraction(0)),
                pressed=done.handled if done.setup is SetUp.IRON else Fraction(0),
                thread_ends=done.thread_ends,
                tended=done.tended,
            )
        )
    return works


def _idle(done: Performed, joins: Joins) -> bool:
    """Whether a step has nothing to do: joins of strips that the plan cuts whole."""
    return bool(done.sewn) and not any(copies_of(sewn, joins) for sewn in done.sewn)


def cutting_work(cutting: Cutting) -> Work:
    sections = [section for cloth in cutting.sheets for section in cutting.sheet(cloth).plan.sections]
    return Work(
        cut=sum((_cut_length(cutting, cloth) for cloth in cutting.sheets), Fraction(0)),
        sections=len(sections),
        tags=sum(len(section.pieces) for section in sections),
    )


def _cut_length(cutting: Cutting, cloth: str) -> Fraction:
    """How far the shears go: over the width once a section, along every lane, and over it at every segment.

    Round a panel that lies freely they go once, and the chalk before them.
    """
    plan = cutting.sheet(cloth).plan
    return sum(
        (
            plan.usable_width
            + sum((section.length + lane.depth * len(lane.segments) for lane in section.lanes), Fraction(0))
            + sum((2 * (panel.length + panel.width) for panel in section.panels), Fraction(0))
            for section in plan.sections
        ),
        Fraction(0),
    )
