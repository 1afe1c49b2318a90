"""What a beginner with only the pages asked for: said where it is needed, once, and with its number."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from furbelow.garment.technique import CautionKind
from furbelow.garment.workroom import Workroom
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.guide.letters import skips
from furbelow.s6_write.words.kept_words import all_shipped

from tests.demos.demos import guide
from tests.s6_write.test_iron import WAIST
from tests.small_guide import FLOUNCED, FLOUNCED_STEPS, small_guide, texts_of, tools_in
from tests.techniques.every_technique_told import as_written, instructions_in, worked
from tests.techniques.test_every_technique_in_a_guide import GARMENTS, OWN, SUPPLIES

MARKS = "Heat sets some markers"
LENGTH = re.compile(r"(?<![\w}])\d+(?:[.,/]\d+)?[\s\u00a0\u202f](?:mm|cm|in)\b")
MACHINE = {"zigzag-set", "rows-set-machine", "rows-set-back", "zip-baste", "placket-stay", "edge-with-trim-hide"}
"""Stitches are set in mm in every room, for that is what machines are marked in."""


def _cautions(told: Guide) -> list[tuple[str, str]]:
    operations = [each for part in told.parts for each in part.operations]
    return [(each.letter, caution.text) for each in operations for caution in each.cautions]


@pytest.mark.parametrize("garment", sorted(GARMENTS))
def test_what_heat_does_to_marks_stands_before_the_first_ironing(garment: str) -> None:
    told = small_guide(*GARMENTS[garment], materials=SUPPLIES, own=OWN)
    warned = [letter for letter, text in _cautions(told) if text.startswith(MARKS)]
    operations = [each for part in told.parts for each in part.operations]
    irons = [each.letter for each in operations if any("Set the iron" in step.text for step in each.steps)]
    assert len(warned) <= 1
    if warned and irons:
        letters = [each.letter for each in operations]
        assert letters.index(warned[0]) <= letters.index(irons[0])


def test_the_iron_burns_is_told_again_where_the_work_may_have_been_put_away() -> None:
    told = guide("peony", "B")
    burns = [letter for letter, text in _cautions(told) if text.startswith("The iron and its steam burn")]
    ends = [each.letter for each in told.operations if each.stop]
    letters = [each.letter for each in told.operations]
    between = [sum(letters.index(end) < letters.index(letter) for end in ends) for letter in burns]
    assert len(set(between)) == len(between) > 1  # once between two places to stop
    other = [text for _, text in _cautions(told) if text.startswith("Cut in short bites")]
    assert len(other) == 1


def test_before_the_first_cut_the_blades_are_warned_of() -> None:
    for name, size in (("foxglove", "C"), ("larkspur", "M")):
        first = guide(name, size).cut[0]
        assert any(caution.kind is CautionKind.BLADE for caution in first.cautions)


def test_bobbins_are_wound_before_the_first_row_with_a_number() -> None:
    home = [text for text in texts_of(small_guide(FLOUNCED, FLOUNCED_STEPS)) if text.startswith("Put in")]
    assert [text.partition(" For a trial")[0] for text in home] == [
        "Put in the new needle and wind two bobbins: all rows take about 22 m of lower thread, so wind an empty one again."
    ]
    room = Workroom(bobbin=Fraction(8000))
    known = [text for text in texts_of(small_guide(FLOUNCED, FLOUNCED_STEPS, room=room)) if "wind " in text]
    assert "wind 3 bobbins" in known[0]
    assert "wind an empty one" not in known[0]


def test_an_overlocker_and_the_sewing_machine_have_a_reel_each_for_every_thread() -> None:
    thread = "  thread: {kind: thread, reel: 1000 m}\n"
    told = small_guide(FLOUNCED, FLOUNCED_STEPS, room=Workroom(neaten_with="overlocker"), materials=thread)
    (line,) = (each for each in told.materials if each.name == "thread")
    assert line.amount == "4 reels of 1000 m"
    assert "the overlocker takes 3 reels at once, and the sewing machine one beside them" in line.use


def test_a_remedy_is_told_in_full_once_in_an_operation() -> None:
    for name, size in (("larkspur", "M"), ("peony", "B"), ("foxglove", "C")):
        for operation in (*guide(name, size).cut, *guide(name, size).operations):
            long = [step.remedy for step in operation.steps if len(step.remedy) > len("As at 10.")]
            assert len(long) == len(set(long)), operation.title
            for step in operation.steps:
                if found := re.fullmatch(r"As at (\d+)\.", step.remedy):
                    assert int(found[1]) < step.number


def test_a_zigzag_is_tried_once_on_each_cloth() -> None:
    texts = texts_of(small_guide(FLOUNCED, FLOUNCED_STEPS))
    tried = ["Try it" in text for text in texts if text.startswith("Set the machine to zigzag")]
    assert tried == [True, False, False]  # joins, the margin of the flounce, the lap of the elastic


LINE = re.compile(r"\b(?:[Dd]raw|[Cc]halk|[Rr]ule)\b[^.]*\blines?\b")
NO_CLOTH = {
    "eyelets-cross",
    "insert-elastic-line",
    "insert-elastic-mark-flat",
    "insert-elastic-mark-lap",
    "ring-cut-end-lines",
}
"""Lines on elastic; and what is said only inside other messages."""


def test_all_sentences_that_have_a_line_drawn_on_cloth_are_known_as_such() -> None:
    said = as_written()
    drawn = {name for name, text in said.items() if LINE.search(text)}
    inside = {"ring-cut-end-lines", "eyelets-cross"}
    within = {name for name, text in said.items() if any(f"{{ {other} }}" in text for other in inside)}
    ruled = {name for told in instructions_in(worked()) for name in told.ruled}
    assert (drawn | within) - NO_CLOTH == ruled


def test_what_stands_for_a_line_on_net_is_told_before_the_first() -> None:
    pieces = "skirt: {from: net, length: 126 cm, depth: 50 cm}\nrow: {from: net, length: skirt.length, depth: 8 cm}"
    steps = """- french seam: {of: skirt}
- french seam: {of: row}
- narrow hem: {edge: skirt.bottom}
- narrow hem: {edge: row.bottom}
- sew on: {edge: row.top, on: skirt, above hem: 20 cm}
"""
    texts = texts_of(small_guide(pieces, steps + WAIST))
    (told,) = (at for at, text in enumerate(texts) if text.startswith("No line shows on net."))
    assert any("Draw a line" in text for text in texts[told:])
    assert not any("Draw a line" in text for text in texts[:told])


def test_net_is_marked_by_loops_of_thread_whatever_it_is_called() -> None:
    """By what it is: cloth as light as net that does not ravel. The same cloth that ravels takes chalk."""
    pieces = FLOUNCED.replace("flounce: {from: lawn", "flounce: {from: mist")
    for ravels, loops in (("no", 1), ("yes", 0)):
        mist = f"  mist: {{kind: cloth, width: 150 cm, fibre: cotton, weight: 20 g/m2, ravels: {ravels}}}\n"
        texts = texts_of(small_guide(pieces, FLOUNCED_STEPS, materials=mist))
        assert sum(text.startswith("Chalk falls through mist.") for text in texts) == loops


def test_tapes_that_cloth_covers_are_seen_at_the_ends_of_the_table() -> None:
    told = [
        step.check
        for each in guide("larkspur", "M").cut
        for step in each.steps
        if "Stick paper tapes along" in step.text
    ]
    assert any("down over both its ends, where you see it when the cloth covers the rest" in text for text in told)


def test_how_to_tag_is_said_once_for_cloths_whose_faces_are_told_apart_alike() -> None:
    for name, size in (("larkspur", "M"), ("foxglove", "C"), ("peony", "B")):
        told = [
            step.text
            for each in guide(name, size).cut
            for step in each.steps
            if step.text.startswith("Write paper tags")
        ]
        assert len(told) == len(set(told))


def test_the_tape_of_the_label_and_the_jug_are_among_the_tools() -> None:
    assert any("cotton tape" in tool for tool in tools_in(guide("peony", "B")))
    assert "measuring jug" in tools_in(guide("larkspur", "M"))
    for garment in GARMENTS:
        tools = tools_in(small_guide(*GARMENTS[garment], materials=SUPPLIES, own=OWN))
        assert sum("cotton tape" in tool for tool in tools) == 1


def test_the_first_page_says_what_takes_time_that_is_no_work() -> None:
    (time,) = (fact.value for fact in guide("larkspur", "M").glance if fact.name == "front-time")
    assert re.sub(r"^.*?min", "", time) == ", besides washing and drying before the cutting and drying at Z"


def test_a_hem_that_dips_is_measured_in_one_way_in_the_table_and_at_the_last_look() -> None:
    told = guide("peony", "B")
    (sides,) = (fact for fact in told.facts if fact.label == "length at the sides")
    (look,) = (step.text for each in told.operations[-1:] for step in each.steps if "both side seams" in step.text)
    assert f"{sides.value} along both side seams" in look
    assert sides.reason.endswith("along the side seam, which slants; straight down 94 cm")


def test_the_top_of_gores_is_measured_before_a_band_comes_there() -> None:
    texts = texts_of(guide("peony", "B"))
    (at,) = (at for at, text in enumerate(texts) if text.startswith("Measure the top edge of the skirt too"))
    # 76.2 cm on the seam line and 300 cm at the hem 107 cm below: 2.09 cm less at the cut edge, 1 cm higher; and both margins
    # of the opening, 1.5 cm each.
    assert texts[at].endswith("from one cut end of the opening round to the other: 77.1 cm.")
    assert at < next(at for at, text in enumerate(texts) if text.startswith("Fold the long edge of the waistband"))
    straight = "skirt: {from: lawn, count: 2, length: 63 cm, depth: 50 cm}"
    steps = "- join ends: {of: skirt, into: one ring}\n- neaten: {seam: skirt.ends}\n- narrow hem: {edge: skirt.bottom}"
    assert not any("the top edge of the skirt too" in text for text in texts_of(small_guide(straight, steps + WAIST)))


def test_a_long_seam_is_pressed_with_the_iron_as_its_margins_lie() -> None:
    pieces = "skirt: {from: lawn, length: 126 cm, depth: 50 cm}"
    singly = "- neaten: {edge: skirt.start}\n- neaten: {edge: skirt.end}\n- join ends: {of: skirt}\n"
    together = "- join ends: {of: skirt}\n- neaten: {seam: skirt.ends}\n"
    hem = "- narrow hem: {edge: skirt.bottom}"
    apart, aside = "With the iron press the margins of the seam apart", "Press the margins of the upright seam"
    for steps, said in ((singly, apart), (together, aside)):
        texts = texts_of(small_guide(pieces, steps + hem + WAIST))
        assert sum(text.startswith(said) for text in texts) == 1
        # Where a step presses the piece, that is enough.
        pressed = texts_of(small_guide(pieces, f"{steps}- press: {{piece: skirt}}\n{hem}{WAIST}"))
        assert not any(text.startswith((apart, aside)) for text in pressed)
    for other in (pieces.replace("50 cm", "20 cm"), pieces.replace("lawn", "net")):
        texts = texts_of(small_guide(other, together + hem + WAIST))
        assert not any(text.startswith(aside) for text in texts)


def test_a_shorter_lining_says_by_how_much_where_it_is_laid() -> None:
    checks = [step.check for operation in guide("larkspur", "M").operations for step in operation.steps]
    # 53 cm of net and 50 cm of lining, both from the top; the band of 3 cm stands on both.
    assert "No layer sags between the marks. Its lower edge ends 3 cm above that of the layer before." in checks


def test_every_letter_that_is_left_out_is_named_and_beyond_twenty_counted() -> None:
    assert skips("ABCDEF", "ACF") == (("B", "D", "E"), "C")
    assert skips("ABCD", "ABCD") is None
    assert skips("ABCD", "AB") is None  # nothing follows, so nothing is missed


@pytest.mark.parametrize("language", ["en", "de", "fr", "es"])
def test_no_message_has_a_length_in_units_of_its_own(language: str) -> None:
    """A length is a value, so that it is told in the units of the room."""
    found = {name: LENGTH.findall(str(text)) for name, text in all_shipped(language).items() if name not in MACHINE}
    assert {name: lengths for name, lengths in found.items() if lengths} == {}


@pytest.mark.parametrize(("units", "trial", "practice"), [("metric", "10 cm", "20 cm"), ("inches", "4 in", "8 in")])
def test_strips_to_try_on_are_whole_in_the_units_of_the_room(units: str, trial: str, practice: str) -> None:
    """Nobody cuts an offcut to 7 7/8 in."""
    pieces, steps = GARMENTS["a skirt with a zip"]
    said = texts_of(small_guide(pieces, steps, materials=SUPPLIES, room=Workroom(units=units)))
    assert any(f"For a trial sew {trial} on" in text for text in said)
    assert any(f"Practise on {practice} of offcut" in text for text in said)


def test_who_holds_with_clips_counts_clips() -> None:
    pieces, steps = GARMENTS["a skirt with a placket"]
    told = small_guide(pieces, steps, materials=SUPPLIES, room=Workroom(hold_with="clips"))
    (general,) = (each.text for each in told.cautions if each.kind is CautionKind.NEEDLE)
    assert general.startswith("Count pins, clips and needles")


def test_the_picture_says_what_it_leaves_out() -> None:
    shown = [figure.alt for figure in guide("bindweed", "C").picture]
    assert shown
    assert all("Not drawn: " in alt for alt in shown)


def test_the_overlocker_is_tried_on_an_offcut_once() -> None:
    said = texts_of(small_guide(FLOUNCED, FLOUNCED_STEPS, room=Workroom(neaten_with="overlocker")))
    (at,) = (at for at, text in enumerate(said) if text.startswith("For a trial overlock"))
    assert not any("Overlock " in text for text in said[:at])
