"""Gathers and what they are sewn to: rows clear of the seam, marks made once, pins for one ring at a time, names of stacks."""

from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.garment.technique import Performed, facts_of
from furbelow.garment.workroom import Workroom
from furbelow.s5_buy.hours import Pace, time_for
from furbelow.s5_buy.work import works_of
from furbelow.techniques.gather import Gathered

from tests.techniques.small import Worked, sound

INCH = Fraction("25.4")
TIERS = """upper: {from: net, count: 2, length: 160 cm, depth: 20 cm}
flounce: {from: net, count: 2, length: 320 cm, depth: 30 cm}
lining: {from: lawn, length: 120 cm, depth: 45 cm}
band: {from: lawn, length: 120 cm, depth: 3 cm}"""
RINGS = """- join ends: {of: upper, seam: 1 cm}
- join ends: {of: flounce, seam: 1 cm}
- join ends: {of: lining, seam: 1 cm}
- neaten: {seam: lining.ends}
- narrow hem: {edge: lining.bottom}
- gather: {edge: flounce.top, to: upper.bottom}
- attach: {edge: flounce.top, to: upper.bottom, seam: SEAM}"""
WAIST = """- stack layers: {layers: [upper.top], as: net_top}
- gather: {edge: net_top, to: lining.top}
- stack layers: {layers: [net_top, lining.top], as: skirt_top}
- join ends: {of: band, seam: 1 cm}
- band casing: {band: band, to: skirt_top, seam: 1 cm, gap: 5 cm}
- insert elastic: {elastic: elastic, into: band, length: 68 cm, overlap: 2 cm}
- close gap: {of: band}"""


def _skirt(seam: str = "1 cm", **how: object) -> Worked:
    return sound(TIERS, f"{RINGS.replace('SEAM', seam)}\n{WAIST}", **how)


def _steps(worked: Worked, technique: str) -> list[Performed]:
    return [done for done in worked.performed if done.step.written.technique == technique]


def _said(worked: Worked, technique: str, at: int = 0) -> list[str]:
    told = [
        told
        for done, told in zip(worked.performed, worked.tellings(), strict=True)
        if done.step.written.technique == technique
    ]
    return [action.text for action in told[at].actions]


@pytest.mark.parametrize(
    ("seam", "units", "first", "second"),
    [
        ("1 cm", "metric", "3 mm", "8 mm"),  # 10 - 2 = 8 mm, and 5 mm before it
        ("15 mm", "metric", "4 mm", "9 mm"),  # there is room for the usual rows
        ("8 mm", "metric", "3 mm", "6 mm"),  # 8 - 2 = 6 mm, and as near to each other as they may be
        ("3/8 in", "inches", "1/8 in", "1/4 in"),  # a tape has no mark nearer to the seam that is clear of it
    ],
)
def test_both_rows_lie_clear_of_the_seam_that_will_hold_them(seam: str, units: str, first: str, second: str) -> None:
    worked = _skirt(seam, units=units)
    texts = " ".join(_said(worked, "gather"))
    assert f"Sew a row {first} from the cut edge" in texts
    assert f"second row the same way, {second} from the cut edge" in texts
    rows = facts_of(_steps(worked, "gather")[0], Gathered).rows
    assert rows[1] <= _steps(worked, "attach")[0].step.mm("seam") - 2


def test_runs_are_no_longer_than_a_thread_can_be_pulled() -> None:
    # 320 cm of cloth, marked in quarters of its 160 cm: two runs of 160 cm would be too long, four are 80 cm.
    assert "in 4 runs, one from each mark to the next" in " ".join(_said(_skirt(), "gather"))
    # 160 cm of cloth in the stack: two runs of 80 cm.
    assert "in 2 runs over 2 quarters each" in " ".join(_said(_skirt(), "gather", 1))


def test_marks_are_made_once_and_carried_on() -> None:
    worked = _skirt()
    marking = [
        text
        for technique, at in (("attach", 0), ("stack layers", 0), ("gather", 1), ("stack layers", 1))
        for text in _said(worked, technique, at)
        if text.startswith(("Mark", "Fold"))
    ]
    # The flounce bears marks from its gathering, the net top from its stacking.
    assert [text.split(" in quarters")[0] for text in marking] == [
        "Mark the bottom edge of the upper",
        "Mark the top edge of the upper",
        "Mark the top edge of the lining",
    ]


def test_a_flat_edge_that_is_sewn_on_is_marked_too() -> None:
    pieces = "upper: {from: net, length: 160 cm, depth: 20 cm}\nlower: {from: net, length: 160 cm, depth: 20 cm}"
    steps = "- join ends: {of: upper}\n- join ends: {of: lower}\n- attach: {edge: lower.top, to: upper.bottom}"
    texts = _said(sound(pieces, steps), "attach")
    assert texts[0].startswith("Mark the bottom edge of the upper in quarters on both faces, every 40 cm")
    assert texts[1].startswith("Mark the top edge of the lower in quarters on both faces, every 40 cm")


def test_gathers_on_threads_lie_on_top_and_those_of_an_attachment_underneath() -> None:
    texts = " ".join(_said(_skirt(), "attach"))
    assert "the gathers lie on top" in texts
    assert "from the side of the flounce" in texts
    held = " ".join(_said(_skirt(room=Workroom(gather_with="pleating attachment")), "attach"))
    assert "the upper lies on top and the gathers underneath" in held
    assert "from the side of the upper" in held


def test_rings_are_pinned_and_sewn_one_after_the_other() -> None:
    worked = _skirt()
    (attach,) = _steps(worked, "attach")
    assert attach.pinned == 2 * 1600
    assert attach.pinned_at_once == 1600  # nobody sets the pins of both rings at once
    (told,) = [told for done, told in zip(worked.performed, worked.tellings(), strict=True) if done is attach]
    assert {action.copies for action in told.actions} == {2}
    # What comes before is done to both first.
    assert [action.run for action in told.actions] == sorted(action.run for action in told.actions)
    assert not told.actions[0].run


def test_pins_stand_as_the_workroom_says_where_gathers_shift_and_twice_as_far_apart_elsewhere() -> None:
    assert "every 2 cm between: about 80 pins" in " ".join(_said(_skirt(), "attach"))  # 160 cm / 2 cm
    assert "Pin every 4 cm between the marks" in " ".join(_said(_skirt(), "stack layers"))  # flat on flat


def test_a_stack_has_the_name_that_its_maker_gave_it() -> None:
    words = _skirt().words()
    assert "Gather the net top" in words
    assert "Lay 3 layers together: the skirt top" in words
    assert "Hold the layers of the net top as worn" in words
    assert "all 2 layers" not in words


def test_tails_are_knotted_once() -> None:
    worked = _skirt()
    told = [
        text for technique, at in (("stack layers", 1), ("band casing", 0)) for text in _said(worked, technique, at)
    ]
    assert sum("knot every upper thread" in text for text in told) == 1


# --- rows that are sewn on, and rows by hand ---

STRIP = """skirt: {from: lawn, length: 300 cm, depth: 60 cm}
strip: {from: net, length: 600 cm, depth: 6 cm}"""
STRIP_STEPS = """- join ends: {of: skirt, seam: 1 cm}
- join ends: {of: strip, seam: 1 cm}
- neaten: {seam: skirt.ends}
- narrow hem: {edge: skirt.bottom}
- narrow hem: {edge: skirt.top}
- ruche: {strip: strip, on: skirt, above hem: 10 cm}"""


def test_a_ruche_is_gathered_in_runs_and_its_tails_are_knotted_out_of_sight() -> None:
    worked = sound(STRIP, STRIP_STEPS)
    texts = " ".join(_said(worked, "ruche"))
    # 600 cm of strip, marked in the eighths of 300 cm: in 4 runs of 150 cm.
    assert "in 4 runs over 2 eighths each" in texts
    assert "wind the thread tails round it in a figure of eight" in texts
    assert "draw the upper threads to the wrong side, knot each to its lower one" in texts
    (done,) = _steps(worked, "ruche")
    # At both ends of each run the tails are wound round a pin, and later knotted.
    assert done.thread_ends == 4 * 2 * 2


CARTRIDGE = """yoke: {from: net, length: 110 cm, depth: 12 cm}
skirt: {from: net, length: 330 cm, depth: 50 cm}"""
CARTRIDGE_STEPS = """- join ends: {of: yoke, seam: 1 cm}
- join ends: {of: skirt, seam: 1 cm}
- cartridge pleats: {edge: skirt.top, to: yoke.bottom, turn: 1 cm, stitch: 8 mm}"""


def test_cartridge_pleats_are_marked_drawn_in_runs_and_whipped_one_by_one() -> None:
    worked = sound(CARTRIDGE, CARTRIDGE_STEPS)
    texts = " ".join(_said(worked, "cartridge pleats"))
    assert "Mark both folds in quarters" in texts
    assert "in 4 runs, one from each mark to the next" in texts
    assert "about 412 in all" in texts  # 3300 mm / 16 mm are 206 pleats, each held by two stitches
    (done,) = _steps(worked, "cartridge pleats")
    assert sum(sewn.singly for sewn in done.sewn) == 412
    (minutes,) = (time_for((work,), Pace()).minutes for work in works_of((done,), {}))
    # A stitch that is set by itself takes 7.5 seconds: 412 of them more than 50 minutes.
    assert minutes > 50


def test_box_pleats_on_a_flat_edge_have_their_marks_in_the_middle() -> None:
    pieces = "yoke: {from: net, cut length: 100 cm, depth: 10 cm}\nskirt: {from: net, cut length: 250 cm, depth: 50 cm}"
    steps = "- pleats: {edge: skirt.top, to: yoke.bottom, kind: KIND, count: 10}\n- attach: {edge: skirt.top, to: yoke.bottom}"
    box = _said(sound(pieces, steps.replace("KIND", "box")), "pleats")
    assert "every 25 cm, 10 times, the first 12.5 cm from one end" in box[0]
    knife = _said(sound(pieces, steps.replace("KIND", "knife")), "pleats")
    assert "every 25 cm, 10 times, from one end" in knife[0]


@pytest.mark.parametrize(
    ("cloth", "said"),
    [
        ("net", "Cut out the loops of thread that mark the net top."),
        ("lawn", "Rub out the marks that the net top has."),
    ],
)
def test_old_marks_are_taken_out_as_the_cloth_bears_them(cloth: str, said: str) -> None:
    waist = WAIST.replace(
        "gather: {edge: net_top, to: lining.top}", "gather: {edge: net_top, to: lining.top, behind: 55 %}"
    )
    steps = f"{RINGS.replace('SEAM', '1 cm')}\n- neaten: {{seam: [upper.ends, flounce.top]}}\n{waist}"
    worked = sound(TIERS.replace("upper: {from: net", f"upper: {{from: {cloth}"), steps)
    old = [text for text in _said(worked, "gather", 1) if "marks that" in text or "loops" in text]
    assert [text.partition(" The bright thread")[0] for text in old] == [said]


def test_marks_are_made_on_each_of_several_layers() -> None:
    worked = _skirt()
    (plain, _) = (_said(worked, "stack layers", at) for at in (0, 1))
    assert plain[0].startswith("Mark the top edge of the upper in")
    assert "on both faces of each layer" in plain[0]
    assert "bright" not in plain[0]
