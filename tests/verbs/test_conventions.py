"""What every verb has in common: its examples work after an install, its JSON has one head, options mean the same."""

from __future__ import annotations

import io
import json
import os
import re
import shlex
import signal
import subprocess
import sys
from collections.abc import Iterator, Mapping
from fractions import Fraction
from importlib import import_module
from pathlib import Path

import pytest
from furbelow.verbs.command import _VERBS, parser_for, run
from jsonschema import Draft202012Validator

SPECS = Path(__file__).parents[2] / "specs"
LARKSPUR, CLASS = str(SPECS / "larkspur.yaml"), str(SPECS / "wearers" / "class.yaml")


_TRIED_ELSEWHERE = {"preview", "words"}


def _examples() -> list[str]:
    modules = [import_module(f"furbelow.verbs.{verb.replace('-', '_')}") for verb in _VERBS]
    found = [line for module in modules for line in re.findall(r"^  (furbelow .*)$", module._EPILOG, re.M)]
    # `preview` has no end, and `words` checks a folder of ones own, which its own tests do.
    return [line for line in found if line.split()[1] not in _TRIED_ELSEWHERE]


def test_every_verb_has_an_example() -> None:
    assert {line.split()[1] for line in _examples()} == set(_VERBS) - _TRIED_ELSEWHERE


@pytest.mark.parametrize("line", _examples())
def test_an_example_of_the_help_works_as_it_stands(line: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    if not line.startswith("furbelow start"):
        assert run(["start", "larkspur", "--from", "larkspur"]) == 0
    arguments = shlex.split(line)[1:]
    if "*.yaml" in arguments:
        arguments[arguments.index("*.yaml")] = "larkspur.yaml"
    assert run(arguments) == 0


@pytest.mark.parametrize("place", [0, 1])
def test_debug_may_stand_before_or_after_the_verb(place: int, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise ZeroDivisionError

    monkeypatch.setattr("furbelow.order.checked.prove_each", broken)
    arguments = ["check", LARKSPUR]
    assert run(arguments) == 3
    arguments.insert(place, "--debug")
    with pytest.raises(ZeroDivisionError):
        run(arguments)


@pytest.mark.parametrize(
    "verb",
    [
        ["make", "--out", "out"],
        ["cutting"],
        ["why", "weight"],
        ["fit", "--free", "layers"],
        ["amend"],
        ["compare"],
        ["preview"],
    ],
)
def test_without_a_body_a_verb_lists_the_sizes(
    verb: list[str], capsys: pytest.CaptureFixture[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    measured = ["--measured", str(SPECS / "records" / "larkspur-m.yaml")] if verb[0] == "amend" else []
    assert run([verb[0], LARKSPUR, *verb[1:], *measured]) == 2
    assert "--size NAME (sizes: XS, S, M, L, XL)" in capsys.readouterr().err


@pytest.mark.parametrize("verb", [["why", "weight"], ["fit", "--free", "layers"], ["compare"]])
def test_a_verb_for_one_body_asks_which_of_a_class(verb: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    call = [verb[0], LARKSPUR, *verb[1:], "--class", CLASS]
    assert run(call) == 2
    assert "--only NAME (Ada, Bo, Cleo" in capsys.readouterr().err
    assert run([*call, "--only", "Bo"]) == 0
    assert run([*call, "--only", "Boo"]) == 2
    assert "did you mean Bo?" in capsys.readouterr().err


def test_only_takes_some_of_a_class(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["check", LARKSPUR, "--class", CLASS, "--only", "Bo", "--only", "Ada"]) == 0
    assert "proved for 2 bodies" in capsys.readouterr().out
    assert run(["check", LARKSPUR, "--only", "Bo"]) == 2


def test_check_takes_many_and_standard_input(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    given = io.TextIOWrapper(io.BytesIO((SPECS / "foxglove.yaml").read_bytes()))
    monkeypatch.setattr("sys.stdin", given)
    broken = tmp_path / "broken.yaml"
    broken.write_text("furbelow: 1\n")
    assert run(["check", LARKSPUR, "-", str(broken)]) == 1
    told = capsys.readouterr()
    assert [line.partition(":")[0] for line in told.out.splitlines()] == [LARKSPUR, "-"]
    assert str(broken) in told.err


def test_a_warning_fails_a_strict_check(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    spec = tmp_path / "larkspur.yaml"
    text = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")
    warned = text.replace(
        "  thread:",
        "  spare_net: {kind: cloth, fibre: polyester, width: 140 cm, weight: 20 g/m2, ravels: no}\n  thread:",
        1,
    )
    spec.write_text(warned, encoding="utf-8")
    assert run(["check", str(spec)]) == 0
    assert "warning" in capsys.readouterr().err
    assert run(["check", str(spec), "--strict"]) == 1
    assert run(["check", LARKSPUR, "--strict"]) == 0


JSON = [
    ["check", LARKSPUR],
    ["check", "nowhere.yaml"],
    ["make", LARKSPUR, "--size", "M", "--no-pdf", "--out", "guide"],
    ["make", LARKSPUR, "--class", CLASS, "--only", "Bo", "--only", "Ada", "--no-pdf", "--out", "class"],
    ["make", LARKSPUR, "--size", "Q", "--out", "guide"],
    ["cutting", LARKSPUR, "--size", "M"],
    ["cutting", LARKSPUR],
    ["why", LARKSPUR, "flounce.depth", "--size", "M"],
    ["cutting", str(SPECS / "foxglove.yaml"), "--size", "C"],
    ["why", LARKSPUR, "weight", "--size", "M"],
    ["why", LARKSPUR, "net.price", "--size", "M"],
    ["why", LARKSPUR, "nothing", "--size", "M"],
    ["fit", LARKSPUR, "--size", "M", "--free", "layers", "--so-that", "net <= 9 m"],
    ["fit", LARKSPUR, "--size", "M", "--free", "fullness", "--so-that", "net <= 2 m", "--so-that", "cost <= 9 EUR"],
    ["fit", LARKSPUR, "--size", "M", "--free", "layer"],
    ["amend", LARKSPUR, "--size", "M", "--measured", str(SPECS / "records" / "larkspur-m.yaml")],
    ["amend", LARKSPUR, "--size", "M", "--measured", "nowhere.yaml"],
    ["compare", LARKSPUR, "--size", "M", "--size", "L"],
    ["compare", str(SPECS / "marigold.yaml"), "--size", "16", "--set-second", "fullness=2"],
    ["compare", LARKSPUR, str(SPECS / "foxglove.yaml"), "--wearer", CLASS, "--only", "Bo"],
    ["compare", LARKSPUR, "--size", "M", "--size", "Q"],
    ["swatch", str(SPECS / "swatches" / "pleating.yaml")],
    ["swatch", str(SPECS / "swatches" / "pleating.yaml"), "--cloth", "net", "--ratio", "2"],
    ["swatch", str(SPECS / "swatches" / "stiffness.yaml")],
    ["swatch", "nowhere.yaml"],
    ["make", LARKSPUR, "--size", "M", "--out", " "],
    ["make", LARKSPUR, "--every-size", "--size", "M", "--out", "guide"],
    ["make", LARKSPUR, "--every-size", "--demonstration", "--out", "guide"],
    ["words"],
    ["words", "--list", "gather"],
    ["words", "--list", "gahter"],
    ["words", "--list", "gather", "--language", "xx"],
    ["words", "--missing", "de"],
    ["words", "--check", "nowhere"],
    ["explain-code"],
    ["explain-code", "fb304"],
    ["explain-code", "FB999"],
    ["start", "tansy", "--from", "larkspur"],
    ["start", "tansy", "--from", "larkspu"],
    ["start", "no/where"],
    ["fmt", "--check", LARKSPUR],
    ["fmt", "--check", "nowhere.yaml"],
    ["preview", LARKSPUR],
    ["preview", "nowhere.yaml"],
]


@pytest.mark.parametrize("verb", _VERBS)
def test_every_verb_answers_in_json(verb: str) -> None:
    parser = parser_for([verb])
    ((_, one),) = parser._subparsers._group_actions[0].choices.items()  # type: ignore[union-attr] # argparse has no public way
    (form,) = [action for action in one._actions if "--format" in action.option_strings]
    assert "json" in form.choices
    assert verb in {call[0] for call in JSON}


def test_a_call_that_is_wrong_ends_in_one_place() -> None:
    """So that who asked for JSON is told why, whatever the verb."""
    for path in (SPECS.parent / "compiler" / "furbelow" / "verbs").glob("*.py"):
        if path.name not in ("command.py", "exits.py"):
            assert "WRONG_USE" not in path.read_text(encoding="utf-8"), path.name


def _objects(rule: object) -> Iterator[Mapping[str, object]]:
    if isinstance(rule, dict):
        if rule.get("type") == "object":
            yield rule
        for inner in rule.values():
            yield from _objects(inner)
    elif isinstance(rule, list):
        for inner in rule:
            yield from _objects(inner)


def test_the_schema_of_answers_lets_no_key_pass_that_it_does_not_name() -> None:
    schema = json.loads((SPECS.parent / "schemas" / "answer.schema.json").read_text(encoding="utf-8"))
    assert schema["unevaluatedProperties"] is False
    inner = [rule for each in schema["$defs"].values() for rule in _objects(each)]
    assert len(inner) > 15
    assert [rule for rule in inner if "additionalProperties" not in rule] == []


def test_lengths_are_told_one_way(capsys: pytest.CaptureFixture[str]) -> None:
    """mm as numbers, in a garment of inches too: 1 in = 25.4 mm. Source: NIST Special Publication 811 (2008), B.8."""
    assert run(["why", str(SPECS / "marigold.yaml"), "waist_girth", "--size", "16", "--format", "json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["lengths"] == "mm"
    assert told["value"]["unit"] == "mm"
    assert told["value"]["number"] == pytest.approx(float(Fraction(told["value"]["shown"].removesuffix(" in"))) * 25.4)


@pytest.mark.parametrize("call", JSON)
def test_the_json_of_every_verb_is_as_its_schema_says(
    call: list[str], capsys: pytest.CaptureFixture[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    schema = json.loads((SPECS.parent / "schemas" / "answer.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    code = run([*call, "--format", "json"])
    told = json.loads(capsys.readouterr().out)
    validator.validate(told)
    assert told["furbelow"] == 1
    assert told["verb"] == call[0]
    errors = [fault for fault in told["faults"] if fault["severity"] == "error"]
    # Where a fit finds nothing that keeps the limits, its nearest miss is the answer.
    changed = any(one["how"] == "would be laid out anew" for one in told.get("files", []) if call[0] == "fmt")
    assert bool(errors or told.get("said") or told.get("best", "") is None or changed) is (code != 0)


def test_a_preview_answers_with_its_address(tmp_path: Path) -> None:
    """Standing alone: it goes on until it is stopped."""
    call = [sys.executable, "-m", "furbelow", "preview", LARKSPUR, "--size", "M", "--format", "json"]
    with subprocess.Popen(call, stdout=subprocess.PIPE, text=True) as running:
        assert running.stdout is not None
        lines = []
        for line in running.stdout:
            lines.append(line)
            if line == "}\n":
                break
        running.send_signal(signal.SIGINT)
        try:
            running.wait(timeout=60)
        finally:
            running.kill()
    told = json.loads("".join(lines))
    schema = json.loads((SPECS.parent / "schemas" / "answer.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator(schema).validate(told)
    assert re.fullmatch(r"http://127\.0\.0\.1:[0-9]+/", told["address"])


def test_a_shell_is_told_how_the_line_may_go_on(tmp_path: Path) -> None:
    line, answer = "furbelow check --st", tmp_path / "answer"
    asked = {
        "_ARGCOMPLETE": "1",
        "COMP_LINE": line,
        "COMP_POINT": str(len(line)),
        "_ARGCOMPLETE_STDOUT_FILENAME": str(answer),
    }
    subprocess.run([sys.executable, "-m", "furbelow"], env={**os.environ, **asked}, check=True)
    assert answer.read_text().split() == ["--strict"]


def test_an_empty_folder_for_the_guide_is_no_folder(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["make", LARKSPUR, "--size", "M", "--out", " "]) == 2
    assert "--out names no folder" in capsys.readouterr().err
