"""A row with a heading on a line: where it hangs, how it is gathered, what its frill may be."""

from __future__ import annotations

from furbelow.garment.bench import State
from furbelow.garment.levels import levels_of

from tests.techniques.small import refused, sound, work

PIECES = """base: {from: lawn, length: 120 cm, depth: 60 cm}
ruffle: {from: net, length: 240 cm, depth: 20 cm}"""
READY = """- french seam: {of: base}
- narrow hem: {edge: base.bottom}
- narrow hem: {edge: base.top}
- join ends: {of: ruffle}"""
STEP = "- headed row: {edge: ruffle.top, on: base, below top: 30 cm, heading: 2 cm}"


def test_the_row_hangs_from_its_upper_stitches_and_its_frill_stands_above_them() -> None:
    worked = sound(PIECES, f"{READY}\n{STEP}")
    levels = levels_of(worked.bench)
    assert (levels.tops["ruffle"], levels.bottoms["ruffle"]) == (300, 500)
    assert worked.solved.pieces["ruffle"].cut_depth == 200 + 20
    assert worked.bench.edge("ruffle.top").state is State.SEWN


def test_it_is_gathered_in_two_rows_and_sewn_on_through_both() -> None:
    worked = sound(PIECES, f"{READY}\n{STEP}")
    assert [row.length for row in worked.performed[-1].sewn] == [2400, 2400, 1200, 1200]
    words = worked.words()
    assert "240 cm of cloth lies in 120 cm: 2 to 1." in words
    assert "in quarters on both faces, every 60 cm, and the line every 30 cm" in words
    assert "The frill stands 2 cm above the seam all along." in words


def test_the_row_above_may_be_asked_to_cover_its_stitches() -> None:
    pieces = f"{PIECES}\nupper: {{from: net, length: 240 cm, depth: DEEP cm}}"
    steps = f"""{READY}
    - join ends: {{of: upper}}
    {STEP.replace("heading: 2 cm", "covered by: upper")}
    - headed row: {{edge: upper.top, on: base, below top: 12 cm}}"""
    short, long = (work(pieces.replace("DEEP", deep), steps) for deep in ("17", "20"))
    assert "FB436" in [fault.code for fault in short.warnings]
    assert "FB436" not in [fault.code for fault in long.warnings]


def test_a_raw_frill_that_ravels_is_refused() -> None:
    pieces = PIECES.replace("ruffle: {from: net", "ruffle: {from: lawn")
    steps = f"{READY.replace('- join ends: {of: ruffle}', '- french seam: {of: ruffle}')}\n- narrow hem: {{edge: ruffle.bottom}}"
    assert "stands open at the frill" in refused("FB335", pieces, f"{steps}\n{STEP}").headline
    sound(pieces, f"{steps}\n- narrow hem: {{edge: ruffle.top}}\n{STEP}")


def test_a_row_that_is_too_short_or_gathered_already_is_refused() -> None:
    assert "20 cm too little to gather" in refused("FB314", PIECES.replace("240", "100"), f"{READY}\n{STEP}").headline
    gathered = f"{READY}\n- gather: {{edge: ruffle.top, length: 120 cm}}\n{STEP}"
    assert "is gathered already" in str([fault.headline for fault in work(PIECES, gathered).faults])


def test_too_full_a_row_is_refused() -> None:
    assert "takes 4 to 1" in str([f.headline for f in work(PIECES.replace("240", "620"), f"{READY}\n{STEP}").warnings])


def test_a_heading_too_narrow_to_stand_is_told() -> None:
    worked = work(PIECES, f"{READY}\n{STEP.replace('heading: 2 cm', 'heading: 5 mm')}")
    assert "a heading of 5 mm is 3 mm too little" in str([fault.headline for fault in worked.warnings])
