"""What is wrong with a spec before any number is known: names, circles, things fixed twice or not at all."""

from typing import Any

import pytest
from furbelow.diagnose.fault import Fault
from furbelow.garment.solved import Allowance
from furbelow.garment.spec import Spec
from furbelow.s2_solve.solve import prepare

from tests.by_hand import Work, garment, given, pointed_at, solve


def faults_of(**parts: Any) -> tuple[Spec, tuple[Fault, ...]]:
    spec, takes = garment(**parts)
    body = given(dict.fromkeys(spec.body, "1 m"))
    return spec, solve(spec, takes, "size M", body, {}).faults


def only(**parts: Any) -> tuple[Spec, Fault]:
    spec, faults = faults_of(**parts)
    assert len(faults) == 1, faults
    return spec, faults[0]


def test_an_unknown_name_is_told_at_its_own_place_with_the_nearest() -> None:
    pieces = {"upper": {"length": "3 m", "depth": "10 cm"}, "flounce": {"length": "2 * uper.length", "depth": "1 m"}}
    spec, fault = only(pieces=pieces)
    assert (fault.code, fault.headline) == ("FB203", "nothing is named `uper.length`")
    assert pointed_at(spec, fault) == ["uper.length"]
    assert fault.help == "did you mean `upper.length`?"


def test_every_unknown_name_of_a_formula_is_told() -> None:
    spec, faults = faults_of(measures={"reach": "hip + thigh * 2"})
    assert [pointed_at(spec, fault) for fault in faults] == [["hip"], ["thigh"]]


@pytest.mark.parametrize(
    ("formula", "headline", "help_"),
    [
        ("band.width", "`band` has no `width`", "a piece has `length`, `depth`, `cut_length`, `cut_depth`, `count`"),
        ("lawn.reel", "`lawn` has no `reel`", "write `reel:` under the material `lawn`"),
        ("band", "`band` is a piece, not a measure", "name one of its sizes, such as `band.length`"),
        ("lawn", "`lawn` is a material, not a measure", "name one of its amounts, such as `lawn.width`"),
        (
            "tightness",
            "nothing is named `tightness`",
            "add `tightness` to the measures, or use a name that the spec has",
        ),
    ],
)
def test_what_a_name_lacks_is_said(formula: str, headline: str, help_: str) -> None:
    _, fault = only(
        measures={"reach": formula},
        pieces={"band": {"length": "1 m", "depth": "3 cm"}},
        materials={"lawn": {"width": "140 cm"}},
    )
    assert (fault.headline, fault.help) == (headline, help_)


def test_pi_is_no_unknown_name() -> None:
    _, faults = faults_of(measures={"round": "2 * pi * 10 cm"})
    assert faults == ()


def test_a_size_fixed_by_nothing_is_told_once_and_what_stands_on_it_is_not() -> None:
    pieces = {"upper": {"length": "3 m"}, "flounce": {"length": "2 m", "depth": "upper.depth * 2"}}
    spec, fault = only(pieces=pieces, rules={"flounce.depth > 10 cm": "too short"})
    assert (fault.code, fault.headline) == ("FB205", "nothing fixes the depth of `upper`")
    assert pointed_at(spec, fault) == ["upper"]


def test_a_name_fixed_twice_is_told_with_every_line() -> None:
    spec, fault = only(measures={"fullness": "2"}, choices={"fullness": {"default": "3"}})
    assert (fault.code, fault.headline) == ("FB204", "`fullness` is fixed twice")
    assert pointed_at(spec, fault) == ["3", "2"]


def test_a_value_worked_out_from_itself_is_a_circle() -> None:
    spec, fault = only(measures={"reach": "reach * 2"})
    assert (fault.code, fault.headline) == ("FB206", "`reach` is worked out from itself, in a circle")
    assert fault.notes == ("`reach` -> `reach`",)
    assert fault.help == "give `reach` a quantity of its own"
    assert pointed_at(spec, fault) == ["reach * 2"]


def test_a_circle_is_told_once_with_every_line_that_takes_part() -> None:
    pieces = {
        "top": {"length": "1 m", "depth": "60 cm - lower.depth - middle.depth"},
        "middle": {"length": "1 m", "depth": "top.depth"},
        "lower": {"length": "1 m", "depth": "60 cm - top.depth"},
    }
    spec, fault = only(pieces=pieces)
    assert fault.code == "FB206"
    assert fault.headline == "`top.depth` is worked out from `middle.depth` and `lower.depth`, in a circle"
    assert pointed_at(spec, fault) == ["60 cm - lower.depth - middle.depth", "top.depth", "60 cm - top.depth"]
    assert fault.notes == ("`top.depth` -> `lower.depth` -> `top.depth`",)
    assert fault.help == "give `top.depth` a quantity of its own"


def test_two_circles_are_told_apart() -> None:
    _, faults = faults_of(measures={"a": "b", "b": "a", "c": "d", "d": "c"})
    assert [fault.headline for fault in faults] == [
        "`a` is worked out from `b`, in a circle",
        "`c` is worked out from `d`, in a circle",
    ]
    assert faults[0].help == "give one of `a` or `b` a quantity of its own"


def test_circles_that_no_single_line_opens_say_so() -> None:
    _, fault = only(measures={"a": "a + b", "b": "b + a"})
    assert fault.help == "give several of these lines quantities of their own: no single one opens every circle"


def test_a_circle_through_a_seam_allowance_is_found() -> None:
    hem = Work("hem", {"turn": "flounce.cut_depth / 10"}, [Allowance("flounce", "bottom", ("turn",))])
    spec, fault = only(pieces={"flounce": {"length": "1 m", "depth": "20 cm"}}, steps=[hem])
    assert fault.code == "FB206"
    assert pointed_at(spec, fault) == ["20 cm", "flounce.cut_depth / 10"]


def test_what_stands_on_a_circle_is_not_told_again() -> None:
    pieces = {"band": {"length": "a * 2", "depth": "10 cm"}}
    _, fault = only(measures={"a": "b", "b": "a"}, pieces=pieces, rules={"band.length > 1 m": "short"})
    assert fault.code == "FB206"


def test_a_long_chain_of_measures_is_followed_to_its_end() -> None:
    measures = {f"m{n}": f"m{n + 1} + 1 mm" for n in range(3000)} | {"m3000": "1 mm"}
    spec, takes = garment(measures=dict(reversed(measures.items())))
    result = solve(spec, takes, "size M", {}, {})
    assert result.value
    assert result.value.length("m0") == 3001


def test_faults_of_every_sort_are_told_at_once_in_reading_order() -> None:
    _, faults = faults_of(
        measures={"a": "b", "b": "a", "wrong": "1 cm + 1 g", "stranger": "nobody"},
        pieces={"band": {"length": "-5 cm"}, "cap": {"length": "2 g", "depth": "1 m"}},
    )
    assert [fault.code for fault in faults] == ["FB206", "FB202", "FB203", "FB205", "FB208", "FB207"]


def test_the_spec_is_checked_without_a_body() -> None:
    spec, takes = garment(body={"hip_girth": (None, None)}, measures={"reach": "hip_girth + nobody"})
    assert [fault.code for fault in prepare(spec, takes).faults] == ["FB203"]


# What each value must be.


@pytest.mark.parametrize(
    ("parts", "headline", "place"),
    [
        (
            {"pieces": {"band": {"length": "5", "depth": "3 cm"}}},
            "`band.length` is a number and must be a length: 5",
            "5",
        ),
        (
            {"pieces": {"band": {"length": "2 cm * 3 cm", "depth": "3 cm"}}},
            "`band.length` is an area and must be a length: 0.0006 m2",
            "2 cm * 3 cm",
        ),
        (
            {"pieces": {"band": {"length": "1 m", "depth": "3 cm", "count": "2 cm"}}},
            "`band.count` is a length and must be a whole number: 2 cm",
            "2 cm",
        ),
        (
            {"materials": {"lawn": {"price": "6 EUR"}}},
            "`lawn.price` is a price in EUR and must be a price per length: 6.00 EUR",
            "6 EUR",
        ),
        (
            {"materials": {"lawn": {"weight": "80 g/m"}}},
            "`lawn.weight` is a weight per length and must be a weight per area: 80 g/m",
            "80 g/m",
        ),
        (
            {"materials": {"net": {"width": "25 g/m2"}}},
            "`net.width` is a weight per area and must be a length: 25 g/m2",
            "25 g/m2",
        ),
        ({"worn": {"over": "2"}}, "`worn.over` is a number and must be a length: 2", "2"),
        ({"rounding": "5"}, "`rounding` is a number and must be a length: 5", "5"),
        (
            {"steps": [Work("hem", {"turn": "3 g"}, [])]},
            "`step 1.turn` is a weight and must be a length or a number: 3 g",
            "3 g",
        ),
        (
            {"steps": [Work("gather", {"rows": "2 cm"}, [], {"rows": "number"})]},
            "`step 1.rows` is a length and must be a number: 2 cm",
            "2 cm",
        ),
        (
            {"steps": [Work("hem", {"turn": "2"}, [], {"turn": "length"})]},
            "`step 1.turn` is a number and must be a length: 2",
            "2",
        ),
    ],
)
def test_a_value_of_the_wrong_kind_is_told(parts: dict[str, Any], headline: str, place: str) -> None:
    spec, fault = only(**parts)
    assert (fault.code, fault.headline) == ("FB207", headline)
    assert pointed_at(spec, fault) == [place]


@pytest.mark.parametrize(
    ("parts", "help_"),
    [
        ({"pieces": {"band": {"length": "5", "depth": "3 cm"}}}, "write the unit: `5 cm`"),
        ({"pieces": {"band": {"length": "5", "depth": "3 in"}}, "units": "inches"}, "write the unit: `5 in`"),
        ({"pieces": {"band": {"length": "2 * 3 g", "depth": "3 cm"}}}, "write it as in `30 cm`"),
        ({"materials": {"lawn": {"weight": "80 g/m"}}}, "write it as in `80 g/m2`"),
    ],
)
def test_a_value_of_the_wrong_kind_has_a_mend(parts: dict[str, Any], help_: str) -> None:
    assert only(**parts)[1].help == help_


@pytest.mark.parametrize(
    ("parts", "headline"),
    [
        (
            {"pieces": {"band": {"length": "1 m", "depth": "0 cm"}}},
            "`band.depth` comes out at 0 cm and must be above 0",
        ),
        (
            {"pieces": {"band": {"length": "1 m", "depth": "3 cm", "count": "2.5"}}},
            "`band.count` comes out at 2.5 and must be a whole number",
        ),
        (
            {"pieces": {"band": {"length": "1 m", "depth": "3 cm", "count": "-1"}}},
            "`band.count` comes out at -1 and must be 1 or more",
        ),
        (
            {"pieces": {"band": {"length": "1 m", "depth": "3 cm", "count": "2000"}}},
            "`band.count` comes out at 2000 and must be 1000 or less",
        ),
        (
            {"pieces": {"band": {"length": "2 km", "depth": "3 cm"}}},
            "`band.length` comes out at 200000 cm and must be 1 km or less",
        ),
        ({"materials": {"lawn": {"shrinkage": "100%"}}}, "`lawn.shrinkage` comes out at 1 and must be below 100%"),
        ({"steps": [Work("hem", {"turn": "-1 cm"}, [])]}, "`step 1.turn` comes out at -1 cm and must be 0 or more"),
        ({"rounding": "-5 mm"}, "`rounding` comes out at -5 mm and must be 0 or more"),
    ],
)
def test_a_value_out_of_bounds_is_told(parts: dict[str, Any], headline: str) -> None:
    _, fault = only(**parts)
    assert (fault.code, fault.headline) == ("FB208", headline)


def test_a_depth_below_nothing_shows_its_arithmetic() -> None:
    pieces = {"top": {"length": "1 m", "depth": "40 cm"}, "lower": {"length": "1 m", "depth": "35 cm - top.depth"}}
    _, fault = only(pieces=pieces)
    assert fault.headline == "`lower.depth` comes out at -5 cm and must be above 0"
    assert fault.notes == ("35 cm - top.depth = 35 cm - 40 cm",)


def test_a_cut_size_smaller_than_its_seams_shows_the_sum() -> None:
    seams = Work(
        "seam it", {"seam": "2 cm"}, [Allowance("band", "top", ("seam",)), Allowance("band", "bottom", ("seam",))]
    )
    _, fault = only(pieces={"band": {"length": "1 m", "cut depth": "3 cm"}}, steps=[seams])
    assert fault.headline == "`band.depth` comes out at -1 cm and must be above 0"
    assert fault.notes == ("band.cut_depth - band.top_takes - band.bottom_takes = 3 cm - 2 cm - 2 cm",)


def test_a_sum_of_unlike_quantities_is_told_at_its_place_in_the_formula() -> None:
    spec, fault = only(measures={"tilt": "2 * (10 cm + 3 g)"})
    assert fault.code == "FB202"
    assert fault.headline == ("`tilt` can't be worked out: 10 cm is a length and 3 g is a weight: they can't be added")
    assert pointed_at(spec, fault) == ["(10 cm + 3 g)"]


def test_a_division_by_nothing_is_told_at_the_divisor() -> None:
    spec, fault = only(measures={"zero": "0", "tilt": "10 cm / zero"})
    assert fault.code == "FB202"
    assert pointed_at(spec, fault) == ["zero"]
    assert fault.notes == ("10 cm / zero = 10 cm / 0",)
