from __future__ import annotations

from compiler.s4_cut.marks import moved_tapes, table_marks
from compiler.s4_cut.planner import plain_plan
from compiler.s4_cut.problem import Bolt, Strip
from tests.s4_cut.cases import PRICES, cm


def test_marks_are_measured_from_the_fold_and_add_up() -> None:
    strips = (Strip("flounce", cm(300), cm(50)), Strip("yoke", cm(300), cm(40), count=2))
    plan = plain_plan(strips, Bolt(cm(140), folded=True), PRICES)
    marks = table_marks(plan.sections[0])
    # Half of the lane on the fold, then the pair: common practice, a half lane at the fold opens to a full one.
    assert [(mark.distance, mark.depth, mark.on_fold, len(mark.lanes)) for mark in marks] == [
        (cm(25), cm(25), True, 1),
        (cm(65), cm(40), False, 2),
    ]


def test_longest_sections_come_first_and_equal_lanes_keep_their_tapes() -> None:
    strips = (
        Strip("long", cm(400), cm(30), count=2),
        Strip("wide", cm(400), cm(75)),
        Strip("short", cm(200), cm(30), count=1),
        Strip("shallow", cm(200), cm(90)),
    )
    plan = plain_plan(strips, Bolt(cm(140)), PRICES)
    assert [section.length for section in plan.sections] == [cm(400), cm(200)]
    # 75, 105, 135; then 30 can't be met with 90 beside it unless the order is kept: one tape of two moves at most.
    assert moved_tapes(plan)[0] == 3
