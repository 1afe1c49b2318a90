"""Published sums of cloth, cut by the planner itself; each plan is checked by the independent verifier."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

import pytest
from furbelow.measure.quantity import mm
from furbelow.measure.units import LENGTH
from furbelow.s4_cut.marks import table_marks
from furbelow.s4_cut.plan import CuttingPlan
from furbelow.s4_cut.planner import plan_cutting
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip
from furbelow.s5_buy.shop_units import in_steps

from tests.s4_cut.cases import cm
from tests.s4_cut.verify_plan import faults

INCH = Fraction("25.4")
YARD = 36 * INCH
PRICES = CutPrices(Fraction(1, 100), Fraction(1, 4), Fraction(1, 2), Fraction(1, 20))


def planned(bolt: Bolt, *strips: Strip) -> CuttingPlan:
    plan = plan_cutting(strips, bolt, PRICES)
    assert faults(plan, strips, bolt, PRICES) == []
    return plan


def widths(name: str, count: int, depth: Fraction, width: Fraction) -> Strip:
    """So many pieces, each as long as the cloth is wide, one below the other along the bolt."""
    return Strip(name, width, depth, count, grain="across")


@pytest.mark.parametrize("width", [36 * INCH, 45 * INCH])
def test_2_4_and_8_widths_13_inches_deep_and_5_inches_of_casing_take_187_inches(width: Fraction) -> None:
    """annasmountaintreasures.blogspot.com, July 2013: 182 + 5 = 187 in, 5 1/4 yd, whatever the width of the cloth."""
    tiers = [widths(f"tier {number}", 2**number, 13 * INCH, width) for number in (1, 2, 3)]
    plan = planned(Bolt(width, INCH / 4), *tiers, widths("casing", 1, 5 * INCH, width))
    assert plan.bolt_length == 187 * INCH
    assert in_steps(plan.bolt_length, mm(YARD / 4), LENGTH) == Fraction(21, 4) * YARD
    assert plan.joins == 0


def test_54_inches_over_cloth_of_45_are_two_of_27_with_one_join() -> None:
    """Tiered skirt math at soundstitches.wordpress.com: two pieces of 27 in. The depth of 7 in is ours.

    The page joins them by a seam that it has counted already, so the join takes nothing more.
    """
    tier = Strip("tier", 54 * INCH, 7 * INCH, 1, True, Fraction(0), 27 * INCH, 1, "across")
    plan = planned(Bolt(45 * INCH, INCH / 4), tier)
    assert plan.joins == 1
    lengths = [each.length for section in plan.sections for lane in section.lanes for each in lane.segments]
    assert lengths == [27 * INCH, 27 * INCH]
    assert plan.bolt_length == 2 * 7 * INCH  # 27 in twice is more than 45


@pytest.mark.parametrize(("lengths", "yards", "bought"), [(2, "2.72", Fraction(11, 4)), (3, "4.08", Fraction(17, 4))])
def test_skirt_lengths_of_49_inches_one_below_the_other(lengths: int, yards: str, bought: Fraction) -> None:
    """Page altskirt1 at webpages.charter.net/lara_the_lacemaker: 98 in are 2.72 yd, three lengths 4.08 yd.

    The page takes 2 3/4 yd for the first; the quarter yard above the second, and the cloth of 45 in, are ours.
    """
    plan = planned(Bolt(45 * INCH, INCH / 4), widths("skirt", lengths, 49 * INCH, 45 * INCH))
    assert round(plan.bolt_length / YARD, 2) == Fraction(yards)
    assert in_steps(plan.bolt_length, mm(YARD / 4), LENGTH) == bought * YARD


def test_352_and_a_half_inches_in_8_drops_of_120_on_cloth_of_48_take_960_inches() -> None:
    """Commonly used formulas at mylltd.com: 141 in x 2.5 / 48 = 7.34, so 8 widths, 8 x 120 = 960 in."""
    drops = ceil(141 * Fraction("2.5") / 48)
    plan = planned(Bolt(48 * INCH, INCH / 4), Strip("drop", 120 * INCH, 48 * INCH, drops))
    assert plan.bolt_length == 960 * INCH


def test_cloth_folded_lengthwise_a_half_lane_at_the_fold_opens_to_a_full_one() -> None:
    """Common practice, no source. Flounce 50 cm deep on the fold, two yokes of 40 cm in the layers beside it."""
    plan = planned(
        Bolt(cm(140), cm(1), folded=True), Strip("flounce", cm(300), cm(50)), Strip("yoke", cm(300), cm(40), 2)
    )
    (section,) = plan.sections
    assert plan.bolt_length == cm(300)
    lying = {(segment.strip, segment.copy): lane for lane in section.lanes for segment in lane.segments}
    assert lying["flounce", 1].layer == "fold"
    assert lying["flounce", 1].depth == cm(50)  # opened
    assert {lying["yoke", 1].layer, lying["yoke", 2].layer} == {"upper", "under"}
    # On the folded table the tape lies at half the depth, and 40 cm further on the one for both yokes.
    assert [(mark.distance, mark.depth, mark.on_fold) for mark in table_marks(section)] == [
        (cm(25), cm(25), True),
        (cm(65), cm(40), False),
    ]


def test_an_odd_strip_on_folded_cloth_takes_no_more_length_than_on_flat_cloth() -> None:
    """Common practice, no source: the fold saves the half that a lone lane beside it would waste."""
    strips = (Strip("flounce", cm(300), cm(60), 1), Strip("yoke", cm(300), cm(40), 2))
    folded = planned(Bolt(cm(140), cm(1), folded=True), *strips)
    assert folded.bolt_length == planned(Bolt(cm(140), cm(1)), *strips).bolt_length == cm(300)


@pytest.mark.parametrize(
    ("one_way", "folded", "lengths"), [(False, False, 2), (False, True, 2), (True, False, 3), (True, True, 3)]
)
def test_a_bolt_has_two_selvedges_so_three_strips_on_them_take_two_lengths(
    one_way: bool, folded: bool, lengths: int
) -> None:
    """By arithmetic: 3 strips on 2 selvedges are 2 lengths. On one-way cloth only those at one selvedge lie its way."""
    strip = Strip("flounce", cm(300), cm(20), 3, selvedge=True)
    plan = planned(Bolt(cm(140), cm(1), folded, one_way), strip)
    assert plan.bolt_length == lengths * cm(300)
    # Anywhere on the cloth all three lie side by side.
    assert planned(Bolt(cm(140), cm(1), folded, one_way), strip._replace(selvedge=False)).bolt_length == cm(300)
