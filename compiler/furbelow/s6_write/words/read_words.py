"""Files of messages in Project Fluent syntax, read whole: what a library would pass over in silence is a fault here."""

from __future__ import annotations

from fluent.runtime import FluentResource
from fluent.syntax import ast


class WordsFault(Exception):
    """A file that can't be read, or a message that can't be said with the values given."""


def read_words(name: str, source: str) -> ast.Resource:
    """The messages of one file. name: for faults.

    Fails: WordsFault for a line that is no Fluent (it would spoil its own message in silence), and for one name twice.
    """
    resource = FluentResource(source)
    seen: set[str] = set()
    for entry in resource.body:
        if isinstance(entry, ast.Junk):
            note = entry.annotations[0]
            line = source.count("\n", 0, note.span.start if note.span else 0) + 1
            raise WordsFault(f"{name}, line {line}: {note.message}")
        if isinstance(entry, ast.Message):
            if entry.id.name in seen:
                raise WordsFault(f"{name}: `{entry.id.name}` stands there twice")
            seen.add(entry.id.name)
    return resource


def laid_over(shipped: ast.Resource, own: ast.Resource) -> ast.Resource:
    """The shipped messages with a teacher's own laid over them: what hers leaves out, sentence or attribute, stays.

    Fails: WordsFault for a message that is not shipped.
    """
    known = {entry.id.name: entry for entry in shipped.body if isinstance(entry, ast.Message)}
    for mine in own.body:
        if not isinstance(mine, ast.Message):
            continue
        theirs = known.get(mine.id.name)
        if theirs is None:
            raise WordsFault(f"no message is called `{mine.id.name}`")
        said = {attribute.id.name for attribute in mine.attributes}
        kept = [attribute for attribute in theirs.attributes if attribute.id.name not in said]
        value = mine.value or theirs.value
        known[mine.id.name] = ast.Message(theirs.id, value, [*mine.attributes, *kept], mine.comment)
    return ast.Resource(list(known.values()))
