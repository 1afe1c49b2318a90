"""The messages of a language as a person reads and writes them: what can be said differently, and what is still to be said."""

from __future__ import annotations

from collections.abc import Iterator

from fluent.syntax import FluentSerializer, ast

from furbelow.resources import languages, template, words_files
from furbelow.s6_write.words.check_words import lacking, unlike
from furbelow.s6_write.words.kept_words import all_shipped, shipped
from furbelow.s6_write.words.read_words import entries_of, read_words
from furbelow.s6_write.words.says import Table


def listed(file: str, language: str) -> str:
    """A file of messages, above each what must be told in it. Ready to be copied into a folder of one's own."""
    table = Table(all_shipped(language))
    return FluentSerializer().serialize(
        ast.Resource([_with_values(entry, table) for entry in _written(language, file).body])
    )


def _with_values(entry: ast.EntryType, table: Table) -> ast.EntryType:
    if not isinstance(entry, ast.Message):
        return entry
    name = entry.id.name
    parts = [name, *(f"{name}.{attribute.id.name}" for attribute in entry.attributes)]
    told = {part: sorted(table.says(part).always) for part in parts if part in table.patterns}
    lines = [_told(part, values) for part, values in told.items() if values]
    if not lines:
        return entry
    before = [entry.comment.content] if entry.comment and entry.comment.content else []
    return ast.Message(entry.id, entry.value, entry.attributes, ast.Comment("\n".join([*before, *lines])))


def _told(part: str, values: list[str]) -> str:
    """What must be told: the shipped one says it whichever way it is said."""
    _, dot, attribute = part.partition(".")
    owner = f".{attribute} " if dot else ""
    return f"{owner}always says {', '.join(f'${value}' for value in values)}"


def missing(language: str) -> Iterator[str]:
    """What a language has not said yet, as English messages under the names of their files; then what it says otherwise."""
    whole = language not in languages()
    names = set(Table(all_shipped("en")).patterns if whole else lacking(language))
    for file in words_files("en"):
        if not names.isdisjoint(Table(shipped("en", file)).patterns):
            entries = (_left(each, names) for each in entries_of(_written("en", file)))
            left: list[ast.EntryType] = [each for each in entries if each]
            yield f"### {file}.ftl\n\n{FluentSerializer().serialize(ast.Resource(left))}"
    if not whole:
        yield from (f"# {name} {said}\n" for name, said in unlike(language))


def _left(message: ast.Message, names: set[str]) -> ast.Message | None:
    """The parts of a message that are among the names."""
    name = message.id.name
    attributes = [each for each in message.attributes if f"{name}.{each.id.name}" in names]
    value = message.value if name in names else None
    return ast.Message(message.id, value, attributes, message.comment) if value or attributes else None


def _written(language: str, file: str) -> ast.Resource:
    name = f"words/{language}/{file}.ftl"
    return read_words(name, template(name).read_text(encoding="utf-8"))
