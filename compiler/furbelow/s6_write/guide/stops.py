"""Where the work may be put away, or a sitting ends."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.garment.message import Own
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.words.words import Words

STRETCH = Fraction(30)  # minutes: a stop is worth naming only after so much work
SITTING = Fraction(120)  # minutes, where the workroom names no time; house rule, maker to confirm


def stops(rehearsal: Rehearsal, shopping: ShoppingList, words: Words) -> list[str]:
    """What is said after each step: where a sitting ends, or where the work may be put away after a good stretch."""
    told = [""] * len(shopping.minutes)
    if rehearsal.run.room.sitting is None:
        spent = Fraction(0)
        for at, (minutes, safe) in enumerate(zip(shopping.minutes, safe_stops(rehearsal), strict=True)):
            spent += minutes
            if safe and spent >= STRETCH:
                told[at], spent = words.text("stop"), Fraction(0)
    for number, at in enumerate(sitting_ends(rehearsal, shopping), 1):
        told[at] = words.text("stop-sitting", {"sitting": Own(str(number))})
    return told


def sitting_ends(rehearsal: Rehearsal, shopping: ShoppingList) -> list[int]:
    """The steps after which a sitting ends, but for the last."""
    sitting = rehearsal.run.room.sitting
    longest = SITTING if sitting is None else sitting / 60
    return sittings(shopping.minutes, safe_stops(rehearsal), longest)


def safe_stops(rehearsal: Rehearsal) -> list[bool]:
    """For each step whether the work may be put away after it; after the last there is nothing to put away."""
    return [_safe_to_stop(done.after) for done in rehearsal.run.performed[:-1]] + [False]


def sittings(minutes: Sequence[Fraction], safe: Sequence[bool], longest: Fraction) -> list[int]:
    """After which pieces of work, by their place, a sitting of so many minutes ends, but for the last.

    It is the last safe place within its time; what takes longer than a sitting has one of its own.
    """
    ends: list[int] = []
    spent, since, last_safe = Fraction(0), Fraction(0), -1
    for at, each in enumerate(minutes):
        if spent + each > longest and last_safe >= 0:
            ends.append(last_safe)
            spent, last_safe = since, -1
        spent, since = spent + each, since + each
        if safe[at]:
            last_safe, since = at, Fraction(0)
    return ends


def _safe_to_stop(bench: Bench) -> bool:
    """Nothing hangs on pins or loose threads: no gathers unsewn, no elastic in an open casing."""
    loose = any(edge.gathered and not edge.held and name not in bench.layered for name, edge in bench.edges.items())
    return not loose and not any(casing.open and casing.elastic for casing in bench.casings.values())
