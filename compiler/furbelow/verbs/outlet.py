"""Where the verbs print to. What happens to the terminal, or to whatever reads from it, never decides about files.

A reader that goes away (`| head -1`) takes nothing but the rest of the lines. A place without room, or a stream that is
closed, loses the answer, and that is told at the end. A sign that the terminal's code page lacks is written as its number,
and none that steers a terminal goes through: names come from files that anyone may have written.
"""

from __future__ import annotations

import io
import os
import re
import sys
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from typing import TextIO

from furbelow.diagnose.unseen import marked_unseen

# The codes by which the reports of faults are coloured; all else that steers a terminal comes from somebody's text.
_COLOURS = re.compile(r"(\x1b\[[0-9;]*m)")


class Outlet(io.TextIOBase):
    """A stream that takes every line, whether or not it can still pass it on."""

    def __init__(self, stream: TextIO | None, *, coloured: bool = False) -> None:
        self._stream = stream
        self._coloured = coloured
        self.used = False  # whether anything was written at all
        self.lost: str | None = None  # why something was not written, unless its reader went away
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="backslashreplace")

    def write(self, text: str) -> int:
        self.used = True
        if self._stream is None:
            self.lost = self.lost or "it is closed"
            return len(text)
        try:
            self._stream.write(self._still(text))
        except (OSError, ValueError) as error:
            self._give_up(error)
        return len(text)

    def _still(self, text: str) -> str:
        parts = _COLOURS.split(text) if self._coloured else [text]
        parts[::2] = [marked_unseen(part, lambda sign: "\ufffd") for part in parts[::2]]
        return "".join(parts)

    def flush(self) -> None:
        if self._stream is not None:
            try:
                self._stream.flush()
            except (OSError, ValueError) as error:
                self._give_up(error)

    def isatty(self) -> bool:
        return self._stream is not None and not self._stream.closed and self._stream.isatty()

    def fileno(self) -> int:
        if self._stream is None:
            raise io.UnsupportedOperation("the stream is closed")
        return self._stream.fileno()

    def _give_up(self, error: OSError | ValueError) -> None:
        stream, self._stream = self._stream, io.StringIO()
        assert stream is not None  # it was written to
        if not isinstance(error, BrokenPipeError):
            self.lost = ((isinstance(error, OSError) and error.strerror) or str(error)).lower()
        # What still waits in the stream would fail once more when Python ends. Source: Python's documentation of SIGPIPE.
        with suppress(OSError, ValueError, AttributeError):
            nowhere = os.open(os.devnull, os.O_WRONLY)
            os.dup2(nowhere, stream.fileno())
            os.close(nowhere)


@contextmanager
def outlets() -> Iterator[Outlet]:
    """All that is printed inside goes through outlets; the one given is that of the answer."""
    answer, faults = sys.stdout, sys.stderr
    outlet, told = Outlet(answer), Outlet(faults, coloured=True)
    sys.stdout, sys.stderr = outlet, told
    try:
        yield outlet
    finally:
        outlet.flush()
        if outlet.lost:
            print(f"furbelow: the answer could not be written: {outlet.lost}", file=sys.stderr)
        told.flush()
        sys.stdout, sys.stderr = answer, faults


def in_colour() -> bool:
    """Whether faults are told in colours. Sources: no-color.org, force-color.org; a dumb terminal knows no codes."""
    if os.environ.get("NO_COLOR"):
        return False
    if os.environ.get("FORCE_COLOR"):
        return True
    return sys.stderr.isatty() and os.environ.get("TERM") != "dumb"
