"""A teacher's own messages: in files of any name, in a folder for each language, laid over the shipped ones by their names.

They are read as they are; whether they may be said is for check_words.
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping

from fluent.syntax import ast

from furbelow.diagnose.fault import Fault, Label, Span, Staged
from furbelow.named import NamedTuple
from furbelow.s1_read.inside import is_inside
from furbelow.s1_read.source import read_bytes
from furbelow.s6_write.words.pattern import Message, WordsFault
from furbelow.s6_write.words.read_words import entries_of, line_of, message_of, read_words

MOST_FILES = 200


class OwnMessage(NamedTuple):
    """A message, as it is said and as it is written, and its place: the file, and the text of it for the line."""

    message: Message
    written: ast.Message
    file: str
    source: str

    def at(self, node: ast.BaseNode | None = None) -> Label:
        """The line of the message, or of a part of it."""
        span = getattr(node or self.written, "span", None)
        line = line_of(self.source, span.start if span else 0)
        return Label(Span(self.file, line, 1, line, 1))


def read_own(folder: str, language: str) -> Staged[Mapping[str, OwnMessage]]:
    """The messages of a folder in one language, by name; none where it has no folder for that language.

    Fails: FB102, FB112 and FB162 for a file that can't be read, FB162 for a name that stands twice, FB165 for a file
        that lies elsewhere.
    """
    found: dict[str, OwnMessage] = {}
    faults: list[Fault] = []
    for path in _files(os.path.join(folder, language)):
        if not is_inside(path, folder):
            faults.append(Fault("FB165", f"{path} is a link to a file outside of the folder of words", _at(path, 1)))
            continue
        _, read = read_bytes(path)
        faults += read.faults
        if read.value is None:
            continue
        source = read.value.decode("utf-8-sig", errors="replace")
        try:
            written = read_words(os.path.basename(path), source)
        except WordsFault as wrong:
            faults.append(Fault("FB162", wrong.said, _at(path, wrong.line or 1)))
            continue
        for entry in entries_of(written):
            name, own = entry.id.name, OwnMessage(message_of(entry), entry, path, source)
            if name in found:
                other = (found[name].at()._replace(text="the first"),)
                faults.append(Fault("FB162", f"`{name}` stands in two files", own.at(), other, help="keep one of them"))
            found[name] = own
    return Staged(found, tuple(faults))


def folders_of(folder: str) -> tuple[str, ...]:
    """What the folder of words holds: a folder for each language."""
    with os.scandir(folder) as entries:
        return tuple(sorted(entry.name for entry in entries if entry.is_dir() and not entry.name.startswith(".")))


def _files(folder: str) -> Iterator[str]:
    if os.path.isdir(folder):
        with os.scandir(folder) as entries:
            names = sorted(entry.name for entry in entries if entry.name.endswith(".ftl"))
        yield from (os.path.join(folder, name) for name in names[:MOST_FILES])


def _at(path: str, line: int) -> Label:
    return Label(Span(path, line, 1, line, 1))
