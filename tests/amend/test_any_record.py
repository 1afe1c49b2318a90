"""Whatever a record says, it is taken up or refused in words: no crash, and no guide from what does not hold."""

from __future__ import annotations

from fractions import Fraction

from furbelow.amend.amend import amend
from furbelow.amend.fresh_guide import fresh_guide
from furbelow.amend.read_record import Measured, read_record
from furbelow.amend.report import as_data, as_text
from furbelow.diagnose.fault import Span
from furbelow.s6_write.guide.guide import Guide
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.demos.demos import order

HERE = Span("record.yaml", 1, 1, 1, 2)
PIECES = ("upper", "flounce", "lining", "waistband")
EDGES = ("flounce.top", "upper.top", "net_top", "skirt_top", "lining.top")


@st.composite
def measurements(draw: st.DrawFn) -> Measured:
    kind = draw(st.sampled_from(("edge", "ring", "cut")))
    name = draw(st.sampled_from(EDGES if kind == "edge" else PIECES))
    size = draw(st.sampled_from(("length", "depth"))) if kind == "cut" else "length"
    usual = {"flounce": 6000, "upper": 3000, "lining": 1560, "waistband": 1560, "flounce.top": 3000}.get(name, 1560)
    usual = usual if size == "length" else {"flounce": 365, "upper": 170, "lining": 495, "waistband": 80}[name]
    value = draw(st.one_of(st.integers(usual - 60, usual + 60), st.integers(1, 20_000)))
    copy = draw(st.sampled_from((None, None, 1, 2)))
    return Measured(
        kind, name, size, Fraction(value), copy, draw(st.sampled_from(("", "", "ease", "trim", "let out"))), HERE
    )


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.lists(measurements(), min_size=1, max_size=3))
def test_any_measurements_are_taken_up_soundly_or_refused(rows: list[Measured]) -> None:
    staged = amend(order("larkspur", "M"), rows)
    if staged.value is None:
        assert staged.faults
        assert all(fault.is_error and fault.headline for fault in staged.faults)
        return
    found = staged.value
    for planned in (found.now, found.together, *found.copies.values()):
        assert not any(fault.is_error for proof in planned.rehearsal.proofs for fault in proof.faults)
    assert as_text(found)
    assert as_data(found)["measured"]
    guide: Guide = fresh_guide(found)
    places = [operation.place(step) for operation in guide.operations for step in operation.steps]
    assert len(places) == len(set(places))
    keys = [operation.key for part in guide.parts for operation in part.operations]
    assert len(keys) == len(set(keys))


@settings(max_examples=200, deadline=None)
@given(st.one_of(st.binary(max_size=80), st.text(max_size=80).map(str.encode)))
def test_any_bytes_are_read_or_refused(after: bytes) -> None:
    staged = read_record(("record.yaml", b"record: 1\nmeasured:\n  - {ring: upper, length: " + after))
    assert staged.value is not None or staged.faults
