"""Files written so that each is whole, old or new, whenever the machine stops."""

from __future__ import annotations

import os
import re
import stat
from contextlib import suppress
from pathlib import Path
from threading import Thread

PASSING = re.compile(r"\.furbelow-[0-9]+-[0-9]+\.part")


def passing_path(folder: Path, number: int) -> Path:
    """The place of a file that is not whole yet."""
    return folder / f".furbelow-{os.getpid()}-{number}.part"


def write_safely(path: Path, content: bytes) -> None:
    """A new file, brought safely to the disk. Fails: OSError, where one stands there too."""
    # O_EXCL: a link that someone laid under this name is never followed.
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
    with os.fdopen(os.open(path, flags, 0o666), "wb") as opened:
        opened.write(content)
        opened.flush()
        os.fsync(opened.fileno())


class Writing(Thread):
    """`write_safely` beside other work, from now on. `concurrent.futures` would take as long to load as all files to write."""

    def __init__(self, path: Path, content: bytes) -> None:
        super().__init__()
        self.size = len(content)
        self._path, self._content = path, content
        self._failed: Exception | None = None
        self.start()

    def run(self) -> None:
        try:
            write_safely(self._path, self._content)
        except Exception as error:  # told by who waits for the end
            self._failed = error

    def end(self) -> None:
        """Waits until the file is written. Fails: as `write_safely`."""
        self.join()
        if self._failed:
            raise self._failed


def write_over(path: Path, content: bytes) -> None:
    """One file with its rights kept, whole or as it was. Fails: OSError; then nothing is left beside it."""
    passing = passing_path(path.parent, 0)
    try:
        write_safely(passing, content)
        os.chmod(passing, stat.S_IMODE(path.stat().st_mode))
        os.replace(passing, path)
    finally:
        with suppress(OSError):
            passing.unlink()
    settle(path.parent)


def settle(folder: Path) -> None:
    """Brings the renames in a folder safely to the disk, where the system can."""
    with suppress(OSError):
        opened = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(opened)
        finally:
            os.close(opened)
