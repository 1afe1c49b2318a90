"""What bands, casings and loops tell at the waist: which face lies where, whose marks serve, tails, the label, the loops."""

from __future__ import annotations

import pytest
from furbelow.garment.technique import Tool
from furbelow.garment.workroom import Workroom

from tests.techniques.small import Worked, sound

SKIRT = "skirt: {from: CLOTH, length: LONG, depth: 50 cm}\nband: {from: lawn, length: 110 cm, depth: 3 cm}"
RINGS = """- french seam: {of: skirt}
- french seam: {of: band}
- narrow hem: {edge: skirt.bottom}"""
BAND = "- band casing: {band: band, to: skirt.top}"
CLOSED = """- insert elastic: {elastic: elastic, into: band, length: 70 cm}
- close gap: {of: band}"""
FOLDED = """- folded casing: {edge: skirt.top, depth: 25 mm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}
- close gap: {of: skirt.top}"""
LINED = """skirt: {from: lawn, length: 110 cm, depth: 50 cm}
lining: {from: lawn, length: 110 cm, depth: 45 cm}
band: {from: lawn, length: 110 cm, depth: 3 cm}"""
STACKED = """- french seam: {of: skirt}
- french seam: {of: lining}
- french seam: {of: band}
- narrow hem: {edge: skirt.bottom}
- narrow hem: {edge: lining.bottom}
- stack layers: {layers: [skirt.top, {edge: lining.top, right side: WAY}], as: waist}
- band casing: {band: band, to: waist}"""


# Heavier than 2.6 oz/yd2, which are 88 g/m2: no burning test is asked of it (16 CFR 1610.1, from memory).
TWILL = "  twill: {kind: cloth, fibre: cotton, width: 140 cm, weight: 150 g/m2, ravels: yes}\n"


def _skirt(cloth: str, before: str = "", long: str = "110 cm") -> Worked:
    steps = f"{RINGS}\n{before}\n{BAND}\n{CLOSED}"
    pieces = SKIRT.replace("from: lawn", "from: twill") if cloth == "twill" else SKIRT
    return sound(pieces.replace("CLOTH", cloth).replace("LONG", long), steps, materials=TWILL)


def _marks(worked: Worked, technique: str) -> list[str]:
    told = zip(worked.performed, worked.tellings(), strict=True)
    return [action.mark for done, said in told if done.step.written.technique == technique for action in said.actions]


# --- which face the band meets ---


@pytest.mark.parametrize(("way", "face"), [("out", "wrong side of the lining"), ("in", "right side of the lining")])
def test_the_band_meets_the_face_that_the_innermost_layer_turns_inwards(way: str, face: str) -> None:
    words = sound(LINED, f"{STACKED.replace('WAY', way)}\n{CLOSED}").words()
    assert f"the right side of the band against the {face}" in words


def test_the_band_meets_the_inside_of_cloth_whose_faces_are_alike() -> None:
    assert "against the inside of the skirt" in _skirt("net").words()
    assert "against the wrong side of the skirt" in _skirt("lawn").words()


# --- marks are made once ---


def test_an_edge_that_bears_marks_is_not_marked_again() -> None:
    gathered = "- gather: {edge: skirt.top, to: band.bottom}"
    flat, drawn = _skirt("lawn"), _skirt("lawn", gathered, "200 cm")
    assert {"band-casing-mark", "band-casing-mark-band"} <= set(_marks(flat, "band casing"))
    assert "band-casing-mark" not in _marks(drawn, "band casing")
    assert "band-casing-mark-band-alone" in _marks(drawn, "band casing")
    stacked = sound(LINED, f"{STACKED.replace('WAY', 'in')}\n{CLOSED}")
    assert "band-casing-mark-band-alone" in _marks(stacked, "band casing")


def test_marks_are_told_apart_from_those_of_pleats_by_their_colour() -> None:
    pleated = _skirt("lawn", "- pleats: {edge: skirt.top, to: band.bottom, count: 20}", "200 cm")
    assert "in another colour than the pleats" in pleated.words()


def test_thread_tails_of_gathers_are_knotted_before_the_band_is_sewn() -> None:
    drawn = _skirt("lawn", "- gather: {edge: skirt.top, to: band.bottom}", "200 cm")
    marks = _marks(drawn, "band casing")
    assert marks.index("band-casing-pin") < marks.index("tails-off-machine") < marks.index("band-casing-sew")
    (band,) = [done for done in drawn.performed if done.step.written.technique == "band casing"]
    # Two runs over two quarters each, two rows, knotted at both ends of each.
    assert band.thread_ends == 2 * 2 * 2
    assert not any(mark.startswith("tails-off") for mark in _marks(_skirt("lawn"), "band casing"))


# --- the label that warns of fire ---


@pytest.mark.parametrize("technique", ["band casing", "folded casing"])
@pytest.mark.parametrize("cloth", ["net", "lawn"])
def test_cloth_that_burns_fast_gets_its_label_before_the_waist_is_closed_and_other_cloth_none(
    technique: str, cloth: str
) -> None:
    """UK SI 1985/2043, Nightwear (Safety) Regulations 1985, schedule 2: KEEP AWAY FROM FIRE, red capitals of 10 point."""

    def worked(cloth: str) -> Worked:
        if technique == "band casing":
            return _skirt(cloth)
        pieces = SKIRT.replace("CLOTH", cloth).replace("LONG", "110 cm").splitlines()[0]
        return sound(pieces, "\n".join(RINGS.splitlines()[::2]) + f"\n{FOLDED}", materials=TWILL)

    sheer, other = worked(cloth), worked("twill")
    marks = _marks(sheer, technique)
    (laid,) = [at for at, mark in enumerate(marks) if mark in ("band-casing-label", "folded-casing-label")]
    (sewn,) = [at for at, mark in enumerate(marks) if mark in ("band-casing-sew", "folded-casing-sew")]
    assert marks.index("fire-label-write") < laid < sewn
    assert sheer.words().count("KEEP AWAY FROM FIRE") == 1
    assert any(Tool.FIRE_LABEL in told.tools for told in sheer.tellings())
    assert "KEEP AWAY FROM FIRE" not in other.words()
    assert not any(Tool.FIRE_LABEL in told.tools for told in other.tellings())


# --- loops ---


def test_loops_of_a_ring_begin_at_its_seam_and_those_of_a_flat_edge_within_its_ends() -> None:
    loops = "- hang loops: {edge: skirt.top, tape: ribbon, count: 2}"
    ring = _skirt("lawn", loops).words()
    assert "the first at the side seam, then every 55 cm" in ring  # 110 cm / 2
    flat = sound(
        "skirt: {from: lawn, length: 80 cm, depth: 50 cm}\nband: {from: lawn, length: 80 cm, depth: 3 cm}\n"
        "tie: {from: lawn, count: 2, length: 60 cm, depth: 3 cm}",
        f"""- narrow hem: {{edge: skirt.start}}
        - narrow hem: {{edge: skirt.end}}
        - narrow hem: {{edge: skirt.bottom}}
        {loops}
        - fitted waistband: {{band: band, to: skirt.top, fasten: ties, overlap: 0 cm}}
        - tie ends: {{tie: tie, to: band}}""",
    ).words()
    assert "side seam" not in flat
    assert "from one end, then every" in flat


def test_a_single_loop_is_told_as_one() -> None:
    words = _skirt("lawn", "- hang loops: {edge: skirt.top, tape: ribbon, count: 1}").words()
    assert "Cut 24 cm of satin ribbon." in words
    assert "The loop hangs down 12 cm" in words


# --- what is not there is not told ---


def test_a_casing_of_cloth_that_does_not_ravel_may_be_folded_once() -> None:
    pieces = SKIRT.replace("CLOTH", "net").replace("LONG", "110 cm").splitlines()[0]
    folded = FOLDED.replace("depth: 25 mm", "depth: 25 mm, turn under: 0 cm")
    worked = sound(pieces, "\n".join(RINGS.splitlines()[::2]) + f"\n{folded}")
    assert "folded-casing-fold-once" in _marks(worked, "folded casing")
    assert " 0 cm" not in worked.words()


def test_a_little_is_never_told_as_nothing() -> None:
    pieces = SKIRT.replace("CLOTH", "lawn").replace("LONG", "110 cm")
    words = sound(pieces, f"{RINGS}\n{BAND}\n{CLOSED}", room=Workroom(units="inches")).words()
    assert "covers the stitch line by 1/8 in" in words  # 1 mm, and a tape shows no less
    assert " 0 in" not in words
