"""The schema of the garment spec with every technique in it: what editors read and the reader checks by.

`python -m compiler.s1_read.step_schema` writes schemas/garment.schema.json anew from schemas/garment.base.json
and the parameters that the techniques declare.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from compiler import resources
from compiler.s1_read.shape import foreign_keywords
from compiler.techniques.technique import Parameter, Technique

BASE, WHOLE = "garment.base.json", "garment.schema.json"

# Kind of parameter -> what it refers to among the definitions, and an example.
_KINDS: dict[str, tuple[str, Any]] = {
    "length": ("formula", "1 cm"),
    "number": ("formula", "2"),
    "edge": ("edge", "flounce.top"),
    "edges": ("edges", ["middle.top", "lower.top"]),
    "piece": ("name", "flounce"),
    "pieces": ("names", ["upper", "flounce"]),
    "material": ("name", "edging"),
    "layers": ("layers", ["net_top", {"edge": "lining.top", "right side": "in"}]),
    "name": ("name", "skirt_top"),
    "casing": ("edge", "waistband"),
}


def garment_schema(words: Mapping[str, Technique]) -> dict[str, Any]:
    """The base schema with one key a technique in its steps.

    Fails: ValueError for a keyword that the reader's own walk (shape.py) does not know.
    """
    schema: dict[str, Any] = json.loads(resources.schema(BASE).read_text(encoding="utf-8"))
    steps = schema["$defs"]["step"]["properties"]
    for name, technique in words.items():
        steps[name] = _technique(technique)
    if foreign := foreign_keywords(schema):
        raise ValueError(f"keywords that the reader does not know: {', '.join(foreign)}")
    return schema


def schema_text(words: Mapping[str, Technique]) -> str:
    """The schema as it stands in the file."""
    return json.dumps(garment_schema(words), indent=2, ensure_ascii=False) + "\n"


def _technique(technique: Technique) -> dict[str, Any]:
    keys = technique.parameters
    return {
        "title": technique.name,
        "description": technique.about,
        "type": "object",
        "required": [name for name, key in keys.items() if key.default is None],
        "additionalProperties": False,
        "properties": {name: _parameter(key) for name, key in keys.items()},
    }


def _parameter(key: Parameter) -> dict[str, Any]:
    told: dict[str, Any] = {"description": key.about}
    if key.default:
        told["default"] = key.default
    if isinstance(key.kind, tuple):
        # Editors that read YAML 1.1 see a truth value where yes or no is written.
        words: list[Any] = [*key.kind, True, False] if set(key.kind) == {"yes", "no"} else list(key.kind)
        return {**told, "enum": words, "examples": [key.default or key.kind[0]]}
    refers, example = _KINDS[key.kind]
    return {"$ref": f"#/$defs/{refers}", **told, "examples": [key.default or example]}


def write() -> Path:
    """Writes the whole schema beside the base, and says where."""
    from compiler.techniques import techniques

    path = Path(str(resources.schema(WHOLE)))
    path.write_text(schema_text(techniques()), encoding="utf-8")
    return path


if __name__ == "__main__":
    print(f"written: {write()}")
