"""What the garment as it will be has to be warned of, and was not as it was meant, is told; nothing else is."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.amend.amend import amend
from furbelow.amend.amended import Fix
from furbelow.amend.report import changes
from furbelow.amend.verdict import Remedy
from furbelow.diagnose.fault import Severity
from furbelow.garment.phrasing import Phrasing
from furbelow.measure.quantity import Quantity, parse_quantity
from furbelow.order.chain import planned

from tests.amend.begun import PIPED, PIPED_STEPS, meant, measurable, measured
from tests.demos.demos import SPECS, order, spec
from tests.small_guide import small_order


def test_a_yoke_that_came_out_loose_is_warned_of() -> None:
    staged = amend(order("primrose", "A"), [measured("ring", "yoke.top", "length", Fraction(700))])
    assert staged.value is not None
    assert [(fault.code, fault.severity) for fault in staged.faults] == [("FB345", Severity.WARNING)]
    assert any(label.span.file == "record.yaml" for label in staged.faults[0].others)


@pytest.mark.parametrize("name", sorted(path.stem for path in SPECS.glob("*.yaml")))
def test_what_is_as_it_was_meant_warns_of_nothing(name: str) -> None:
    made = order(name, next(iter(spec(name).sizes)))
    garment = meant(made)
    assert not amend(made, [measured(*row) for row in measurable(garment) if row[0] != "edge"]).faults


@pytest.mark.parametrize("name", sorted(path.stem for path in SPECS.glob("*.yaml")))
def test_what_measures_as_the_guide_tells_it_changes_nothing(name: str) -> None:
    """Each length rounded as it is told, all of them in one record."""
    made = order(name, next(iter(spec(name).sizes)))
    garment = meant(made)
    say = Phrasing(garment.rehearsal.solved, made.room)
    rows = []
    for kind, what, size, length in measurable(garment):
        told = parse_quantity(say.length(length))
        assert isinstance(told, Quantity)
        rows.append(measured(kind, what, size, told.value))
    staged = amend(made, rows)
    assert staged.value is not None, staged.faults
    assert not staged.faults
    assert all(comparison.alike for _, comparison in changes(staged.value))
    assert not staged.value.shared
    for finding in staged.value.findings:
        assert finding.verdict is None or finding.verdict.remedy is Remedy.NONE
        assert finding.fix in (Fix.GO_ON, Fix.SEWN)


@pytest.mark.parametrize("off", [0, 2])
def test_what_the_design_warns_of_is_no_news(off: int) -> None:
    """With another number too: more cloth than lies smooth is eased in, a little less of it."""
    pieces = PIPED.replace("skirt: {from: lawn, length: yoke.length", "skirt: {from: lawn, length: yoke.length + 6 cm")
    steps = PIPED_STEPS.replace("- attach:", "- ease in: {edge: skirt.top, to: yoke.bottom}\n- attach:")
    made = small_order(pieces, steps)
    meant = planned(made)
    assert meant.value is not None
    assert "FB373" in [fault.code for fault in meant.faults]
    ring = next(row for row in measurable(meant.value) if row[:2] == ("ring", "skirt"))
    staged = amend(made, [measured(*ring[:3], ring[3] - off)])
    assert staged.value is not None
    assert not staged.faults
