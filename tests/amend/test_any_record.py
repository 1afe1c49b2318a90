"""Whatever a record says, it is taken up or refused in words: no crash, and no guide from what does not hold."""

from __future__ import annotations

from fractions import Fraction
from functools import cache

from furbelow.amend.amend import amend
from furbelow.amend.amended import BEFORE_CUTTING, Amended
from furbelow.amend.fresh_guide import fresh_guide
from furbelow.amend.read_record import Measured, read_record
from furbelow.amend.report import as_data, as_text
from furbelow.diagnose.fault import Span
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.tags import copy_letter
from furbelow.order.chain import Planned, guide_of
from furbelow.order.order import Order
from furbelow.s6_write.guide.guide import Guide, GuideStep
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.amend.begun import meant, measurable
from tests.demos.demos import SPECS, order, spec


@cache
def begun(name: str) -> tuple[Order, Planned]:
    made = order(name, next(iter(spec(name).sizes)))
    garment = meant(made)
    return made, garment


@st.composite
def records(draw: st.DrawFn) -> tuple[str, list[Measured]]:
    """What a garment has that can be measured: as it is wanted, a little off or far off, of all copies or of one."""
    name = draw(st.sampled_from(sorted(path.stem for path in SPECS.glob("*.yaml"))))
    known = list(measurable(begun(name)[1]))
    rows: list[Measured] = []
    for kind, what, size, length in draw(st.lists(st.sampled_from(known), min_size=1, max_size=3, unique=True)):
        thousandths = draw(st.sampled_from((1000, *range(980, 1021), 900, 950, 1050, 1100, 10, 5000)))
        value = Fraction(max(round(length * thousandths / 1000), 1))
        copy = draw(st.sampled_from((None, None, 1, 2, 6)))
        do = draw(st.sampled_from(("", "", "ease", "trim", "let out"))) if kind == "edge" else ""
        place = Span("record.yaml", len(rows) + 1, 1, len(rows) + 1, 2)
        rows.append(Measured(kind, what, size, value, copy, do, place))
    return name, rows


def both_lengths_are_told(found: Amended, guide: Guide) -> None:
    """Where two edges no longer have one length, the operation that sews them says how long each is."""
    if found.start == BEFORE_CUTTING:
        return
    say = Phrasing(found.planned.rehearsal.solved, found.order.room)
    for copy, one in found.shared:
        key = found.now.rehearsal.run.performed[one.at].key
        told = [each for each in guide.operations if each.key.partition("-copy-")[0] == key]
        if copy is not None:
            told = [each for each in told if any(copy_letter(copy) in step.boxes for step in each.steps)] or told
        lengths = (one.longer.set_length, one.shorter.set_length) if one.alike else (one.by,)
        assert all(any(say.length(length) in each.all_of_it for each in told) for length in lengths)


def each_copy_is_told_once(found: Amended, guide: Guide) -> None:
    """Of each operation: the boxes of its tellings are those that it has where all copies are alike, and no box twice."""
    alike = {operation.key: operation for operation in guide_of(found.together, "", for_some=True).operations}
    told: dict[str, list[GuideStep]] = {}
    for operation in guide.operations:
        told.setdefault(operation.key.partition("-copy-")[0], []).extend(operation.steps)
    for key, steps in told.items():
        if key not in alike:
            continue
        for step in alike[key].steps:
            boxes = [box for other in steps if other.number == step.number for box in other.boxes]
            assert len(boxes) == len(set(boxes))
            assert sorted(boxes) == sorted(step.boxes)


@settings(max_examples=100, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(records())
def test_any_measurements_are_taken_up_soundly_or_refused(drawn: tuple[str, list[Measured]]) -> None:
    name, rows = drawn
    staged = amend(begun(name)[0], rows)
    if staged.value is None:
        errors = [fault for fault in staged.faults if fault.is_error]
        assert all(fault.headline and fault.help for fault in errors)
        told = [(fault.code, fault.headline, fault.primary) for fault in errors]
        assert len(told) == len(set(told)) > 0
        return
    found = staged.value
    for now in (found.now, found.together, *found.copies.values()):
        assert not any(fault.is_error for proof in now.rehearsal.proofs for fault in proof.faults)
    assert as_text(found)
    assert as_data(found)["measured"]
    guide: Guide = fresh_guide(found)
    places = [operation.place(step) for operation in guide.operations for step in operation.steps]
    assert len(places) == len(set(places))
    keys = [operation.key for part in guide.parts for operation in part.operations]
    assert len(keys) == len(set(keys))
    each_copy_is_told_once(found, guide)
    both_lengths_are_told(found, guide)
    if found.start != BEFORE_CUTTING:
        work = [letter for sitting in guide.sittings for letter, _ in sitting.work]
        assert work == [operation.letter for operation in guide.operations]


@settings(max_examples=200, deadline=None)
@given(st.one_of(st.binary(max_size=80), st.text(max_size=80).map(str.encode)))
def test_any_bytes_are_read_or_refused(after: bytes) -> None:
    staged = read_record(("record.yaml", b"record: 1\nmeasured:\n  - {ring: upper, length: " + after))
    assert staged.value is not None or staged.faults
