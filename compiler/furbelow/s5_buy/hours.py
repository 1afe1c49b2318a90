"""Hours of work from what the rehearsal counted: seams, set-ups, pins, gathers, cutting, pressing."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction
from math import ceil

from furbelow.garment.stitch import StitchType
from furbelow.named import NamedTuple


class Pace(NamedTuple):
    """How fast a practised hand works; `times` as long takes who is new to it.

    Every default is a house rule, maker to confirm. Speeds and spacing are above 0, as the workroom is read.

    sewing: mm of seam a minute at the pace the machine is really run, by stitch type; class 200 is sewn by hand.
    sewing_other: the same for every other stitch type.
    single_stitch: minutes for one hand stitch that is set by itself, as each of two that hold a pleat.
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

    sewing: Mapping[StitchType, Fraction] = {
        StitchType.OVERLOCK: Fraction(2000),
        StitchType.FOUR_THREAD_OVERLOCK: Fraction(2000),
        StitchType.HAND: Fraction(250),
        StitchType.RUNNING: Fraction(250),
    }
    sewing_other: Fraction = Fraction(1000)
    single_stitch: Fraction = Fraction(1, 8)
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
    times: Fraction = Fraction(1)

    def speed(self, stitch: StitchType) -> Fraction:
        """Mm of seam a minute with that stitch type."""
        return self.sewing.get(stitch, self.sewing_other)


class Work(NamedTuple):
    """What one step, or the whole garment, takes. Lengths in mm.

    seams: stitch type and length of each seam, a row sewn twice is listed twice.
    single_stitches: hand stitches that are set one by one.
    pinned, gathered, cut, pressed: lengths.
    thread_ends: bundles of loose ends that are wound round a pin or knotted and cut.
    tended: minutes that belong to no length.
    sections, tags: of the cutting: how often cloth is laid, how many pieces are tagged.
    """

    seams: tuple[tuple[StitchType, Fraction], ...] = ()
    set_ups: int = 0
    single_stitches: int = 0
    pinned: Fraction = Fraction(0)
    gathered: Fraction = Fraction(0)
    cut: Fraction = Fraction(0)
    pressed: Fraction = Fraction(0)
    thread_ends: int = 0
    tended: Fraction = Fraction(0)
    sections: int = 0
    tags: int = 0


class TimeTable(NamedTuple):
    """Minutes by kind of work."""

    sewing: Fraction
    handling: Fraction
    set_ups: Fraction
    pinning: Fraction
    gathering: Fraction
    cutting: Fraction
    pressing: Fraction
    tended: Fraction = Fraction(0)

    @property
    def minutes(self) -> Fraction:
        """All kinds together."""
        return _total(self)


def pins_for(length: Fraction, spacing: Fraction) -> int:
    """Pins or clips along an edge, one at each end: every gap is at most `spacing` mm, which is above 0."""
    return ceil(length / spacing) + 1 if length else 0


def time_for(work: Iterable[Work], pace: Pace) -> TimeTable:
    """Minutes by kind of work for all `work` together."""
    rows = tuple(work)
    seams = [seam for row in rows for seam in row.seams]
    metre = Fraction(1, 1000)

    def counted(each: Fraction, numbers: Iterable[int]) -> Fraction:
        return _times(sum(numbers), each)

    def along(each: Fraction, lengths: Iterable[Fraction]) -> Fraction:
        return _times(_times(_total(lengths), metre), each)

    practised = TimeTable(
        sewing=_total(
            [
                *(length / pace.speed(stitch) for stitch, length in seams),
                counted(pace.single_stitch, [row.single_stitches for row in rows]),
            ]
        ),
        handling=_total(
            [_times(len(seams), pace.seam_start), counted(pace.thread_end, [row.thread_ends for row in rows])]
        ),
        set_ups=counted(pace.set_up, [row.set_ups for row in rows]),
        pinning=counted(pace.pin, [pins_for(row.pinned, pace.pin_spacing) for row in rows]),
        gathering=along(pace.gathering, [row.gathered for row in rows]),
        cutting=_total(
            [
                along(pace.cutting, [row.cut for row in rows]),
                counted(pace.laying, [row.sections for row in rows]),
                counted(pace.tag, [row.tags for row in rows]),
            ]
        ),
        pressing=along(pace.pressing, [row.pressed for row in rows]),
        tended=_total([row.tended for row in rows]),
    )
    return TimeTable(*[_times(minutes, pace.times) for minutes in practised])


_NONE = Fraction(0)


def _total(amounts: Iterable[Fraction]) -> Fraction:
    # A step is few kinds of work, and a fraction takes a microsecond to add, be it nothing.
    return sum(filter(None, amounts), _NONE)


def _times(amount: Fraction | int, each: Fraction) -> Fraction:
    return amount * each if amount else _NONE


LAST_LOOK = 10  # minutes for the check of the finished garment; house rule, maker to confirm


def in_fives(minutes: Fraction) -> int:
    """Time as a person plans it: to 5 minutes, and 5 for what takes less; nothing for what is not done at all."""
    return max(1, round(minutes / 5)) * 5 if minutes else 0
