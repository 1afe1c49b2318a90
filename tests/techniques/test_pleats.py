"""Pleats: what the cloth is longer than its line lies in the folds, and they find room behind."""

from __future__ import annotations

import pytest
from furbelow.garment.technique import facts_of
from furbelow.techniques.pleats import Laid

from tests.techniques.small import refused, sound, work

PIECES = """yoke: {from: net, cut length: 100 cm, depth: 10 cm}
skirt: {from: net, cut length: CLOTH, depth: 50 cm}"""


def pleated(cloth: str, pleats: str) -> tuple[str, str]:
    steps = f"- pleats: {{edge: skirt.top, to: yoke.bottom, {pleats}}}\n- attach: {{edge: skirt.top, to: yoke.bottom}}"
    return PIECES.replace("CLOTH", cloth), steps


@pytest.mark.parametrize(("kind", "depth"), [("knife", 50), ("box", 25), ("inverted", 25)])
def test_the_folds_share_what_is_left_of_the_cloth(kind: str, depth: int) -> None:
    worked = sound(*pleated("250 cm", f"kind: {kind}, count: 15"))
    done = worked.performed[0]
    assert facts_of(done, Laid).depth == depth
    assert done.after.edge("skirt.top").set_length == 1000
    assert done.after.edge("skirt.top").cloth_length == 2500
    assert not done.after.edge("skirt.top").held
    assert worked.bench.edge("skirt.top").held


def test_the_guide_gives_the_sum_and_the_marks() -> None:
    words = sound(*pleated("250 cm", "kind: knife, count: 15")).words()
    assert "250 cm - 100 cm = 150 cm lies in 15 pleats, 5 cm deep each." in words
    assert "mark a second line 10 cm further on" in words
    assert "and the pleats underneath" in words


def test_pleats_that_no_seam_holds_are_told() -> None:
    worked = work(PIECES.replace("CLOTH", "250 cm"), "- pleats: {edge: skirt.top, length: 100 cm, count: 15}")
    assert "FB412" in worked.codes


@pytest.mark.parametrize("kind", ["box", "inverted"])
def test_more_than_three_lengths_of_cloth_find_no_room(kind: str) -> None:
    fault = refused("FB343", *pleated("301 cm", f"kind: {kind}, count: 10"))
    assert f"{kind} pleats meet behind at 300 cm of cloth for 100 cm, and `skirt.top` has 301 cm" in fault.headline


def test_knife_pleats_may_overlap_with_a_warning() -> None:
    worked = sound(*pleated("301 cm", "kind: knife, count: 10"))
    assert [fault.code for fault in worked.warnings if fault.code == "FB343"] == ["FB343"]


def test_exactly_three_lengths_are_full_pleats() -> None:
    worked = sound(*pleated("300 cm", "kind: box, count: 10"))
    # Each box shows 10 cm, and both its folds of 5 cm meet the next ones behind.
    assert facts_of(worked.performed[0], Laid).depth == 50


def test_pleats_too_shallow_to_fold_are_refused() -> None:
    fault = refused("FB342", *pleated("120 cm", "kind: knife, count: 50"))
    assert fault.headline == "each pleat would be 2 mm deep, and 4 mm is the least to fold"
    assert fault.help == "lay 25 pleats or fewer, or gather the edge"


def test_no_cloth_to_pleat_is_refused() -> None:
    refused("FB314", *pleated("90 cm", "count: 4"))


def test_half_a_pleat_is_refused() -> None:
    refused("FB341", *pleated("250 cm", "count: 7.5"))


def test_neither_edge_nor_length_is_refused() -> None:
    assert work(PIECES.replace("CLOTH", "250 cm"), "- pleats: {edge: skirt.top, count: 4}").codes[0] == "FB313"
