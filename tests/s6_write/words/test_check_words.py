"""Every language says every message, with the same values; the code names those that there are, and no others."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from furbelow.garment.technique import Kind
from furbelow.resources import languages, template
from furbelow.s6_write.words.check_own import CAUTION
from furbelow.s6_write.words.check_words import lacking, unlike
from furbelow.s6_write.words.kept_words import all_shipped
from furbelow.s6_write.words.says import Table
from furbelow.techniques import techniques

ROOT = Path(__file__).parents[3]
COMPILER = ROOT / "compiler" / "furbelow"
# What is called with the name of a message first.
_SAYING = {"Action", "Part", "action", "at", "said", "text", "why"}
_NAME = re.compile(r"[a-z][a-z0-9]*(-[a-z0-9]+)*(\.[a-z]+)?")


@pytest.mark.parametrize("language", languages())
def test_every_language_says_all_that_english_says_with_the_same_values(language: str) -> None:
    assert list(lacking(language)) == []
    assert list(unlike(language)) == []


@pytest.mark.parametrize("language", languages())
def test_no_message_refers_to_nothing_or_goes_round_in_a_circle(language: str) -> None:
    table = Table(all_shipped(language))
    for name in table.patterns:
        table.says(name)


@pytest.mark.usefixtures("made_up_language")
def test_the_made_up_language_says_all_that_english_says() -> None:
    assert list(lacking("eo")) == []
    assert list(unlike("eo")) == []


def _literals() -> Iterator[str]:
    """Every text in the code, and every message that a template says."""
    for path in COMPILER.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Constant) and isinstance(node.value, str):
                yield node.value
    for path in template(".").glob("*.j2"):
        yield from re.findall(r'\bt\("([^"]*)"', path.read_text("utf-8"))


def _said_by_code() -> Iterator[tuple[str, str]]:
    """(file, name) of each message that is named where it is said."""
    for path in COMPILER.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if not isinstance(node, ast.Call) or not node.args or not isinstance(node.args[0], ast.Constant):
                continue
            called = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
            if called in _SAYING and isinstance(node.args[0].value, str):
                yield path.name, node.args[0].value
    for path in template(".").glob("*.j2"):
        yield from ((path.name, name) for name in re.findall(r'\bt\("([^"]*)"', path.read_text("utf-8")))


def test_no_message_is_unused() -> None:
    table, literals = Table(all_shipped("en")), set(_literals())
    said = {name for name in table.patterns if name in literals or name.partition(".")[0] in literals}
    left = list(said)
    while left:
        for name in table.says(left.pop()).refers - said:
            said.add(name)
            left.append(name)
    assert sorted(table.patterns.keys() - said) == []


def test_every_message_that_the_code_says_is_there() -> None:
    patterns = Table(all_shipped("en")).patterns
    known = {*patterns, *(name.partition(".")[0] for name in patterns)}
    missing = [(file, name) for file, name in _said_by_code() if _NAME.fullmatch(name) and name not in known]
    assert missing == []


def test_a_caution_bears_that_word_in_its_name() -> None:
    """check_own knows cautions by it."""
    named = [
        node.args[1].value
        for path in (COMPILER / "techniques").rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text("utf-8")))
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Caution" and len(node.args) > 1
        if isinstance(node.args[1], ast.Constant)
    ]
    assert len(named) > 15
    assert [name for name in named if CAUTION not in str(name).split("-")] == []


@pytest.mark.parametrize("language", languages())
def test_every_number_of_a_step_has_a_name_in_every_language(language: str) -> None:
    names = Table(all_shipped(language)).says("name-number").keys("name")
    numbers = {
        key.replace(" ", "-")
        for technique in techniques().values()
        for key, parameter in technique.parameters.items()
        if parameter.kind in (Kind.LENGTH, Kind.NUMBER)
    }
    assert sorted(numbers - names) == []


def test_no_language_is_chosen_in_the_code() -> None:
    """Whoever writes "en" into a call takes the choice from the wearer, the workroom and the spec."""
    calls = [
        path.name
        for path in COMPILER.rglob("*.py")
        if path.parent.name != "upkeep" and re.search(r'Words\("|Messages\("', path.read_text("utf-8"))
    ]
    assert calls == []
