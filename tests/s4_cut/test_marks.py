from __future__ import annotations

from furbelow.s4_cut.marks import table_marks
from furbelow.s4_cut.offcuts import Offcut, offcuts
from furbelow.s4_cut.plain_plan import plain_plan
from furbelow.s4_cut.problem import Bolt, Strip

from tests.s4_cut.cases import PRICES, cm


def test_marks_are_measured_from_the_fold_and_add_up() -> None:
    strips = (Strip("flounce", cm(300), cm(50)), Strip("yoke", cm(300), cm(40), count=2))
    plan = plain_plan(strips, Bolt(cm(140), folded=True), PRICES)
    marks = table_marks(plan.sections[0])
    # Half of the lane on the fold, then the pair. Common practice, no source: a half lane at the fold opens to a
    # full one.
    assert [(mark.distance, mark.depth, mark.on_fold, len(mark.lanes)) for mark in marks] == [
        (cm(25), cm(25), True, 1),
        (cm(65), cm(40), False, 2),
    ]


def test_longest_sections_come_first_and_lanes_of_both_keep_their_tapes() -> None:
    strips = (
        Strip("long", cm(400), cm(30), count=2),
        Strip("wide", cm(400), cm(75)),
        Strip("short", cm(200), cm(75)),
        Strip("shallow", cm(200), cm(50)),
    )
    plan = plain_plan(strips, Bolt(cm(140)), PRICES)
    assert [section.length for section in plan.sections] == [cm(400), cm(200)]
    assert [mark.distance for mark in table_marks(plan.sections[0])] == [cm(75), cm(105), cm(135)]
    assert [mark.distance for mark in table_marks(plan.sections[1])] == [cm(75), cm(125)]


def test_offcuts_worth_keeping_are_listed_with_their_sizes() -> None:
    strips = (Strip("long", cm(400), cm(60)), Strip("short", cm(150), cm(50)))
    plan = plain_plan(strips, Bolt(cm(140)), PRICES)
    # The end of the short lane and the width beside both; 30 cm wide is asked for, so the second goes if 40 is.
    assert offcuts(plan, cm(100), cm(30)) == (
        Offcut(1, cm(250), cm(50)),
        Offcut(1, cm(400), cm(30)),
    )
    assert offcuts(plan, cm(100), cm(40)) == (Offcut(1, cm(250), cm(50)),)
