"""Pleats and tucks against the handbooks: worked figures of 1911 to 1921, through reading, solving and rehearsal."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.technique import facts_of
from furbelow.techniques.pleats import FULL, Laid, PleatKind, pleat_depth
from furbelow.techniques.tucks import fold_lines

from tests.techniques.small import INCH, sound

YOKE = "yoke: {from: net, cut length: LINE, depth: 4 in}\nskirt: {from: net, cut length: CLOTH, depth: 20 in}"


def pleated(cloth: str, line: str, kind: str, count: int) -> Fraction:
    """Depth in inches of the pleats that a spec gets."""
    worked = sound(
        YOKE.replace("LINE", line).replace("CLOTH", cloth),
        f"- pleats: {{edge: skirt.top, to: yoke.bottom, kind: {kind}, count: {count}}}\n- attach: {{edge: skirt.top, to: yoke.bottom}}",
        units="inches",
    )
    depth = facts_of(worked.performed[0], Laid).depth
    assert isinstance(depth, Fraction)
    return depth / INCH


@pytest.mark.parametrize(("line", "taken"), [("14 in", 30), ("20 in", 24)])
def test_half_a_skirt_of_44_in_leaves_30_in_at_the_waist_and_24_at_the_hip(line: str, taken: int) -> None:
    """A Complete Course in Dressmaking, vol. 5, 1921, p. 63: 44 - 14 = 30 at the waist, 44 - 20 = 24 at the hip."""
    count = 12
    assert 2 * count * pleated("44 in", line, "knife", count) == taken


def test_a_side_plait_takes_three_times_its_length() -> None:
    """Butterick, The New Dressmaker, 1921, p. 146: pleats that just meet take 3 x the length of the line."""
    count = 10
    depth = pleated("60 in", "20 in", "knife", count)
    # Each pleat shows 2 in and is 2 in deep: its fold reaches the next one.
    assert depth == Fraction(20, count)
    assert Fraction(60, 20) == FULL


def test_a_box_ruche_takes_a_little_less_than_three_times() -> None:
    """Butterick, The New Dressmaker, 1921, p. 146: boxes that do not quite meet behind take less than 3 x."""
    shows, count = Fraction(2), 10
    depth = pleat_depth(Fraction(58), Fraction(20), PleatKind.BOX, count)
    assert 2 * depth < shows
    assert pleat_depth(Fraction(60), Fraction(20), PleatKind.BOX, count) * 2 == shows


def test_a_tuck_takes_twice_its_depth() -> None:
    """Home and School Sewing, ch. XXI: a tuck needs twice its depth of cloth."""
    flounce = "flounce: {from: net, length: 60 in, depth: 12 in}"
    for depth, count in (("1/2 in", 3), ("1/4 in", 5), ("1 in", 1)):
        worked = sound(
            flounce,
            f"- tucks: {{edge: flounce.bottom, depth: {depth}, count: {count}, space: 1/4 in, from edge: 1 in}}",
            units="inches",
        )
        assert worked.solved.pieces["flounce"].cut_depth / INCH == 12 + 2 * count * Fraction(depth.removesuffix(" in"))


def test_half_inch_tucks_half_an_inch_apart_meet_the_stitching_below() -> None:
    """Hand Sewing Lessons, Model 6: 1/2 in tucks with 1/2 in between stitchings; each fold meets the stitching below."""
    half = Fraction(1, 2)
    lines = fold_lines(half, 3, Fraction(0), Fraction(1))
    stitching = [line - half - 2 * half * below for below, line in enumerate(lines)]
    assert [above - below for below, above in zip(stitching, stitching[1:], strict=False)] == [half, half]
    folds = [line - half for line in stitching]
    assert folds[1:] == stitching[:-1]  # overlap 0


def test_the_1907_petticoat_gathers_twice_as_much_in_all() -> None:
    """A petticoat of 1907: flounce 1 1/3 x the skirt, lower flounce 1 1/2 x that: 2.0 in all."""
    worked = sound(
        "skirt: {from: net, cut length: 90 in, depth: 20 in}\nflounce: {from: net, cut length: 120 in, depth: 10 in}\n"
        "lower: {from: net, cut length: 180 in, depth: 5 in}",
        """- gather: {edge: flounce.top, to: skirt.bottom}
        - attach: {edge: flounce.top, to: skirt.bottom}
        - gather: {edge: lower.top, to: flounce.bottom}
        - attach: {edge: lower.top, to: flounce.bottom}""",
        units="inches",
    )
    ratios = worked.bench.edge("flounce.top").ratio, worked.bench.edge("lower.top").ratio
    assert ratios == (Fraction(4, 3), Fraction(3, 2))
    assert ratios[0] * ratios[1] == 2


@pytest.mark.parametrize(("weight", "times"), [("30 g/m2", 3), ("100 g/m2", 2)])
def test_chiffon_ruches_three_times_and_taffeta_twice(weight: str, times: int) -> None:
    """Butterick, The New Dressmaker, 1921, p. 141: chiffon 3 x, taffeta 2 x; the weights are a house rule."""
    cloth = f"  silk: {{kind: cloth, fibre: silk, width: 54 in, weight: {weight}, ravels: no}}\n"
    worked = sound(
        f"skirt: {{from: net, cut length: 40 in, depth: 20 in}}\nstrip: {{from: silk, cut length: {40 * times} in, depth: 3 in}}",
        "- ruche: {strip: strip, on: skirt, above hem: 4 in}",
        units="inches",
        materials=cloth,
    )
    assert worked.bench.edge("strip.top").ratio == times
