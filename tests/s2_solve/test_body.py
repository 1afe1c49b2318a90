"""Bodies, sizes, choices and the maker's own rules."""

from typing import Any

import pytest
from furbelow.diagnose.fault import Fault
from furbelow.s2_solve.body import size_body

from tests.by_hand import garment, given, pointed_at, solve

HIPS = {"hip_girth": ("75 cm", "150 cm")}


def faults_of(measured: dict[str, str], chosen: dict[str, str] | None = None, /, **parts: Any) -> tuple[Fault, ...]:
    spec, takes = garment(**parts)
    return solve(spec, takes, "Bo", given(measured), given(chosen or {})).faults


def only(measured: dict[str, str], chosen: dict[str, str] | None = None, /, **parts: Any) -> Fault:
    faults = faults_of(measured, chosen, **parts)
    assert len(faults) == 1, faults
    return faults[0]


def test_a_measure_that_the_wearer_does_not_give_is_told() -> None:
    fault = only({}, body=HIPS)
    assert (fault.code, fault.headline) == ("FB210", "Bo gives no `hip_girth`")
    assert fault.help == "measure Bo and add `hip_girth`"


def test_a_mistyped_measure_of_the_wearer_is_recognised() -> None:
    assert only({"hip_grith": "100 cm"}, body=HIPS).help == "did you mean `hip_girth` by `hip_grith`?"


def test_measures_that_the_spec_does_not_use_are_no_fault() -> None:
    assert faults_of({"hip_girth": "100 cm", "knee_height": "45 cm"}, body=HIPS) == ()


@pytest.mark.parametrize(
    ("hips", "headline"),
    [
        ("160 cm", "the `hip_girth` of Bo is 160 cm, 10 cm above the most of 150 cm"),
        ("74.5 cm", "the `hip_girth` of Bo is 74.5 cm, 5 mm below the least of 75 cm"),
    ],
)
def test_a_measure_out_of_range_is_told_with_both_numbers_and_the_difference(hips: str, headline: str) -> None:
    fault = only({"hip_girth": hips}, body=HIPS)
    assert (fault.code, fault.headline) == ("FB211", headline)
    assert fault.help == "measure again: the garment is meant for 75 cm to 150 cm"
    assert fault.primary
    assert fault.primary.span.file == "wearer.yaml"
    assert fault.others[0].span.file == "garment.yaml"


@pytest.mark.parametrize("hips", ["75 cm", "150 cm"])
def test_the_ends_of_a_range_belong_to_it(hips: str) -> None:
    assert faults_of({"hip_girth": hips}, body=HIPS) == ()


def test_a_measure_that_is_no_length_is_told() -> None:
    fault = only({"hip_girth": "100"}, body=HIPS)
    assert (fault.code, fault.headline) == ("FB207", "`hip_girth` is a number and must be a length: 100")


def test_what_follows_from_a_measure_out_of_range_is_not_told_as_well() -> None:
    fault = only(
        {"hip_girth": "10 cm"},
        body=HIPS,
        pieces={"band": {"length": "hip_girth - 50 cm", "depth": "3 cm"}},
        rules={"hip_girth > 60 cm": "too narrow to sit in"},
    )
    assert fault.code == "FB211"


FULLNESS = {"fullness": {"default": "2", "from": "1.5", "to": "3"}}


@pytest.mark.parametrize(
    ("value", "code", "headline"),
    [
        ("3.5", "FB212", "`fullness` is 3.5, 0.5 above the most of 3"),
        ("1", "FB212", "`fullness` is 1, 0.5 below the least of 1.5"),
        ("3 cm", "FB207", "`fullness` is a length and must be a number: 3 cm"),
    ],
)
def test_a_choice_outside_what_it_may_be_is_told(value: str, code: str, headline: str) -> None:
    fault = only({}, {"fullness": value}, choices=FULLNESS)
    assert (fault.code, fault.headline) == (code, headline)


def test_a_default_that_falls_out_of_its_range_for_this_body_shows_its_arithmetic() -> None:
    choices = {"skirt_length": {"default": "waist_height * 60%", "to": "55 cm"}}
    fault = only({"waist_height": "100 cm"}, body={"waist_height": (None, None)}, choices=choices)
    assert fault.headline == "`skirt_length` is 60 cm, 5 cm above the most of 55 cm"
    assert fault.notes == ("waist_height * 60% = 100 cm * 60%",)


def test_a_bound_may_be_a_formula() -> None:
    choices = {"skirt_length": {"default": "60 cm", "to": "waist_height - 50 cm"}}
    fault = only({"waist_height": "100 cm"}, body={"waist_height": (None, None)}, choices=choices)
    assert fault.headline == "`skirt_length` is 60 cm, 10 cm above the most of 50 cm"
    assert fault.help == "choose 50 cm or less"


def test_a_bound_of_another_kind_than_the_choice_is_told() -> None:
    fault = only({}, choices={"fullness": {"default": "2", "from": "1 cm"}})
    assert fault.headline == "the `from` of `fullness` is a length and its value a number"


def test_a_choice_between_its_steps_is_told_with_its_neighbours() -> None:
    layers = {"layers": {"default": "2", "from": "1", "to": "4", "step": "1"}}
    fault = only({}, {"layers": "2.5"}, choices=layers)
    assert fault.help == "choose 2 or 3"
    assert (fault.code, fault.headline) == ("FB213", "`layers` is 2.5, between the steps 2 and 3")


def test_steps_are_counted_from_the_least() -> None:
    choices = {"turn": {"default": "5 mm", "from": "5 mm", "step": "10 mm"}}
    assert faults_of({}, {"turn": "25 mm"}, choices=choices) == ()
    assert only({}, {"turn": "20 mm"}, choices=choices).code == "FB213"


def test_an_unknown_choice_is_told_with_the_nearest() -> None:
    fault = only({}, {"fulness": "2"}, choices=FULLNESS)
    assert (fault.code, fault.headline) == ("FB215", "`fulness` is no choice of this garment")
    assert fault.help == "did you mean `fullness`?"


def test_a_broken_rule_says_the_makers_message_and_the_numbers() -> None:
    spec, takes = garment(
        pieces={"upper": {"length": "1 m", "depth": "20 cm"}, "flounce": {"length": "1 m", "depth": "12 cm"}},
        rules={"flounce.depth >= upper.depth": "the flounce will not dance"},
    )
    result = solve(spec, takes, "Bo", {}, {})
    (fault,) = result.faults
    assert (fault.code, fault.headline) == ("FB216", "the flounce will not dance")
    assert fault.notes == ("flounce.depth is 12 cm and upper.depth is 20 cm, 8 cm less",)
    assert pointed_at(spec, fault) == ["flounce.depth >= upper.depth"]
    assert not result.ok
    assert result.value, "the later stages may still look for faults of their own"


def test_a_rule_that_holds_is_silent() -> None:
    assert faults_of({}, measures={"a": "1 cm"}, rules={"a < 2 cm and not a > 3 cm": "never"}) == ()


def test_a_rule_that_compares_unlike_quantities_is_told() -> None:
    assert only({}, measures={"a": "1 cm"}, rules={"a < 2 g": "never"}).code == "FB202"


SIZES = {"M": {"hip_girth": "100 cm"}, "XL": {"hip_girth": "120 cm"}}


def test_a_size_gives_its_body() -> None:
    spec, takes = garment(body=HIPS, sizes=SIZES, pieces={"band": {"length": "hip_girth", "depth": "3 cm"}})
    body = size_body(spec, "XL")
    assert body.value
    solved = solve(spec, takes, "size XL", body.value, {}).value
    assert solved
    assert solved.pieces["band"].length == 1200


def test_an_unknown_size_is_told_with_those_there_are() -> None:
    spec, _ = garment(body=HIPS, sizes=SIZES)
    (fault,) = size_body(spec, "48").faults
    assert (fault.code, fault.headline) == ("FB214", "Teasel test skirt has no size `48`")
    assert fault.help == "the sizes are M, XL"


def test_a_size_in_the_wrong_case_is_recognised() -> None:
    spec, _ = garment(body=HIPS, sizes=SIZES)
    assert size_body(spec, "xl").faults[0].help == "did you mean `XL`?"


def test_a_size_with_a_measure_that_the_spec_does_not_ask_for_is_told() -> None:
    spec, _ = garment(body=HIPS, sizes={"M": {"hip_grith": "100 cm"}})
    (fault,) = size_body(spec, "M").faults
    assert (fault.code, fault.help) == ("FB217", "did you mean `hip_girth`?")
    assert pointed_at(spec, fault) == ["100 cm"]
