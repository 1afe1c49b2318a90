"""Pairs of things on one piece, apart, touching and overlapping, against the table of what may meet what."""

from __future__ import annotations

from fractions import Fraction
from itertools import product
from pathlib import Path

import furbelow.s3_rehearse.places.what_may_meet as code
import pytest
from furbelow.garment.lying import Lies

from tests.techniques.small import work

TABLE = Path(code.__file__).with_name("what_may_meet.txt").read_text(encoding="utf-8")
PIECES = """skirt: {from: lawn, length: 120 cm, depth: 80 cm}
one: {from: lawn, length: 200 cm, depth: 5 cm}
two: {from: lawn, length: 200 cm, depth: 5 cm}"""
READY = """- french seam: {of: skirt}
- french seam: {of: one}
- rolled hem: {edge: one.top}
- rolled hem: {edge: one.bottom}
- french seam: {of: two}
- rolled hem: {edge: two.top}
- rolled hem: {edge: two.bottom}"""
# For each: its kind, the step that places its lower edge so many mm above the hem, and how far up it reaches from there as
# it is sewn: tape of 16 mm, a strip 5 cm deep, a tuck whose fold lies 1 cm below its stitching.
THINGS = {
    "hoop": ("st", "- boning channel: {{piece: skirt, above hem: {at} mm, tape: tape, bone: bone}}", 16),
    "ruche": ("ss", "- ruche: {{strip: {strip}, on: skirt, above hem: {at} mm}}", 50),
    "tuck": ("tk", "- tucks: {{edge: skirt.bottom, depth: 1 cm, count: 1, from edge: {at} mm}}", 10),
}
FIRST = 200


def _verdict(there: str, comes: str) -> str:
    """The sign in the table, read from its text by row and column."""
    lines = TABLE.split("ALONG THE PIECE\n")[1].split("\n\n")[0].splitlines()
    column = lines[0].split().index(comes)
    row = next(line for line in lines[1:] if line.startswith(there + ":"))
    return row.split()[1 + column][0]


@pytest.mark.parametrize(("one", "two"), list(product(THINGS, THINGS)))
@pytest.mark.parametrize("gap", [20, 0, -5])
def test_two_things_on_one_piece_meet_as_the_table_says(one: str, two: str, gap: int) -> None:
    (there, first, high), (comes, second, _) = THINGS[one], THINGS[two]
    steps = [
        first.format(at=FIRST, strip="one"),
        second.format(at=FIRST + high + gap, strip="two"),
    ]
    worked = work(PIECES, "\n".join([READY, *steps]))
    told = [fault for fault in (*worked.faults, *worked.warnings) if fault.code == "FB420"]
    if gap >= 0 or _verdict(there, comes) in "+>":
        assert told == []
    else:
        assert len(told) == 1
        assert told[0].is_error == (_verdict(there, comes) == "x")


def test_the_table_is_whole() -> None:
    for there, comes in product(Lies, Lies):
        assert _verdict(str(there), str(comes)) in "+>!x"


@pytest.mark.parametrize(("hem", "told"), [("11 cm", False), ("13 cm", True)])
def test_a_hem_may_touch_a_tuck_and_not_reach_in(hem: str, told: bool) -> None:
    """The fold of the tuck lies 23 cm above the cut edge; a hem of d and a turn of 1 cm lies on 2 d + 1 cm of flat cloth."""
    steps = f"""- french seam: {{of: skirt}}
- tucks: {{edge: skirt.bottom, depth: 1 cm, count: 1, from edge: 23 cm}}
- deep hem: {{edge: skirt.bottom, depth: {hem}, turn under: 1 cm}}"""
    worked = work("skirt: {from: lawn, length: 120 cm, depth: 80 cm}", steps)
    assert ("FB420" in worked.codes) == told


@pytest.mark.parametrize(("lap", "how"), [("1 mm", "error"), ("7 mm", "warning"), ("2 cm", "")])
def test_a_lap_of_elastic_holds_or_is_told(lap: str, how: str) -> None:
    steps = f"""- french seam: {{of: skirt}}
- folded casing: {{edge: skirt.top, depth: 25 mm}}
- insert elastic: {{elastic: elastic, into: skirt.top, length: 65 cm, overlap: {lap}}}
- close gap: {{of: skirt.top}}"""
    worked = work("skirt: {from: lawn, length: 120 cm, depth: 40 cm}", steps)
    found = [fault.severity.value for fault in (*worked.faults, *worked.warnings) if fault.code == "FB421"]
    assert found == ([how] if how else [])


@pytest.mark.parametrize("share", [Fraction(n, 20) for n in range(8, 17)])
def test_uneven_gathers_leave_each_half_its_cloth(share: Fraction) -> None:
    """180 cm of cloth on 120 cm: a half has 60 cm of line, so the front needs (1 - share) x 180 cm to be 60 cm or more."""
    steps = f"""- french seam: {{of: skirt}}
- french seam: {{of: flounce}}
- gather: {{edge: flounce.top, to: skirt.bottom, behind: {float(share * 100):g}%}}
- attach: {{edge: flounce.top, to: skirt.bottom}}
- neaten: {{seam: flounce.top}}"""
    pieces = """skirt: {from: lawn, length: 120 cm, depth: 40 cm}
flounce: {from: lawn, length: 180 cm, depth: 20 cm}"""
    codes = work(pieces, steps).codes
    # A hundredth may be stretched on unseen.
    least = min((1 - share) * 180, share * 180)
    assert ("FB422" in codes) == (least < Fraction(594, 10))
