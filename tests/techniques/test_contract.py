"""A slip in a word of a technique's contract is found by the type checker or when the file is loaded, never by a maker."""

from __future__ import annotations

import re
import sys
from collections.abc import Mapping
from pathlib import Path
from types import ModuleType

import pytest
from furbelow.garment.technique import Kind, Parameter, Picture
from furbelow.techniques import techniques
from mypy import api

ROOT = Path(__file__).parents[2]

SLIPS = {
    "a set-up": ('Performed(step, bench, bench, (), setup="zig zag")', "SetUp"),
    "a stitch": ('Sewn("3044", Fraction(1), 1, Fraction(2))', "StitchType"),
    "a caution": ('Caution("scissors", "shears-caution")', "CautionKind"),
    "a tool": ('Instructions("title", "aim", (), tools=("iron pan",))', "Tool"),
    "a kind": ('Parameter("The edge.", "edgee")', "Kind"),
    "a supply": ('Parameter("The tape.", Kind.MATERIAL, supplies=("tape",))', "SupplyKind"),
}
SNIPPET = """\
from fractions import Fraction
from furbelow.garment.bench import Bench
from furbelow.garment.solved import SolvedStep
from furbelow.garment.technique import Caution, Instructions, Kind, Parameter, Performed, Sewn

def slips(step: SolvedStep, bench: Bench) -> None:
"""


@pytest.fixture(scope="module")
def told(tmp_path_factory: pytest.TempPathFactory) -> list[str]:
    """What mypy says of all slips together, by our own settings; its own cache makes it quick."""
    path = tmp_path_factory.mktemp("slips") / "slips.py"
    path.write_text(SNIPPET + "".join(f"    {slip}\n" for slip, _ in SLIPS.values()))
    found, _, code = api.run(["--config-file", str(ROOT / "pyproject.toml"), "--no-error-summary", str(path)])
    assert code == 1
    return found.splitlines()


@pytest.mark.parametrize("slip", SLIPS)
def test_the_type_checker_finds_the_slip_and_names_what_is_wanted(slip: str, told: list[str]) -> None:
    line = SNIPPET.count("\n") + list(SLIPS).index(slip) + 1
    (message,) = [each for each in told if re.search(rf"slips\.py:{line}: error", each)]
    assert re.search(rf"\b{SLIPS[slip][1]}\b", message), message


class _Slipped:
    name, about, pictures = "test slip", "", (Picture.PIECES,)
    parameters: Mapping[str, Parameter] = {}


def _loaded(monkeypatch: pytest.MonkeyPatch, **slip: object) -> str:
    """What loading a technique with such a slip says."""
    technique = type("Slip", (_Slipped,), slip)()
    module = ModuleType("furbelow.techniques.test_slip")
    module.TECHNIQUE = technique  # type: ignore[attr-defined]
    monkeypatch.setitem(sys.modules, module.__name__, module)
    monkeypatch.setattr("furbelow.techniques._modules", lambda: frozenset({"test_slip"}))
    with pytest.raises(TypeError) as raised:
        techniques()["test slip"]
    return str(raised.value)


def test_a_picture_that_nobody_draws_is_found_when_the_technique_is_loaded(monkeypatch: pytest.MonkeyPatch) -> None:
    told = _loaded(monkeypatch, pictures=("piece",))
    assert told == "techniques/test_slip.py: no figure is called `piece`; `pieces` is meant"


def test_a_kind_that_nobody_reads_is_found_when_the_technique_is_loaded(monkeypatch: pytest.MonkeyPatch) -> None:
    told = _loaded(monkeypatch, parameters={"edge": Parameter("The edge.", "edgee")})  # type: ignore[arg-type]
    assert told.startswith("techniques/test_slip.py: `edge` has no kind `edgee`; `edge`")


def test_a_material_of_no_kind_is_found_when_the_technique_is_loaded(monkeypatch: pytest.MonkeyPatch) -> None:
    told = _loaded(monkeypatch, parameters={"tape": Parameter("The tape.", Kind.MATERIAL)})
    assert "names no kind of it in `supplies`" in told
