"""The maker's own texts in the language of the guide: each may be one text, or a map of it by language."""

from __future__ import annotations

import re

from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.garment.spec import Word
from furbelow.s1_read.values import text_at, value_at
from furbelow.s1_read.yaml_tree import Entry, MapTree, TextTree, Tree

# A language and, where one is meant, its country. Source: BCP 47 (RFC 5646), section 2.1, without its rarer parts.
_LANGUAGE = re.compile(r"[a-z]{2,3}(-[A-Z]{2})?")


class Sayings:
    """Reads texts and keeps those that are not told in the language that is asked for.

    written_in: the language of a text that is no map. language: that of the guide; without one it is the same.
    Fails: FB160 for a key that is no language.
    """

    def __init__(self, written_in: str, language: str | None) -> None:
        self.written_in, self.language = written_in, language or written_in
        self.untold: list[Word] = []
        self.faults: list[Fault] = []

    def at(self, tree: Tree | None, key: str, owner: str = "") -> str:
        """The text under a key; in another language where it is not told in this one. owner: whose it is, for messages."""
        value = value_at(tree, key)
        if isinstance(value, MapTree):
            return self._of(value, f"`{key}`{owner}")
        text = text_at(tree, key)
        if text and value and self.language != self.written_in:
            self.untold.append(Word(f"`{key}`{owner}", value.span))
        return text

    def name(self, entry: Entry, about: str) -> None:
        """Takes note of a name that stands in the guide itself, for want of a text that says what it is."""
        if not about and self.language != self.written_in:
            self.untold.append(Word(f"`{entry.key}`", entry.key_span))

    def each(self, value: Tree | None) -> tuple[TextTree, ...]:
        """The text in every language that it is told in."""
        rows = tuple(entry.value for entry in value.entries) if isinstance(value, MapTree) else (value,)
        return tuple(row for row in rows if isinstance(row, TextTree))

    def _of(self, texts: MapTree, called: str) -> str:
        for entry in texts.entries:
            if not _LANGUAGE.fullmatch(entry.key):
                headline = f"`{entry.key[:20]}` is no language in which {called} is told"
                help_ = "write the code of the language, such as en, de, fr or es"
                self.faults.append(Fault("FB160", headline, Label(entry.key_span), help=help_))
        said = {entry.key: entry.value.text for entry in texts.entries if isinstance(entry.value, TextTree)}
        for language in (self.language, self.language.partition("-")[0]):
            if language in said:
                return said[language]
        self.untold.append(Word(called, _place(texts)))
        return said.get(self.written_in) or next(iter(said.values()), "")


def _place(texts: MapTree) -> Span:
    return texts.entries[0].key_span if texts.entries else texts.span
