"""A garment tried by its choices: controls within their ranges, and what the garment so chosen takes."""

from __future__ import annotations

import http.client
import json
import shlex
from fractions import Fraction
from pathlib import Path
from typing import Any
from urllib.parse import quote

import pytest
from furbelow.measure.quantity import parse_quantity
from furbelow.order.chain import planned
from furbelow.order.read_order import Asked, OrderReader
from furbelow.preview.trial import Control, Trials, Tried
from furbelow.s5_buy.amounts import amounts

from tests.preview.running import SPECS, call, running

LARKSPUR = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")


@pytest.fixture
def spec(tmp_path: Path) -> Path:
    file = tmp_path / "larkspur.yaml"
    file.write_text(LARKSPUR, encoding="utf-8")
    return file


def controls(tried: Tried) -> dict[str, Control]:
    return {control.name: control for control in tried.controls}


def rows(tried: Tried) -> dict[str, str]:
    return {row.label: row.value for row in tried.rows}


def test_every_choice_is_a_control_within_its_range(spec: Path) -> None:
    found = controls(Trials(call(spec)).of("M", []))
    assert list(found) == ["layers", "fullness", "skirt_length", "clearance"]
    assert found["layers"].values == ("1", "2", "3", "4")
    assert found["layers"].listed
    assert (found["fullness"].values[0], found["fullness"].values[-1]) == ("1.5", "3")
    assert not found["fullness"].listed
    assert (found["skirt_length"].values[0], found["skirt_length"].values[-1]) == ("40 cm", "75 cm")


def test_a_changed_file_that_the_spec_is_built_on_is_read_anew(spec: Path) -> None:
    over = spec.with_name("over.yaml")
    over.write_text("furbelow: 1\nbased on: larkspur.yaml\n", encoding="utf-8")
    trials = Trials(Asked(str(over)))
    assert controls(trials.of("M", []))["layers"].values == ("1", "2", "3", "4")
    spec.write_text(LARKSPUR.replace("    to: 4\n    step: 1", "    to: 3\n    step: 1"), encoding="utf-8")
    assert controls(trials.of("M", []))["layers"].values == ("1", "2", "3")


def test_a_control_stands_where_the_spec_has_its_choice_until_it_is_moved(spec: Path) -> None:
    trials = Trials(call(spec))
    # 104 cm of waist height less 46 cm to the knee and 5 cm: 53 cm.
    first = controls(trials.of("M", []))["skirt_length"]
    assert first.values[first.now] == "53 cm"
    moved = controls(trials.of("M", ["skirt_length=61 cm"]))["skirt_length"]
    assert moved.values[moved.now] == "61 cm"
    # 105 less 47 and 5.
    large = controls(trials.of("L", []))["skirt_length"]
    assert large.values[large.now] == "53 cm"


@pytest.mark.parametrize("chosen", [(), ("layers=3",), ("fullness=2.6", "layers=1")])
def test_what_is_told_of_a_choice_is_what_the_plan_of_that_garment_says(spec: Path, chosen: tuple[str, ...]) -> None:
    told = rows(Trials(call(spec)).of("M", chosen))
    found = planned(OrderReader().orders(call(spec, size="M", choices=chosen))[0]).value
    assert found is not None
    needs = amounts(found.shopping)
    net = parse_quantity(told["net"])
    # The shop's metres are told to the centimetre, never less than is needed.
    assert 0 <= net.value - needs["net"].value < 10  # type: ignore[union-attr]
    assert told["Materials"] == f"{float(needs['cost'].value):.2f} EUR"
    hours = needs["hours"].value
    assert told["Work"].startswith(f"{int(hours)} h")
    assert told["Proofs"].startswith("all ")
    assert "g" in told["Weight"]


def test_more_layers_take_more_of_everything_and_draw_another_picture(spec: Path) -> None:
    trials = Trials(call(spec))
    two, four = trials.of("M", ["layers=2"]), trials.of("M", ["layers=4"])
    net = [parse_quantity(rows(tried)["net"]).value for tried in (two, four)]  # type: ignore[union-attr]
    assert net[1] > Fraction(19, 10) * net[0]
    assert two.picture != four.picture
    assert "2 layers alike" in two.alt
    assert "4 layers alike" in four.alt


def test_the_command_makes_the_garment_that_is_shown(spec: Path) -> None:
    command = Trials(call(spec)).of("M", ["layers=3", "skirt_length=61 cm"]).command
    assert shlex.split(command) == [
        "furbelow",
        "make",
        str(spec),
        "--size",
        "M",
        "--set",
        "layers=3",
        "--set",
        "skirt_length=61 cm",
        "--out",
        "guide",
    ]


def test_what_the_call_chose_is_in_the_command_unless_a_control_was_moved_since(spec: Path) -> None:
    trials = Trials(call(spec, choices=["layers=1", "fullness=2.5"]))
    command = shlex.split(trials.of("M", ["layers=4"]).command)
    assert [command[at + 1] for at, word in enumerate(command) if word == "--set"] == ["layers=4", "fullness=2.5"]


def test_a_garment_that_can_not_be_made_so_says_why_and_keeps_its_controls(spec: Path) -> None:
    # 40 cm of skirt on 15 cm of upper tier leaves a flounce of 22 cm; a tier of 25 cm is deeper than that.
    spec.write_text(LARKSPUR.replace("    depth: 15 cm\n", "    depth: 25 cm\n"), encoding="utf-8")
    tried = Trials(call(spec)).of("M", ["skirt_length=45 cm"])
    assert tried.rows == ()
    assert "will not dance" in tried.report
    assert controls(tried)["skirt_length"].values


def test_a_spec_at_fault_is_told_and_a_mended_one_is_read_again(spec: Path) -> None:
    trials = Trials(call(spec))
    spec.write_text(LARKSPUR.replace("piece: lining}", "piece: linning}"), encoding="utf-8")
    assert "no piece is called `linning`" in trials.of("M", []).report
    spec.write_text(LARKSPUR, encoding="utf-8")
    assert trials.of("M", []).rows


@pytest.mark.parametrize(
    "chosen", ["layers", "layers=", "layers=9", "layers=1/0", "nothing=2", "layers=2 cm", "=", "\x00"]
)
def test_an_odd_choice_is_told_and_ends_nothing(spec: Path, chosen: str) -> None:
    trials = Trials(call(spec))
    assert trials.of("M", [chosen]).report
    assert trials.of("M", []).rows


@pytest.mark.parametrize("language", ["de", "fr", "es"])
def test_the_page_speaks_the_language_of_the_guide(spec: Path, language: str) -> None:
    told, english = Trials(call(spec, language=language)).of("M", []), Trials(call(spec)).of("M", [])
    assert told.language == language
    assert told.labels != english.labels
    assert told.picture == english.picture
    assert f"--language {language}" in told.command


def test_it_is_asked_for_by_its_address(spec: Path) -> None:
    def ask(path: str) -> Any:
        connection = http.client.HTTPConnection("127.0.0.1", port, timeout=30)
        connection.request("GET", path)
        answer = connection.getresponse()
        assert answer.status == 200
        assert answer.getheader("Content-Type") == "application/json; charset=utf-8"
        found = json.loads(answer.read())
        connection.close()
        return found

    with running(spec) as (_, port):
        tried = ask(f"/try?size=M&set={quote('skirt_length=61 cm')}&set=layers=4")
        assert "'skirt_length=61 cm'" in tried["command"]
        assert tried["picture"].startswith("<svg")
        assert ask("/try")["size"] == "XS"
        assert ask("/try?size=%00&set=&set=x")["report"]
