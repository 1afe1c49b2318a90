"""What a plan leaves over: of the width for crooked selvedges, of the length for the end that is cut straight."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import Planned, planned
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s4_cut.cut import Sheet

SPEC = """\
furbelow: 1
title: Two panels
body: {waist_girth: {from: 55 cm, to: 120 cm}}
sizes: {M: {waist_girth: 75 cm}}
worn: {from: waist, over: waist_girth, ease: 5 cm, held by: a belt}
materials:
  lawn: {kind: cloth, fibre: cotton, width: 140 cm, weight: 80 g/m2, ravels: no, sold by: 10 cm, price: 4 EUR/m, EXTRA}
  thread: {kind: thread, fibre: polyester, reel: 500 m}
pieces:
  skirt: {from: lawn, count: 2, length: 198 cm, depth: DEPTH}
steps:
  - join ends: {of: skirt, into: one ring, seam: 1 cm}
"""


def _planned(depth: str, room: Workroom, extra: str = "ravels: no") -> Planned:
    text = SPEC.replace("DEPTH", depth).replace(", EXTRA", "" if extra == "ravels: no" else f", {extra}")
    read = read_spec(("panels.yaml", text.encode()))
    assert read.value is not None, read.faults
    found = planned(Order(read.value, "size M", read.value.sizes["M"], {}, room))
    assert found.value is not None, found.faults
    return found.value


def _sheet(depth: str, room: Workroom, extra: str = "ravels: no") -> Sheet:
    return _planned(depth, room, extra).cutting.sheet("lawn")


def _across(sheet: Sheet) -> list[Fraction]:
    return [sum((lane.depth for lane in section.lanes), Fraction(0)) for section in sheet.plan.sections]


def test_no_plan_takes_the_last_centimetre_of_the_width() -> None:
    # Two panels 70 cm deep side by side are 140 cm, the whole width: with 1 cm spared they lie one after the other.
    assert _across(_sheet("70 cm", Workroom(spare_across=Fraction(0)))) == [1400]
    assert _across(_sheet("70 cm", Workroom())) == [700]
    # 2 x 69.5 cm = 139 cm leave 1 cm.
    assert _across(_sheet("69.5 cm", Workroom())) == [1390]
    assert _across(_sheet("69.5 cm", Workroom(spare_across=Fraction(11)))) == [695]


@pytest.mark.parametrize("depth", ["139.5 cm", "140 cm"])
def test_a_piece_that_takes_the_whole_width_may(depth: str) -> None:
    sheet = _sheet(depth, Workroom())
    assert sheet.plan.usable_width == 1400
    assert sheet.bolt.spared == 0


def test_selvedges_and_shrinkage_come_off_before_anything_is_spared() -> None:
    # (140 - 2 x 1) cm x (1 - 5 %) - 1 cm = 130.1 cm.
    sheet = _sheet("60 cm", Workroom(), "selvedge: 1 cm, shrinkage: 5%")
    assert sheet.plan.usable_width == 1301


@pytest.mark.parametrize(("square", "need", "bought"), [(0, 2000, 2000), (20, 2020, 2100), (50, 2050, 2100)])
def test_the_end_that_is_cut_straight_is_bought(square: int, need: int, bought: int) -> None:
    """2 m of lanes are sold by 10 cm: with an end to cut straight the next 10 cm are bought."""
    line = _planned("60 cm", Workroom(square_ends=Fraction(square))).shopping.lines[0]
    assert (line.need, line.bought) == (need, bought)
