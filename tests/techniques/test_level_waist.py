"""A top edge taken up where the waist lies lower, and the hem that is level for it."""

from __future__ import annotations

from fractions import Fraction

import pytest
import textstat
from furbelow.garment.matching import TakenUp
from furbelow.garment.technique import facts_of
from furbelow.s3_rehearse.levelling import heights_of, lengths_at

from tests.demos.test_plain_words import HARDEST, HARDEST_STEP
from tests.s3_rehearse.test_weight import run_of
from tests.techniques.small import Worked, refused, sound, work

PIECES = """upper: {from: net, count: 2, length: 160 cm, depth: 20 cm}
flounce: {from: net, count: 2, length: 240 cm, depth: 33 cm}
lining: {from: lawn, length: 120 cm, depth: 50 cm}
band: {from: lawn, length: 120 cm, depth: 3 cm}"""
LEVEL = "- level waist: {edge: [upper.top, lining.top], front: 106 cm, side: 105 cm, back: 103 cm}"
RINGS = """- join ends: {of: upper, seam: 1 cm}
- join ends: {of: flounce, seam: 1 cm}
- join ends: {of: lining, seam: 1 cm}
- neaten: {seam: lining.ends}
- narrow hem: {edge: lining.bottom}
- gather: {edge: flounce.top, to: upper.bottom}
- attach: {edge: flounce.top, to: upper.bottom, seam: 1 cm}"""
WAIST = """- stack layers: {layers: [upper.top], as: net_top}
- gather: {edge: net_top, to: lining.top}
- stack layers: {layers: [net_top, lining.top], as: top}
- join ends: {of: band, seam: 1 cm}
- band casing: {band: band, to: top, seam: 1 cm, gap: 5 cm}
- insert elastic: {elastic: elastic, into: band, length: 68 cm, overlap: 2 cm}
- close gap: {of: band}"""
STEPS = f"{RINGS}\n{LEVEL}\n{WAIST}"


def _told(worked: Worked, code: str) -> list[str]:
    return [fault.headline for fault in worked.warnings if fault.code == code]


def test_nothing_is_taken_up_where_the_waist_is_highest() -> None:
    done = next(done for done in sound(PIECES, STEPS).performed if done.step.written.technique == "level waist")
    assert facts_of(done, TakenUp).taken == (0, 10, 30)
    assert done.touches == ("upper", "lining")


def test_every_layer_hangs_level_by_plain_subtraction() -> None:
    worked = sound(PIECES, STEPS)
    run = run_of(worked)
    # Band 3 + upper 20 + flounce 33 = 56 cm in front; 1 cm less at the sides and 3 cm less behind.
    assert [length / 10 for length in lengths_at(run, "flounce")] == [56, 55, 53]
    heights = heights_of(run)
    assert heights is not None
    assert [height / 10 for height in heights] == [106, 105, 103]
    for piece, above in (("flounce", 500), ("lining", 530)):
        assert {height - length for height, length in zip(heights, lengths_at(run, piece), strict=True)} == {above}
    assert _told(worked, "FB419") == []


def test_the_cut_sizes_are_those_of_a_level_body() -> None:
    assert sound(PIECES, STEPS).solved.pieces == sound(PIECES, f"{RINGS}\n{WAIST}").solved.pieces


@pytest.mark.parametrize("back", ["103 cm", "102.3 cm", "101.8 cm", "104.9 cm"])
def test_marks_are_rounded_and_the_hem_is_level_within_the_rounding(back: str) -> None:
    worked = sound(PIECES, STEPS.replace("back: 103 cm", f"back: {back}"))
    run = run_of(worked)
    heights = heights_of(run)
    assert heights is not None
    above = [height - length for height, length in zip(heights, lengths_at(run, "flounce"), strict=True)]
    assert max(above) - min(above) <= Fraction(1)
    assert _told(worked, "FB419") == []


def test_a_layer_that_is_not_levelled_is_told() -> None:
    worked = work(PIECES, STEPS.replace("[upper.top, lining.top]", "upper.top"))
    assert _told(worked, "FB419") == ["the hem of the lining hangs 3 cm lower behind than where it is highest"]


def test_a_layer_that_is_levelled_twice_is_told() -> None:
    worked = work(PIECES, STEPS.replace(LEVEL, f"{LEVEL}\n{LEVEL.replace('[upper.top, lining.top]', 'upper.top')}"))
    assert _told(worked, "FB419") == ["the hem of the flounce hangs 3 cm lower in front than where it is highest"]


def test_more_cloth_behind_puts_the_seam_where_the_marks_do_not() -> None:
    worked = work(
        PIECES.replace("upper: {from: net, count: 2,", "upper: {from: net,").replace(
            "flounce: {from: net, count: 2,", "flounce: {from: net,"
        ),
        STEPS.replace("to: lining.top}", "to: lining.top, behind: 60%}"),
    )
    assert any("its seam at the back" in told for told in _told(worked, "FB419"))


def test_a_level_waist_asks_for_no_work() -> None:
    worked = sound(
        PIECES, STEPS.replace("front: 106 cm, side: 105 cm, back: 103 cm", "front: 105 cm, side: 105 cm, back: 105 cm")
    )
    told = next(told for told in worked.tellings() if told.title == "Level the waist")
    assert told.actions == ()


def test_a_neatened_edge_is_raw_again_once_it_is_cut() -> None:
    steps = STEPS.replace(LEVEL, f"- neaten: {{edge: lining.top}}\n{LEVEL}")
    done = next(done for done in sound(PIECES, steps).performed if done.step.written.technique == "level waist")
    assert (done.before.edge("lining.top").state, done.after.edge("lining.top").state) == ("neatened", "raw")


def test_the_guide_gives_the_numbers_at_the_marks() -> None:
    words = sound(PIECES, STEPS).words()
    assert (
        "Measure down from the edge at each mark: nothing at the front, 1 cm at the sides, 3 cm at the back." in words
    )
    assert (
        "in quarters, every 40 cm from the side seam: the middle of the front, the other side, the middle of the back."
        in words
    )
    assert "The waist lies 3 cm lower behind" in words


def test_the_steps_read_at_grade_seven_or_below() -> None:
    """The measure of tests/demos/test_plain_words.py."""
    told = next(told for told in sound(PIECES, STEPS).tellings() if told.title == "Level the waist")
    said = " ".join(f"{action.text} {action.check} {action.remedy}" for action in told.actions)
    assert textstat.flesch_kincaid_grade(f"{told.aim} {said}") <= HARDEST
    assert all(textstat.flesch_kincaid_grade(action.text) <= HARDEST_STEP for action in told.actions)


def test_a_flat_edge_is_marked_from_the_end_that_comes_to_the_front() -> None:
    flat = """- level waist: {edge: skirt.top, front: 106 cm, side: 105 cm, back: 103 cm}
- join ends: {of: skirt, seam: 1 cm}
- folded casing: {edge: skirt.top, depth: 25 mm, turn under: 5 mm, gap: 5 cm}
- insert elastic: {elastic: elastic, into: skirt.top, length: 68 cm, overlap: 2 cm}
- close gap: {of: skirt.top}"""
    words = sound("skirt: {from: net, length: 118 cm, depth: 56 cm}", flat).words()
    # Right side up, top away: worn, the right end meets the left side from the front.
    assert "every 30 cm from the right end: the middle of the front" in words


@pytest.mark.parametrize(
    ("code", "wrong", "part"),
    [
        (
            "FB333",
            STEPS.replace(LEVEL, "").replace(
                WAIST,
                WAIST.replace(
                    "- stack layers: {layers: [net_top,",
                    f"{LEVEL.replace('[upper.top, lining.top]', 'net_top')}\n- stack layers: {{layers: [net_top,",
                ),
            ),
            "gathered already",
        ),
        ("FB340", STEPS.replace("[upper.top, lining.top]", "flounce.bottom"), "bottom edge"),
        (
            "FB340",
            STEPS.replace(LEVEL, "").replace(
                "- join ends: {of: upper",
                LEVEL.replace("[upper.top, lining.top]", "upper.start") + "\n- join ends: {of: upper",
            ),
            "short edge",
        ),
        ("FB419", STEPS.replace("[upper.top, lining.top]", "band.top"), "a fold is straight"),
        ("FB312", STEPS.replace("back: 103 cm", "back: 80 cm"), "5 cm too much"),
        ("FB302", f"{STEPS}\n{LEVEL}", "already lies in the stack"),
    ],
)
def test_what_can_not_be_levelled_is_refused(code: str, wrong: str, part: str) -> None:
    assert part in refused(code, PIECES, wrong).headline
