"""Things said one behind the other, as each language lists them."""

from __future__ import annotations

import pytest
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
