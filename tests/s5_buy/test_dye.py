from fractions import Fraction

import pytest
from furbelow.s5_buy.dye import FIBRE_TAKES, Auxiliary, DyeBath, dye_bath, match_dye
from furbelow.s5_buy.out_of_range import OutOfRange

CLOTH, DEPTH, LIQUOR = Fraction(300), Fraction(2, 100), Fraction(20)


def test_polyester_in_an_acid_bath_is_told_why_and_what_it_takes() -> None:
    match = match_dye("polyester", "acid")
    assert not match.takes
    assert match.caution == (
        "polyester stays pale or undyed: acid dye is for wool, silk and nylon; polyester takes disperse dye"
    )


def test_a_fibre_that_takes_nothing_and_one_unknown_here_are_told_apart() -> None:
    assert match_dye("polypropylene", "acid").caution.endswith("polypropylene takes no dye at home")
    assert match_dye("seaweed", "acid").caution.startswith("nothing is known here about dyeing seaweed")


def test_wool_in_acid_dye_takes_and_is_still_cautioned_about_felting() -> None:
    match = match_dye("wool", "acid")
    assert match.takes
    assert "felts" in match.caution


def test_nylon_in_acid_dye_takes_without_a_caution() -> None:
    assert match_dye("nylon", "acid").caution == ""


def test_every_class_a_fibre_lists_is_one_it_takes() -> None:
    for fibre, classes in FIBRE_TAKES.items():
        assert all(match_dye(fibre, dye).takes for dye in classes)


def test_powder_dye_leaves_the_whole_bath_for_water() -> None:
    bath = dye_bath(CLOTH, DEPTH, LIQUOR, auxiliaries=(Auxiliary("salt", Fraction(20)),))
    assert isinstance(bath, DyeBath)
    assert [bath.dye, bath.dye_stock_ml, bath.bath_ml, bath.water_ml] == [6, None, 6000, 6000]
    assert [bath.doses[0].mass, bath.doses[0].stock_ml] == [120, None]


@pytest.mark.parametrize(
    ("bath", "headline"),
    [
        (dye_bath(CLOTH, Fraction(1), LIQUOR), "depth of shade of 100 % is 80 % above the most, 20 %"),
        (dye_bath(CLOTH, DEPTH, Fraction(0)), "liquor ratio of 0 is not above 0"),
        (dye_bath(CLOTH, DEPTH, LIQUOR, Fraction(0)), "stock strength of 0 % is not above 0 %"),
        (
            dye_bath(CLOTH, DEPTH, LIQUOR, auxiliaries=(Auxiliary("salt", Fraction(-1)),)),
            "dose of -1 g/l is 1 g/l below the least, 0 g/l",
        ),
        (
            dye_bath(CLOTH, DEPTH, LIQUOR, auxiliaries=(Auxiliary("salt", Fraction(1), Fraction(2)),)),
            "stock strength of 200 % is 100 % above the most, 100 %",
        ),
        (
            dye_bath(CLOTH, DEPTH, Fraction(1), Fraction(1, 1000)),
            "stock solutions together of 6000 ml is 5700 ml above the most, 300 ml",
        ),
    ],
)
def test_a_bath_that_cannot_be_mixed_is_told_with_its_numbers(bath: object, headline: str) -> None:
    assert isinstance(bath, OutOfRange)
    assert bath.headline == headline
