"""A casing folded down over one layer, and over several stacked ones."""

from __future__ import annotations

import pytest
from furbelow.garment.message import Part, Pieces
from furbelow.garment.technique import Performed

from tests.techniques.small import Worked, refused, sound

PIECES = """skirt: {from: net, count: 2, length: 118 cm, depth: 60 cm}
under: {from: net, length: 118 cm, depth: 57 cm}"""
STACKED = """- join ends: {of: skirt, seam: 1 cm}
- join ends: {of: under, seam: 1 cm}
- stack layers: {layers: [skirt.top, under.top], as: waist}"""
CASING = """- folded casing: {edge: waist, depth: 25 mm, turn under: 5 mm, gap: 5 cm}
- insert elastic: {elastic: elastic, into: waist, length: 68 cm, overlap: 2 cm}
- close gap: {of: waist}"""


def _worked() -> Worked:
    return sound(PIECES, f"{STACKED}\n{CASING}")


def test_every_layer_gives_the_depth_of_the_casing() -> None:
    worked = _worked()
    for piece, depth in (("skirt", 600), ("under", 570)):
        assert worked.bench.depth(piece) == depth
        assert worked.solved.pieces[piece].cut_depth == depth + 30


def test_the_elastic_lies_in_the_outermost_layer_and_all_are_worked_on() -> None:
    worked = _worked()
    drawn: Performed = worked.performed[-2]
    assert drawn.touches == ("skirt", "under")
    assert drawn.used[0].what == Part("use-elastic", {"piece": Pieces(("skirt",))})
    assert "Fold the waist 5 mm to the inside" in worked.words()  # the stack by the name its maker gave it
    assert "between the seam margin and the outside" not in worked.words()


@pytest.mark.parametrize("row", CASING.splitlines()[1:])
def test_a_stack_without_a_casing_is_told_and_not_stumbled_over(row: str) -> None:
    assert "there is no casing in `waist` yet" in refused("FB321", PIECES, f"{STACKED}\n{row}").headline
