"""A class shares what the room has: no lesson asks for more than that, and the turns at it are counted as lessons."""

from __future__ import annotations

import re
from fractions import Fraction

from furbelow.garment.technique import SetUp
from furbelow.garment.workroom import Workroom
from furbelow.s6_write.guide.worked import Worked
from furbelow.s6_write.pages.class_page import class_words
from furbelow.s6_write.pages.lessons import Lesson, Pupil, lessons
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.s5_buy.test_class_order import the_class

LONGEST = Fraction(120)
FEW = Workroom(machines=3, overlockers=1, irons=2)
AT = {SetUp.STRAIGHT: 3, SetUp.OVERLOCKER: 1, SetUp.IRON: 2}

_WORK = st.lists(st.tuples(st.sampled_from([*AT, SetUp.HAND]), st.integers(5, 60)), min_size=1, max_size=8)


def taught(work: list[tuple[SetUp, int]], pupils: int, room: Workroom) -> list[Lesson]:
    words = class_words(the_class())
    words.read("teacher", "pile")
    done = tuple(
        Worked(letter, f"work {letter}", minutes, set_up, safe=True, aim=f"{letter} is done")
        for letter, (set_up, minutes) in zip("ABCDEFGH", work, strict=False)
    )
    return list(lessons([Pupil(n, f"pupil {n}", "", done, "en") for n in range(1, pupils + 1)], LONGEST, room, words))


@settings(deadline=None)
@given(_WORK, st.integers(1, 40))
def test_the_room_is_never_asked_for_more_than_it_has_and_the_turns_have_time(
    work: list[tuple[SetUp, int]], pupils: int
) -> None:
    free, few = taught(work, pupils, Workroom()), taught(work, pupils, FEW)
    assert len(free) == len(few)
    minutes = {"ABCDEFGH"[at]: each for at, each in enumerate(work)}
    for wide, lesson in zip(free, few, strict=True):
        assert wide.takes == 1
        assert not wide.turns
        assert all(int(count) <= 3 for count in re.findall(r"(\d+) x", lesson.machines))
        for set_up, has in AT.items():
            own = [minutes[line.letter] for line in lesson.work]
            busy = pupils * sum(time for at, time in own if at is set_up)
            assert busy <= lesson.takes * has * LONGEST
        assert bool(lesson.turns) is (lesson.takes > 1)


@settings(deadline=None)
@given(_WORK, st.integers(2, 40))
def test_those_who_do_the_same_are_told_once_and_each_has_a_slip(work: list[tuple[SetUp, int]], pupils: int) -> None:
    for lesson in taught(work, pupils, FEW):
        (alike,) = lesson.alike
        assert alike.whose == "everybody"
        assert len(lesson.slips) == pupils


def _two_who_differ(language: str) -> list[Lesson]:
    words = class_words(the_class())
    words.read("teacher", "pile")
    quick = Worked("C", "close it", 20, SetUp.STRAIGHT, safe=True, aim="it is 90 cm round", numbers=1, presses=True)
    slow = quick._replace(minutes=45, title="schließen", aim="es misst 90 cm", numbers=2 if language else 1)
    pupils = [Pupil(1, "Ada", "", (quick,), "en"), Pupil(2, "Cleo", "", (slow,), "de")]
    return list(lessons(pupils, LONGEST, Workroom(), words))


def test_the_sheet_is_in_one_language_and_each_slip_in_her_own() -> None:
    (lesson,) = _two_who_differ("")
    assert [line.title for line in lesson.work] == ["close it"]
    assert [(each.whose, each.time, each.stands) for each in lesson.alike] == [
        ("everybody", "20 min – 45 min", "it is 90 cm round")
    ]
    assert [slip.heading for slip in lesson.slips] == ["Lesson 1", "Kursstunde 1"]
    assert lesson.slips[1].work[0].title == "schließen"
    assert "es misst 90 cm" in lesson.slips[1].stop


def test_what_is_true_with_other_numbers_is_not_told_of_her_in_words_of_another() -> None:
    (lesson,) = _two_who_differ("de")
    assert [(each.whose, each.stands) for each in lesson.alike] == [
        ("Ada", "it is 90 cm round"),
        ("Cleo", "C close it"),
    ]


def test_an_iron_is_ready_where_other_work_presses() -> None:
    (lesson,) = _two_who_differ("")
    assert "1 x iron with its board" in lesson.machines
