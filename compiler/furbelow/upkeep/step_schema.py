"""The schema of the garment spec with every technique in it, and that of libraries: what editors read and the reader checks by.

`python -m furbelow.upkeep.step_schema` writes schemas/garment.schema.json anew from schemas/garment.base.json
and the parameters that the techniques declare, and schemas/library.schema.json from that.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from furbelow import resources
from furbelow.garment.technique import Technique
from furbelow.s1_read.read_own_techniques import SCHEMA, SECTION
from furbelow.s1_read.schema_walk import foreign_keywords
from furbelow.s1_read.technique_schema import technique_schema
from furbelow.s1_read.used_files import library_schema

BASE, WHOLE, LIBRARY = "garment.base.json", "garment.schema.json", "library.schema.json"
_REF = "#/$defs/"


def garment_schema(words: Mapping[str, Technique]) -> dict[str, Any]:
    """The base schema with one key a technique in its steps, and the section for techniques of the spec's own.

    Fails: ValueError for a keyword that the reader's own walk (shape.py) does not know.
    """
    schema: dict[str, Any] = json.loads(resources.schema(BASE).read_text(encoding="utf-8"))
    steps = schema["$defs"]["step"]["properties"]
    for name, technique in words.items():
        steps[name] = technique_schema(technique)
    schema["properties"][SECTION] = SCHEMA
    if foreign := foreign_keywords(schema):
        raise ValueError(f"keywords that the reader does not know: {', '.join(foreign)}")
    return schema


def schema_text(words: Mapping[str, Technique]) -> str:
    """The schema as it stands in the file."""
    return json.dumps(garment_schema(words), indent=2, ensure_ascii=False) + "\n"


def library_text(words: Mapping[str, Technique]) -> str:
    """The schema of a library as it stands in the file: of the definitions, those that it leads to."""
    library = library_schema(garment_schema(words))
    needed: set[str] = set()
    found = _refs(library["properties"])
    while found - needed:
        needed |= found
        found = {name for each in needed for name in _refs(library["$defs"][each])}
    kept = {name: rule for name, rule in library["$defs"].items() if name in needed}
    return json.dumps({**library, "$defs": kept}, indent=2, ensure_ascii=False) + "\n"


def _refs(rule: Any) -> set[str]:
    """The definitions that a part of a schema names."""
    if isinstance(rule, dict):
        named = {str(rule["$ref"]).removeprefix(_REF)} if "$ref" in rule else set()
        return named.union(*(_refs(part) for part in rule.values()))
    return set().union(*(_refs(part) for part in rule)) if isinstance(rule, list) else set()


def write() -> tuple[Path, ...]:
    """Writes both schemas beside the base, and says where."""
    from furbelow.techniques import techniques

    texts = {WHOLE: schema_text(techniques()), LIBRARY: library_text(techniques())}
    for name, text in texts.items():
        resources.schema(name).write_text(text, encoding="utf-8")
    return tuple(resources.schema(name) for name in texts)


if __name__ == "__main__":
    print("".join(f"written: {path}\n" for path in write()), end="")
