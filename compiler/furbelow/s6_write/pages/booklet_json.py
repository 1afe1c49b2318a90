"""The booklet as JSON, for programs."""

from __future__ import annotations

import json
from dataclasses import asdict
from typing import Any

from furbelow.s6_write.booklet.booklet import Booklet
from furbelow.s6_write.booklet.number_rows import number_rows
from furbelow.s6_write.booklet.texts import is_sized, versions_of, with_letters
from furbelow.s6_write.words.messages import Messages


def booklet_json(booklet: Booklet, words: Messages | None = None) -> str:
    """The file `booklet.json`: the whole booklet, its figures as SVG text, keys in alphabetical order.

    A number that differs stands in its text as {a}; `numbers` of the operation has its values, a row for each letter, and
    `what` what they are. A text that differs in more is a list of versions, each with its sizes. Sizes, and values in rows, are in the order of `sizes`;
    wherever `sizes` is empty, all are meant.
    """
    words = words or Messages(booklet.language)
    values = asdict(booklet)
    del values["numbers"]
    told = [
        *(operation for way in values["ways"] for operation in way["cut"]),
        *(operation for part in values["parts"] for operation in part["operations"]),
    ]
    for operation, whole in zip(told, booklet.operations, strict=True):
        rows = number_rows(whole, booklet.numbers, words)
        operation["numbers"] = {row.letter: list(row.values) for row in rows}
        operation["what"] = {row.letter: row.what for row in rows}
        del operation["figures"], operation["minutes"]  # the first are its drawings, the second the same for all sizes
        for drawing in operation["drawings"]:
            del drawing["said"]  # what the drawing has anyway
    fields = sorted({"furbelow_booklet": 1, **values}.items())
    # A line for each field: with an indent the library would write it in Python, ten times as slowly.
    written = (f" {_json(name)}: {_json(_said(value, booklet))}" for name, value in fields)
    return "{\n" + ",\n".join(written) + "\n}\n"


def _said(value: Any, booklet: Booklet) -> Any:
    if isinstance(value, dict):
        return {name: _said(part, booklet) for name, part in value.items()}
    if isinstance(value, list | tuple):
        return [_said(part, booklet) for part in value]
    if not isinstance(value, str) or not is_sized(value):
        return value
    versions = [
        {
            "sizes": [booklet.sizes[at] for at in version.sizes],
            "text": with_letters(version.text, lambda at: f"{{{booklet.numbers[at].letter}}}"),
        }
        for version in versions_of(value)
    ]
    return versions if versions[0]["sizes"] else versions[0]["text"]


def _json(value: object) -> str:
    return json.dumps(value, ensure_ascii=False, sort_keys=True)
