"""What a language is known by besides its messages: its decimal sign, its lists, its words for how many. Source: CLDR, by Babel."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import cache
from typing import NamedTuple

import babel

from furbelow.s6_write.words.kept import kept

# CLDR's plain English list has a comma before "and", the British one has none.
_LISTS = {"en": "en_GB"}


class Grammar(NamedTuple):
    """point: the decimal sign. lists: how two things are joined, and the start, the middle and the end of more."""

    point: str
    lists: Mapping[str, str]
    plural: Callable[[float], str]

    def listed(self, items: Sequence[str]) -> str:
        """ "a, b and c", as the language has it. Source: Unicode UTS 35, "List Patterns"."""
        if len(items) == 2:
            return self.lists["2"].format(*items)
        told = items[0]
        for at, item in enumerate(items[1:], 1):
            place = "start" if at == 1 else "end" if at == len(items) - 1 else "middle"
            told = self.lists[place].format(told, item)
        return told


@cache
def grammar_of(language: str) -> Grammar:
    """language: a folder of `templates/words/`.

    Babel's files hold all of CLDR; to read one takes longer than a guide needs to be said, so what is taken is kept.
    """
    from babel.plural import PluralRule

    point, lists, plurals = kept(f"grammar-{language}", babel.__version__.encode(), lambda: _from_babel(language))
    return Grammar(point, lists, PluralRule(plurals))


def _from_babel(language: str) -> tuple[str, dict[str, str], dict[str, str]]:
    locale = babel.Locale.parse(language.replace("-", "_"))
    lists = babel.Locale.parse(_LISTS.get(language, str(locale))).list_patterns["standard"]
    return locale.number_symbols["latn"]["decimal"], dict(lists), dict(locale.plural_form.rules)
