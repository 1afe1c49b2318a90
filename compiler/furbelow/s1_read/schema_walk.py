"""Whether a plain value has the shape that a schema asks for: quickly, and without saying why not.

A sound spec is told by this walk alone; only a value that does not fit is handed to the full validator, which
takes longer to load than the rest of the reading. The walk knows the part of JSON Schema 2020-12 that our schemas
use, and `foreign_keywords` finds any other.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from typing import Any

Schema = Mapping[str, Any]
_Test = Callable[[Any, Any, Schema, Schema], bool]  # value, what the keyword asks, its rule, the whole schema


def fits(value: object, schema: Schema) -> bool:
    """Whether the value, made of texts, numbers, truth values, lists and maps, is as the schema asks."""
    return _fits(value, schema, schema)


def resolved(rule: Schema, root: Schema) -> Schema:
    """The rule that a `$ref` points to, with the keywords beside the reference laid over it."""
    while "$ref" in rule:
        beside = {key: wanted for key, wanted in rule.items() if key != "$ref"}
        rule = {**_target(rule["$ref"], root), **beside}
    return rule


def foreign_keywords(schema: Schema) -> tuple[str, ...]:
    """The keywords in a schema that the walk does not know, each with its place, such as `pieces/oneOf`."""
    return tuple(_foreign(schema, ""))


def _fits(value: object, rule: Schema | bool, root: Schema) -> bool:
    if isinstance(rule, bool):
        return rule
    for keyword, wanted in rule.items():
        test = _TESTS.get(keyword)
        if test is not None and not test(value, wanted, rule, root):
            return False
    return True


def _target(reference: str, root: Schema) -> Schema:
    target: Any = root
    for part in reference.removeprefix("#/").split("/"):
        target = target[part]
    found: Schema = target
    return found


def _alike(value: object, word: object) -> bool:
    # In JSON `true` is not 1, in Python it is.
    return value == word and isinstance(value, bool) == isinstance(word, bool)


def _is_number(value: object) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


_TYPES: dict[str, Callable[[object], bool]] = {
    "string": lambda value: isinstance(value, str),
    "number": _is_number,
    "boolean": lambda value: isinstance(value, bool),
    "array": lambda value: isinstance(value, list),
    "object": lambda value: isinstance(value, dict),
}


def _type(value: Any, wanted: Any, rule: Schema, root: Schema) -> bool:
    if isinstance(wanted, str):
        return _TYPES[wanted](value)
    return any(_TYPES[name](value) for name in wanted)


def _properties(value: Any, wanted: Any, rule: Schema, root: Schema) -> bool:
    if not isinstance(value, dict):
        return True
    return all(_fits(held, wanted[key], root) for key, held in value.items() if key in wanted)


def _additional(value: Any, wanted: Any, rule: Schema, root: Schema) -> bool:
    if not isinstance(value, dict):
        return True
    known = rule.get("properties", {})
    return all(_fits(held, wanted, root) for key, held in value.items() if key not in known)


def _if(value: Any, wanted: Any, rule: Schema, root: Schema) -> bool:
    return _fits(value, rule.get("then" if _fits(value, wanted, root) else "else", True), root)


_TESTS: dict[str, _Test] = {
    "$ref": lambda value, wanted, rule, root: _fits(value, _target(wanted, root), root),
    "type": _type,
    "enum": lambda value, wanted, rule, root: any(_alike(value, word) for word in wanted),
    "const": lambda value, wanted, rule, root: _alike(value, wanted),
    "required": lambda value, wanted, rule, root: not isinstance(value, dict) or all(k in value for k in wanted),
    "properties": _properties,
    "additionalProperties": _additional,
    "minProperties": lambda value, wanted, rule, root: not isinstance(value, dict) or len(value) >= wanted,
    "maxProperties": lambda value, wanted, rule, root: not isinstance(value, dict) or len(value) <= wanted,
    "items": lambda value, wanted, rule, root: (
        not isinstance(value, list) or all(_fits(held, wanted, root) for held in value)
    ),
    "minItems": lambda value, wanted, rule, root: not isinstance(value, list) or len(value) >= wanted,
    "maxItems": lambda value, wanted, rule, root: not isinstance(value, list) or len(value) <= wanted,
    "minLength": lambda value, wanted, rule, root: not isinstance(value, str) or len(value) >= wanted,
    "maxLength": lambda value, wanted, rule, root: not isinstance(value, str) or len(value) <= wanted,
    "pattern": lambda value, wanted, rule, root: not isinstance(value, str) or bool(re.search(wanted, value)),
    "allOf": lambda value, wanted, rule, root: all(_fits(value, part, root) for part in wanted),
    "if": _if,
}

_HELP = frozenset({"$schema", "$id", "$comment", "title", "description", "default", "examples"})
_HOLD_MANY = ("properties", "$defs")  # keyword -> map of name to rule
_HOLD_ONE = ("additionalProperties", "items", "if", "then", "else")


def _foreign(rule: Schema | bool, place: str) -> Iterator[str]:
    if isinstance(rule, bool):
        return
    for keyword, wanted in rule.items():
        here = f"{place}/{keyword}".lstrip("/")
        if keyword in _HOLD_MANY:
            for name, part in wanted.items():
                yield from _foreign(part, f"{here}/{name}")
        elif keyword in _HOLD_ONE:
            yield from _foreign(wanted, here)
        elif keyword == "allOf":
            for index, part in enumerate(wanted):
                yield from _foreign(part, f"{here}/{index}")
        elif keyword == "$ref":
            if not wanted.startswith("#/$defs/"):
                yield f"{here} to {wanted}"
        elif keyword not in _TESTS and keyword not in _HELP:
            yield here
