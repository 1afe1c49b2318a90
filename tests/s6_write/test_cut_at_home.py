"""Cutting on a table at home: which way cloth lies, what needs no tapes, and what a hair of width does; house rules."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from furbelow.s6_write.guide.guide import GuideStep, Operation

from tests.demos.demos import NAMES, guide, spec, steps_of
from tests.small_guide import tools_in

FIRST = [(name, next(iter(spec(name).sizes))) for name in NAMES]


def _cut(name: str, size: str) -> Iterator[Operation]:
    yield from guide(name, size).cut


@pytest.mark.parametrize(("name", "size"), FIRST)
def test_lanes_lie_from_left_to_right_wherever_their_ends_are_named(name: str, size: str) -> None:
    """Upright lanes have no left end; those over the width of the cloth are turned with it."""
    for operation in _cut(name, size):
        for step in operation.steps:
            assert not (step.text.startswith("From lane") and "left end" in step.text)
            if step.text.startswith("Turn the ") and "quarter round" in step.text:
                tapes = operation.steps[step.number - 2].text
                assert "from the near edge of the table" in tapes


@pytest.mark.parametrize(("name", "size"), FIRST)
def test_as_many_tapes_are_drawn_as_are_laid(name: str, size: str) -> None:
    """A strip that a ruler cuts off has no tapes and no drawing of them."""
    for operation in _cut(name, size):
        laid = {step.number for step in operation.steps if re.match(r"Stick (a )?paper tape", step.text)}
        drawn = {number for each in operation.figures if each.key.startswith("tapes") for number in each.shows}
        assert drawn <= laid


def test_cloth_that_is_a_hair_too_narrow_is_still_enough_where_strips_are_made_up_of_segments() -> None:
    (operation,) = _cut("peony", "B")
    (told,) = [step for step in operation.steps if "of width is left" in step.check]
    assert told.remedy.startswith(
        "If it is up to 1 cm narrower, cut 3a·1, 3a·2 and 3a·3 as long as it is wide, and 3a·4 longer"
    )


def test_of_two_rectangles_alike_the_second_is_the_other() -> None:
    named = [step.text for step in steps_of(guide("peony", "B")) if "write its place on each gore" in step.text]
    assert [text.partition(" write")[0] for text in named] == ["On one rectangle", "On the other rectangle"]


@pytest.mark.parametrize(("name", "size"), FIRST)
def test_a_new_needle_is_tried_once_before_the_first_row(name: str, size: str) -> None:
    work: list[GuideStep] = [
        step for part in guide(name, size).parts for operation in part.operations for step in operation.steps
    ]
    trials = [at for at, step in enumerate(work) if step.text.startswith("Put in the new needle")]
    rows = [at for at, step in enumerate(work) if re.match(r"(Sew|Zigzag) ", step.text)]
    assert len(trials) == 1
    assert trials[0] < min(rows)


@pytest.mark.parametrize(("name", "size"), FIRST)
def test_what_curls_in_the_wash_is_pressed_through_a_cloth_that_is_on_the_list(name: str, size: str) -> None:
    written = guide(name, size)
    if any("through a cloth" in step.remedy for operation in written.cut for step in operation.steps):
        assert "two press cloths: clean, thin cotton" in tools_in(written)
        assert any("iron" in caution.text for operation in written.cut for caution in operation.cautions)
