"""The sheets for whoever leads a class: lessons, progress, marks, labels, the measuring form, practice pieces, what is cut
later. And the slips of the lessons, which are handed out.

The sheets hold names and notes, so no page for all leads to them.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from furbelow.garment.message import Length, Supply
from furbelow.garment.spec import SupplyKind
from furbelow.garment.workroom import Workroom
from furbelow.s5_buy.class_order import ClassOrder
from furbelow.s5_buy.class_shares import Shares
from furbelow.s6_write.guide.content_key import content_key
from furbelow.s6_write.guide.measures import measured
from furbelow.s6_write.guide.pile import tags
from furbelow.s6_write.guide.stops import SITTING
from furbelow.s6_write.guide.times import duration
from furbelow.s6_write.guide.worked import Worked
from furbelow.s6_write.pages.cut_later import CutLater, cloth_for_later, cut_later
from furbelow.s6_write.pages.lessons import (
    SHARED,
    Lesson,
    Pupil,
    first_of_each_way,
    in_one_language,
    in_order,
    lessons,
    slowest,
    title,
)
from furbelow.s6_write.pages.look import Look, look_of
from furbelow.s6_write.pages.page import rendered
from furbelow.s6_write.pages.prose import set_ready
from furbelow.s6_write.words.words import Words

# A practice strip, long and deep in mm, and how many a pupil needs for each way of working; house rule, maker to confirm.
STRIP, STRIPS = (Fraction(300), Fraction(100)), 2
MORE_ROWS = 3  # of the measuring form, for who comes later


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
class Skill:
    """A way of working: where it comes first, and all letters and lessons that it is practised in."""

    first: str
    letters: str
    lessons: str


@dataclass(frozen=True)
class TeacherPage:
    title: str
    whose: str
    lessons_are: str
    lessons: tuple[Lesson, ...]
    letters: tuple[str, ...]
    rows: tuple[SheetRow, ...]
    labels: tuple[Label, ...]
    measures: tuple[tuple[str, str], ...]  # what is measured, and where the tape lies
    more_rows: int
    skills: tuple[Skill, ...]
    practice: str  # empty where nothing is sewn of cloth
    later: tuple[CutLater, ...]
    later_cloth: str


def teacher_files(
    order: ClassOrder, whose: str, pupils: Sequence[Pupil], gone: Mapping[int, str], words: Words
) -> Mapping[str, bytes]:
    """The sheets by the names of their files. gone: who has left, by their numbers."""
    page, look = teacher_page(order, whose, pupils, gone, words), look_of(order.room)
    return {
        "teacher.html": _html("teacher.html.j2", page, page.whose, words, look),
        "handouts.html": _html("handouts.html.j2", page, words.text("handout-for", {"whose": whose}), words, look),
    }


def teacher_page(
    order: ClassOrder, whose: str, pupils: Sequence[Pupil], gone: Mapping[int, str], words: Words
) -> TeacherPage:
    """The sheets for the guides that were made."""
    words.read("teacher", "pile")
    sitting = order.room.sitting
    longest = SITTING if sitting is None else sitting / 60
    letters = in_order({each.letter for pupil in pupils for each in pupil.work})
    planned = tuple(lessons(pupils, longest, order.room, words))
    work = slowest(each for pupil in in_one_language(pupils, words.language) for each in pupil.work)
    shares = Shares(order.cutting)
    return TeacherPage(
        title=order.solved.spec.title,
        whose=words.text("teacher-for", {"whose": whose}),
        lessons_are=" ".join(_lessons_are(planned, longest, order.room, words)),
        lessons=planned,
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
        labels=tuple(_label(order, shares, pupil.number, words) for pupil in pupils if pupil.has_pile),
        measures=tuple((each.label, each.how) for each in measured(order.solved, words)),
        more_rows=MORE_ROWS,
        skills=tuple(_skills(work, planned, words)),
        practice=_practice(order, len(first_of_each_way(work)), len(pupils), words),
        later=tuple(cut_later(order, pupils, gone, words)) if any(pupil.has_pile for pupil in pupils) else (),
        later_cloth=cloth_for_later(order, words),
    )


def _lessons_are(planned: Sequence[Lesson], longest: Fraction, room: Workroom, words: Words) -> Iterator[str]:
    yield words.text("teacher-lessons-are", {"length": duration(int(longest))})
    takes = sum(lesson.takes for lesson in planned)
    if takes > len(planned):
        yield words.text("teacher-lessons-in-turns", {"lessons": takes})
    if any(getattr(room, place) is None for place in SHARED):
        yield words.text("teacher-lessons-fewer")


def _html(template: str, page: TeacherPage, whose: str, words: Words, look: Look | None) -> bytes:
    key, page = content_key(page), set_ready(page)
    made = rendered(template, words, look, title=page.title, whose=whose, about="", key=key, page=page, of_person=True)
    return made.encode("utf-8")


def _skills(work: Sequence[Worked], planned: Sequence[Lesson], words: Words) -> Iterator[Skill]:
    for first in first_of_each_way(work):
        letters = [each.letter for each in work if each.technique == first.technique]
        held = [
            str(number)
            for number, lesson in enumerate(planned, 1)
            if any(line.letter in letters for line in lesson.work)
        ]
        yield Skill(f"{first.letter} {title(first, words)}", ", ".join(letters), ", ".join(held))


def _label(order: ClassOrder, shares: Shares, number: int, words: Words) -> Label:
    share = shares.of(number, order.garments[number].pieces)
    return Label(str(number), tuple(words.said(tag) for each in tags(share).values() for tag in each))


def _practice(order: ClassOrder, ways: int, pupils: int, words: Words) -> str:
    """Strips to try each way of working on, and how much more cloth they take, laid over its width row by row."""
    cloths = [line for line in order.shopping.lines if line.material.material.kind is SupplyKind.CLOTH]
    if not ways or not cloths:
        return ""
    cloth = cloths[0].name
    own = (garment.cutting for garment in order.garments.values())  # where everybody cuts alone
    cut = next(cutting for cutting in (order.cutting, *own) if cloth in cutting.sheets)
    a_row = max(1, cut.sheet(cloth).plan.usable_width // STRIP[0])
    rows = ceil(Fraction(ways * STRIPS * pupils) / a_row)
    return words.text(
        "teacher-practice-are",
        {
            "ways": ways,
            "strips": STRIPS,
            "length": Length(STRIP[0]),
            "depth": Length(STRIP[1]),
            "bought": Length(rows * STRIP[1], "buy"),
            "cloth": Supply(cloth),
        },
    )
