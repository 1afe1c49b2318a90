"""What holds for every body, every choice and every spec."""

from __future__ import annotations

from fractions import Fraction as F
from random import Random
from typing import Any

from furbelow.garment.solved import Allowance, Solved
from furbelow.measure.formula import Formula, parse_formula
from furbelow.s2_solve.solve import prepare
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.by_hand import Work, garment, solve
from tests.by_hand import given as given_by

STEPS = [
    Work(
        "close",
        {"seam": "1 cm"},
        [Allowance(p, s, ("seam",)) for p in ("upper", "flounce", "band") for s in ("start", "end")],
    ),
    Work(
        "hem",
        {"first turn": "5 mm", "second turn": "1 in / 3"},
        [Allowance("flounce", "bottom", ("first turn", "second turn"))],
    ),
    Work(
        "attach",
        {"seam": "upper.length / 300"},
        [Allowance("flounce", "top", ("seam",)), Allowance("upper", "bottom", ("seam",))],
    ),
    Work(
        "casing",
        {"seam": "1 cm"},
        [
            Allowance("upper", "top", ("seam",)),
            Allowance("band", "top", ("seam",), doubles=True),
            Allowance("band", "bottom", ("seam",)),
        ],
    ),
]
BODY = {"waist_girth": (None, None), "hip_girth": (None, None), "waist_height": (None, None)}
CHOICES = {"fullness": {"default": "2"}, "skirt_length": {"default": "waist_height * 60%"}}
PIECES = {
    "upper": {"length": "round_up(max(hip_girth, waist_girth) * 3/2, 1 cm)", "cut depth": "skirt_length / 3"},
    "flounce": {"length": "upper.length * fullness", "depth": "skirt_length - upper.depth - band.depth"},
    "band": {"length": "max(hip_girth, waist_girth) + 5 cm", "depth": "1 in"},
}

girths = st.fractions(min_value=500, max_value=1600, max_denominator=64)
bodies = st.fixed_dictionaries(
    {"waist_girth": girths, "hip_girth": girths, "waist_height": st.fractions(800, 1250, max_denominator=10)}
)
fullnesses = st.fractions(min_value=1, max_value=4, max_denominator=12)
# A slow machine is no fault of the solver.
unhurried = settings(max_examples=40, deadline=None)
roundings = st.sampled_from(["0 mm", "1 mm", "5 mm", "1 cm", "1/8 in", "1/4 in"])


def skirt(pieces: dict[str, Any], rounding: str, **parts: Any) -> Any:
    return garment(body=BODY, choices=CHOICES, pieces=pieces, steps=STEPS, rounding=rounding, **parts)


def solved(pieces: dict[str, Any], rounding: str, body: dict[str, F], fullness: F) -> Solved:
    spec, takes = skirt(pieces, rounding)
    measured = given_by({name: f"({value}) * 1 mm" for name, value in body.items()})
    result = solve(spec, takes, "Bo", measured, given_by({"fullness": str(fullness)}))
    assert result.faults == ()
    assert result.value
    return result.value


@unhurried
@given(bodies, fullnesses, roundings)
def test_a_cut_size_is_the_finished_one_with_what_the_steps_take(
    body: dict[str, F], fullness: F, rounding: str
) -> None:
    garment = solved(PIECES, rounding, body, fullness)
    for name, piece in garment.pieces.items():
        taken = {
            side: garment.length(f"{name}.{side}_takes") if f"{name}.{side}_takes" in garment.values else F(0)
            for side in ("top", "bottom", "start", "end")
        }
        assert piece.cut_length == piece.length + taken["start"] + taken["end"]
        assert piece.cut_depth == piece.depth * (2 if name == "band" else 1) + taken["top"] + taken["bottom"]
        assert piece.cut_length >= piece.length > 0
        assert piece.cut_depth >= piece.depth > 0


@unhurried
@given(bodies, fullnesses, roundings)
def test_cut_sizes_lie_on_the_step_and_less_than_one_step_above_what_is_needed(
    body: dict[str, F], fullness: F, rounding: str
) -> None:
    garment = solved(PIECES, rounding, body, fullness)
    step, flounce = garment.rounding, garment.pieces["flounce"]
    exact = garment.pieces["upper"].length * fullness + 20
    assert exact <= flounce.cut_length < exact + step or exact == flounce.cut_length
    for piece in garment.pieces.values():
        if step:
            assert (piece.cut_length / step).denominator == (piece.cut_depth / step).denominator == 1


@unhurried
@given(bodies, fullnesses, roundings)
def test_from_finished_to_cut_and_back_is_the_same_size(body: dict[str, F], fullness: F, rounding: str) -> None:
    first = solved(PIECES, rounding, body, fullness)
    by_cut = {
        name: {"cut length": f"{p.cut_length} * 1 mm", "cut depth": f"{p.cut_depth} * 1 mm"}
        for name, p in first.pieces.items()
    }
    by_finished = {
        name: {"length": f"{p.length} * 1 mm", "depth": f"{p.depth} * 1 mm"} for name, p in first.pieces.items()
    }
    by_both = {name: by_cut[name] | by_finished[name] for name in by_cut}
    for pieces in (by_cut, by_finished, by_both):
        again = solved(pieces, rounding, body, fullness)
        for name, piece in first.pieces.items():
            other = again.pieces[name]
            assert (other.length, other.cut_length) == (piece.length, piece.cut_length)
            assert (other.depth, other.cut_depth) == (piece.depth, piece.cut_depth)


@unhurried
@given(bodies, fullnesses, roundings, st.randoms(use_true_random=False))
def test_the_order_of_the_keys_does_not_matter(body: dict[str, F], fullness: F, rounding: str, random: Random) -> None:
    names = list(PIECES)
    random.shuffle(names)
    first = solved(PIECES, rounding, body, fullness)
    other = solved({name: PIECES[name] for name in names}, rounding, body, fullness)
    assert {name: derivation.value for name, derivation in first.values.items()} == {
        name: derivation.value for name, derivation in other.values.items()
    }


@unhurried
@given(bodies, fullnesses, roundings)
def test_solving_twice_gives_equal_garments(body: dict[str, F], fullness: F, rounding: str) -> None:
    spec, takes = skirt(PIECES, rounding)
    measured = given_by({name: f"({value}) * 1 mm" for name, value in body.items()})
    choices = given_by({"fullness": str(fullness)})
    system = prepare(spec, takes)
    first = system.solve("Bo", measured, choices)
    system.solve("Cass", given_by(dict.fromkeys(BODY, "1 m")), {})
    assert system.solve("Bo", measured, choices) == first == solve(spec, takes, "Bo", measured, choices)


# Formulas that a maker might write, sense or none.
_WORDS = [
    "2",
    "1/3",
    "0",
    "10 cm",
    "1/2 in",
    "3 g",
    "5 EUR/m",
    "50%",
    "pi",
    "hip_girth",
    "fullness",
    "reach",
    "nobody",
    "band.length",
    "band.cut_depth",
    "cape.depth",
    "cape.cut_length",
    "cape.count",
    "lawn.width",
    "lawn.fluff",
    "worn.over",
    "max(reach, 1 m)",
    "ceil(fullness)",
    "round_up(cape.depth, 1 cm)",
    "(1 m - band.depth)",
]
formulas = st.builds(
    lambda first, rest: first + "".join(sign + word for sign, word in rest),
    st.sampled_from(_WORDS),
    st.lists(st.tuples(st.sampled_from([" + ", " - ", " * ", " / "]), st.sampled_from(_WORDS)), max_size=3),
).filter(lambda text: isinstance(parse_formula(text), Formula))
maybe = st.none() | formulas


@settings(max_examples=150, deadline=None)
@given(
    lines=st.fixed_dictionaries({"a": formulas, "b": formulas, "c": formulas, "d": maybe, "e": maybe, "f": maybe}),
    rule=st.builds("{} >= {}".format, formulas, formulas).filter(
        lambda text: isinstance(parse_formula(text, check=True), Formula)
    ),
)
def test_any_spec_is_solved_or_told_why_not_at_places_inside_it(lines: dict[str, str | None], rule: str) -> None:
    spec, takes = garment(
        body={"hip_girth": ("75 cm", lines["a"])},
        choices={"fullness": {"default": "2", "to": lines["b"] or "3"}},
        measures={"reach": lines["c"] or "1 m"},
        materials={"lawn": {"width": "140 cm"}},
        pieces={
            "band": {"length": "1 m", "depth": lines["d"], "cut depth": lines["e"]},
            "cape": {"cut length": lines["f"], "depth": lines["c"], "count": lines["a"]},
        },
        steps=[Work("hem", {"turn": lines["b"] or "1 cm"}, [Allowance("band", "top", ("turn",))])],
        rules={rule: "not so"},
        rounding="5 mm",
    )
    result = solve(spec, takes, "Bo", given_by({"hip_girth": "1 m"}, file=spec.file), {})
    assert result.value or result.faults
    longest = max(len(line) for line in spec.source.splitlines())
    for fault in result.faults:
        for label in (fault.primary, *fault.others):
            assert label
            assert 1 <= label.span.start_line <= label.span.end_line <= len(spec.source.splitlines())
            assert 1 <= label.span.start_column <= label.span.end_column <= longest + 1
