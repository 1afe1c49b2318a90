"""Sentences as they are numbered within their operation."""

from __future__ import annotations

from collections.abc import Iterable

from furbelow.s6_write.guide.guide import GuideStep
from furbelow.s6_write.words.said_step import SaidAction


def numbered(actions: Iterable[SaidAction]) -> tuple[GuideStep, ...]:
    """The actions as the guide tells them, from 1 on."""
    return tuple(
        GuideStep(
            number,
            told.text,
            told.check,
            told.tolerance,
            told.remedy,
            told.chain,
            told.copies,
            told.mark,
            until=told.until,
        )
        for number, told in enumerate(actions, 1)
    )
