"""Our own language server: solver and rehearsal faults as marks, and the solved value under the pointer."""

from __future__ import annotations

import importlib.util
import os
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from furbelow.editor.answers import explained, faults_of

from tests.demos.demos import SPECS
from tests.editor.test_language_server import Editor

LARKSPUR = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")
LINES = LARKSPUR.splitlines()


def _place(part: str, word: str) -> tuple[int, int]:
    line = next(number for number, text in enumerate(LINES) if part in text)
    return line, LINES[line].index(word)


def test_a_sound_spec_has_no_fault() -> None:
    assert faults_of("larkspur.yaml", LARKSPUR) == ()


def test_a_fault_of_the_rehearsal_is_told_once_for_all_sizes() -> None:
    faulty = LARKSPUR.replace("  - narrow hem: {edge: lining.bottom, first turn: 5 mm, second turn: 10 mm}\n", "")
    assert [fault.code for fault in faults_of("larkspur.yaml", faulty)] == ["FB402"]


@pytest.mark.parametrize(
    ("part", "word", "value"),
    [
        ("length: upper.length * fullness", "upper.length", "300 cm"),
        ("hidden: {lining: clearance}", "clearance", "3 cm"),
    ],
)
def test_the_value_of_a_name_is_told(part: str, word: str, value: str) -> None:
    said = explained("larkspur.yaml", LARKSPUR, *_place(part, word))
    assert said is not None
    assert value in said
    assert "size XS" in said


@pytest.mark.parametrize("place", [(0, 0), (10_000, 0), (-1, 0), (3, 500)])
def test_where_no_number_stands_nothing_is_told(place: tuple[int, int]) -> None:
    assert explained("larkspur.yaml", LARKSPUR, *place) is None


@pytest.fixture
def editor(tmp_path: Path) -> Iterator[Editor]:
    if importlib.util.find_spec("pygls") is None:
        if os.environ.get("CI"):
            pytest.fail("pygls is not here")
        pytest.skip("pygls is not here: install furbelow[editor]")
    opened = Editor([sys.executable, "-c", "from furbelow.editor.command import main; main()"], tmp_path)
    yield opened
    opened.end()


def test_the_server_marks_a_fault_in_the_units_of_the_protocol(editor: Editor) -> None:
    # The gown stands on two UTF-16 units and one character.
    editor.open(LARKSPUR.replace("- close gap: {of: waistband}", "- {tip: \U0001f457, close gap: {of: waistbend}}"))
    told = editor.told()
    assert [fault["code"] for fault in told] == ["FB144"]
    row = "  - {tip: \U0001f457, close gap: {of: "
    assert told[0]["range"]["start"]["character"] == len(row) + 1


def test_the_server_tells_a_value_under_the_pointer(editor: Editor) -> None:
    editor.open(LARKSPUR)
    assert editor.told() == []
    line, column = _place("length: upper.length * fullness", "upper.length")
    hover = editor.ask("textDocument/hover", editor.at(line, column + 2))
    assert "300 cm" in hover["contents"]["value"]


def test_the_server_offers_the_edges_of_that_step(editor: Editor) -> None:
    at = next(number for number, text in enumerate(LINES) if text.startswith("  - gather:"))
    row = "  - gather: {edge: flo"
    editor.open("\n".join([*LINES[:at], row, *LINES[at + 1 :]]))
    offered = editor.ask("textDocument/completion", editor.at(at, len(row)))
    told = {item["label"]: item for item in offered}
    assert told["flounce.top"]["detail"] == "600 cm, raw"
    # What is typed already is written over.
    assert told["flounce.top"]["textEdit"]["range"]["start"] == {"line": at, "character": len(row) - len("flo")}


def test_the_server_offers_to_make_a_mend(editor: Editor) -> None:
    text = LARKSPUR.replace("  - close gap: {of: waistband}\n", "")
    editor.open(text)
    assert [fault["code"] for fault in editor.told()] == ["FB406"]
    line = next(number for number, row in enumerate(text.splitlines()) if "- band casing" in row)
    place = {"line": line, "character": 0}
    asked = {**editor.at(line, 0), "range": {"start": place, "end": place}, "context": {"diagnostics": []}}
    (action,) = editor.ask("textDocument/codeAction", asked)
    ((edit,),) = action["edit"]["changes"].values()
    assert edit["newText"] == "  - close gap: {of: waistband}\n"
    assert (
        edit["range"]["start"]["line"]
        == next(n for n, row in enumerate(text.splitlines()) if "insert elastic" in row) + 1
    )
