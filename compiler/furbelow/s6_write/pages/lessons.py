"""A course of lessons for a class: what each pupil does in each, where she stops, and what is needed at once."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import ceil

from furbelow.garment.message import One, Own, Part, Things, Values, flag
from furbelow.garment.technique import SetUp
from furbelow.s5_buy.sittings import WET
from furbelow.s6_write.guide.stops import sittings
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.guide.worked import Worked
from furbelow.s6_write.words.words import Words

_MACHINES = {
    SetUp.STRAIGHT: "straight",
    SetUp.ZIGZAG: "zigzag",
    SetUp.OVERLOCKER: "overlocker",
    SetUp.ATTACHMENT: "attachment",
    SetUp.IRON: "iron",
}


@dataclass(frozen=True)
class Pupil:
    """Somebody in the class: the work in its order."""

    number: int
    whose: str
    notes: str
    work: tuple[Worked, ...]

    @property
    def has_pile(self) -> bool:
        """Whether somebody cuts for all; else everybody cuts alone."""
        return any(not each.title for each in self.work)


@dataclass(frozen=True)
class WorkLine:
    letter: str
    title: str
    time: str


@dataclass(frozen=True)
class Slip:
    """What one pupil does in a lesson. letters: from the first to the last; stands: what is true at its end."""

    number: str
    whose: str
    work: tuple[WorkLine, ...]
    letters: str
    time: str
    stands: str
    stop: str  # the same with the letter, said to her


@dataclass(frozen=True)
class Lesson:
    """new: the ways of working that nobody has done before it, empty where there are none."""

    heading: str
    work: tuple[WorkLine, ...]
    machines: str
    new: str
    slips: tuple[Slip, ...]


def lessons(pupils: Sequence[Pupil], longest: Fraction, words: Words) -> Iterator[Lesson]:
    """One after another. longest: minutes of a lesson. The time of work that several do is that of the slowest."""
    apart = {pupil.number: _apart(pupil.work, longest) for pupil in pupils}
    known: set[str] = set()
    for at in range(max(map(len, apart.values()))):
        now = {pupil: apart[pupil.number][at] for pupil in pupils if at < len(apart[pupil.number])}
        most = slowest(each for done in now.values() for each in done)
        new = [each for each in first_of_each_way(most) if each.technique not in known]
        known |= {each.technique for each in new}
        yield Lesson(
            words.text("teacher-lesson", {"number": at + 1}),
            tuple(_line(each, words) for each in most),
            _machines(list(now.values()), longest, words),
            words.text("teacher-new", {"work": Things(tuple(_named(each, words) for each in new))}) if new else "",
            tuple(_slip(pupil, done, words) for pupil, done in now.items()),
        )


def slowest(work: Iterator[Worked]) -> list[Worked]:
    """Each letter once, as whoever takes longest does it, in the order of the letters."""
    by_letter: dict[str, Worked] = {}
    for each in work:
        if each.letter not in by_letter or each.minutes > by_letter[each.letter].minutes:
            by_letter[each.letter] = each
    return [by_letter[letter] for letter in in_order(by_letter)]


def in_order(letters: Iterator[str] | dict[str, Worked] | set[str]) -> list[str]:
    """A to Z, then AA."""
    return sorted(letters, key=lambda letter: (len(letter), letter))


def first_of_each_way(work: Sequence[Worked]) -> list[Worked]:
    """The first operation of each way of working that is sewn."""
    ways = (each for each in work if each.technique and each.set_up is not SetUp.IRON)
    first: dict[str, Worked] = {}
    for each in ways:
        first.setdefault(each.technique, each)
    return list(first.values())


def title(work: Worked, words: Words) -> str:
    """The pile of each has its number in the title of its guide."""
    return work.title or words.text("teacher-pile")


def _line(work: Worked, words: Words) -> WorkLine:
    return WorkLine(work.letter, title(work, words), words.said(duration(work.minutes)))


def _named(work: Worked, words: Words) -> Own:
    return Own(f"{work.letter} {title(work, words)}")


def _slip(pupil: Pupil, done: Sequence[Worked], words: Words) -> Slip:
    first, last = done[0].letter, done[-1].letter
    return Slip(
        str(pupil.number),
        pupil.whose,
        tuple(_line(each, words) for each in done),
        words.text("teacher-range", {"first": first, "last": last, "one": flag(first == last)}),
        words.said(duration(sum(each.minutes for each in done))),
        done[-1].aim,
        words.text("handout-stop", {"letter": last, "stands": done[-1].aim}),
    )


def _apart(work: Sequence[Worked], longest: Fraction) -> list[tuple[Worked, ...]]:
    nights = [at for at, each in enumerate(work) if each.technique in WET]
    ends = sittings([Fraction(each.minutes) for each in work], [each.safe for each in work], longest, nights)
    bounds = [0, *(end + 1 for end in ends), len(work)]
    return [tuple(work[start:end]) for start, end in pairwise(bounds)]


def _machines(work: Sequence[Sequence[Worked]], longest: Fraction, words: Words) -> str:
    """How many of each machine, and irons, a lesson keeps busy: never more than there are people to sit at them.

    work: of each who is there.
    """
    needed = []
    for set_up, named in _MACHINES.items():
        minutes = [sum(each.minutes for each in own if each.set_up is set_up) for own in work]
        if any(minutes):
            count = min(ceil(sum(minutes) / longest), sum(map(bool, minutes)))
            told: Values = {"set-up": One(named, tuple(_MACHINES.values())), "count": count}
            needed.append(Part("teacher-machine", told))
    return words.text("teacher-machines", {"machines": Things(tuple(needed))}) if needed else ""
