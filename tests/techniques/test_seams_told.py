"""What seams tell: how rings and flat edges are laid, marks made once, tails off their pins, which side, how far apart."""

from __future__ import annotations

import pytest
from furbelow.garment.technique import Tool
from furbelow.garment.workroom import Workroom
from furbelow.s6_write.words.said_step import SaidStep

from tests.techniques.small import Worked, work

TIERS = """upper: {from: CLOTH, length: 80 cm, depth: 20 cm}
lower: {from: CLOTH, length: LONG, depth: 30 cm}"""
RINGS = "- join ends: {of: upper}\n- join ends: {of: lower}"
GATHERED = "- gather: {edge: lower.top, to: upper.bottom}"
FRENCH = "- french seam: {edge: lower.top, to: upper.bottom}"
FELLED = "- flat felled seam: {edge: lower.top, to: upper.bottom}"
LAPPED = "- lapped seam: {edge: upper.bottom, over: lower.top}"
ATTACHED = "- attach: {edge: lower.top, to: upper.bottom}"
PANELS = "panel: {from: lawn, count: COUNT, length: 40 cm, depth: 50 cm}"


def _tiers(steps: str, long: str = "80 cm", cloth: str = "lawn", room: Workroom | None = None) -> Worked:
    return work(TIERS.replace("CLOTH", cloth).replace("LONG", long), steps, room=room)


def _last(worked: Worked) -> SaidStep:
    return worked.tellings()[-1]


def _marks(told: SaidStep) -> list[str]:
    return [action.mark for action in told.actions]


def _in_order(told: SaidStep, *marks: str) -> bool:
    found = _marks(told)
    return all(mark in found for mark in marks) and sorted(marks, key=found.index) == list(marks)


# --- rings and flat edges ---


@pytest.mark.parametrize("seam", [FRENCH, FELLED, LAPPED, ATTACHED])
def test_rings_are_slipped_over_each_other_and_flat_edges_are_not(seam: str) -> None:
    ring, flat = (" ".join(each.text for each in _last(_tiers(f"{way}\n{seam}")).actions) for way in (RINGS, ""))
    assert "lip the upper over the lower" in ring
    assert "side seam" in ring
    assert "Let the end overlap the start" in ring
    assert "lip the upper over" not in flat
    assert "side seam" not in flat
    assert "a few stitches back at both ends" in flat


def test_a_french_seam_turns_the_rings_so_that_wrong_sides_meet() -> None:
    told = _last(_tiers(f"{RINGS}\n{FRENCH}"))
    assert "Turn the lower inside out and the upper right side out." in [each.text for each in told.actions]


# --- marks and tails ---


@pytest.mark.parametrize("seam", [FRENCH, ATTACHED])
def test_an_edge_marked_when_it_was_gathered_is_not_marked_again(seam: str) -> None:
    flat, drawn = _tiers(seam), _tiers(f"{GATHERED}\n{seam}", "160 cm")
    assert _marks(_last(flat)).count("mark-parts-flat") == 2
    assert _marks(_last(drawn)).count("mark-parts-flat") == 1


@pytest.mark.parametrize(
    ("seam", "pinned", "sewn"),
    [
        (FRENCH, "french-seam-pin", "french-seam-first-flat"),
        (LAPPED, "lapped-seam-pin", "lapped-seam-sew-flat"),
        (ATTACHED, "attach-pin-gathers", "attach-sew-gathers"),
    ],
)
def test_pins_that_hold_tails_come_out_once_the_edge_is_pinned(seam: str, pinned: str, sewn: str) -> None:
    assert _in_order(_last(_tiers(f"{GATHERED}\n{seam}", "160 cm")), pinned, "tails-off-machine", sewn)


@pytest.mark.parametrize(("steps", "hang"), [("GATHER each\nSTACK", False), ("STACK\nGATHER as one", True)])
def test_tails_hang_from_a_stack_that_was_gathered_as_one_and_from_no_other(steps: str, hang: bool) -> None:
    """Stacking knots the tails of gathered layers; rows through the whole stack come after it."""
    pieces = f"{TIERS}\ninner: {{from: CLOTH, length: LONG, depth: 30 cm}}".replace("CLOTH", "net")
    each = "- gather: {edge: lower.top, to: upper.bottom}\n- gather: {edge: inner.top, to: upper.bottom}"
    written = (
        steps.replace("GATHER each", each)
        .replace("STACK", "- stack layers: {layers: [lower.top, inner.top], as: both}")
        .replace("GATHER as one", "- gather: {edge: both, to: upper.bottom}")
    )
    worked = work(pieces.replace("LONG", "160 cm"), f"{written}\n- attach: {{edge: both, to: upper.bottom}}")
    assert ("tails-off-machine" in _marks(_last(worked))) == hang
    assert (worked.performed[-1].thread_ends > 0) == hang


# --- pressing and stitching down ---


@pytest.mark.parametrize(
    ("seam", "pressed", "sewn"),
    [
        (FRENCH, "french-seam-press", "french-seam-second-flat"),
        (FELLED, "flat-felled-seam-open-edges", "flat-felled-seam-fell-flat"),
        (f"{ATTACHED}\n- turn seam: {{seam: lower.top}}", "turn-seam-press", "turn-seam-sew-flat"),
    ],
)
def test_a_seam_is_pressed_before_it_is_stitched_down(seam: str, pressed: str, sewn: str) -> None:
    told = _last(_tiers(seam, cloth="net"))
    assert _in_order(told, pressed, sewn)
    assert Tool.IRON in told.tools
    assert Tool.PRESS_CLOTH in told.tools  # nylon


def test_the_second_row_of_a_felled_seam_has_its_distance_from_fold_and_first_row() -> None:
    """A fold of 9 mm, the row 2 mm from its edge: 9 - 2 = 7 mm between the rows."""
    row = next(each for each in _last(_tiers(FELLED)).actions if each.mark == "flat-felled-seam-fell-flat")
    assert "sew 2 mm from it" in row.text
    assert "7 mm apart" in row.check


def test_the_second_row_of_a_narrow_felled_seam_still_catches_what_is_folded_under() -> None:
    """5 mm less a fold of 3 mm leaves 2 mm to fold under; the row lies over its middle, 1 mm from the fold."""
    narrow = FELLED.replace("}", ", seam: 5 mm, trim to: 2 mm, fell: 3 mm}")
    row = next(each for each in _last(_tiers(narrow, cloth="net")).actions if each.mark == "flat-felled-seam-fell-flat")
    assert "sew 1 mm from it" in row.text


def test_a_margin_turned_towards_a_stack_is_told_by_its_pieces() -> None:
    pieces = f"{TIERS}\ninner: {{from: CLOTH, length: 80 cm, depth: 20 cm}}".replace("CLOTH", "net")
    worked = work(
        pieces.replace("LONG", "80 cm"),
        """- stack layers: {layers: [upper.bottom, inner.bottom], as: both}
        - attach: {edge: lower.top, to: both}
        - turn seam: {seam: lower.top}""",
    )
    assert "flat against the wrong side of the upper and the inner" in _last(worked).actions[0].text
    assert worked.bench.seams["lower.top"].turned == "upper"


# --- ends, neatening, what holds ---


@pytest.mark.parametrize("technique", ["join ends", "french seam", "flat felled seam"])
@pytest.mark.parametrize(("count", "laid"), [(2, "Lay both pieces of the panel"), (3, "and the last on the first")])
def test_panels_are_laid_side_by_side_to_one_ring(technique: str, count: int, laid: str) -> None:
    steps = f"- {technique}: {{of: panel, into: one ring}}"
    told = _last(work(PANELS.replace("COUNT", str(count)), steps))
    assert laid in told.actions[0].text
    assert ("wrong sides together" in told.actions[0].text) == (technique == "french seam")


@pytest.mark.parametrize(
    ("cloth", "by", "aim"),
    [
        ("lawn", "overlocker", "The cut edges cannot ravel."),
        ("lawn", "pinking shears", "The cut edges ravel less."),
        ("net", "overlocker", "The cut edges are held and cannot scratch."),
        ("net", "pinking shears", "The cut edges are held and cannot scratch."),
    ],
)
def test_neatening_promises_what_it_can_hold(cloth: str, by: str, aim: str) -> None:
    told = _last(_tiers(f"{RINGS}\n- neaten: {{seam: upper.ends}}", cloth=cloth, room=Workroom(neaten_with=by)))
    assert told.aim == aim
    assert any("took fray" in each.check for each in told.actions) == (cloth == "lawn" and by == "overlocker")


@pytest.mark.parametrize(
    ("places", "title"),
    [
        ("edge: [upper.top, lower.bottom]", "Neaten 2 edges of the upper and the lower"),
        ("seam: [upper.ends, lower.ends]", "Neaten 2 margins of the upper and the lower"),
        ("edge: upper.top, seam: upper.ends", "Neaten 2 edges and margins of the upper"),
    ],
)
def test_a_heading_counts_the_edges_and_margins_that_are_neatened_and_says_of_what(places: str, title: str) -> None:
    assert _last(_tiers(f"{RINGS}\n- neaten: {{{places}}}")).title == title


@pytest.mark.parametrize(("hold", "word"), [("pins", "pin out"), ("clips", "clip off")])
def test_the_caution_names_what_holds_the_edges(hold: str, word: str) -> None:
    for seam in (FRENCH, FELLED, ATTACHED, "- join ends: {of: upper}"):
        cautions = [text for _, text in _last(_tiers(seam, room=Workroom(hold_with=hold))).cautions]
        assert any(f"Take each {word}" in text for text in cautions)


@pytest.mark.parametrize(("seam", "mark"), [(FELLED, "flat-felled-seam-lay-flat"), (LAPPED, "lapped-seam-pin")])
def test_what_clips_do_not_reach_is_pinned_at_every_table(seam: str, mark: str) -> None:
    told = _last(_tiers(seam, room=Workroom(hold_with="clips")))
    text = next(each.text for each in told.actions if each.mark == mark)
    assert "pin" in text
    assert "clip" not in text
    assert Tool.PINS in told.tools
    assert any("Take each pin out" in caution for _, caution in told.cautions)
