"""Rosters as spreadsheets and hurried people write them: each row's fault is named, and the rest goes on."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from furbelow.diagnose.fault import Fault
from furbelow.s1_read.read_wearers import read_wearers
from furbelow.verbs.command import run
from hypothesis import given, settings
from hypothesis import strategies as st

LARKSPUR = Path(__file__).parents[2] / "specs" / "larkspur.yaml"
HEADING = "wearer;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm)"
ADA, BO = "Ada;70;96;101;45", "Bo;78,5;104,25;104;46"


def read(text: str, *, encoding: str = "utf-8") -> tuple[list[str], list[Fault]]:
    staged = read_wearers(("class.csv", text.encode(encoding)))
    return [wearer.name for wearer in staged.value or ()], list(staged.faults)


@pytest.mark.parametrize("ending", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_a_table_out_of_a_spreadsheet_is_read(encoding: str, ending: str) -> None:
    assert read(ending.join((HEADING, ADA, BO, "", ";;;;")) + ending, encoding=encoding) == (["Ada", "Bo"], [])


@pytest.mark.parametrize(
    ("row", "lines", "said"),
    [
        ('"Cleo;70;96;101;45', [2], "a quote is not closed"),
        ('Cleo;"70;96;101;45', [2], "a quote is not closed"),
        (";70;96;101;45", [2], "no wearer"),
        ("Cleo;70;96;101;45;9;9", [2], "2 more than the heading"),
        ("Cleo;7O;96;101;45", [2], "`O` is no unit"),
        ("Cleo;70;96;101;" + "9" * 300, [2], "300 characters"),
        ("Cleo;1e400;96;101;45", [2], "power of ten"),
        ("Ada;70;96;101;45", [3], "stands twice"),
    ],
)
def test_the_fault_of_a_row_is_named_and_the_rest_goes_on(row: str, lines: list[int], said: str) -> None:
    names, faults = read("\n".join((HEADING, row, ADA, BO)))
    assert names == ["Ada", "Bo"]
    told = [fault.primary.span.start_line for fault in faults if fault.primary]
    assert set(told) & set(lines), faults
    assert re.sub(r"[` ]", "", said) in re.sub(r"[` ]", "", " ".join(fault.headline for fault in faults))


@pytest.mark.parametrize(
    ("row", "code"),
    [
        ("Cleo;7000;96;101;45", "FB211"),
        ("Cleo;0;96;101;45", "FB2"),
        ("Cleo;;96;101;45", "FB210"),
        ("Cleo;70;96;101", "FB210"),
        ("Cleo;-70;96;101;45", "FB2"),
        ("Cleo;seventy;96;101;45", "FB2"),
    ],
)
def test_absurd_and_missing_measures_are_told_for_that_wearer_alone(
    row: str, code: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    roster = tmp_path / "class.csv"
    roster.write_text("\n".join((HEADING, row, ADA, BO)), encoding="utf-8")
    assert run(["check", str(LARKSPUR), "--class", str(roster)]) == 1
    told = capsys.readouterr()
    assert "proved for 2 of 3 bodies" in told.out
    assert "Cleo" in told.out
    assert f"error {code}" in told.err


def test_numbers_do_for_names(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    roster = tmp_path / "class.csv"
    roster.write_text("\n".join((HEADING, ADA.replace("Ada", "1"), BO.replace("Bo", "02"))), encoding="utf-8")
    assert run(["check", str(LARKSPUR), "--class", str(roster)]) == 0
    assert "proved for 2 bodies" in capsys.readouterr().out


_CELL = st.one_of(
    st.sampled_from(
        [
            "70",
            "70,5",
            "70.5",
            "5' 6\"",
            '"70"',
            '"',
            '""',
            "",
            " ",
            "-1",
            "1e9",
            "nan",
            "=1+1",
            "70 cm",
            "cm",
            "\ufeff",
            "½",
            "٣",
        ]
    ),
    st.text(max_size=12),
)


@given(
    st.lists(st.lists(_CELL, max_size=7), max_size=8), st.sampled_from(";,\t"), st.sampled_from(["\n", "\r\n", "\r"])
)
@settings(max_examples=150, deadline=None)
def test_any_table_is_read_or_told_at_places_inside_it(rows: list[list[str]], mark: str, ending: str) -> None:
    text = ending.join((HEADING.replace(";", mark), *(mark.join(row) for row in rows)))
    content = text.encode("utf-8", "surrogatepass")
    lines = re.split(r"\r\n|\n|\r", content.decode("utf-8-sig", errors="replace"))
    for fault in read_wearers(("class.csv", content)).faults:
        for label in ((fault.primary,) if fault.primary else ()) + fault.others:
            span = label.span
            assert 1 <= span.start_line <= span.end_line <= len(lines)
            assert 1 <= span.start_column <= len(lines[span.start_line - 1]) + 1
            assert 1 <= span.end_column <= len(lines[span.end_line - 1]) + 1
            assert (span.start_line, span.start_column) <= (span.end_line, span.end_column)


@pytest.mark.parametrize("sign", ["\v", "\f", "\x1c", "\x85", "\u2028", "\u2029"])
def test_only_what_editors_take_for_a_line_end_ends_a_line(sign: str) -> None:
    names, faults = read(f"{HEADING}\nCleo{sign}Dane;70;96;101;45\n{BO}\nEve;7O;96;101;45")
    assert names[-1] == "Bo"
    assert [fault.primary.span.start_line for fault in faults if fault.primary] == [4]


def test_a_heading_alone_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    roster = tmp_path / "class.csv"
    roster.write_text(HEADING)
    assert run(["check", str(LARKSPUR), "--wearer", str(roster)]) == 1
    assert "a heading and no wearer below it" in capsys.readouterr().err


def test_a_table_of_very_many_columns_is_told_in_one_fault_and_at_once() -> None:
    names, faults = read("wearer;" + ";".join(f"m{number}" for number in range(100_000)) + "\nAda;1")
    assert names == []
    assert [fault.code for fault in faults] == ["FB134"]
    names, faults = read(f"{HEADING}\n{BO}\nAda" + ";1" * 100_000)
    assert names == ["Bo"]
    assert [fault.headline for fault in faults] == ["the row of Ada has more than 200 cells"]


@pytest.mark.parametrize("name", ["\u200b", "\u2060 \u200d", "\u0301"])
def test_a_name_that_nobody_can_see_is_no_name(name: str) -> None:
    _, faults = read(f"{HEADING}\n{name};70;96;101;45\n{BO}")
    assert [fault.headline for fault in faults] == ["this row has no wearer"]
