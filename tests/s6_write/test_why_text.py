"""Where a number comes from, as a tree."""

import json
from pathlib import Path

import pytest
from furbelow.garment.solved import Allowance, Solved
from furbelow.garment.workroom import Workroom
from furbelow.s2_solve.why import why
from furbelow.s6_write.pages.why_text import WhyText
from furbelow.verbs.command import run

from tests.by_hand import Work, garment, given, solve

SPECS = Path(__file__).parents[2] / "specs"


def skirt() -> Solved:
    spec, takes = garment(
        body={"waist_height": (None, None)},
        choices={"skirt_length": {"default": "waist_height * 60%"}},
        materials={"elastic": {"kind": "elastic", "width": "25 mm"}},
        pieces={
            "flounce": {"length": "6 m", "depth": "skirt_length - band.depth"},
            "band": {"length": "1 m", "depth": "elastic.width + 5 mm"},
        },
        steps=[Work("attach", {"seam": "1 cm"}, [Allowance("flounce", "top", ("seam",))])],
        rules={"flounce.depth > band.depth * 2": "too shallow"},
        rounding="5 mm",
    )
    solved = solve(spec, takes, "Bo", given({"waist_height": "101 cm"}), {}).value
    assert solved
    return solved


def told(solved: Solved) -> WhyText:
    return WhyText(solved, Workroom())


def test_the_tree_goes_down_to_the_lines_that_the_number_stands_on() -> None:
    solved = skirt()
    reason = why(solved, "flounce.cut_depth").value
    assert reason
    assert (
        told(solved).text(reason)
        == """\
flounce.cut_depth = 59 cm  [garment.yaml, line 12]
    flounce.depth + flounce.top_takes = 58 cm + 1 cm
    flounce.depth = 58 cm  [garment.yaml, line 12]
        skirt_length - band.depth = 60.6 cm - 3 cm
        cut size rounded up to 5 mm: 58.6 cm becomes 59 cm; finished 57.6 cm becomes 58 cm
        band.depth = 3 cm  [garment.yaml, line 16]
            elastic.width + 5 mm = 2.5 cm + 5 mm
            elastic.width = 2.5 cm (25 mm)  [garment.yaml, line 8]
        skirt_length = 60.6 cm  [garment.yaml, line 4]
            waist_height * 60% = 101 cm * 60%
            waist_height = 101 cm  [wearer.yaml, line 1]
        flounce.top_takes = 1 cm  [garment.yaml, line 19]
            step 1.seam = 1 cm  [garment.yaml, line 17]
    flounce.top_takes = 1 cm (see above)
"""
    )


def test_the_tree_can_be_read_as_markdown() -> None:
    solved = skirt()
    reason = why(solved, "skirt_length").value
    assert reason
    assert told(solved).markdown(reason) == (
        "- `skirt_length` = **60.6 cm**; `waist_height * 60% = 101 cm * 60%`; garment.yaml, line 4\n"
        "  - `waist_height` = **101 cm**; wearer.yaml, line 1\n"
    )


def test_the_tree_goes_into_json_without_its_empty_fields() -> None:
    solved = skirt()
    reason = why(solved, "skirt_length").value
    assert reason
    assert json.loads(json.dumps(told(solved).data(reason))) == {
        "name": "skirt_length",
        "value": {"number": 606, "unit": "mm", "shown": "60.6 cm"},
        "formula": "waist_height * 60%",
        "with_values": "101 cm * 60%",
        "place": "garment.yaml, line 4",
        "origin": "choice",
        "inputs": [
            {
                "name": "waist_height",
                "value": {"number": 1010, "unit": "mm", "shown": "101 cm"},
                "formula": "101 cm",
                "with_values": "101 cm",
                "place": "wearer.yaml, line 1",
                "origin": "body",
            }
        ],
    }


def test_a_rule_says_whether_it_holds() -> None:
    solved = skirt()
    reason = why(solved, "rule 1").value
    assert reason
    first, second, *_ = told(solved).text(reason).splitlines()
    assert first.startswith("rule 1 = holds")
    assert second.strip() == "flounce.depth > band.depth * 2: 58 cm > 3 cm * 2"


def test_an_unknown_number_is_told_with_the_nearest() -> None:
    (fault,) = why(skirt(), "flounce.dept").faults
    assert (fault.code, fault.headline) == ("FB218", "no number is named `flounce.dept`")
    assert fault.help == "did you mean `flounce.depth`?"


def test_the_name_of_a_piece_leads_to_its_sizes() -> None:
    (fault,) = why(skirt(), "band").faults
    assert fault.help is not None
    assert "`band.length`" in fault.help


def test_a_number_that_many_stand_on_is_explained_once() -> None:
    measures = {"m0": "1 mm"} | {f"m{n}": f"m{n - 1} + m{max(n - 2, 0)}" for n in range(1, 40)}
    spec, takes = garment(measures=measures)
    solved = solve(spec, takes, "Bo", {}, {}).value
    assert solved
    reason = why(solved, "m39").value
    assert reason
    assert told(solved).text(reason).count("[garment.yaml") == 41  # m0 stands on nothing and is shown twice


def test_a_chain_too_long_to_read_ends_with_the_name_to_ask_for() -> None:
    measures = {"m0": "1 mm"} | {f"m{n}": f"m{n - 1} * 1" for n in range(1, 2000)}
    spec, takes = garment(measures=measures)
    solved = solve(spec, takes, "Bo", {}, {}).value
    assert solved
    reason = why(solved, "m1999").value
    assert reason
    assert told(solved).text(reason).splitlines()[-1].strip() == "m1899 = 1 mm (ask for it by name)"


def test_every_value_of_a_garment_can_be_explained() -> None:
    solved = skirt()
    for name in solved.values:
        reason = why(solved, name).value
        assert reason
        assert told(solved).data(reason)["value"]


@pytest.mark.parametrize(
    ("spec", "size", "name", "told"),
    [
        # 4.54 m on the bolt and 2 cm for the straight end, sold by 10 cm: 4.6 m.
        (
            "larkspur",
            "M",
            "net",
            ["net = 460 cm", "round_up(456 cm, 10 cm)", "net.bolt_length = 454 cm", "4 joins in 2 sections"],
        ),
        ("larkspur", "M", "edging", ["edging = 1300 cm", "round_up(1204 cm, 100 cm)"]),
        ("larkspur", "M", "thread", ["thread = 1\n", "thread.needle + thread.bobbin", "15 % of waste"]),
        ("marigold", "16", "lawn", ["lawn.sold_by = 9 in"]),
    ],
)
def test_what_is_bought_is_explained(
    spec: str, size: str, name: str, told: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["why", str(SPECS / f"{spec}.yaml"), name, "--size", size]) == 0
    printed = capsys.readouterr().out
    for part in told:
        assert part in printed


def test_the_reasons_of_buying_end_in_the_amounts_on_the_list(capsys: pytest.CaptureFixture[str]) -> None:
    spec = str(SPECS / "foxglove.yaml")
    assert run(["compare", spec, "--size", "C", "--set-second", "fullness=2", "--format", "json"]) == 0
    bought = {each["name"]: each["before"] for each in json.loads(capsys.readouterr().out)["materials"]}
    assert run(["why", spec, "lace", "--size", "C"]) == 0
    assert bought["lace to buy"] == {"number": 2000, "unit": "mm", "shown": "2 m"}
    assert capsys.readouterr().out.startswith("lace = 200 cm")
