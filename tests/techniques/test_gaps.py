"""Gaps: left in a row, unpicked in an upright seam, left in a seam; and that none of them is forgotten."""

from __future__ import annotations

import pytest
from furbelow.garment.technique import SetUp

from tests.techniques.small import refused, sound, work

BANDED = """skirt: {from: lawn, length: 120 cm, depth: 60 cm}
band: {from: lawn, length: 120 cm, depth: 25 mm}"""
FOLDED = BANDED.splitlines()[0]
NEAT = "- neaten: {edge: [PIECE.start, PIECE.end]}\n- join ends: {of: PIECE, seam: 1 cm}"
HEM = "- narrow hem: {edge: skirt.bottom}"
ELASTIC = "- insert elastic: {elastic: elastic, into: CASING, length: 70 cm}\n- close gap: {of: CASING}"
ON_BAND = f"""{NEAT.replace("PIECE", "skirt")}
{NEAT.replace("PIECE", "band")}
{HEM}
- band casing: {{band: band, to: skirt.top, seam: 1 cm, gap in: seam}}
{ELASTIC.replace("CASING", "band")}"""
ON_EDGE = f"""{NEAT.replace("PIECE", "skirt")}
{HEM}
- folded casing: {{edge: skirt.top, depth: 25 mm, turn under: 6 mm, gap in: seam}}
{ELASTIC.replace("CASING", "skirt.top")}"""


@pytest.mark.parametrize(("pieces", "steps", "casing"), [(BANDED, ON_BAND, "band"), (FOLDED, ON_EDGE, "skirt.top")])
def test_a_gap_is_unpicked_in_the_seam_once_the_row_is_sewn_all_round(pieces: str, steps: str, casing: str) -> None:
    worked = sound(pieces, steps)
    made = next(done for done in worked.performed if "casing" in done.step.written.technique)
    # The channel is 25 mm less the 2 mm of its edge stitch, and the opening runs across it.
    assert (made.after.casings[casing].width, made.after.casings[casing].gap) == (23, 23)
    assert made.sewn[-1].length == 1200  # nothing is left open in the row
    words = worked.words()
    assert "Press open the upright seam that closed" in words
    assert "between the fold and the row with a seam ripper, 2.3 cm, and nowhere else" in words
    assert "A seam ripper slips" in words
    closed = worked.performed[-1]
    assert (closed.setup, closed.sewn[0].length) == (SetUp.HAND, 23)


def test_a_gap_in_the_row_stays_as_it_was() -> None:
    worked = sound(FOLDED, ON_EDGE.replace(", gap in: seam", ""))
    assert "ripper" not in worked.words()
    assert worked.performed[3].sewn[0].length == 1200 - 50


def test_there_is_a_seam_to_open_and_its_margins_lie_apart() -> None:
    together = ON_EDGE.replace("- neaten: {edge: [skirt.start, skirt.end]}\n", "").replace(
        HEM, f"- neaten: {{seam: skirt.ends}}\n{HEM}"
    )
    assert "neatened as one" in refused("FB318", FOLDED, together).headline
    french = ON_EDGE.replace(NEAT.replace("PIECE", "skirt"), "- french seam: {of: skirt}")
    assert "enclosed in it" in refused("FB318", FOLDED, french).headline


def test_the_channel_of_a_band_wants_its_seam_open_too() -> None:
    steps = "- join ends: {of: band, seam: 1 cm}\n- neaten: {seam: band.ends}\n- channel band: {band: band, as: edge, channel: 20 mm}"
    fault = work("band: {from: lawn, length: 120 cm, depth: 45 mm}", steps).faults[0]
    assert (fault.code, "neatened as one" in fault.headline) == ("FB318", True)


def test_a_cord_does_not_come_out_on_the_inside() -> None:
    cord = ON_EDGE.partition("- insert")[0] + "- drawstring: {cord: cord, into: skirt.top, for: grown-up}"
    kind = "  string: {kind: cord, width: 5 mm}\n"
    fault = refused("FB322", FOLDED, cord.replace("cord: cord", "cord: string"), materials=kind)
    assert "opened on the inside" in fault.headline


# --- a gap in a seam ---

GAP = NEAT.replace("PIECE", "skirt").replace("1 cm}", "2 cm, gap: 16 cm, gap below top: 10 cm}")
SEAM = f"{GAP}\n{HEM}\n{ELASTIC.replace('CASING', 'skirt.top')}".replace(
    "- insert", "- folded casing: {edge: skirt.top, depth: 25 mm}\n- insert"
)


def test_a_gap_that_nothing_fills_or_closes_is_told() -> None:
    warned = [fault for fault in work(FOLDED, SEAM).warnings if fault.code == "FB440"]
    assert [fault.headline for fault in warned] == [
        "the gap of 16 cm in `skirt.ends` is left open, and 0 later steps fill or close it"
    ]
    assert "- close gap: {of: skirt.ends}" in (warned[0].help or "")


def test_a_gap_is_sewn_shut_on_the_line_of_its_seam() -> None:
    worked = sound(FOLDED, f"{SEAM}\n- close gap: {{of: skirt.ends}}")
    assert "FB440" not in [fault.code for fault in worked.warnings]
    done = worked.performed[-1]
    # 16 cm, and 1 cm over the seam at both ends.
    assert done.sewn[0].length == 160 + 20
    before, after = (bench.seams["skirt.ends"].length for bench in (done.before, done.after))
    assert after - before == 160
    assert "Sew the 16 cm shut, 2 cm from the edges" in worked.words()


def test_a_gap_is_closed_once() -> None:
    refused("FB322", FOLDED, f"{SEAM}\n- close gap: {{of: skirt.ends}}\n- close gap: {{of: skirt.ends}}")


def test_a_pocket_fills_a_gap() -> None:
    bag = f"{FOLDED}\nbag: {{from: lawn, count: 2, length: 18 cm, depth: 28 cm}}"
    neat = "\n".join(f"- neaten: {{edge: bag.{side}}}" for side in ("top", "bottom", "start", "end"))
    pocket = SEAM.replace(HEM, f"{HEM}\n{neat}\n- side pocket: {{bag: bag, in: skirt.ends}}")
    assert "FB440" not in [fault.code for fault in sound(bag, pocket).warnings]


@pytest.mark.parametrize("name", ["band", "skirt.top", "band.top", "band.bottom"])
def test_a_band_is_named_by_itself_by_its_edges_or_by_what_it_was_sewn_to(name: str) -> None:
    steps = ON_BAND.replace("into: band", f"into: {name}").replace(
        "close gap: {of: band}", f"close gap: {{of: {name}}}"
    )
    sound(BANDED, steps)


@pytest.mark.parametrize("name", ["skirt", "skirt.top"])
def test_a_folded_casing_is_named_by_its_edge_or_its_piece(name: str) -> None:
    steps = ON_EDGE.replace("into: skirt.top", f"into: {name}").replace("{of: skirt.top}", f"{{of: {name}}}")
    sound(FOLDED, steps)


def test_the_two_edges_of_a_folded_band_are_neatened_together_from_an_upright_seam() -> None:
    steps = ON_BAND.partition("- band casing")[0]
    channel = "- channel band: {band: band, as: band_edge, channel: 28 mm}\n- neaten: {edge: band_edge}"
    words = work(BANDED.replace("25 mm", "45 mm"), f"{steps}{channel}").words()  # no lining holds it yet
    assert "the band edge, both layers together" in words
    assert "side seam. Zigzag" not in words
