"""Facts of the trade, each common practice without a published source, against what the guide works out and says."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.limits import ATTACHMENT_MOST, EASE_SHARE, LET_OUT_SHARE
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s6_write.words.said_step import SaidStep
from furbelow.techniques import techniques

from tests.demos.demos import order
from tests.said import said

CM = Fraction(10)


def _rehearsal(name: str, size: str, room: Workroom | None = None) -> Rehearsal:
    rehearsal = prove(order(name, size, room)).value
    assert rehearsal is not None
    return rehearsal


def _tell(rehearsal: Rehearsal, technique: str) -> SaidStep:
    done = next(done for done in rehearsal.run.performed if done.step.written.technique == technique)
    return said(done, Phrasing(rehearsal.solved, rehearsal.run.room))


def test_a_pleating_attachment_at_every_stitch_and_mark_6_takes_cloth_to_about_half() -> None:
    # common practice, no source
    assert ATTACHMENT_MOST == 2
    room = Workroom(gather_with="pleating attachment")
    told = _tell(_rehearsal("larkspur", "M", room), "gather")
    setting = next(action.text for action in told.actions if "attachment" in action.text)
    assert "every stitch" in setting
    assert "mark 6" in setting
    assert "half" in setting
    trial = next(action for action in told.actions if "spare strip" in action.text)
    assert "50 cm" in trial.text
    assert "25 cm" in trial.check


def test_15_cm_short_in_4_m_may_be_eased_and_over_20_cm_the_gathers_are_let_out() -> None:
    # common practice, no source
    assert EASE_SHARE * 400 * CM == 15 * CM
    assert LET_OUT_SHARE * 400 * CM == 20 * CM
    told = _tell(_rehearsal("larkspur", "M"), "gather")
    measured = next(action for action in told.actions if action.tolerance)
    assert "11.2 cm" in measured.tolerance or "11.3 cm" in measured.tolerance  # of the 300 cm of the upper tier
    # Between the two the practice leaves the choice; the guide lets out, so that each step has one limit.
    assert "More than 11.3 cm short: let the gathers out" in measured.remedy


def test_two_gathering_rows_lie_5_mm_apart_in_the_longest_stitch_without_backstitch_with_long_tails() -> None:
    # common practice, no source
    told = _tell(_rehearsal("larkspur", "M"), "gather")
    texts = " ".join(action.text for action in told.actions)
    assert "longest stitch" in texts
    assert "8 mm from the cut edge, 5 mm from the first" in texts  # clear of the seam at 1 cm
    assert "Do not sew back" in texts
    assert "leave 10 cm of thread hanging at both ends" in texts


def test_trim_is_sewn_5_mm_from_the_edge() -> None:
    # common practice, no source
    told = _tell(_rehearsal("larkspur", "M"), "edge with trim")
    assert any("Sew 5 mm from the fold" in action.text for action in told.actions)


@pytest.mark.parametrize("technique", ["attach", "join ends"])
def test_bearing_seams_are_1_cm_with_a_stitch_of_1_to_2_mm(technique: str) -> None:
    # common practice, no source
    rehearsal = _rehearsal("larkspur", "M")
    assert techniques()[technique].parameters["seam"].default == "1 cm"
    for done in rehearsal.run.performed:
        if done.step.written.technique == technique:
            assert all(1 <= sewn.stitch <= 2 for sewn in done.sewn)


def test_the_cloth_of_the_waistband_is_about_twice_the_waist() -> None:
    # common practice, no source
    solved = _rehearsal("larkspur", "M").solved
    assert solved.pieces["waistband"].length == 2 * solved.length("waist_girth")


def test_elastic_for_a_heavy_skirt_is_about_6_in_less_than_the_waist() -> None:
    # common practice, no source
    rehearsal = _rehearsal("larkspur", "M")
    elastic = next(iter(rehearsal.run.final.casings.values())).elastic_length
    less = rehearsal.solved.length("waist_girth") - elastic
    assert abs(less - 6 * Fraction("25.4")) < 5


def test_pins_stand_every_2_cm_on_gathered_net() -> None:
    # common practice, no source
    told = _tell(_rehearsal("larkspur", "M"), "attach")
    assert any("every 2 cm" in action.text and "150 pins" in action.text for action in told.actions)


def test_gathers_on_threads_lie_on_top_and_those_of_an_attachment_underneath() -> None:
    # common practice, no source
    told = _tell(_rehearsal("larkspur", "M"), "attach")
    assert any("so that the gathers lie on top" in action.text for action in told.actions)
    told = _tell(_rehearsal("larkspur", "M", Workroom(gather_with="pleating attachment")), "attach")
    assert any("the upper tier lies on top and the gathers underneath" in action.text for action in told.actions)
