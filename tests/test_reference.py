"""The written references are fresh: each says what the schemas, techniques and docstrings say now."""

from __future__ import annotations

import json
import re

from furbelow import resources
from furbelow.s3_rehearse.proofs import proofs
from furbelow.techniques import techniques
from furbelow.upkeep.reference import LANGUAGE, PROOFS, gallery, language_page, proofs_page

ANEW = "stale: run `python -m furbelow.upkeep.reference`"


def test_the_language_reference_is_fresh() -> None:
    assert LANGUAGE.read_text(encoding="utf-8") == language_page(), ANEW


def test_the_page_of_the_proofs_is_fresh() -> None:
    assert PROOFS.read_text(encoding="utf-8") == proofs_page(), ANEW


def test_the_drawings_of_the_gallery_are_fresh() -> None:
    drawn = gallery()
    assert len(drawn) == 3
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
