"""The sheets for whoever leads a class: lessons, progress, marks, labels, the measuring form, practice pieces.

They hold names and notes, so no page for all leads to them.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import asdict, dataclass
from fractions import Fraction
from hashlib import sha256
from itertools import pairwise
from json import dumps
from math import ceil

from furbelow.garment.message import Length, One, Part, Supply, Things, Values
from furbelow.garment.spec import SupplyKind
from furbelow.garment.technique import SetUp
from furbelow.s5_buy.class_cutting import share_of
from furbelow.s5_buy.class_order import ClassOrder
from furbelow.s6_write.guide.pile import tags
from furbelow.s6_write.guide.stops import SITTING, sittings
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.guide.worked import Worked
from furbelow.s6_write.pages.own_font import OwnFont, own_font
from furbelow.s6_write.pages.page import rendered
from furbelow.s6_write.pages.prose import set_ready
from furbelow.s6_write.words.words import Words

# A practice strip, long and deep in mm, and how many a pupil needs for each way of working; house rule, maker to confirm.
STRIP, STRIPS = (Fraction(300), Fraction(100)), 2
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


@dataclass(frozen=True)
class WorkLine:
    letter: str
    title: str
    time: str


@dataclass(frozen=True)
class Lesson:
    heading: str
    work: tuple[WorkLine, ...]
    machines: str
    stops: tuple[tuple[str, str], ...]  # whose, and after which letter
    absent: str


@dataclass(frozen=True)
class SheetRow:
    number: str
    whose: str
    notes: str
    boxes: tuple[bool, ...]  # for each letter, whether the guide has it


@dataclass(frozen=True)
class Label:
    number: str
    tags: tuple[str, ...]


@dataclass(frozen=True)
class TeacherPage:
    title: str
    whose: str
    lessons_are: str
    lessons: tuple[Lesson, ...]
    letters: tuple[str, ...]
    rows: tuple[SheetRow, ...]
    labels: tuple[Label, ...]
    measures: tuple[str, ...]
    practice: str  # empty where nothing is sewn of cloth


def teacher_files(order: ClassOrder, whose: str, pupils: Sequence[Pupil], words: Words) -> Mapping[str, bytes]:
    """The sheets by the name of their file."""
    page = teacher_page(order, whose, pupils, words)
    return {"teacher.html": teacher_html(page, words, own_font(order.room.font)).encode("utf-8")}


def teacher_page(order: ClassOrder, whose: str, pupils: Sequence[Pupil], words: Words) -> TeacherPage:
    """The sheets for the guides that were made."""
    words.read("teacher", "pile")
    sitting = order.room.sitting
    longest = SITTING if sitting is None else sitting / 60
    letters = sorted({each.letter for pupil in pupils for each in pupil.work}, key=lambda letter: (len(letter), letter))
    return TeacherPage(
        title=order.solved.spec.title,
        whose=words.text("teacher-for", {"whose": whose}),
        lessons_are=words.text("teacher-lessons-are", {"length": duration(int(longest))}),
        lessons=tuple(_lessons(pupils, longest, words)),
        letters=tuple(letters),
        rows=tuple(
            SheetRow(
                str(pupil.number),
                pupil.whose,
                pupil.notes,
                tuple(letter in {each.letter for each in pupil.work} for letter in letters),
            )
            for pupil in pupils
        ),
        labels=tuple(_label(order, pupil.number, words) for pupil in pupils),
        measures=tuple(order.solved.spec.about_of(name) or words.name(name) for name in order.solved.spec.body),
        practice=_practice(order, pupils, words),
    )


def teacher_html(page: TeacherPage, words: Words, font: OwnFont | None = None) -> str:
    told = dumps(asdict(page), sort_keys=True, ensure_ascii=False)
    key = sha256(told.encode("utf-8", "surrogatepass")).hexdigest()[:16]
    page = set_ready(page)
    return rendered(
        "teacher.html.j2",
        words,
        font,
        title=page.title,
        whose=page.whose,
        about="",
        key=key,
        page=page,
        of_person=True,
    )


def _lessons(pupils: Sequence[Pupil], longest: Fraction, words: Words) -> Iterator[Lesson]:
    """What is done in each lesson, by whom it is done at all, and where each stops."""
    apart = {pupil.number: _apart(pupil.work, longest) for pupil in pupils}
    for at in range(max(map(len, apart.values()))):
        now = {pupil: apart[pupil.number][at] for pupil in pupils if at < len(apart[pupil.number])}
        work: dict[str, list[Worked]] = {}
        for each in sorted(
            (each for done in now.values() for each in done), key=lambda each: (len(each.letter), each.letter)
        ):
            work.setdefault(each.letter, []).append(each)
        most = [max(each, key=lambda one: one.minutes) for each in work.values()]
        yield Lesson(
            words.text("teacher-lesson", {"number": at + 1}),
            tuple(WorkLine(each.letter, _title(each, words), words.said(duration(each.minutes))) for each in most),
            _machines(list(now.values()), longest, words),
            tuple((pupil.whose, done[-1].letter) for pupil, done in now.items()),
            words.text(
                "teacher-absent",
                {
                    "first": most[0].letter,
                    "last": most[-1].letter,
                    "time": duration(sum(each.minutes for each in most)),
                },
            ),
        )


def _title(work: Worked, words: Words) -> str:
    """The pile of each has its number in the title of its guide."""
    is_pile = work.set_up is SetUp.TABLE and not work.technique
    return words.text("teacher-pile") if is_pile else work.title


def _apart(work: Sequence[Worked], longest: Fraction) -> list[tuple[Worked, ...]]:
    ends = sittings([Fraction(each.minutes) for each in work], [each.safe for each in work], longest)
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


def _label(order: ClassOrder, number: int, words: Words) -> Label:
    share = share_of(order.cutting, number, order.garments[number].pieces)
    return Label(str(number), tuple(words.said(tag) for each in tags(share).values() for tag in each))


def _practice(order: ClassOrder, pupils: Sequence[Pupil], words: Words) -> str:
    """Strips to try each way of working on, and how much more cloth they take, laid over its width row by row."""
    ways = {
        each.technique for pupil in pupils for each in pupil.work if each.technique and each.set_up is not SetUp.IRON
    }
    cloths = [line for line in order.shopping.lines if line.material.material.kind is SupplyKind.CLOTH]
    if not ways or not cloths:
        return ""
    cloth = cloths[0].name
    a_row = max(1, order.cutting.sheet(cloth).plan.usable_width // STRIP[0])
    rows = ceil(Fraction(len(ways) * STRIPS * len(pupils)) / a_row)
    return words.text(
        "teacher-practice-are",
        {
            "ways": len(ways),
            "strips": STRIPS,
            "length": Length(STRIP[0]),
            "depth": Length(STRIP[1]),
            "bought": Length(rows * STRIP[1], "buy"),
            "cloth": Supply(cloth),
        },
    )
