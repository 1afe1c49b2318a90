"""Faults as values, and the same faults as text, JSON and SARIF."""

from __future__ import annotations

import json
import re
from pathlib import Path

import jsonschema
import pytest
from furbelow.diagnose.codes import CODES
from furbelow.diagnose.fault import Fault, Label, Severity, Span, Staged, has_errors, in_reading_order
from furbelow.diagnose.report_json import render_json
from furbelow.diagnose.report_sarif import render_sarif
from furbelow.diagnose.report_text import render, tally
from hypothesis import given, settings
from hypothesis import strategies as st

SPEC = """furbelow: 1
pieces:
  upper: {length: 3 m}
  flounce: {length: 608 cm}
steps:
  - gather: {piece: flounce, edge: top, to: 3 m}
"""
CUFF = "size,waist\n12,72\n"


def at(line: int, start: int, end: int, file: str = "larkspur.yaml") -> Span:
    return Span(file, line, start, line, end)


TOO_LONG = Fault(
    "FB401",
    "the flounce is 8 cm longer than the upper tier",
    Label(at(4, 21, 27), "608 cm"),
    (Label(at(3, 19, 22), "300 cm"), Label(at(2, 4, 6, "sizes.csv"), "for this wearer")),
    ("2 * 300 cm = 600 cm", "608 cm - 600 cm = 8 cm"),
    "make the flounce 600 cm",
)
SOURCES = {"larkspur.yaml": SPEC, "sizes.csv": CUFF}


def test_a_fault_is_told_with_its_lines_their_marks_the_sums_and_a_mend() -> None:
    assert render([TOO_LONG], SOURCES) == (
        "error FB401: the flounce is 8 cm longer than the upper tier\n"
        "  larkspur.yaml:4:21\n"
        "      3     upper: {length: 3 m}\n"
        "                            ^^^ 300 cm\n"
        "      4     flounce: {length: 608 cm}\n"
        "                              ^^^^^^ 608 cm\n"
        "  sizes.csv:2:4\n"
        "      2   12,72\n"
        "             ^^ for this wearer\n"
        "  note: 2 * 300 cm = 600 cm\n"
        "  note: 608 cm - 600 cm = 8 cm\n"
        "  mend: make the flounce 600 cm\n"
    )


def test_lines_that_are_left_out_are_marked() -> None:
    fault = Fault("FB105", "twice", Label(at(6, 5, 11)), (Label(at(3, 3, 8), "here first"),))
    assert render([fault], SOURCES) == (
        "error FB105: twice\n"
        "  larkspur.yaml:6:5\n"
        "      3     upper: {length: 3 m}\n"
        "            ^^^^^ here first\n"
        "    ...\n"
        "      6     - gather: {piece: flounce, edge: top, to: 3 m}\n"
        "              ^^^^^^\n"
    )


def test_two_places_in_one_line_have_a_row_each() -> None:
    fault = Fault("FB201", "clash", Label(at(6, 45, 48), "set"), (Label(at(6, 21, 28), "cloth"),))
    rows = render([fault], SOURCES).splitlines()
    assert rows[2].index("flounce") == rows[3].index("^^^^^^^ cloth")
    assert rows[2].index("3 m") == rows[4].index("^^^ set")


def test_a_place_over_several_lines_is_marked_to_the_end_of_its_first() -> None:
    fault = Fault("FB110", "odd", Label(Span("larkspur.yaml", 3, 10, 4, 5), "all this"))
    assert "            ^^^^^^^^^^^^^ all this (to line 4)\n" in render([fault], SOURCES)


def test_a_place_in_an_unknown_file_is_named_without_its_line() -> None:
    fault = Fault("FB620", "row", Label(at(9, 1, 2, "class.csv"), "waist missing"))
    assert render([fault], SOURCES) == "error FB620: row\n  class.csv:9:1\n      9   waist missing\n"


def test_a_fault_without_a_place_is_told_too() -> None:
    assert render([Fault("FB601", "the folder can't be written")], {}) == "error FB601: the folder can't be written\n"


def test_wide_characters_and_tabs_keep_the_marks_in_line() -> None:
    # Source: Unicode Standard Annex 11, "East Asian Width": an emoji takes two columns.
    source = "a:\t😀😀 e\u0301x: wrong"
    start = source.index("wrong") + 1
    rows = render([Fault("FB104", "x", Label(at(1, start, start + 5)))], {"larkspur.yaml": source}).splitlines()
    shown, marks = rows[2], rows[3]
    columns = shown.index("wrong") + 2 - 1  # two emoji take a column more each, the accent takes none
    assert marks == " " * columns + "^^^^^"


def test_a_long_line_is_shown_around_its_place() -> None:
    source = "x" * 300 + "HERE" + "y" * 300
    rows = render([Fault("FB104", "x", Label(at(1, 301, 305)))], {"larkspur.yaml": source}).splitlines()
    assert len(rows[2]) < 130
    assert rows[2].count("…") == 2
    assert rows[2].index("HERE") == rows[3].index("^^^^")


def test_no_text_can_steer_the_terminal() -> None:
    source = "a: \x1b[31mred\x07\u202eback"
    fault = Fault("FB104", "bad \x1b[2J", Label(at(1, 4, 8), "\x9b"), notes=("\x00",), help="\u2066")
    told = render([fault], {"larkspur.yaml": source})
    assert not re.search("[\x00-\x09\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]", told)


def test_colour_only_adds_to_the_text() -> None:
    plain = render([TOO_LONG], SOURCES)
    coloured = render([TOO_LONG], SOURCES, colour=True)
    assert coloured != plain
    assert re.sub("\x1b\\[[0-9]+m", "", coloured) == plain


def test_faults_are_told_in_reading_order_and_once() -> None:
    first, second = Fault("FB105", "a", Label(at(2, 1, 2))), Fault("FB104", "b", Label(at(2, 5, 6)))
    lost = Fault("FB601", "c")
    assert in_reading_order([second, first, lost, first]) == (lost, first, second)
    assert render([second, first, lost], {}).count("error") == 3
    assert render([], {}) == ""


def test_the_tally_counts_by_severity() -> None:
    warning = Fault("FB402", "w", severity=Severity.WARNING)
    assert tally([TOO_LONG, warning, TOO_LONG]) == "2 errors, 1 warning"
    assert tally([]) == "no faults"


def test_a_stage_is_ok_with_a_value_and_no_error() -> None:
    warning = Fault("FB402", "w", severity=Severity.WARNING)
    assert Staged(1).ok
    assert Staged(0, (warning,)).ok
    assert not Staged(1, (warning, TOO_LONG)).ok
    assert not Staged(None).ok
    assert not has_errors([warning])


def test_a_part_of_a_place_stays_inside_it() -> None:
    place = at(4, 21, 27)
    assert place.inside(4, 2) == at(4, 25, 27)
    assert place.inside(4, 20) == at(4, 25, 27)
    assert place.inside(90, 1) == at(4, 27, 27)
    long = Span("larkspur.yaml", 3, 1, 4, 2)
    assert long.inside(1, 1) == long


def test_every_code_is_well_formed_and_has_a_meaning() -> None:
    for code, meaning in CODES.items():
        assert re.fullmatch(r"FB[1-7]\d\d", code)
        assert meaning
        assert not meaning.endswith(".")


def test_json_holds_everything() -> None:
    told = json.loads(render_json([TOO_LONG, Fault("FB601", "c")]))
    assert told["furbelow"] == 1
    assert [fault["code"] for fault in told["faults"]] == ["FB601", "FB401"]
    fault = told["faults"][1]
    assert fault["severity"] == "error"
    assert fault["headline"] == TOO_LONG.headline
    assert fault["notes"] == list(TOO_LONG.notes)
    assert fault["help"] == TOO_LONG.help
    assert fault["place"] == {
        "file": "larkspur.yaml",
        "start": {"line": 4, "column": 21},
        "end": {"line": 4, "column": 27},
        "label": "608 cm",
    }
    assert [other["file"] for other in fault["others"]] == ["larkspur.yaml", "sizes.csv"]


@pytest.fixture(scope="module")
def sarif_validator() -> jsonschema.Draft4Validator:
    # Source: the published JSON schema of OASIS SARIF 2.1.0, unchanged.
    schema = Path(__file__).parents[1] / "data" / "sarif-2.1.0-rtm.5.json"
    return jsonschema.Draft4Validator(json.loads(schema.read_text("utf-8")))


def test_sarif_holds_to_its_published_schema(sarif_validator: jsonschema.Draft4Validator) -> None:
    note = Fault("FB402", "n", Label(at(1, 1, 1, "my specs\\ä b.yaml")), severity=Severity.NOTE)
    log = json.loads(render_sarif([TOO_LONG, note, Fault("FB601", "c")], "0.1"))
    sarif_validator.validate(log)
    sarif_validator.validate(json.loads(render_sarif([], "0.1")))
    run = log["runs"][0]
    assert [result["ruleId"] for result in run["results"]] == ["FB601", "FB401", "FB402"]
    rules = [rule["id"] for rule in run["tool"]["driver"]["rules"]]
    assert [rules[result["ruleIndex"]] for result in run["results"]] == ["FB601", "FB401", "FB402"]
    assert [result["level"] for result in run["results"]] == ["error", "error", "note"]
    told = run["results"][1]
    assert told["message"]["text"].splitlines() == [TOO_LONG.headline, *TOO_LONG.notes, TOO_LONG.help]
    assert told["locations"][0]["physicalLocation"]["region"]["startColumn"] == 21
    assert [other["id"] for other in told["relatedLocations"]] == [1, 2]
    place = run["results"][2]["locations"][0]["physicalLocation"]
    assert place["artifactLocation"]["uri"] == "my%20specs/%C3%A4%20b.yaml"
    broken = {**log, "version": "2.0.0"}
    with pytest.raises(jsonschema.ValidationError):
        sarif_validator.validate(broken)


SPANS = st.builds(
    lambda file, line, column, lines, columns: Span(file, line, column, line + lines, column + columns),
    st.sampled_from(["larkspur.yaml", "sizes.csv", "none.yaml"]),
    st.integers(1, 12),
    st.integers(1, 200),
    st.integers(0, 2),
    st.integers(0, 200),
)
LABELS = st.builds(Label, SPANS, st.text(max_size=12))
FAULTS = st.builds(
    Fault,
    st.sampled_from(sorted(CODES)),
    st.text(min_size=1, max_size=30),
    st.none() | LABELS,
    st.lists(LABELS, max_size=3).map(tuple),
    st.lists(st.text(max_size=20), max_size=2).map(tuple),
    st.none() | st.text(max_size=20),
    st.sampled_from(Severity),
)


@settings(max_examples=100, deadline=None)
@given(st.lists(FAULTS, max_size=4), st.text(max_size=200))
def test_any_fault_can_be_told(faults: list[Fault], source: str) -> None:
    told = render(faults, {"larkspur.yaml": source, "sizes.csv": CUFF})
    assert told.count("\n\n") >= len(set(faults)) - 1
    assert not re.search("[\x00-\x09\x0b-\x1f\x7f-\x9f]", told)
    assert len(json.loads(render_json(faults))["faults"]) == len(set(faults))
    assert len(json.loads(render_sarif(faults, "1"))["runs"][0]["results"]) == len(set(faults))
