"""Work without a place to stop that is longer than the workroom's sitting is told before anybody begins."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from furbelow.diagnose.fault import Fault
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove

from tests.small_guide import FLOUNCED, FLOUNCED_STEPS, small_order


def _told(minutes: int | None, own: str = "") -> list[Fault]:
    room = Workroom(sitting=None if minutes is None else Fraction(minutes * 60))
    return [
        fault
        for fault in prove(small_order(FLOUNCED, FLOUNCED_STEPS, room=room, own=own)).faults
        if fault.code == "FB603"
    ]


def test_gathers_that_are_not_sewn_in_before_the_sitting_ends_are_told_with_their_times() -> None:
    (fault,) = (each for each in _told(15) if "`gather` + " in each.notes[0])
    assert not fault.is_error
    assert re.fullmatch(
        r"\d+ min of work have no place to stop, and a sitting lasts 15 min, \d+ min too long", fault.headline
    )
    whole, least, more = (int(number) for number in re.findall(r"\d+", fault.headline))
    assert whole - least == more > 0


def test_a_sitting_that_is_long_enough_is_not_told_and_a_workroom_without_one_never() -> None:
    assert _told(240) == []
    assert _told(None) == []


def test_what_is_meant_is_accepted_with_its_reason() -> None:
    order = small_order(
        FLOUNCED,
        FLOUNCED_STEPS,
        room=Workroom(sitting=Fraction(15 * 60)),
        own="accept: [{code: FB603, because: the class stays on}]\n",
    )
    proved = prove(order)
    assert [fault for fault in proved.faults if fault.code == "FB603"] == []
    assert proved.value is not None
    assert "the class stays on" in proved.value.accepted


@pytest.mark.parametrize("minutes", [10, 20, 30, 45, 60, 90])
def test_the_longer_a_sitting_the_less_is_told(minutes: int) -> None:
    assert len(_told(minutes)) >= len(_told(minutes + 15))
