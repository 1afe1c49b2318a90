"""Times as the guide says them."""

from __future__ import annotations

from furbelow.garment.message import Part


def duration(minutes: int) -> Part:
    """So many hours and minutes."""
    hours, rest = divmod(minutes, 60)
    return Part("duration", {"hours": hours, "minutes": rest})
