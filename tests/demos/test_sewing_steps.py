"""The sewing steps can be carried out one after the other, and no check asks for more than earlier steps allow."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

import pytest
from furbelow.garment.limits import width_of
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed, facts_of, word_of
from furbelow.garment.tolerance import CUT_OFF, SEAM_OFF, folded_off, round_off, strip_off
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import plan, prove
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting
from furbelow.s6_write.guide.compose import compose
from furbelow.s6_write.guide.guide import Guide, Operation
from furbelow.techniques.band_casing import Banded
from furbelow.techniques.insert_elastic import DrawnIn
from furbelow.techniques.shared.casings import EDGE_STITCH

from tests.demos.demos import EVERY_SIZE, NAMES, guide, order, spec, steps_of, theatre

HOME = Workroom()


@cache
def _planned(name: str, size: str) -> tuple[Rehearsal, Cutting, Guide]:
    """A size as it is planned and told at a home table, with a zigzag machine."""
    proved = prove(order(name, size, HOME)).value
    assert proved is not None
    planned = plan(proved).value
    assert planned is not None
    told = compose(planned.rehearsal, planned.cutting, planned.shopping, "someone")
    return planned.rehearsal, planned.cutting, told


def _say(name: str, size: str) -> Phrasing:
    rehearsal, cutting, _ = _planned(name, size)
    return Phrasing(rehearsal.solved, HOME, cutting.joins, cutting.lengths)


def _done(name: str, size: str, technique: str) -> Iterator[Performed]:
    performed = _planned(name, size)[0].run.performed
    return (done for done in performed if done.step.written.technique == technique)


def _told(name: str, size: str, done: Performed) -> Operation:
    operations = (operation for part in _planned(name, size)[2].parts for operation in part.operations)
    return next(operation for operation in operations if operation.key == f"step-{done.step.written.index + 1}")


def _operations(written: Guide) -> list[Operation]:
    return [operation for part in written.parts for operation in part.operations]


# Some demos close without elastic.
def _has(name: str, technique: str, cut: str = "") -> bool:
    steps = [step for step in spec(name).steps if step.technique == technique]
    return any(not cut or word_of(step, "cut") == cut for step in steps)


ELASTIC = tuple(each for each in EVERY_SIZE if _has(each[0], "insert elastic"))
FIRST = tuple((name, next(iter(spec(name).sizes))) for name in NAMES)


# --- tolerances add up ---


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_a_ring_may_be_off_by_all_that_its_strips_and_seams_may(name: str, size: str) -> None:
    say = _say(name, size)
    for done in _done(name, size, "join ends"):
        for piece in done.touches:
            strips, cut = done.after.strips_round(piece), done.after.cloths[piece].piece.cut_length
            allowed = round_off(done.after, done.after.edge(f"{piece}.bottom"), say)
            assert allowed >= strips * (strip_off(piece, cut, say) + SEAM_OFF)


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_a_strip_may_be_off_by_all_that_its_segments_and_joins_may(name: str, size: str) -> None:
    say = _say(name, size)
    for piece, copies in say.lengths.items():
        parts = max(len(copy) for copy in copies)
        length = say.solved.pieces[piece].cut_length
        assert strip_off(piece, length, say) >= parts * CUT_OFF + (parts - 1) * SEAM_OFF


def test_two_segments_cut_and_joined_as_allowed_pass_the_check_of_the_ring() -> None:
    """182 cm in two segments: 3 mm each and 2 mm for the join are 8 mm, and the closing seam takes 2 mm more."""
    steps = [step for step in steps_of(guide("foxglove", "C")) if step.tolerance]
    strip = next(step for step in steps if step.text.startswith("Measure the joined strip"))
    ring = next(step for step in steps if "edge of the flounce" in step.text and step.text.startswith("Measure round"))
    assert strip.tolerance == "1 cm more or less"  # 182 cm / 200 = 9.1 mm, said up
    assert ring.tolerance == "1.2 cm more or less"  # 9.1 mm + 2 mm, said up


@pytest.mark.parametrize(("name", "size"), [each for each in ELASTIC if _has(each[0], "band casing")])
def test_a_band_cut_as_narrow_as_allowed_still_holds_its_elastic(name: str, size: str) -> None:
    solved = _planned(name, size)[0].solved
    assert folded_off() >= CUT_OFF / 2
    (casing,), (elastic,) = _done(name, size, "band casing"), _done(name, size, "insert elastic")
    narrowest = facts_of(casing, Banded).depth - CUT_OFF / 2 - EDGE_STITCH
    assert narrowest >= width_of(solved, word_of(elastic.step.written, "elastic"))
    check = next(step for step in _told(name, size, casing).steps if "deep all round" in step.check)
    assert check.tolerance == "2 mm more or less"
    assert "cut a new one" in check.remedy


@pytest.mark.parametrize(("name", "size"), FIRST)
def test_gathers_have_one_limit_wherever_they_are_measured(name: str, size: str) -> None:
    for step in steps_of(_planned(name, size)[2]):
        if found := re.match(r"up to (.+?) short", step.tolerance):
            assert f"More than {found[1]} short: let the gathers out." in step.remedy


# --- each seam is told whole ---


@pytest.mark.parametrize(("name", "size"), FIRST)
def test_a_zigzag_has_its_width_and_length_and_ends_in_its_own_sentence(name: str, size: str) -> None:
    for operation in _operations(_planned(name, size)[2]):
        # The first row of all is one of trial, with a new needle.
        texts = [step.text for step in operation.steps if step.message != "machine-trial"]
        if not any("Zigzag over" in text for text in texts):
            continue
        assert "zigzag, 3 mm wide and 2 mm long" in texts[0]
        for text in texts[1:]:
            if "Zigzag over" in text:
                assert "few stitches back" in text
                assert "Cut the threads short." in text


@pytest.mark.parametrize(("name", "size"), FIRST)
def test_a_zigzag_round_a_ring_ends_on_its_start_and_never_runs_off(name: str, size: str) -> None:
    closed = [
        step.text
        for operation in _operations(_planned(name, size)[2])
        for step in operation.steps
        if "Zigzag over the margin between" in step.text and "over the start" in step.text
    ]
    assert closed or name != "foxglove"
    assert not any("run off" in step.text for step in steps_of(_planned(name, size)[2]))


def test_an_overlocker_runs_off_the_edge_when_it_has_passed_its_start() -> None:
    texts = [
        step.text
        for step in steps_of(guide("foxglove", "C"))
        if step.text.startswith("Begin at an upright seam. Overlock")
    ]
    assert texts
    assert all("2 cm over the start, then run off the edge" in text for text in texts)


@pytest.mark.parametrize(("name", "size"), FIRST)
def test_the_machine_is_set_back_to_straight_after_a_zigzag(name: str, size: str) -> None:
    rehearsal, _, _ = _planned(name, size)
    last = ""
    for done in rehearsal.run.performed:
        if done.setup in ("zigzag", "straight stitch"):
            operation = next(
                (
                    each
                    for each in _operations(_planned(name, size)[2])
                    if each.key == f"step-{done.step.written.index + 1}"
                ),
                None,
            )
            if operation is None:  # nothing to do
                continue
            back = "Set the machine back from zigzag to straight" in operation.steps[0].text
            assert back == (last == "zigzag" and done.setup == "straight stitch"), operation.title
            last = done.setup


def test_the_trim_of_two_rings_is_told_for_one_and_then_for_the_other() -> None:
    trimmed = next(each for each in _operations(guide("larkspur", "M")) if each.title.startswith("Edge the flounce"))
    chains = [step.chain for step in trimmed.steps]
    run = [step.number for step in trimmed.steps if step.copies == 2]
    assert run == list(range(run[0], run[-1] + 1))
    assert chains[run[0] - 1] == f"sentences {run[0]} to {run[-1]} with one, then with the other"
    assert sum(map(bool, chains)) == 1


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_the_iron_stands_cool_enough_for_all_that_a_step_has_sewn_together(name: str, size: str) -> None:
    rehearsal, _, told = _planned(name, size)
    solved = rehearsal.run.solved
    by_key = {f"step-{done.step.written.index + 1}": done for done in rehearsal.run.performed}
    stands = None
    for operation in told.operations:
        done = by_key.get(operation.key)
        for step in operation.steps:
            if found := re.search(r"Set the iron .*(one dot|two dots|three dots)", step.text):
                stands = {"one dot": 1, "two dots": 2, "three dots": 3}[found[1]]
            elif done and re.match(r"(Press|press) |.* and press ", step.text) and "press cloth" not in step.text:
                assert stands is not None
                sewn = {each for piece in done.touches for each in done.after.unit(piece)}
                melts = {
                    each
                    for each in sewn
                    if solved.materials[solved.pieces[each].piece.cloth.text].material.fibre == "nylon"
                }
                alone = {piece for piece in done.touches if str(piece) in step.text} - melts
                assert stands == 1 or not melts or alone and done.setup == "iron", (operation.title, step.text)


def test_a_trim_stops_before_its_start_and_is_folded_over_it() -> None:
    steps = next(each for each in _operations(guide("foxglove", "C")) if each.title.startswith("Edge")).steps
    told = " ".join(f"{step.text} {step.check}" for step in steps)
    order_of = [
        told.index(words)
        for words in (
            "shaped, that edge lies outward, and the straight edge inward",
            "Stop 10 cm before you come round",
            "2 cm past its start",
            "Fold 1 cm of the cut end under",
            "Sew on to the fold",
            "Sew a second row",
            "Sew the folded end down across",
        )
    ]
    assert order_of == sorted(order_of)


# --- where marks are measured from ---


@pytest.mark.parametrize(("name", "size"), EVERY_SIZE)
def test_a_ring_with_several_upright_seams_bears_one_bright_thread(name: str, size: str) -> None:
    say = _say(name, size)
    for done in _done(name, size, "join ends"):
        several = any(done.after.strips_round(piece) > 1 or say.joins.get(piece) for piece in done.touches)
        tied = [step for step in _told(name, size, done).steps if "bright thread" in step.text]
        assert len(tied) == several


def test_a_bright_thread_lies_nearer_to_the_top() -> None:
    written = _planned("foxglove", "C")[2]
    flounce = next(each for each in _operations(written) if each.title == "Close the flounce to a ring")
    assert any("5 cm below the top" in step.text for step in flounce.steps)  # of a seam of 20 cm


# --- the elastic ---


# Elastic that is cut long is tried on in the garment and has no line before it is threaded.
@pytest.mark.parametrize(("name", "size"), [each for each in ELASTIC if _has(each[0], "insert elastic", "to length")])
def test_the_elastic_is_checked_slack_before_it_is_threaded_and_by_its_line_after(name: str, size: str) -> None:
    say = _say(name, size)
    (done,) = _done(name, size, "insert elastic")
    steps = _told(name, size, done).steps
    loop, lap = facts_of(done, DrawnIn).loop, done.step.mm("overlap")
    line = next(at for at, step in enumerate(steps) if step.text.startswith("Draw a line"))
    threaded = next(at for at, step in enumerate(steps) if "through the channel" in step.text)
    lapped = next(at for at, step in enumerate(steps) if "its cut end on the line" in step.text)
    assert line < threaded < lapped
    assert facts_of(done, DrawnIn).cut - lap == loop  # from the line to the other end
    assert say.length(loop) in steps[line].check
    assert "The cut end lies on the line" in steps[lapped].check
    assert not any("measure" in step.check.lower() for step in steps[threaded:])


@pytest.mark.parametrize(("name", "size"), [each for each in FIRST if each in ELASTIC])
def test_the_stretch_is_told_as_the_flat_half(name: str, size: str) -> None:
    say = _say(name, size)
    (done,) = _done(name, size, "insert elastic")
    over = say.solved.length("worn.over")
    told = next(step.text for step in _told(name, size, done).steps if "Stretch it" in step.text)
    assert f"{say.length(over / 2)} wide, which is {say.length(over)} round" in told


# --- what does not apply is not said ---


def test_an_overlocker_is_named_only_where_there_is_one() -> None:
    def cautions(written: Guide) -> str:
        return " ".join(caution.text for operation in _operations(written) for caution in operation.cautions)

    assert theatre().neaten_with == "overlocker"
    assert "Overlocker" in cautions(guide("foxglove", "C"))
    assert "Overlocker" not in cautions(_planned("foxglove", "C")[2])


def test_nylon_is_named_only_where_cloth_melts_and_the_press_cloth_where_something_is_pressed_through_it() -> None:
    cotton, net = _planned("foxglove", "C")[2], _planned("larkspur", "M")[2]
    for written, melts in ((cotton, False), (net, True)):
        said = " ".join(
            caution.text
            for operation in _operations(written)
            for caution in operation.cautions
            if caution.kind == "heat"
        )
        assert ("Nylon" in said) == melts
        through = any("through a cloth" in step.remedy for operation in written.cut for step in operation.steps)
        assert any(tool.name.startswith("two press cloths") for tool in written.tools) == (melts or through)
        assert any(tool.name.startswith("iron") for tool in written.tools)


def test_a_room_with_clips_still_has_pins_for_the_thread_tails() -> None:
    proved = prove(order("marigold", "12", Workroom(hold_with="clips"))).value
    assert proved is not None
    planned = plan(proved).value
    assert planned is not None
    tools = compose(planned.rehearsal, planned.cutting, planned.shopping, "someone").tools
    assert [tool.name.partition(",")[0] for tool in tools if "count them out" in tool.why] == ["clips", "pins"]


@pytest.mark.parametrize("name", NAMES)
def test_marks_never_outlive_the_edge_that_bore_them(name: str) -> None:
    """Even marks hold for the length that they were made on: what is matched later is marked on the edge as it is then."""
    for done in _planned(name, next(iter(spec(name).sizes)))[0].run.performed:
        for edge, before in done.before.edges.items():
            after = done.after.edges.get(edge)
            if after and before.marks and after.cloth_length != before.cloth_length:
                assert not after.marks, f"{done.step.written.technique} at {edge}"


_A_LENGTH = re.compile(r"\d+(?:\.\d+)? cm")


@pytest.mark.parametrize("name", NAMES)
def test_a_drawing_of_tapes_gives_the_numbers_of_its_sentences(name: str) -> None:
    """One number is rounded one way, wherever it stands."""
    for size in spec(name).sizes:
        for operation in guide(name, size).cut:
            told = set(_A_LENGTH.findall(" ".join(step.text for step in operation.steps)))
            for figure in operation.figures:
                if figure.key.startswith("tapes"):
                    assert set(_A_LENGTH.findall(figure.alt)) <= told, f"{name} {size} {figure.key}"
