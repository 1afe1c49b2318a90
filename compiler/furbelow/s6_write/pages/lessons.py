"""A course of lessons for a class: what each pupil does in each, where she stops, and what is needed at once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise
from math import ceil

from furbelow.garment.message import One, Own, Part, Things, Values, flag
from furbelow.garment.technique import SetUp
from furbelow.garment.workroom import Workroom
from furbelow.s5_buy.sittings import WET
from furbelow.s6_write.guide.stops import sittings
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.guide.worked import Worked
from furbelow.s6_write.words.ranges import ranges
from furbelow.s6_write.words.words import Words

# What each set-up is done at, and which field of a workroom says how many there are.
_AT = {
    SetUp.STRAIGHT: "machines",
    SetUp.ZIGZAG: "machines",
    SetUp.OVERLOCKER: "overlockers",
    SetUp.ATTACHMENT: "machines",
    SetUp.IRON: "irons",
}
SHARED = tuple(dict.fromkeys(_AT.values()))
_MACHINES = {
    SetUp.STRAIGHT: "straight",
    SetUp.ZIGZAG: "zigzag",
    SetUp.OVERLOCKER: "overlocker",
    SetUp.ATTACHMENT: "attachment",
    SetUp.IRON: "iron",
}


@dataclass(frozen=True)
class Pupil:
    """Somebody in the class: the work in its order, as her guide tells it in its language."""

    number: int
    whose: str
    notes: str
    work: tuple[Worked, ...]
    language: str

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
    """What one pupil does in a lesson, in the language of her guide."""

    number: str
    whose: str
    heading: str
    work: tuple[WorkLine, ...]
    stop: str  # after which letter, and what is true then


@dataclass(frozen=True)
class Alike:
    """Those who do the same in a lesson and stand at one place at its end. letters: from the first to the last; time: of the
    quickest and the slowest of them; stands: what is true at its end."""

    numbers: str
    whose: str
    letters: str
    time: str
    stands: str


@dataclass(frozen=True)
class Lesson:
    """new: the ways of working that nobody has done before it, empty where there are none.

    turns: at what has fewer places than there are people, a sentence each. takes: so many lessons with these turns.
    """

    heading: str
    work: tuple[WorkLine, ...]
    machines: str
    turns: tuple[str, ...]
    takes: int
    new: str
    alike: tuple[Alike, ...]
    slips: tuple[Slip, ...]


def lessons(pupils: Sequence[Pupil], longest: Fraction, room: Workroom, words: Words) -> Iterator[Lesson]:
    """One after another. longest: minutes of a lesson. The time of work that several do is that of the slowest."""
    own = {pupil.number: _apart(pupil.work, longest) for pupil in pupils}
    apart = {pupil.number: _apart(pupil.work, longest) for pupil in in_one_language(pupils, words.language)}
    known: set[str] = set()
    for at in range(max(map(len, apart.values()))):
        now = {pupil: apart[pupil.number][at] for pupil in pupils if at < len(apart[pupil.number])}
        most = slowest(each for done in now.values() for each in done)
        new = [each for each in first_of_each_way(most) if each.technique not in known]
        known |= {each.technique for each in new}
        busy = {place: _busy(place, list(now.values())) for place in SHARED}
        turns = {place: _lessons_at(busy[place], getattr(room, place), longest) for place in SHARED}
        yield Lesson(
            words.text("teacher-lesson", {"number": at + 1}),
            tuple(_line(each, words) for each in most),
            _machines(list(now.values()), longest, room, words),
            tuple(_turns(place, getattr(room, place), takes, words) for place, takes in turns.items() if takes > 1),
            max(turns.values()),
            words.text("teacher-new", {"work": Things(tuple(_named(each, words) for each in new))}) if new else "",
            tuple(_alike(now, len(pupils), words)),
            tuple(_slip(pupil, at + 1, own[pupil.number][at], _words_of(pupil, words)) for pupil in now),
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


def in_one_language(pupils: Sequence[Pupil], language: str) -> list[Pupil]:
    """Their work as it is told in one language, so far as the guide of anybody is in it: with the same numbers, else by its
    letter and title alone, for what is true afterwards has numbers."""
    alike: dict[tuple[str, int], Worked] = {}
    titles: dict[str, str] = {}
    for each in (each for pupil in pupils if pupil.language == language for each in pupil.work):
        alike.setdefault((each.letter, each.numbers), each)
        titles.setdefault(each.letter, each.title)

    def told(each: Worked) -> Worked:
        if found := alike.get((each.letter, each.numbers)):
            return each._replace(title=found.title, aim=found.aim)
        if title := titles.get(each.letter):
            return each._replace(title=title, aim=f"{each.letter} {title}")
        return each

    return [
        pupil if pupil.language == language else replace(pupil, work=tuple(map(told, pupil.work))) for pupil in pupils
    ]


def _words_of(pupil: Pupil, words: Words) -> Words:
    if pupil.language == words.language:
        return words
    own = Words(pupil.language, words.say)
    own.read("teacher", "pile")
    return own


def _slip(pupil: Pupil, lesson: int, done: Sequence[Worked], words: Words) -> Slip:
    return Slip(
        str(pupil.number),
        pupil.whose,
        words.text("teacher-lesson", {"number": lesson}),
        tuple(_line(each, words) for each in done),
        words.text("handout-stop", {"letter": done[-1].letter, "stands": done[-1].aim}),
    )


def _alike(now: Mapping[Pupil, Sequence[Worked]], pupils: int, words: Words) -> Iterator[Alike]:
    """pupils: in the whole class, which is told as such where all do the same."""
    groups: dict[tuple[str, str, str], list[Pupil]] = {}
    for pupil, done in now.items():
        groups.setdefault((done[0].letter, done[-1].letter, done[-1].aim), []).append(pupil)
    for (first, last, stands), group in groups.items():
        names = Things(tuple(Own(pupil.whose) for pupil in group), "row")
        minutes = [sum(each.minutes for each in now[pupil]) for pupil in group]
        times = sorted({min(minutes), max(minutes)})
        yield Alike(
            words.said(ranges(pupil.number for pupil in group)),
            words.text("teacher-everybody") if len(group) == pupils > 1 else words.said(names),
            words.text("teacher-range", {"first": first, "last": last, "one": flag(first == last)}),
            " – ".join(words.said(duration(each)) for each in times),
            stands,
        )


def _apart(work: Sequence[Worked], longest: Fraction) -> list[tuple[Worked, ...]]:
    nights = [at for at, each in enumerate(work) if each.technique in WET]
    # Who has looked through a pile goes on at once, as the guide plans it.
    safe = [each.safe and bool(each.title) for each in work]
    ends = sittings([each.minutes for each in work], safe, longest, nights)
    bounds = [0, *(end + 1 for end in ends), len(work)]
    return [tuple(work[start:end]) for start, end in pairwise(bounds)]


def _busy(place: str, work: Sequence[Sequence[Worked]]) -> int:
    """Minutes of all together at the machines or irons of one kind. work: of each who is there."""
    return sum(each.minutes for own in work for each in own if _AT.get(each.set_up) == place)


def _lessons_at(busy: int, has: int | None, longest: Fraction) -> int:
    """So many lessons are full where all take turns at what the room has; 1 where nothing is said of it."""
    return 1 if has is None else max(1, ceil(busy / (has * longest)))


def _turns(place: str, has: int, takes: int, words: Words) -> str:
    return words.text("teacher-turns", {"place": One(place, SHARED), "has": has, "lessons": takes})


def _machines(work: Sequence[Sequence[Worked]], longest: Fraction, room: Workroom, words: Words) -> str:
    """How many of each machine, and irons, a lesson keeps busy: never more than there are people to sit at them, nor than
    the room has.

    work: of each who is there.
    """
    needed = []
    for set_up, named in _MACHINES.items():
        minutes = [sum(each.minutes for each in own if each.set_up is set_up) for own in work]
        # Beside other work one iron does: it is taken in hand now and then.
        beside = set_up is SetUp.IRON and any(each.presses for own in work for each in own)
        if any(minutes) or beside:
            count = max(min(ceil(sum(minutes) / longest), sum(map(bool, minutes))), 1)
            count = min(count, getattr(room, _AT[set_up]) or count)
            told: Values = {"set-up": One(named, tuple(_MACHINES.values())), "count": count}
            needed.append(Part("teacher-machine", told))
    return words.text("teacher-machines", {"machines": Things(tuple(needed))}) if needed else ""
