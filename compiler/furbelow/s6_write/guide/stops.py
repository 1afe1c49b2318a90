"""Where the work may be put away, or a sitting ends."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from fractions import Fraction

from furbelow.garment.message import Own
from furbelow.garment.technique import SetUp
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s5_buy.hours import LAST_LOOK, in_fives
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s5_buy.sittings import left_to_dry, safe_stops
from furbelow.s6_write.words.words import Words

STRETCH = Fraction(30)  # minutes: a stop is worth naming only after so much work
SITTING = Fraction(120)  # minutes, where the workroom names no time; house rule, maker to confirm


def stops(rehearsal: Rehearsal, shopping: ShoppingList, ends: Sequence[int], words: Words) -> list[str]:
    """What is said after each step: where a sitting ends, or where the work may be put away after a good stretch.

    ends: see `sitting_ends`.
    """
    told = [""] * len(shopping.minutes)
    if rehearsal.run.room.sitting is None:
        spent, safe = Fraction(0), safe_stops(rehearsal.run)
        # What is only pressed next is pressed first, while the iron is hot.
        pressed = [done.setup is SetUp.IRON for done in rehearsal.run.performed]
        for at, minutes in enumerate(shopping.minutes):
            spent += minutes
            if safe[at] and spent >= STRETCH and not (pressed[at + 1 : at + 2] == [True] and safe[at + 1]):
                told[at], spent = words.text("stop"), Fraction(0)
    for number, at in enumerate(ends, 1):
        told[at] = words.text("stop-sitting", {"sitting": Own(str(number))})
    return told


def sitting_ends(rehearsal: Rehearsal, shopping: ShoppingList, *, pile: bool) -> list[int]:
    """The steps after which a sitting ends, but for the last. The last look belongs to the last sitting.

    pile: what is to be sewn is looked through first, and not cut in a sitting of its own.
    """
    sitting = rehearsal.run.room.sitting
    longest = SITTING if sitting is None else sitting / 60
    run, minutes = rehearsal.run, [in_fives(each) for each in shopping.minutes]
    if pile:
        minutes[0] += in_fives(shopping.cutting_minutes)
    minutes[-1] += LAST_LOOK
    return sittings(minutes, safe_stops(run), longest, left_to_dry(run))


def sittings(
    minutes: Sequence[Fraction | int], safe: Sequence[bool], longest: Fraction, nights: Collection[int] = ()
) -> list[int]:
    """After which pieces of work, by their place, a sitting of so many minutes ends, but for the last.

    It is the last safe place within its time; what takes longer than a sitting has one of its own.
    nights: the pieces of work after which a sitting ends in any case.
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
        if at in nights and at < len(minutes) - 1:
            ends.append(at)
            spent, since, last_safe = Fraction(0), Fraction(0), -1
    return ends
