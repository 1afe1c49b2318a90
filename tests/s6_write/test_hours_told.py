"""The guide and the list for the shop tell one and the same time: that of the steps as they are printed, added up."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import guide_of, planned
from furbelow.s6_write.guide.guide import Guide
from furbelow.s6_write.pages.shopping_page import shopping_markdown
from furbelow.s6_write.words.words import Words

from tests.demos.demos import NAMES, order, spec
from tests.small_guide import small_guide
from tests.techniques.test_every_technique_in_a_guide import GARMENTS, OWN, SUPPLIES


def _minutes(told: str) -> int:
    found = re.fullmatch(r"(?:(\d+) h)? ?(?:(\d+) min)?", told)
    assert found is not None, told
    return 60 * int(found.group(1) or 0) + int(found.group(2) or 0)


def _told(guide: Guide) -> tuple[int, int]:
    """The whole time, and the times of cutting and of every step added up."""
    facts = {fact.label: fact.value for fact in guide.facts}
    steps = sum(_minutes(operation.minutes) for part in guide.parts for operation in part.operations)
    return _minutes(facts["time for all of it, about"]), steps + _minutes(facts["of which cutting"])


@pytest.mark.parametrize("name", NAMES)
def test_the_guide_and_the_list_tell_the_sum_of_the_printed_times(name: str) -> None:
    found = planned(order(name, next(iter(spec(name).sizes)))).value
    assert found is not None
    whole, steps = _told(guide_of(found, "size M"))
    assert whole == steps
    text = shopping_markdown(found.shopping, "title", "size M", Words("en", found.rehearsal.run.say))
    (said,) = re.findall(r"Work: about \*\*(.*)\*\*", text)
    assert _minutes(said) == whole


@pytest.mark.parametrize(
    "garment", [name for name, rows in GARMENTS.items() if OWN.split(":")[1].strip() not in rows[1]]
)
@pytest.mark.parametrize("neaten", ["zigzag", "pinking shears"])
def test_no_step_is_counted_that_is_not_told_and_none_told_takes_no_time(garment: str, neaten: str) -> None:
    guide = small_guide(*GARMENTS[garment], room=Workroom(neaten_with=neaten), materials=SUPPLIES)
    whole, steps = _told(guide)
    assert whole == steps
    assert all(operation.minutes for part in guide.parts for operation in part.operations)


def test_a_beginner_takes_so_many_times_as_long_and_the_guide_says_whose_time_it_is() -> None:
    def time(beginner: Fraction) -> tuple[int, str]:
        found = planned(order("larkspur", "M", Workroom(beginner=beginner))).value
        assert found is not None
        (fact,) = (fact for fact in guide_of(found, "size M").facts if fact.label.startswith("time"))
        return _minutes(fact.value), fact.reason

    practised, why = time(Fraction(1))
    assert why.startswith("at a practised hand's pace")
    slow, why = time(Fraction(2))
    assert why.startswith("at a beginner's pace, 2 times a practised hand's")
    # The last look takes 10 minutes for all; each printed time is rounded to 5 minutes by itself, some thirty of them.
    assert slow - 10 == pytest.approx(2 * (practised - 10), abs=100)
