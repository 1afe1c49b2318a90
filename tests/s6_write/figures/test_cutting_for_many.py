"""A plan for many wearers: long sections, narrow lanes, many names; none may be lost or lie on another."""

from __future__ import annotations

import re
from functools import cache
from itertools import combinations

import pytest
from furbelow.garment.message import Own
from furbelow.garment.tags import tag
from furbelow.s4_cut.marks import table_marks
from furbelow.s4_cut.plain_plan import plain_plan
from furbelow.s4_cut.plan import CuttingPlan
from furbelow.s4_cut.problem import Bolt, Strip
from furbelow.s6_write.figures.cutting import plan_figures
from furbelow.s6_write.figures.table_marks import table_marks_figures
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.words import Words

from tests.s4_cut.cases import PRICES, class_of_thirty, cm

from .drawn import demos, planned, sizes, view, words

THIRTY = tuple(
    strip._replace(name=f"{(strip.wearer or '').split()[-1]} {strip.name}", piecing=strip.name != "tier 1")
    for strip in class_of_thirty()
)
MARKS = {strip.name: f"{strip.name.split()[0]}-{strip.name[-1]}" for strip in THIRTY}
# Sections as long as the table of a hall, sections as short as one at home; shallow bands that lie many to a lane.
LONG = Bolt(cm(150), cm(1), longest_section=cm(2400))
SHORT = Bolt(cm(150), cm(1), longest_section=cm(260))
FOLDED = Bolt(cm(150), cm(1), folded=True, longest_section=cm(800))
BANDS = tuple(Strip(f"{n} band", cm(60 + n), cm(4), 2, wearer=str(n)) for n in range(1, 31))


@cache
def drawn(which: str) -> tuple[CuttingPlan, tuple[Figure, ...]]:
    strips, bolt = {
        "long": (THIRTY, LONG),
        "short": (THIRTY, SHORT),
        "folded": (THIRTY, FOLDED),
        "bands": (BANDS, LONG),
    }[which]
    marks = MARKS | {strip.name: f"{strip.wearer}-4" for strip in BANDS}
    plan = plain_plan(strips, bolt, PRICES)
    demo = demos()[0]
    say = planned(demo, sizes(demo)[0]).rehearsal.run.say
    words, cloth = Words("en", say), Own("lawn")
    sections = plan_figures(plan, marks, words, cloth, "cut", True)
    return plan, (*sections.values(), *table_marks_figures(plan, words, cloth, "tapes").values())


PLANS = pytest.mark.parametrize("which", ["long", "short", "folded", "bands"])


@PLANS
def test_every_segment_of_every_section_has_its_whole_name(which: str) -> None:
    plan, figures = drawn(which)
    marks = MARKS | {strip.name: f"{strip.wearer}-4" for strip in BANDS}
    said: dict[int, str] = {}
    for figure in figures:
        number = 0
        for line in words(figure):
            if re.fullmatch(r"Section \d+", line.text) and figure.key.startswith("cut"):
                number = int(line.text.split()[1])
            said[number] = said.get(number, "") + f" {line.text} "
    for number, section in enumerate(plan.sections, 1):
        for piece in section.pieces:
            name = tag(marks[piece.strip], piece.copy, piece.part if piece.parts > 1 else 0)
            assert re.search(rf"\W{name}(?![\w·])", said[number]), (number, name)


@PLANS
def test_nothing_is_cut_short(which: str) -> None:
    for figure in drawn(which)[1]:
        assert not any("…" in line.text for line in words(figure)), figure.key


@PLANS
def test_words_keep_clear_of_each_other_and_on_the_sheet(which: str) -> None:
    for figure in drawn(which)[1]:
        left, top, right, bottom = view(figure)
        for line in words(figure):
            assert left <= line.left < line.right <= right, line
            assert top <= line.top < line.bottom <= bottom, line
        for one, other in combinations(words(figure), 2):
            assert not one.meets(other), (figure.key, one.text, other.text)


@PLANS
def test_keys_of_figures_are_unique(which: str) -> None:
    keys = [figure.key for figure in drawn(which)[1]]
    assert len(keys) == len(set(keys))


def test_tapes_of_many_sections_are_told_in_several_figures() -> None:
    plan, figures = drawn("short")
    tapes = [figure for figure in figures if figure.key.startswith("tapes")]
    assert len(tapes) > 1
    texts = {line.text for figure in tapes for line in words(figure)}
    demo = demos()[0]
    say = planned(demo, sizes(demo)[0]).rehearsal.run.say
    assert {say.length(mark.distance) for section in plan.sections for mark in table_marks(section)} <= texts
