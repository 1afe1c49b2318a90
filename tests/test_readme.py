"""The answers that README.md shows are what the commands answer."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest
from furbelow.verbs.command import run

ROOT = Path(__file__).parents[1]
_README = (ROOT / "README.md").read_text("utf-8")
_ANSWERING = ("why", "fit", "compare", "cutting", "amend", "swatch")
_CALLS = [
    (call, told)
    for block in re.findall(r"^```text\n(.*?)^```", _README, re.MULTILINE | re.DOTALL)
    for call, told in re.findall(r"^\$ furbelow ([^\n]*)\n([^$]*)", block)
    if call.split()[0] in _ANSWERING and "--out" not in call
]


def test_every_verb_that_answers_is_shown() -> None:
    assert {call.split()[0] for call, _ in _CALLS} == set(_ANSWERING)


@pytest.mark.parametrize(("call", "told"), _CALLS, ids=[call for call, _ in _CALLS])
def test_a_command_answers_as_the_page_shows(
    call: str, told: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(ROOT)
    assert run(shlex.split(call)) == 0
    answer = iter(capsys.readouterr().out.splitlines())
    shown = [line for line in told.splitlines() if line.strip() not in ("", "...")]
    assert len(shown) > 2
    for line in shown:  # in this order; what lies between is left out on the page
        assert line in answer, line


def _shown(call: str) -> list[str]:
    """What README.md shows below a call, up to the next one."""
    found = re.search(rf"^\$ {re.escape(call)}\n([^$`]*(?:`[^`\n]+`[^$`]*)*)", _README, re.MULTILINE)
    assert found, call
    return [line for line in found[1].splitlines() if line.strip() not in ("", "...")]


def test_what_is_told_of_a_broken_spec_is_what_the_page_shows(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    rows = (ROOT / "specs" / "larkspur.yaml").read_text("utf-8").splitlines(keepends=True)
    left = [row for row in rows if row != "  - gather: {edge: flounce.top, to: upper.bottom}\n"]
    assert len(left) == len(rows) - 1
    Path("broken.yaml").write_text("".join(left), "utf-8")
    assert run(["check", "broken.yaml"]) == 1
    told = capsys.readouterr()
    answer = [*told.err.splitlines(), *told.out.splitlines()]
    shown = _shown("furbelow check broken.yaml")
    assert shown == answer[: len(shown)]


def test_the_guide_tells_its_reasons_as_the_page_shows(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(ROOT)
    out = str(tmp_path / "guide")
    assert run(["make", "specs/larkspur.yaml", "--size", "M", "--no-pdf", "--out", out]) == 0
    assert _shown("furbelow make specs/larkspur.yaml --size M --out guide") == ["size M: guide/guide.html"]
    assert capsys.readouterr().out == f"size M: {out}/guide.html\n"
    said = (tmp_path / "guide" / "guide.md").read_text("utf-8").splitlines()
    shown = _shown('grep -A2 "cut depth of the flounce" guide/guide.md')
    at = next(at for at, line in enumerate(said) if "cut depth of the flounce" in line)
    assert shown == said[at : at + 3]
