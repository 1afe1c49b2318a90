"""A lining bagged out: everything enclosed, two flat pieces of one size."""

from __future__ import annotations

import pytest
from furbelow.garment.bench import State

from tests.techniques.small import refused, sound, work

PIECES = """panel: {from: lawn, length: 60 cm, depth: 40 cm}
lining: {from: lawn, length: 60 cm, depth: 40 cm}"""
STEP = "- bagged lining: {piece: panel, lining: lining, seam: 1 cm}"


def test_all_edges_are_enclosed_and_give_the_seam() -> None:
    worked = sound(PIECES, STEP)
    assert worked.solved.pieces["panel"].cut_length == 620
    assert worked.solved.pieces["lining"].cut_depth == 420
    assert {worked.bench.edge(f"panel.{side}").state for side in ("top", "bottom", "start", "end")} == {State.ENCLOSED}
    # All round 60 x 40 cm less the gap of 12 cm, which is closed by hand.
    assert [(row.kind, row.length) for row in worked.performed[0].sewn] == [("301", 2000 - 120), ("200", 120)]


def test_an_open_top_goes_on_into_a_band() -> None:
    worked = sound(
        PIECES
        + "\nband: {from: lawn, length: 60 cm, depth: 4 cm}\ntie: {from: lawn, count: 2, length: 50 cm, depth: 4 cm}",
        """- bagged lining: {piece: panel, lining: lining, seam: 1 cm, leave open: top}
        - stack layers: {layers: [panel.top, {edge: lining.top, right side: in}], as: apron_top}
        - fitted waistband: {band: band, to: apron_top, fasten: ties, overlap: 0 cm}
        - tie ends: {tie: tie, to: band}""",
    )
    assert worked.bench.edge("apron_top").set_length == 600
    assert worked.performed[0].sewn[0].length == 600 + 2 * (400 + 10)  # up to the raw top edge, which the band takes


def test_a_lining_of_another_size_is_refused() -> None:
    fault = refused("FB401", PIECES.replace("lining: {from: lawn, length: 60", "lining: {from: lawn, length: 58"), STEP)
    assert fault.headline == "`panel` is 62 cm long and `lining` 60 cm, 2 cm apart"


def test_a_ring_is_refused() -> None:
    refused("FB302", PIECES, f"- join ends: {{of: panel}}\n{STEP}")


def test_a_gap_wider_than_its_edge_is_refused() -> None:
    refused("FB352", PIECES, STEP.replace("seam: 1 cm", "gap: 70 cm"))


def test_pieces_sewn_to_others_before_are_refused() -> None:
    refused(
        "FB302",
        PIECES + "\nfrill: {from: net, cut length: 62 cm, depth: 10 cm}",
        f"- attach: {{edge: frill.top, to: panel.bottom}}\n{STEP}",
    )


def test_two_panels_and_one_lining_are_refused() -> None:
    refused("FB305", PIECES.replace("panel: {from: lawn,", "panel: {from: lawn, count: 2,"), STEP)


def test_flat_layers_are_matched_at_their_ends_and_not_at_seams_that_they_lack() -> None:
    stacked = "- stack layers: {layers: [panel.top, {edge: lining.top, right side: in}], as: apron_top}"
    bagged = f"{STEP.replace('seam: 1 cm', 'seam: 1 cm, leave open: top')}\n{stacked}"
    told = work(PIECES, bagged).tellings()[-1]
    texts = [action.text for action in told.actions]
    assert any("Match the ends and the marks" in text for text in texts)
    assert not any("side seam" in text for text in texts)
    assert any(text.startswith("Sew both layers") for text in texts)


def test_the_work_is_turned_through_what_is_left_open() -> None:
    gap = work(PIECES, STEP).tellings()[-1]
    top = work(PIECES, STEP.replace("seam: 1 cm", "seam: 1 cm, leave open: top")).tellings()[-1]
    through = [[action.text for action in told.actions if "right side out" in action.text] for told in (gap, top)]
    assert "through the gap" in through[0][0]
    assert "through the top" in through[1][0]


POCKET = "- patch pocket: {pocket: pocket, on: panel, below top: 8 cm, from start: 20 cm}"
WITH_POCKET = f"{PIECES}\npocket: {{from: lawn, length: 16 cm, depth: 16 cm}}"


@pytest.mark.parametrize("leave", ["a gap", "top"])
def test_what_lies_on_a_piece_is_sewn_on_before_it_is_lined(leave: str) -> None:
    bagged = STEP.replace("seam: 1 cm", f"seam: 1 cm, leave open: {leave}")
    first, later = (work(WITH_POCKET, f"{one}\n{two}") for one, two in ((POCKET, bagged), (bagged, POCKET)))
    assert not {"FB302", "FB420"} & {fault.code for fault in (*first.faults, *first.warnings)}
    told = [fault for fault in later.warnings if fault.code == "FB420"]
    assert [fault.help for fault in told] == ["move `patch pocket` before `bagged lining`"]


def test_a_bagged_lining_hangs_behind_already() -> None:
    """It is sewn on all round, right sides outwards: in a stack it needs no `right side`, and no one lays it behind."""
    worked = sound(
        PIECES
        + "\nband: {from: lawn, length: 60 cm, depth: 4 cm}\ntie: {from: lawn, count: 2, length: 50 cm, depth: 4 cm}",
        """- bagged lining: {piece: panel, lining: lining, seam: 1 cm, leave open: top}
        - stack layers: {layers: [panel.top, lining.top], as: apron_top}
        - fitted waistband: {band: band, to: apron_top, fasten: ties, overlap: 0 cm}
        - tie ends: {tie: tie, to: band}""",
    )
    assert "FB428" not in [fault.code for fault in worked.warnings]
    assert "Smooth the lining, which hangs behind already." in worked.words()
