"""Which known words a mistyped one most resembles."""

from __future__ import annotations

from collections.abc import Iterable

# A longer word is no slip of the fingers, and comparing it would cost time.
_LONGEST = 60
_MOST = 3


def nearest(word: str, words: Iterable[str]) -> tuple[str, ...]:
    """Up to three of the words that are a slip away from this one, nearest first; none when nothing is near.

    A slip is a letter too many, missing, wrong, or two letters exchanged; a word may hold one slip for
    every three letters, at least one. Case and the choice of `-`, `_` or space do not count.
    Source: restricted edit distance (Damerau, "A technique for computer detection and correction of
    spelling errors", 1964).
    """
    if not 0 < len(word) <= _LONGEST:
        return ()
    plain = _plain(word)
    allowed = max(1, len(plain) // 3)
    found: list[tuple[int, str]] = []
    for known in dict.fromkeys(words):
        if known == word or abs(len(known) - len(plain)) > allowed:
            continue
        slips = _slips(plain, _plain(known))
        if slips <= allowed and slips < len(plain):
            found.append((slips, known))
    return tuple(known for _, known in sorted(found)[:_MOST])


def _plain(word: str) -> str:
    return word.casefold().replace("-", "_").replace(" ", "_")


def _slips(left: str, right: str) -> int:
    before: list[int] = []
    row = list(range(len(right) + 1))
    for i, a in enumerate(left, 1):
        next_row = [i]
        for j, b in enumerate(right, 1):
            best = min(row[j] + 1, next_row[j - 1] + 1, row[j - 1] + (a != b))
            if i > 1 and j > 1 and a == right[j - 2] and left[i - 2] == b:
                best = min(best, before[j - 2] + 1)
            next_row.append(best)
        before, row = row, next_row
    return row[-1]
