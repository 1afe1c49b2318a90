"""Texts of several sizes are one, and come apart again as they were: on texts that nobody wrote."""

from __future__ import annotations

from furbelow.s6_write.booklet.aligned import aligned
from furbelow.s6_write.booklet.texts import Letters, letters_in, said_for, versions_of
from furbelow.s6_write.words.holes import bare, hole
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

_WORDS = st.sampled_from(["Sew ", "pins", " round", ". ", "é", "a", ""])
_NUMBERS = st.builds(hole, st.sampled_from("ln"), st.sampled_from(["1 cm", "2 cm", "3", "12 1/2 in"]))
_TEXTS = st.lists(st.one_of(_WORDS, _NUMBERS), max_size=6).map("".join)


@settings(suppress_health_check=[HealthCheck.too_slow], deadline=None)
@given(st.lists(st.lists(_TEXTS, min_size=3, max_size=3), min_size=1, max_size=5))
def test_each_size_reads_what_it_read_alone(operation: list[list[str]]) -> None:
    letters = Letters(3)
    letters.begin()
    told = [letters.told(dict(enumerate(sentence))) for sentence in operation]
    for text, sentence in zip(told, operation, strict=True):
        for size, alone in enumerate(sentence):
            assert said_for(text, size, letters.numbers) == bare(alone)


def test_the_same_number_for_every_size_has_no_letter() -> None:
    letters = Letters(2)
    text = letters.told({0: f"Sew {hole('l', '1 cm')}", 1: f"Sew {hole('l', '1 cm')}"})
    assert (text, letters.numbers) == ("Sew 1 cm", [])


def test_numbers_that_differ_alike_have_one_letter_and_of_another_kind_two() -> None:
    letters = Letters(2)
    letters.begin()
    one, other = ({0: hole(kind, "4"), 1: hole(kind, "5")} for kind in "ln")
    assert letters_in(letters.told(one)) == letters_in(letters.told(one))
    assert letters_in(letters.told(one)) != letters_in(letters.told(other))
    assert [number.letter for number in letters.numbers] == ["p", "q"]
    letters.begin()
    letters.told(one)
    assert letters.numbers[-1].letter == "p"


def test_after_z_comes_aa() -> None:
    letters = Letters(2)
    letters.begin()
    for number in range(28):
        letters.told({0: hole("n", str(number)), 1: hole("n", str(number + 1))})
    assert [number.letter for number in letters.numbers[7:11]] == ["y", "z", "pp", "pq"]


def test_texts_that_differ_in_words_have_a_version_for_each_group_of_sizes() -> None:
    text = Letters(3).told({0: "Sew one join", 1: "Sew the joins", 2: "Sew the joins"})
    assert versions_of(text) == (((0,), "Sew one join"), ((1, 2), "Sew the joins"))


@settings(suppress_health_check=[HealthCheck.too_slow], deadline=None)
@given(st.lists(st.lists(st.sampled_from("abcd"), max_size=6), min_size=1, max_size=4))
def test_what_is_aligned_keeps_the_order_of_every_size_and_pairs_only_what_is_alike(each: list[list[str]]) -> None:
    places = aligned(dict(enumerate(each)), lambda one, other: int(one == other))
    for size, sequence in enumerate(each):
        assert [place[size] for place in places if size in place] == sequence
    assert all(len(set(place.values())) == 1 for place in places)


def test_sequences_that_are_alike_take_no_more_places_than_one() -> None:
    assert len(aligned({0: "abc", 1: "abc", 2: "abc"}, lambda one, other: int(one == other))) == 3
    # The longest common subsequence of the two is "bd": 4 + 3 - 2.
    assert len(aligned({0: "abcd", 1: "bxd"}, lambda one, other: int(one == other))) == 5
