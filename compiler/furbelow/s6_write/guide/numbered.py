"""Sentences as they are numbered within their operation."""

from __future__ import annotations

from collections.abc import Iterable

from furbelow.s6_write.guide.guide import GuideStep
from furbelow.s6_write.words.holes import SentenceNumber, bare
from furbelow.s6_write.words.said_step import SaidAction
from furbelow.s6_write.words.words import Words


def numbered(actions: Iterable[SaidAction], words: Words) -> tuple[GuideStep, ...]:
    """The actions as the guide tells them, from 1 on. A remedy that was told a few sentences before is not told in full again."""
    told: dict[str, int] = {}
    steps = []
    for number, action in enumerate(actions, 1):
        remedy = action.remedy
        if remedy in told:
            again = words.text("remedy-again", {"sentence": SentenceNumber(told[remedy])})
            remedy = again if len(bare(again)) < len(bare(remedy)) else remedy
        elif remedy:
            told[remedy] = number
        steps.append(
            GuideStep(
                number,
                action.text,
                action.check,
                action.tolerance,
                remedy,
                action.chain,
                action.copies,
                action.mark,
                until=action.until,
            )
        )
    return tuple(steps)
