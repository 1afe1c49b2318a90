"""Why the work takes so long: the time of each step is explained, and all of them together are the time of the guide."""

from __future__ import annotations

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.explained import explained
from furbelow.verbs.command import run

from tests.demos.demos import SPECS, order


def test_the_time_of_all_steps_is_the_time_of_the_guide() -> None:
    found = explained(order("lupin", "M", Workroom()), "time").value
    assert found is not None
    values = found.values
    total = values["time"]
    assert total.value.value == sum(values[name].value.value for name in total.inputs)
    assert {"cutting.time", "last_look.time", "step 3.time"} <= set(total.inputs)
    # Two copies of 5.42 m, sewn along and topstitched: 4 seams, 21.68 m, at 1.5 m a minute 14 minutes.
    sewing = values["step 3.sewing"]
    assert sewing.because is not None
    assert (sewing.because.counts["seams"], sewing.because.counts["metres"]) == (4, 22)
    assert sewing.value.value == 14 * 60


def test_a_time_is_told_with_what_takes_it(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["why", str(SPECS / "lupin.yaml"), "step 4.time", "--size", "M"]) == 0
    told = capsys.readouterr().out
    assert "round_near(" in told
    assert "bundles of thread ends" in told
