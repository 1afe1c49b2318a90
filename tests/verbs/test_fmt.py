"""`furbelow fmt`: one way to lay a file out, and nothing of it lost."""

from __future__ import annotations

import importlib.util
import io
import re
from importlib.machinery import ModuleSpec
from pathlib import Path

import pytest
import yaml
from furbelow.s1_read.laid_out import laid_out
from furbelow.verbs.command import run
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.demos.demos import SPECS

FILES = [*sorted(SPECS.glob("*.yaml")), *sorted(SPECS.glob("*/*.yaml"))]


def _anew(text: str) -> str:
    staged = laid_out(text.encode(), "spec.yaml")
    assert staged.value is not None, staged.faults
    return staged.value.decode()


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_values_and_comments_stay_and_a_second_time_changes_nothing(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    anew = _anew(text)
    # PyYAML reads both, every scalar as text.
    assert yaml.load(anew, yaml.CBaseLoader) == yaml.load(text, yaml.CBaseLoader)
    assert re.findall(r"#.*", anew) == re.findall(r"#.*", text)
    assert _anew(anew) == anew
    assert not re.search(r"[ \t]$|\b: {2,}[^\s{]", anew, re.MULTILINE)  # before a brace stand the spaces of a table


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_the_files_that_are_shipped_are_as_they_should_be(path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["fmt", "--check", str(path)]) == 0
    assert "as it should be" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("text", "anew"),
    [
        ("a:   1\n", "a: 1\n"),
        ("a: {b: 012,   c: 1:30, d: no}\n", "a: {b: 012, c: 1:30, d: no}\n"),
        ("steps:\n- gather: {edge: a.top}\n", "steps:\n  - gather: {edge: a.top}\n"),
        ('title: "12" # a title\n', 'title: "12" # a title\n'),
        # The library would lose this comment, so the file is left.
        ("a:  {\n  # small\n  b: 1}\n", "a:  {\n  # small\n  b: 1}\n"),
        ("a:  1\r\nb: 2\r\n", "a: 1\r\nb: 2\r\n"),
        ("a:  |\n  two  spaces\n  stay\n", "a: |\n  two  spaces\n  stay\n"),
        # A sign in a text is no comment, and does not keep the file as it is.
        ("a: {b: '#c',   d: e#f,   g: 1}   # h\n", "a: {b: '#c', d: e#f, g: 1}       # h\n"),
        # Like rows below each other are a table.
        (
            "S: {waist: 66 cm, hip: 92 cm}\nXL: {waist: 100 cm, hip: 122 cm}  # rarely\n",
            "S:  {waist: 66 cm,  hip: 92 cm}\nXL: {waist: 100 cm, hip: 122 cm}  # rarely\n",
        ),
        # With a map in a row only the braces stand below each other.
        ("a: {b: {c: 1}, d: 2}\nlong: {b: {c: 11}, d: 2}\n", "a:    {b: {c: 1}, d: 2}\nlong: {b: {c: 11}, d: 2}\n"),
        # Rows of other keys, with something between, or in a list, are none.
        ("a: {b: 1}\nlong: {c: 1}\n", "a: {b: 1}\nlong: {c: 1}\n"),
        ("a: {b: 1}\n\nlong: {b: 1}\n", "a: {b: 1}\n\nlong: {b: 1}\n"),
        ("a:\n  - {b: 1, c: 2}\n  - {b: 111, c: 2}\n", "a:\n  - {b: 1, c: 2}\n  - {b: 111, c: 2}\n"),
    ],
)
def test_spaces_go_and_what_is_written_stays(text: str, anew: str) -> None:
    assert _anew(text) == anew


@settings(max_examples=150, deadline=None)
@given(st.text(alphabet='ab: {}[],#-\n"|>1', max_size=60))
def test_whatever_is_typed_no_value_and_no_comment_is_lost(text: str) -> None:
    staged = laid_out(text.encode(), "spec.yaml")
    if staged.value is not None:
        anew = staged.value.decode()
        assert yaml.load(anew, yaml.CBaseLoader) == yaml.load(text, yaml.CBaseLoader)
        assert anew.count("#") == text.count("#")


_ROW = st.tuples(st.text("abé", min_size=1, max_size=4), st.lists(st.text("1é #", max_size=3), min_size=2, max_size=2))


@settings(max_examples=100, deadline=None)
@given(st.lists(_ROW, min_size=1, max_size=5, unique_by=lambda row: row[0]), st.sampled_from(["", "  # h", "     # h"]))
def test_a_table_has_its_columns_whatever_stands_in_it_and_a_second_time_changes_nothing(
    rows: list[tuple[str, list[str]]], comment: str
) -> None:
    text = "".join(f'{key}: {{x: "{x}", y: "{y}"}}{comment}\n' for key, (x, y) in rows)
    text = f"{text}top:\n  inside: 1\n"
    anew = _anew(text)
    assert yaml.load(anew, yaml.CBaseLoader) == yaml.load(text, yaml.CBaseLoader)
    assert _anew(anew) == anew
    for mark in ("{x:", "y: "):
        assert len({line.index(mark) for line in anew.splitlines() if mark in line}) == 1


def test_files_are_written_over_and_a_check_writes_nothing(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    spec, tidy = tmp_path / "spec.yaml", tmp_path / "tidy.yaml"
    spec.write_text("a:   1 # kept\n")
    tidy.write_text("a: 1\n")
    assert run(["fmt", "--check", str(tidy), str(spec)]) == 1
    assert spec.read_text() == "a:   1 # kept\n"
    assert run(["fmt", str(tidy), str(spec)]) == 0
    assert "a: 1" in spec.read_text()
    assert "# kept" in spec.read_text()
    assert run(["fmt", "--check", str(tidy), str(spec)]) == 0
    assert capsys.readouterr().out.count("as it should be") == 4


def test_a_broken_file_is_told_and_left(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    spec = tmp_path / "spec.yaml"
    spec.write_text("a: {b: 1\n")
    assert run(["fmt", str(spec), str(tmp_path / "nowhere.yaml")]) == 1
    assert spec.read_text() == "a: {b: 1\n"
    told = capsys.readouterr().err
    assert "FB104" in told
    assert "FB112" in told


def test_standard_input_is_told_anew(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(b"a:   1\n")))
    assert run(["fmt", "-"]) == 0
    assert capsys.readouterr().out == "a: 1\n"


def test_without_the_library_it_says_what_to_install(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    found = importlib.util.find_spec

    def missing(name: str, package: str | None = None) -> ModuleSpec | None:
        return None if name.startswith("ruamel") else found(name, package)

    monkeypatch.setattr("importlib.util.find_spec", missing)
    assert run(["fmt", "spec.yaml"]) == 2
    assert "pip install 'furbelow[fmt]'" in capsys.readouterr().err
