"""No sentence that a maker reads stands in the code: what is said is a message, and code gives its name and its values."""

from __future__ import annotations

import ast
import json
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[3]
COMPILER = ROOT / "compiler" / "furbelow"
# The rooms that write, and those whose reports a maker reads; all of their code.
_WRITING = ("s6_write", "compare", "fit")
# They tell faults, in English, to those who write specs, workrooms and words.
_OF_FAULTS = (
    "s6_write/folder.py",
    "s6_write/pages/unset_letters.py",
    "s6_write/words/check_own.py",
    "s6_write/words/check_words.py",
    "s6_write/words/messages.py",
    "s6_write/words/tell_words.py",
)
# What a technique says comes of functions that return one of these; its faults and the help of its parameters are the
# interface's, which is in English.
_SAID = re.compile(r"Action|Instructions|Caution|Part|Values?\b|Pieces|Things|One\b")
_FAULT = re.compile(r"\b(Fault|Label|Staged|Unread|WordsFault)\b")
# Addresses, types, names of fonts and programs for other programs.
_NO_WORDS = re.compile(r"[<>=;{}\\]|Sans|Furbelow |@media|noopener|^'.*'$|^ as written$")


def _closed_words() -> set[str]:
    """Keys and words of the language that specs are written in, such as `turn under`."""
    found: set[str] = set()
    left: list[object] = [
        json.loads((ROOT / "schemas" / f"{name}.schema.json").read_text("utf-8"))
        for name in ("garment", "workroom", "theme")
    ]
    while left:
        node = left.pop()
        if isinstance(node, dict):
            found |= set(node)
            found |= (
                {word for word in node.get("enum", ()) if isinstance(word, str)}
                if isinstance(node.get("enum"), list)
                else set()
            )
            left += node.values()
        elif isinstance(node, list):
            left += node
    return found


_CLOSED = _closed_words()


def _is_prose(text: str) -> bool:
    """Two words in a row, which is more than a name."""
    return (
        re.search(r"[A-Za-z]{2,}[,;:.]? [A-Za-z]{2,}", text) is not None
        and text not in _CLOSED
        and not _NO_WORDS.search(text)
    )


def _tells_a_fault(node: ast.AST) -> bool:
    if isinstance(node, (ast.Raise, ast.Assert)):
        return True
    if isinstance(node, ast.Call):
        return _FAULT.search(ast.unparse(node.func)) is not None
    return isinstance(node, ast.FunctionDef) and (
        (node.returns is not None and _FAULT.search(ast.unparse(node.returns)) is not None)
        or any(isinstance(each, ast.Name) and each.id in ("Fault", "WordsFault") for each in ast.walk(node))
    )


def _prose(node: ast.AST) -> Iterator[ast.Constant]:
    """Texts of two words and more in the code below a node, but for its docstrings and what it says of faults."""
    for child in ast.iter_child_nodes(node):
        if isinstance(child, ast.Expr) and isinstance(child.value, ast.Constant) or _tells_a_fault(child):
            continue
        if isinstance(child, ast.Constant) and isinstance(child.value, str) and _is_prose(child.value):
            yield child
        yield from _prose(child)


def _saying(tree: ast.AST) -> Iterator[ast.FunctionDef]:
    for node in ast.walk(tree):
        if isinstance(node, ast.FunctionDef) and node.returns is not None and _SAID.search(ast.unparse(node.returns)):
            yield node


def _found(path: Path, nodes: Iterator[ast.AST]) -> list[str]:
    return [f"{path.relative_to(COMPILER)}:{each.lineno}: {each.value!r}" for node in nodes for each in _prose(node)]


@pytest.mark.parametrize("room", _WRITING)
def test_no_sentence_stands_where_the_guide_and_the_reports_are_written(room: str) -> None:
    found = sorted((COMPILER / room).rglob("*.py"))
    files = [path for path in found if path.relative_to(COMPILER).as_posix() not in _OF_FAULTS]
    assert files
    assert [line for path in files for line in _found(path, iter([ast.parse(path.read_text("utf-8"))]))] == []


def test_no_technique_says_a_sentence_of_its_own() -> None:
    files = sorted((COMPILER / "techniques").rglob("*.py"))
    told = 0
    left: list[str] = []
    for path in files:
        saying = list(_saying(ast.parse(path.read_text("utf-8"))))
        told += len(saying)
        left += _found(path, iter(saying))
    assert told > 60, "the functions that say something are no longer known by what they return"
    assert left == []


@pytest.mark.parametrize(
    ("line", "found"),
    [
        ('def f() -> Action:\n    return Action("gather-title", 1, f"Sew {n} rows of it")', 1),
        ('def f() -> Action:\n    """Sew two rows."""\n    return Action("gather-title")', 0),
        ('def f() -> str:\n    return Fault("FB301", "the edge is raw")', 0),
        ('heading = "in all"', 1),
        ('key = "turn under"', 0),
    ],
)
def test_a_sentence_in_code_is_found(line: str, found: int) -> None:
    assert len(list(_prose(ast.parse(line)))) == found
