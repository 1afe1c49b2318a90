"""The quick walk tells what the full validator tells.

Checked against the reference library jsonschema (J. Berman), which follows JSON Schema 2020-12.
"""

from __future__ import annotations

import copy
import random
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from furbelow.s1_read.schema_check import load_schema
from furbelow.s1_read.schema_walk import fits, foreign_keywords, resolved
from furbelow.s1_read.yaml_tree import read_tree, to_plain
from jsonschema import Draft202012Validator

ROOT = Path(__file__).parents[2]
FILES = {
    "garment.schema.json": sorted((ROOT / "specs").glob("*.yaml")),
    "wearer.schema.json": sorted((ROOT / "specs" / "wearers").glob("*.yaml")),
    "workroom.schema.json": sorted((ROOT / "specs" / "workrooms").glob("*.yaml")),
    "swatch.schema.json": sorted((ROOT / "specs" / "swatches").glob("*.yaml")),
    "record.schema.json": sorted((ROOT / "specs" / "records").glob("*.yaml")),
}
CASES = [(schema, path) for schema, paths in FILES.items() for path in paths]
NAMES = [f"{path.stem} as {schema}" for schema, path in CASES]

# What a maker or a hostile hand may put in the place of a value.
ODD: list[Any] = [
    "",
    "x",
    "yes",
    "no",
    "true",
    "1",
    "2",
    "x" * 201,
    "x" * 501,
    1,
    2,
    0,
    2.5,
    True,
    False,
    None,
    [],
    {},
    ["x"],
    ["x", ["y"]],
    {"x": "y"},
    {"edge": "a.top"},
    {"kind": "cloth"},
    {"kind": "trim", "width": "1 cm"},
    {"value": "1 cm"},
    {"edge": "a.top", "right side": "up"},
]


def plain_of(path: Path) -> Any:
    tree = read_tree(path.read_bytes(), path.name).value
    assert tree is not None
    return to_plain(tree)


def holders(value: Any) -> Iterator[Any]:
    """Every map and list in the value, itself included."""
    if isinstance(value, dict | list):
        yield value
        for held in value.values() if isinstance(value, dict) else value:
            yield from holders(held)


def thinned(spec: Any, luck: random.Random) -> Any:
    """The spec with a few of its sizes, materials, pieces and steps, which the validator tells sooner."""
    thin = dict(spec)
    for key in ("sizes", "choices", "materials", "pieces", "steps"):
        held = list(spec.get(key, ()))
        few = [held[at] for at in sorted(luck.sample(range(len(held)), min(3, len(held))))]
        if key in spec:
            thin[key] = few if key == "steps" else {name: spec[key][name] for name in few}
    return thin


def mutate(value: Any, luck: random.Random) -> Any:
    """The value with one small thing changed."""
    value = copy.deepcopy(value)
    every = list(holders(value))
    place = luck.choice(every)
    other = luck.choice(every)
    odd = luck.choice([*ODD, copy.deepcopy(other)])
    if isinstance(place, dict):
        key = luck.choice([*place, "x"])
        match luck.randrange(4):
            case 0:
                place.pop(key, None)
            case 1:
                place[key] = odd
            case 2:
                place["x" if not isinstance(other, dict) else luck.choice([*other, "x"])] = odd
            case _:
                place[f"{key}s"] = place.pop(key, odd)
    else:
        at = luck.randrange(len(place) + 1)
        match luck.randrange(3):
            case 0:
                del place[at : at + 1]
            case 1:
                place[at : at + 1] = [odd]
            case _:
                place.clear()
    return value


@pytest.mark.parametrize(("schema", "path"), CASES, ids=NAMES)
def test_a_demo_file_fits(schema: str, path: Path) -> None:
    assert fits(plain_of(path), load_schema(schema))


@pytest.mark.parametrize(("schema_name", "path"), CASES, ids=NAMES)
def test_walk_and_validator_agree_on_changed_files(schema_name: str, path: Path) -> None:
    schema = load_schema(schema_name)
    validator = Draft202012Validator(schema)
    luck = random.Random(path.stem)
    sound = plain_of(path)
    told = {True: 0, False: 0}
    for _ in range(600):
        value = thinned(sound, luck)
        for _ in range(luck.choice((1, 1, 1, 2, 5))):
            value = mutate(value, luck)
        fitting = fits(value, schema)
        assert fitting is validator.is_valid(value), value
        told[fitting] += 1
    # Both answers were really asked for.
    assert min(told.values()) > 30


@pytest.mark.parametrize(
    ("value", "rule", "fitting"),
    [
        (True, {"enum": [1]}, False),
        (1, {"enum": [True]}, False),
        (1.0, {"enum": [1]}, True),
        ("1", {"const": 1}, False),
        (True, {"type": "number"}, False),
        (None, {"type": ["string", "number", "boolean", "array", "object"]}, False),
        ("é", {"maxLength": 1}, True),
        ("ab", {"pattern": "^a"}, True),
        ("ba", {"pattern": "^a"}, False),
        ({"a": "x"}, {"properties": {"a": False}}, False),
        ({"b": "x"}, {"properties": {"a": False}}, True),
        ({}, {"if": {"required": ["a"]}, "then": False}, True),
        ({}, {"if": {"required": ["a"]}, "else": False}, False),
        ({}, {"allOf": [{}, {"minProperties": 1}]}, False),
    ],
)
def test_each_keyword_means_what_the_validator_makes_of_it(value: Any, rule: dict[str, Any], fitting: bool) -> None:
    assert fits(value, rule) is Draft202012Validator(rule).is_valid(value) is fitting


def test_a_keyword_that_the_walk_does_not_know_is_found() -> None:
    schema = {
        "properties": {"a": {"oneOf": []}},
        "$defs": {"b": {"items": {"$ref": "other.json"}}},
        "allOf": [{"not": {}}],
    }
    assert foreign_keywords(schema) == ("properties/a/oneOf", "$defs/b/items/$ref to other.json", "allOf/0/not")


def test_what_stands_beside_a_reference_lies_over_it() -> None:
    root = {"$defs": {"a": {"description": "far", "type": "string"}}}
    assert resolved({"$ref": "#/$defs/a", "description": "near"}, root) == {"description": "near", "type": "string"}
