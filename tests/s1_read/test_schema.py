"""The schemas: valid, fresh, within what the reader's walk knows, and helpful to an editor."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from furbelow.measure.formula_parser import LONGEST_FORMULA
from furbelow.s1_read.lower_steps import SIDES
from furbelow.s1_read.schema_check import load_schema, schema_faults
from furbelow.s1_read.schema_walk import Schema, foreign_keywords, resolved
from furbelow.s1_read.used_files import library_schema
from furbelow.s1_read.yaml_tree import read_tree
from furbelow.techniques import techniques
from furbelow.upkeep.step_schema import library_text, schema_text
from jsonschema import Draft202012Validator

ROOT = Path(__file__).parents[2]
SCHEMAS = (
    "garment.schema.json",
    "library.schema.json",
    "wearer.schema.json",
    "workroom.schema.json",
    "theme.schema.json",
    "swatch.schema.json",
    "record.schema.json",
)


def keys_in(rule: Any, root: Schema, place: str) -> Iterator[tuple[str, Schema]]:
    """Every key that a schema knows, with its place and its rule."""
    if isinstance(rule, dict):
        for name, wanted in rule.get("properties", {}).items():
            if "if" not in place.rsplit("/", 2)[-2:]:
                yield f"{place}/{name}", resolved(wanted, root)
        for name, part in rule.items():
            if name not in ("examples", "enum", "default"):
                yield from keys_in(part, root, f"{place}/{name}")
    elif isinstance(rule, list):
        for at, part in enumerate(rule):
            yield from keys_in(part, root, f"{place}/{at}")


@pytest.mark.parametrize("name", SCHEMAS)
def test_a_schema_is_valid_and_uses_only_what_the_walk_knows(name: str) -> None:
    schema = load_schema(name)
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    Draft202012Validator.check_schema(schema)
    assert foreign_keywords(schema) == ()


@pytest.mark.parametrize("name", SCHEMAS)
def test_every_key_has_a_description_and_an_example_for_editors(name: str) -> None:
    schema = load_schema(name)
    lacking = []
    for place, rule in keys_in(schema, schema, name):
        is_technique = "/$defs/step/" in place and rule.get("type") == "object"
        if not re.fullmatch(r"\S.+[.]", rule.get("description", "")):
            lacking.append(f"{place} has no sentence")
        if not is_technique and not rule.get("examples"):
            lacking.append(f"{place} has no example")
    assert not lacking


@pytest.mark.parametrize("name", SCHEMAS)
def test_every_example_is_as_its_rule_asks(name: str) -> None:
    schema = load_schema(name)
    wrong = []
    for place, rule in keys_in(schema, schema, name):
        validator = Draft202012Validator({**rule, "$defs": schema["$defs"]})
        wrong += [f"{place}: {example}" for example in rule.get("examples", ()) if not validator.is_valid(example)]
    assert not wrong


def test_the_garment_schema_is_fresh() -> None:
    written = (ROOT / "schemas" / "garment.schema.json").read_text(encoding="utf-8")
    assert written == schema_text(techniques()), "run: python -m furbelow.upkeep.step_schema"


def test_the_schema_of_libraries_is_fresh_and_takes_what_the_reader_takes() -> None:
    written = (ROOT / "schemas" / "library.schema.json").read_text(encoding="utf-8")
    assert written == library_text(techniques()), "run: python -m furbelow.upkeep.step_schema"
    file, read = load_schema("library.schema.json"), library_schema(load_schema("garment.schema.json"))
    assert file["properties"] == read["properties"]
    assert set(file["$defs"]) < set(read["$defs"])
    assert "step" not in file["$defs"]


def test_every_technique_and_its_parameters_are_keys() -> None:
    steps = load_schema("garment.schema.json")["$defs"]["step"]["properties"]
    assert set(steps) == {"part", "picture", "tip", "for", "when", "called", "steps", *techniques()}
    for name, technique in techniques().items():
        assert set(steps[name]["properties"]) == set(technique.parameters)
        asked = {key for key, parameter in technique.parameters.items() if parameter.default is None}
        assert set(steps[name]["required"]) == asked


def test_the_limits_of_a_spec_are_those_agreed() -> None:
    schema = load_schema("garment.schema.json")
    most = {
        key: rule.get("maxProperties", rule.get("maxItems"))
        for key, rule in schema["properties"].items()
        if "maxProperties" in rule or "maxItems" in rule
    }
    assert most == {
        "body": 100,
        "sizes": 100,
        "accept": 50,
        "choices": 100,
        "measures": 500,
        "materials": 100,
        "pieces": 200,
        "steps": 500,
        "change steps": 100,
        "rules": 200,
        "techniques": 50,
    }
    assert schema["$defs"]["formula"]["maxLength"] == LONGEST_FORMULA == 500
    assert schema["$defs"]["prose"]["maxLength"] == 20_000


def test_the_sides_that_the_schema_tells_are_those_that_the_reader_knows() -> None:
    told = load_schema("garment.schema.json")["$defs"]["edge"]["description"]
    assert ", ".join(SIDES) in told


@pytest.mark.parametrize("path", sorted((ROOT / "specs").rglob("*.yaml")), ids=lambda path: path.stem)
def test_a_demo_names_its_schema_for_editors(path: Path) -> None:
    first = path.read_text(encoding="utf-8").splitlines()[0]
    found = re.fullmatch(r"# yaml-language-server: \$schema=(\S+)", first)
    assert found
    schema = path.parent / found[1]
    assert schema.is_file()
    # An editor sees numbers and truth values where the reader keeps the text: both fit. It reads YAML 1.2, in which the key
    # `on` is a word; PyYAML reads 1.1, in which it is true.
    import yaml

    class Core(yaml.SafeLoader):
        yaml_implicit_resolvers = {
            first: [rule for rule in rules if rule[0] != "tag:yaml.org,2002:bool" or first in "tTfF"]
            for first, rules in yaml.SafeLoader.yaml_implicit_resolvers.items()
        }

    seen = json.loads(json.dumps(yaml.load(path.read_text(encoding="utf-8"), Core)))
    assert Draft202012Validator(json.loads(schema.read_text(encoding="utf-8"))).is_valid(seen)


def test_the_full_validator_finds_nothing_in_a_sound_spec() -> None:
    path = ROOT / "specs" / "larkspur.yaml"
    tree = read_tree(path.read_bytes(), "larkspur.yaml").value
    assert tree is not None
    assert schema_faults(tree, load_schema("garment.schema.json"), in_full=True) == ()


def keywords_in(rule: Any) -> Iterator[str]:
    """Every keyword that a schema asks something with."""
    if isinstance(rule, dict):
        for keyword, wanted in rule.items():
            yield keyword
            if keyword in ("properties", "$defs"):
                for part in wanted.values():
                    yield from keywords_in(part)
            elif keyword == "allOf":
                for part in wanted:
                    yield from keywords_in(part)
            else:
                yield from keywords_in(wanted)


def test_every_keyword_that_can_fail_has_a_wording() -> None:
    asked = {
        keyword
        for name in SCHEMAS
        for keyword in keywords_in(load_schema(name))
        if keyword in Draft202012Validator.VALIDATORS
    }
    structure = {"$ref", "properties", "items", "if", "allOf", "const"}  # const is asked only behind `if`
    assert asked - structure == {
        "additionalProperties",
        "required",
        "type",
        "enum",
        "minLength",
        "maxLength",
        "minProperties",
        "minItems",
        "maxProperties",
        "maxItems",
    }
