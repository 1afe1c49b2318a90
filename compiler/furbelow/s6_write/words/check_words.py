"""Whether the messages of a language can stand in the place of those of another: each is there, and no value is lost.

Known without saying them.
"""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.s6_write.words.kept_words import all_shipped
from furbelow.s6_write.words.says import Says, Table, Unsayable

# PIECE and EDGE ask these for their words; what they choose by is the grammar of the language.
ASKED = ("piece", "edge", "stack", "stack-layers-of")


def lacking(language: str, than: str = "en") -> Iterator[str]:
    """Messages and attributes that a language has not and that `than` has."""
    patterns = Table(all_shipped(language)).patterns
    yield from (name for name in Table(all_shipped(than)).patterns if name not in patterns)


def unlike(language: str, than: str = "en") -> Iterator[tuple[str, str]]:
    """(message, what is not as in `than`): values lost or unheard of, words that it chooses by, circles."""
    other, first = Table(all_shipped(language)), Table(all_shipped(than))
    for name in other.patterns:
        try:
            found = other.says(name)
        except Unsayable as wrong:
            yield name, f"refers to `{wrong.name}`, which is not there or leads back to it"
            continue
        if name in first.patterns and name not in ASKED:
            yield from ((name, said) for said in _unlike(found, first.says(name)))


def _unlike(found: Says, first: Says) -> Iterator[str]:
    for lost in sorted(first.always - found.always):
        yield f"does not always say `${lost}`"
    for strange in sorted(found.needs - first.needs):
        yield f"says `${strange}`, which is not given"
    for chooser, key in found.strange_keys(first):
        yield f"chooses by `{key}`, which {chooser} is never"
