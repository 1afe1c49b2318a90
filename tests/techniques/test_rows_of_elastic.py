"""Several channels in one casing, and elastic whose end is buttoned on inside."""

from __future__ import annotations

from fractions import Fraction

import pytest

from tests.techniques.small import refused, sound, work

PIECES = """skirt: {from: lawn, length: 120 cm, depth: 60 cm}
band: {from: lawn, length: 120 cm, depth: 32 mm}"""
SUPPLIES = (
    "  narrow: {kind: elastic, width: 6 mm, stretch: 100%}\n  slotted: {kind: elastic, width: 18 mm, stretch: 100%}\n"
)
SEAMS = """- neaten: {edge: [skirt.start, skirt.end, band.start, band.end]}
- join ends: {of: skirt, seam: 1 cm}
- join ends: {of: band, seam: 1 cm}
- narrow hem: {edge: skirt.bottom}
"""
BAND = f"{SEAMS}- band casing: {{band: band, to: skirt.top, seam: 1 cm}}\n"
DIVIDED = "- divide casing: {of: band, channels: 3}\n"
IN = "- insert elastic: {elastic: narrow, into: band, length: 68 cm}\n- close gap: {of: band}"


def test_a_casing_is_divided_in_channels_of_one_width() -> None:
    worked = sound(PIECES, BAND + DIVIDED + IN, materials=SUPPLIES)
    done = next(done for done in worked.performed if done.step.written.technique == "divide casing")
    # 32 mm less 2 mm of edge stitch are 30 mm, three times 10; two rows, each with the gap of 5 cm.
    assert done.after.casings["band"].width == 10
    assert (done.sewn[0].copies, done.sewn[0].length) == (2, 1200 - 50)
    words = worked.words()
    assert "Draw 2 lines round the casing on the right side: the first 1 cm below the fold, each next one 1 cm" in words
    assert "so that a gap of 5 cm stays open right above the first" in words
    assert "Draw one elastic into each of the 3 channels, the one next to the fold first" in words
    assert "sew the gaps of the 3 rows shut" in words


def test_each_channel_takes_its_own_elastic() -> None:
    worked = sound(PIECES, BAND + DIVIDED + IN, materials=SUPPLIES)
    drawn, closed = worked.performed[-2:]
    # 68 cm, 2 cm for the lap and 10 cm to try it on, three times; the three gaps of 5 cm, 1 cm over their rows at both ends.
    assert (drawn.used[0].amount, drawn.used[0].copies) == (800, 3)
    assert (closed.sewn[0].length, closed.sewn[0].copies) == (70, 3)


def test_a_gap_in_the_seam_gives_each_channel_its_opening() -> None:
    steps = BAND.replace("seam: 1 cm}\n- divide", "seam: 1 cm}").replace(
        "to: skirt.top, seam: 1 cm}", "to: skirt.top, seam: 1 cm, gap in: seam}"
    )
    words = sound(PIECES, steps + DIVIDED + IN, materials=SUPPLIES).words()
    assert "Sew along each line all round, 120 cm, 2 mm stitch, across the opened seam too" in words
    assert "Each goes in by its own opening in the seam" in words


@pytest.mark.parametrize(("count", "code"), [("1", "FB341"), ("2.5", "FB341"), ("6", "FB421")])
def test_channels_are_counted_and_wide_enough(count: str, code: str) -> None:
    steps = BAND + DIVIDED.replace("3", count) + IN.replace("elastic: narrow", "elastic: fine_elastic")
    assert code in work(PIECES, steps, materials=SUPPLIES).codes


def test_a_row_is_sewn_before_the_elastic_goes_in_and_once() -> None:
    inserted, closed = IN.splitlines()
    late = f"{BAND}{inserted}\n{DIVIDED}{closed}".replace("elastic: narrow", "elastic: elastic")
    assert "sewn through it" in refused("FB322", PIECES, late, materials=SUPPLIES).headline
    refused("FB322", PIECES, BAND + DIVIDED + DIVIDED + IN, materials=SUPPLIES)


def test_elastic_wider_than_its_channel_is_refused() -> None:
    steps = BAND + DIVIDED + IN.replace("elastic: narrow", "elastic: elastic")
    assert "the casing is 1 cm inside" in refused("FB323", PIECES, steps, materials=SUPPLIES).headline


def test_three_narrow_rows_carry_as_much_as_one_three_times_as_wide() -> None:
    """ELASTIC_CARRIES counts the width of all that lies in the casing."""
    words = [
        fault.headline
        for fault in work(PIECES, BAND + DIVIDED + IN, materials=SUPPLIES).warnings
        if fault.code == "FB417"
    ]
    assert words == []


# --- elastic that buttons ---

SKIRT = PIECES.splitlines()[0]
FOLDED = """- neaten: {edge: [skirt.start, skirt.end]}
- join ends: {of: skirt, seam: 1 cm}
- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: skirt.top, depth: 24 mm}
"""
BUTTONED = "- adjustable elastic: {elastic: slotted, into: skirt.top, length: 68 cm, let out: 6 cm, button: 12 mm}"


def test_elastic_is_cut_for_its_round_its_reserve_and_both_ends() -> None:
    worked = sound(SKIRT, FOLDED + BUTTONED, materials=SUPPLIES)
    done = worked.performed[-1]
    # 68 + 6 round, 3 to the button, 2 for the fast end and 2 for the other.
    assert done.used[0].amount == Fraction(810)
    casing = worked.bench.casings["skirt.top"]
    assert (casing.elastic_length, casing.open, casing.buttoned) == (680, False, True)
    words = worked.words()
    assert "81 cm long: 74 cm round, 3 cm to reach the button" in words
    assert "Sew a flat button, 1.2 cm wide, on the inside of the casing, 3 cm to the left of the gap" in words
    assert "A small child can choke" in words


def test_its_gap_stays_open() -> None:
    fault = refused("FB322", SKIRT, f"{FOLDED}{BUTTONED}\n- close gap: {{of: skirt.top}}", materials=SUPPLIES)
    assert "is buttoned on" in fault.headline


def test_a_band_opens_inside_by_its_seam() -> None:
    step = BUTTONED.replace("skirt.top", "band")
    refused("FB322", PIECES, BAND + step, materials=SUPPLIES)
    inside = BAND.replace("to: skirt.top, seam: 1 cm}", "to: skirt.top, seam: 1 cm, gap in: seam}")
    sound(PIECES.replace("32 mm", "25 mm"), inside + step, materials=SUPPLIES)


def test_a_reserve_is_worth_its_button() -> None:
    assert "FB421" in work(SKIRT, FOLDED + BUTTONED.replace("let out: 6 cm", "let out: 1 cm"), materials=SUPPLIES).codes


def test_let_out_it_is_no_longer_than_its_casing() -> None:
    fault = refused("FB324", SKIRT, FOLDED + BUTTONED.replace("let out: 6 cm", "let out: 60 cm"), materials=SUPPLIES)
    assert "128 cm" in fault.headline
