"""The cutting of a class in parts: each pile is told to be whole once, and no part begins a cloth that was begun."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable

import pytest
from furbelow.s4_cut.parts import in_parts
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.pages.class_cutting import class_cutting
from furbelow.s6_write.pages.class_page import class_words
from furbelow.s6_write.words.messages import Messages
from furbelow.s6_write.words.ranges import ranges
from hypothesis import given
from hypothesis import strategies as st

from tests.s5_buy.test_class_order import the_class


def guides(most: int) -> list[Guide]:
    order = the_class()
    words, cut = class_words(order), in_parts(order.cutting, most)
    return [class_cutting(order, cut, part, "a class", (), words) for part in range(1, len(cut) + 1)]


def numbers(told: str) -> list[int]:
    """Those of a sentence, ranges written out."""
    runs = re.findall(r"(\d+)(?:–(\d+))?", told)
    return [number for first, last in runs for number in range(int(first), int(last or first) + 1)]


@pytest.mark.parametrize("most", [6, 10, 20])
def test_every_pile_is_whole_once_and_goes_on_in_each_part_before(most: int) -> None:
    parts = guides(most)
    whole: Counter[int] = Counter()
    assert len(parts) > 1
    for guide in parts:
        here = {int(line.mark.partition("-")[0]) for line in guide.cutting}
        told = guide.about.split("\n\n")
        now = [number for each in told if " whole." in each for number in numbers(each)]
        later = [number for each in told if "later part" in each for number in numbers(each)]
        assert sorted(now + later) == sorted(here)
        assert not here & set(whole)  # nothing comes to a pile that is whole
        whole.update(now)
    assert whole == Counter(list(the_class().garments))


def test_a_cutting_that_is_one_says_nothing_of_parts() -> None:
    (guide,) = guides(10_000)
    assert "part" not in guide.about.replace("apart", "")


def test_each_cloth_is_begun_once() -> None:
    begun: Counter[str] = Counter()
    on: Counter[str] = Counter()
    for guide in guides(20):
        for operation in guide.cut:
            said = " ".join(step.text for step in operation.steps)
            begun[operation.title] += said.count("Straighten the end")
            on[operation.title] += said.count("Go on with the")
            assert "Wash" not in said or "Straighten the end" in said
    assert set(begun.values()) == {1}
    assert sum(on.values()) > 0


def test_the_tapes_of_many_sections_are_named_whole() -> None:
    for guide in guides(10_000):
        for operation in guide.cut:
            for figure in operation.figures:
                assert "…" not in figure.svg


@given(st.lists(st.integers(1, 60)))
def test_ranges_are_the_same_numbers(given_numbers: Iterable[int]) -> None:
    expected = sorted(set(given_numbers))
    said = Messages("en").said(ranges(expected)) if expected else ""
    assert numbers(said) == expected
    assert len(re.findall(r"\d+", said)) <= 2 * len(expected)
