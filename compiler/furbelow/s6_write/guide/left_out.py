"""The letters that are left out, told where the first of them is missed."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from itertools import takewhile

from furbelow.garment.message import Own, Things
from furbelow.s6_write.guide.letters import letters, skips
from furbelow.s6_write.words.messages import Messages


def left_out(given: Sequence[str], used: Collection[str], words: Messages) -> dict[str, str]:
    """By the letter of the work behind the first that is left out, why: "No T to AH? ..."; empty where each is used.

    given: the letters in their order.
    """
    skip = skips(given, used)
    if skip is None:
        return {}
    missing, after = skip
    runs = tuple(Own(_said(run, words)) for run in _runs(given, missing))
    return {after: words.text("letters-skip", {"letters": Things(runs), "many": len(missing)})}


def letters_before(last: str) -> list[str]:
    """All letters up to one of them."""
    return [*takewhile(last.__ne__, letters()), last]


def _runs(given: Sequence[str], missing: Collection[str]) -> Iterator[list[str]]:
    run: list[str] = []
    for letter in given:
        if letter in missing:
            run.append(letter)
        elif run:
            yield run
            run = []
    if run:
        yield run


def _said(run: Sequence[str], words: Messages) -> str:
    """Two that follow each other are told as two."""
    if len(run) < 3:
        return words.listed(run)
    return words.text("letters-skip-run", {"first": run[0], "last": run[-1]})
