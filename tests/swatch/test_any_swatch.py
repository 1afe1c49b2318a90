"""Whatever a file of swatches says, it is read or refused in words."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Span
from furbelow.swatch.read_swatch import Strip, read_swatches
from furbelow.swatch.report import as_data, as_text, workroom_line
from furbelow.swatch.take_up import setting_for, take_up
from hypothesis import given, settings
from hypothesis import strategies as st


@settings(max_examples=200, deadline=None)
@given(st.one_of(st.binary(max_size=80), st.text(max_size=80).map(str.encode)))
def test_any_bytes_are_read_or_refused(after: bytes) -> None:
    staged = read_swatches(
        ("swatch.yaml", b"swatch: 1\ncloths:\n  net:\n    - {mark: 6, stitch: 3 mm, flat: 50 cm, " + after)
    )
    assert staged.value is not None or staged.faults


@st.composite
def strips(draw: st.DrawFn) -> Strip:
    flat = draw(st.fractions(1, 10_000, max_denominator=100))
    gathered = flat * draw(st.fractions(Fraction(1, 100), Fraction(99, 100), max_denominator=100))
    mark = draw(st.fractions(Fraction(1, 10), 40, max_denominator=10))
    stitch = draw(st.fractions(Fraction(1, 10), 10, max_denominator=10))
    return Strip(mark, Fraction(draw(st.integers(1, 12))), stitch, flat, gathered, Span.at_start("swatch.yaml"))


@settings(max_examples=200, deadline=None)
@given(st.lists(strips(), min_size=1, max_size=12), st.fractions(1, 5, max_denominator=20))
def test_any_strips_give_a_line_that_can_be_told_or_a_fault(rows: list[Strip], ratio: Fraction) -> None:
    line = take_up("net", rows)
    if line.value is None:
        assert [fault.code for fault in line.faults] == ["FB722"]
        return
    found = setting_for("net", line.value, ratio, Fraction(1), Fraction(3))
    assert (found.value is None) == bool(found.faults)
    assert list(as_text("net", line.value, Fraction(1), Fraction(3), found.value))
    assert as_data(line.value, Fraction(1), Fraction(3), found.value)["strips"] == len(rows)
    assert workroom_line(line.value, Fraction(3)).startswith("attachment takes: {")
