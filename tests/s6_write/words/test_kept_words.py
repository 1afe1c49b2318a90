"""The shipped words are read once and kept beside the byte-code, and no harm to what is kept harms a guide."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest
from babel import Locale
from babel.lists import format_list
from furbelow.s6_write.words import kept_words as module
from furbelow.s6_write.words import read_words as reading
from furbelow.s6_write.words.cldr import cldr
from furbelow.s6_write.words.kept_words import kept_words
from furbelow.s6_write.words.read_words import messages_of, read_words

NAME = "words/en/gather.ftl"
SOURCE = "gather-title = Gather it\n    .check = It is gathered.\n"


@pytest.fixture
def kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The folder where words are kept."""
    monkeypatch.setattr(module, "cache_from_source", lambda _source: str(tmp_path / "x.pyc"))
    monkeypatch.setattr(sys, "dont_write_bytecode", False)
    return tmp_path


def _same(source: str = SOURCE) -> bool:
    return kept_words(NAME, source.encode()) == messages_of(read_words(NAME, source))


def test_words_are_read_once_and_are_the_same_from_then_on(kept: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assert _same()
    assert len(list(kept.iterdir())) == 1
    monkeypatch.setattr(reading, "read_words", lambda *_: pytest.fail("read again"))
    again = kept_words(NAME, SOURCE.encode())
    assert again["gather-title"].attributes == {"check": ("It is gathered.",)}


@pytest.mark.parametrize("harm", [b"", b"x" * 10, b"0" * 200])
def test_a_torn_file_is_passed_over_and_written_anew(kept: Path, harm: bytes) -> None:
    assert _same()
    (file,) = kept.iterdir()
    file.write_bytes(harm)
    assert _same()
    assert file.read_bytes() != harm


def test_words_that_were_changed_are_read_anew(kept: Path) -> None:
    assert _same()
    assert _same(SOURCE.replace("Gather it", "Draw it in"))


def test_where_nothing_can_be_kept_they_are_read(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(module, "cache_from_source", lambda _source: str(tmp_path / "nowhere" / "x.pyc"))
    monkeypatch.setattr(sys, "dont_write_bytecode", False)
    assert _same()


@pytest.mark.parametrize("language", ["en", "de", "fr", "es", "eo", "pl", "ar"])
def test_what_is_kept_of_a_language_is_what_babel_says(
    language: str, kept: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Reference library: Babel, with the data of Unicode CLDR."""
    locale, lists = Locale(language), "en_GB" if language == "en" else language
    cldr.cache_clear()
    assert cldr(language).point == locale.number_symbols["latn"]["decimal"]
    cldr.cache_clear()
    monkeypatch.setattr("furbelow.s6_write.words.cldr._read", lambda _: pytest.fail("read again"))
    again = cldr(language)
    assert len(list(kept.iterdir())) == 1
    for items in ((), ("net",), ("net", "satin"), ("net", "{0}", "lace"), ("net", "satin", "lace", "tape")):
        assert again.listed(items) == format_list(items, locale=lists)
    for number in (*range(300), 10**6, 1.5, -1):
        assert again.plural(number) == locale.plural_form(number)
    cldr.cache_clear()
