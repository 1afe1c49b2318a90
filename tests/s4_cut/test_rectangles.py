"""Rectangles on a bolt: sound plans, true bounds, the shortest length where it can be known."""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

import pytest
from furbelow.s4_cut.panels.rectangles import Packing, Place, TooWide, pack, rows
from furbelow.s4_cut.panels.rectangles_bound import least_length
from furbelow.s4_cut.panels.rectangles_proof import decide
from furbelow.s4_cut.panels.rectangles_skyline import floor, raised
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.s4_cut.overlap import faults_of

DATA = Path(__file__).parent.parent / "data"
Rects = list[tuple[int, int]]


def packed(rects: Sequence[tuple[int, int]], width: int, work: int = 3_000, turns: bool = False) -> Packing:
    """A packing that passed the independent check."""
    packing = pack(rects, width, work=work, turns=turns)
    assert isinstance(packing, Packing)
    assert faults_of(rects, width, packing.length, packing.places) == []
    assert packing.bound <= packing.length
    assert turns or not any(place.turned for place in packing.places)
    return packing


def shortest(rects: Rects, width: int, turns: bool) -> int:
    """The least length by trying every whole position of every rectangle, cell by cell."""
    length = max((min(r) if turns else r[1]) for r in rects)
    while not _fits(rects, width, length, turns, 0, 0):
        length += 1
    return length


def _fits(rects: Rects, width: int, length: int, turns: bool, placed: int, taken: int) -> bool:
    if placed == len(rects):
        return True
    return any(
        not taken & cells and _fits(rects, width, length, turns, placed + 1, taken | cells)
        for cells in _positions(rects[placed], width, length, turns)
    )


def _positions(rect: tuple[int, int], width: int, length: int, turns: bool) -> Iterator[int]:
    for w, h in {rect, rect[::-1]} if turns else {rect}:
        block = sum(((1 << w) - 1) << (row * width) for row in range(h))
        for y in range(length - h + 1):
            for x in range(width - w + 1):
                yield block << (y * width + x)


def instances(name: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = json.loads((DATA / name).read_text(encoding="utf-8"))["instances"]
    return found


def some(name: str, *chosen: str) -> list[object]:
    """The chosen instances of a set, or all."""
    return [
        pytest.param([tuple(r) for r in i["rects"]], i["width"], i["optimum"], id=i["name"])
        for i in instances(name)
        if not chosen or i["name"] in chosen
    ]


sides = st.integers(1, 4)
few = st.lists(st.tuples(sides, sides), min_size=1, max_size=5)
many = st.lists(st.tuples(st.integers(1, 40), st.integers(1, 60)), max_size=25)


# The independent check itself


def test_the_check_sees_an_overlap() -> None:
    assert faults_of([(2, 2), (2, 2)], 4, 2, [(0, 0, False), (1, 0, False)]) == ["rectangles 0 and 1 overlap"]


def test_the_check_sees_a_rectangle_over_the_edge_when_turned() -> None:
    assert faults_of([(1, 3)], 2, 1, [(0, 0, False)]) != []
    assert faults_of([(1, 3)], 2, 1, [(0, 0, True)]) == ["rectangle 0 at (0, 0, 3, 1) is not inside 2 x 1"]


def test_the_check_sees_a_missing_rectangle_and_a_wrong_length() -> None:
    assert faults_of([(1, 1)], 2, 1, []) == ["0 places for 1 rectangles"]
    assert faults_of([(1, 1)], 2, 3, [(0, 0, False)]) == ["the last one ends at 1, not at 3"]


# The skyline


def test_stretches_that_come_level_melt_together() -> None:
    xs, ys = floor(10, 20)
    xs, ys = raised(xs, ys, 1, 0, 4, 3)
    assert (xs, ys) == ((0, 0, 4, 10), (21, 3, 0, 21))
    xs, ys = raised(xs, ys, 2, 7, 10, 5)
    assert (xs, ys) == ((0, 0, 4, 7, 10), (21, 3, 0, 5, 21))
    assert raised(xs, ys, 2, 4, 7, 3) == ((0, 0, 7, 10), (21, 3, 5, 21))
    assert raised(xs, ys, 2, 4, 7, 5) == ((0, 0, 4, 10), (21, 3, 5, 21))
    assert raised(xs, ys, 2, 4, 6, 3) == ((0, 0, 6, 7, 10), (21, 3, 0, 5, 21))
    assert raised(xs, ys, 2, 6, 7, 5) == ((0, 0, 4, 6, 10), (21, 3, 0, 5, 21))


@given(st.lists(st.tuples(st.integers(0, 30), st.integers(1, 12), st.integers(1, 6), st.booleans()), max_size=20))
def test_a_skyline_agrees_with_a_plain_row_of_heights(moves: list[tuple[int, int, int, bool]]) -> None:
    xs, ys = floor(12, 1000)
    heights = [0] * 12
    for which, wide, high, at_end in moves:
        i = 1 + which % (len(ys) - 2)
        # Only dips are ever filled.
        if ys[i] > min(ys[i - 1], ys[i + 1]):
            i = ys.index(min(ys))
        wide = min(wide, xs[i + 1] - xs[i])
        a = xs[i + 1] - wide if at_end else xs[i]
        top = ys[i] + high
        heights[a : a + wide] = [top] * wide
        xs, ys = raised(xs, ys, i, a, a + wide, top)
        assert [ys[j] for j in range(1, len(ys) - 1) for _ in range(xs[j], xs[j + 1])] == heights
        assert all(a != b for a, b in zip(ys, ys[1:], strict=False))


# Small cases, known for certain


@settings(max_examples=60, deadline=None)
@given(few, st.integers(4, 6), st.booleans())
def test_few_rectangles_get_the_length_that_exhaustive_search_finds(rects: Rects, width: int, turns: bool) -> None:
    packing = packed(rects, width, turns=turns, work=200_000)
    assert packing.length == shortest(rects, width, turns)
    assert packing.proven


@settings(max_examples=60, deadline=None)
@given(few, st.integers(4, 6), st.booleans(), st.integers(3, 10))
def test_the_complete_search_says_yes_exactly_when_there_is_a_plan(
    rects: Rects, width: int, turns: bool, ceiling: int
) -> None:
    tall = max((min(r) if turns else r[1]) for r in rects)
    laid = decide(rects, width, ceiling, turns=turns, spend=lambda tried: True)
    assert (laid is not None) == (ceiling >= tall and _fits(rects, width, ceiling, turns, 0, 0))


@settings(max_examples=60, deadline=None)
@given(few, st.integers(4, 6), st.booleans())
def test_no_bound_is_above_the_shortest_length(rects: Rects, width: int, turns: bool) -> None:
    assert least_length(rects, width, turns) <= shortest(rects, width, turns)


# Any case


@settings(max_examples=60, deadline=None)
@given(many, st.integers(40, 90), st.booleans())
def test_every_packing_is_sound_and_not_below_the_area(rects: Rects, width: int, turns: bool) -> None:
    packing = packed(rects, width, turns=turns)
    assert packing.length * width >= sum(w * h for w, h in rects)
    assert packing.length <= max((y + rects[k][turned ^ 1] for k, _, y, turned in rows(rects, width, turns)), default=0)


@settings(max_examples=30, deadline=None)
@given(many, st.integers(40, 90), st.booleans())
def test_the_same_rectangles_get_the_same_places_twice(rects: Rects, width: int, turns: bool) -> None:
    assert pack(rects, width, work=2_000, turns=turns) == pack(rects, width, work=2_000, turns=turns)


@settings(max_examples=20, deadline=None)
@given(many, st.integers(40, 90))
def test_more_work_never_makes_it_longer(rects: Rects, width: int) -> None:
    assert packed(rects, width, work=6_000).length <= packed(rects, width, work=600).length


@settings(max_examples=30, deadline=None)
@given(many, st.integers(40, 90), st.integers(2, 10))
def test_millimetres_and_centimetres_give_the_same_plan(rects: Rects, width: int, unit: int) -> None:
    plain = packed(rects, width, work=1_000)
    fine = packed([(w * unit, h * unit) for w, h in rects], width * unit, work=1_000)
    assert fine.length == plain.length * unit
    assert fine.places == tuple(Place(x * unit, y * unit, t) for x, y, t in plain.places)


def test_no_rectangles_need_no_cloth() -> None:
    assert pack([], 10, work=10) == Packing(length=0, places=(), bound=0, tried=0)


def test_with_no_work_at_all_there_is_still_a_plan() -> None:
    assert packed([(3, 4), (5, 2), (6, 6), (2, 2)], 7, work=0).length == 12


def test_the_rectangles_wider_than_the_bolt_are_named() -> None:
    assert pack([(3, 9), (11, 2), (10, 2), (12, 12)], 10, work=10) == TooWide((1, 3))
    assert pack([(3, 9), (11, 2), (10, 2), (12, 12)], 10, work=10, turns=True) == TooWide((3,))


def test_a_rectangle_wider_than_the_bolt_is_turned_when_the_grain_is_free() -> None:
    assert packed([(11, 2)], 10, turns=True).places == (Place(0, 0, True),)


def test_a_size_of_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="above 0"):
        pack([(0, 3)], 10, work=10)


def test_the_work_is_kept_to_within_one_rank_of_the_beam() -> None:
    rects = [(3 + 7 * k % 11, 2 + 5 * k % 13) for k in range(60)]
    assert packed(rects, 40, work=5_000).tried < 10_000


# Published sets


ONE_OF_EACH_SIZE = ("C1_2", "C2_3", "C3_1", "C4_2", "C5_3", "C6_1", "C7_2")


@pytest.mark.parametrize(("rects", "width", "optimum"), some("hopper_turton_C.json", *ONE_OF_EACH_SIZE))
def test_a_sheet_cut_without_waste_is_found_again_to_within_a_few_percent(
    rects: Rects, width: int, optimum: int
) -> None:
    """Optima known for certain. Source: Hopper & Turton 2001, Eur. J. Oper. Res. 128:34-57."""
    assert optimum <= packed(rects, width, work=60_000).length <= optimum * 1.07


def test_the_smallest_sheets_cut_without_waste_are_solved_and_proven() -> None:
    """Source: as above, C1 to C2."""
    for instance in instances("hopper_turton_C.json")[:6]:
        packing = packed(instance["rects"], instance["width"], work=150_000)
        assert packing.proven
        assert packing.length == instance["optimum"]


@pytest.mark.parametrize(("rects", "width", "optimum"), some("ngcut.json"))
def test_small_published_cases_come_within_four_in_a_hundred(rects: Rects, width: int, optimum: int) -> None:
    """Optima of the strip-packing literature. Source: Beasley 1985, Oper. Res. 33:49-64."""
    packing = packed(rects, width, work=60_000)
    assert packing.bound <= optimum <= packing.length <= optimum * 1.04


def test_a_published_case_with_pieces_of_few_sizes_is_solved_and_proven() -> None:
    """Source: Christofides & Whitlock 1977, Oper. Res. 25:30-44, first instance."""
    instance = instances("cgcut.json")[0]
    packing = packed(instance["rects"], instance["width"], work=20_000)
    assert packing.proven
    assert packing.length == 23
