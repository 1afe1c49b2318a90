"""Hours of work from what the rehearsal counted: seams, set-ups, pins, gathers, cutting, pressing."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from math import ceil
from typing import NamedTuple

from furbelow.s5_buy.out_of_range import OutOfRange, outside


class Pace(NamedTuple):
    """How fast one maker works.

    Every default is a house rule, maker to confirm: time a swatch and put in your own.

    sewing: mm of seam a minute at the pace the machine is really run, by stitch type; 101 is sewn by hand.
    sewing_other: the same for every other stitch type.
    set_up: minutes for one change of machine, foot, stitch or thread.
    seam_start: minutes to take up, line up and fasten off one seam.
    pin_spacing: mm between pins; pin: minutes to place one and take it out again.
    thread_end: minutes to wind the ends of a gathering row round a pin, or to knot and cut them.
    gathering: minutes to draw up and spread one metre of gathered (finished) edge.
    cutting: minutes to mark and cut one metre.
    laying: minutes to square the cloth and lay one section of it, its lines marked on the table or the cloth.
    tag: minutes to tag one cut piece.
    pressing: minutes to press one metre.
    """

    sewing: tuple[tuple[str, Fraction], ...] = (
        ("504", Fraction(2000)),
        ("514", Fraction(2000)),
        ("101", Fraction(250)),
    )
    sewing_other: Fraction = Fraction(1000)
    set_up: Fraction = Fraction(5)
    seam_start: Fraction = Fraction(1)
    pin_spacing: Fraction = Fraction(25)
    pin: Fraction = Fraction(1, 8)
    thread_end: Fraction = Fraction(1, 3)
    gathering: Fraction = Fraction(5)
    cutting: Fraction = Fraction(1)
    laying: Fraction = Fraction(10)
    tag: Fraction = Fraction(1, 2)
    pressing: Fraction = Fraction(1)

    def speed(self, stitch: str) -> Fraction:
        """Mm of seam a minute with that stitch type."""
        return dict(self.sewing).get(stitch, self.sewing_other)


class Work(NamedTuple):
    """What one step, or the whole garment, takes. Lengths in mm.

    seams: stitch type and length of each seam, a row sewn twice is listed twice.
    pinned, gathered, cut, pressed: lengths.
    thread_ends: bundles of loose ends that are wound round a pin or knotted and cut.
    sections, tags: of the cutting: how often cloth is laid, how many pieces are tagged.
    extra: minutes that belong to no length (threading elastic, drying).
    """

    seams: tuple[tuple[str, Fraction], ...] = ()
    set_ups: int = 0
    pinned: Fraction = Fraction(0)
    gathered: Fraction = Fraction(0)
    cut: Fraction = Fraction(0)
    pressed: Fraction = Fraction(0)
    thread_ends: int = 0
    sections: int = 0
    tags: int = 0
    extra: Fraction = Fraction(0)


class TimeTable(NamedTuple):
    """Minutes by kind of work."""

    sewing: Fraction
    handling: Fraction
    set_ups: Fraction
    pinning: Fraction
    gathering: Fraction
    cutting: Fraction
    pressing: Fraction
    extra: Fraction

    @property
    def minutes(self) -> Fraction:
        """All kinds together."""
        return (
            self.sewing
            + self.handling
            + self.set_ups
            + self.pinning
            + self.gathering
            + self.cutting
            + self.pressing
            + self.extra
        )

    @property
    def hours(self) -> Fraction:
        """All kinds together, in hours."""
        return self.minutes / 60


def pins_for(length: Fraction, spacing: Fraction) -> int | OutOfRange:
    """Pins or clips along an edge, one at each end: every gap is at most `spacing` mm.

    Fails: a spacing of 0 or less.
    """
    wrong = outside("pin spacing", spacing, "mm", above=0)
    if wrong:
        return wrong
    return ceil(length / spacing) + 1 if length > 0 else 0


def sewing_speed(stitches_per_minute: Fraction, stitch_length: Fraction) -> Fraction:
    """Mm of seam a minute from the stitches a minute at the pace really run, and mm a stitch. Definition."""
    return stitches_per_minute * stitch_length


def time_for(work: Iterable[Work], pace: Pace) -> TimeTable | OutOfRange:
    """Minutes by kind of work for all `work` together.

    Fails: a sewing speed or pin spacing of 0 or less; a time in `pace` below 0.
    """
    if wrong := _unusable(pace):
        return wrong
    rows = tuple(work)
    seams = [seam for row in rows for seam in row.seams]
    pins = 0
    for row in rows:
        count = pins_for(row.pinned, pace.pin_spacing)
        if isinstance(count, OutOfRange):
            return count
        pins += count

    def metres(lengths: Iterable[Fraction]) -> Fraction:
        return sum(lengths, Fraction(0)) / 1000

    return TimeTable(
        sewing=sum((length / pace.speed(stitch) for stitch, length in seams), Fraction(0)),
        handling=len(seams) * pace.seam_start + sum(row.thread_ends for row in rows) * pace.thread_end,
        set_ups=sum(row.set_ups for row in rows) * pace.set_up,
        pinning=pins * pace.pin,
        gathering=metres(row.gathered for row in rows) * pace.gathering,
        cutting=metres(row.cut for row in rows) * pace.cutting
        + sum(row.sections * pace.laying + row.tags * pace.tag for row in rows),
        pressing=metres(row.pressed for row in rows) * pace.pressing,
        extra=sum((row.extra for row in rows), Fraction(0)),
    )


def _unusable(pace: Pace) -> OutOfRange | None:
    for stitch, speed in (*pace.sewing, ("other stitches", pace.sewing_other)):
        if wrong := outside(f"sewing speed of {stitch}", speed, "mm/min", above=0):
            return wrong
    times = {
        "set-up": pace.set_up,
        "seam start": pace.seam_start,
        "pin": pace.pin,
        "thread end": pace.thread_end,
        "gathering": pace.gathering,
        "cutting": pace.cutting,
        "laying": pace.laying,
        "tag": pace.tag,
        "pressing": pace.pressing,
    }
    for name, minutes in times.items():
        if wrong := outside(f"time for {name}", minutes, "min", at_least=0):
            return wrong
    return None
