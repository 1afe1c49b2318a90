"""Whether a tree is as its schema asks, each fault with its place and in the maker's words.

A sound tree is told by the quick walk in shape.py; the full validator is loaded only for one that is not.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING, Any

from compiler import resources
from compiler.diagnostics import Fault, Label
from compiler.s1_read.nearest import nearest
from compiler.s1_read.shape import Schema, fits, resolved
from compiler.s1_read.yaml_tree import Tree, find, to_plain

if TYPE_CHECKING:
    from jsonschema.exceptions import ValidationError

# Beyond that a list of faults helps nobody.
MOST_FAULTS = 100
STEP = "step"  # the title that marks a row of the steps in the schema

_FORMS = {"string": "a text", "number": "a text", "boolean": "a text", "array": "a list", "object": "a map of keys"}


@cache
def load_schema(name: str) -> Schema:
    """The schema file of that name."""
    schema: Schema = json.loads(resources.schema(name).read_text(encoding="utf-8"))
    return schema


def schema_faults(tree: Tree, schema: Schema, *, in_full: bool = False) -> tuple[Fault, ...]:
    """Every way in which the tree is not as the schema asks.

    in_full: ask the full validator even where the quick walk finds nothing.
    Fails: FB130 to FB137.
    """
    plain = to_plain(tree)
    if fits(plain, schema) and not in_full:
        return ()
    from jsonschema import Draft202012Validator

    report = _Report(tree, schema)
    faults: dict[Fault, None] = {}
    for error in Draft202012Validator(schema).iter_errors(plain):
        faults.update(dict.fromkeys(report.told(error)))
        if len(faults) >= MOST_FAULTS:
            break
    # What a row holds too much is said once, by the key that is none.
    unknown = {fault.primary.span.start_line for fault in faults if fault.code == "FB137" and fault.primary}
    return tuple(
        fault
        for fault in faults
        if fault.code != "FB136" or not fault.primary or fault.primary.span.start_line not in unknown
    )


@dataclass(frozen=True, slots=True)
class _Report:
    """Turns what the validator found into faults."""

    tree: Tree
    schema: Schema

    def told(self, error: ValidationError) -> Iterator[Fault]:
        path = tuple(error.absolute_path)
        match error.validator:
            case "additionalProperties":
                yield from self._unknown_keys(error, path)
            case "required":
                yield from self._missing_keys(error, path)
            case "type":
                yield self._at_value(path, "FB132", *self._form(error, path))
            case "enum":
                yield self._at_value(path, "FB133", *self._words(error, path))
            case "minLength":
                yield self._at_key(path, "FB135", f"{self._called(path)} is empty", self._purpose(error))
            case "maxLength":
                count = len(str(error.instance))
                yield self._at_value(path, "FB135", self._too_many(path, count, error, "has", "characters"))
            case "minProperties" | "minItems":
                yield from self._too_few(error, path)
            case "maxProperties" if _title(error) == STEP:
                yield self._crowded_row(error, path)
            case "maxProperties" | "maxItems":
                yield self._at_key(path, "FB134", self._too_many(path, len(_held(error)), error, "holds", ""))
            case keyword:
                raise AssertionError(f"the schema uses `{keyword}`, for which no fault is worded")

    def _at_key(self, path: Sequence[str | int], code: str, headline: str, help_: str | None = None) -> Fault:
        return Fault(code, headline, Label(find(self.tree, path)[0]), help=help_)

    def _at_value(self, path: Sequence[str | int], code: str, headline: str, help_: str | None = None) -> Fault:
        return Fault(code, headline, Label(find(self.tree, path)[1]), help=help_)

    def _unknown_keys(self, error: ValidationError, path: tuple[str | int, ...]) -> Iterator[Fault]:
        known = _rule(error).get("properties", {})
        is_step = _title(error) == STEP
        for key in error.instance:
            if key in known:
                continue
            near = nearest(key, known)
            if is_step:
                headline, code = f"no technique is called `{_short(key)}`", "FB137"
                owners = [name for name in error.instance if key in known.get(name, {}).get("properties", {})]
                help_ = f"`{key}` belongs to `{owners[0]}`: put it inside its braces" if owners else _meant(near)
            else:
                headline, code = f"`{_short(key)}` is no key of {self._owner(error, path)}", "FB130"
                help_ = _meant(near)
            yield self._at_key((*path, key), code, headline, help_ or f"the keys are {_listed(known)}")

    def _missing_keys(self, error: ValidationError, path: tuple[str | int, ...]) -> Iterator[Fault]:
        # The validator tells each missing key by itself but names it only in prose; told again, it is the same fault.
        known = _rule(error).get("properties", {})
        for key in error.validator_value:
            if key not in error.instance:
                about = resolved(known.get(key, {}), self.schema).get("description", "")
                yield self._at_key(
                    path, "FB131", f"{self._called(path)} has no `{key}`", f"`{key}`: {_lowered(about)}" if about else None
                )

    def _form(self, error: ValidationError, path: tuple[str | int, ...]) -> tuple[str, str | None]:
        asked = error.validator_value
        names = dict.fromkeys(_FORMS[name] for name in ([asked] if isinstance(asked, str) else asked))
        if error.instance == "":
            return f"{self._called(path)} is empty, and {' or '.join(names)} is wanted", self._purpose(error)
        stands = _FORMS["object" if isinstance(error.instance, dict) else "array" if isinstance(error.instance, list) else "string"]
        headline = f"{self._called(path)} is {stands}, and {' or '.join(names)} is wanted"
        return headline, self._purpose(error)

    def _words(self, error: ValidationError, path: tuple[str | int, ...]) -> tuple[str, str | None]:
        words = [word for word in error.validator_value if isinstance(word, str)]
        if isinstance(error.instance, dict | list):
            stands = _FORMS["object" if isinstance(error.instance, dict) else "array"]
            return f"{self._called(path)} is {stands}, and one of the words {_listed(words)} is wanted", None
        said = f"`{_short(error.instance)}`" if error.instance else "empty"
        if len(words) == 1:
            return f"{self._called(path)} is {said}, and only `{words[0]}` is known", f"write `{words[0]}`"
        if words == ["yes", "no"]:
            return f"{self._called(path)} is {said}, which is neither yes nor no", "write `yes` or `no`"
        help_ = _meant(nearest(error.instance, words)) or f"the words are {_listed(words)}"
        return f"{self._called(path)} is {said}, which is not one of its words", help_

    def _too_few(self, error: ValidationError, path: tuple[str | int, ...]) -> Iterator[Fault]:
        if _title(error) != STEP:
            yield self._at_key(path, "FB134", f"{self._called(path)} holds nothing", self._purpose(error))
        elif "part" not in error.instance:
            help_ = "write the technique and what it is worked on, such as `press: {piece: flounce}`"
            yield self._at_key(path, "FB136", "this row holds no technique", help_)

    def _crowded_row(self, error: ValidationError, path: tuple[str | int, ...]) -> Fault:
        names = [name for name in error.instance if name not in ("tip", "part")]
        if "part" in error.instance:
            beside = next(name for name in error.instance if name != "part")
            headline = f"`{_short(beside)}` stands in one row with the heading of a part"
            return self._at_key((*path, beside), "FB136", headline, "give the heading a row of its own")
        headline = f"this row holds {len(names)} techniques, {_listed(names)}, where one belongs"
        return self._at_key((*path, names[1]), "FB136", headline, "begin a row of its own with `-` for each")

    def _too_many(self, path: Sequence[str | int], count: int, error: ValidationError, verb: str, what: str) -> str:
        most = error.validator_value
        return f"{self._called(path)} {verb} {count} {what}".rstrip() + f", {count - most} more than the {most} allowed"

    def _purpose(self, error: ValidationError) -> str | None:
        """What the value is for: said beside the reference to its rule, or in the rule."""
        rule = help_ = self.schema
        for part in list(error.absolute_schema_path)[:-1]:
            if part == "if":  # the validator's path to `then` and `else`, which stand beside it
                continue
            if part == "$ref":
                help_, rule = rule, resolved({"$ref": rule["$ref"]}, self.schema)
            else:
                help_ = rule = rule[part]
        about = help_.get("description") or rule.get("description")
        example = next(iter(help_.get("examples", ())), None)
        such = f", such as `{example}`" if isinstance(example, str | int) else ""
        return f"{_lowered(about)}{such}" if about else None

    def _called(self, path: Sequence[str | int]) -> str:
        """The place in a few words: `width` of `net`, row 3 of `steps`."""
        if not path:
            return "the file"
        *before, last = path
        if isinstance(last, int):
            return f"row {last + 1}" + (f" of `{before[-1]}`" if before and isinstance(before[-1], str) else "")
        owner = before[-1] if len(before) > 1 else None
        return f"`{_short(last)}`" + (f" of `{_short(owner)}`" if isinstance(owner, str) else "")

    def _owner(self, error: ValidationError, path: tuple[str | int, ...]) -> str:
        title = _title(error)
        if not path:
            return _with_article(title.lower())
        if not title or title == path[-1]:
            return f"`{path[-1]}`"
        return _with_article(title)


def _rule(error: ValidationError) -> dict[str, Any]:
    rule: dict[str, Any] = error.schema  # type: ignore[assignment]  # the library allows true and false here too
    return rule


def _title(error: ValidationError) -> str:
    return str(_rule(error).get("title", ""))


def _held(error: ValidationError) -> list[object]:
    return list(error.instance)


def _short(word: object) -> str:
    text = " ".join(str(word).split())
    return text if len(text) <= 40 else text[:39] + "…"


def _meant(near: Sequence[str]) -> str | None:
    return f"did you mean {' or '.join(f'`{word}`' for word in near)}?" if near else None


def _listed(words: Sequence[str] | dict[str, Any]) -> str:
    *before, last = [f"`{_short(word)}`" for word in words]
    return f"{', '.join(before)} and {last}" if before else last


def _lowered(sentence: str) -> str:
    return (sentence[:1].lower() + sentence[1:]).rstrip(".")


def _with_article(noun: str) -> str:
    return f"{'an' if noun[:1] in 'aeiou' else 'a'} {noun}"
