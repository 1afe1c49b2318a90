"""The work of each step and of the cutting, for its hours."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import Performed, SetUp
from furbelow.s3_rehearse.order_of_work import machine_changes
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.hours import Work
from furbelow.s5_buy.sewing import Joins, copies_of


def works_of(performed: Sequence[Performed], joins: Joins) -> list[Work]:
    """The work of each step; a set-up counts where the machine was set up differently before."""
    works = []
    for done, changes in zip(performed, machine_changes(performed), strict=True):
        by_hand = done.setup is SetUp.HAND  # whatever its stitch is called, it goes at the pace of a hand
        seams = tuple(
            (StitchType.HAND if by_hand else sewn.kind, sewn.length)
            for sewn in done.sewn
            for _ in range(copies_of(sewn, joins))
        )
        pressed = done.handled if done.setup is SetUp.IRON else Fraction(0)
        handled = done.handled - pressed
        works.append(
            Work(seams, int(changes), done.pinned, handled, pressed=pressed, thread_ends=done.thread_ends),
        )
    return works


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
