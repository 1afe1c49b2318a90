"""The line through test strips, against numpy, against known truth, and against a handbook's arithmetic."""

from __future__ import annotations

from fractions import Fraction
from math import gamma, pi, sqrt
from pathlib import Path
from random import Random

import numpy as np
import pytest
from furbelow.diagnose.fault import Span
from furbelow.swatch.read_swatch import Strip, read_swatches
from furbelow.swatch.take_up import _T95, TakeUp, setting_for, take_up

SWATCHES = Path(__file__).parents[2] / "specs" / "swatches" / "pleating.yaml"


def strip(mark: float, gathered: float, flat: float = 500, stitch: float = 3, every: int = 1) -> Strip:
    at, each, by, laid, drawn = (Fraction(str(amount)) for amount in (mark, every, stitch, flat, gathered))
    return Strip(at, each, by, laid, drawn, Span.at_start("swatch.yaml"))


def line(*strips: Strip) -> TakeUp:
    staged = take_up("net", strips)
    assert staged.value is not None, staged.faults
    return staged.value


def strip_of(mark: int, base: float, slope: float, stitch: float = 3, every: int = 1) -> Strip:
    """A strip just as long as a pleat of base + slope x mark leaves it."""
    ratio = 1 + (base + slope * mark) / (stitch * every)
    return strip(mark, float(Fraction(500) / Fraction(str(ratio))), stitch=stitch, every=every)


def demo(cloth: str) -> tuple[Strip, ...]:
    staged = read_swatches(SWATCHES)
    assert staged.faults == ()
    assert staged.value is not None
    return staged.value.gathered[cloth]


def test_strips_without_error_give_the_line_that_made_them() -> None:
    found = line(*(strip_of(mark, 0.25, 0.5) for mark in (2, 4, 6, 8)), strip_of(6, 0.25, 0.5, stitch=2, every=6))
    assert float(found.base) == pytest.approx(0.25, abs=1e-9)
    assert float(found.slope) == pytest.approx(0.5, abs=1e-9)
    assert found.scatter == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize("cloth", ["net", "lawn"])
def test_the_line_is_that_of_numpy(cloth: str) -> None:
    strips = demo(cloth)
    marks = np.array([float(each.mark) for each in strips])
    taken = np.array([(float(each.flat / each.gathered) - 1) * float(each.every * each.stitch) for each in strips])
    (slope, base), (squares,) = np.polyfit(marks, taken, 1, full=True)[:2]
    found = line(*strips)
    assert float(found.slope) == pytest.approx(slope)
    assert float(found.base) == pytest.approx(base)
    assert found.scatter == pytest.approx(sqrt(squares / (len(strips) - 2)))


def test_the_interval_is_the_one_of_the_matrix_formula() -> None:
    """t s sqrt(1 + x' (X'X)^-1 x): the same interval the other way round. Source: Draper and Smith, 1998."""
    strips = demo("net")
    found = line(*strips)
    rows = np.array([[1.0, float(each.mark)] for each in strips])
    for mark in (2, 5, 8):
        x = np.array([1.0, mark])
        wide = 2.365 * found.scatter * sqrt(1 + x @ np.linalg.inv(rows.T @ rows) @ x)  # type: ignore[operator]
        off = found.off_by(Fraction(mark))
        assert off is not None
        assert float(off) == pytest.approx(wide, rel=1e-4)


def test_the_quantiles_are_those_of_students_t() -> None:
    """The density of Student's t, integrated by the trapezium rule, leaves 2.5 % above each value of the table."""
    for freedom, quantile in enumerate(_T95, 1):
        scale = gamma((freedom + 1) / 2) / (sqrt(freedom * pi) * gamma(freedom / 2))
        x = np.linspace(0, quantile, 200_001)
        density = scale * (1 + x**2 / freedom) ** (-(freedom + 1) / 2)
        inside = 2 * np.sum((density[1:] + density[:-1]) / 2 * np.diff(x))
        assert inside == pytest.approx(0.95, abs=6e-5), freedom


def test_19_of_20_further_strips_fall_inside_the_interval() -> None:
    chance, inside, all_ = Random(7), 0, 2000
    for _ in range(all_):

        def gathered(mark: int) -> Strip:
            return strip(mark, 500 / (1 + (0.5 * mark + chance.gauss(0, 0.06)) / 3))

        found = line(*(gathered(mark) for mark in (2, 4, 5, 6, 8)))
        _, shortest, longest = found.length_of(Fraction(500), Fraction(6), Fraction(3))
        inside += shortest <= gathered(6).gathered <= longest
    assert 0.935 < inside / all_ < 0.965


def test_pleats_after_six_stitches_of_ten_to_the_inch_stand_six_tenths_apart() -> None:
    """A lever at 1, 6 or 12 pleats after so many stitches; 6 at 10 to the inch are 0.6 in.

    Source: printed manual of a domestic sewing machine with a ruffling attachment, 1960s.
    """
    assert strip(6, 400, stitch=2.54, every=6).spacing == Fraction("0.6") * Fraction("25.4")
    assert [strip(6, 400, stitch=2.54, every=every).spacing / Fraction("2.54") for every in (1, 6, 12)] == [1, 6, 12]


def test_the_demo_agrees_with_the_rule_that_mark_6_takes_cloth_to_half() -> None:
    """Every stitch at mark 6 takes cloth to about half: common practice, no source."""
    found = setting_for("net", line(*demo("net")), Fraction(2), Fraction(1), Fraction(3)).value
    assert found is not None
    assert found.mark == 6
    assert found.ratio == pytest.approx(2, abs=0.05)


@pytest.mark.parametrize("ratio", ["1.35", "1.5", "1.75", "2.2"])
def test_the_setting_is_the_half_mark_nearest_to_the_ratio(ratio: str) -> None:
    found, spacing = line(*demo("net")), Fraction(3)
    setting = setting_for("net", found, Fraction(ratio), Fraction(1), spacing).value
    assert setting is not None
    halves = [Fraction(at, 2) for at in range(4, 17)]
    off = {mark: abs(found.of_pleat(mark) - (Fraction(ratio) - 1) * spacing) for mark in halves}
    assert off[setting.mark] == min(off.values())


def test_a_mark_that_nobody_tried_is_refused_with_its_numbers() -> None:
    (fault,) = setting_for("net", line(*demo("net")), Fraction(4), Fraction(1), Fraction(3)).faults
    assert fault.code == "FB723"
    assert "would need mark 17.9, and `net` was tried from mark 2 to 8" in fault.headline


def test_a_longer_stitch_needs_a_deeper_mark_for_the_same_fullness() -> None:
    found = line(*demo("net"))
    marks = [found.mark_for(Fraction(3, 2), Fraction(stitch)) for stitch in (2, 3, 4)]
    assert marks == sorted(marks)
    assert len(set(marks)) == 3


def test_two_strips_tell_a_line_and_no_certainty() -> None:
    found = line(strip(4, 300), strip(6, 250))
    assert found.scatter is None
    expected, shortest, longest = found.length_of(Fraction(500), Fraction(6), Fraction(3))
    assert expected == shortest == longest == 250


@pytest.mark.parametrize(
    ("strips", "headline"),
    [
        ((strip(6, 250), strip(6, 255)), "the strips of `net` are all at one mark, and a line needs two"),
        (
            (strip(4, 250), strip(6, 300)),
            "at deeper marks the strips of `net` lose no more cloth: -0.5 mm a pleat and mark",
        ),
    ],
)
def test_strips_that_show_no_take_up_are_refused(strips: tuple[Strip, ...], headline: str) -> None:
    (fault,) = take_up("net", strips).faults
    assert (fault.code, fault.headline) == ("FB722", headline)


@pytest.mark.parametrize(
    ("row", "code", "said"),
    [
        (
            "{mark: 6, stitch: 3 mm, flat: 25 cm, gathered: 50 cm}",
            "FB721",
            "a strip of 25 cm came out at 50 cm, no shorter",
        ),
        (
            "{mark: 6 mm, stitch: 3 mm, flat: 50 cm, gathered: 25 cm}",
            "FB121",
            "`mark` is 6 mm, which is a length; a plain number is wanted",
        ),
        (
            "{mark: 6, stitch: 3, flat: 50 cm, gathered: 25 cm}",
            "FB121",
            "`stitch` is 3, which is a number; a length such as 50 cm is wanted",
        ),
        ("{mark: 0, stitch: 3 mm, flat: 50 cm, gathered: 25 cm}", "FB122", "`mark` is 0, and it must be more than 0"),
        ("{mark: 6, stitch: 3 mm, flat: 50 c, gathered: 25 cm}", "FB120", "`c` is no unit"),
        ("{mark: 6, stitch: 3 mm, flat: 50 cm}", "FB131", None),
        ("{mark: 6, stitch: 3 mm, flat: 50 cm, gathered: 25 cm, dept: 3}", "FB130", None),
    ],
)
def test_each_fault_of_a_strip_is_told_with_its_place(row: str, code: str, said: str | None) -> None:
    staged = read_swatches(("swatch.yaml", f"swatch: 1\ncloths:\n  net:\n    - {row}\n".encode()))
    assert staged.value is None
    (fault,) = staged.faults
    assert fault.code == code
    assert fault.primary is not None
    assert fault.primary.span.start_line == 4
    if said:
        assert fault.headline == said
