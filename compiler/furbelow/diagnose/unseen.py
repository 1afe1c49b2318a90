"""Signs that nobody can see: controls, lone surrogates, format characters such as the marks that turn the direction of writing.

In a page they are of no use and could hide or turn round what a reader sees; on a terminal they could steer it.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Callable

# Control, lone surrogate, and format characters; the soft hyphen and joiners among the last are no loss here.
_UNSEEN = {"Cc", "Cs", "Cf", "Zl", "Zp"}


def without_unseen(text: str) -> str:
    """The text without these signs, and without the places of Unicode that hold no letter; its lines and tabs stay.

    XML holds neither most controls nor U+FFFE. Source: W3C, Extensible Markup Language 1.0, section 2.2.
    """
    return marked_unseen(text, lambda sign: "")


def marked_unseen(text: str, mark: Callable[[str], str]) -> str:
    """The text with a mark in place of each of these signs; its lines and tabs stay."""
    if is_seen(text):
        return text
    return "\n".join(
        line if is_seen(line) else "".join(mark(sign) if is_unseen(sign) else sign for sign in line)
        for line in text.split("\n")
    )


def is_seen(text: str) -> bool:
    """Whether every sign can be seen, or is a space within a line."""
    # No-break spaces do not count as printable, and French has one in every second sentence.
    return text.isprintable() or text.replace("\u00a0", "").replace("\u202f", "").isprintable()


def is_unseen(sign: str) -> bool:
    if sign == "\t":
        return False
    return unicodedata.category(sign) in _UNSEEN or ord(sign) & 0xFFFE == 0xFFFE or 0xFDD0 <= ord(sign) <= 0xFDEF


def shows_nothing(text: str) -> bool:
    """Whether nothing of the text can be seen: it is empty, or all space, unseen signs and marks that stand on a letter."""
    return all(sign.isspace() or is_unseen(sign) or unicodedata.category(sign)[0] == "M" for sign in text)
