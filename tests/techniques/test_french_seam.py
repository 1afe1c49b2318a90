"""A French seam: enclosed, of the sum of its two passes, refused where its raw edges would come out."""

from __future__ import annotations

from fractions import Fraction
from functools import partial

from furbelow.garment.bench import State

from tests.techniques import small
from tests.techniques.small import refused

sound = partial(small.sound, hips="70 cm")  # narrow pieces, for a narrow body

PANEL = "panel: {from: lawn, count: 2, length: 60 cm, depth: 50 cm}"
HEMS = "- narrow hem: {edge: panel.top}\n- narrow hem: {edge: panel.bottom}"


def test_a_side_seam_is_enclosed_and_needs_no_neatening() -> None:
    worked = sound(PANEL, f"- french seam: {{of: panel, into: one ring}}\n{HEMS}")
    seam = worked.bench.seams["panel.ends"]
    assert seam.state is State.ENCLOSED
    assert seam.width == 6
    assert seam.copies == 2
    assert worked.solved.pieces["panel"].cut_length == 600 + 2 * (9 + 6)
    assert worked.bench.edge("panel.top").set_length == 1200


def test_both_passes_are_sewn() -> None:
    worked = sound(PANEL, f"- french seam: {{of: panel, into: one ring}}\n{HEMS}")
    rows = worked.performed[0].sewn
    # The seam is sewn before the hems: it runs along the whole cut depth of 50 + 2 x 1.5 cm.
    assert [(row.kind, row.length, row.copies) for row in rows] == [("301", 530, 2), ("301", 530, 2)]
    assert "wrong sides together" in worked.words()


def test_two_edges_are_joined_and_both_give_both_seams() -> None:
    worked = sound(
        "upper: {from: lawn, length: 80 cm, depth: 20 cm}\nlower: {from: lawn, length: 80 cm, depth: 30 cm}",
        """- join ends: {of: upper}
        - join ends: {of: lower}
        - neaten: {seam: [upper.ends, lower.ends]}
        - narrow hem: {edge: upper.top}
        - narrow hem: {edge: lower.bottom}
        - french seam: {edge: lower.top, to: upper.bottom, first seam: 5 mm, trim to: 2 mm, second seam: 5 mm}""",
    )
    assert worked.bench.seams["lower.top"].state is State.ENCLOSED
    assert worked.solved.pieces["upper"].cut_depth == 200 + 15 + 10
    assert worked.solved.pieces["lower"].cut_depth == 300 + 15 + 10


def test_a_margin_as_wide_as_the_second_seam_comes_out_and_is_refused() -> None:
    fault = refused("FB331", PANEL, f"- french seam: {{of: panel, trim to: 6 mm}}\n{HEMS}")
    assert fault.headline == "a margin of 6 mm does not fit inside a second seam of 6 mm"


def test_a_margin_cannot_be_trimmed_wider_than_it_is() -> None:
    fault = refused("FB331", PANEL, f"- french seam: {{of: panel, first seam: 3 mm, trim to: 5 mm}}\n{HEMS}")
    assert fault.headline == "a first seam of 3 mm can't be trimmed to 5 mm, 2 mm more"


def test_neither_ends_nor_edges_is_refused() -> None:
    assert "nothing is given" in refused("FB330", PANEL, f"- french seam: {{first seam: 5 mm}}\n{HEMS}").headline


def test_ends_and_edges_together_are_refused() -> None:
    refused("FB330", PANEL, f"- french seam: {{of: panel, edge: panel.top, to: panel.bottom}}\n{HEMS}")


def test_thick_cloth_is_warned_of_with_both_weights() -> None:
    worked = sound(PANEL.replace("lawn", "denim"), f"- french seam: {{of: panel, into: one ring}}\n{HEMS}")
    told = [fault.headline for fault in worked.warnings if fault.code == "FB332"]
    assert told == ["a French seam in `denim` of 340 g/m2 makes a ridge; it suits cloth up to 150 g/m2"]


def test_a_ring_is_not_closed_twice() -> None:
    refused("FB307", PANEL, f"- join ends: {{of: panel, into: one ring}}\n- french seam: {{of: panel}}\n{HEMS}")


def test_the_books_take_what_the_steps_say_in_inches() -> None:
    worked = sound(
        PANEL,
        f"- french seam: {{of: panel, into: one ring, first seam: 3/8 in, trim to: 1/8 in, second seam: 3/8 in}}\n{HEMS}",
        units="inches",
    )
    assert worked.solved.pieces["panel"].cut_length - 600 == 2 * Fraction(3, 4) * Fraction("25.4")
