"""A class buys together: every strip is there once under its number, the needs add up, and nobody pays more than alone."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Sequence
from fractions import Fraction
from functools import cache, partial
from pathlib import Path

import pytest
from furbelow.garment.solved import Solved
from furbelow.garment.spec import Spec, Written
from furbelow.garment.workroom import Workroom
from furbelow.measure.formula import FormulaFault, parse_formula
from furbelow.order.chain import guide_of, plan, planned_from_pile, prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s1_read.read_wearers import read_wearers
from furbelow.s4_cut.cut import NO_PRICE, Cutting
from furbelow.s4_cut.lanes.pool import pooled
from furbelow.s4_cut.plain_plan import plain_plan
from furbelow.s4_cut.plan import CuttingPlan, How
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip, on_the_table
from furbelow.s5_buy.class_cutting import (
    CLASSROOM_TABLE,
    LOT,
    Garment,
    Lot,
    Planner,
    class_cutting,
)
from furbelow.s5_buy.class_order import ClassOrder, class_order
from furbelow.s5_buy.class_shares import Shares
from furbelow.s5_buy.thread import reels_to_buy
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from tests.s4_cut.verify_plan import faults

SPECS = Path(__file__).parents[2] / "specs"
DEMOS = ("larkspur", "marigold", "foxglove")


# So long that no section of these garments is longer.
HALL = Workroom(table_length=Fraction(20_000))


def _garment(order: Order) -> Garment:
    return _garment_and_numbers(order)[0]


def _garment_and_numbers(order: Order) -> tuple[Garment, Solved]:
    proved = prove(order).value
    assert proved is not None
    planned = plan(proved).value
    assert planned is not None
    solved = planned.rehearsal.solved
    return Garment(solved.pieces, planned.cutting, planned.shopping), solved


def _ordered(
    garments: dict[int, Garment], solved: Solved, room: Workroom = HALL, planner: Planner = pooled
) -> ClassOrder:
    return class_order(garments, class_cutting(garments, room, planner=planner), solved, room)


def ordered_together(orders: Iterable[Order]) -> ClassOrder:
    made = [_garment_and_numbers(order) for order in orders]
    return _ordered({number: garment for number, (garment, _) in enumerate(made, 1)}, made[0][1])


def _spec(text: str | None = None, name: str = "larkspur") -> Spec:
    spec = read_spec(SPECS / f"{name}.yaml" if text is None else ("spec.yaml", text.encode())).value
    assert spec is not None
    return spec


@cache
def sizes_of(name: str) -> ClassOrder:
    spec = _spec(name=name)
    return ordered_together(Order(spec, size, body, {}, Workroom()) for size, body in spec.sizes.items())


@cache
def the_class() -> ClassOrder:
    wearers = read_wearers(SPECS / "wearers" / "class.yaml").value
    assert wearers is not None
    spec = _spec()
    return ordered_together(Order(spec, each.name, each.body, each.choices, Workroom()) for each in wearers)


def _prices(price: Fraction | None) -> CutPrices:
    room = Workroom()
    return CutPrices(price or NO_PRICE, room.join_price, room.setup_price, room.cut_price)


def never(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan:
    """A planner whose plans are so dear that nobody takes them."""
    return plain_plan(strips, bolt, prices)._replace(cost=Fraction(10**9))


ORDERS: dict[str, Callable[[], ClassOrder]] = {"class": the_class, **{name: partial(sizes_of, name) for name in DEMOS}}


@pytest.mark.parametrize("whose", ORDERS)
def test_every_piece_of_every_number_is_cut_once_and_the_plan_is_right(whose: str) -> None:
    whole = ORDERS[whose]()
    wanted = {
        (f"{number} {piece.name}", str(number)): piece.count
        for number, garment in whole.garments.items()
        for piece in garment.pieces.values()
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


def test_tags_are_those_of_each_guide_with_the_number_before_them() -> None:
    order = the_class()
    assert order.cutting.marks["3 flounce"] == f"3-{order.garments[3].cutting.marks['flounce']}" == "3-2"
    assert len(set(order.cutting.marks.values())) == len(order.cutting.marks) == 24


def test_own_plans_after_each_other_are_taken_where_no_shared_plan_is_cheaper() -> None:
    garments = dict(the_class().garments)
    order = _ordered(garments, the_class().solved, planner=never)
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
    order = _ordered(dict.fromkeys(range(1, many + 1), one), the_class().solved, planner=lots)
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


def _chosen(*choices: dict[str, str], text: str = CHOSEN) -> ClassOrder:
    spec = _spec(text)
    body = read_wearers(("a.yaml", b"wearer: a\nbody: {waist_girth: 80 cm}\n")).value
    assert body is not None
    orders = []
    for number, chosen in enumerate(choices, 1):
        asked = f"wearer: a\nbody: {{waist_girth: 80 cm}}\nchoices: {{{', '.join(f'{k}: {v}' for k, v in chosen.items())}}}\n"
        read = read_wearers(("a.yaml", asked.encode())).value
        assert read is not None
        orders.append(Order(spec, str(number), body[0].body, read[0].choices, Workroom()))
    return ordered_together(orders)


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


def test_who_needs_the_whole_width_cuts_from_the_bolt_of_all() -> None:
    """Of 140 cm 1 cm stays spare, but for the piece of 139.5 cm: the cloth is one and the same."""
    text = CHOSEN.replace("depth: 50 cm}", "cut depth: deep}").replace(", length: 50 cm", "")
    text = text.replace("choices:\n", "choices:\n  deep: {default: 55 cm, from: 50 cm, to: 140 cm}\n")
    order = _chosen({"deep": "60 cm"}, {"deep": "139.5 cm"}, text=text)
    assert list(order.cutting.sheets) == ["lawn"]
    sheet = order.cutting.sheet("lawn")
    assert {strip.wearer for strip in sheet.strips} == {"1", "2"}
    assert sheet.plan.usable_width == sheet.bolt.usable_width == 1400
    assert faults(sheet.plan, sheet.strips, sheet.bolt, _prices(sheet.price)) == []


def test_every_garment_keeps_the_length_that_the_spec_lays_by() -> None:
    order = _chosen({"wide": "25 mm"}, {"wide": "25 mm"})
    sheet = order.cutting.sheet("lawn")
    assert order.shopping.lines[0].need == sheet.plan.bolt_length + 2 * 100 + 20  # one straight end of 2 cm for all


# --- what each gets of it, and what stays when the class changes ---


def test_no_section_is_longer_than_the_table_unless_a_piece_is() -> None:
    garments = dict(the_class().garments)
    for room, table in ((Workroom(), CLASSROOM_TABLE), (Workroom(table_length=Fraction(2400)), Fraction(2400))):
        cutting = class_cutting(garments, room).cutting
        for name in cutting.sheets:
            plan = cutting.sheet(name).plan
            assert all(section.length <= table for section in plan.sections if not section.across), (name, table)
    # A wall hanging of 4 m in one length can be cut on a table of 3 m: it is drawn over the table along the same tapes.
    long = Strip("1 hanging", Fraction(4000), Fraction(500), wearer="1")
    assert on_the_table(Bolt(Fraction(1400)), (long,), CLASSROOM_TABLE).longest_section == 2 * CLASSROOM_TABLE


def _segments(cutting: Cutting) -> dict[str, list[list[Fraction]]]:
    """How each marked piece is cut, read off the drawing's own sections: its copies, each by its parts."""
    found: dict[str, dict[int, dict[int, Fraction]]] = {}
    for name in cutting.sheets:
        for section in cutting.sheet(name).plan.sections:
            for lane in section.lanes:
                for each in lane.segments:
                    length = lane.depth if each.turned else each.length
                    found.setdefault(each.strip, {}).setdefault(each.copy, {})[each.part] = length
            for panel in section.panels:
                length = panel.width if panel.turned else panel.length
                found.setdefault(panel.strip, {})[panel.copy] = {1: length}
    return {
        strip: [[parts[part] for part in sorted(parts)] for _, parts in sorted(copies.items())]
        for strip, copies in found.items()
    }


@settings(max_examples=12, deadline=None, phases=[Phase.explicit, Phase.reuse, Phase.generate])
@given(data=st.data())
def test_every_pupil_s_guide_has_the_pieces_of_the_shared_cutting(data: st.DataObject) -> None:
    """Over random classes: the segments, the joins, the tags and the piles of a guide are those of the plan for all."""
    name = data.draw(st.sampled_from(DEMOS))
    spec = _spec(name=name)
    bodies = data.draw(st.lists(st.sampled_from(list(spec.sizes.values())), min_size=2, max_size=5))
    numbers = data.draw(st.lists(st.integers(1, 40), min_size=len(bodies), max_size=len(bodies), unique=True))
    room = Workroom(table_length=data.draw(st.sampled_from([None, Fraction(2000), Fraction(6000)])))
    orders = {number: Order(spec, str(number), body, {}, room) for number, body in zip(numbers, bodies, strict=True)}
    garments = {number: _garment(order) for number, order in orders.items()}
    whole = class_cutting(garments, room)
    planned, words_seen = _segments(whole.cutting), set()
    shares = Shares(whole.cutting)
    for number, order in orders.items():
        share = shares.of(number, garments[number].pieces)
        proved = prove(order).value
        assert proved is not None
        found = planned_from_pile(proved, share).value
        assert found is not None
        guide = guide_of(found, str(number), pile=number)
        (operation,) = guide.cut
        steps, pile = operation.steps, 0
        for line, (piece, mark) in zip(guide.cutting, share.marks.items(), strict=True):
            copies = planned[f"{number} {piece}"]
            assert line.mark == mark == f"{number}-{garments[number].cutting.marks[piece]}"
            assert [list(copy) for copy in share.lengths[piece]] == copies
            assert share.joins.get(piece, 0) == sum(len(copy) - 1 for copy in copies)
            joins = re.search(r"(\d+) join", line.note)
            assert int(joins[1] if joins else 0) == share.joins.get(piece, 0)
            pile += sum(map(len, copies))
            told = next(step.text for step in steps if f"{mark}a" in step.text)
            for copy in "abc"[: len(copies)]:
                assert f"{mark}{copy}" in told
            words_seen.add(mark)
        assert f"pile {number} " in steps[0].text
        assert steps[0].check.startswith(f"{pile} piece")
    assert words_seen == set(whole.cutting.marks.values())


def _lots(garments: dict[int, Garment], kept: Sequence[Lot] = ()) -> tuple[tuple[Lot, ...], Cutting]:
    made = class_cutting(garments, HALL, kept)
    return made.lots, made.cutting


def test_who_comes_later_is_cut_from_new_cloth_and_nobody_s_pieces_change() -> None:
    garments = dict(the_class().garments)
    first = {number: garments[number] for number in (1, 2, 3)}
    lots, before = _lots(first)
    _, after = _lots({**first, 4: garments[4]}, lots)
    for number in first:
        for piece in first[number].pieces:
            assert _segments(after)[f"{number} {piece}"] == _segments(before)[f"{number} {piece}"]
    for name in before.sheets:
        old, new = before.sheet(name).plan.sections, after.sheet(name).plan.sections
        assert new[: len(old)] == old
        assert {each.wearer for section in new[len(old) :] for each in section.pieces} == {"4"}
        sheet = after.sheet(name)
        assert faults(sheet.plan, sheet.strips, sheet.bolt, _prices(sheet.price)) == []


def test_what_was_cut_for_who_left_stays_in_the_plan_as_spare() -> None:
    garments = {number: dict(the_class().garments)[number] for number in (1, 2, 3)}
    lots, before = _lots(garments)
    later, after = _lots({1: garments[1], 3: garments[3]}, lots)
    assert later == lots
    assert after.marks["2 flounce spare"] == "2-2*"
    assert _segments(after)["2 flounce spare"] == _segments(before)["2 flounce"]
    assert "2 flounce" not in _segments(after)
    assert [s.length for s in after.sheet("net").plan.sections] == [s.length for s in before.sheet("net").plan.sections]


def test_of_who_was_measured_again_only_the_pieces_that_differ_are_cut_anew() -> None:
    spec = _spec()
    ada = spec.sizes["M"]
    longer = {**ada, "waist_height": replace_text(ada["waist_height"], "109 cm")}
    before = {1: _garment(Order(spec, "1", ada, {}, HALL)), 2: _garment(Order(spec, "2", ada, {}, HALL))}
    lots, _ = _lots(before)
    after = {**before, 2: _garment(Order(spec, "2", longer, {}, HALL))}
    _, cutting = _lots(after, lots)
    same = [name for name, piece in before[2].pieces.items() if piece.blank == after[2].pieces[name].blank]
    assert same
    assert set(same) != set(before[2].pieces)
    spare = {name.removesuffix(" spare") for name in _segments(cutting) if name.endswith(" spare")}
    assert spare == {f"2 {name}" for name in before[2].pieces if name not in same}


def replace_text(written: Written, text: str) -> Written:
    formula = parse_formula(text)
    assert not isinstance(formula, FormulaFault)
    return Written(text, formula, written.span)
