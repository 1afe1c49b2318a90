"""The tolerance rule at its bounds, and the corrections for each metre."""

from __future__ import annotations

import json
from fractions import Fraction
from pathlib import Path

import pytest
from furbelow.amend.verdict import Remedy, Verdict, verdict
from hypothesis import given
from hypothesis import strategies as st

WANTED = Fraction(4000)


def _verdict(measured: str, do: str = "") -> Verdict | None:
    return verdict(WANTED, Fraction(measured) * 10, Fraction(0), do)


@pytest.mark.parametrize(
    ("measured", "remedy"),
    [
        ("400", Remedy.NONE),
        ("399.9", Remedy.EASE),
        ("385", Remedy.EASE),
        ("384.9", Remedy.CHOOSE),
        ("383", Remedy.CHOOSE),
        ("380", Remedy.CHOOSE),
        ("379.9", Remedy.LET_OUT),
        ("300", Remedy.LET_OUT),
        ("400.1", Remedy.CLOSER),
        ("450", Remedy.CLOSER),
    ],
)
def test_15_cm_in_4_m_is_eased_and_over_20_cm_let_out(measured: str, remedy: Remedy) -> None:
    """Common practice, no source."""
    found = _verdict(measured)
    assert found is not None
    assert found.remedy is remedy


def test_the_correction_is_told_for_each_metre() -> None:
    found = _verdict("383")
    assert found is not None
    assert found.share == Fraction(17, 400)
    assert found.in_each_metre == Fraction("42.5")  # 17 cm in 4 m are 4.25 cm in each


def test_a_choice_of_the_maker_holds_within_the_tolerance_and_no_further() -> None:
    assert _verdict("383", "ease") == Verdict(Remedy.EASE, WANTED, Fraction(3830))
    assert _verdict("383", "let out") == Verdict(Remedy.LET_OUT, WANTED, Fraction(3830))
    assert _verdict("390", "trim") == Verdict(Remedy.TRIM, WANTED, Fraction(3900))
    assert _verdict("379", "ease") is None
    assert _verdict("379", "trim") is None
    assert _verdict("401", "ease") is None


def test_a_difference_within_the_rounding_is_none() -> None:
    found = verdict(WANTED, Fraction(3995), Fraction(5))
    assert found is not None
    assert found.remedy is Remedy.NONE


@given(st.fractions(1, 10_000), st.fractions(1, 10_000))
def test_the_correction_brings_the_edge_to_its_length(wanted: Fraction, measured: Fraction) -> None:
    found = verdict(wanted, measured)
    assert found is not None
    assert found.measured + found.gap == wanted
    assert found.in_each_metre * wanted / 1000 == abs(found.gap)


def test_programs_are_told_every_remedy() -> None:
    """The schema of the answers has each of them: one more would be refused by who reads them by it."""
    schema = json.loads((Path(__file__).parents[2] / "schemas" / "answer.schema.json").read_text(encoding="utf-8"))
    told = json.dumps(schema)
    assert json.dumps([remedy.value for remedy in Remedy]) in told
