"""The part of the schema that one technique has: a map of its parameters, each with its help."""

from __future__ import annotations

from typing import Any

from furbelow.garment.technique import Parameter, Technique

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


def technique_schema(technique: Technique) -> dict[str, Any]:
    """What may stand under the technique's key in a step."""
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
