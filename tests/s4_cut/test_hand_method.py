"""Six layers of net as they are cut by hand: 12 m in two sections with one join. Common practice, no source.

By hand five 8 m strips are cut from a section of 8 m, and the sixth is joined from two lanes of a section of 4 m, beside the
upper tiers; the seam of that join eats 1 cm of either lane, of which the hand takes no account.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import solved
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s4_cut.cut import cut

SPEC = """\
furbelow: 1
title: Six layers of net
rounding: 0 mm
body: {waist_girth: {from: 55 cm, to: 130 cm}}
sizes: {M: {waist_girth: 78 cm}}
worn: {from: waist, over: waist_girth}
materials:
  net: {kind: cloth, fibre: nylon, width: 150 cm, selvedge: 0 cm, weight: 25 g/m2, ravels: no, right side: no, price: 4 EUR/m}
pieces:
  upper: {from: net, count: 6, cut length: 4 m, cut depth: 10 cm, piecing: {seam: 1 cm, shortest: 40 cm, most joins: 1}}
  flounce: {from: net, count: 6, cut length: 8 m, cut depth: 30 cm, piecing: {seam: 1 cm, shortest: 40 cm, most joins: 1}}
steps:
  - join strips: {of: [upper, flounce]}
"""


@pytest.mark.parametrize("folded", [False, True])
def test_six_layers_take_the_12_m_of_the_hand_and_what_its_seams_eat(folded: bool) -> None:
    read = read_spec(("net.yaml", SPEC.encode()))
    assert read.value is not None, read.faults
    room = Workroom(fold_cloth=folded)
    numbers = solved(Order(read.value, "size M", read.value.sizes["M"], {}, room))
    assert numbers.value is not None, numbers.faults
    planned = cut(numbers.value, room)
    assert planned.value is not None, planned.faults
    plan = planned.value.sheet("net").plan
    # Area alone: 6 x (4 m x 10 cm + 8 m x 30 cm) / 150 cm = 11.2 m.
    least = Fraction(6 * (4000 * 100 + 8000 * 300), 1500)
    assert least == 11_200
    assert plan.bolt_length == 12_010
    # One section of 12.01 m, or two of 8 m and 4.01 m, take as much: fewer set-ups are cheaper.
    assert sum(section.length for section in plan.sections) == 8000 + 4010
    assert plan.proven
