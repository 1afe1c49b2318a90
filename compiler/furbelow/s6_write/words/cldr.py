"""What Unicode CLDR knows of a language: its decimal sign, how it lists, its words for how many. From Babel."""

from __future__ import annotations

import os
from collections.abc import Mapping
from functools import cache
from importlib.util import find_spec

from furbelow.named import NamedTuple
from furbelow.s6_write.words.kept_words import kept

# CLDR's plain English list has a comma before "and", the British one has none.
_LIST_LOCALES = {"en": "en_GB"}
# Of whole numbers below this the word is kept; a large class has not many more pieces.
_COUNTED = 2000


class Cldr(NamedTuple):
    """lists: the patterns by which two and more are joined. counted: the plural category of 0, 1, 2 and so on."""

    language: str
    point: str
    lists: Mapping[str, str]
    counted: tuple[str, ...]

    def listed(self, items: tuple[str, ...]) -> str:
        """ "a, b and c", as the language has it. Source: Unicode TR 35, part 2, "List Patterns"."""
        if len(items) < 3:
            return self.lists["2"].format(*items) if len(items) == 2 else "".join(items)
        told = self.lists["start"].format(*items[:2])
        for item in items[2:-1]:
            told = self.lists["middle"].format(told, item)
        return self.lists["end"].format(told, items[-1])

    def plural(self, number: float) -> str:
        """The plural category of a number: one, few, other."""
        if isinstance(number, int) and 0 <= number < len(self.counted):
            return self.counted[number]
        from babel import Locale  # a large or broken number is rare, and the data of a language heavy to load

        return str(Locale.parse(_locale(self.language)).plural_form(number))


@cache
def cldr(language: str) -> Cldr:
    """What is known of the language; Babel is loaded where it was not read before."""
    point, lists, counted = kept(f"cldr/{language}", _data(language), lambda: _read(language), reader="cldr.py")
    return Cldr(language, point, lists, counted)


def _read(language: str) -> tuple[str, dict[str, str], tuple[str, ...]]:
    from babel import Locale

    locale = Locale.parse(_locale(language))
    lists = Locale.parse(_LIST_LOCALES.get(language, _locale(language))).list_patterns["standard"]
    point = str(locale.number_symbols["latn"]["decimal"])
    return point, dict(lists.items()), tuple(str(locale.plural_form(number)) for number in range(_COUNTED))


def _locale(language: str) -> str:
    return language.replace("-", "_")


def _data(language: str) -> bytes:
    """What tells the data of a language in one Babel from that of another, without loading either."""
    found = find_spec("babel")
    if found is None or found.origin is None:
        return b""
    told = os.stat(found.origin)
    return f"{found.origin} {told.st_size} {told.st_mtime_ns}".encode()
