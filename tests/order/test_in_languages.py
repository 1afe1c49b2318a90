"""A guide made in several languages leads from each to the others, whatever is made of it."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from furbelow.verbs.command import run

FOXGLOVE = str(Path(__file__).parents[2] / "specs" / "foxglove.yaml")
_LINK = re.compile(r'<a href="([^"]+)" lang="(\w+)" hreflang="(\w+)">([^<]+)</a>')


def make(folder: Path, *more: str) -> int:
    return run(["make", FOXGLOVE, "--no-pdf", "--out", str(folder), *more])


@pytest.mark.parametrize(
    ("what", "page"),
    [
        (["--size", "B"], "guide.html"),
        (["--booklet"], "booklet.html"),
        (["--every-size"], "size-b/guide.html"),
        (["--every-size"], "index.html"),
    ],
)
def test_each_language_leads_to_the_others_and_back(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], what: list[str], page: str
) -> None:
    languages = {"en": "English", "de": "Deutsch", "es": "Español"}
    assert make(tmp_path, *what, "--language", ",".join(languages), "--format", "json") == 0
    answer = json.loads(capsys.readouterr().out)
    assert {Path(each["page"]).relative_to(tmp_path).parts[0] for each in answer["pages"]} == set(languages)
    for language in languages:
        file = tmp_path / language / page
        text = file.read_text(encoding="utf-8")
        assert f'<html lang="{language}"' in text
        found = _LINK.findall(text)
        # Source for the names: Unicode CLDR, each language in itself.
        assert {name: code for _, code, _, name in found} == {
            name: code for code, name in languages.items() if code != language
        }
        for link, code, same, _ in found:
            assert code == same
            assert (file.parent / link).resolve() == tmp_path / code / page
            assert (file.parent / link).is_file()


def test_in_one_language_nothing_leads_anywhere_and_no_folder_is_added(tmp_path: Path) -> None:
    assert make(tmp_path, "--size", "B", "--language", "de") == 0
    assert not _LINK.findall((tmp_path / "guide.html").read_text(encoding="utf-8"))


@pytest.mark.parametrize(
    ("more", "said"),
    [
        (["--size", "B", "--language", "en,xx"], "there are no words for a guide in `xx`; the languages are"),
        (["--size", "B", "--language", "en,"], "there are no words for a guide in ``"),
        (["--wearer", "specs/wearers/class.yaml", "--language", "en,de"], "several languages go with"),
    ],
)
def test_what_can_not_be_meant_is_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], more: list[str], said: str
) -> None:
    assert make(tmp_path / "out", *more) == 2
    assert said in capsys.readouterr().err
    assert not (tmp_path / "out").exists()
