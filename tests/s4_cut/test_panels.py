"""Whole panels laid freely: right, never dearer than lanes, and against every layout there is."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import combinations, product

import pytest
from furbelow.garment.spec import Grain
from furbelow.s4_cut.kept_plan import agrees
from furbelow.s4_cut.lanes.grid import scale_of
from furbelow.s4_cut.lanes.in_lanes import in_lanes
from furbelow.s4_cut.lanes.limits import Limits, Work
from furbelow.s4_cut.offcuts import offcuts
from furbelow.s4_cut.plan import CuttingPlan, Panel, Section
from furbelow.s4_cut.plan_text import from_json, to_json
from furbelow.s4_cut.planner import best_plan, plan_cutting
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip, ways_to_lay
from furbelow.s4_cut.through_cuts import Part, cut_apart
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.s4_cut.cases import Case, cm
from tests.s4_cut.exhaustive import least_cost
from tests.s4_cut.verify_plan import comes_apart, faults, panel_boxes

APRON = (
    Strip("skirt", cm(90), cm(70)),
    Strip("bib", cm(30), cm(28)),
    Strip("strap", cm(80), cm(8), 2),
    Strip("pocket", cm(20), cm(18), 2),
    Strip("band", cm(120), cm(10)),
)
# Dear enough that a few cm of cloth matter, and cuts that do.
DEAR = CutPrices(Fraction(62, 10_000), Fraction(1, 4), Fraction(1, 2), Fraction(1, 20))


def free_panels(plan: CuttingPlan) -> tuple[Panel, ...]:
    return tuple(panel for section in plan.sections for panel in section.panels)


@st.composite
def panel_cases(draw: st.DrawFn, most: int = 4, unit: int = 20) -> Case:
    """A few whole pieces in whole units on a cloth of few units."""
    width = draw(st.integers(3, 5))
    strips: list[Strip] = []
    left = most
    while left and len(strips) < draw(st.integers(2, 3)):
        count = draw(st.integers(1, min(2, left)))
        left -= count
        grain: Grain = draw(st.sampled_from(["along", "across", "free"]))
        length, depth = draw(st.integers(1, 4)), draw(st.integers(1, 3))
        strip = Strip(f"panel {len(strips)}", cm(unit * length), cm(unit * depth), count, grain=grain)
        if ways_to_lay(strip, Bolt(cm(unit * width))):
            strips.append(strip)
    strips = strips or [Strip("panel", cm(unit), cm(unit))]
    prices = CutPrices(
        Fraction(draw(st.sampled_from([1, 4])), 100),
        Fraction(0),
        Fraction(draw(st.sampled_from([0, 7])), 10),
        Fraction(draw(st.sampled_from([0, 1, 5])), 10),
    )
    return tuple(strips), Bolt(cm(unit * width), cm(unit)), prices


def least_with_free_panels(case: Case, unit: int = 20) -> Fraction:
    """The least cost of one section with all panels, every turn and every place of each tried."""
    strips, bolt, prices = case
    width = int(bolt.usable_width / cm(unit))
    many = sum(strip.count for strip in strips)
    best: Fraction | None = None
    lying = [{"along": (False,), "across": (True,), "free": (False, True)}[strip.grain] for strip in strips]
    for turned in product(*lying):
        sizes = []
        for strip, over in zip(strips, turned, strict=True):
            along, across = (strip.depth, strip.length) if over else (strip.length, strip.depth)
            sizes += [(int(along / cm(unit)), int(across / cm(unit)))] * strip.count
        if any(across > width for _, across in sizes):
            continue
        # No cheaper than straight cuts through, and so no longer than the shortest of those.
        for cuts, straight in ((4, True), (6, False)):
            length = max(along for along, _ in sizes)
            while not _fits(sizes, width, length, straight, []):
                length += 1
            cost = length * cm(unit) * prices.cloth_per_mm + prices.per_setup + (1 + cuts * many) * prices.per_cut
            best = cost if best is None else min(best, cost)
    assert best is not None
    return best


def _fits(
    sizes: list[tuple[int, int]], width: int, length: int, straight: bool, laid: list[tuple[int, int, int, int]]
) -> bool:
    if len(laid) == len(sizes):
        return not straight or comes_apart([tuple(map(Fraction, box)) for box in laid])  # type: ignore[misc]
    along, across = sizes[len(laid)]
    return any(
        all(x >= box[2] or box[0] >= x + along or y >= box[3] or box[1] >= y + across for box in laid)
        and _fits(sizes, width, length, straight, [*laid, (x, y, x + along, y + across)])
        for x in range(length - along + 1)
        for y in range(width - across + 1)
    )


@settings(max_examples=40, deadline=None)
@given(panel_cases())
def test_a_proven_plan_is_the_cheapest_of_lanes_and_free_panels(case: Case) -> None:
    strips, bolt, prices = case
    plan = plan_cutting(*case)
    assert faults(plan, *case) == []
    assert plan.proven
    scale = scale_of(*case)
    lanes = in_lanes(strips, bolt, scale, Limits(), Work(), float("inf")).cost * scale.coin
    sizes = {(strip.length, strip.depth) for strip in strips}
    assert plan.cost == min(lanes, least_with_free_panels(case)) if len(sizes) > 1 else lanes


@settings(max_examples=60, deadline=None)
@given(panel_cases(most=8, unit=7), st.booleans(), st.booleans())
def test_a_plan_of_panels_is_right_and_never_dearer_than_lanes(case: Case, mixed: bool, one_way: bool) -> None:
    strips, bolt, prices = case
    if mixed:
        strips = (*strips, Strip("flounce", cm(150), cm(9), 2, True, cm(1), cm(20), 2))
    bolt = bolt._replace(one_way=one_way and all(strip.grain != "free" for strip in strips))
    plan = plan_cutting(strips, bolt, prices)
    assert faults(plan, strips, bolt, prices) == []
    scale = scale_of(strips, bolt, prices)
    assert plan.cost <= in_lanes(strips, bolt, scale, Limits(), Work(), float("inf")).cost * scale.coin


def test_an_apron_is_laid_freely_where_that_saves_money() -> None:
    bolt = Bolt(cm(110))
    plan = plan_cutting(APRON, bolt, DEAR)
    assert faults(plan, APRON, bolt, DEAR) == []
    assert plan.proven
    assert (plan.laid_length, plan.setups, len(free_panels(plan))) == (cm(120), 1, 7)
    # The band alone is 120 cm long, so no plan is shorter; lanes take two sections for it.
    scale = scale_of(APRON, bolt, DEAR)
    assert plan.cost < in_lanes(APRON, bolt, scale, Limits(), Work(), float("inf")).cost * scale.coin


def test_lanes_stay_where_marking_every_panel_costs_more_than_it_saves() -> None:
    bolt = Bolt(cm(110))
    plan = plan_cutting(APRON, bolt, DEAR._replace(per_cut=Fraction(1)))
    assert free_panels(plan) == ()
    assert faults(plan, APRON, bolt, DEAR._replace(per_cut=Fraction(1))) == []


def test_panels_are_turned_only_where_their_grain_is_free() -> None:
    strips = (Strip("front", cm(100), cm(60)), Strip("side", cm(60), cm(45), 2), Strip("tab", cm(40), cm(15)))
    for grain in ("along", "free"):
        chosen = tuple(strip._replace(grain=grain) for strip in strips)
        plan = plan_cutting(chosen, Bolt(cm(105)), DEAR)
        assert faults(plan, chosen, Bolt(cm(105)), DEAR) == []
        assert grain == "free" or not any(panel.turned for panel in free_panels(plan))


def test_on_one_way_cloth_all_free_panels_lie_one_way() -> None:
    free = tuple(strip._replace(grain="free") for strip in APRON)
    for one_way in (False, True):
        bolt = Bolt(cm(120), one_way=one_way)
        plan = plan_cutting(free, bolt, DEAR)
        assert faults(plan, free, bolt, DEAR) == []
        assert len({panel.turned for panel in free_panels(plan)}) == (1 if one_way else 2)


def test_strips_stay_in_lanes_beside_panels_that_lie_freely() -> None:
    strips = (*APRON, Strip("flounce", cm(400), cm(20), 1, True, cm(1), cm(30), 3))
    plan = plan_cutting(strips, Bolt(cm(100)), DEAR)
    assert faults(plan, strips, Bolt(cm(100)), DEAR) == []
    assert {piece.strip for section in plan.sections if section.lanes for piece in section.pieces} == {"flounce"}
    assert len(free_panels(plan)) == 7


def test_folded_cloth_stays_in_lanes() -> None:
    bolt = Bolt(cm(150), folded=True)
    plan = plan_cutting(APRON, bolt, DEAR)
    assert free_panels(plan) == ()
    assert faults(plan, APRON, bolt, DEAR) == []


def test_limits_hold_for_free_panels_too() -> None:
    assert best_plan(APRON, Bolt(cm(110)), DEAR, Limits(0, 0)) is None
    plan = best_plan(APRON, Bolt(cm(110)), DEAR, Limits(0, 1))
    assert plan is not None
    assert plan.setups == 1


def test_a_section_of_panels_is_no_longer_than_the_table_that_holds_it() -> None:
    bolt = Bolt(cm(110), longest_section=cm(120))
    plan = plan_cutting(APRON, bolt, DEAR)
    assert faults(plan, APRON, bolt, DEAR) == []
    assert plan.setups == 1
    longer = (*APRON, Strip("back", cm(100), cm(70)))
    plan = plan_cutting(longer, bolt, DEAR)
    assert faults(plan, longer, bolt, DEAR) == []


def test_the_same_panels_get_the_same_places() -> None:
    assert plan_cutting(APRON, Bolt(cm(110)), DEAR) == plan_cutting(APRON, Bolt(cm(110)), DEAR)


def test_the_order_of_the_panels_in_the_spec_changes_nothing() -> None:
    assert plan_cutting(APRON, Bolt(cm(110)), DEAR) == plan_cutting(APRON[::-1], Bolt(cm(110)), DEAR)


def test_a_plan_of_panels_can_be_kept() -> None:
    bolt = Bolt(cm(110))
    plan = plan_cutting(APRON, bolt, DEAR)
    assert from_json(to_json(plan)) == plan
    assert agrees(plan, APRON, bolt, DEAR)
    section = plan.sections[0]
    for change in (
        {"length": cm(10)},
        {"width": cm(200)},
        {"from_end": cm(900)},
        {"copy": 9},
        {"strip": "sleeve"},
        {"turned": True},
    ):
        panels = (section.panels[0]._replace(**change), *section.panels[1:])
        assert not agrees(plan._replace(sections=(section._replace(panels=panels),)), APRON, bolt, DEAR), change
    twice = section._replace(panels=(*section.panels, section.panels[0]))
    assert not agrees(plan._replace(sections=(twice,)), APRON, bolt, DEAR)


# How they come apart


def _panels(*boxes: tuple[int, int, int, int]) -> tuple[Panel, ...]:
    """Panels from (from end, from edge, length, width), in cm."""
    return tuple(
        Panel("panel", None, n, cm(x), cm(y), cm(wide), cm(deep)) for n, (x, y, wide, deep) in enumerate(boxes, 1)
    )


def test_what_stays_over_comes_off_first_and_every_panel_is_freed() -> None:
    apart = cut_apart(_panels((0, 0, 60, 50), (0, 50, 60, 30), (60, 0, 40, 50)), cm(120), cm(100))
    assert apart is not None
    assert [(cut.over, int(cut.at / 10), cut.trims) for cut in apart.cuts] == [
        (False, 80, True),
        (True, 100, True),
        (True, 60, False),
        (False, 50, False),
        (False, 50, True),
    ]
    assert set(apart.left) == {
        Part(cm(0), cm(120), cm(80), cm(100)),
        Part(cm(100), cm(120), cm(0), cm(80)),
        Part(cm(60), cm(100), cm(50), cm(80)),
    }


PINWHEEL = _panels((0, 0, 60, 30), (60, 0, 30, 60), (30, 60, 60, 30), (0, 30, 30, 60))


def test_a_pinwheel_does_not_come_apart_by_straight_cuts() -> None:
    assert cut_apart(PINWHEEL, cm(90), cm(90)) is None
    assert not comes_apart(panel_boxes(Section(Fraction(0), cm(90), (), panels=PINWHEEL)))


def test_a_pinwheel_is_cut_with_shears_where_the_cloth_it_saves_is_worth_it() -> None:
    strips = (Strip("blade", cm(60), cm(30), 2), Strip("vane", cm(30), cm(60), 2), Strip("hub", cm(30), cm(30)))
    bolt = Bolt(cm(90))
    plan = plan_cutting(strips, bolt, DEAR._replace(per_cut=Fraction(0)))
    assert faults(plan, strips, bolt, DEAR._replace(per_cut=Fraction(0))) == []
    assert plan.laid_length == cm(90)  # nine tenths of a metre square, all of it used
    assert plan.proven
    (section,) = plan.sections
    assert len(section.panels) == 5
    assert cut_apart(section.panels, section.length, bolt.usable_width) is None
    assert offcuts(plan) == ()


@settings(deadline=None)
@given(st.lists(st.tuples(*[st.integers(0, 5)] * 2, *[st.integers(1, 3)] * 2), min_size=1, max_size=6))
def test_panels_come_apart_exactly_when_straight_cuts_part_them(boxes: list[tuple[int, int, int, int]]) -> None:
    laid: list[tuple[int, int, int, int]] = []
    for x, y, wide, deep in boxes:
        if all(x >= a + c or a >= x + wide or y >= b + d or b >= y + deep for a, b, c, d in laid):
            laid.append((x, y, wide, deep))
    panels = _panels(*laid)
    apart = cut_apart(panels, cm(8), cm(8))
    assert (apart is not None) == comes_apart(panel_boxes(Section(Fraction(0), cm(8), (), panels=panels)))
    if apart is None:
        return
    # The cuts carried out one after the other leave each panel by itself, and the rest.
    parts = [Part(cm(0), cm(8), cm(0), cm(8))]
    for cut in apart.cuts:
        (part,) = [each for each in parts if all(_holds(each, panel) for panel in cut.panels)]
        assert part.near < cut.at < part.far if cut.over else part.low < cut.at < part.high
        parts.remove(part)
        parts += (
            [part._replace(far=cut.at), part._replace(near=cut.at)]
            if cut.over
            else [part._replace(high=cut.at), part._replace(low=cut.at)]
        )
    alone = {
        Part(each.from_end, each.from_end + each.length, each.from_edge, each.from_edge + each.width) for each in panels
    }
    assert set(parts) == alone | set(apart.left)
    assert not any(one != other and _meet(one, other) for one, other in combinations(parts, 2))


def _holds(part: Part, panel: Panel) -> bool:
    along = part.near <= panel.from_end and panel.from_end + panel.length <= part.far
    return along and part.low <= panel.from_edge and panel.from_edge + panel.width <= part.high


def _meet(one: Part, other: Part) -> bool:
    return one.near < other.far and other.near < one.far and one.low < other.high and other.low < one.high


def test_what_straight_cuts_leave_of_a_section_of_panels_is_kept() -> None:
    plan = plan_cutting(APRON, Bolt(cm(110)), DEAR)
    kept = offcuts(plan)
    assert kept
    assert sum(each.length * each.width for each in kept) <= plan.laid_length * plan.usable_width - sum(
        panel.length * panel.width for panel in free_panels(plan)
    )
    assert all(min(each.length, each.width) >= cm(10) for each in kept)


@pytest.mark.parametrize("count", [1, 3])
def test_panels_of_one_size_stay_in_lanes(count: int) -> None:
    strips = (Strip("front", cm(60), cm(50), count),)
    plan = plan_cutting(strips, Bolt(cm(140)), DEAR)
    assert free_panels(plan) == ()
    assert plan.cost == least_cost(strips, Bolt(cm(140), cm(60)), DEAR, 3)


def _damaged(**change: object) -> CuttingPlan:
    plan = plan_cutting(APRON, Bolt(cm(110)), DEAR)
    section = plan.sections[0]
    panels = (section.panels[0]._replace(**change), *section.panels[1:])  # type: ignore[arg-type]
    return plan._replace(sections=(section._replace(panels=panels),))


@pytest.mark.parametrize(
    ("damaged", "seen"),
    [
        (_damaged(from_end=cm(5)), "overlap|leaves"),
        (_damaged(from_edge=cm(105)), "leaves the section"),
        (_damaged(from_end=cm(-5)), "leaves the section"),
        (_damaged(length=cm(15)), "it has to be"),
        (_damaged(length=Fraction(1234, 10)), "off the grid"),
        (_damaged(turned=True), "it has to be|against its grain"),
        (_damaged(copy=7), "not all there once"),
        (_damaged(strip="sleeve"), "nobody asked for"),
    ],
)
def test_the_verifier_sees_a_damaged_panel(damaged: CuttingPlan, seen: str) -> None:
    assert re.search(seen, "\n".join(faults(damaged, APRON, Bolt(cm(110)), DEAR)))
