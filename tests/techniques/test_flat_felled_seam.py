"""A flat-felled seam: enclosed and flat, refused where its fold can't be made."""

from __future__ import annotations

from furbelow.garment.bench import State

from tests.techniques.small import refused, sound

PANEL = "panel: {from: lawn, count: 2, length: 60 cm, depth: 50 cm}"
HEMS = "- narrow hem: {edge: panel.top}\n- narrow hem: {edge: panel.bottom}"
TIERS = """upper: {from: lawn, length: 80 cm, depth: 20 cm}
lower: {from: lawn, length: 160 cm, depth: 30 cm}"""


def test_the_margin_is_enclosed_flat_and_takes_the_seam() -> None:
    worked = sound(
        PANEL, f"- flat felled seam: {{of: panel, into: one ring, seam: 15 mm, trim to: 5 mm, fell: 9 mm}}\n{HEMS}"
    )
    seam = worked.bench.seams["panel.ends"]
    assert seam.state is State.ENCLOSED
    assert seam.topstitched
    assert seam.width == 9
    assert worked.solved.pieces["panel"].cut_length == 630
    assert len(worked.performed[0].sewn) == 2
    assert "Fold 6 mm of the wide margin under" in worked.words()


def test_a_trimmed_margin_that_the_fold_does_not_cover_is_refused() -> None:
    fault = refused("FB331", PANEL, f"- flat felled seam: {{of: panel, trim to: 10 mm}}\n{HEMS}")
    assert fault.headline == "a margin of 1 cm is not covered by a fold of 9 mm, 1 mm too wide"


def test_a_seam_too_narrow_to_fold_is_refused_with_the_sum() -> None:
    fault = refused("FB334", PANEL, f"- flat felled seam: {{of: panel, seam: 12 mm}}\n{HEMS}")
    assert fault.notes == ("1.2 cm - 9 mm = 3 mm",)


def test_a_gathered_edge_is_refused() -> None:
    fault = refused(
        "FB333",
        TIERS,
        """- join ends: {of: upper}
        - join ends: {of: lower}
        - gather: {edge: lower.top, to: upper.bottom}
        - flat felled seam: {edge: lower.top, to: upper.bottom}""",
    )
    assert "2 to 1" in fault.headline


def test_edges_of_two_lengths_are_refused() -> None:
    refused("FB401", TIERS, "- flat felled seam: {edge: lower.top, to: upper.bottom}")
