"""Things said one behind the other, as each language lists them."""

from __future__ import annotations

import pytest
from babel.lists import format_list
from furbelow.resources import languages
from furbelow.s6_write.words.grammar import grammar_of
from furbelow.s6_write.words.messages import Messages


@pytest.mark.parametrize(
    ("language", "items", "told"),
    [
        ("en", ["net", "satin", "thread"], "net, satin and thread"),
        ("de", ["Nadel", "Faden"], "Nadel und Faden"),
        ("fr", ["aiguille", "fil"], "aiguille et fil"),
        ("es", ["aguja", "alfiler", "hilo"], "aguja, alfiler e hilo"),
        ("es", ["aguja", "Imperdible"], "aguja e Imperdible"),
        ("es", ["agua", "hielo"], "agua y hielo"),
        ("es", ["hilo y aguja", "tijeras"], "hilo y aguja y tijeras"),
        ("es", ["hilo"], "hilo"),
        ("es", [], ""),
    ],
)
def test_a_list_ends_as_the_language_has_it(language: str, items: list[str], told: str) -> None:
    assert Messages(language).listed(items) == told


@pytest.mark.parametrize("many", [1, 2, 3, 5])
@pytest.mark.parametrize("language", languages())
def test_a_list_is_laid_out_as_babel_does(language: str, many: int) -> None:
    items = [f"item {number}" for number in range(many)]
    assert grammar_of(language).listed(items) == format_list(items, locale={"en": "en_GB"}.get(language, language))
