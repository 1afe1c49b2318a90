"""An operation bears one letter in every size of a spec, and the letters run on where nothing is left out."""

from __future__ import annotations

import pytest
from furbelow.s6_write.guide.letters import letter_of_copy, letters_of

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
