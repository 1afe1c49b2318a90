"""A class buys together: every strip is there once under its number, the needs add up, and nobody pays more than alone."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from functools import cache, partial
from pathlib import Path

import pytest
from furbelow.garment.spec import Spec
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import plan, prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s1_read.read_wearers import read_wearers
from furbelow.s4_cut.cut import NO_PRICE
from furbelow.s4_cut.plan import CuttingPlan, How
from furbelow.s4_cut.planner import plain_plan
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip
from furbelow.s5_buy.class_order import LOT, ClassOrder, Garment, class_order
from furbelow.s5_buy.thread import reels_to_buy

from tests.s4_cut.verify_plan import faults

SPECS = Path(__file__).parents[2] / "specs"
DEMOS = ("larkspur", "marigold", "foxglove")


def _garment(order: Order) -> Garment:
    proved = prove(order).value
    assert proved is not None
    planned = plan(proved).value
    assert planned is not None
    return Garment(planned.rehearsal, planned.cutting, planned.shopping)


def _spec(text: str | None = None, name: str = "larkspur") -> Spec:
    spec = read_spec(SPECS / f"{name}.yaml" if text is None else ("spec.yaml", text.encode())).value
    assert spec is not None
    return spec


@cache
def sizes_of(name: str) -> ClassOrder:
    spec = _spec(name=name)
    orders = (Order(spec, size, body, {}, Workroom()) for size, body in spec.sizes.items())
    return class_order({number: _garment(order) for number, order in enumerate(orders, 1)})


@cache
def the_class() -> ClassOrder:
    wearers = read_wearers(SPECS / "wearers" / "class.yaml").value
    assert wearers is not None
    spec = _spec()
    orders = (Order(spec, each.name, each.body, each.choices, Workroom()) for each in wearers)
    return class_order({number: _garment(order) for number, order in enumerate(orders, 1)})


def _prices(price: Fraction | None) -> CutPrices:
    room = Workroom()
    return CutPrices(price or NO_PRICE, room.join_price, room.setup_price, room.cut_price)


def never(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan:
    """A planner whose plans are so dear that nobody takes them."""
    return replace(plain_plan(strips, bolt, prices), cost=Fraction(10**9))


ORDERS: dict[str, Callable[[], ClassOrder]] = {"class": the_class, **{name: partial(sizes_of, name) for name in DEMOS}}


@pytest.mark.parametrize("whose", ORDERS)
def test_every_piece_of_every_number_is_cut_once_and_the_plan_is_right(whose: str) -> None:
    whole = ORDERS[whose]()
    wanted = {
        (f"{number} {piece.name}", str(number)): piece.count
        for number, garment in whole.garments.items()
        for piece in garment.rehearsal.solved.pieces.values()
    }
    found: dict[tuple[str, str | None], int] = {}
    for name in whole.cutting.sheets:
        for sheet in whole.cutting.sheets[name]:
            assert faults(sheet.plan, sheet.strips, sheet.bolt, _prices(sheet.price)) == []
        for section in whole.cutting.sheet(name).plan.sections:
            for lane in section.lanes:
                for each in lane.segments:
                    if each.part == 1:
                        found[each.strip, each.wearer] = found.get((each.strip, each.wearer), 0) + 1
    assert found == wanted


@pytest.mark.parametrize("name", DEMOS)
def test_needs_of_what_is_used_up_are_the_sums_of_each_alone(name: str) -> None:
    for each in sizes_of(name).bought:
        own = [
            line
            for garment in sizes_of(name).garments.values()
            for line in garment.shopping.lines
            if line.name == each.line.name
        ]
        assert each.need_alone == sum(line.need for line in own)
        assert each.bought_alone == sum(line.bought for line in own)
        if not each.line.offers:
            assert each.line.need == each.need_alone
        assert each.line.need <= each.line.bought or each.line.unit == "reels"
        assert each.line.bought <= each.bought_alone
        assert each.line.cost is not None
        assert each.cost_alone is not None
        assert each.line.cost <= each.cost_alone


def test_thread_is_bought_by_the_metres_of_all() -> None:
    order = the_class()
    own = [garment.shopping.thread for garment in order.garments.values()]
    thread = order.shopping.thread
    assert thread.needle == sum(each.needle for each in own)
    assert thread.bobbin == sum(each.bobbin for each in own)
    assert thread.looper == sum(each.looper for each in own)
    line = next(line for line in order.shopping.lines if line.unit == "reels")
    reels = reels_to_buy(thread.total, Fraction(500_000), thread.reels_at_once)
    assert line.need == thread.total
    assert line.bought == getattr(reels, "reels", None)


def test_the_cost_a_head_times_the_heads_is_the_cost_of_the_order() -> None:
    order = the_class()
    assert order.cost_per_head * 6 == order.cost == sum(line.cost or 0 for line in order.shopping.lines)
    assert order.cost_alone == sum(
        line.cost or 0 for garment in order.garments.values() for line in garment.shopping.lines
    )
    assert order.cost < order.cost_alone
    assert order.shopping.planned_minutes == sum(g.shopping.planned_minutes for g in order.garments.values())


def test_letters_are_those_of_each_guide_with_the_number_before_them() -> None:
    order = the_class()
    assert order.cutting.letters["3 flounce"] == f"3{order.garments[3].cutting.letters['flounce']}" == "3B"
    assert len(set(order.cutting.letters.values())) == len(order.cutting.letters) == 24


def test_own_plans_after_each_other_are_taken_where_no_shared_plan_is_cheaper() -> None:
    garments = the_class().garments
    order = class_order(garments, never)
    for name in ("net", "satin"):
        sheet = order.cutting.sheet(name)
        own = [garment.cutting.sheet(name).plan for garment in garments.values()]
        assert faults(sheet.plan, sheet.strips, sheet.bolt, _prices(sheet.price)) == []
        assert sheet.plan.cost == sum(plan.cost for plan in own)
        assert sheet.plan.laid_length == sum(plan.laid_length for plan in own)
        assert sheet.plan.how is How.AFTER_EACH_OTHER
        lengths = [section.length for section in sheet.plan.sections if not section.across]
        assert lengths == sorted(lengths, reverse=True)
    shared = the_class().cutting
    assert shared.sheet("net").plan.cost < order.cutting.sheet("net").plan.cost


def test_a_large_class_is_planned_lot_by_lot() -> None:
    planned: list[set[str | None]] = []

    def lots(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan:
        planned.append({strip.wearer for strip in strips})
        return never(strips, bolt, prices)

    one = the_class().garments[1]
    many = 2 * LOT + 1
    order = class_order(dict.fromkeys(range(1, many + 1), one), lots)
    assert [len(lot) for lot in planned] == [LOT, LOT] * 2  # the last one, alone in its lot, has its own plan
    assert len(order.cutting.sheet("net").strips) == many * 2
    # The end of a bolt is cut straight once: 2 cm.
    assert order.shopping.lines[0].need - 20 == many * (one.shopping.lines[0].need - 20)


CHOSEN = """
furbelow: 1
title: Teasel skirt
units: metric
rounding: 5 mm
body:
  waist_girth: {from: 55 cm, to: 130 cm}
choices:
  wide: {default: 25 mm, from: 20 mm, to: 40 mm}
  broad: {default: 140 cm, from: 90 cm, to: 160 cm}
worn: {from: waist, over: waist_girth, ease: 5 cm, length: 50 cm, held by: the test}
materials:
  lawn: {kind: cloth, fibre: cotton, width: broad, weight: 80 g/m2, ravels: no, spare: 10 cm, sold by: 10 cm, price: 5 EUR/m}
  elastic: {kind: elastic, width: wide, stretch: 100%, sold by: 10 cm, price: 1 EUR/m}
pieces:
  skirt: {from: lawn, length: 2 * waist_girth, depth: 50 cm}
steps:
  - join ends: {of: skirt, seam: 1 cm}
  - narrow hem: {edge: skirt.bottom, first turn: 5 mm, second turn: 10 mm}
  - folded casing: {edge: skirt.top, depth: elastic.width + 5 mm, turn under: 1 cm, gap: 5 cm}
  - insert elastic: {elastic: elastic, into: skirt.top, length: waist_girth - 10 cm, overlap: 2 cm}
  - close gap: {of: skirt.top}
"""


def _chosen(*choices: dict[str, str]) -> ClassOrder:
    spec = _spec(CHOSEN)
    body = read_wearers(("a.yaml", b"wearer: a\nbody: {waist_girth: 80 cm}\n")).value
    assert body is not None
    garments = {}
    for number, chosen in enumerate(choices, 1):
        text = f"wearer: a\nbody: {{waist_girth: 80 cm}}\nchoices: {{{', '.join(f'{k}: {v}' for k, v in chosen.items())}}}\n"
        read = read_wearers(("a.yaml", text.encode())).value
        assert read is not None
        garments[number] = _garment(Order(spec, str(number), body[0].body, read[0].choices, Workroom()))
    return class_order(garments)


def test_elastic_of_different_widths_is_bought_apart() -> None:
    order = _chosen({"wide": "25 mm"}, {"wide": "40 mm"}, {"wide": "25 mm"})
    lines = {line.name: line for line in order.shopping.lines}
    assert list(lines) == ["lawn", "elastic", "elastic 2"]
    assert [each.garments for each in order.bought] == [3, 2, 1]
    assert lines["elastic"].material.amounts["width"].value == 25
    assert lines["elastic 2"].material.amounts["width"].value == 40
    assert lines["elastic"].need == 2 * lines["elastic 2"].need


def test_cloth_of_different_widths_comes_off_a_bolt_of_each_width() -> None:
    order = _chosen({"broad": "140 cm"}, {"broad": "90 cm"}, {"broad": "140 cm"})
    assert list(order.cutting.sheets) == ["lawn", "lawn 2"]
    assert {strip.wearer for strip in order.cutting.sheet("lawn").strips} == {"1", "3"}
    assert {strip.wearer for strip in order.cutting.sheet("lawn 2").strips} == {"2"}
    assert order.solved.materials["lawn 2"].amounts["width"].value == 900


def test_every_garment_keeps_the_length_that_the_spec_lays_by() -> None:
    order = _chosen({"wide": "25 mm"}, {"wide": "25 mm"})
    sheet = order.cutting.sheet("lawn")
    assert order.shopping.lines[0].need == sheet.plan.bolt_length + 2 * 100 + 20  # one straight end of 2 cm for all
