"""Edges and faces: a pattern for every state, hatching that stays inside the cloth."""

from __future__ import annotations

from fractions import Fraction
from math import cos, pi, sin
from typing import get_args

import pytest
from furbelow.garment.bench import Edge, Ply, State
from furbelow.s6_write.figures.edges import edge, hatching
from furbelow.s6_write.figures.language import Pattern, look_of, pattern_of
from furbelow.s6_write.figures.pen import Point, Sheet
from hypothesis import given
from hypothesis import strategies as st

PATTERNS: tuple[Pattern, ...] = get_args(Pattern)


def _edge(state: State, **rest: object) -> Edge:
    return Edge("flounce.top", (Ply("flounce"),), 1, Fraction(6000), Fraction(6000), state, **rest)  # type: ignore[arg-type]


def test_every_state_has_a_pattern_of_its_own() -> None:
    patterns = [pattern_of(_edge(state)) for state in State]
    patterns.append(pattern_of(_edge(State.HEMMED, trim="lace")))
    gathered = Edge(
        "flounce.top", (Ply("flounce"),), 1, Fraction(6000), Fraction(3000), State.RAW, gathered="two rows by machine"
    )
    patterns.append(pattern_of(gathered))
    assert len(set(patterns)) == len(patterns)
    assert {*patterns, "fold"} == set(PATTERNS)
    assert look_of(gathered).word == "gathered"


def test_no_two_patterns_draw_alike_without_colour() -> None:
    drawings = {}
    for name in PATTERNS:
        sheet = Sheet()
        edge(sheet, (10, 10), (210, 10), name, (0, 1))
        drawings[name] = sheet.svg()
    assert len(set(drawings.values())) == len(PATTERNS)


def _round(corners: int, radius: float) -> list[Point]:
    return [
        (200 + radius * cos(2 * pi * i / corners), 200 + radius * sin(2 * pi * i / corners)) for i in range(corners)
    ]


@given(st.integers(3, 12), st.floats(20, 150))
def test_hatching_stays_inside_and_slants_one_way(corners: int, radius: float) -> None:
    for (x0, y0), (x1, y1) in hatching(tuple(_round(corners, radius))):
        assert x0 + y0 == pytest.approx(x1 + y1)
        for x, y in ((x0, y0), (x1, y1), ((x0 + x1) / 2, (y0 + y1) / 2)):
            assert (x - 200) ** 2 + (y - 200) ** 2 <= (radius + 1e-6) ** 2


def test_hatching_fills_a_square_evenly() -> None:
    strokes = hatching(((0, 0), (70, 0), (70, 70), (0, 70)), gap=7)
    # Slants from 7 to 133: the corners themselves are left out.
    assert len(strokes) == 19
