"""Compiled templates are kept beside the byte-code, and no harm to them harms a guide."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from furbelow.s6_write.pages import compiled_templates
from furbelow.s6_write.pages.compiled_templates import environment
from furbelow.s6_write.pages.markdown_page import environment_of, markdown

from tests.s6_write.sample_guide import GUIDE


@pytest.fixture
def kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """The folder where what is compiled is kept. No template is loaded yet, as when a command begins."""
    environment_of.cache_clear()
    monkeypatch.setattr(compiled_templates, "cache_from_source", lambda _source: str(tmp_path / "x.pyc"))
    monkeypatch.setattr(sys, "dont_write_bytecode", False)
    yield tmp_path
    environment_of.cache_clear()


def test_a_template_is_compiled_once_and_gives_the_same_page(kept: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    first = markdown(GUIDE)
    written = {file: file.stat().st_mtime_ns for file in kept.iterdir()}
    assert written
    environment_of.cache_clear()
    monkeypatch.setattr("jinja2.environment.Environment.compile", lambda *_: pytest.fail("compiled again"))
    assert markdown(GUIDE) == first
    assert {file: file.stat().st_mtime_ns for file in kept.iterdir()} == written


@pytest.mark.parametrize("harm", [b"", b"j2", b"\x00" * 400])
def test_a_torn_file_is_passed_over(kept: Path, harm: bytes) -> None:
    first = markdown(GUIDE)
    files = list(kept.iterdir())
    for file in files:
        file.write_bytes(harm)
    environment_of.cache_clear()
    assert markdown(GUIDE) == first
    assert all(file.read_bytes() != harm for file in files)


def test_half_a_file_is_passed_over(kept: Path) -> None:
    first = markdown(GUIDE)
    for file in kept.iterdir():
        file.write_bytes(file.read_bytes()[: file.stat().st_size // 2])
    assert markdown(GUIDE) == first


def test_where_nothing_can_be_kept_the_page_is_the_same(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    nowhere = tmp_path / "missing" / "x.pyc"
    monkeypatch.setattr(compiled_templates, "cache_from_source", lambda _source: str(nowhere))
    monkeypatch.setattr(sys, "dont_write_bytecode", False)
    assert GUIDE.title in markdown(GUIDE)
    assert list(tmp_path.iterdir()) == []


def test_who_wants_no_byte_code_gets_none(kept: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "dont_write_bytecode", True)
    assert GUIDE.title in markdown(GUIDE)
    assert list(kept.iterdir()) == []


def test_a_changed_template_is_compiled_anew(kept: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    source = kept.parent / "hello.j2"
    monkeypatch.setattr(compiled_templates, "template", lambda _name: source)
    source.write_text("one")
    assert environment().get_template("hello.j2").render() == "one"
    source.write_text("two")
    assert environment().get_template("hello.j2").render() == "two"
