"""Each language has a glossary, its terms are those that the messages say, and a term is said one way."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
import yaml
from furbelow.resources import languages, template
from furbelow.s6_write.words.kept_words import all_shipped
from furbelow.s6_write.words.pattern import texts

ROOT = Path(__file__).parents[3]
OTHERS = [language for language in languages() if language != "en"]
_LETTERS = re.compile(r"[^\W\d_]+")


def _said(language: str) -> str:
    told = [
        text
        for message in all_shipped(language).values()
        for pattern in (message.value or (), *message.attributes.values())
        for text in texts(pattern)
    ]
    for path in (ROOT / "specs").glob("*.yaml"):  # where makers' things are named
        told += _told(yaml.safe_load(path.read_text("utf-8")), language)
    return " ".join(" ".join(told).lower().replace("\u00a0", " ").split())


def _told(node: Any, language: str) -> Iterator[str]:
    if isinstance(node, dict):
        if isinstance(node.get(language), str):
            yield node[language]
        node = list(node.values())
    for each in node if isinstance(node, list) else ():
        yield from _told(each, language)


def _rows(language: str, *columns: str) -> Iterator[list[str]]:
    """The rows of the tables whose headings begin with these columns."""
    told = (template("words") / language / "glossary.md").read_text("utf-8")
    for table in re.findall(r"^\|(.+)\|\n\|[-|]+\|\n((?:\|.*\|\n)+)", told, re.MULTILINE):
        heads = [cell.strip() for cell in table[0].split("|")]
        if heads[: len(columns)] == list(columns):
            yield from ([cell.strip() for cell in line.strip("|").split("|")] for line in table[1].splitlines())


def _terms(cell: str) -> Iterator[str]:
    """The longest word of each term of a cell; brackets hold what other countries say, and notes."""
    plain = re.sub(r"\([^)]*\)", "", cell)
    for term in re.split(r"[,;]", plain):
        words = [word for word in _LETTERS.findall(term) if len(word) > 1 and word not in ("pl",)]
        if words:
            yield max(words, key=len).lower()


def _stem(word: str) -> str:
    """What most forms of the word begin with."""
    return word[: max(3, len(word) - 3)]


def _name(language: str) -> str:
    return {"de": "German", "fr": "French", "es": "Spanish"}[language]


@pytest.mark.parametrize("language", OTHERS)
def test_every_term_of_the_glossary_is_said_by_a_message(language: str) -> None:
    said = _said(language)
    rows = list(_rows(language, "English", _name(language)))
    assert len(rows) > 50
    unsaid = [term for row in rows for term in _terms(row[1]) if not re.search(rf"\b{re.escape(_stem(term))}", said)]
    assert unsaid == []


@pytest.mark.parametrize("language", OTHERS)
def test_every_term_has_its_source_or_says_that_it_is_from_memory(language: str) -> None:
    assert [row[0] for row in _rows(language, "English", _name(language)) if not row[2]] == []


@pytest.mark.parametrize("language", OTHERS)
def test_no_message_says_a_term_in_another_way(language: str) -> None:
    said = _said(language)
    rows = list(_rows(language, "said", "never"))
    assert len(rows) > 10
    assert [row[0] for row in rows if not re.search(_stem(row[0].lower()), said)] == []
    other = [word.strip() for row in rows for word in row[1].split(",")]
    assert [word for word in other if re.search(rf"\b{re.escape(word.lower())}(?:e?s|n)?\b", said)] == []
