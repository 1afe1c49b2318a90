"""Holes for the ends of a cord: worked in the layer that comes to the outside, in the middle of the channel to come."""

from __future__ import annotations

import pytest
from furbelow.garment.lying import Lies
from furbelow.garment.technique import SetUp

from tests.techniques.small import Worked, refused, sound, work

PIECES = """skirt: {from: lawn, length: 120 cm, depth: 60 cm}
band: {from: lawn, length: 120 cm, depth: 25 mm}"""
SUPPLIES = """  string: {kind: cord, width: 5 mm}
  eyelet: {kind: fastening, width: 8 mm, about: brass eyelets}
  fusible: {kind: interfacing, width: 90 cm, price: 3 EUR/m}
"""
HOLES = "- eyelets: {in: band, as: buttonholes, hole: 12 mm, apart: 4 cm, backing: fusible}"
CORD = "- drawstring: {cord: string, into: band, ends: 14 cm, for: grown-up}"
STEPS = f"""{HOLES}
- french seam: {{of: skirt}}
- narrow hem: {{edge: skirt.bottom}}
- join ends: {{of: band, seam: 1 cm}}
- band casing: {{band: band, to: skirt.top, seam: 1 cm}}
{CORD}"""
ON_EDGE = f"""{HOLES.replace("in: band", "in: skirt.top")}
- french seam: {{of: skirt}}
- narrow hem: {{edge: skirt.bottom}}
- folded casing: {{edge: skirt.top, depth: 25 mm, turn under: 6 mm}}
{CORD.replace("into: band", "into: skirt.top")}"""


def holes(worked: Worked) -> list[tuple[float, float, float, float]]:
    """Each hole with its stitches: from and to below the cut top edge, from and to along from the cut start edge."""
    lies = [on for done in worked.performed for on in done.on_cloth.occupants if on.kind is Lies.HOLE]
    return [
        (float(on.down.near), float(on.down.far), float(on.along.near), float(on.along.far))
        for on in lies
        if on.down and on.along
    ]


def test_the_holes_lie_in_the_middle_of_the_channel_of_a_band_and_of_the_front() -> None:
    worked = sound(PIECES, STEPS, materials=SUPPLIES)
    # The band is cut 7 cm deep, 25 mm twice and 1 cm of seam twice. Its outer half ends at the seam, the row lies 2 mm in, so
    # the channel is 23 mm and its middle 10 + 2 + 11.5 mm below the edge; a buttonhole of 12 mm has 2 mm of stitches each way.
    # 120 cm round: the front lies 30 cm from the side seam, and 1 cm is its margin.
    middle = 23.5
    assert holes(worked) == [
        (middle - 8, middle + 8, 310 - 20 - 2, 310 - 20 + 2),
        (middle - 8, middle + 8, 310 + 20 - 2, 310 + 20 + 2),
    ]
    words = worked.words()
    assert "measure 31 cm from one short end along one long edge, which is folded over to the outside later" in words
    assert "a cross 2 cm to each side of it, 2.4 cm from the edge" in words
    assert "Cut two squares of fusible, 2.8 cm each way" in words
    assert "Fold the long edge of the band that lies nearer to the buttonholes 1 cm to the wrong side" in words
    assert "work it in at one buttonhole, all round through the channel and out at the other" in words
    assert "gap" not in words


def test_the_row_of_the_casing_is_sewn_all_round() -> None:
    worked = sound(PIECES, STEPS, materials=SUPPLIES)
    made = next(done for done in worked.performed if done.step.written.technique == "band casing")
    assert [row.length for row in made.sewn] == [1200, 1200]
    assert made.after.casings["band"].gap == 0


def test_on_an_edge_that_is_folded_down_they_lie_beyond_its_fold() -> None:
    worked = sound(PIECES.splitlines()[0], ON_EDGE, materials=SUPPLIES)
    # Folded 6 mm and 25 mm, then half of the channel of 23 mm. A French seam takes its margin of the start edge.
    (top, foot, _, _), _ = holes(worked)
    assert (top + foot) / 2 == 6 + 25 + 11.5
    assert "along the edge that is folded down later" in worked.words()


@pytest.mark.parametrize(
    ("kind", "setup", "said"),
    [
        ("worked eyelets, hole: 8 mm", SetUp.HAND, "with 26 stitches close beside each other"),
        ("metal eyelets, with: eyelet", SetUp.TABLE, "closing"),
    ],
)
def test_round_holes_are_worked_by_hand_or_set(kind: str, setup: SetUp, said: str) -> None:
    given = HOLES.replace("buttonholes, hole: 12 mm", kind)
    worked = sound(PIECES, STEPS.replace(HOLES, given), materials=SUPPLIES)
    done = worked.performed[0]
    assert done.setup is setup
    if setup is SetUp.HAND:
        # 8 mm wide are 25.1 mm round, a stitch for each mm begun.
        assert said in worked.words()
        assert done.sewn[0].singly == 2 * 26
    else:
        assert [(use.material, use.amount) for use in done.used][0] == ("eyelet", 2)
        assert done.after.holes["band"].size == 8
        assert "setting tool" in worked.words()


def test_a_patch_of_the_cloth_itself_stands_in_for_interfacing() -> None:
    words = sound(PIECES, STEPS.replace(", backing: fusible", ""), materials=SUPPLIES).words()
    assert "Cut two squares of the same cloth, 2.8 cm each way" in words


def test_a_hole_fits_its_channel_and_its_cord() -> None:
    long = STEPS.replace("hole: 12 mm", "hole: 20 mm")
    assert "FB421" in work(PIECES, long, materials=SUPPLIES).codes
    thick = SUPPLIES.replace("string: {kind: cord, width: 5 mm", "string: {kind: cord, width: 12 mm")
    assert "1 mm short" in refused("FB323", PIECES, STEPS, materials=thick).headline


def test_they_come_before_the_casing_and_once() -> None:
    band = "- band casing: {band: band, to: skirt.top, seam: 1 cm}"
    late = STEPS.replace(f"{HOLES}\n", "").replace(band, f"{band}\n{HOLES}")
    assert "stitched already" in refused("FB322", PIECES, late, materials=SUPPLIES).headline
    refused("FB322", PIECES, f"{HOLES}\n{STEPS}", materials=SUPPLIES)


def test_what_never_becomes_a_casing_gets_no_holes() -> None:
    steps = "- eyelets: {in: skirt.bottom}\n- french seam: {of: skirt}"
    assert work(PIECES.splitlines()[0], steps, materials=SUPPLIES).codes[0] == "FB321"


def test_metal_eyelets_are_named_for_they_are_bought() -> None:
    steps = STEPS.replace("as: buttonholes, hole: 12 mm", "as: metal eyelets")
    refused("FB313", PIECES, steps, materials=SUPPLIES)


def test_a_hole_in_a_margin_is_told() -> None:
    """The holes of 4 cm apart would lie in the side seam of a panel 3 cm wide."""
    steps = STEPS.replace("apart: 4 cm", "apart: 62 cm")
    assert "FB420" in [fault.code for fault in work(PIECES, steps, materials=SUPPLIES).faults]
