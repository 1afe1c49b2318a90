"""Wearers as read, one or a class, from YAML or a table: the sound ones, and a fault for each of the rest."""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from pathlib import Path

import pytest
from furbelow.diagnose.fault import Staged
from furbelow.garment.wearer import Wearer
from furbelow.s1_read.read_wearers import read_wearers
from furbelow.s1_read.roster import MOST_WEARERS, Known
from hypothesis import example, given, settings
from hypothesis import strategies as st

BO = Path(__file__).parents[2] / "specs" / "wearers" / "bo.yaml"


def told(staged: Staged[tuple[Wearer, ...]]) -> list[tuple[str, dict[str, str]]]:
    return [(wearer.name, {name: value.text for name, value in wearer.body.items()}) for wearer in staged.value or ()]


def table(text: str | bytes) -> Staged[tuple[Wearer, ...]]:
    return read_wearers(("class.csv", text if isinstance(text, bytes) else text.encode()))


def faults(staged: Staged[tuple[Wearer, ...]]) -> list[tuple[str, str]]:
    return [(fault.code, str(fault.primary.span).partition(":")[2]) for fault in staged.faults if fault.primary]


def test_the_demo_wearer() -> None:
    staged = read_wearers(BO)
    assert staged.faults == ()
    assert staged.value is not None
    (bo,) = staged.value
    assert (bo.name, bo.body["hip_girth"].text, bo.choices["fullness"].text) == ("Bo", "109 cm", "2.5")
    assert (bo.span.start_line, bo.span.start_column) == (2, 9)


def test_the_sound_wearers_of_a_class_stay_when_others_are_at_fault() -> None:
    text = """class: Thursday
wearers:
  - {wearer: 1, body: {waist_girth: 84 cm}, choices: {layers: 3}}
  - {wearer: 1, body: {waist_girth: 80 cm}}
  - {wearer: 2, boddy: {waist_girth: 80 cm}}
  - {wearer: 3, body: {waist_girth: 80 cmm}}
  - {wearer: 4, body: {waist_girth: 8,5 cm}}
  - {wearer: 5, body: {waist_girth: 33 in}}
"""
    staged = read_wearers(("class.yaml", text.encode()))
    assert told(staged) == [("1", {"waist_girth": "84 cm"}), ("5", {"waist_girth": "33 in"})]
    assert faults(staged) == [("FB151", "4:14"), ("FB130", "5:17"), ("FB201", "6:40"), ("FB135", "7:43")]


def test_a_file_without_a_sound_wearer_has_no_value() -> None:
    assert read_wearers(("one.yaml", b"wearer: 1\n")).value is None
    assert read_wearers(("none.yaml", b"- x\n")).value is None
    assert table("wearer;waist_girth\n").value is None


@pytest.mark.parametrize("mark", [",", ";", "\t"])
@pytest.mark.parametrize("start", ["", "\ufeff"])
@pytest.mark.parametrize("end", ["\n", "\r\n"])
def test_a_table_with_its_units_in_the_heading_or_the_cell(mark: str, start: str, end: str) -> None:
    rows = [["wearer", "Waist girth (cm)", "hip_girth"], ["7", "84.5", "109 cm"], [], ["Bo, the 2nd", "33 in", ""]]
    text = end.join(mark.join(f'"{cell}"' if mark in cell else cell for cell in row) for row in rows)
    staged = table(start + text + end)
    assert staged.faults == ()
    assert told(staged) == [
        ("7", {"waist_girth": "84.5 cm", "hip_girth": "109 cm"}),
        ("Bo, the 2nd", {"waist_girth": "33 in"}),
    ]


def test_a_decimal_comma_is_read_where_no_comma_parts_the_cells() -> None:
    assert told(table("wearer;waist_girth (cm)\n7;84,5\n8;84,5 cm\n")) == [
        ("7", {"waist_girth": "84.5 cm"}),
        ("8", {"waist_girth": "84.5 cm"}),
    ]


def test_a_decimal_comma_where_commas_part_the_cells_is_a_cell_too_many() -> None:
    staged = table("wearer,waist_girth (cm)\n7,84,5\n8,84\n")
    assert told(staged) == [("8", {"waist_girth": "84 cm"})]
    assert faults(staged) == [("FB151", "2:6")]
    assert staged.faults[0].help == "a decimal comma needs semicolons between the cells"


def test_each_row_at_fault_is_told_and_the_rest_goes_on() -> None:
    staged = table(
        "wearer;waist_girth (cm);hip_girth (cm)\n1;84;x!\n;84;109\n2;84\n 3 ; 84 ; 109 ;;\n3;84;109\n4;84;109;5\n"
        + f"5;{'8' * 201};1\n6;84;109\n"
    )
    assert [name for name, _ in told(staged)] == ["2", "3", "6"]
    assert faults(staged) == [
        ("FB201", "2:7"),
        ("FB151", "3:1"),
        ("FB151", "6:1"),
        ("FB151", "7:10"),
        ("FB151", "8:3"),
    ]


@pytest.mark.parametrize(
    ("heading", "place", "said"),
    [
        ("name;waist_girth", "1:1", "must begin with `wearer`"),
        ("wearer;waist_girth (cmm)", "1:8", "`cmm` is no unit"),
        ("wearer;2nd!", "1:8", "is no name of a measure"),
        ("wearer;hip_girth;hip girth (cm)", "1:18", "`hip_girth` stands twice"),
        ("wearer;;hip_girth", "1:8", "is no name of a measure"),
    ],
)
def test_a_heading_that_can_not_be_used_is_told(heading: str, place: str, said: str) -> None:
    staged = table(f"{heading}\n1;2;3\n")
    assert staged.value is None
    assert faults(staged) == [("FB150", place)]
    assert said in staged.faults[0].headline


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_a_table_is_read_in_the_encodings_of_spreadsheets(encoding: str) -> None:
    staged = table("wearer;waist_girth\nB\u00f6;3 cm\n".encode(encoding))
    assert staged.faults == ()
    assert told(staged) == [("B\u00f6", {"waist_girth": "3 cm"})]


def test_bytes_that_are_no_text_are_told_with_their_line() -> None:
    assert faults(table(b"wearer;waist_girth\nB\x81;3 cm\n")) == [("FB101", "2:1")]


def test_a_line_may_break_inside_quotes_and_places_stay_right() -> None:
    staged = table('wearer;"waist girth\n(cm)";hip_girth (cm)\n"Bo\nthe 2nd";84;109\nCleo;84;x!\n')
    assert told(staged) == [("Bo the 2nd", {"waist_girth": "84 cm", "hip_girth": "109 cm"})]
    assert faults(staged) == [("FB201", "5:10")]


def test_a_quote_that_is_never_closed_takes_its_own_row_alone() -> None:
    staged = table('wearer;waist_girth (cm)\n"Ada;84\nBo;85\n')
    assert [name for name, _ in told(staged)] == ["Bo"]
    assert faults(staged) == [("FB151", "2:1")]


KNOWN = Known(("waist_girth", "hip_girth"), ("fullness", "skirt_length"), ("waist_girth", "hip_girth", "skirt_length"))


def for_a_skirt(text: str) -> Staged[tuple[Wearer, ...]]:
    return read_wearers(("class.csv", text.encode()), KNOWN)


def test_columns_of_choices_numbers_and_notes_are_read_as_such() -> None:
    staged = for_a_skirt(
        "wearer;number;waist_girth (cm);fullness;height (cm);notes;language;workroom\nBo;5;84;2;170;tall;de;home.yaml\n"
    )
    assert staged.faults == ()
    assert staged.value is not None
    (bo,) = staged.value
    assert {name: each.text for name, each in bo.choices.items()} == {"fullness": "2"}
    assert {name: each.text for name, each in bo.body.items()} == {"waist_girth": "84 cm", "height": "170 cm"}
    assert (bo.number, bo.notes) == (5, "tall")
    assert [word.text for word in (bo.language, bo.workroom) if word] == ["de", "home.yaml"]


@pytest.mark.parametrize(
    ("heading", "severity", "said"),
    [
        ("waist_girth (cm);fulness", "error", "did you mean `fullness`?"),
        ("hip_girth (cm);wiast_girth (cm)", "error", "did you mean `waist_girth`?"),
        ("waist_girth (cm);shoes", "error", "the columns may be"),
        # Not far from waist_girth, which has a column of its own.
        ("waist_girth (cm);bust_girth (cm)", "warning", "take it away"),
        ("waist_girth (cm);chest_girth (cm)", "warning", "take it away"),
    ],
)
def test_a_column_that_the_garment_has_no_use_for_is_told(heading: str, severity: str, said: str) -> None:
    staged = for_a_skirt(f"wearer;{heading}\nBo;84;2\n")
    assert [(fault.code, fault.severity.value) for fault in staged.faults] == [("FB150", severity)]
    assert said in (staged.faults[0].help or "")
    assert bool(staged.value) == (severity == "warning")


def test_a_column_without_a_unit_is_told_once_with_the_heading_to_write() -> None:
    staged = for_a_skirt("wearer;waist_girth;fullness\nAda;70;2\nBo;84,5;2\nCleo;90;3\n")
    assert faults(staged) == [("FB150", "1:8")]
    assert "`waist_girth (cm)`" in (staged.faults[0].help or "")


@pytest.mark.parametrize("number", ["0", "-1", "2.5", "A", "5001"])
def test_a_number_that_can_not_mark_pieces_is_told(number: str) -> None:
    assert faults(for_a_skirt(f"wearer;number\nBo;{number}\n")) == [("FB151", "2:4")]


def test_a_table_without_a_line_is_empty() -> None:
    assert faults(table("\n;;\n")) == [("FB109", "1:1")]


def test_a_class_too_large_is_told_and_its_first_rows_are_read() -> None:
    staged = table("wearer;waist_girth\n" + "".join(f"{at};80 cm\n" for at in range(MOST_WEARERS + 3)))
    assert len(staged.value or ()) == MOST_WEARERS
    assert faults(staged) == [("FB134", f"{MOST_WEARERS + 2}:1")]


_CELLS = st.text(st.characters(codec="utf-8", exclude_categories=("Cc", "Cs", "Zl", "Zp")), max_size=12).map(str.strip)


@settings(max_examples=200, deadline=None)
@given(st.lists(st.lists(_CELLS, min_size=1, max_size=4), min_size=1, max_size=4), st.sampled_from([";", ",", "\t"]))
def test_names_come_out_of_a_table_as_the_csv_module_puts_them_in(rows: list[Sequence[str]], mark: str) -> None:
    """Against csv.writer of Python's own library, which follows RFC 4180 (2005)."""
    written = io.StringIO()
    out = csv.writer(written, delimiter=mark, lineterminator="\n", quoting=csv.QUOTE_ALL)
    out.writerow(["wearer", "a", "b", "c"])
    for at, row in enumerate(rows):
        out.writerow([f"{at} {row[0]}"])
    staged = table(written.getvalue())
    assert [name for name, _ in told(staged)] == [f"{at} {row[0]}".strip() for at, row in enumerate(rows)]


@settings(max_examples=200, deadline=None)
@given(st.binary(max_size=60) | st.text(max_size=60).map(lambda text: f"wearer;a (cm)\n{text}".encode()))
@example(b"\x1f")  # a space to Python, and to no eye
def test_no_table_brings_the_reader_down(content: bytes) -> None:
    staged = table(content)
    assert staged.value or staged.faults or content.count(b"\n") <= 1
