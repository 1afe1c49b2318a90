"""The numbers of the guide's sentences, so that a callout names the sentence that it belongs to."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from furbelow.garment.technique import Action


class Numbers(NamedTuple):
    """The actions of one operation; the first of them has the number `first` in the guide, None where it has none."""

    actions: Sequence[Action]
    first: int | None

    def of(self, *words: str) -> int | None:
        """The number of the first sentence that holds all these words; None where no sentence does."""
        if self.first is None:
            return None
        for number, action in enumerate(self.actions, self.first):
            if all(word.lower() in action.text.lower() for word in words):
                return number
        return None
