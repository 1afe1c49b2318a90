"""Times as a person plans them: to 5 minutes."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.message import Part

LAST_LOOK = 10  # minutes


def fives(minutes: Fraction) -> int:
    return max(1, round(minutes / 5)) * 5


def duration(minutes: int) -> Part:
    """So many hours and minutes."""
    hours, rest = divmod(minutes, 60)
    return Part("duration", {"hours": hours, "minutes": rest})
