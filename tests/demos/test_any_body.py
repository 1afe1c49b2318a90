"""Random bodies and choices within the ranges of the demos."""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Span
from furbelow.garment.spec import Written
from furbelow.garment.workroom import Workroom
from furbelow.measure.formula import parse_formula
from furbelow.measure.formula_parser import Formula
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.s4_cut.cut import cut
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.demos.demos import NAMES, spec

HERE = Span("test", 1, 1, 1, 1)


def _written(text: str) -> Written:
    formula = parse_formula(text)
    assert isinstance(formula, Formula)
    return Written(text, formula, HERE)


@st.composite
def _orders(draw: st.DrawFn) -> Order:
    name = draw(st.sampled_from(NAMES))
    waist = draw(st.integers(600, 1200))
    body = {
        "waist_girth": waist,
        "hip_girth": waist + draw(st.integers(-20, 280)),
        "waist_height": draw(st.integers(950, 1150)),
        "knee_height": draw(st.integers(400, 500)),
        "waist_to_knee": draw(st.integers(280, 480)),
    }
    garment = spec(name)
    measures = {key: _written(f"{body[key]} mm") for key in garment.body}
    low, high = (14, 25) if name != "foxglove" else (13, 25)
    fullness = draw(st.integers(low, high if name == "larkspur" else 20))
    choices = {"fullness": _written(f"{fullness}/10")} if "fullness" in garment.choices else {}
    return Order(garment, "someone", measures, choices, Workroom())


@settings(deadline=None, max_examples=60, suppress_health_check=[HealthCheck.too_slow])
@given(_orders())
def test_a_proved_garment_is_cut_from_enough_cloth_and_rehearses_the_same_twice(order: Order) -> None:
    first, second = prove(order), prove(order)
    assert first.faults == second.faults
    if first.value is None:
        return
    assert second.value is not None
    assert first.value.run.final == second.value.run.final
    solved = first.value.solved
    for piece in solved.pieces.values():
        shown = piece.length * piece.depth
        assert piece.cut_length * piece.cut_depth >= shown
        assert piece.cut_length % solved.rounding == 0
        assert piece.cut_depth % solved.rounding == 0
    cutting = cut(solved, order.room).value
    assert cutting is not None
    for cloth in cutting.sheets:
        plan = cutting.sheet(cloth).plan
        area = sum(
            (
                solved.pieces[strip.name].cut_length * solved.pieces[strip.name].cut_depth * strip.count
                for strip in cutting.sheet(cloth).strips
            ),
            Fraction(0),
        )
        assert plan.laid_length * plan.usable_width >= area
