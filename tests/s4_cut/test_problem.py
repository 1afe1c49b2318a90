from __future__ import annotations

from fractions import Fraction

import pytest
from furbelow.s4_cut.planner import plan_cutting
from furbelow.s4_cut.problem import Bolt, Misfit, Strip, misfits, ways_to_lay

from tests.s4_cut.cases import PRICES, cm


def test_a_panel_wider_than_the_cloth_is_named_with_its_size_and_the_room() -> None:
    strips = (Strip("panel", cm(80), cm(150)), Strip("band", cm(80), cm(8)))
    assert misfits(strips, Bolt(cm(140))) == (Misfit("panel", None, "width", cm(150), cm(140)),)
    with pytest.raises(ValueError, match="panel does not fit"):
        plan_cutting(strips, Bolt(cm(140)), PRICES)


def test_a_panel_that_may_be_turned_is_no_misfit() -> None:
    assert ways_to_lay(Strip("panel", cm(80), cm(150), grain="free"), Bolt(cm(140))) == ("across", "turned")


def test_a_strip_longer_than_the_table_is_pieced_as_far_as_its_joins_allow() -> None:
    strip = Strip("flounce", cm(600), cm(20), 1, True, Fraction(10), cm(30), 2)
    assert misfits((strip,), Bolt(cm(140), longest_section=cm(202))) == ()
    assert misfits((strip,), Bolt(cm(140), longest_section=cm(200))) == (
        Misfit("flounce", None, "joins", cm(600), cm(200)),
    )


def test_a_whole_strip_longer_than_the_table_is_named() -> None:
    found = misfits((Strip("panel", cm(300), cm(20)),), Bolt(cm(140), longest_section=cm(200)))
    assert found == (Misfit("panel", None, "section", cm(300), cm(200)),)
