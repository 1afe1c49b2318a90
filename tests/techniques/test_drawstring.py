"""A drawstring: through an open casing, with ends that are safe on a child."""

from __future__ import annotations

from furbelow.garment.technique import facts_of
from furbelow.techniques.drawstring import Threaded

from tests.techniques.small import refused, sound, work

SKIRT = "skirt: {from: lawn, length: LONG, depth: 50 cm}"
CASING = """- french seam: {of: skirt}
- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: skirt.top, depth: 2 cm, turn under: 6 mm, gap: 3 cm}"""
CORD = "- drawstring: {cord: cord, into: skirt.top, ends: ENDS}"
PASSES = SKIRT.replace("LONG", "110 cm")


def steps(ends: str, more: str = "") -> str:
    return f"{CASING}\n{CORD.replace('ENDS', ends + more)}"


def test_the_cord_takes_the_casing_and_both_ends() -> None:
    worked = sound(PASSES, steps("12 cm"))
    casing = worked.bench.casings["skirt.top"]
    assert casing.cord == "cord"
    assert not casing.open
    assert worked.performed[-1].used[0].amount == 1100 + 2 * (120 + 20)  # 2 cm of each end are folded under
    # Drawn in from 110 to 78 cm, half of the 32 cm comes out at each end.
    assert facts_of(worked.performed[-1], Threaded).drawn == 120 + 160
    assert "28 cm hang out at each end" in worked.words()
    assert "EN 14682:2007" in worked.words()


def test_ends_too_long_for_a_child_are_refused_with_both_numbers() -> None:
    fault = refused("FB348", PASSES, steps("20 cm"))
    assert "20 cm when the casing is flat, and on a child 14 cm is the most, 6 cm less" in fault.headline


def test_ends_that_grow_too_long_when_drawn_in_are_refused() -> None:
    fault = refused("FB348", PASSES, steps("14 cm"))
    assert "30 cm when the casing is drawn in, and on a child 28 cm is the most, 2 cm less" in fault.headline
    assert fault.help == "make the ends 12 cm, or use elastic"


def test_a_grown_up_may_have_longer_ends() -> None:
    worked = sound(PASSES, steps("30 cm", ", for: grown-up"))
    assert worked.performed[-1].used[0].amount == 1100 + 2 * (300 + 40)  # 4 cm of each end go into its knot


def test_a_childs_cord_ends_in_no_knot_and_a_grown_ups_in_one() -> None:
    def marks(more: str) -> list[str]:
        return [action.mark for action in sound(PASSES, steps("12 cm", more)).tellings()[-1].actions]

    assert "drawstring-fold" in marks("")
    assert "drawstring-knot" not in marks("")
    assert "drawstring-knot" in marks(", for: grown-up")
    assert "drawstring-fold" not in marks(", for: grown-up")


def test_the_gap_is_in_front_for_a_cord_and_beside_the_seam_for_elastic() -> None:
    elastic = "- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}\n- close gap: {of: skirt.top}"
    cord, drawn_in = (
        sound(PASSES, steps("12 cm")).words(),
        sound(PASSES, f"{CASING.replace('2 cm', '3 cm')}\n{elastic}").words(),
    )
    # A quarter of 110 cm round from the side seam.
    assert "at the middle of the front, 27.5 cm from the side seam" in cord
    assert "from 2 cm to 5 cm to the right of the side seam" in drawn_in
    assert "middle of the front" not in drawn_in


def test_a_casing_too_narrow_for_the_hips_is_told() -> None:
    assert work(SKIRT.replace("LONG", "100 cm"), steps("12 cm")).codes == ["FB408"]


def test_a_gap_that_holds_the_cord_is_not_closed() -> None:
    assert "come out of the gap" in refused("FB322", PASSES, steps("12 cm") + "\n- close gap: {of: skirt.top}").headline


def test_elastic_and_cord_do_not_share_a_casing() -> None:
    more = "\n- insert elastic: {elastic: elastic, into: skirt.top, length: 70 cm}"
    assert "holds `cord` already" in refused("FB322", PASSES, steps("12 cm") + more).headline


def test_no_casing_no_cord() -> None:
    refused("FB321", PASSES, f"- french seam: {{of: skirt}}\n{CORD.replace('ENDS', '12 cm')}")


def test_a_cord_thicker_than_its_casing_is_refused() -> None:
    fault = refused("FB323", PASSES, steps("12 cm").replace("cord: cord", "cord: beading"))
    assert "2.5 cm wide and the casing is 1.8 cm inside, 7 mm too narrow" in fault.headline
