"""Seams against sewing leaflets, handbooks and seam standards."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.bench import State

from tests.techniques.small import INCH, refused, sound

PANEL = "panel: {from: lawn, count: 2, length: 24 in, depth: 20 in}"
HEMS = "- narrow hem: {edge: panel.top}\n- narrow hem: {edge: panel.bottom}"

FRENCH = [
    # Utah State University Extension leaflet: 3/8, trimmed to 1/8, then 3/8.
    ("3/8 in", "1/8 in", "3/8 in", Fraction(3, 4)),
    # A sewing pattern maker's note: 5/8 = 3/8 + 1/4, trimmed to 1/8.
    ("3/8 in", "1/8 in", "1/4 in", Fraction(5, 8)),
    # The same: an allowance of 1/2 starts with 1/4.
    ("1/4 in", "1/8 in", "1/4 in", Fraction(1, 2)),
    # A Complete Course in Dressmaking, vol. 1, 1921, p. 98: 1/8, then 1/4 from the fold.
    ("1/8 in", "1/8 in", "1/4 in", Fraction(3, 8)),
]


@pytest.mark.parametrize(("first", "trim", "second", "taken"), FRENCH)
def test_a_french_seam_takes_the_sum_of_its_two_seams(first: str, trim: str, second: str, taken: Fraction) -> None:
    worked = sound(
        PANEL,
        f"- french seam: {{of: panel, into: one ring, first seam: {first}, trim to: {trim}, second seam: {second}}}\n{HEMS}",
        units="inches",
    )
    assert (worked.solved.pieces["panel"].cut_length / INCH - 24) / 2 == taken
    assert worked.bench.seams["panel.ends"].state is State.ENCLOSED


def test_a_french_seam_is_too_bulky_for_thick_cloth() -> None:
    """A Complete Course in Dressmaking, vol. 1, 1921, p. 98: too bulky for thick cloth. The limit is a house rule."""
    worked = sound(PANEL.replace("lawn", "denim"), f"- french seam: {{of: panel, into: one ring}}\n{HEMS}")
    assert "FB332" in [fault.code for fault in worked.warnings]


def test_an_allowance_reaches_to_the_row_furthest_from_the_edge() -> None:
    """ASTM D7722-13: seam allowance is measured from the edge to the parallel stitch line furthest from that edge."""
    worked = sound(
        PANEL,
        f"- flat felled seam: {{of: panel, into: one ring, seam: 5/8 in, trim to: 1/4 in, fell: 3/8 in}}\n{HEMS}",
        units="inches",
    )
    # Two rows are sewn; the books hold the one furthest from the raw edge, 5/8 in.
    assert len(worked.performed[0].sewn) == 2
    assert worked.bench.edge("panel.start").used / INCH == Fraction(5, 8)


def test_lapped_seams_are_sewn_with_lockstitch_not_overedge() -> None:
    """Federal Standard 751a: lapped seams are sewn with lock or chain stitches, never with an overedge stitch."""
    worked = sound(
        "upper: {from: net, length: 30 in, depth: 8 in}\nlower: {from: net, length: 30 in, depth: 12 in}",
        "- lapped seam: {edge: upper.bottom, over: lower.top}",
    )
    assert {row.kind for row in worked.performed[0].sewn} == {"301"}


def test_a_banding_is_cut_twice_its_depth_and_half_an_inch() -> None:
    """Baldt, Clothing for Women, 1916: banding is cut 2 x its depth and 1/2 in."""
    worked = sound(
        "cape: {from: net, length: 44 in, depth: 20 in}\nband: {from: lawn, length: 44 in, depth: 1 in}",
        """- join ends: {of: cape}
        - join ends: {of: band}
        - binding strip: {strip: band, edge: cape.bottom, seam: 1/4 in, turn under: 1/4 in}""",
        units="inches",
    )
    assert worked.solved.pieces["band"].cut_depth / INCH == 2 * 1 + Fraction(1, 2)


def test_net_may_stay_raw_and_lawn_may_not() -> None:
    """Tulle has no grain and does not ravel: American Sewing Guild, fabric notes."""
    ring = "- join ends: {of: panel, into: one ring}"
    sound(PANEL.replace("lawn", "net"), ring)
    refused("FB403", PANEL, f"{ring}\n{HEMS}")
