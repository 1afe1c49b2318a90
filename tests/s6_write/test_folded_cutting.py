"""Cloth that is cut folded: when it is folded, and where the fold itself has to be cut."""

from __future__ import annotations

from functools import cache

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.s6_write.guide.guide import GuideStep

from tests.demos.demos import cutting_of
from tests.small_guide import small_guide

STEPS = """- join ends: {of: skirt, into: one ring}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: skirt.top, depth: 25 mm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}
- close gap: {of: skirt.top}"""
# 140 cm of cloth are 70 cm folded: two panels 50 cm deep lie one on the other, one 100 cm deep lies on the fold.
PAIR = "skirt: {from: lawn, count: 2, length: 60 cm, depth: 50 cm}"
ON_FOLD = "skirt: {from: lawn, length: 120 cm, depth: 100 cm}"


@cache
def _cutting(pieces: str, *, folded: bool) -> tuple[GuideStep, ...]:
    steps = STEPS if "count" in pieces else STEPS.replace(", into: one ring", "")
    return cutting_of(small_guide(pieces, steps, room=Workroom(fold_cloth=folded)))


def _with(words: str, steps: tuple[GuideStep, ...]) -> list[int]:
    return [step.number for step in steps if words in step.text]


def test_the_selvedges_come_off_before_the_cloth_is_folded() -> None:
    steps = _cutting(PAIR, folded=True)
    (off,) = _with("Cut off the selvedges", steps)
    assert _with("Fold the lawn lengthwise, right sides together", steps) == [off + 1]
    assert not _with("Fold the lawn", _cutting(PAIR, folded=False))


def test_the_fold_is_cut_where_two_lanes_hang_together_there() -> None:
    """Two layers cut along the tapes alone are still one piece at the fold."""
    steps = _cutting(PAIR, folded=True)
    (at,) = _with("Cut along the fold too: lanes 1 and 2 hang together there.", steps)
    assert _with("Cut along the far side", steps) == [at - 1]
    assert _with("Lane 1, the upper layer", steps) == [at + 1]
    assert _with("Lane 2, the under layer", steps) == [at + 2]


@pytest.mark.parametrize(("pieces", "folded"), [(ON_FOLD, True), (PAIR, False)])
def test_a_fold_that_lies_inside_a_piece_is_never_cut(pieces: str, folded: bool) -> None:
    assert not _with("along the fold", _cutting(pieces, folded=folded))


def test_a_lane_that_holds_the_fold_is_opened_out() -> None:
    (at,) = _with("Open out lane 1, which holds the fold. It is 104", _cutting(ON_FOLD, folded=True))
    assert at > 2
