"""What keeps a tree from being as its schema asks, each fault with its place and in the maker's words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from jsonschema import Draft202012Validator
from jsonschema.exceptions import ValidationError

from furbelow.diagnose.fault import Fault, Label
from furbelow.diagnose.nearest import nearest
from furbelow.measure.formula_parser import IN_BRACES
from furbelow.s1_read.schema_walk import Schema, resolved
from furbelow.s1_read.yaml_tree import Plain, Tree, find

# Beyond that a list of faults helps nobody.
MOST_FAULTS = 100
_MOST_ALIKE = 20  # of the unknown keys of one map; the rest are counted
STEP = "step"  # the title that marks a row of the steps in the schema

_FORMS = {"string": "a text", "number": "a text", "boolean": "a text", "array": "a list", "object": "a map of keys"}


def reported(tree: Tree, plain: Plain, schema: Schema) -> tuple[Fault, ...]:
    """Every way in which the tree is not as the schema asks, at most MOST_FAULTS. plain: the same tree.

    Fails: FB130 to FB137.
    """
    report = _Report(tree, schema)
    faults: dict[Fault, None] = {}
    for error in Draft202012Validator(schema).iter_errors(plain):
        faults.update(dict.fromkeys(report.told(_finding(error))))
        if len(faults) >= MOST_FAULTS:
            break
    # A row with an unknown technique has a key too many: that is no fault of its own.
    told = {fault.primary.span.start_line for fault in faults if fault.code == "FB137" and fault.primary}
    return tuple(f for f in faults if f.code != "FB136" or not f.primary or f.primary.span.start_line not in told)


@dataclass(frozen=True, slots=True)
class _Finding:
    """What the validator found: at `path`, the value `held` is not as the `keyword` of `rule` asks."""

    path: tuple[str | int, ...]
    held: Any
    keyword: str
    asked: Any
    rule: dict[str, Any]
    way: tuple[str | int, ...]  # to the keyword in the schema

    @property
    def title(self) -> str:
        return str(self.rule.get("title", ""))

    @property
    def keys(self) -> dict[str, Any]:
        """The keys that the rule knows."""
        return dict(self.rule.get("properties", {}))

    @property
    def called(self) -> str:
        """The place in a few words: "`width` of `net`", "row 3 of `steps`"."""
        if not self.path:
            return "the file"
        *before, last = self.path
        if isinstance(last, int):
            return f"row {last + 1}" + (f" of `{before[-1]}`" if before and isinstance(before[-1], str) else "")
        owner = before[-1] if len(before) > 1 else None
        return f"`{_short(last)}`" + (f" of `{_short(owner)}`" if isinstance(owner, str) else "")

    @property
    def owner(self) -> str:
        """What has the keys: "a cloth", "`gather`"."""
        if self.path and isinstance(self.path[-1], int) and not self.title:
            return self.called
        if not self.path or (self.title and self.title != self.path[-1]):
            return _with_article(self.title.lower())
        return f"`{_short(self.path[-1])}`"


def _finding(error: ValidationError) -> _Finding:
    rule: Any = error.schema
    way = tuple(error.absolute_schema_path)
    return _Finding(tuple(error.absolute_path), error.instance, str(error.validator), error.validator_value, rule, way)


@dataclass(frozen=True, slots=True)
class _Report:
    """Turns what the validator found into faults."""

    tree: Tree
    schema: Schema

    def told(self, found: _Finding) -> Iterator[Fault]:
        called, asked = found.called, found.asked
        match found.keyword:
            case "additionalProperties":
                yield from self._unknown_keys(found)
            case "required":
                yield from self._missing_keys(found)
            case "type":
                yield self._at_value(found, "FB132", self._form(found), self._purpose(found))
            case "enum":
                yield self._at_value(found, "FB133", *_words(found))
            case "minLength":
                help_ = _cut_by_comma(found.path[-1], found.held) or self._purpose(found)
                yield self._at_value(found, "FB135", f"{called} is empty", help_)
            case "maxLength":
                count = f"{len(found.held)} characters, {len(found.held) - asked} more than the {asked} allowed"
                yield self._at_value(found, "FB135", f"{called} has {count}")
            case "minProperties" | "minItems" if found.title != STEP:
                yield self._at_key(found, "FB134", f"{called} holds nothing", self._purpose(found))
            case "maxProperties" | "maxItems" if found.title != STEP:
                count = f"{len(found.held)}, {len(found.held) - asked} more than the {asked} allowed"
                yield self._at_key(found, "FB134", f"{called} holds {count}")
            case "minProperties" | "maxProperties":
                yield self._row(found)
            case keyword:
                raise AssertionError(f"the schema uses `{keyword}`, for which no fault is worded")

    def _at_key(self, found: _Finding, code: str, headline: str, help_: str | None = None, *below: str) -> Fault:
        return Fault(code, headline, Label(find(self.tree, (*found.path, *below))[0]), help=help_)

    def _at_value(self, found: _Finding, code: str, headline: str, help_: str | None = None) -> Fault:
        return Fault(code, headline, Label(find(self.tree, found.path)[1]), help=help_)

    def _unknown_keys(self, found: _Finding) -> Iterator[Fault]:
        unknown = [key for key in found.held if key not in found.keys]
        for key in unknown[:_MOST_ALIKE]:
            near = _cut_by_comma(key, found.held[key]) or _meant(nearest(key, found.keys))
            help_ = near or f"the keys are {_listed(found.keys)}"
            if found.title != STEP:
                yield self._at_key(found, "FB130", f"`{_short(key)}` is no key of {found.owner}", help_, key)
                continue
            help_ = near or "describe it under `techniques:`, or take a built-in one"
            owners = [word for word in found.held if key in found.keys.get(word, {}).get("properties", {})]
            if owners:
                help_ = f"`{key}` belongs to `{owners[0]}`: put it inside its braces"
            yield self._at_key(found, "FB137", f"no technique is called `{_short(key)}`", help_, key)
        if more := unknown[_MOST_ALIKE:]:
            headline = f"{len(more):,} more keys of {found.owner} are unknown"
            yield self._at_key(found, "FB130", headline, None, more[0])

    def _missing_keys(self, found: _Finding) -> Iterator[Fault]:
        # The validator tells the missing keys one by one but names them only in prose: told again, they fall together.
        unknown = [key for key in found.held if key not in found.keys]
        for key in found.asked:
            # A missing key beside a mistyped one is the same fault.
            if key not in found.held and not nearest(key, unknown):
                about = resolved(found.keys.get(key, {}), self.schema).get("description")
                yield self._at_key(
                    found, "FB131", f"{found.called} has no `{key}`", about and f"`{key}`: {_lowered(about)}"
                )

    def _form(self, found: _Finding) -> str:
        asked = [found.asked] if isinstance(found.asked, str) else found.asked
        wanted = " or ".join(dict.fromkeys(_FORMS[name] for name in asked))
        return f"{found.called} is {_form_of(found.held)}, and {wanted} is wanted"

    def _row(self, found: _Finding) -> Fault:
        """A row of the steps with no technique, with several, or with one beside a heading."""
        keys = [key for key in found.held if key not in ("tip", "when")]
        if not keys:
            help_ = "write the technique and what it is worked on, such as `press: {piece: flounce}`"
            return self._at_key(found, "FB136", "this row holds no technique", help_)
        for alone, what in (("part", "the heading of a part"), ("picture", "a picture")):
            if alone in keys:
                beside = next(key for key in found.held if key != alone)
                headline = f"`{_short(beside)}` stands in one row with {what}"
                return self._at_key(found, "FB136", headline, f"give {what} a row of its own", beside)
        headline = f"this row holds {len(keys)} techniques, {_listed(keys)}, where one belongs"
        return self._at_key(found, "FB136", headline, "begin a row of its own with `-` for each", keys[1])

    def _purpose(self, found: _Finding) -> str | None:
        """What the value is for: said beside the reference to its rule, or else in the rule."""
        rule: Any = self.schema
        for part in found.way[:-1]:
            # The validator leaves references out of its way.
            if part not in rule:
                rule = resolved(rule, self.schema)
            rule = rule[part]
        help_ = resolved(rule, self.schema)
        about, example = help_.get("description"), next(iter(help_.get("examples", ())), None)
        such = f", such as `{example}`" if isinstance(example, str | int) else ""
        return f"{_lowered(about)}{such}" if about else None


def _words(found: _Finding) -> tuple[str, str | None]:
    words = [word for word in found.asked if isinstance(word, str)]
    if not isinstance(found.held, str) or not found.held:
        return f"{found.called} is {_form_of(found.held)}, and one of {_listed(words)} is wanted", None
    said = f"{found.called} is `{_short(found.held)}`"
    if len(words) == 1:
        return f"{said}, and only `{words[0]}` is known", f"write `{words[0]}`"
    if words == ["yes", "no"]:
        return f"{said}, which is neither yes nor no", "write `yes` or `no`"
    return f"{said}, which is not one of its words", _meant(
        nearest(found.held, words)
    ) or f"the words are {_listed(words)}"


def _form_of(held: object) -> str:
    if held == "":
        return "empty"
    return _FORMS["object" if isinstance(held, dict) else "array" if isinstance(held, list) else "string"]


def _cut_by_comma(key: object, held: object) -> str | None:
    """The help where a comma inside braces made a key of what follows it: `{from: 5,5 cm}`, `{depth: max(hip, waist)}`."""
    if held == "" and str(key).count(")") > str(key).count("("):
        return IN_BRACES
    if held == "" and str(key)[:1].isdigit():
        return "inside braces a comma begins a new key; write decimals with a point, as in 5.5"
    return None


def _short(word: object) -> str:
    text = " ".join(str(word).split())
    return text if len(text) <= 40 else text[:39] + "…"


def _meant(near: Iterable[str]) -> str | None:
    words = " or ".join(f"`{word}`" for word in near)
    return f"did you mean {words}?" if words else None


def _listed(words: Iterable[str]) -> str:
    *before, last = [f"`{_short(word)}`" for word in words]
    return f"{', '.join(before)} and {last}" if before else last


def _lowered(sentence: str) -> str:
    """The first sentence, to stand inside another."""
    first = sentence.partition(". ")[0]
    return (first[:1].lower() + first[1:]).rstrip(".")


def _with_article(noun: str) -> str:
    return f"{'an' if noun[:1] in 'aeiou' else 'a'} {noun}"
