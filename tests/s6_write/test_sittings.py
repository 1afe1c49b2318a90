"""Where the guide says that the work may be put away."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.technique import Performed
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import plan, prove
from furbelow.s5_buy.hours import in_fives
from furbelow.s6_write.guide.compose import compose

from tests.demos.demos import NAMES, order, spec


def _stops(name: str, room: Workroom) -> tuple[list[str], list[int], tuple[Performed, ...]]:
    proved = prove(order(name, next(iter(spec(name).sizes)), room)).value
    assert proved is not None
    planned = plan(proved).value
    assert planned is not None
    guide = compose(planned.rehearsal, planned.cutting, planned.shopping, "someone")
    told = {operation.key: operation.stop for part in guide.parts for operation in part.operations}
    performed = planned.rehearsal.run.performed
    stops = [told.get(f"step-{done.step.written.index + 1}", "") for done in performed]
    return stops, [in_fives(each) for each in planned.shopping.minutes], tuple(performed)  # as they are told


def _loose(done: Performed) -> bool:
    """Gathers hang on pins after this step."""
    after = done.after
    return any(edge.gathered and not edge.held and key not in after.layered for key, edge in after.edges.items())


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("hours", [1, 2])
def test_no_sitting_is_longer_than_asked_unless_the_work_can_not_be_left(name: str, hours: int) -> None:
    stops, minutes, performed = _stops(name, Workroom(sitting=Fraction(hours * 3600)))
    sittings, spent, steps, begun = [], 0, 0, 0
    for stop, taken in zip(stops, minutes, strict=True):
        spent, steps = spent + taken, steps + 1
        if stop:
            sittings.append((spent, begun, begun + steps))
            spent, steps, begun = 0, 0, begun + steps
    assert sittings or sum(minutes) <= hours * 60
    # Gathers are sewn in the sitting in which they are drawn up, so a sitting may run over with those steps alone.
    for length, first, end in sittings:
        assert length <= hours * 60 or all(map(_loose, performed[first : end - 1])), performed[
            first
        ].step.written.technique


@pytest.mark.parametrize("name", NAMES)
def test_the_work_is_never_put_away_with_loose_gathers_or_an_open_casing(name: str) -> None:
    stops, _, performed = _stops(name, Workroom(sitting=Fraction(1800)))
    for stop, done in zip(stops, performed, strict=True):
        assert not (stop and _loose(done))


def test_sittings_are_counted() -> None:
    stops, _, _ = _stops("larkspur", Workroom(sitting=Fraction(7200)))
    named = [stop.partition(".")[0] for stop in stops if stop]
    assert named == [f"End of sitting {number}" for number in range(1, len(named) + 1)]
