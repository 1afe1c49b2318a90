"""Closing an opening at a finished top edge: what it closes to, what it takes, and when there is nothing to close."""

from __future__ import annotations

import pytest

from tests.techniques.small import refused, sound, work

PIECES = """skirt: {from: lawn, length: 130 cm, depth: 50 cm, grain: across}
strip: {from: lawn, length: 44 cm, depth: 3 cm}
face: {from: lawn, length: 81 cm, depth: 4 cm, grain: across}"""
OPENED = """- french seam: {of: skirt}
- narrow hem: {edge: skirt.bottom}
- placket: {edge: skirt.top, strip: strip, slit: 22 cm}
- gather: {edge: skirt.top, length: face.length}"""
FACED = f"""{OPENED}
- neaten: {{edge: [face.bottom, face.start, face.end]}}
- facing: {{edge: skirt.top, with: face.top}}"""
HOOK = "  hook: {kind: fastening, price: 0.40 EUR}\n"


@pytest.mark.parametrize("by", ["hook and bar", "hook and eye", "snaps"])
def test_the_waist_closes_to_its_edge_less_the_overlap(by: str) -> None:
    """A faced edge of 81 cm with a placket of 3 cm closes to 78 cm."""
    worked = sound(PIECES, f"{FACED}\n- fastening: {{edge: skirt.top, by: {by}}}")
    opening = worked.bench.openings["skirt.top"]
    assert (opening.waist, opening.closed_by) == (780, by)


def test_a_material_is_used_once_for_each() -> None:
    worked = sound(PIECES, f"{FACED}\n- fastening: {{edge: skirt.top, with: hook, count: 2}}", materials=HOOK)
    assert [(used.material, used.amount) for used in worked.performed[-1].used] == [("hook", 2)]


def test_a_waist_that_closes_too_tight_is_refused() -> None:
    fault = refused("FB345", PIECES.replace("81 cm", "79 cm"), f"{FACED}\n- fastening: {{edge: skirt.top}}")
    assert "76 cm and the waist is 78 cm, 2 cm too tight" in fault.headline


def test_an_edge_that_is_not_finished_is_refused() -> None:
    bare = PIECES.partition("\nface")[0]
    opened = OPENED.replace("face.length", "81 cm")
    fault = refused("FB347", bare, f"{opened}\n- fastening: {{edge: skirt.top}}")
    assert fault.headline == "`skirt.top` is raw still, and a fastening closes a finished edge"


def test_an_edge_without_an_opening_is_refused() -> None:
    steps = "- french seam: {of: skirt}\n- narrow hem: {edge: skirt.top}\n- fastening: {edge: skirt.top}"
    skirt = PIECES.partition("\n")[0]
    assert refused("FB347", skirt, steps).headline == "`skirt.top` has no opening to close"


def test_an_opening_is_closed_once() -> None:
    twice = "\n- fastening: {edge: skirt.top}\n- fastening: {edge: skirt.top, by: snaps}"
    assert refused("FB347", PIECES, FACED + twice).headline == "the opening in `skirt.top` is closed already"


def test_half_a_fastener_is_refused() -> None:
    assert work(PIECES, f"{FACED}\n- fastening: {{edge: skirt.top, count: 1.5}}").codes == ["FB341"]


# --- buttons, and what closes the rest of an opening below its band ---

BAND = "waistband: {from: lawn, length: waist_girth + 3 cm, depth: 3 cm}"
BANDED = PIECES.partition("\nface")[0] + f"\n{BAND}"
ON_BAND = (
    OPENED.replace("face.length", "waistband.length")
    + "\n- fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm}"
)


def test_a_buttonhole_is_as_long_as_its_button_is_wide_and_thick() -> None:
    """The Vogue Sewing Book, 1970: diameter and height; a button is taken to be 3 mm thick, a house rule."""
    worked = sound(PIECES, f"{FACED}\n- fastening: {{edge: skirt.top, by: button and buttonhole, button: 18 mm}}")
    words = worked.words()
    assert (
        "Mark a buttonhole 2.1 cm long in the end that lies on top, 1.2 cm below the top edge: at right angles to the edge, from 9 mm inside it"
        in words
    )
    # The middle of the button lies 9 + 3 mm inside the end, of an overlap of 30 mm.
    assert "mark the end beneath there, 1.8 cm from its edge" in words
    assert worked.performed[-1].sewn[1].length == 2 * 21


def test_a_button_of_the_materials_is_as_wide_as_it_is_sold() -> None:
    disc = "  disc: {kind: fastening, width: 12 mm, about: shirt buttons}\n"
    step = "- fastening: {edge: skirt.top, by: button and loop, with: disc}"
    assert "to and fro over 1.2 cm" in sound(PIECES, f"{FACED}\n{step}", materials=disc).words()


def test_an_overlap_bears_its_button() -> None:
    wide = "- fastening: {edge: skirt.top, by: button and buttonhole, button: 28 mm}"
    assert "FB421" in work(PIECES, f"{FACED}\n{wide}").codes
    sound(PIECES, f"{FACED}\n{wide.replace('28 mm', '24 mm')}")


@pytest.mark.parametrize("by", ["snaps", "button and buttonhole", "hook and eye"])
def test_below_a_band_it_closes_the_rest_of_the_opening(by: str) -> None:
    """The slit of 22 cm, less 1 cm that the band takes: two fasteners share it in three."""
    worked = sound(BANDED, f"{ON_BAND}\n- fastening: {{edge: skirt.top, by: {by}, count: 2}}")
    words = worked.words()
    assert "Close the band. Lay the edges of the opening below it over each other by 3 cm" in words
    assert (
        "the first about 7 cm below the band, the next every about 7 cm" in words
        or "the first 7 cm below the band" in words
    )
    assert worked.bench.openings["skirt.top"].closed_by == "button"  # the band still closes the waist


def test_a_zip_needs_nothing_below_its_band() -> None:
    skirt = "skirt: {from: lawn, length: 116 cm, depth: 60 cm}\nwaistband: {from: lawn, length: waist_girth + 4 cm, depth: 3 cm}"
    steps = """- neaten: {edge: [skirt.start, skirt.end]}
    - join ends: {of: skirt, seam: 2 cm, open: 20 cm}
    - zip: {in: skirt.ends, zip: zip}
    - gather: {edge: skirt.top, length: waist_girth + 1 cm}
    - fitted waistband: {band: waistband, to: skirt.top, overlap: 3 cm}
    - narrow hem: {edge: skirt.bottom}
    - fastening: {edge: skirt.top, by: snaps}"""
    refused("FB347", skirt, steps, materials="  zip: {kind: zip, length: 22 cm}\n")
