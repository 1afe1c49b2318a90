import csv
import io
from fractions import Fraction
from pathlib import Path

import pytest
from furbelow.s5_buy.bom import COLUMNS, MaterialRow, materials_csv
from furbelow.s6_write.words.messages import Messages
from furbelow.verbs.command import run
from hypothesis import given, settings
from hypothesis import strategies as st

SPECS = Path(__file__).parents[2] / "specs"
NET = MaterialRow(
    "net",
    "N1",
    Fraction("8.5"),
    "m",
    "market stall",
    Fraction("15.3"),
    "EUR",
    "nylon, 25 g/m2",
    "ivory",
    "140 cm",
    "tiers",
)


HEADS = ["name", "code", "consumption per piece", "supplier", "cost", "specification", "colour", "size", "placement"]


def read_back(rows: list[MaterialRow]) -> list[list[str]]:
    return list(csv.reader(io.StringIO(materials_csv(rows, HEADS, ".").decode("utf-8"), newline=""), strict=True))


def test_the_columns_are_those_of_a_bill_of_materials() -> None:
    """Source: textileindustry.net, Bill of material (BOM) in the apparel industry."""
    words = Messages("en")
    words.read("buying")
    assert [words.text(column) for column in COLUMNS] == HEADS
    assert read_back([]) == [HEADS]


def test_a_row_reads_as_a_maker_would_write_it() -> None:
    assert materials_csv([NET], HEADS, ".").decode("utf-8") == (
        ",".join(HEADS) + '\r\nnet,N1,8.5 m,market stall,15.30 EUR,"nylon, 25 g/m2",ivory,140 cm,tiers\r\n'
    )


def test_a_decimal_sign_of_another_language_stands_in_amounts_and_costs() -> None:
    cells = next(csv.reader(io.StringIO(materials_csv([NET], HEADS, ",").decode("utf-8").split("\r\n", 1)[1])))
    assert (cells[2], cells[4]) == ("8,5 m", "15,30 EUR")


def test_quotes_commas_and_line_breaks_are_quoted_as_in_rfc_4180() -> None:
    """Source: RFC 4180, section 2, rules 5 to 7."""
    text = materials_csv([MaterialRow('say "net"', "a,b", Fraction(1), "m", placement="top\r\nbottom")], HEADS, ".")
    line = text.decode("utf-8").split("\r\n", 1)[1]
    assert line == '"say ""net""","a,b",1 m,,,,,,"top\r\nbottom"\r\n'


@pytest.mark.parametrize(
    "start", ["=", "+", "-", "@", "\t", "\r", "\n", " =", "\u00a0 +", "\uff1d", "\uff0b", " \uff20"]
)
def test_a_cell_that_begins_like_a_formula_gets_an_apostrophe(start: str) -> None:
    """Source: OWASP, CSV Injection: the characters that start a formula."""
    row = MaterialRow(f"{start}1+1", "a=b", Fraction(1), "m", colour=f"{start}HYPERLINK()")
    cells = read_back([row])[1]
    assert (cells[0], cells[1], cells[6]) == (f"'{start}1+1", "a=b", f"'{start}HYPERLINK()")


@pytest.mark.parametrize(
    ("consumption", "shown"),
    [
        ("10/3", "3.334 m"),
        ("8", "8 m"),
        ("100", "100 m"),
        ("1/100000", "0.001 m"),
        ("0", "0 m"),
        ("2.50", "2.5 m"),
    ],
)
def test_consumption_is_rounded_up_to_a_thousandth(consumption: str, shown: str) -> None:
    assert read_back([MaterialRow("net", "", Fraction(consumption), "m")])[1][2] == shown


@pytest.mark.parametrize(
    ("cost", "shown"), [("1/3", "0.33 EUR"), ("0.005", "0.01 EUR"), ("12", "12.00 EUR"), ("0", "0.00 EUR")]
)
def test_cost_is_rounded_to_the_nearest_hundredth(cost: str, shown: str) -> None:
    assert read_back([MaterialRow("net", "", Fraction(1), "m", "", Fraction(cost), "EUR")])[1][4] == shown


def test_letters_of_any_language_are_kept() -> None:
    assert read_back([MaterialRow("tüll ✂ 網", "", Fraction(1), "m")])[1][0] == "tüll ✂ 網"


@settings(deadline=None, max_examples=50)
@given(
    st.lists(
        st.text(st.one_of(st.characters(exclude_categories=["C", "Zl", "Zp"]), st.sampled_from("\r\n\t"))), max_size=4
    )
)
def test_every_name_comes_back_and_none_starts_a_formula(names: list[str]) -> None:
    rows = read_back([MaterialRow(name, "x", Fraction(1), "m") for name in names])[1:]
    assert len(rows) == len(names)
    for name, row in zip(names, rows, strict=True):
        assert row[0].removeprefix("'") == name.removeprefix("'")
        assert not row[0].startswith(("=", "+", "-", "@", "\t", "\r", "\n"))


def test_no_cell_turns_the_direction_of_writing_or_steers_a_terminal() -> None:
    cells = read_back([MaterialRow("n\u202eet\x1b[2J", "\u200b=1+1", Fraction(1), "m")])[1]
    assert cells[:2] == ["net[2J", "'=1+1"]


@pytest.mark.parametrize(
    ("spec", "size", "rows"),
    [
        (
            "marigold",
            "16",
            {
                "lawn": ("yd", "width 45 in, weight 80 g/m2"),
                "elastic": ("yd", "stretch 80 %"),
                "thread": ("yd", "reel 500 yd"),
            },
        ),
        (
            "larkspur",
            "M",
            {"net": ("m", "width 140 cm, weight 25 g/m2"), "elastic": ("m", "stretch 100 %"), "starch": ("ml", "")},
        ),
    ],
)
def test_the_table_speaks_in_the_units_of_the_spec(
    spec: str, size: str, rows: dict[str, tuple[str, str]], tmp_path: Path
) -> None:
    """Widths and reels as they stand in the spec; consumption in what the shop measures by."""
    assert run(["make", str(SPECS / f"{spec}.yaml"), "--size", size, "--no-pdf", "--out", str(tmp_path)]) == 0
    table = list(csv.DictReader(io.StringIO((tmp_path / "materials.csv").read_text(encoding="utf-8"))))
    found = {row["name"]: row for row in table}
    for name, (unit, said) in rows.items():
        assert found[name]["consumption per piece"].split()[1] == unit
        assert said in found[name]["specification"]


def test_a_price_by_the_yard_stays_one(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["why", str(SPECS / "marigold.yaml"), "lawn.price", "--size", "16"]) == 0
    assert "7.50 EUR/yd" in capsys.readouterr().out
