"""What all parts of a booklet are told with."""

from __future__ import annotations

from collections.abc import Sequence

from furbelow.named import NamedTuple
from furbelow.s6_write.booklet.texts import Letters
from furbelow.s6_write.words.messages import Messages


class Sized(NamedTuple):
    """How the sizes are called, which one is drawn, the words, and the numbers that have letters so far."""

    names: Sequence[str]
    drawn: int
    words: Messages
    letters: Letters

    @property
    def all(self) -> tuple[int, ...]:
        """All sizes, by their places."""
        return tuple(range(len(self.names)))

    def whose(self, sizes: Sequence[int]) -> tuple[int, ...]:
        """The sizes, none of them named where it is all."""
        return () if len(sizes) == len(self.names) else tuple(sizes)
