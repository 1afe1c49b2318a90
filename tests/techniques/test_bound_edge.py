"""Binding with tape: the edge or the margin is closed, and the tape is measured."""

from __future__ import annotations

from furbelow.garment.bench import State

from tests.techniques.small import refused, sound, work

PANEL = "panel: {from: lawn, length: 120 cm, depth: 50 cm}"
RING = "- join ends: {of: panel, seam: 1 cm}"


def test_an_edge_in_tape_takes_no_cloth_and_ends_hemmed() -> None:
    worked = sound(
        PANEL,
        f"{RING}\n- bound edge: {{seam: panel.ends, tape: tape}}\n- bound edge: {{edge: panel.top, tape: tape}}\n"
        "- bound edge: {edge: panel.bottom, tape: tape, overlap: 3 cm}",
    )
    assert worked.solved.pieces["panel"].cut_depth == 500
    assert worked.bench.edge("panel.bottom").state is State.HEMMED
    used = [(use.material, use.amount, use.copies) for done in worked.performed for use in done.used]
    # Along the side seam the tape needs no overlap: it ends at the edges.
    assert used == [("tape", 500, 1), ("tape", 1220, 1), ("tape", 1230, 1)]
    assert worked.bench.seams["panel.ends"].state is State.ENCLOSED


def test_a_tape_wider_than_the_margin_is_refused() -> None:
    fault = refused(
        "FB336", PANEL, "- join ends: {of: panel, seam: 6 mm}\n- bound edge: {seam: panel.ends, tape: tape}"
    )
    assert fault.headline == "half of `tape` is 8 mm and the margin is 6 mm, 2 mm too wide"


def test_a_tape_too_narrow_to_fold_is_refused() -> None:
    fault = refused("FB336", PANEL, f"{RING}\n- bound edge: {{edge: panel.top, tape: thin_tape}}")
    assert fault.headline == "half of `thin_tape` is 3 mm and must cover 4 mm, 1 mm too narrow"


def test_an_edge_and_a_seam_together_are_refused() -> None:
    refused("FB330", PANEL, f"{RING}\n- bound edge: {{edge: panel.top, seam: panel.ends, tape: tape}}")


def test_a_seam_that_is_not_sewn_yet_is_refused() -> None:
    refused("FB318", PANEL, "- bound edge: {seam: panel.ends, tape: tape}")


def test_a_margin_stitched_down_can_no_longer_be_bound() -> None:
    refused(
        "FB318",
        "upper: {from: net, length: 80 cm, depth: 20 cm}\nlower: {from: net, length: 80 cm, depth: 30 cm}",
        """- attach: {edge: lower.top, to: upper.bottom}
        - turn seam: {seam: lower.top}
        - bound edge: {seam: lower.top, tape: tape}""",
    )


def test_loose_gathers_are_not_bound() -> None:
    refused(
        "FB333",
        PANEL,
        f"{RING}\n- gather: {{edge: panel.top, length: 60 cm}}\n- bound edge: {{edge: panel.top, tape: tape}}",
    )


def test_joins_have_no_number_before_the_plan() -> None:
    pieced = "panel: {from: lawn, length: 300 cm, depth: 50 cm, piecing: {seam: 1 cm, shortest: 30 cm, most joins: 3}}"
    refused("FB337", pieced, "- join strips: {of: panel}\n- bound edge: {seam: panel.joins, tape: tape}")


def test_a_tape_beside_finished_ends_is_folded_under_at_both() -> None:
    apron = "apron: {from: lawn, length: 60 cm, depth: 50 cm}"
    bind = "- bound edge: {edge: apron.bottom, tape: tape}"
    hemmed = f"- narrow hem: {{edge: apron.start}}\n- narrow hem: {{edge: apron.end}}\n{bind}"
    open_ends, finished = (work(apron, steps) for steps in (bind, hemmed))
    assert open_ends.performed[-1].used[0].amount == 600
    assert finished.performed[-1].used[0].amount == finished.performed[-1].sewn[0].length + 2 * 10
    assert "Fold 1 cm of the tape under at both ends" in finished.words()
    assert "under at both ends" not in open_ends.words()
