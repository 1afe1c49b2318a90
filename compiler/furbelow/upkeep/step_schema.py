"""The schema of the garment spec with every technique in it: what editors read and the reader checks by.

`python -m furbelow.upkeep.step_schema` writes schemas/garment.schema.json anew from schemas/garment.base.json
and the parameters that the techniques declare.
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

BASE, WHOLE = "garment.base.json", "garment.schema.json"


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


def write() -> Path:
    """Writes the whole schema beside the base, and says where."""
    from furbelow.techniques import techniques

    path = resources.schema(WHOLE)
    path.write_text(schema_text(techniques()), encoding="utf-8")
    return path


if __name__ == "__main__":
    print(f"written: {write()}")
