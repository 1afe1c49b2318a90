"""What a message says, known without saying it: the values in its text, what it chooses by, whom it asks."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from functools import reduce
from typing import NamedTuple

from fluent.syntax import ast

# The words of CLDR for how many there are; a language has those that it needs.
PLURALS = frozenset({"zero", "one", "two", "few", "many", "other"})


class Says(NamedTuple):
    """What stands in a text or decides about it, the messages that it refers to included.

    always: values that stand in it whichever variant is chosen. ever: in some variant. needs: these, and those it chooses
    by. chosen: (what it chooses by, word), as ("parts", "8") or ("COUNT $to", "one"). calls: (function, value).
    forms: (function, form, word). refers: other messages.
    """

    always: frozenset[str] = frozenset()
    ever: frozenset[str] = frozenset()
    needs: frozenset[str] = frozenset()
    chosen: frozenset[tuple[str, str]] = frozenset()
    calls: frozenset[tuple[str, str]] = frozenset()
    forms: frozenset[tuple[str, str, str]] = frozenset()
    refers: frozenset[str] = frozenset()

    def beside(self, other: Says) -> Says:
        """Both stand in the text."""
        return Says(
            self.always | other.always,
            self.ever | other.ever,
            self.needs | other.needs,
            self.chosen | other.chosen,
            self.calls | other.calls,
            self.forms | other.forms,
            self.refers | other.refers,
        )

    def or_else(self, other: Says) -> Says:
        """One of the two stands in the text."""
        return self.beside(other)._replace(always=self.always & other.always)

    def keys(self, chooser: str) -> frozenset[str]:
        """The words that it chooses by under a value."""
        return frozenset(key for chosen, key in self.chosen if chosen == chooser)

    def strange_keys(self, given: Says) -> Iterator[tuple[str, str]]:
        """(what it chooses by, word) where that is never this word, as far as is known from what is given.

        A number may be chosen by as any number, and by the words for how many that a language has.
        """
        for chooser, key in sorted(self.chosen):
            known = given.keys(chooser)
            is_number = not known or bool(known & PLURALS) or any(each.isdecimal() for each in known)
            if key not in known and not (is_number and (key.isdecimal() or key in PLURALS)):
                yield chooser, key


class Unsayable(Exception):
    """A message that refers to itself, or to one that is not there: `name`."""

    def __init__(self, name: str) -> None:
        super().__init__(name)
        self.name = name


class Table:
    """The messages of a language, by `message` and by `message.attribute`, and what each says."""

    def __init__(self, messages: Mapping[str, ast.Message]) -> None:
        self.patterns = {name: message.value for name, message in messages.items() if message.value}
        for name, message in messages.items():
            self.patterns |= {f"{name}.{attribute.id.name}": attribute.value for attribute in message.attributes}
        self._says: dict[str, Says] = {}
        self._through: list[str] = []

    def says(self, name: str) -> Says:
        """Fails: Unsayable for a circle of messages, or a name that is not there."""
        if name in self._says:
            return self._says[name]
        if name in self._through or name not in self.patterns:
            raise Unsayable(name)
        self._through.append(name)
        try:
            found = self._says[name] = self._pattern(self.patterns[name])
        finally:
            self._through.pop()
        return found

    def _pattern(self, pattern: ast.Pattern) -> Says:
        found = Says()
        for element in pattern.elements:
            if isinstance(element, ast.Placeable):
                found = found.beside(self._expression(element.expression))
        return found

    def _expression(self, node: object) -> Says:
        match node:
            case ast.Placeable(expression=inner):
                return self._expression(inner)
            case ast.VariableReference(id=id):
                value = frozenset({id.name})
                return Says(value, value, value)
            case ast.FunctionReference():
                return _call(node)
            case ast.MessageReference(id=id, attribute=attribute):
                name = f"{id.name}.{attribute.name}" if attribute else id.name
                return self.says(name).beside(Says(refers=frozenset({name})))
            case ast.TermReference(id=id):
                raise Unsayable(f"-{id.name}")  # a term sees no values, and none is shipped
            case ast.SelectExpression(selector=selector, variants=variants):
                told = [self._pattern(variant.value) for variant in variants]
                return reduce(Says.or_else, told).beside(_selector(selector, variants))
        return Says()


def _call(node: ast.FunctionReference) -> Says:
    values = frozenset(each.id.name for each in node.arguments.positional if isinstance(each, ast.VariableReference))
    forms = frozenset((node.id.name, each.name.name, str(each.value.value)) for each in node.arguments.named)
    calls = frozenset((node.id.name, value) for value in values or {""})
    return Says(values, values, values, calls=calls, forms=forms)


def _selector(selector: object, variants: list[ast.Variant]) -> Says:
    """A value that is only chosen by is not said."""
    keys = [_key(variant.key) for variant in variants]
    match selector:
        case ast.VariableReference(id=id):
            return Says(needs=frozenset({id.name}), chosen=frozenset((id.name, key) for key in keys))
        case ast.FunctionReference():
            call = _call(selector)
            chosen = frozenset((f"{name} ${value}", key) for name, value in call.calls for key in keys)
            return Says(needs=call.needs, chosen=chosen, calls=call.calls)
    return Says()


def _key(key: object) -> str:
    return key.name if isinstance(key, ast.Identifier) else str(getattr(key, "value", key))


def texts(pattern: ast.Pattern) -> Iterator[str]:
    """The bare text of each variant of each place, for what may not be empty."""
    for element in pattern.elements:
        match element:
            case ast.TextElement(value=value):
                yield value
            case ast.Placeable(expression=ast.SelectExpression(variants=variants)):
                for variant in variants:
                    yield from texts(variant.value)
            case ast.Placeable(expression=ast.StringLiteral() as literal):
                yield literal.parse()["value"]
            case ast.Placeable():
                yield "value"
