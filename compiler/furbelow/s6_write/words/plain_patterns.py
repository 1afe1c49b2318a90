"""Patterns said without the evaluator of the library, which takes several times as long: a class says each sentence often.

Plain is a pattern of text, values, functions of ours, choices by a word or a number, and other messages. Whatever else
stands in one, or goes wrong in it, is left to the library, which tells what is wrong; so are messages that grow out of each
other.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any
from weakref import WeakKeyDictionary

from babel import Locale
from fluent.runtime import FluentBundle, resolver
from fluent.runtime.types import FluentInt, FluentType

Given = Mapping[str, Any]
Functions = Mapping[str, Callable[..., Any]]
_Value = Callable[[Given], Any]
Said = Callable[[Given], str]

_MOST_PARTS = 500  # of a pattern, with those of the messages that it asks for


class NotPlain(Exception):
    """The library has to say it."""


class PlainPatterns:
    """The plain patterns of one language, each taken apart when it is first said."""

    def __init__(self, locale: Locale, functions: Functions, messages: FluentBundle) -> None:
        self._locale, self._functions, self._messages = locale, functions, messages
        self._known: WeakKeyDictionary[Any, Said | None] = WeakKeyDictionary()
        self._parts = 0  # of the pattern that is taken apart

    def said(self, pattern: Any, given: Given) -> str:
        """The text. Fails: NotPlain, or whatever goes wrong in the values."""
        try:
            known = self._known[pattern]
        except KeyError:
            self._parts = 0
            try:
                known = self._pattern(pattern)
            except NotPlain:
                known = None
            self._known[pattern] = known
        if known is None:
            raise NotPlain
        return known(given)

    def _pattern(self, pattern: Any) -> Said:
        # The library keeps a pattern of one element as that element.
        elements = pattern.elements if isinstance(pattern, resolver.Pattern) else [pattern]
        self._parts += len(elements)
        if self._parts > _MOST_PARTS:
            raise NotPlain
        parts = [self._part(element) for element in elements]
        if len(parts) == 1:
            return parts[0]
        return lambda given: "".join([part(given) for part in parts])

    def _part(self, element: Any) -> Said:
        if isinstance(element, resolver.TextElement):
            text = element.value
            return lambda given: text
        if isinstance(element, resolver.Placeable | resolver.NeverIsolatingPlaceable):
            return self._text(element.expression)
        return self._text(element)

    def _text(self, expression: Any) -> Said:
        if isinstance(expression, resolver.SelectExpression):
            return self._choice(expression)
        if isinstance(expression, resolver.MessageReference):
            return self._message(expression)
        value, locale = self._value(expression), self._locale

        def text(given: Given) -> str:
            found = value(given)
            if isinstance(found, str):
                return found
            if type(found) is FluentInt and found >= 0 and not found.options.useGrouping:
                return str(int(found))
            if isinstance(found, FluentType):
                return str(found.format(locale))
            raise NotPlain

        return text

    def _value(self, expression: Any) -> _Value:
        if isinstance(expression, resolver.VariableReference):
            name = expression.id.name
            return lambda given: given[name]
        if isinstance(expression, resolver.StringLiteral):
            literal = expression.parse()["value"]
            return lambda given: literal
        if isinstance(expression, resolver.NumberLiteral):
            number = expression.value
            return lambda given: number
        if isinstance(expression, resolver.FunctionReference) and expression.id.name in self._functions:
            return self._call(expression)
        raise NotPlain

    def _message(self, reference: Any) -> Said:
        message = self._messages.get_message(reference.id.name)
        if reference.attribute:
            return self._pattern(message.attributes[reference.attribute.name])
        return self._pattern(message.value)

    def _call(self, expression: Any) -> _Value:
        function = self._functions[expression.id.name]
        values = [self._value(each) for each in expression.arguments.positional]
        named = {each.name.name: self._value(each.value)({}) for each in expression.arguments.named}  # literals
        if len(values) == 1:
            (value,) = values
            return lambda given: function(value(given), **named)
        return lambda given: function(*(value(given) for value in values), **named)

    def _choice(self, expression: Any) -> Said:
        selector, plural = self._value(expression.selector), self._locale.plural_form
        default = self._pattern(next(each for each in expression.variants if each.default).value)
        words: dict[str, Said] = {}
        numbers: dict[object, Said] = {}
        for each in expression.variants:
            if isinstance(each.key, resolver.NumberLiteral):
                numbers.setdefault(each.key.value, self._pattern(each.value))
            else:
                words.setdefault(each.key.name, self._pattern(each.value))

        def choice(given: Given) -> str:
            found = selector(given)
            if isinstance(found, int | float):
                if found in numbers:
                    return numbers[found](given)
                return words.get(plural(found), default)(given)
            return next((said for word, said in words.items() if found == word), default)(given)

        return choice
