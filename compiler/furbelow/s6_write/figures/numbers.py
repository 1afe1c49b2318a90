"""The numbers of the guide's sentences, so that a callout names the sentence that it belongs to."""

from __future__ import annotations

from collections.abc import Sequence

from furbelow.s6_write.words.holes import MarkedNumber
from furbelow.s6_write.words.said_step import SaidAction


class Numbers:
    """The actions of one operation; the first of them has the number `first` in it, None where figures stand alone.

    marked: whether the numbers are written marked, for a booklet of sizes.
    called: the numbers that a figure has asked for so far, by which it is known where it stands.
    """

    def __init__(self, actions: Sequence[SaidAction], first: int | None, *, marked: bool = False) -> None:
        self.actions, self.first, self.marked = actions, first, marked
        self.called: list[int] = []

    def at(self, *marks: str) -> int | None:
        """The number of the first sentence with one of these marks; None where the guide has no such sentence."""
        if self.first is None:
            return None
        found = next((number for number, action in enumerate(self.actions, self.first) if action.mark in marks), None)
        if found is not None and found not in self.called:
            self.called.append(found)
        return MarkedNumber(found) if found is not None and self.marked else found

    def taken(self) -> tuple[int, ...]:
        """The numbers called since they were last taken, the first first."""
        called, self.called = tuple(sorted(self.called)), []
        return called
