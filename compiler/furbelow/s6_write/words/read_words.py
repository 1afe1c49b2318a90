"""Files of messages in Project Fluent syntax, read whole: what a library would pass over in silence is a fault here."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache

from fluent.runtime import FluentResource
from fluent.syntax import ast

from furbelow.resources import template, words_files
from furbelow.s6_write.words.kept_words import kept_words


class WordsFault(Exception):
    """A file that can't be read, or a message that can't be said with the values given. line: of the file, 0 for none."""

    def __init__(self, said: str, line: int = 0) -> None:
        super().__init__(said)
        self.said, self.line = said, line


def read_words(name: str, source: str) -> ast.Resource:
    """The messages of one file. name: for faults.

    Fails: WordsFault for a line that is no Fluent (it would spoil its own message in silence), for one name twice, and
        for what is nested too deep to be read.
    """
    try:
        resource = FluentResource(source)
    except RecursionError as deep:
        raise WordsFault(f"{name}: a message is nested too deep") from deep
    seen: set[str] = set()
    for entry in resource.body:
        if isinstance(entry, ast.Junk):
            note = entry.annotations[0]
            line = line_of(source, note.span.start if note.span else 0)
            raise WordsFault(f"{name}, line {line}: {note.message}", line)
        if isinstance(entry, ast.Message):
            if entry.id.name in seen:
                line = line_of(source, entry.span.start if entry.span else 0)
                raise WordsFault(f"{name}: `{entry.id.name}` stands there twice", line)
            seen.add(entry.id.name)
    return resource


def line_of(source: str, place: int) -> int:
    """The number of the line on which a place of the text lies."""
    return source.count("\n", 0, place) + 1


def messages_of(resource: ast.Resource) -> dict[str, ast.Message]:
    return {entry.id.name: entry for entry in resource.body if isinstance(entry, ast.Message)}


@cache
def shipped(language: str, file: str) -> ast.Resource:
    """The messages of a shipped file. Read once: thirty guides of a class say the same ones."""
    name = f"words/{language}/{file}.ftl"
    return kept_words(name, template(name).read_text(encoding="utf-8"), read_words)


def all_shipped(language: str) -> dict[str, ast.Message]:
    """Every message of a language, in the order of its files."""
    found: dict[str, ast.Message] = {}
    for file in words_files(language):
        found |= messages_of(shipped(language, file))
    return found


def laid_over(shipped: ast.Resource, own: Mapping[str, ast.Message]) -> ast.Resource:
    """The shipped messages with a teacher's own laid over them: what hers leaves out, sentence or attribute, stays."""
    found = messages_of(shipped)
    return ast.Resource([over(each, own[name]) if name in own else each for name, each in found.items()])


def over(shipped: ast.Message, own: ast.Message) -> ast.Message:
    said = {attribute.id.name for attribute in own.attributes}
    kept = [attribute for attribute in shipped.attributes if attribute.id.name not in said]
    return ast.Message(shipped.id, own.value or shipped.value, [*own.attributes, *kept], own.comment)
