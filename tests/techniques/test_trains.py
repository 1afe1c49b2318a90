"""Hems that dip behind, and tapes that draw up a train."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise
from math import hypot

import pytest
from furbelow.garment.technique import facts_of
from furbelow.techniques.bustle_tapes import Taped
from furbelow.techniques.dipped_hem import Dipped, rise_at
from hypothesis import given
from hypothesis import strategies as st

from tests.small_guide import small_guide, texts_of
from tests.techniques.small import Worked, sound, work

SKIRT = "skirt: {from: lawn, length: 240 cm, depth: DEEP}"
CLOSED = "- join ends: {of: skirt, seam: 1 cm}\n- neaten: {seam: skirt.ends}"
DIP = "- dipped hem: {edge: skirt.bottom, front: 30 cm, side: 20 cm}"
TAPES = (
    "- bustle tapes: {on: skirt, tape: tape, rings: ring, cord: cord, below top: 15 cm, every: 10 cm, each: 7, tapes: 3, "
    "apart: 20 cm, up: 30 cm}"
)
REST = """- narrow hem: {edge: skirt.bottom}
- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 1 cm, gap: 5 cm}
- insert elastic: {elastic: elastic, into: skirt.top, length: waist_girth - 8 cm}
- close gap: {of: skirt.top}"""
RINGS = "  ring: {kind: fastening, about: small ring}\n"
HEIGHT = "measures:\n  waist_height: {value: 100 cm}\n"


def skirt(deep: str, *steps: str) -> Worked:
    rows = "\n".join((CLOSED, *steps, REST))
    return work(SKIRT.replace("DEEP", deep), rows, materials=RINGS, own=HEIGHT)


def told(worked: Worked) -> list[str]:
    return [fault.headline for fault in (*worked.faults, *worked.warnings) if fault.code == "FB414"]


def arc(rises: tuple[float, float, float], width: Callable[[float], float]) -> float:
    """How long the dipped edge is by fine steps along the curve, Hermite's basis written out. width: of the ring at a rise."""
    front, side, _ = rises
    falls = (side - front, -side)
    slope = 2 * falls[0] * falls[1] / sum(falls)

    def height(t: float) -> float:
        u = t if t <= 1 else t - 1
        h00, h01 = 2 * u**3 - 3 * u**2 + 1, 3 * u**2 - 2 * u**3
        h10, h11 = u**3 - 2 * u**2 + u, u**3 - u**2
        return h00 * front + h01 * side + h11 * slope if t <= 1 else h00 * side + h10 * slope

    fine = [height(at / 500) for at in range(1001)]
    return 2 * sum(hypot(width((high + low) / 2) / 2000, high - low) for high, low in pairwise(fine))


def test_the_dipped_edge_is_as_long_as_the_curve_through_its_marks() -> None:
    worked = sound(SKIRT.replace("DEEP", "90 cm"), f"{CLOSED}\n{DIP}\n{REST}")
    exact = arc((300, 200, 0), lambda _: 2400)
    assert float(worked.bench.edge("skirt.bottom").set_length) == pytest.approx(exact, rel=0.002)
    assert worked.bench.depth("skirt") == 900


def test_a_hem_that_dips_on_gores_is_shorter_than_on_straight_cloth() -> None:
    gored = "skirt: {from: net, count: 4, length: 45 cm, depth: 80 cm}"
    steps = """- gores: {piece: skirt, hem: 85 cm}
    - join ends: {of: skirt, seam: 1 cm, into: one ring}
    - dipped hem: {edge: skirt.bottom, front: 20 cm, side: 20 cm}"""
    bench = work(gored, steps).bench
    # 4 x 85 cm round the hem, 0.5 cm less for each cm up on each gore.
    exact = arc((200, 200, 0), lambda rise: 3400 - 2 * rise)
    assert float(bench.edge("skirt.bottom").set_length) == pytest.approx(exact, rel=0.002)


@given(st.fractions(1, 500), st.fractions(0, 1))
def test_between_the_marks_the_dip_never_rises_towards_the_back(front: Fraction, share: Fraction) -> None:
    rises = (front, front * share, Fraction(0))
    heights = [rise_at(rises, Fraction(at, 12)) for at in range(25)]
    assert [heights[0], heights[12], heights[24]] == list(rises)
    assert heights == sorted(heights, reverse=True)


def test_the_sentence_tells_as_many_dots_as_lie_between_two_marks() -> None:
    worked = skirt("95 cm", DIP)
    (done,) = (each for each in worked.performed if each.step.written.technique == "dipped hem")
    facts = facts_of(done, Dipped)
    # A quarter of 60 cm in steps of 15 cm has three dots between its ends.
    assert [len(dots) for dots in facts.dots()] == [3, 3]
    texts = texts_of(small_guide(SKIRT.replace("DEEP", "70 cm"), f"{CLOSED}\n{DIP}\n{REST}"), "Cut the dip")
    (between,) = [text for text in texts if "every 15 cm" in text]
    assert len(re.findall(r"[\d.]+ cm", between)) == 1 + 6


def test_no_check_says_that_a_hem_that_dips_is_level() -> None:
    """However a hem comes to dip, the last look and the table say how long it is at each place."""
    for front, side in (("30 cm", "20 cm"), ("8 cm", "8 cm"), ("12 cm", "0 cm")):
        dip = f"- dipped hem: {{edge: skirt.bottom, front: {front}, side: {side}}}"
        guide = small_guide(SKIRT.replace("DEEP", "70 cm"), f"{CLOSED}\n{dip}\n{REST}")
        (look,) = guide.parts[-1].operations
        (hung,) = [step for step in look.steps if step.text.startswith("Hang it up")]
        finished = [float(Fraction(length.split()[0])) for length in re.findall(r"[\d.]+ cm", hung.text)]
        less = [float(each.split()[0]) for each in (front, side, "0 cm")]
        assert [finished[2] - length for length in finished] == pytest.approx(less)
        assert "the same in front, behind" not in str(look)


def test_the_edge_of_a_dip_is_marked_afresh() -> None:
    """Its old marks are cut off with it, so what is matched there is marked first."""
    pieces = f"{SKIRT.replace('DEEP', '70 cm')}\nruffle: {{from: lawn, length: 400 cm, depth: 10 cm, piecing: {{seam: 1 cm, shortest: 30 cm, most joins: 4}}}}"
    ruffle = """- join strips: {of: ruffle}
    - neaten: {seam: ruffle.joins}
    - join ends: {of: ruffle}
    - neaten: {seam: ruffle.ends}
    - narrow hem: {edge: ruffle.bottom}
    - gather: {edge: ruffle.top, to: skirt.bottom}
    - attach: {edge: ruffle.top, to: skirt.bottom}
    - neaten: {seam: ruffle.top}"""
    waist = "\n".join(REST.splitlines()[1:])
    texts = texts_of(small_guide(pieces, f"{CLOSED}\n{DIP}\n{ruffle}\n{waist}"), "Sew the ruffle")
    assert texts[0].startswith("Mark the bottom edge of the skirt in eighths")


def test_a_hem_that_clears_the_floor_all_round_is_not_told() -> None:
    assert told(skirt("95 cm", DIP)) == []


def test_a_train_warns_until_its_tapes_draw_it_up() -> None:
    assert told(skirt("110 cm", DIP)) == ["the train lies 10 cm on the floor behind, and nothing draws it up"]
    assert told(skirt("110 cm", DIP, TAPES)) == []


def test_tapes_that_draw_up_too_little_are_told_by_how_much() -> None:
    # 110 - 8 cm is 4 cm lower than 98 cm.
    assert told(skirt("110 cm", DIP, TAPES.replace("up: 30 cm", "up: 8 cm"))) == [
        "drawn up by 8 cm the hem is 4 cm too low behind to clear the floor by 2 cm"
    ]


def test_beside_the_tapes_the_hem_must_have_risen_enough() -> None:
    # One tape reaches 7.5 cm beyond the middle, where a hem that rises 20 cm in 61 cm has risen 2.5 cm: 107.5 cm.
    alone = TAPES.replace("tapes: 3", "tapes: 1").replace("apart: 20 cm", "apart: 7.5 cm")
    assert "beside the tapes" in str(told(skirt("110 cm", DIP, alone)))


def test_a_train_that_lies_on_the_floor_at_the_sides_is_refused() -> None:
    worked = skirt("125 cm", DIP, TAPES.replace("up: 30 cm", "up: 40 cm"))
    assert "FB414" in worked.codes


def test_a_lining_shows_where_the_hem_over_it_rises() -> None:
    pieces = f"{SKIRT.replace('DEEP', '80 cm')}\nlining: {{from: lawn, length: 240 cm, depth: 60 cm}}"
    steps = f"""{CLOSED}
    - join ends: {{of: lining, seam: 1 cm}}
    - neaten: {{seam: lining.ends}}
    {DIP}
    - narrow hem: {{edge: skirt.bottom}}
    - narrow hem: {{edge: lining.bottom}}
    - stack layers: {{layers: [skirt.top, lining.top], as: both}}"""
    worked = work(pieces, steps, worn=", hidden: {lining: 2 cm}")
    assert "FB411" in worked.codes  # 50 cm in front, and the lining is 60 cm long


@pytest.mark.parametrize(
    ("dip", "code"),
    [
        (DIP.replace("bottom", "top"), "FB340"),
        (DIP.replace("front: 30 cm", "front: 15 cm"), "FB313"),
        (DIP.replace("front: 30 cm", "front: 96 cm"), "FB312"),
        (TAPES.replace("each: 7", "each: 1"), "FB341"),
        (TAPES.replace("tapes: 3", "tapes: 2.5"), "FB341"),
        (TAPES.replace("each: 7", "each: 12"), "FB312"),
        (TAPES.replace("up: 30 cm", "up: 60 cm"), "FB312"),
        (TAPES.replace("apart: 20 cm", "apart: 70 cm"), "FB312"),
        (f"{TAPES}\n{TAPES}", "FB302"),
    ],
)
def test_what_can_not_dip_or_be_drawn_up_is_refused(dip: str, code: str) -> None:
    assert code in skirt("90 cm", dip).codes


def test_a_flat_piece_does_not_dip_yet() -> None:
    assert "FB304" in work(SKIRT.replace("DEEP", "90 cm"), DIP).codes
    assert "FB304" in work(SKIRT.replace("DEEP", "90 cm"), TAPES, materials=RINGS).codes


def test_what_the_tapes_take_is_on_the_list() -> None:
    done = next(each for each in skirt("110 cm", DIP, TAPES).performed if each.step.written.technique == "bustle tapes")
    # Six spaces of 10 cm: tapes of 60 + 2 cm, seven rings each, cords of 60 + 30 cm.
    assert [(use.material, use.amount, use.copies) for use in done.used] == [
        ("tape", Fraction(620), 3),
        ("ring", Fraction(7), 3),
        ("cord", Fraction(900), 3),
    ]


def test_lines_of_tapes_stay_behind_at_both_their_ends_however_the_skirt_flares() -> None:
    """What is told above and below is one share of the cloth there, so that no tape runs over to the front."""
    gored = "skirt: {from: net, count: 6, length: 16 cm, depth: 100 cm}"
    steps = f"""- gores: {{piece: skirt, hem: 50 cm, sides: both slanting}}
    - join ends: {{of: skirt, seam: 1 cm, into: one ring}}
    {TAPES.replace("tapes: 3", "tapes: 4").replace("apart: 20 cm", "apart: 30 cm")}"""
    worked = work(gored, steps, materials=RINGS)
    (done,) = (each for each in worked.performed if each.step.written.technique == "bustle tapes")
    facts = facts_of(done, Taped)
    assert facts.beside() == (150, 450)
    for share, down in ((facts.upper, facts.down), (Fraction(1), facts.down + facts.long)):
        # A quarter of the way round lies from the middle of the back to the side.
        quarter = worked.bench.cloth_at("skirt", down) / 4
        assert facts.beside()[-1] * share < quarter
    above, below = (worked.bench.cloth_at("skirt", down) for down in (facts.down, facts.down + facts.long))
    assert facts.upper == above / below
    words = worked.words()
    assert "45 cm from the line to both sides" in words
    # A line slants, so its length is measured along it and not down from the edge; the lower marks only lead it.
    assert "mark 75 cm down from the top edge" in words
    assert "End each of them after 60 cm, measured along it." in words
    assert "Each line is 60 cm long." in words
    assert "put it on" not in words


@pytest.mark.parametrize(
    ("gores", "fold"),
    [
        ("front: 20 cm, front hem: 40 cm, back: 20 cm, back hem: 40 cm", False),
        ("front: 26 cm, front hem: 44 cm", True),
    ],
)
def test_front_and_back_are_found_in_the_front_gore_where_no_seam_lies_at_the_side(gores: str, fold: bool) -> None:
    pieces = "skirt: {from: net, count: 6, length: 20 cm, depth: 60 cm}"
    steps = f"""- gores: {{piece: skirt, hem: 36 cm, {gores}}}
    - join ends: {{of: skirt, seam: 1 cm, into: one ring}}
    - dipped hem: {{edge: skirt.bottom, front: 8 cm}}"""
    assert ("fold it in half down the middle of the front gore" in work(pieces, steps).words()) is fold


@pytest.mark.parametrize(("count", "fold"), [(6, True), (5, False)])
def test_the_middle_of_the_back_is_the_fold_of_its_gore_where_left_and_right_have_as_many(
    count: int, fold: bool
) -> None:
    pieces = f"skirt: {{from: net, count: {count}, length: 20 cm, depth: 100 cm}}"
    steps = f"""- gores: {{piece: skirt, hem: 56 cm, front: 20 cm, front hem: 60 cm, back: 20 cm, back hem: 60 cm}}
    - join ends: {{of: skirt, seam: 1 cm, into: one ring}}
    {TAPES}"""
    assert ("Fold the back gore in half along its length" in work(pieces, steps, materials=RINGS).words()) is fold


def test_a_train_is_tried_on_once_no_pin_is_left_in_it() -> None:
    guide = small_guide(SKIRT.replace("DEEP", "95 cm"), f"{CLOSED}\n{DIP}\n{TAPES}\n{REST}", materials=RINGS)
    (look,) = guide.parts[-1].operations
    texts = [step.text for step in look.steps]
    pins, worn = (
        next(at for at, text in enumerate(texts) if text.startswith(begins))
        for begins in ("Count the pins", "Draw the train up again")
    )
    assert pins < worn


@pytest.mark.parametrize("tapes", [1, 2, 3, 4, 5])
def test_drawn_up_the_hem_hangs_level_half_way_to_the_tape_nearer_to_the_middle(tapes: int) -> None:
    """Where the dip rises, a tape draws up by so much less. Hermite's basis written out, not the technique's own curve."""
    worked = skirt("110 cm", DIP, TAPES.replace("tapes: 3", f"tapes: {tapes}").replace("apart: 20 cm", "apart: 12 cm"))
    (done,) = (each for each in worked.performed if each.step.written.technique == "bustle tapes")
    facts, quarter = facts_of(done, Taped), 2400 / 4
    # The slope at the side is the harmonic mean of falls by 10 and 20 cm.
    slope = 2 * -100 * -200 / -300
    assert len(facts.ups) == (tapes + 1) // 2
    for at, up in enumerate(facts.ups):
        from_middle = max(120 * (at - (tapes % 2) / 2), 0)
        u = 1 - from_middle / quarter
        rise = (2 * u**3 - 3 * u**2 + 1) * 200 + (u**3 - 2 * u**2 + u) * slope
        assert float(up) == pytest.approx(300 - rise, abs=0.5)
    told = worked.words()
    assert ("from the middle of the back outwards" in told) is (tapes > 2)


def test_the_tapes_of_a_level_hem_are_drawn_up_alike() -> None:
    worked = skirt("110 cm", TAPES)
    (done,) = (each for each in worked.performed if each.step.written.technique == "bustle tapes")
    assert facts_of(done, Taped).alike
    assert "Draw each cord until its tape is 30 cm long" in worked.words()


def test_a_tape_where_the_hem_is_cut_high_already_warns() -> None:
    few = (
        TAPES.replace("tapes: 3", "tapes: 5").replace("apart: 20 cm", "apart: 28 cm").replace("up: 30 cm", "up: 13 cm")
    )
    warned = [
        fault for fault in skirt("110 cm", DIP, few).warnings if "a rise at the outermost tapes" in fault.headline
    ]
    assert len(warned) == 1
