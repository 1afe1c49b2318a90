"""Files of messages in Project Fluent syntax, read whole: what a library would pass over in silence is a fault here."""

from __future__ import annotations

from collections.abc import Iterator

from fluent.syntax import FluentParser, ast

from furbelow.s6_write.words.pattern import Literal, Message, Pattern, Place, WordsFault


def read_words(name: str, source: str) -> ast.Resource:
    """What one file holds. name: for faults.

    Fails: WordsFault for a line that is no Fluent (it would spoil its own message in silence), for one name twice, and
        for what is nested too deep to be read.
    """
    try:
        resource = FluentParser().parse(source)
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


def entries_of(resource: ast.Resource) -> Iterator[ast.Message]:
    """Its messages as they are written, with their places."""
    return (entry for entry in resource.body if isinstance(entry, ast.Message))


def messages_of(resource: ast.Resource) -> dict[str, Message]:
    """Its messages by their names, as they are said."""
    return {entry.id.name: message_of(entry) for entry in entries_of(resource)}


def message_of(entry: ast.Message) -> Message:
    attributes = {attribute.id.name: _pattern(attribute.value) for attribute in entry.attributes}
    return Message(_pattern(entry.value) if entry.value else None, attributes)


def _pattern(pattern: ast.Pattern) -> Pattern:
    return tuple(_part(element) for element in pattern.elements)


def _part(element: ast.TextElement | ast.Placeable) -> str | Place:
    if isinstance(element, ast.TextElement):
        return element.value
    place = _place(element)
    return str(place) if isinstance(place, int | float) else place  # a number that is written is said as it stands


def _place(node: object) -> Place | Literal:
    match node:
        case ast.Placeable(expression=inner):
            return _place(inner)
        case ast.StringLiteral():
            return node.parse()["value"]
        case ast.NumberLiteral(value=number):
            return float(number) if "." in number else int(number)
        case ast.VariableReference(id=id):
            return ("value", id.name)
        case ast.FunctionReference(id=id, arguments=given):
            named = {each.name.name: _place(each.value) for each in given.named}
            return ("call", id.name, tuple(_place(each) for each in given.positional), named)
        case ast.MessageReference(id=id, attribute=attribute):
            return ("message", id.name, attribute.name if attribute else "")
        case ast.SelectExpression(selector=selector, variants=found):
            variants: dict[Literal, Pattern] = {}
            for each in found:
                variants.setdefault(_key(each.key), _pattern(each.value))
            return ("choice", _place(selector), variants, next(_key(each.key) for each in found if each.default))
        case ast.TermReference(id=id):
            return ("term", id.name)
    raise TypeError(f"{node!r} is no part of a message")


def _key(key: ast.Identifier | ast.NumberLiteral) -> Literal:
    if isinstance(key, ast.Identifier):
        return key.name
    return float(key.value) if "." in key.value else int(key.value)
