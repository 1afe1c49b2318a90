"""The answers that README.md shows are what the commands answer."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest
from furbelow.verbs.command import run

ROOT = Path(__file__).parents[1]
_ANSWERING = ("why", "fit", "compare", "cutting", "amend", "swatch")
_CALLS = [
    (call, told)
    for block in re.findall(r"^```text\n(.*?)^```", (ROOT / "README.md").read_text("utf-8"), re.MULTILINE | re.DOTALL)
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
