"""Casings, channels, buttonholes and piping against published standards, handbooks and geometry."""

from __future__ import annotations

from fractions import Fraction
from math import pi

from furbelow.techniques.drawstring import PASS as CORD_PASS
from furbelow.techniques.fastening import Fastened
from furbelow.techniques.piping import ROUND
from furbelow.techniques.shared.elastics import PASS

from tests.techniques.small import INCH, work


def test_a_casing_is_an_eighth_of_an_inch_wider_than_its_elastic() -> None:
    """Association of Sewing and Design Professionals, standards, internal casings: usually 1/8 in wider than the elastic."""
    assert abs(PASS - INCH / 8) < Fraction(1, 4)
    # The same for each channel of several: 6 mm go into one of 10, and not into one of 8.
    skirt = "skirt: {from: lawn, length: 120 cm, depth: 60 cm}\nband: {from: lawn, length: 120 cm, depth: DEEP}"
    steps = """- french seam: {of: skirt}
    - narrow hem: {edge: skirt.bottom}
    - neaten: {edge: [band.start, band.end]}
    - join ends: {of: band}
    - band casing: {band: band, to: skirt.top, gap in: seam}
    - divide casing: {of: band, channels: 2}
    - insert elastic: {elastic: narrow, into: band, length: 68 cm}
    - close gap: {of: band}"""
    narrow = "  narrow: {kind: elastic, width: 6 mm, stretch: 100%}\n"
    assert work(skirt.replace("DEEP", "22 mm"), steps, materials=narrow).codes == []
    assert work(skirt.replace("DEEP", "18 mm"), steps, materials=narrow).codes == ["FB323"]


def test_the_gap_for_a_cord_lets_it_through() -> None:
    """The same standards: a casing is usually 1/4 in wider than its drawstring; ours asks half of that of the gap alone."""
    assert 0 < CORD_PASS <= INCH / 4


def test_a_buttonhole_is_as_long_as_its_button_is_wide_and_high() -> None:
    """The Vogue Sewing Book, 1970: width and height of the button together; 1/2 in wide and 1/8 in high give 5/8 in."""
    found = Fastened(Fraction(0), Fraction(0), 1, Fraction(0), INCH / 2).buttonhole
    assert abs(found - INCH * 5 / 8) < Fraction(1, 4)


def test_a_piping_strip_goes_round_its_cord() -> None:
    """Geometry: the circumference is pi times the diameter; 22/7 is over by 0.04 %, on the side that never binds."""
    assert 0 < float(ROUND) - pi < 0.002
