"""An edge on the selvedge: finished from the start, cut from the side of the cloth, and told so."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache
from pathlib import Path

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.s6_write.guide.guide import GuideStep
from furbelow.verbs.command import run

from tests.demos.demos import cutting_of
from tests.small_guide import small_guide
from tests.techniques.small import spec_text

STEPS = """- join ends: {of: skirt, into: one ring}
- neaten: {seam: skirt.ends}
- folded casing: {edge: skirt.top, depth: 25 mm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}
- close gap: {of: skirt.top}"""
PIECES = "skirt: {from: lawn, count: COUNT, length: 60 cm, depth: 50 cm, selvedge: bottom}"


@cache
def _cutting(count: int, *, folded: bool) -> tuple[GuideStep, ...]:
    steps = STEPS if count > 1 else STEPS.replace(", into: one ring", "")
    pieces = PIECES.replace("COUNT", str(count)).replace("60 cm", f"{120 // count} cm")
    return cutting_of(small_guide(pieces, steps, room=Workroom(fold_cloth=folded)))


def _with(words: str, steps: Sequence[GuideStep]) -> list[int]:
    return [step.number for step in steps if words in step.text]


@pytest.mark.parametrize("folded", [True, False])
def test_the_selvedges_stay_on_and_each_piece_is_told_which_edge_they_are(folded: bool) -> None:
    steps = _cutting(2, folded=folded)
    assert _with("Leave the selvedges of the lawn on", steps)
    assert not _with("Cut off the selvedges", steps)
    assert _with("Leave the selvedge on 1a and 1b: it is the bottom edge, finished as it is.", steps)


def test_the_far_lane_is_measured_from_its_own_selvedge() -> None:
    steps = _cutting(2, folded=False)
    (tape,) = _with("Stick a paper tape along the table", steps)
    (far,) = _with("from the far selvedge chalk a line from end to end", steps)
    assert _with("so that one selvedge lies level with the near edge", steps) == [tape + 1]
    assert _with("Cut along the far side of the tape: 1 lane.", steps) == [far - 1]


def test_on_folded_cloth_both_lanes_are_measured_from_the_selvedges_that_lie_together() -> None:
    steps = _cutting(2, folded=True)
    assert _with("Pin the two selvedges together", steps)
    assert not _with("tape", steps)


def test_a_selvedge_is_no_raw_edge() -> None:
    """`small_guide` makes only what is sound: cloth that ravels, and a bottom edge that no step finishes."""
    assert _cutting(1, folded=False)


def test_the_cutting_for_all_tells_it_of_the_pieces_of_each(tmp_path: Path) -> None:
    spec = spec_text(PIECES.replace("COUNT", "2"), STEPS)
    (tmp_path / "spec.yaml").write_text(spec, encoding="utf-8")
    (tmp_path / "class.csv").write_text(
        "wearer,waist_girth (cm),hip_girth (cm)\nAda,80,104\nBo,78,104\n", encoding="utf-8"
    )
    call = ["make", str(tmp_path / "spec.yaml"), "--class", str(tmp_path / "class.csv"), "--no-pdf"]
    assert run([*call, "--out", str(tmp_path / "out")]) == 0
    told = re.sub(r"<[^>]*>|\u00a0", " ", (tmp_path / "out" / "class-cutting.html").read_text(encoding="utf-8"))
    assert "it is the bottom edge, finished as it is" in told
