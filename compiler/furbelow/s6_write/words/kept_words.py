"""The shipped words, read once and kept: reading them takes a hundred times as long as a guide may. A teacher's own never are."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from pathlib import Path

from furbelow.resources import template, words_files
from furbelow.s6_write.words.kept import kept
from furbelow.s6_write.words.pattern import Message

Messages = Mapping[str, Message]


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

    def read() -> dict[str, tuple[object, ...]]:
        from furbelow.s6_write.words.read_words import messages_of, read_words

        return {called: tuple(message) for called, message in messages_of(read_words(name, source.decode())).items()}

    return {called: Message(*message) for called, message in kept(name, _reader() + source, read).items()}


@cache
def _reader() -> bytes:
    """How messages are read, which may change while they stay."""
    return Path(__file__).with_name("read_words.py").read_bytes()
