"""The letters of operations: one for each cloth to cut, one for each step of the spec, one for the look at the end.

They count what stands in the spec and not what is to do, so that G is the same work for every size and wearer: a step that
has nothing to do for one of them leaves its letter out.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from itertools import count, product

from furbelow.garment.tags import copy_letter

LETTERS = "ABCDEFGHJKLMNPQRSTUVWYZ"  # without I and O, which read as numbers
CORRECTIONS = "X"  # the work that a measurement asks for, which no spec has


def letters() -> Iterator[str]:
    """A, B ... Z, AA, AB ..."""
    for length in count(1):
        for letter in product(LETTERS, repeat=length):
            yield "".join(letter)


def letter_of_copy(letter: str, copy: int) -> str:
    """The letter of an operation that one copy has to itself: Fa, Fb."""
    return letter + copy_letter(copy)


def skips(given: Sequence[str], used: Collection[str]) -> tuple[tuple[str, ...], str] | None:
    """The letters that are given and not used, as far as a used one follows, and the first used one behind the first of them;
    None where each is used."""
    last = max((at for at, letter in enumerate(given) if letter in used), default=0)
    skipped = [at for at, letter in enumerate(given[:last]) if letter not in used]
    if not skipped:
        return None
    after = next(letter for letter in given[skipped[0] :] if letter in used)
    return tuple(given[at] for at in skipped), after


def letters_of(cloths: Sequence[str], steps: Sequence[int]) -> tuple[dict[str, str], dict[int, str], str]:
    """The letters of the cloths, of the steps in the order in which they are worked, and of the last look.

    steps: by their places in the spec. One that is not made for this body is missing, and its letter is left out.
    """
    given = letters()
    steps = list(steps)
    for left_out in sorted(set(range(max(steps, default=0))) - set(steps)):
        steps.insert(steps.index(left_out - 1) + 1 if left_out else 0, left_out)
    cut = dict(zip(cloths, given, strict=False))
    worked = dict(zip(steps, given, strict=False))
    return cut, worked, next(given)
