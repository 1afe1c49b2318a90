"""The shipped words, and what CLDR knows of their language, read once and kept where Python keeps the byte-code of this folder.

Reading them takes a hundred times as long as a guide may. As with any byte-code, a file that is stale, torn or made by
another version is passed over, and where none can be kept the words are read afresh. A teacher's own words are never kept.
"""

from __future__ import annotations

import marshal
import os
import sys
from collections.abc import Callable, Mapping
from contextlib import suppress
from functools import cache
from hashlib import sha256
from importlib.util import cache_from_source
from pathlib import Path
from typing import Any, TypeVar

from furbelow.resources import template, words_files
from furbelow.s6_write.words.pattern import Message

Messages = Mapping[str, Message]
Plain = TypeVar("Plain")  # values that `marshal` writes and reads

_MARK = 32  # bytes: the sum of what was read, by what, and of what is kept


@cache
def shipped(language: str, file: str) -> Messages:
    """The messages of a shipped file, by their names. Read once: thirty guides of a class say the same ones."""
    name = f"words/{language}/{file}.ftl"
    return kept_words(name, template(name).read_bytes())


def all_shipped(language: str) -> Messages:
    """Every message of a language, in the order of its files."""
    return {name: message for file in words_files(language) for name, message in shipped(language, file).items()}


def kept_words(name: str, source: bytes) -> Messages:
    """The messages of a shipped file. name: of the file, such as `words/de/gather.ftl`."""

    def read() -> Mapping[str, tuple[Any, ...]]:
        from furbelow.s6_write.words.read_words import messages_of, read_words

        return {called: tuple(message) for called, message in messages_of(read_words(name, source.decode())).items()}

    found = kept(name, source, read, reader="read_words.py")
    return {called: Message(*message) for called, message in found.items()}


def kept(name: str, source: bytes, read: Callable[[], Plain], *, reader: str) -> Plain:
    """What `read` makes of the source, in values that Python can keep.

    reader: the file of this folder by which it is read.
    """
    file = f"{os.path.dirname(cache_from_source(__file__))}/{name.replace('/', '-')}.{sys.implementation.cache_tag}"
    with suppress(OSError), open(file, "rb") as held:
        whole = held.read()
        if whole[:_MARK] == _mark(reader, source, whole[_MARK:]):
            known: Plain = marshal.loads(whole[_MARK:])
            return known
    found: Any = read()
    if not sys.dont_write_bytecode:
        content = marshal.dumps(found)
        beside = f"{file}.{os.getpid()}"
        with suppress(OSError):
            Path(beside).write_bytes(_mark(reader, source, content) + content)
            os.replace(beside, file)
    read_now: Plain = found
    return read_now


@cache
def _read_by(reader: str) -> bytes:
    """What a kept file hangs on besides its source: this Python, and how it was read."""
    return sha256(sys.version.encode() + Path(__file__).with_name(reader).read_bytes()).digest()


def _mark(reader: str, source: bytes, content: bytes) -> bytes:
    return sha256(_read_by(reader) + source + content).digest()
