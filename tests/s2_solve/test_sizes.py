"""Finished and cut sizes of pieces, by what the steps take of them."""

from fractions import Fraction as F

import pytest
from furbelow.garment.solved import Allowance, Solved, SolvedPiece

from tests.by_hand import Work, garment, given, pointed_at, solve

SEAM = Work("seam it", {"seam": "1 cm"}, [Allowance("flounce", side, ("seam",)) for side in ("top", "start", "end")])
HEM = Work(
    "hem it",
    {"first turn": "5 mm", "second turn": "15 mm"},
    [Allowance("flounce", "bottom", ("first turn", "second turn"))],
)


def solved(**parts: object) -> Solved:
    spec, takes = garment(**parts)  # type: ignore[arg-type]
    result = solve(spec, takes, "size M", {}, {})
    assert result.faults == ()
    assert result.value
    return result.value


def lengths(piece: SolvedPiece) -> list[object]:
    """Finished and cut, in mm."""
    return [piece.length, piece.cut_length]


def depths(piece: SolvedPiece) -> list[object]:
    return [piece.depth, piece.cut_depth]


def test_the_worked_layer_comes_out_at_its_cut_sizes() -> None:
    """Upper tier 300 x 15 cm finished, flounce 600 x 23.5 cm, seams 1 cm, turn up 5 mm: our own worked example."""
    steps = [
        Work(
            "close",
            {"seam": "1 cm"},
            [Allowance(p, s, ("seam",)) for p in ("upper", "flounce") for s in ("start", "end")],
        ),
        Work("edge", {"turn up": "5 mm"}, [Allowance("flounce", "bottom", ("turn up",))]),
        Work(
            "attach",
            {"seam": "1 cm"},
            [Allowance("flounce", "top", ("seam",)), Allowance("upper", "bottom", ("seam",))],
        ),
        Work("waist", {"seam": "1 cm"}, [Allowance("upper", "top", ("seam",))]),
    ]
    pieces = {
        "upper": {"length": "300 cm", "depth": "15 cm"},
        "flounce": {"length": "upper.length * 2", "depth": "23.5 cm"},
    }
    upper, flounce = solved(pieces=pieces, steps=steps, rounding="5 mm").pieces.values()
    assert (lengths(upper), depths(upper)) == ([3000, 3020], [150, 170])
    assert (lengths(flounce), depths(flounce)) == ([6000, 6020], [235, 250])


def test_a_finished_size_grows_by_what_the_steps_take() -> None:
    flounce = solved(pieces={"flounce": {"length": "6 m", "depth": "20 cm"}}, steps=[SEAM, HEM]).pieces["flounce"]
    assert lengths(flounce) == [6000, 6020]
    assert depths(flounce) == [200, 230]


def test_a_cut_size_shrinks_by_what_the_steps_take() -> None:
    cut = {"cut length": "602 cm", "cut depth": "23 cm"}
    flounce = solved(pieces={"flounce": cut}, steps=[SEAM, HEM]).pieces["flounce"]
    assert lengths(flounce) == [6000, 6020]
    assert depths(flounce) == [200, 230]


def test_a_folded_piece_is_cut_twice_as_deep_as_it_shows() -> None:
    casing = Work(
        "casing",
        {"seam": "1 cm"},
        [Allowance("band", "top", ("seam",), doubles=True), Allowance("band", "bottom", ("seam",))],
    )
    finished = solved(pieces={"band": {"length": "1 m", "depth": "3 cm"}}, steps=[casing]).pieces["band"]
    cut = solved(pieces={"band": {"length": "1 m", "cut depth": "8 cm"}}, steps=[casing]).pieces["band"]
    assert finished.folded
    assert depths(finished) == [30, 80]
    assert depths(cut) == [30, 80]


def test_a_length_named_twice_is_taken_twice() -> None:
    twice = Work("bind", {"seam": "1 cm"}, [Allowance("flounce", "top", ("seam", "seam"))])
    flounce = solved(pieces={"flounce": {"length": "1 m", "depth": "10 cm"}}, steps=[twice]).pieces["flounce"]
    assert flounce.cut_depth == 120


def test_what_several_steps_take_of_one_edge_adds_up() -> None:
    flounce = solved(pieces={"flounce": {"length": "1 m", "depth": "10 cm"}}, steps=[SEAM, SEAM, HEM]).pieces["flounce"]
    assert flounce.cut_depth == 100 + 10 + 10 + 20
    assert flounce.cut_length == 1000 + 4 * 10


def test_a_step_length_may_be_a_formula_over_other_pieces() -> None:
    deep = Work("hem", {"turn": "flounce.length / 100"}, [Allowance("flounce", "bottom", ("turn",))])
    result = solved(pieces={"flounce": {"length": "3 m", "depth": "10 cm"}}, steps=[deep])
    assert result.pieces["flounce"].cut_depth == 130
    assert result.steps[0].mm("turn") == 30


def test_the_cut_size_is_rounded_up_and_the_rounded_size_carries_on() -> None:
    pieces = {"flounce": {"length": "1 m", "depth": "101 mm"}, "above": {"length": "1 m", "depth": "2 * flounce.depth"}}
    result = solved(pieces=pieces, steps=[SEAM], rounding="5 mm")
    flounce = result.pieces["flounce"]
    assert flounce.cut_depth == 115  # 111 up to a step of 5
    assert flounce.depth == 105
    assert result.pieces["above"].depth == 210
    rounded = result.values["flounce.depth"].rounded
    assert rounded is not None
    assert (rounded.step, rounded.cut_before, rounded.cut) == (5, 111, 115)
    assert (rounded.finished_before, rounded.finished) == (101, 105)


def test_a_size_on_the_step_already_is_left_as_it_is() -> None:
    result = solved(pieces={"flounce": {"length": "1 m", "depth": "10.5 cm"}}, rounding="5 mm")
    assert result.pieces["flounce"].cut_depth == 105
    assert result.values["flounce.depth"].rounded is None


def test_inches_are_rounded_to_exact_eighths() -> None:
    pieces = {"flounce": {"length": "10 in / 3", "depth": "6 in"}}
    result = solved(pieces=pieces, rounding="1/8 in", units="inches")
    assert result.pieces["flounce"].cut_length == F("25.4") * F(27, 8)
    rounded = result.values["flounce.length"].rounded
    assert rounded is not None
    assert (rounded.step, rounded.cut_before, rounded.cut) == (F("25.4") / 8, F("25.4") * 10 / 3, F("25.4") * F(27, 8))


def test_without_rounding_sizes_stay_exact_fractions() -> None:
    flounce = solved(pieces={"flounce": {"length": "1 m / 3", "depth": "1 m / 7"}}).pieces["flounce"]
    assert lengths(flounce) == [F(1000, 3), F(1000, 3)]
    assert depths(flounce) == [F(1000, 7), F(1000, 7)]


def test_the_workroom_rounds_in_place_of_the_spec() -> None:
    spec, takes = garment(pieces={"flounce": {"length": "1 m", "depth": "101 mm"}}, rounding="5 mm")
    result = solve(spec, takes, "size M", {}, {}, rounding=F(10))
    assert result.value
    assert result.value.pieces["flounce"].cut_depth == 110
    assert result.value.rounding == 10
    because = result.value.values["rounding"].because
    assert because is not None
    assert because.message == "reason-workroom"


def test_measures_choices_and_step_lengths_are_not_rounded() -> None:
    result = solved(
        measures={"third": "1 m / 3"},
        choices={"deep": {"default": "third / 10"}},
        pieces={"flounce": {"length": "1 m", "depth": "10 cm"}},
        steps=[Work("mark", {"at": "third"}, [])],
        rounding="5 mm",
    )
    assert result.length("third") == F(1000, 3)
    assert result.length("deep") == F(100, 3)
    assert result.steps[0].mm("at") == F(1000, 3)


def test_both_sizes_written_agree_when_the_sum_is_exact() -> None:
    pieces = {"flounce": {"length": "1 m", "depth": "20 cm", "cut depth": "23 cm"}}
    flounce = solved(pieces=pieces, steps=[SEAM, HEM]).pieces["flounce"]
    assert depths(flounce) == [200, 230]


def test_both_sizes_written_and_a_millimetre_apart_are_told_with_the_sum() -> None:
    pieces = {"flounce": {"length": "1 m", "depth": "20 cm", "cut depth": "22.9 cm"}}
    spec, takes = garment(pieces=pieces, steps=[SEAM, HEM])
    (fault,) = solve(spec, takes, "size M", {}, {}).faults
    assert fault.code == "FB209"
    assert fault.headline == (
        "the cut depth of `flounce` is 22.9 cm, 1 mm less than the 23 cm that its finished depth "
        "and its seams add up to"
    )
    assert fault.notes == (
        "20 cm + 1 cm + 2 cm = 23 cm",
        "flounce.top_takes = step 1.seam = 1 cm",
        "flounce.bottom_takes = step 2.first turn + step 2.second turn = 5 mm + 1.5 cm",
    )
    assert pointed_at(spec, fault) == ["22.9 cm", "20 cm"]


def test_a_count_is_a_whole_number_and_one_when_not_written() -> None:
    pieces = {"panel": {"length": "1 m", "depth": "10 cm", "count": "3"}, "band": {"length": "1 m", "depth": "3 cm"}}
    result = solved(pieces=pieces)
    assert [piece.count for piece in result.pieces.values()] == [3, 1]
    because = result.values["band.count"].because
    assert because is not None
    assert because.message == "reason-one"


def test_piecing_and_offers_are_worked_out_under_names_of_their_own() -> None:
    result = solved(
        pieces={
            "band": {
                "length": "1 m",
                "depth": "3 cm",
                "piecing": {"seam": "1 cm", "shortest": "40 cm", "most joins": "2"},
            }
        },
        materials={
            "lawn": {"width": "140 cm", "price": "6 EUR/m", "sold by": "10 cm", "offers": [("90 cm", "4 EUR/m")]}
        },
    )
    assert result.length("band piecing.shortest") == 400
    assert result.values["band piecing.most_joins"].value.as_number() == 2
    assert result.length("lawn offer 1.width") == 900
    assert result.materials["lawn"].amounts["sold by"].as_length_mm() == 100


def test_a_step_that_takes_what_it_does_not_have_is_a_fault_of_the_technique() -> None:
    wrong = Work("seam it", {"seam": "1 cm"}, [Allowance("flounce", "top", ("turn",))])
    spec, takes = garment(pieces={"flounce": {"length": "1 m", "depth": "10 cm"}}, steps=[wrong])
    with pytest.raises(LookupError, match="step 1 takes `turn`"):
        solve(spec, takes, "size M", {}, {})


def test_sizes_follow_the_wearer_and_the_choices() -> None:
    spec, takes = garment(
        body={"waist_girth": (None, None), "hip_girth": (None, None)},
        choices={"fullness": {"default": "2"}},
        pieces={"skirt": {"length": "max(hip_girth, waist_girth) * fullness", "depth": "50 cm"}},
    )
    body = given({"waist_girth": "80 cm", "hip_girth": "104 cm"})
    usual = solve(spec, takes, "Bo", body, {}).value
    fuller = solve(spec, takes, "Bo", body, given({"fullness": "2.5"})).value
    assert usual
    assert fuller
    assert usual.pieces["skirt"].length == 2080
    assert fuller.pieces["skirt"].length == 2600


def test_a_choice_of_the_wearer_may_be_a_formula() -> None:
    spec, takes = garment(
        body={"waist_height": (None, None)},
        choices={"skirt_length": {"default": "60 cm"}},
        pieces={"skirt": {"length": "1 m", "depth": "skirt_length"}},
    )
    body = given({"waist_height": "100 cm"})
    result = solve(spec, takes, "Bo", body, given({"skirt_length": "waist_height * 55%"}))
    assert result.faults == ()
    assert result.value
    assert result.value.pieces["skirt"].depth == 550
