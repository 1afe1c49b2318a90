"""The same guide in several languages, each in a folder named by its code, and how they lead to each other."""

from __future__ import annotations

from collections.abc import Sequence

from furbelow.s6_write.guide.guide import LanguageBeside


def languages_beside(language: str, languages: Sequence[str], page: str) -> tuple[LanguageBeside, ...]:
    """All languages with the way to each page; none where there is one language alone.

    page: as it lies in the folder of its language, such as "size-m/guide.html"; from there the others are found.
    """
    if len(languages) < 2:
        return ()
    up = "../" * (page.count("/") + 1)
    return tuple(
        LanguageBeside(code, _name(code), "" if code == language else f"{up}{code}/{page}") for code in languages
    )


def _name(code: str) -> str:
    """Of a language in itself. Source: Unicode CLDR, by Babel."""
    from babel import Locale  # the data of languages is heavy to load, and most guides are made in one

    name = Locale.parse(code).get_language_name(code) or code
    return name[:1].upper() + name[1:]
