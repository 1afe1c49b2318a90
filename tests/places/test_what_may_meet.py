"""Pairs of things on one piece, apart, touching and overlapping, against the table of what may meet what."""

from __future__ import annotations

from fractions import Fraction
from itertools import product
from pathlib import Path
from typing import NamedTuple

import furbelow.s3_rehearse.places.what_may_meet as code
import pytest
from furbelow.garment.lying import Lies
from furbelow.techniques import techniques

from tests.techniques.small import work

TABLE = Path(code.__file__).with_name("what_may_meet.txt").read_text(encoding="utf-8")
SKIRT = "skirt: {from: net, length: 120 cm, depth: 80 cm}"
ROW = "{name}: {{from: net, length: 200 cm, depth: 5 cm}}"
POCKET = "{name}: {{from: net, length: 20 cm, depth: 10 cm}}"
# A strip is finished at both edges to lie on a piece, or at its top to hang from a line.
STRIP = """- french seam: {{of: {name}}}
- rolled hem: {{edge: {name}.bottom}}"""
FINISHED = "- rolled hem: {{edge: {strip}.top}}"


class Thing(NamedTuple):
    """What lies on cloth: its kind, the steps that place it `at` mm above the hem, and how far it reaches below and above there
    as it is sewn, in mm. finished: that height is asked of the finished piece, tucks to come counted.
    """

    kind: str
    steps: str
    below: int
    above: int
    finished: bool = False


# Tape of 16 mm; a strip 5 cm deep; a tuck whose fold lies 1 cm below its stitching; a pocket 10 cm
# deep; a margin of 1 cm, or two rows, below a line; three rows of elastic.
THINGS = {
    "boning channel": Thing(
        "st", "- boning channel: {{piece: skirt, above hem: {at} mm, tape: tape, bone: bone}}", 0, 16
    ),
    "ruche": Thing("ss", f"{FINISHED}\n- ruche: {{{{strip: {{strip}}, on: skirt, above hem: {{at}} mm}}}}", 0, 50),
    "tucks": Thing("tk", "- tucks: {{edge: skirt.bottom, depth: 1 cm, count: 1, from edge: {at} mm}}", 0, 10),
    "patch pocket": Thing(
        "ss", "- patch pocket: {{pocket: {strip}, on: skirt, above hem: {at} mm, from start: 40 cm}}", 100, 0, True
    ),
    "sew on": Thing(
        "ss",
        "- gather: {{edge: {strip}.top, length: 120 cm}}\n- sew on: {{edge: {strip}.top, on: skirt, above hem: {at} mm}}",
        10,
        0,
        True,
    ),
    "headed row": Thing(
        "ss",
        f"{FINISHED}\n- headed row: {{{{edge: {{strip}}.top, on: skirt, above hem: {{at}} mm, heading: 15 mm}}}}",
        6,
        0,
        True,
    ),
    "shirring": Thing(
        "el",
        "- shirring: {{edge: skirt.bottom, length: 80 cm, with: fine_elastic, rows: 3, spacing: 1 cm, from edge: {at} mm}}",
        0,
        21,
    ),
}
# Placed by a height too, and why they lie on no cloth, or can't lie beside all others.
NOT_PLACED = {
    "gather": "it reads a line's length",
    "pleats": "it reads a line's length",
    "bustle tapes": "they run down a back that dips",
}
FIRST, TUCK_TAKES = 300, 20


def _verdict(there: str, comes: str) -> str:
    """The sign in the table, read from its text by row and column."""
    lines = TABLE.split("ALONG THE PIECE\n")[1].split("\n\n")[0].splitlines()
    column = lines[0].split().index(comes)
    row = next(line for line in lines[1:] if line.startswith(there + ":"))
    return row.split()[1 + column][0]


def test_every_technique_that_lies_at_a_height_is_tried() -> None:
    heights = {"above hem", "from edge", "below top"}
    placed = {name for name, each in techniques().items() if heights & set(each.parameters)}
    assert placed == set(THINGS) | set(NOT_PLACED)


@pytest.mark.parametrize(("one", "two"), list(product(THINGS, THINGS)))
@pytest.mark.parametrize("gap", [0, -5])
@pytest.mark.parametrize("higher", [True, False])
def test_two_things_on_one_piece_meet_as_the_table_says(one: str, two: str, gap: int, higher: bool) -> None:
    """The second lies above or below the first, touching it or 5 mm on it; what gathers the piece lets nothing come after."""
    first, second = THINGS[one], THINGS[two]
    at = FIRST + first.above + gap + second.below if higher else FIRST - first.below - gap - second.above
    if two == "tucks" and not higher and not first.finished:
        at -= TUCK_TAKES  # it folds up cloth that lies flat yet
    steps, pieces = ["- french seam: {of: skirt}"], [SKIRT]
    for thing, strip, height in ((first, "one", FIRST), (second, "two", at)):
        if "on: skirt" in thing.steps:
            pocket = "pocket:" in thing.steps
            pieces.append(POCKET.format(name=strip) if pocket else ROW.format(name=strip))
            steps += [] if pocket else [STRIP.format(name=strip)]
        steps.append(thing.steps.format(at=height, strip=strip))
    worked = work("\n".join(pieces), "\n".join(steps))
    told = [fault for fault in (*worked.faults, *worked.warnings) if fault.code == "FB420"]
    if {"FB302", "FB333"} & set(worked.codes):
        assert one == "shirring"
    elif gap >= 0 or _verdict(first.kind, second.kind) in "+>":
        assert told == []
    else:
        assert len(told) == 1
        assert told[0].is_error == (_verdict(first.kind, second.kind) == "x")


# What each kind does to the cloth it lies on, told apart from the table: rows through all of its band or along both its edges
# sew down what is loose there; what is loose hangs free of its own row; a needle must not strike what is hard or drawn in.
SEWS_DOWN = ("tr", "ch", "st", "el", "co", "ga", "ss", "hm")
LOOSE = ("tk", "pl")
NO_NEEDLE = ("st", "el", "co", "zp")


@pytest.mark.parametrize(("there", "comes"), list(product(LOOSE, SEWS_DOWN)))
def test_a_loose_fold_is_not_sewn_down_in_silence(there: str, comes: str) -> None:
    assert _verdict(there, comes) in "!x"


@pytest.mark.parametrize(("there", "comes"), list(product(NO_NEEDLE, SEWS_DOWN)))
def test_no_needle_goes_through_what_is_hard_or_drawn_in_in_silence(there: str, comes: str) -> None:
    if (there, comes) != ("zp", "ga"):  # rows run from the one side of a zip to the other, and stop beside it
        assert _verdict(there, comes) in "!x"


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
