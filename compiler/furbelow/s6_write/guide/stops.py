"""Where the work may be put away, or a sitting ends."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.words.words import Words

# Without sittings a stop is worth naming only after so much work, in minutes.
STRETCH = Fraction(30)


def stops(rehearsal: Rehearsal, shopping: ShoppingList, words: Words) -> list[str]:
    """What is said after each step: where a sitting ends, or where the work may be put away after a good stretch.

    A sitting ends at the last safe place within its time; a step longer than a sitting has one of its own.
    """
    performed, room = rehearsal.run.performed, rehearsal.run.room
    told = [""] * len(performed)
    safe = [_safe_to_stop(done.after) for done in performed[:-1]] + [False]
    longest = STRETCH if room.sitting is None else room.sitting / 60
    spent, since, last_safe, sitting = Fraction(0), Fraction(0), -1, 0
    for at, minutes in enumerate(shopping.minutes):
        if room.sitting is None:
            spent += minutes
            if safe[at] and spent >= longest:
                told[at], spent = words.text("stop"), Fraction(0)
            continue
        if spent + minutes > longest and last_safe >= 0:
            sitting += 1
            told[last_safe] = words.text("stop-sitting", {"sitting": sitting})
            spent, last_safe = since, -1
        spent, since = spent + minutes, since + minutes
        if safe[at]:
            last_safe, since = at, Fraction(0)
    return told


def _safe_to_stop(bench: Bench) -> bool:
    """Nothing hangs on pins or loose threads: no gathers unsewn, no elastic in an open casing."""
    loose = any(edge.gathered and not edge.held and name not in bench.layered for name, edge in bench.edges.items())
    return not loose and not any(casing.open and casing.elastic for casing in bench.casings.values())
