"""How stiff a cloth is, by a strip over the edge of a table."""

from __future__ import annotations

from fractions import Fraction
from math import pi

import pytest
from furbelow.diagnose.fault import Span
from furbelow.swatch.overhang import Overhang, bending_length, fallen, stiffness
from furbelow.swatch.read_swatch import read_swatches
from furbelow.swatch.report import bending_line, stiffness_text

HERE = Span.at_start("swatch.yaml")


def strip(overhang: float, drop: float) -> Overhang:
    return Overhang(Fraction(overhang), Fraction(drop), HERE)


def hanging(overhang: float) -> tuple[float, float]:
    """How far a strip so many bending lengths long reaches out and down."""
    low, high = 0.0, pi / 2
    for _ in range(60):
        tip = (low + high) / 2
        low, high = (tip, high) if fallen(tip)[0] < overhang else (low, tip)
    return fallen(low)[1:]


@pytest.mark.parametrize("length", [12.0, 30.0, 42.0, 80.0])
@pytest.mark.parametrize("overhang", [1.2, 2.0, 3.0])
def test_the_bending_length_is_found_from_what_a_ruler_reads(length: float, overhang: float) -> None:
    _, down = hanging(overhang)
    found = bending_length(strip(overhang * length, down * length)).value
    assert found is not None
    assert float(found) == pytest.approx(length, rel=0.005)


@pytest.mark.parametrize(
    ("overhang", "drop", "said"),
    [
        (50, 50, "5 cm of a strip can't hang 5 cm down"),
        (50, 70, "5 cm of a strip can't hang 7 cm down"),
        (50, 2, "5 cm of a strip hangs hardly down: 2 mm"),
        (200, 198, "20 cm of a strip hangs almost straight down: 19.8 cm"),
    ],
)
def test_a_strip_that_does_not_tell_is_refused_with_its_numbers(overhang: float, drop: float, said: str) -> None:
    staged = bending_length(strip(overhang, drop))
    assert staged.value is None
    (fault,) = staged.faults
    assert (fault.code, fault.headline) == ("FB724", said)


def test_strips_of_a_cloth_say_their_mean_and_how_far_they_differ() -> None:
    _, down = hanging(2)
    found = stiffness([strip(60, down * 30), strip(80, down * 40)]).value
    assert found is not None
    assert float(found.mean) == pytest.approx(35, abs=0.2)
    assert float(found.least) == pytest.approx(30, abs=0.2)
    assert float(found.most) == pytest.approx(40, abs=0.2)
    assert bending_line(found) == "bending length: 35 mm"
    told = "\n".join(stiffness_text("net", [strip(60, down * 30)], found))
    assert "for the spec, under the cloth: bending length: 35 mm" in told
    assert "the right side up and down" in told


def test_overhangs_are_read_beside_gathered_strips_or_without_them() -> None:
    read = read_swatches(("swatch.yaml", b"swatch: 1\nstiffness:\n  net:\n    - {overhang: 84 mm, drop: 2 in}\n")).value
    assert read is not None
    assert not read.gathered
    assert read.hung["net"][0][:2] == (84, Fraction("50.8"))


@pytest.mark.parametrize(
    ("row", "code"),
    [
        ("{overhang: 84 mm}", "FB131"),
        ("{overhang: 84, drop: 54 mm}", "FB121"),
        ("{overhang: 84 mm, drop: 0 mm}", "FB122"),
        ("{overhang: 84 mm, drop: 54 mm, reach: 3 cm}", "FB130"),
    ],
)
def test_a_row_that_is_no_overhang_is_refused_where_it_stands(row: str, code: str) -> None:
    staged = read_swatches(("swatch.yaml", f"swatch: 1\nstiffness:\n  net:\n    - {row}\n".encode()))
    assert [fault.code for fault in staged.faults] == [code]
