"""The written references are fresh: each says what the schemas, techniques and docstrings say now."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
import tomllib
from pathlib import Path

import pytest
from furbelow import resources
from furbelow.s3_rehearse.proofs import proofs
from furbelow.techniques import techniques
from furbelow.upkeep.man_page import PAGE, man_page
from furbelow.upkeep.reference import LANGUAGE, PROOFS, gallery, language_page, proofs_page
from furbelow.verbs.command import _VERBS, run

TOP = Path(__file__).parents[1]
ANEW = "stale: run `python -m furbelow.upkeep.reference`"


def test_the_language_reference_is_fresh() -> None:
    assert LANGUAGE.read_text(encoding="utf-8") == language_page(), ANEW


def test_the_page_of_the_proofs_is_fresh() -> None:
    assert PROOFS.read_text(encoding="utf-8") == proofs_page(), ANEW


def test_the_drawings_of_the_gallery_are_fresh() -> None:
    drawn = gallery()
    assert len(drawn) == len(list((TOP / "specs").glob("*.yaml")))
    assert [path.name for path, svg in drawn.items() if path.read_text(encoding="utf-8") != svg] == [], ANEW


def test_every_technique_is_told_with_all_its_keys_and_an_example() -> None:
    page = language_page()
    for word, technique in techniques().items():
        told = page.split(f"\n### {word}\n", 1)[1].split("\n### ", 1)[0]
        for key in technique.parameters:
            assert re.search(rf"^\| (\*\*)?{re.escape(key)}(\*\*)? \|", told, re.MULTILINE), (word, key)
        for head in ("What it does", "Edges before and after", "Allowance", "Example", "Source"):
            assert f"- *{head}*: " in told, (word, head)


def test_every_key_of_a_spec_is_told() -> None:
    page = language_page()
    schema = json.loads(resources.schema("garment.base.json").read_text(encoding="utf-8"))
    maps = [schema, *(kind for name, kind in schema["$defs"].items() if name != "step")]
    keys = {key for each in maps for key in each.get("properties", {})}
    assert len(keys) > 40
    assert [
        key for key in sorted(keys) if not re.search(rf"^\| (\*\*)?{re.escape(key)}(\*\*)? \|", page, re.MULTILINE)
    ] == []


def test_every_proof_says_what_it_guarantees_and_what_it_cannot_know() -> None:
    parts = re.split(r"^## ", proofs_page(), flags=re.MULTILINE)[1:]
    assert len(parts) == len(proofs())
    for part in parts:
        assert "- *Guarantees*: " in part, part
        assert "- *Cannot know*: " in part, part
        assert "Told as: [FB" in part, part


def test_the_manual_page_is_fresh() -> None:
    assert PAGE.read_text(encoding="utf-8") == man_page(), ANEW


def test_the_manual_page_tells_what_help_tells_and_is_read_without_a_warning(
    capsys: pytest.CaptureFixture[str],
) -> None:
    page = man_page().replace("\\-", "-").replace("\\fB", "").replace("\\fR", "")
    assert len(_VERBS) > 10
    for verb in _VERBS:
        with pytest.raises(SystemExit):
            run([verb, "--help"])
        told = page.split(f'.SS "furbelow {verb}"', 1)[1].split(".SS", 1)[0]
        options = set(re.findall(r"--[a-z][a-z-]+", capsys.readouterr().out)) - {"--help", "--debug"}
        assert [option for option in sorted(options) if option not in told] == []
    if shutil.which("groff"):
        read = subprocess.run(["groff", "-man", "-ww", "-z", str(PAGE)], capture_output=True, text=True, check=True)
        assert read.stderr == ""


def test_the_wheel_brings_the_manual_page() -> None:
    wheel = tomllib.loads((TOP / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["hatch"]["build"]["targets"][
        "wheel"
    ]
    assert wheel["shared-data"] == {PAGE.relative_to(TOP).as_posix(): "share/man/man1/furbelow.1"}
