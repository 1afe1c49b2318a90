"""The guide as JSON, for programs."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from typing import Any

from furbelow.named import NamedTuple
from furbelow.s6_write.guide.guide import CutLine, Guide, Operation, Reason
from furbelow.s6_write.words.messages import Messages


def to_json(guide: Guide, words: Messages | None = None) -> str:
    """The file `guide.json`: the whole guide with its figures as SVG text, keys in alphabetical order.

    A sentence is called by the letter of its operation and its own number: F3. Under `why` each measurement has its reason as a tree, or null, and each piece to cut and each operation those of its
    numbers: a number with its formula, the same with the numbers put in, and under `from` the numbers that it stands on.
    The same letters for the same guide. `furbelow_guide` is the number of the format. words: as for the page.
    """
    words = words or Messages(guide.language)
    words.read("pages")
    instead = _Instead(words.text("page-told-above"), words.text("page-told-by-name"))
    reasons = {reason.name: reason for reason in guide.reasons}

    def with_reasons(told: CutLine | Operation) -> dict[str, Any]:
        return {**vars(told), "why": _trees(reasons, told.why, instead)}

    facts = ({**vars(fact), "why": next(iter(_trees(reasons, [fact.name], instead)), None)} for fact in guide.facts)
    values = {
        **{name: value for name, value in vars(guide).items() if name != "reasons"},
        "facts": [*facts],
        "cutting": [with_reasons(line) for line in guide.cutting],
        "cut": [with_reasons(operation) for operation in guide.cut],
        "parts": [
            {**vars(part), "operations": [with_reasons(each) for each in part.operations]} for part in guide.parts
        ],
    }
    # A line for each field: with an indent the library would write it in Python, ten times as slowly.
    fields = sorted({"furbelow_guide": 2, **values}.items())
    written = (f" {_json(name)}: {_json(value)}" for name, value in fields)
    return "{\n" + ",\n".join(written) + "\n}\n"


def _json(value: object) -> str:
    return json.dumps(value, default=vars, ensure_ascii=False, sort_keys=True)


# A garment goes half as deep. A chain of a hundred tiers would else be told in full a hundred times.
_DEEPEST = 20


class _Instead(NamedTuple):
    """What is said in the place of reasons that are not told there."""

    above: str
    by_name: str


def _trees(reasons: Mapping[str, Reason], names: Iterable[str], instead: _Instead) -> list[dict[str, Any]]:
    return [_tree(reasons, name, instead, set(), 0) for name in names if name in reasons]


def _tree(reasons: Mapping[str, Reason], name: str, words: _Instead, told: set[str], depth: int) -> dict[str, Any]:
    """Empty fields are left out. `instead` says why the reasons of a number are not told there."""
    reason, instead = reasons[name], ""
    if reason.inputs and name in told:
        instead = words.above
    elif reason.inputs and depth == _DEEPEST:
        instead = words.by_name
    else:
        told.add(name)
    fields = {
        "name": name,
        "label": reason.label,
        "value": reason.value,
        "text": reason.told,
        "formula": reason.formula,
        "with_numbers": reason.with_numbers,
        "rounding": reason.rounding,
        "place": reason.place,
        "instead": instead,
        "from": [] if instead else [_tree(reasons, need, words, told, depth + 1) for need in reason.inputs],
    }
    return {key: value for key, value in fields.items() if value}
