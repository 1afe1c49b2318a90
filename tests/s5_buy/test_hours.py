from fractions import Fraction

import pytest
from furbelow.s5_buy.hours import Pace, TimeTable, Work, pins_for, sewing_speed, time_for
from furbelow.s5_buy.out_of_range import OutOfRange

METRE = Fraction(1000)
PACE = Pace(
    sewing=(("504", 4 * METRE),),
    sewing_other=2 * METRE,
    set_up=Fraction(3),
    seam_start=Fraction(1, 2),
    pin_spacing=Fraction(50),
    pin=Fraction(1, 10),
    gathering=Fraction(6),
    cutting=Fraction(1),
    pressing=Fraction(2),
)


def test_each_kind_of_work_takes_its_own_minutes() -> None:
    attach = Work(
        seams=(("301", 4 * METRE), ("504", 4 * METRE)),
        set_ups=2,
        pinned=METRE,
        gathered=3 * METRE,
        cut=7 * METRE,
        pressed=METRE,
        extra=Fraction(10),
    )
    table = time_for([attach], PACE)
    assert table == TimeTable(
        sewing=Fraction(3),
        handling=Fraction(1),
        set_ups=Fraction(6),
        pinning=Fraction("2.1"),
        gathering=Fraction(18),
        cutting=Fraction(7),
        pressing=Fraction(2),
        extra=Fraction(10),
    )
    assert table.minutes == Fraction("49.1")
    assert table.hours == Fraction("49.1") / 60


def test_a_hand_takes_longer_than_a_machine_for_the_same_row() -> None:
    pace = Pace()
    assert pace.speed("101") < pace.speed("301") < pace.speed("504")


def test_thread_ends_and_the_laying_of_cloth_take_their_time() -> None:
    pace = PACE._replace(thread_end=Fraction(1, 2), laying=Fraction(10), tag=Fraction(1, 4))
    table = time_for([Work(thread_ends=16), Work(cut=METRE, sections=2, tags=8)], pace)
    assert isinstance(table, TimeTable)
    assert table.handling == 8
    assert table.cutting == 1 + 20 + 2


def test_work_split_in_two_takes_as_long_together_but_for_a_pin() -> None:
    half = Work(seams=(("301", METRE),), pinned=METRE)
    whole = Work(seams=(("301", METRE), ("301", METRE)), pinned=2 * METRE)
    split, together = time_for([half, half], PACE), time_for([whole], PACE)
    assert isinstance(split, TimeTable)
    assert isinstance(together, TimeTable)
    assert split.minutes - together.minutes == PACE.pin


@pytest.mark.parametrize(("length", "pins"), [(0, 0), (1, 2), (50, 2), (51, 3), (100, 3)])
def test_no_gap_between_pins_is_wider_than_the_spacing(length: int, pins: int) -> None:
    assert pins_for(Fraction(length), Fraction(50)) == pins


def test_sewing_speed_is_stitches_a_minute_by_their_length() -> None:
    assert sewing_speed(Fraction(400), Fraction("2.5")) == METRE


@pytest.mark.parametrize(
    "pace",
    [
        PACE._replace(sewing=(("504", Fraction(0)),)),
        PACE._replace(sewing_other=Fraction(0)),
        PACE._replace(pin_spacing=Fraction(0)),
        PACE._replace(gathering=Fraction(-1)),
        PACE._replace(thread_end=Fraction(-1)),
        PACE._replace(laying=Fraction(-1)),
    ],
)
def test_a_pace_that_cannot_be_is_told(pace: Pace) -> None:
    assert isinstance(time_for([Work(pinned=METRE)], pace), OutOfRange)
