"""The shipped words, read once and kept where Python keeps the byte-code of this folder.

Reading them takes a hundred times as long as a guide may. As with any byte-code, a file that is stale, torn or made by
another version is passed over, and where none can be kept the words are read afresh. A teacher's own words are never kept.
"""

from __future__ import annotations

import marshal
import os
import sys
from collections.abc import Mapping
from contextlib import suppress
from functools import cache
from hashlib import sha256
from importlib.util import cache_from_source
from pathlib import Path

from furbelow.resources import template, words_files
from furbelow.s6_write.words.pattern import Message

Messages = Mapping[str, Message]

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
    file = f"{os.path.dirname(cache_from_source(__file__))}/{name.replace('/', '-')}.{sys.implementation.cache_tag}"
    with suppress(OSError), open(file, "rb") as held:
        kept = held.read()
        if kept[:_MARK] == _mark(source, kept[_MARK:]):
            return {called: Message(*message) for called, message in marshal.loads(kept[_MARK:]).items()}
    from furbelow.s6_write.words.read_words import messages_of, read_words

    found = messages_of(read_words(name, source.decode("utf-8")))
    if not sys.dont_write_bytecode:
        kept = marshal.dumps({called: tuple(message) for called, message in found.items()})
        beside = f"{file}.{os.getpid()}"
        with suppress(OSError):
            Path(beside).write_bytes(_mark(source, kept) + kept)
            os.replace(beside, file)
    return found


@cache
def _reader() -> bytes:
    """What a kept file hangs on besides its source: this Python, and how messages are read."""
    return sha256(sys.version.encode() + Path(__file__).with_name("read_words.py").read_bytes()).digest()


def _mark(source: bytes, kept: bytes) -> bytes:
    return sha256(_reader() + source + kept).digest()
