"""The time of who takes a pile of pieces that are cut already: each is looked at, and none cut."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.workroom import Workroom
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.hours import in_fives
from furbelow.s5_buy.shopping import ShoppingList

LOOK = Fraction(1)  # minutes to find one piece by its tag and measure it; house rule, maker to confirm


def with_pile_time(shopping: ShoppingList, room: Workroom, share: Cutting) -> ShoppingList:
    """The list with that time in the place of the time for cutting."""
    pieces = sum(len(copy) for copies in share.lengths.values() for copy in copies)
    minutes = pieces * LOOK * room.beginner
    planned = shopping.planned_minutes - in_fives(shopping.cutting_minutes) + in_fives(minutes)
    return shopping._replace(cutting_minutes=minutes, planned_minutes=planned)
