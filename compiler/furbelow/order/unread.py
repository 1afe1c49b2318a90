"""How reading an order ends where there is nothing to go on with."""

from __future__ import annotations


class Unread(Exception):
    """What was asked for can't be read, and its faults are told already.

    by_call: the call is wrong, and no file. said: what is still to be told, where no fault has a place.
    """

    def __init__(self, *, by_call: bool, said: str = "") -> None:
        super().__init__(said)
        self.by_call = by_call
        self.said = said
