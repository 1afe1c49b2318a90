"""How far a class is: a bar with the count and the rest of the time on a terminal, a line for each guide elsewhere."""

from __future__ import annotations

import sys
import time
from contextlib import suppress

from furbelow.diagnose.report_text import safe
from furbelow.order.make_one import Finished

_WIDE = 24  # signs of the bar
_EVERY = 0.1  # seconds between two looks at the clock


class Progress:
    """Of `guides` guides. Planning is counted by itself, for it comes first."""

    def __init__(self, guides: int) -> None:
        # What steers the terminal back to the start of its line does not go through an outlet.
        screen = sys.__stderr__
        self.screen = screen if screen is not None and not screen.closed and screen.isatty() and guides > 1 else None
        self.guides, self.done = guides, 0
        self.began = self.told = time.monotonic()

    def planned(self, number: int) -> None:
        self._bar("planned", number)
        if number == self.guides:
            self.began = time.monotonic()

    def finished(self, one: Finished) -> None:
        """A guide, or the page for all, which is no guide and always has its line."""
        self.done += 1
        if one.page is not None and (self.screen is None or self.done > self.guides):
            self.clear()
            print(f"{safe(one.whose)}: {one.page}{' (unchanged)' if one.unchanged else ''}", flush=True)
        self._bar("made", self.done)

    def _bar(self, what: str, number: int) -> None:
        now = time.monotonic()
        if self.screen is None or number > self.guides or (now - self.told < _EVERY and number < self.guides):
            return
        self.told = now
        full = _WIDE * number // self.guides
        left = round((now - self.began) / number * (self.guides - number))
        rest = f", {left // 60}:{left % 60:02} left" if left else ""
        self._write(f"{what} {number:,} of {self.guides:,} [{'#' * full}{'.' * (_WIDE - full)}]{rest}")

    def clear(self) -> None:
        """The line of the bar given back, before something else is printed."""
        self._write("")

    def _write(self, said: str) -> None:
        if self.screen is not None:
            with suppress(OSError):
                print(f"\r{said:<78}", end="" if said else "\r", file=self.screen, flush=True)
