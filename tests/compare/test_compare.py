"""What changes for the maker: told once, with both numbers, and nothing where nothing changes."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from furbelow.compare.compare import Comparison, as_data, as_text, compare, words_of
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import parse_quantity
from furbelow.order.chain import Planned, plan, prove
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.verbs.command import run

from tests.demos.demos import NAMES, SPECS, order, spec, theatre


def _planned(name: str, size: str, room: Workroom | None = None) -> Planned:
    proved = prove(order(name, size, room)).value
    assert proved is not None
    planned = plan(proved).value
    assert planned is not None
    return planned


def _rewritten(name: str, size: str, *changes: tuple[str, str]) -> Planned:
    """The demo with some of its text replaced."""
    text = (SPECS / f"{name}.yaml").read_text(encoding="utf-8")
    for old, new in changes:
        assert old in text
        text = text.replace(old, new)
    garment = read_spec((f"{name}.yaml", text.encode())).value
    assert garment is not None
    proved = prove(Order(garment, f"size {size}", garment.sizes[size], {}, Workroom())).value
    assert proved is not None
    planned = plan(proved).value
    assert planned is not None
    return planned


def _between(one: Planned, other: Planned) -> Comparison:
    return compare(one, other, "before", "after")


@pytest.mark.parametrize("name", NAMES)
def test_a_garment_beside_itself_changes_nothing(name: str) -> None:
    size = next(iter(spec(name).sizes))
    planned = _planned(name, size)
    found = _between(_planned(name, size), planned)
    assert found.alike
    assert "nothing changes for the maker" in as_text(found, words_of(planned))


def test_the_numbers_of_two_sizes_are_told_with_their_difference() -> None:
    numbers = {change.name: change for change in _between(_planned("larkspur", "M"), _planned("larkspur", "L")).numbers}
    assert (numbers["waist_girth"].before, numbers["waist_girth"].after, numbers["waist_girth"].by) == (
        "78 cm",
        "88 cm",
        "+10 cm",
    )
    assert numbers["waistband.cut_length"].by == "+20 cm"
    assert "upper.length" not in numbers  # the same in every size
    for change in numbers.values():
        before, after, by = (parse_quantity(text) for text in (change.before, change.after, change.by.lstrip("+")))
        assert before + by == after  # type: ignore[operator]


def test_the_way_back_is_the_opposite() -> None:
    there = _between(_planned("foxglove", "A"), _planned("foxglove", "E"))
    back = _between(_planned("foxglove", "E"), _planned("foxglove", "A"))
    assert [(c.name, c.before, c.after) for c in there.numbers] == [(c.name, c.after, c.before) for c in back.numbers]
    assert [(c.before, c.after) for c in there.materials] == [(c.after, c.before) for c in back.materials]
    assert [(s.title, s.gone) for s in there.steps] == [(s.title, s.come) for s in back.steps]


def test_a_step_that_is_new_and_one_that_is_gone_are_told_as_such() -> None:
    without = _rewritten("larkspur", "M", ("  - starch: {piece: flounce, with: starch}\n", ""))
    found = _between(without, _planned("larkspur", "M"))
    assert [(step.kind, step.title) for step in found.steps] == [("new", "Stiffen the flounce")]
    assert [(step.kind, step.title) for step in _between(_planned("larkspur", "M"), without).steps] == [
        ("gone", "Stiffen the flounce")
    ]


def test_a_changed_seam_shows_in_the_step_and_in_the_cut_size() -> None:
    wider = _rewritten(
        "foxglove",
        "C",
        (
            "attach: {edge: flounce.top, to: panel.bottom, seam: 1 cm}",
            "attach: {edge: flounce.top, to: panel.bottom, seam: 15 mm}",
        ),
    )
    found = _between(_planned("foxglove", "C"), wider)
    assert {change.name: change.by for change in found.numbers} == {
        "panel.cut_depth": "+5 mm",
        "flounce.cut_depth": "+5 mm",
    }
    changed = next(step for step in found.steps if step.title.startswith("Sew the flounce"))
    assert any("1 cm from the edge" in line for line in changed.gone)
    assert any("1.5 cm from the edge" in line for line in changed.come)


def test_another_workroom_changes_the_work_and_no_number() -> None:
    found = _between(_planned("marigold", "16"), _planned("marigold", "16", theatre()))
    assert found.numbers == ()
    neaten = [step for step in found.steps if any("verlock" in line for line in step.come)]
    assert neaten


def test_sentences_that_differ_in_a_measure_are_told_once_with_both() -> None:
    told = as_text(_between(_planned("larkspur", "M"), large := _planned("larkspur", "L")), words_of(large))
    assert "    Measure round the lower edge of the lining: 156 cm -> 176 cm." in told
    assert not re.search(r"^    [-+] ", told, re.MULTILINE)  # every sentence of these two finds its other half


def test_the_command_compares_two_sizes_and_two_files(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    first = str(SPECS / "marigold.yaml")
    assert run(["compare", first, "--size", "12", "--size", "16", "--format", "json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["after"] == "size 16"
    assert [change["name"] for change in told["numbers"]][:2] == ["waist_girth", "hip_girth"]
    second = tmp_path / "marigold.yaml"
    second.write_text(
        (SPECS / "marigold.yaml").read_text(encoding="utf-8").replace("7.50 EUR/yd", "9 EUR/yd"), encoding="utf-8"
    )
    assert run(["compare", first, str(second), "--size", "16"]) == 0
    out = capsys.readouterr().out
    assert "lawn.price  7.50 EUR/yd -> 9.00 EUR/yd" in out
    assert "steps" not in out
    assert run(["compare", first]) == 2
    assert "say for whom: --size NAME (sizes: 8, 12, 16, 20, 24)" in capsys.readouterr().err


def test_the_data_hold_what_the_text_tells() -> None:
    found = _between(_planned("marigold", "8"), _planned("marigold", "24"))
    data = as_data(found)
    assert len(data["numbers"]) == len(found.numbers)
    assert json.loads(json.dumps(data))["steps"][0]["kind"] == "changed"
