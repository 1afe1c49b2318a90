"""The letters that are left out, told where the first of them is missed."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from itertools import takewhile

from furbelow.garment.message import Own, Things
from furbelow.s6_write.guide.letters import letters, skips
from furbelow.s6_write.words.messages import Messages
from furbelow.s6_write.words.ranges import runs


def left_out(given: Sequence[str], used: Collection[str], words: Messages) -> dict[str, str]:
    """By the letter of the work behind the first that is left out, why: "No T to AH? ..."; empty where each is used.

    given: the letters in their order.
    """
    skip = skips(given, used)
    if skip is None:
        return {}
    missing, after = skip
    together = runs(at for at, letter in enumerate(given) if letter in missing)
    said = tuple(Own(_said([given[at] for at in run], words)) for run in together)
    return {after: words.text("letters-skip", {"letters": Things(said), "many": len(missing)})}


def letters_before(last: str) -> list[str]:
    """All letters up to one of them."""
    return [*takewhile(last.__ne__, letters()), last]


def _said(run: Sequence[str], words: Messages) -> str:
    """Two that follow each other are told as two."""
    if len(run) < 3:
        return words.listed(run)
    return words.text("letters-skip-run", {"first": run[0], "last": run[-1]})
