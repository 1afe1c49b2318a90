"""The numbers of the guide's sentences, so that a callout names the sentence that it belongs to."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from furbelow.s6_write.words.said_step import SaidAction


class Numbers(NamedTuple):
    """The actions of one operation; the first of them has the number `first` in the guide, None where it has none."""

    actions: Sequence[SaidAction]
    first: int | None

    def at(self, *marks: str) -> int | None:
        """The number of the first sentence with one of these marks; None where the guide has no such sentence."""
        if self.first is None:
            return None
        return next((number for number, action in enumerate(self.actions, self.first) if action.mark in marks), None)
