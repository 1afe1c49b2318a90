"""What stands on the paper tag of a piece: a number for the piece, a letter for the copy, a number for the part: 2a·1.

Operations have capital letters and sentences are called G3, so no tag reads as one of them. Places of a drawing have small Roman
numerals, and small letters from p on stand for the numbers of a booklet's table, so that no sign means two things on a page.
"""

from __future__ import annotations

COPIES = "abcdefghjkm"  # without i and l, which read as numbers
EXPLAINED = "pqrstuwyz"  # without v and x, which read as five and ten
_ONES = ("", "i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix")


def tag(piece: str, copy: int, part: int = 0) -> str:
    """piece: its number. copy: counted from 1. part: counted from 1, 0 where the piece is whole."""
    return f"{piece}{copy_letter(copy)}" + (f"·{part}" if part else "")


def copy_letter(copy: int) -> str:
    """a, b ... m, aa: how a copy is called, counted from 1."""
    return _called(copy, COPIES)


def copy_called(letter: str) -> int | None:
    """The copy that has this letter; None where none has."""
    if not letter or not set(letter) <= set(COPIES):
        return None
    copy = 0
    for each in letter:
        copy = copy * len(COPIES) + COPIES.index(each) + 1
    return copy


def explained_letter(number: int) -> str:
    """p, q ... z, pp: what stands for the number-th number of a table, counted from 1."""
    return _called(number, EXPLAINED)


def place_sign(number: int) -> str:
    """i, ii ... x, xi: what stands for the number-th place of a drawing, counted from 1."""
    tens, ones = divmod(number, 10)
    return "x" * tens + _ONES[ones]


def _called(number: int, letters: str) -> str:
    before, last = divmod(number - 1, len(letters))
    return (_called(before, letters) if before else "") + letters[last]
