"""A placket and a fitted waistband: the closed waist need not pass the hips, the open one does."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.bench import State
from furbelow.garment.workroom import Workroom
from furbelow.s3_rehearse.proofs.opening_too_small import way_in

from tests.techniques.small import refused, sound, work

PIECES = """skirt: {from: lawn, length: 160 cm, depth: 60 cm}
placket: {from: lawn, length: 40 cm, depth: 3 cm}
waistband: {from: lawn, length: waist_girth + 1 cm + 3 cm, depth: 3 cm}"""
READY = """- french seam: {of: skirt}
- narrow hem: {edge: skirt.bottom}"""
OPEN = "- placket: {edge: skirt.top, strip: placket, slit: 20 cm, seam: 6 mm}"
GATHER = "- gather: {edge: skirt.top, length: waistband.length}"
BAND = "- fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm}"
ALL = f"{READY}\n{OPEN}\n{GATHER}\n{BAND}"


def test_the_garment_is_sound_and_its_numbers_add_up() -> None:
    worked = sound(PIECES, ALL, worn=", length: 63 cm")
    opening = worked.bench.openings["skirt.top"]
    assert opening.waist == 790
    assert opening.length == 200 - 10  # the waist seam takes 1 cm of the slit
    assert way_in(opening) == 790 + 2 * 190
    # The slit gives 2 x 6 mm to its seam and gains the overlap of 3 cm.
    assert worked.bench.edge("skirt.top").cloth_length == 1600 - 12 + 30
    assert worked.solved.pieces["placket"].cut_depth == 2 * 30 + 2 * 6
    band = worked.solved.pieces["waistband"]
    assert (band.cut_length, band.cut_depth) == (780 + 40 + 20, 2 * 30 + 20)
    assert worked.bench.edge("waistband.start").state is State.ENCLOSED


@pytest.mark.parametrize("fasten", ["button", "hook and bar", "snaps"])
def test_every_fastening_is_told(fasten: str) -> None:
    word = {"button": "buttonhole", "hook and bar": "hook", "snaps": "snaps"}[fasten]
    assert word in sound(PIECES, ALL.replace("overlap: 3 cm", f"overlap: 3 cm, fasten: {fasten}")).words()


def test_pleats_do_as_well_as_gathers() -> None:
    sound(PIECES, ALL.replace("- gather: {", "- pleats: {count: 16, "))


def test_a_slit_too_short_for_the_hips_is_told_with_the_sum() -> None:
    short = ALL.replace("slit: 20 cm", "slit: 12 cm")
    worked = work(PIECES.replace("length: 40 cm", "length: 24 cm"), short)
    assert worked.codes == ["FB344"]
    fault = worked.faults[0]
    # 79 + 2 x 11 = 101 cm for hips of 104 and 5 of ease.
    assert fault.headline == (
        "the way in is 101 cm round the open band and down the slit and 109 cm is needed,"
        " 8 cm too little; the garment can't be put on"
    )
    assert fault.notes == ("79 cm + 2 x 11 cm = 101 cm",)


def test_a_skirt_too_narrow_at_the_foot_of_the_slit_is_told() -> None:
    worked = work(PIECES.replace("length: 160 cm", "length: 100 cm"), ALL)
    assert worked.codes == ["FB344"]
    assert "100 cm of cloth at its foot" in worked.faults[0].headline


def test_a_band_too_tight_for_the_waist_is_told() -> None:
    worked = work(PIECES.replace("waist_girth + 1 cm", "waist_girth - 2 cm"), ALL)
    assert worked.codes == ["FB345"]
    assert "76 cm and the waist is 78 cm, 2 cm too tight" in worked.faults[0].headline


def test_a_band_a_little_tighter_than_the_waist_is_warned_of() -> None:
    """A waist gives way by a fiftieth: 1.6 cm of 78."""
    worked = sound(PIECES.replace("waist_girth + 1 cm", "waist_girth - 15 mm"), ALL)
    assert "FB345" in [fault.code for fault in worked.warnings]


def test_a_loose_band_is_warned_of() -> None:
    worked = sound(PIECES.replace("waist_girth + 1 cm", "waist_girth + 6 cm"), ALL)
    assert "FB345" in [fault.code for fault in worked.warnings]


def test_a_fitted_band_without_an_opening_is_refused() -> None:
    pieces = "\n".join(row for row in PIECES.splitlines() if not row.startswith("placket"))
    refused("FB347", pieces, f"{READY}\n{GATHER.replace('waistband.length', '82 cm')}\n{BAND}")


def test_an_opening_without_a_band_is_told() -> None:
    assert "FB346" in work(PIECES, f"{READY}\n{OPEN}").codes


def test_the_placket_comes_before_the_gathers() -> None:
    assert refused("FB333", PIECES, f"{READY}\n{GATHER}\n{OPEN}\n{BAND}").help == "move the placket before the gathers"


def test_a_strip_of_another_length_is_refused_with_the_sum() -> None:
    fault = refused("FB401", PIECES.replace("length: 40 cm", "length: 30 cm"), ALL)
    assert fault.notes == ("2 x 20 cm = 40 cm",)


def test_a_slit_longer_than_the_skirt_is_refused() -> None:
    refused("FB312", PIECES.replace("length: 40 cm", "length: 140 cm"), ALL.replace("slit: 20 cm", "slit: 70 cm"))


def test_overlaps_of_band_and_placket_agree() -> None:
    fault = refused("FB347", PIECES, ALL.replace("overlap: 3 cm", "overlap: 2 cm"))
    assert fault.headline == "the band overlaps 2 cm and its placket 3 cm"


def test_an_edge_not_drawn_to_the_band_is_refused() -> None:
    fault = refused("FB401", PIECES, f"{READY}\n{OPEN}\n{BAND}")
    assert "161.8 cm and the band is 82 cm between its end seams" in fault.headline


def test_a_flat_skirt_is_no_ring_to_open() -> None:
    refused("FB304", PIECES, f"{OPEN}\n{GATHER}\n{BAND}")


def test_a_placket_opens_no_hem() -> None:
    refused("FB340", PIECES, f"- french seam: {{of: skirt}}\n{OPEN.replace('skirt.top', 'skirt.bottom')}")


APRON = """apron: {from: lawn, length: 70 cm, depth: 50 cm}
waistband: {from: lawn, length: 50 cm, depth: 4 cm}
tie: {from: lawn, count: 2, length: 60 cm, depth: 4 cm}"""
SIDES = """- narrow hem: {edge: apron.start}
- narrow hem: {edge: apron.end}
- narrow hem: {edge: apron.bottom}
- gather: {edge: apron.top, length: waistband.length}
- fitted waistband: {band: waistband, to: apron.top, fasten: ties, overlap: 0 cm}"""
TIES = "- tie ends: {tie: tie, to: waistband, seam: 6 mm, lap: 2 cm, turn under: 1 cm}"


def test_an_apron_closes_with_ties() -> None:
    worked = sound(APRON, f"{SIDES}\n{TIES}")
    assert worked.bench.openings["apron.top"].tied
    tie = worked.solved.pieces["tie"]
    assert (tie.cut_length, tie.cut_depth) == (600 + 6 + 20 + 10, 2 * 40 + 12)
    assert "EN 14682" in worked.words()


def test_ties_of_whole_centimetres_are_cut_and_told_so() -> None:
    pieces = APRON.replace("length: 60 cm, depth: 4 cm", "length: 80 cm, depth: 3 cm")
    worked = sound(pieces, f"{SIDES}\n- tie ends: {{tie: tie, to: waistband}}", room=Workroom(rounding=Fraction(5)))
    tie = worked.solved.pieces["tie"]
    assert (tie.length, tie.depth) == (800, 30)
    # 5 mm of seam at one end, 2 cm of lap and 1 cm folded under at the other; 5 mm of seam at both long edges.
    assert (tie.cut_length, tie.cut_depth) == (800 + 5 + 20 + 10, 2 * 30 + 2 * 5)
    assert "ties of 80 cm" in worked.tellings()[-1].aim
    assert "Fold 1 cm of the open end to the inside of the tie" in worked.words()


def test_a_flat_edge_is_as_long_as_between_its_hems() -> None:
    # 53 cm finished; the narrow hems take 1.5 cm at each end of the cloth.
    flat = "\n".join(row for row in SIDES.splitlines() if "gather" not in row)
    worked = sound(APRON.replace("length: 70 cm", "length: 50 cm"), f"{flat}\n{TIES}")
    assert worked.solved.pieces["apron"].cut_length == 530
    assert worked.bench.edge("apron.top").set_length == 500


def test_an_apron_without_its_ties_is_told() -> None:
    assert "FB346" in work(APRON.rpartition("\n")[0], SIDES).codes


def test_raw_sides_beside_the_band_are_refused() -> None:
    refused("FB335", APRON, f"{SIDES.replace('- narrow hem: {edge: apron.start}', '')}\n{TIES}".strip())


def test_ties_need_their_band_first() -> None:
    refused("FB351", APRON, f"{TIES}\n{SIDES}")


def test_a_buttoned_band_needs_no_ties() -> None:
    refused("FB351", APRON, f"{SIDES.replace('fasten: ties, overlap: 0 cm', 'overlap: 2 cm')}\n{TIES}", over="40 cm")


def test_ties_wider_than_the_band_are_refused() -> None:
    fault = refused("FB351", APRON.replace("60 cm, depth: 4 cm", "60 cm, depth: 5 cm"), f"{SIDES}\n{TIES}")
    assert "1 cm too wide" in fault.headline


def test_one_tie_is_refused() -> None:
    refused("FB305", APRON.replace("count: 2, ", ""), f"{SIDES}\n{TIES}")


DRAWN = {
    "gather": ("- gather: {edge: skirt.top, to: yoke.bottom}", "- attach: {edge: skirt.top, to: yoke.bottom}"),
    "pleats": (
        "- pleats: {edge: skirt.top, to: yoke.bottom, count: 20}",
        "- attach: {edge: skirt.top, to: yoke.bottom}",
    ),
    "cartridge pleats": ("", "- cartridge pleats: {edge: skirt.top, to: yoke.bottom, rows: 3}"),
    "flat": ("", "- attach: {edge: skirt.top, to: yoke.bottom}"),
}


@pytest.mark.parametrize("drawn", list(DRAWN))
@pytest.mark.parametrize("slit", [10, 20])
def test_a_slit_through_what_is_drawn_in_warns_and_tells_the_order(drawn: str, slit: int) -> None:
    """The yoke is 12 cm deep, so the seam is reached by the longer slit alone."""
    long = 160 if drawn != "flat" else 120
    pieces = f"""yoke: {{from: net, length: 120 cm, depth: 12 cm}}
skirt: {{from: net, length: {long} cm, depth: 50 cm}}
placket: {{from: net, length: {2 * slit} cm, depth: 3 cm}}"""
    draw, sew = DRAWN[drawn]
    steps = f"""- join ends: {{of: yoke}}
- join ends: {{of: skirt}}
{draw}
{sew}
- placket: {{edge: yoke.top, strip: placket, slit: {slit} cm}}"""
    worked = work(pieces, steps)
    told = [fault for fault in worked.warnings if fault.code == "FB420"]
    assert len(told) == (slit > 13 and drawn != "flat")
    assert all("join ends" in (fault.help or "") for fault in told)
    crossed = any(
        "fasten its threads there by hand" in action.text for each in worked.tellings() for action in each.actions
    )
    assert crossed == (slit > 13)


@pytest.mark.parametrize("closing", ["", "french seam", "join ends"])
@pytest.mark.parametrize(
    ("step", "words"),
    [
        ("placket: {edge: skirt.top, strip: placket, in: skirt.ends}", "open: 20 cm"),
        ("zip: {in: skirt.ends, zip: zip}", "open: 20 cm"),
        ("slit: {in: skirt.ends}", "open at hem: 25 cm"),
        ("side pocket: {in: skirt.ends, bag: placket}", "gap: 16 cm, gap below top: 6 cm"),
    ],
)
def test_a_seam_that_is_not_open_is_opened_in_a_step_that_is_there(closing: str, step: str, words: str) -> None:
    """Where no step closes the piece, or one that leaves nothing open, the step to write is told whole."""
    steps = f"- {closing}: {{of: skirt}}\n- {step}" if closing else f"- {step}"
    told = [fault.help or "" for fault in work(PIECES, steps, materials="  zip: {kind: zip, length: 20 cm}\n").faults]
    row = f"`- join ends: {{of: skirt, {words}}}`"
    wanted = {
        "": f"put {row}",
        "french seam": f"write {row} for the `french seam`",
        "join ends": f"write `{words}` in the",
    }
    assert any(help_.startswith(wanted[closing]) for help_ in told)
