"""Watches the files of a preview and holds what was built from them last."""

from __future__ import annotations

import os
import threading
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from furbelow.named import NamedTuple
from furbelow.preview.build import Built

LOOK_EVERY = 0.005  # seconds between two looks at the files
EMPTY = 40  # looks at an empty file before it is believed: most editors empty a file and then write it
LONGEST_WAIT = 20.0  # seconds that a browser may wait for news


@dataclass(frozen=True)
class State:
    """number: counts the builds, from 1. guide_number: the build that the shown guide is from, 0 for none yet."""

    number: int
    guide_number: int
    guide: bytes
    report: str
    tally: str


class Watch:
    """Builds at once, then again whenever one of the files, or one that the spec is built on, changes.

    The last good guide is kept.
    """

    def __init__(self, files: Sequence[str], build: Callable[[], Built]) -> None:
        self._named, self._files = tuple(files), tuple(files)
        self._build = build
        self._news = threading.Condition()
        self._ended = threading.Event()
        self._seen = self._look()
        self._state = self._built(State(0, 0, b"", "", ""))
        self._thread = threading.Thread(target=self._follow, daemon=True)

    @property
    def state(self) -> State:
        return self._state

    def start(self) -> None:
        self._thread.start()

    def end(self) -> None:
        self._ended.set()
        self._thread.join()

    def after(self, number: int) -> State:
        """The state as soon as it is another than that number, or as it is when the longest wait is over."""
        with self._news:
            self._news.wait_for(lambda: self._state.number != number or self._ended.is_set(), LONGEST_WAIT)
            return self._state

    def _follow(self) -> None:
        before, alike = self._seen, 0
        while not self._ended.wait(LOOK_EVERY):
            seen = self._look()
            # Two looks alike: a file that is just being written is short for a moment.
            before, alike = seen, alike + 1 if seen == before else 0
            if seen == self._seen or alike < (EMPTY if any(file and file.size == 0 for file in seen.values()) else 1):
                continue
            self._seen = seen
            state = self._built(self._state)
            before = self._seen
            with self._news:
                self._state = state
                self._news.notify_all()
        with self._news:
            self._news.notify_all()

    def _built(self, before: State) -> State:
        built, number = self._build(), before.number + 1
        # What a spec is built on is watched with it, and may be other files after a change.
        self._files = (*self._named, *built.built_on)
        self._seen = {file: self._seen[file] if file in self._seen else _stamp(file) for file in self._files}
        if built.guide is None:
            return State(number, before.guide_number, before.guide, built.report, built.tally)
        return State(number, number, built.guide, built.report, built.tally)

    def _look(self) -> dict[str, _Stamp | None]:
        return {file: _stamp(file) for file in self._files}


class _Stamp(NamedTuple):
    changed: int
    size: int
    number: int  # editors save by renaming a new file, or by writing into the old one: this tells the first


def _stamp(file: str) -> _Stamp | None:
    try:
        found = os.stat(file)
    except (OSError, ValueError):
        return None
    return _Stamp(found.st_mtime_ns, found.st_size, found.st_ino)
