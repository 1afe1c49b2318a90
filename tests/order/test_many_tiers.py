"""A garment of twice as many tiers takes about twice as much to plan, draw and write."""

from __future__ import annotations

import re
from functools import cache

import pytest
from furbelow.garment.phrasing import Phrasing
from furbelow.order.chain import Planned, guide_of, in_work_order, planned, prove
from furbelow.s3_rehearse import order_of_work
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.figures.piece_view import piece_view
from furbelow.s6_write.guide.guide import Guide, Operation
from furbelow.s6_write.words.words import Words

from tests.many_tiers import many_tiers


@cache
def _planned(count: int) -> Planned:
    found = planned(many_tiers(count)).value
    assert found is not None
    return found


@cache
def _guide(count: int) -> Guide:
    return guide_of(_planned(count), "size M")


def _operations(count: int) -> list[Operation]:
    return [operation for part in _guide(count).parts for operation in part.operations]


def _drawn(count: int) -> int:
    """All that is drawn, in signs."""
    return sum(len(figure.svg) + len(figure.alt) for each in _operations(count) for figure in each.figures)


def test_the_drawings_grow_as_the_garment_does() -> None:
    # Each step is drawn with what is sewn to its pieces. With all that hangs on them it would be four times as much.
    assert _drawn(48) < 2.4 * _drawn(24)


def _says_so(count: int) -> bool:
    """Of the drawing of the seam that sews the last tier on."""
    found = _planned(count)
    run = found.rehearsal.run
    words = Words("en", Phrasing(run.solved, run.room), found.cutting.marks)
    drawn = piece_view(run.performed[-1], run, words, Numbers((), None))
    assert drawn is not None
    return "further off is not drawn" in drawn.svg


def test_what_is_left_out_of_a_drawing_is_said() -> None:
    assert _says_so(24)
    assert not _says_so(8)


def test_the_guide_of_a_hundred_tiers_can_be_written() -> None:
    assert sum(each.title.startswith("Sew") for each in _operations(100)) >= 99


def test_the_order_of_work_is_not_looked_for_without_end(monkeypatch: pytest.MonkeyPatch) -> None:
    """Sixty tiers have more orders than anybody can look at: after so many states they are left as written."""
    proved = prove(many_tiers(60)).value
    assert proved is not None
    found = in_work_order(proved)
    assert [done.step.written.index for done in found.run.performed] == list(range(119))
    monkeypatch.setattr(order_of_work, "MOST_STATES", 0)
    assert in_work_order(proved).run.performed == found.run.performed


def _captions(guide: Guide) -> str:
    return " ".join(figure.caption for operation in guide.cut for figure in operation.figures)


@pytest.mark.parametrize(
    ("language", "told"),
    [("en", "another could cost"), ("de", "ein anderer könnte"), ("fr", "un autre pourrait"), ("es", "otro podría")],
)
def test_a_plan_that_is_not_proven_says_its_gap(language: str, told: str) -> None:
    plan = _planned(120).cutting.sheet("lawn").plan
    assert not plan.proven
    order = many_tiers(120)
    found = planned(order._replace(spec=order.spec._replace(language=language))).value
    assert found is not None
    caption = _captions(guide_of(found, "size M"))
    assert told in caption
    # The share of its cost by which the bound is missed, rounded for reading.
    number = re.search(told + r"[^0-9]*([0-9]+(?:[.,][0-9]+)?)", caption)
    assert number is not None
    assert abs(float(number[1].replace(",", ".")) - float((plan.cost - plan.bound) / plan.cost) * 100) < 0.5


def test_a_proven_plan_says_nothing_of_a_gap() -> None:
    assert "could cost" not in _captions(_guide(24))
