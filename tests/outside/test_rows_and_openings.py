"""Rows on a line and openings in seams against what the trade does, worked out by hand beside each check."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bias import BiasStrip
from furbelow.garment.levels import levels_of

from tests.techniques.small import INCH, sound, work


def test_rows_at_even_heights_each_hide_the_seam_of_the_one_below_and_the_lowest_is_sewn_on_first() -> None:
    # common practice, no source: three rows over 60 cm, a line every 20 cm, each row deeper than that by its overlap.
    rows = ("low", "middle", "high")
    pieces = "base: {from: net, length: 120 cm, depth: 60 cm}\n" + "\n".join(
        f"{row}: {{from: net, length: 240 cm, depth: 22 cm}}" for row in rows
    )
    steps = ["- join ends: {of: base}"]
    steps += [f"- join ends: {{of: {row}}}\n- gather: {{edge: {row}.top, length: 120 cm}}" for row in rows]
    for row, above, at in (("low", "middle", 40), ("middle", "high", 20), ("high", "", 1)):
        covered = f", covered by: {above}" if above else ""
        steps.append(f"- sew on: {{edge: {row}.top, on: base, below top: {at} cm{covered}}}")
    worked = sound(pieces, "\n".join(steps))
    bottoms = levels_of(worked.bench).bottoms
    # 1 + 22, 20 + 22, 40 + 22: they pass the lines at 20 and 40 cm by 3 and 2 cm, and the base by 2 cm.
    assert [bottoms[row] for row in ("high", "middle", "low")] == [230, 420, 620]
    assert not worked.warnings or "FB436" not in [fault.code for fault in worked.warnings]


def test_a_zip_lets_the_waist_pass_the_hips_where_twice_its_length_and_the_waist_do() -> None:
    # common practice, no source: the opening is half of what the hips are wider, here (104 + 5 - 79) / 2 = 15 cm.
    pieces = """skirt: {from: lawn, length: 116 cm, depth: 60 cm}
    waistband: {from: lawn, length: 82 cm, depth: 3 cm}"""
    steps = """- neaten: {edge: skirt.start}
    - neaten: {edge: skirt.end}
    - join ends: {of: skirt, seam: 2 cm, open: OPEN}
    - zip: {in: skirt.ends, zip: zip}
    - gather: {edge: skirt.top, length: 79 cm}
    - fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm, fasten: hook and bar}
    - narrow hem: {edge: skirt.bottom}"""
    zips = "  zip: {kind: zip, length: 16 cm}\n"
    sound(pieces, steps.replace("OPEN", "15 cm"), materials=zips)
    assert "FB344" in work(pieces, steps.replace("OPEN", "14.5 cm"), materials=zips).codes


def test_a_lapped_zip_has_margins_of_2_cm_and_a_centred_one_rows_6_mm_to_both_sides() -> None:
    # common practice, no source: margins of 1.5 to 2 cm; lap stitched at 1 cm, centred rows at 6 mm.
    pieces = "skirt: {from: net, length: 116 cm, depth: 60 cm}"
    steps = "- join ends: {of: skirt, seam: 2 cm, open: 20 cm}\n- zip: {in: skirt.ends, zip: zip, way: WAY}"
    zips = "  zip: {kind: zip, length: 20 cm}\n"
    assert "sew 6 mm beside the seam" in work(pieces, steps.replace("WAY", "centred"), materials=zips).words()
    assert "sew 1 cm beside the seam" in work(pieces, steps.replace("WAY", "lapped"), materials=zips).words()


def test_a_pocket_passes_the_hand_that_reaches_into_it() -> None:
    # From memory: round the hand of a large man (95th percentile) ANSUR II gives about 23.5 cm; flat in a pocket it needs
    # half of that, 11.8 cm, and 1 cm to move: no warning above 13 cm, and 10 cm is told.
    hand = (235 / 2 + 10) / 10
    pieces = "skirt: {from: net, length: 116 cm, depth: 60 cm}\npocket: {from: net, length: WIDE cm, depth: 16 cm}"
    step = "- patch pocket: {pocket: pocket, on: skirt, below top: 10 cm, from start: 20 cm}"
    fits, tight = (work(pieces.replace("WIDE", wide), step) for wide in ("13", "10"))
    assert 13 > hand > 10
    assert "a pocket of" not in str([fault.headline for fault in fits.warnings])
    assert "a pocket of 10 cm" in str([fault.headline for fault in tight.warnings])


def test_elastic_and_edge_are_quartered_and_each_quarter_is_stretched_to_its_cloth() -> None:
    # common practice, no source: elastic 10 to 15 cm shorter than the waist, both quartered, the lap at the side seam.
    pieces = "slip: {from: net, length: 110 cm, depth: 60 cm}"
    steps = "- join ends: {of: slip}\n- sewn elastic: {edge: slip.top, elastic: elastic, length: waist_girth - 10 cm}"
    words = sound(pieces, steps).words()
    assert (
        "Mark the loop in quarters, every 17 cm, and the top edge of the slip every 27.5 cm" in words
    )  # 68 / 4, 110 / 4
    assert "Cut 70 cm of elastic. Lap its ends 2 cm" in words


def test_a_band_fits_across_its_interfacing_and_takes_no_more_of_the_roll_than_it_is_deep() -> None:
    # common practice, no source: interfacing 90 cm wide, laid short of the seam lines.
    pieces = "skirt: {from: net, length: 116 cm, depth: 60 cm}\nband: {from: net, length: 80 cm, depth: 8 cm}"
    roll = "  fusible: {kind: interfacing, width: 90 cm}\n"
    used = work(pieces, "- interface: {piece: band, with: fusible}", materials=roll).performed[0].used
    assert used[0].amount <= 80


def test_two_gores_take_no_more_cloth_than_one_rectangle_as_wide_as_both_ends_of_one() -> None:
    # Plane geometry: a slanting line through a rectangle parts it in two like trapezes; six gores of 20 and 40 cm over 60 cm,
    # without seams, hold 6 x (20 + 40) / 2 x 60 cm = 10,800 cm2, and so do 3 rectangles of 60 x 60 cm.
    gores = "gore: {from: net, count: 6, length: 20 cm, depth: 60 cm}"
    piece = work(gores, "- gores: {piece: gore, hem: 40 cm}").solved.pieces["gore"]
    assert piece.blank == (600, 600)
    assert piece.rectangles * piece.blank[0] * piece.blank[1] == piece.count * piece.cut_area == 1_080_000


def test_a_square_of_36_inches_gives_18_yards_of_bias_2_inches_wide() -> None:
    # Handbooks of dressmaking, from memory: the length of bias is the area by the width, 36 x 36 / 2 = 648 in. Whole lines
    # only are of use, so the square that we ask for this is larger by less than one line of 2 in on the diagonal, 2.83 in.
    strip = BiasStrip(648 * INCH, 2 * INCH, Fraction(0))
    side = strip.side(Fraction(1)) / INCH
    assert 36 <= side < 36 + Fraction("2.83")
    assert strip.gives * strip.width <= side**2 * INCH**2  # no more strip than cloth


def test_a_row_with_a_heading_is_cut_deeper_by_its_frill_and_hangs_from_the_stitches() -> None:
    # common practice, no source: cut = what hangs + heading + hems; here 20 + 2 + 0 cm of net that is left raw.
    pieces = "base: {from: net, length: 120 cm, depth: 60 cm}\nrow: {from: net, length: 240 cm, depth: 20 cm}"
    steps = """- join ends: {of: base}
    - join ends: {of: row}
    - headed row: {edge: row.top, on: base, above hem: 22 cm, heading: 2 cm}"""
    worked = sound(pieces, steps)
    assert worked.solved.pieces["row"].cut_depth == 220
    assert levels_of(worked.bench).bottoms["row"] == 600 - 220 + 200  # it clears the hem of the base by 2 cm


def test_straps_stand_closer_behind_than_in_front_so_that_they_do_not_slip() -> None:
    # common practice, no source: 16 to 20 cm in front, a few centimetres less behind, cut longer and tried on first.
    pieces = "slip: {from: net, length: 116 cm, depth: 60 cm}\nstrap: {from: net, count: 2, length: 42 cm, depth: 2 cm}"
    edges = "- join ends: {of: slip}\n- narrow hem: {edge: slip.top}"
    words = sound(pieces, f"{edges}\n- straps: {{strap: strap, to: slip.top}}").words()
    assert "From the middle of the front mark 9 cm to both sides, from the middle of the back 7 cm." in words
    assert words.index("Put the garment on") < words.index("Sew each end on in a rectangle")
