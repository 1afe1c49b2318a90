from fractions import Fraction

import pytest
from furbelow.garment.stitch import StitchType
from furbelow.s5_buy.hours import Pace, TimeTable, Work, pins_for, time_for

METRE = Fraction(1000)
PACE = Pace(
    sewing={StitchType.OVERLOCK: 4 * METRE},
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
        seams=((StitchType.LOCK, 4 * METRE), (StitchType.OVERLOCK, 4 * METRE)),
        set_ups=2,
        pinned=METRE,
        gathered=3 * METRE,
        cut=7 * METRE,
        pressed=METRE,
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
    )
    assert table.minutes == Fraction("39.1")


def test_a_hand_takes_longer_than_a_machine_for_the_same_row() -> None:
    pace = Pace()
    assert pace.speed(StitchType.RUNNING) < pace.speed(StitchType.LOCK) < pace.speed(StitchType.OVERLOCK)


def test_thread_ends_and_the_laying_of_cloth_take_their_time() -> None:
    pace = PACE._replace(thread_end=Fraction(1, 2), laying=Fraction(10), tag=Fraction(1, 4))
    table = time_for([Work(thread_ends=16), Work(cut=METRE, sections=2, tags=8)], pace)
    assert table.handling == 8
    assert table.cutting == 1 + 20 + 2


def test_work_split_in_two_takes_as_long_together_but_for_a_pin() -> None:
    half = Work(seams=((StitchType.LOCK, METRE),), pinned=METRE)
    whole = Work(seams=((StitchType.LOCK, METRE), (StitchType.LOCK, METRE)), pinned=2 * METRE)
    split, together = time_for([half, half], PACE), time_for([whole], PACE)
    assert split.minutes - together.minutes == PACE.pin


@pytest.mark.parametrize(("length", "pins"), [(0, 0), (1, 2), (50, 2), (51, 3), (100, 3)])
def test_no_gap_between_pins_is_wider_than_the_spacing(length: int, pins: int) -> None:
    assert pins_for(Fraction(length), Fraction(50)) == pins
