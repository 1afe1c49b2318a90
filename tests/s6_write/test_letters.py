"""An operation bears one letter in every size of a spec, and the letters run on where nothing is left out."""

from __future__ import annotations

import pytest
from furbelow.garment.tags import copy_called, copy_letter, tag
from furbelow.s6_write.guide.letters import letter_of_copy, letters_of, skips

from tests.demos.demos import NAMES, guide, spec


@pytest.mark.parametrize("name", NAMES)
def test_the_same_work_has_the_same_letter_in_every_size(name: str) -> None:
    found: dict[str, set[str]] = {}
    for size in spec(name).sizes:
        for operation in guide(name, size).operations:
            found.setdefault(operation.key, set()).add(operation.letter)
    assert len(found) > 10
    assert {key: letters for key, letters in found.items() if len(letters) > 1} == {}


@pytest.mark.parametrize("name", NAMES)
def test_no_letter_stands_twice_and_sentences_count_from_one(name: str) -> None:
    for size in spec(name).sizes:
        operations = guide(name, size).operations
        letters = [operation.letter for operation in operations]
        assert len(letters) == len(set(letters))
        assert letters[0] == "A"
        for operation in operations:
            assert [step.number for step in operation.steps] == list(range(1, len(operation.steps) + 1))


def test_a_step_without_work_leaves_its_letter_out() -> None:
    """The waistband of larkspur M is cut whole, so nothing of it is joined, and the work behind that keeps its letter."""
    told = {operation.key: operation.letter for operation in guide("larkspur", "M").operations}
    assert "step-16" not in told
    assert (told["step-15"], told["step-17"]) == ("S", "U")


def test_i_and_o_are_no_letters_and_after_the_last_they_double() -> None:
    cut, worked, last = letters_of(("net",), range(30))
    told = [*cut.values(), *worked.values(), last]
    assert told[:10] == ["A", "B", "C", "D", "E", "F", "G", "H", "J", "K"]
    assert not set("IOX") & set("".join(told))
    assert told[22:25] == ["Z", "AA", "AB"]


def test_a_copy_has_a_small_letter_more() -> None:
    assert [letter_of_copy("F", copy) for copy in (1, 2, 9)] == ["Fa", "Fb", "Fj"]


def test_the_first_letter_that_is_left_out_is_told_once_before_the_work_behind_it() -> None:
    told = {operation.letter: operation.skipped for operation in guide("larkspur", "M").operations if operation.skipped}
    assert list(told) == ["U"]
    assert told["U"].startswith("No T? ")
    assert skips("ABCD", "ACD") == (("B",), "C")
    assert skips("ABCD", "ABCD") is None


@pytest.mark.parametrize("name", NAMES)
def test_no_tag_reads_as_the_letter_of_work_or_as_a_sentence(name: str) -> None:
    for size in spec(name).sizes:
        told = guide(name, size)
        marks = {line.mark for line in told.cutting}
        places = {operation.place(step) for operation in told.operations for step in operation.steps}
        tags = {tag(mark, copy) for mark in marks for copy in range(1, 40)}
        assert not (marks | tags) & (places | {operation.letter for operation in told.operations})


def test_a_copy_is_found_again_by_the_letter_on_its_tag() -> None:
    assert [tag("2", copy) for copy in (1, 2, 9, 11, 12)] == ["2a", "2b", "2j", "2m", "2aa"]
    assert tag("2", 1, 3) == "2a·3"
    assert [copy_called(copy_letter(copy)) for copy in range(1, 300)] == list(range(1, 300))
    assert [copy_called(said) for said in ("", "A", "l", "p", "3")] == [None] * 5
