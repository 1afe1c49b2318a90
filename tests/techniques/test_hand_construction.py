"""A petticoat as it is sewn by hand of long practice: every word of it, one test a word.

The values of the method are common practice, no source; the numbers of the garments here are the tests' own.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.bench import State
from furbelow.garment.technique import facts_of
from furbelow.garment.workroom import Workroom
from furbelow.techniques.gather import Gathered

from tests.techniques.small import Worked, work

FLOUNCES = "flounce: {from: net, count: 3, length: 200 cm, depth: 30 cm}"
TOGETHER = "- edge with trim: {edge: flounce.bottom, trim: tape, turn up: 8 mm, turned: trim and cloth together}"
RIBBON = "  white: {kind: trim, fibre: cotton, width: 10 mm, weight: 5 g/m, about: white ribbon}\n"
DYE = "  red: {kind: dye, class: reactive, about: red dye}\n"


def sentences(worked: Worked) -> list[str]:
    """What the last step says."""
    return [action.text for action in worked.tellings()[-1].actions]


def codes(worked: Worked) -> list[str]:
    return [fault.code for fault in worked.faults if fault.is_error]


# --- the trim ---


def test_a_trim_is_sewn_along_the_raw_edges_of_all_copies_in_one_chain_then_turned_up_with_them() -> None:
    worked = work(FLOUNCES, TOGETHER)
    texts = sentences(worked)
    assert any(text.startswith("Sew 5 mm from the raw edge") and "lay the next close behind" in text for text in texts)
    assert any("Cut the chain of 3 apart" in text for text in texts)
    assert any("Fold seam tape and cloth up together, 8 mm to the right side" in text for text in texts)
    done = worked.performed[-1]
    # Two rows of 200 cm on each of three, and so much trim.
    assert [(row.length, row.copies) for row in done.sewn] == [(2000, 3), (2000, 3)]
    assert (done.used[0].amount, done.used[0].copies) == (2000, 3)
    edge = done.after.edge("flounce.bottom")
    assert (edge.state, edge.used) == (State.HEMMED, 8)


@pytest.mark.parametrize(
    ("turn", "said"),
    [
        ("5 mm", "a turn of 5 mm is 2 mm too little to hide the row that holds the trim"),
        ("2 cm", "the trim `tape` is 1.6 cm wide, 4 mm less than is turned up with it"),
    ],
)
def test_a_turn_hides_the_first_row_and_is_no_deeper_than_the_trim(turn: str, said: str) -> None:
    faults = work(FLOUNCES, TOGETHER.replace("8 mm", turn)).faults
    assert ("FB310", said) in [(fault.code, fault.headline) for fault in faults]


def test_on_a_ring_the_trim_laps_at_the_side_seam() -> None:
    texts = sentences(work(FLOUNCES, f"- join ends: {{of: flounce, seam: 1 cm}}\n{TOGETHER}"))
    assert any("Fold 1 cm of the cut end under" in text for text in texts)
    assert not any("chain" in text for text in texts)


# --- dye ---


def test_a_white_trim_is_dyed_by_its_weight_before_it_is_sewn() -> None:
    worked = work(
        "skirt: {from: lawn, length: 2 m, depth: 50 cm}",
        "- dye: {trim: white, with: red, length: 12 m, depth: 2%}",
        materials=RIBBON + DYE,
    )
    # 12 m of 5 g a metre are 60 g, 2 % of which are 1.2 g.
    assert worked.performed[-1].used[0].amount == Fraction("1.2")
    texts = sentences(worked)
    assert texts[0].startswith("Wind off 12 m of white ribbon in one piece and weigh out 1.2 g of red dye")
    assert any("skein" in text for text in texts)


def test_a_trim_that_takes_no_dye_of_this_class_is_refused() -> None:
    worked = work(
        "skirt: {from: lawn, length: 2 m, depth: 50 cm}",
        "- dye: {trim: white, with: red, length: 12 m}",
        materials=RIBBON.replace("cotton", "polyester") + DYE,
    )
    assert codes(worked)[0] == "FB355"


@pytest.mark.parametrize("given", ["trim: white", "trim: white, piece: skirt, length: 1 m", "depth: 2%"])
def test_a_bath_is_told_what_goes_in_and_how_much(given: str) -> None:
    skirt, step = "skirt: {from: lawn, length: 2 m, depth: 50 cm}", f"- dye: {{with: red, {given}}}"
    assert codes(work(skirt, step, materials=RIBBON + DYE))[0] == "FB313"


# --- gathers and pairs ---

PAIR = "layer: {from: net, count: 2, length: 200 cm, depth: 30 cm}"
CLOSED = "- join ends: {of: layer, seam: 1 cm}\n- stack layers: {layers: [layer.top], as: pair}\n"


def test_a_pair_is_gathered_alone_its_tails_knotted_on_both_faces_and_none_left_hanging() -> None:
    worked = work(PAIR, f"{CLOSED}- gather: {{edge: pair, length: 120 cm, tails: knotted on both faces, behind: 60%}}")
    texts = sentences(worked)
    assert any("knot the two upper tails together on their face and the two lower tails" in text for text in texts)
    assert any("knot these tails as at the other ends" in text for text in texts)
    assert worked.performed[-1].after.edge("pair").held
    assert any(
        "60 % of the cloth lies in the back half" in str(action.check) for action in worked.tellings()[-1].actions
    )


def test_pairs_are_pinned_closely_and_sewn_together_with_a_short_stitch() -> None:
    step = "- stack layers: {layers: [layer.top], as: all, row: short stitch, pins: 2 cm}"
    worked = work(PAIR, f"- join ends: {{of: layer, seam: 1 cm}}\n{step}")
    texts = sentences(worked)
    assert any("Pin every 2 cm between the marks" in text for text in texts)
    assert any("Sew both layers together 2 mm from the edge, 2 mm stitch" in text for text in texts)


def test_the_chains_of_an_overlocker_are_turned_back_and_caught() -> None:
    skirt = "skirt: {from: lawn, length: 2 m, depth: 50 cm}"
    step = "- join ends: {of: skirt, seam: 1 cm}\n- neaten: {seam: skirt.ends, tails: turned back and caught}"
    worked = work(skirt, step, room=Workroom(neaten_with="overlocker"))
    assert any("Fold every chain back" in text and "1.5 cm" in text for text in sentences(worked))
    assert not any("blunt needle" in text for text in sentences(worked))


# --- band and lining ---

WAIST = """\
layer: {from: net, count: 2, length: 300 cm, depth: 40 cm}
lining: {from: lawn, length: 180 cm, depth: 36 cm}
band: {from: lawn, length: 150 cm, depth: 45 mm}
"""
BEFORE = """\
- join ends: {of: layer, seam: 1 cm}
- stack layers: {layers: [layer.top], as: layers}
- gather: {edge: layers, length: 156 cm}
- join ends: {of: lining, seam: 1 cm}
- neaten: {seam: lining.ends}
- narrow hem: {edge: lining.bottom}
- gather: {edge: lining.top, length: 156 cm}
- neaten: {edge: [band.start, band.end]}
- join ends: {of: band, seam: 1 cm}
"""
CHANNEL = "- channel band: {band: band, as: band_edge, channel: 24 mm}\n"
TURNED = "- turned lining: {lining: lining.top, band: band_edge, to: layers, seam: 1 cm}\n"
ELASTIC = "- insert elastic: {elastic: elastic, into: band, length: 64 cm, cut: long, spare: 12 cm}\n"


def test_a_band_is_edge_stitched_and_its_channel_opened_in_the_seam() -> None:
    worked = work(WAIST, BEFORE + CHANNEL)
    casing = worked.performed[-1].after.casings["band"]
    assert (casing.width, casing.gap, casing.length, casing.in_seam) == (24, 24, 1500, True)
    texts = sentences(worked)
    assert texts[1].startswith("Sew 2 mm from the fold")
    # 2 mm and 24 mm of channel.
    assert texts[2].startswith("Sew a second row 2.6 cm from the fold")
    # Folded: twice 45 mm, no seam taken yet.
    assert worked.solved.pieces["band"].cut_depth == 90


@pytest.mark.parametrize(
    ("old", "new", "code"),
    [
        ("channel: 24 mm", "channel: 41 mm", "FB310"),  # 2 + 41 + 3 beside the seam are 46 of 45 mm
        ("- join ends: {of: band, seam: 1 cm}\n", "", "FB304"),
    ],
)
def test_a_channel_fits_its_band_and_the_band_is_closed(old: str, new: str, code: str) -> None:
    assert code in codes(work(WAIST, (BEFORE + CHANNEL).replace(old, new)))


def test_the_lining_turned_in_traps_every_margin_and_is_eased_on_to_a_shorter_band() -> None:
    worked = work(WAIST, BEFORE + CHANNEL + TURNED)
    assert codes(worked) == ["FB406"]  # no elastic yet
    after = worked.performed[-1].after
    assert all(after.edge(name).state is State.ENCLOSED for name in ("layers", "band_edge", "lining.top"))
    assert after.seams["layers"].trapped
    assert after.seams["lining.top"].trapped
    texts = sentences(worked)
    assert any("The lining is 6 cm longer: share that out between the pins" in text for text in texts)
    assert any("Lift the lining over the top and let it fall inside" in text for text in texts)
    # Twice 45 mm and 1 cm of seam at both long edges.
    assert worked.solved.pieces["band"].cut_depth == 110


@pytest.mark.parametrize(
    ("written", "before", "against", "over", "worn"),
    [
        ("", "inside out", "wrong", "right side out", "out"),
        (", right side: in", "right side out", "right", "inside out", "in"),
    ],
)
def test_the_side_of_the_lining_that_lies_against_the_band_faces_the_legs(
    written: str, before: str, against: str, over: str, worn: str
) -> None:
    """A sheet turned over its seam keeps the face to the body that lay on the band: by hand with two sheets of paper."""
    worked = work(WAIST, BEFORE + CHANNEL + TURNED.replace("}", f"{written}}}"))
    (laid,) = (text for text in sentences(worked) if "The half with the opening" in text)
    assert laid.startswith(f"Turn the lining {before}")
    assert laid.endswith(f"against the {against} side of the lining, which will face the legs.")
    assert any(text.startswith(f"Turn the lining {over}: the band hangs inside it now") for text in sentences(worked))
    assert {
        ply.right_side for ply in worked.performed[-1].after.seams["lining.top"].plies if ply.piece == "lining"
    } == {worn}


def test_gathering_rows_lie_clear_of_the_row_that_holds_the_layers() -> None:
    worked = work(WAIST, BEFORE + CHANNEL + TURNED)
    rows = {
        done.step.index: facts_of(done, Gathered).rows for done in worked.performed if isinstance(done.facts, Gathered)
    }
    assert list(rows.values()) == [(4, 8), (3, 8)]  # the layers are held 2 mm from the edge; the lining is one layer


def test_no_more_than_a_tenth_is_eased_by_hand() -> None:
    worked = work(WAIST, (BEFORE + CHANNEL + TURNED).replace("length: 156 cm", "length: 170 cm"))
    said = next(fault.headline for fault in worked.faults if fault.code == "FB401")
    assert said == (
        "`lining.top` is 170 cm and the band 150 cm, 20 cm too long and no more than 165 cm can be eased on to it"
    )


def test_elastic_is_cut_long_tried_on_in_the_garment_shortened_and_its_gap_closed_by_hand() -> None:
    worked = work(WAIST, BEFORE + CHANNEL + TURNED + ELASTIC)
    # 64 cm round, 2 cm of lap and 12 cm to spare.
    assert worked.performed[-1].used[0].amount == 780
    texts = sentences(worked)
    assert texts[0].startswith("Cut the elastic 78 cm long")
    tried, cut = (
        next(at for at, text in enumerate(texts) if said in text)
        for said in ("put the garment on", "Cut the lower end off 2 cm")
    )
    assert tried < cut
    for name in ("band", "layers"):
        closed = work(WAIST, BEFORE + CHANNEL + TURNED + ELASTIC + f"- close gap: {{of: {name}}}")
        assert codes(closed) == []
        assert sentences(closed)[0].startswith("Draw the two folds of the opening together by hand")


def test_starch_dries_on_a_form_with_warm_air_from_below_and_overnight() -> None:
    starch = "  stiffener: {kind: starch}\n"
    steps = "- starch: {piece: skirt, with: stiffener, dry: on a form}"
    worked = work("skirt: {from: net, length: 2 m, depth: 50 cm}", steps, materials=starch)
    texts = sentences(worked)
    assert texts[-2].startswith("Blow warm air up between the layers from below")
    assert texts[-1] == "Leave it on the form overnight, without heat."
    (flame,) = (text for _, text in worked.tellings()[-1].cautions if "burns fast" in text)
    assert "never left running" in flame
