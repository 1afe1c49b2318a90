"""A seam that is left open: for a way in with its zip, for a slit or vent at the hem, for a gap between."""

from __future__ import annotations

import pytest
from furbelow.garment.levels import levels_of
from furbelow.garment.technique import SetUp
from furbelow.s3_rehearse.rings import rings_of
from hypothesis import given
from hypothesis import strategies as st

from tests.small_guide import small_guide
from tests.techniques.small import refused, sound, work

PIECES = """skirt: {from: lawn, length: 116 cm, depth: 60 cm}
waistband: {from: lawn, length: waist_girth + 1 cm + 3 cm, depth: 3 cm}"""
SKIRT = PIECES.splitlines()[0]
ZIPS = "  zip: {kind: zip, length: 22 cm}\n"
NEAT = "- neaten: {edge: skirt.start}\n- neaten: {edge: skirt.end}"
SEAM = "- join ends: {of: skirt, seam: 2 cm, open: 20 cm}"
ZIP = "- zip: {in: skirt.ends, zip: zip}"
WAIST = """- gather: {edge: skirt.top, length: waist_girth + 1 cm}
- fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm, fasten: hook and bar}
- narrow hem: {edge: skirt.bottom}"""


def test_the_opening_is_measured_from_the_finished_waist_and_the_seam_is_shorter_by_it() -> None:
    worked = sound(PIECES, f"{NEAT}\n{SEAM}\n{ZIP}\n{WAIST}", materials=ZIPS)
    (opening,) = worked.bench.openings.values()
    assert opening.length == 200  # 21 cm from the cut edge, of which the waistband takes 1
    assert opening.zipped
    # 60 cm of skirt, 1 cm at the waist, 1.5 cm at the hem, less 21 cm that stay open.
    assert worked.performed[2].sewn[0].length == 600 + 10 + 15 - 210
    words = worked.words()
    assert "mark where the opening ends, 21 cm below the top edge" in words
    assert "It stands out 1 cm at the end on top and 4 cm at the other." in words


def test_without_its_opening_a_close_waist_does_not_pass_the_hips() -> None:
    """The band of 79 cm and 2 x 10 cm make 99, and hips of 104 with 5 cm of ease want 109."""
    short = work(PIECES, f"{NEAT}\n{SEAM.replace('20 cm', '10 cm')}\n{ZIP}\n{WAIST}", materials=ZIPS)
    assert "the way in is 99 cm round the open band and down the slit and 109 cm is needed" in str(
        [fault.headline for fault in short.faults]
    )


@pytest.mark.parametrize(("way", "rows"), [("centred", 3), ("lapped", 3), ("invisible", 1)])
def test_each_way_of_the_zip_is_told(way: str, rows: int) -> None:
    step = ZIP.replace("zip: zip", f"zip: zip, way: {way}")
    worked = sound(PIECES, f"{NEAT}\n{SEAM}\n{step}\n{WAIST}", materials=ZIPS)
    done = worked.performed[3]
    assert len(done.sewn) == rows
    assert done.setup is SetUp.STRAIGHT
    assert [use.amount for use in done.used] == [1]
    assert ("basting" in worked.words()) == (way != "invisible")


def test_a_zip_that_is_too_short_is_refused_and_a_long_one_is_cut_off() -> None:
    steps = f"{NEAT}\n{SEAM}\n{ZIP}\n{WAIST}"
    fault = refused("FB437", PIECES, steps, materials=ZIPS.replace("22", "18"))
    assert fault.headline == "`zip` is 18 cm long and the opening wants 20 cm, 2 cm more"
    assert "cut the zip off" in sound(PIECES, steps, materials=ZIPS.replace("22", "30")).words()
    assert "cut the zip off" not in sound(PIECES, steps, materials=ZIPS.replace("22", "20")).words()


def test_an_invisible_zip_is_longer_than_its_opening() -> None:
    steps = f"{NEAT}\n{SEAM}\n{ZIP.replace('zip: zip', 'zip: zip, way: invisible')}\n{WAIST}"
    sound(PIECES, steps, materials=ZIPS)
    refused("FB437", PIECES, steps, materials=ZIPS.replace("22", "20"))


def test_a_zip_wants_a_seam_that_is_open_at_its_top() -> None:
    closed = SEAM.replace(", open: 20 cm", "")
    assert (
        "no seam `skirt.ends` is open at its top"
        in refused("FB318", SKIRT, f"{NEAT}\n{closed}\n{ZIP}", materials=ZIPS).headline
    )


def test_raw_edges_beside_an_opening_are_refused() -> None:
    fault = refused("FB335", PIECES, f"{SEAM}\n{ZIP}\n{WAIST}", materials=ZIPS)
    assert "- neaten: {edge: skirt.start}" in (fault.help or "")


def test_a_narrow_margin_is_told_where_a_zip_is_sewn_to_it() -> None:
    worked = work(PIECES, f"{NEAT}\n{SEAM.replace('2 cm', '12 mm')}\n{ZIP}\n{WAIST}", materials=ZIPS)
    assert "a margin for a zip of 1.2 cm is 3 mm too little" in str([fault.headline for fault in worked.warnings])


def test_openings_must_leave_a_seam() -> None:
    fault = refused("FB312", PIECES, f"{NEAT}\n{SEAM.replace('20 cm', '59 cm')}\n{ZIP}\n{WAIST}", materials=ZIPS)
    assert "the openings leave 2.5 cm of a seam of 62.5 cm" in fault.headline


def test_a_gap_wants_a_length_and_a_place() -> None:
    refused("FB313", SKIRT, f"{NEAT}\n{SEAM.replace('open: 20 cm', 'gap: 16 cm')}", materials=ZIPS)


@pytest.mark.parametrize(("seam", "kind"), [("2 cm", "slit"), ("4 cm", "vent")])
def test_a_slit_opens_the_hem(seam: str, kind: str) -> None:
    steps = f"""{NEAT}
    - join ends: {{of: skirt, seam: {seam}, open: 20 cm, open at hem: 15 cm}}
    {ZIP}
    - slit: {{in: skirt.ends, as: {kind}}}
    {WAIST}"""
    worked = sound(PIECES, steps, materials=ZIPS)
    assert not worked.bench.ring(worked.bench.edge("skirt.bottom"))
    assert "a few stitches back at both ends" in worked.words()
    assert "FB421" not in [fault.code for fault in worked.warnings]


def test_the_rings_of_the_garment_know_that_one_is_open_at_the_slit_and_one_at_the_zip() -> None:
    seam = "- join ends: {of: skirt, seam: 2 cm, open: 20 cm, open at hem: 25 cm}"
    opened = sound(PIECES, f"{NEAT}\n{seam}\n{ZIP}\n{WAIST}", materials=ZIPS)
    closed = sound(PIECES, f"{NEAT}\n{SEAM}\n{ZIP}\n{WAIST}", materials=ZIPS)
    found = [
        {ring.name for ring in rings_of(each.bench, each.solved, levels_of(each.bench))} for each in (opened, closed)
    ]
    assert found == [set(), {"skirt.bottom"}]


def test_a_narrow_vent_and_a_second_finish_are_told() -> None:
    steps = f"{NEAT}\n- join ends: {{of: skirt, seam: 2 cm, open at hem: 15 cm}}\n- slit: {{in: skirt.ends, as: vent}}"
    worked = work(PIECES, steps, materials=ZIPS)
    assert "an overlap of 2 cm is 2 cm too little" in str([fault.headline for fault in worked.warnings])
    assert "finished already" in str(
        [f.headline for f in work(PIECES, f"{steps}\n- slit: {{in: skirt.ends}}", materials=ZIPS).faults]
    )
    assert "is open at its hem" in str(
        [f.headline for f in work(PIECES, f"{NEAT}\n{SEAM}\n- slit: {{in: skirt.ends}}", materials=ZIPS).faults]
    )


# --- a placket in the seam ---

BOUND = """skirt: {from: lawn, length: 116 cm, depth: 60 cm}
strip: {from: lawn, length: 42 cm, depth: 3 cm}
waistband: {from: lawn, length: waist_girth + 3 cm, depth: 3 cm}"""
PLACKET = "- placket: {edge: skirt.top, strip: strip, in: skirt.ends}"
BANDED = """- gather: {edge: skirt.top, length: waistband.length}
- fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm}
- narrow hem: {edge: skirt.bottom}"""


def test_a_strip_binds_the_opening_of_a_seam_on_its_line() -> None:
    worked = sound(BOUND, f"{NEAT}\n{SEAM}\n{PLACKET}\n{BANDED}")
    done = worked.performed[3]
    # 20 cm below the finished waist and 1 cm that the band takes, on both sides; the strip is folded over 3 cm.
    assert done.sewn[0].length == 2 * 210
    assert done.after.edge("skirt.top").cloth_length == 1160 + 30
    opening = worked.bench.openings["skirt.top"]
    assert (opening.overlap, opening.closed_by) == (30, "button")
    words = worked.words()
    assert (
        "cut into both margins of the seam, straight to its last stitch. From there up trim both margins to 6 mm"
        in words
    )
    assert "Cut along the line" not in words


def test_a_placket_in_a_seam_is_as_long_as_the_seam_was_left_open() -> None:
    short = BOUND.replace("42 cm", "30 cm")
    assert "12 cm too short" in refused("FB401", short, f"{NEAT}\n{SEAM}\n{PLACKET}\n{BANDED}").headline
    both = PLACKET.replace("in: skirt.ends", "in: skirt.ends, slit: 20 cm")
    refused("FB313", BOUND, f"{NEAT}\n{SEAM}\n{both}\n{BANDED}")
    closed = SEAM.replace(", open: 20 cm", "")
    assert "FB318" in work(BOUND, f"{NEAT}\n{closed}\n{PLACKET}\n{BANDED}").codes


def test_an_opening_is_bound_before_its_edge_is_gathered() -> None:
    gathered, *rest = BANDED.splitlines()
    steps = "\n".join([NEAT, SEAM, gathered, PLACKET, *rest])
    assert "FB333" in work(BOUND, steps).codes


@given(st.integers(3, 40), st.integers(20, 60))
def test_the_bright_thread_is_never_tied_where_the_seam_is_open(opened: int, deep: int) -> None:
    """However deep the opening, and with joins that make a thread needed."""
    pieces = f"skirt: {{from: net, count: 2, length: 70 cm, depth: {deep} cm}}"
    worked = work(pieces, f"- join ends: {{of: skirt, seam: 15 mm, into: one ring, open: {opened} cm}}")
    if worked.performed[0].refused:
        return
    (told,) = [text for text in worked.words().split(". ") if "tie a bright thread" in text]
    down = float(told.split(" cm from the top")[0].rpartition(" ")[2])
    assert opened < down < deep


@pytest.mark.parametrize(
    ("behind", "said"),
    [
        ("", "turn the margin on the side of the back over the row of long stitches, towards the front"),
        (", behind: 60%", "turn the margin of the right half over the row of long stitches, towards the left half"),
    ],
)
def test_the_side_beneath_a_lap_follows_from_where_the_seam_lies(behind: str, said: str) -> None:
    lapped = ZIP.replace("}", ", way: lapped}")
    gathered = f"- gather: {{edge: skirt.top, length: 80 cm{behind}}}"
    assert said in work(PIECES, f"{NEAT}\n{SEAM}\n{lapped}\n{gathered}", materials=ZIPS).words()


@pytest.mark.parametrize("way", ["centred", "lapped", "invisible"])
def test_the_stop_of_a_zip_lies_clear_of_the_seam_that_comes_at_the_top(way: str) -> None:
    """A stop in the line of a seam breaks the needle: it lies deeper than the seam takes."""
    band = """- gather: {edge: skirt.top, length: 80 cm}
    - fitted waistband: {band: band, to: skirt.top, overlap: 3 cm, fasten: hook and bar, seam: 1 cm}"""
    zipped = ZIP.replace("}", f", way: {way}}}")
    worked = work(
        f"{PIECES}\nband: {{from: lawn, length: 83 cm, depth: 3 cm}}",
        f"{NEAT}\n{SEAM}\n{zipped}\n{band}",
        materials=ZIPS,
    )
    assert "upper stop 1.5 cm below the cut edge" in worked.words()


def test_every_move_of_a_lapped_zip_is_drawn_beside_its_sentence() -> None:
    guide = small_guide(PIECES, f"{NEAT}\n{SEAM}\n{ZIP[:-1]}, way: lapped}}\n{WAIST}", materials=ZIPS)
    (zipped,) = (each for part in guide.parts for each in part.operations if each.title.startswith("Sew a zip"))
    shown = {number for figure in zipped.figures for number in figure.shows}
    moves = (
        "With the wrong side up",
        "Turn the work inside out. Fold",
        "Slide the closed",
        "With the zip foot",
        "Spread",
    )
    assert {step.number for step in zipped.steps if step.text.startswith((*moves, "On the lap"))} <= shown


@pytest.mark.parametrize("zipped", [True, False])
def test_a_zip_is_open_where_a_row_crosses_its_top(zipped: bool) -> None:
    """Every step that sews along the top edge by machine says so, and no other."""
    steps = f"{NEAT}\n{SEAM}\n{ZIP}\n{WAIST}" if zipped else f"{NEAT}\n{SEAM}\n{WAIST}"
    guide = small_guide(PIECES, steps, materials=ZIPS if zipped else "")
    told = {
        operation.title
        for part in guide.parts
        for operation in part.operations
        if any(step.text.startswith("Open the zip a hand's width") for step in operation.steps)
    }
    assert told == ({"Gather the top edge of the skirt", "Sew on the waistband"} if zipped else set())
