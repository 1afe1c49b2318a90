"""A long cutting in parts: nothing is lost or doubled, nothing changes its place, and no part is long."""

from __future__ import annotations

from fractions import Fraction
from typing import cast

from furbelow.garment.solved import SolvedMaterial
from furbelow.s4_cut.cut import Cutting, Sheet
from furbelow.s4_cut.parts import in_parts
from furbelow.s4_cut.plan import CuttingPlan, How, Lane, Section, Segment
from furbelow.s4_cut.problem import Bolt, Strip
from hypothesis import given
from hypothesis import strategies as st

NONE = Fraction(0)
# For each cloth, for each section, the pieces that are cut from it.
_CLOTHS = st.lists(st.lists(st.lists(st.integers(0, 8), min_size=1, max_size=6), min_size=1, max_size=30), max_size=3)


def section(pieces: list[int], at: int) -> Section:
    segments = tuple(Segment(f"1 piece{n}", "1", copy, 1, 1, Fraction(1), NONE) for copy, n in enumerate(pieces, 1))
    return Section(Fraction(10 * at), Fraction(10), (Lane(NONE, Fraction(5), "flat", segments),))


def cutting(cloths: list[list[list[int]]]) -> Cutting:
    sheets = {}
    for number, cloth in enumerate(cloths):
        sections = tuple(section(pieces, at) for at, pieces in enumerate(cloth))
        laid = Fraction(10 * len(sections))
        plan = CuttingPlan(
            sections, Fraction(1000), False, laid, laid * 2, 0, 0, NONE, NONE, proven=True, how=How.PROVEN
        )
        names = dict.fromkeys(piece.strip for each in sections for piece in each.pieces)
        strips = tuple(Strip(name, Fraction(1), Fraction(5), wearer="1") for name in names)
        bolt = Bolt(Fraction(1000), shrinkage=Fraction(1, 2))
        sheets[f"cloth{number}"] = (Sheet(cast(SolvedMaterial, None), NONE, None, strips, bolt, plan),)
    return Cutting(sheets, {})


def sections(whole: Cutting) -> list[tuple[str, Section]]:
    return [(cloth, each) for cloth in whole.sheets for each in whole.sheet(cloth).plan.sections]


@given(_CLOTHS, st.integers(6, 40))
def test_the_parts_one_after_another_are_the_cutting(cloths: list[list[list[int]]], most: int) -> None:
    whole = cutting(cloths)
    parts = in_parts(whole, most)
    assert [each for part in parts for each in sections(part)] == sections(whole)
    assert all(sections(part) for part in parts)
    for part in parts:
        held = [piece.strip for _, each in sections(part) for piece in each.pieces]
        # Half of what did not fit before, and the section that did not fit.
        assert len(held) <= max(most, most // 2 + 6)
        for sheet in (part.sheet(cloth) for cloth in part.sheets):
            assert sum(each.length for each in sheet.plan.sections) == sheet.plan.laid_length
            # Half of the bolt is lost in the wash.
            assert sheet.plan.bolt_length == 2 * sheet.plan.laid_length
            assert {each.name for each in sheet.strips} == {p.strip for s in sheet.plan.sections for p in s.pieces}


def test_a_part_ends_where_all_copies_of_its_pieces_are_cut() -> None:
    pieces = [[0, 0], [0, 0], [0, 1], [1, 1], [2, 2], [2, 3], [3, 3]]
    parts = in_parts(cutting([pieces]), 9)
    assert [len(sections(part)) for part in parts] == [4, 3]


def test_a_short_cutting_is_one_part_and_none_has_none() -> None:
    whole = cutting([[[0, 1]], [[2]]])
    assert in_parts(whole) == (whole,)
    assert in_parts(whole._replace(sheets={})) == ()
