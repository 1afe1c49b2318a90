"""A skirt of many like tiers, each sewn below the one before: what grows faster than the garment shows in it."""

from __future__ import annotations

from furbelow.garment.workroom import Workroom
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec

_HEAD = """\
furbelow: 1
title: Tiers
rounding: 5 mm
body: {waist_girth: {from: 55 cm, to: 120 cm}}
sizes: {M: {waist_girth: 75 cm}}
worn: {from: waist, over: waist_girth, ease: 5 cm, held by: a belt}
materials:
  lawn: {kind: cloth, fibre: cotton, width: 150 cm, weight: 80 g/m2, ravels: no, price: 4 EUR/m, sold by: 10 cm}
  thread: {kind: thread, fibre: polyester, reel: 500 m}
pieces:
"""


def many_tiers(count: int) -> Order:
    lines = [f"  tier_{at}: {{from: lawn, length: 200 cm, depth: 5 cm}}" for at in range(count)]
    lines += ["steps:", *(f"  - join ends: {{of: tier_{at}, seam: 1 cm}}" for at in range(count))]
    lines += [f"  - attach: {{edge: tier_{at}.top, to: tier_{at - 1}.bottom, seam: 1 cm}}" for at in range(1, count)]
    read = read_spec(("tiers.yaml", (_HEAD + "\n".join(lines) + "\n").encode()))
    assert read.value is not None, read.faults
    return Order(read.value, "size M", read.value.sizes["M"], {}, Workroom(), "M")
