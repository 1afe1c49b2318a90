"""Layers that end at different heights: where each ends, and what is told of one that hangs out."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.s3_rehearse.run import Run
from furbelow.s3_rehearse.volume import volume_of

from tests.s3_rehearse.test_weight import run_of
from tests.techniques.small import Worked, work

STEPS = """- join ends: {of: outer, seam: 1 cm}
- join ends: {of: middle, seam: 1 cm}
- join ends: {of: inner, seam: 1 cm}
- join ends: {of: frill, seam: 1 cm}
- gather: {edge: frill.top, to: inner.bottom}
- attach: {edge: frill.top, to: inner.bottom, seam: 1 cm}
- stack layers: {layers: [outer.top, middle.top], as: pair}
- stack layers: {layers: [pair, inner.top], as: all}
- join ends: {of: band, seam: 1 cm}
- gather: {edge: all, to: band.bottom}
- band casing: {band: band, to: all, seam: 1 cm, gap: 5 cm}
- insert elastic: {elastic: elastic, into: band, length: 63 cm, overlap: 2 cm}
- close gap: {of: band}"""


def _skirt(outer: int, middle: int, inner: int, frill: int, worn: str = "") -> Worked:
    """Three layers below a band of 3 cm, the inner one with a frill; depths in cm."""
    return work(
        f"""outer: {{from: net, length: 4 m, depth: {outer} cm}}
middle: {{from: net, length: 4 m, depth: {middle} cm}}
inner: {{from: net, length: 4 m, depth: {inner} cm}}
frill: {{from: net, length: 8 m, depth: {frill} cm}}
band: {{from: net, length: 156 cm, depth: 3 cm}}""",
        STEPS,
        worn=worn,
    )


def _ends(run: Run) -> dict[str, Fraction]:
    return {piece: run.ends[piece] / 10 for piece in ("outer", "middle", "inner", "frill", "band")}


def test_a_layer_ends_where_the_lowest_of_its_tiers_does() -> None:
    run = run_of(_skirt(50, 48, 36, 10))
    # All below 3 cm of band; the inner layer ends with its frill.
    assert _ends(run) == {"outer": 53, "middle": 51, "inner": 49, "frill": 49, "band": 53}
    assert [hem.drop / 10 for hem in volume_of(run).hems] == [53, 51, 49]


@pytest.mark.parametrize(
    ("depths", "told"),
    [
        ((50, 48, 36, 10), []),
        ((50, 50, 40, 10), []),
        ((50, 52, 40, 10), ["the middle lies under the outer and ends 2 cm below it"]),
        ((50, 48, 40, 13), ["the inner lies under the outer and ends 3 cm below it"]),
        # Each is held to the lowest of all that lie over it, so one cause is told once.
        ((50, 52, 40, 11), ["the middle lies under the outer and ends 2 cm below it"]),
    ],
)
def test_an_under_layer_that_hangs_out_is_told(depths: tuple[int, int, int, int], told: list[str]) -> None:
    worked = _skirt(*depths)
    assert [fault.headline for fault in worked.warnings if fault.code == "FB418"] == told
    assert worked.faults == []


def test_a_layer_that_must_stay_hidden_is_refused_and_not_warned_of_twice() -> None:
    worked = _skirt(50, 52, 40, 10, worn=", hidden: {middle: 2 cm}")
    assert worked.codes == ["FB411"]
    assert "FB418" not in [fault.code for fault in worked.warnings]
