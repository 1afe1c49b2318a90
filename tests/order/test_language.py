"""In which language a guide is: the call says it first, then the wearer, the workroom, the spec."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from furbelow.resources import languages
from furbelow.verbs.command import run

from tests.demos.demos import SPECS

LARKSPUR = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")
BO = "wearer: Bo\nbody: {waist_girth: 84 cm, hip_girth: 109 cm, waist_height: 104 cm, knee_height: 47 cm}\n"

pytestmark = pytest.mark.usefixtures("made_up_language")


def _made(folder: Path, spec: str, *options: str) -> str:
    """The code of the language of the guide."""
    (folder / "spec.yaml").write_text(spec, encoding="utf-8")
    out = folder / "out"
    assert run(["make", str(folder / "spec.yaml"), "--no-pdf", "--out", str(out), *options]) == 0
    language: str = json.loads((out / "guide.json").read_text(encoding="utf-8"))["language"]
    return language


def _file(folder: Path, name: str, text: str) -> str:
    (folder / name).write_text(text, encoding="utf-8")
    return str(folder / name)


def test_a_spec_that_does_not_say_is_told_in_english(tmp_path: Path) -> None:
    assert _made(tmp_path, LARKSPUR, "--size", "M") == "en"


def test_the_spec_is_asked_last_and_the_call_first(tmp_path: Path) -> None:
    spec = LARKSPUR.replace("units: metric", "language: eo\nunits: metric")
    english_room = _file(tmp_path, "room.yaml", "workroom: 1\nlanguage: en\n")
    wearer = _file(tmp_path, "bo.yaml", BO + "language: eo\n")
    assert _made(tmp_path, spec, "--size", "M") == "eo"
    assert _made(tmp_path, spec, "--size", "M", "--workroom", english_room) == "en"
    assert _made(tmp_path, spec, "--wearer", wearer, "--workroom", english_room) == "eo"
    assert _made(tmp_path, spec, "--wearer", wearer, "--workroom", english_room, "--language", "en") == "en"


@pytest.mark.parametrize("where", ["call", "spec", "room", "wearer"])
def test_a_language_without_words_is_refused_with_those_that_there_are(
    where: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    spec = LARKSPUR.replace("units: metric", "language: nl\nunits: metric") if where == "spec" else LARKSPUR
    options = {
        "call": ["--size", "M", "--language", "nl"],
        "spec": ["--size", "M"],
        "room": ["--size", "M", "--workroom", _file(tmp_path, "room.yaml", "workroom: 1\nlanguage: nl\n")],
        "wearer": ["--wearer", _file(tmp_path, "bo.yaml", BO + "language: nl\n")],
    }[where]
    path = _file(tmp_path, "spec.yaml", spec)
    assert run(["make", path, "--no-pdf", "--out", str(tmp_path / "out"), *options]) == (2 if where == "call" else 1)
    told = capsys.readouterr().err
    assert "error FB160: there are no words for a guide in `nl`" in told
    assert f"the languages are {', '.join(languages())}" in told
    assert not (tmp_path / "out").exists()


def test_a_class_may_hold_several_languages_and_its_page_is_in_that_of_most(tmp_path: Path) -> None:
    rows = ["Ada;68;96;104;47;eo", "Bo;84;109;104;47;", "Cleo;78;104;104;47;eo"]
    heading = "wearer;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm);language"
    roster = _file(tmp_path, "class.csv", "\n".join([heading, *rows]) + "\n")
    spec = LARKSPUR.replace("en: upper tier", "en: upper tier\n      eo: supra etaĝo")
    path, out = _file(tmp_path, "spec.yaml", spec), tmp_path / "out"
    assert run(["make", path, "--no-pdf", "--data", "--class", roster, "--out", str(out)]) == 0
    pages = {name: (out / name).read_text("utf-8") for name in ("index.html", "class-cutting.html", "bo/guide.html")}
    assert '<html lang="eo"' in pages["index.html"]
    assert '<html lang="eo"' in pages["class-cutting.html"]
    assert "supra etaĝo" in pages["class-cutting.html"]
    assert "upper tier" not in pages["class-cutting.html"]
    assert '<html lang="en"' in pages["bo/guide.html"]
    assert "supra etaĝo" not in pages["bo/guide.html"]


def test_what_the_spec_does_not_tell_in_the_language_is_named_in_one_warning(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    spec = LARKSPUR.replace("en: upper tier", "en: upper tier\n      eo: supra etaĝo")
    assert _made(tmp_path, spec, "--size", "M", "--language", "eo") == "eo"
    told = capsys.readouterr().err
    assert told.count("warning FB161") == 1
    assert "the guide is in `eo`, and the spec does not tell `title`, `about`, `about` of `waist_girth`" in told
    assert "`about` of `flounce`" in told
    assert "`about` of `upper`" not in told
    assert _made(tmp_path, spec, "--size", "M", "--language", "en") == "en"
    assert "FB161" not in capsys.readouterr().err


def test_a_text_that_is_told_in_other_languages_only_stands_in_that_of_the_spec(tmp_path: Path) -> None:
    assert "de: obere Stufe" in LARKSPUR
    _made(tmp_path, LARKSPUR, "--size", "M", "--language", "eo")
    assert "upper tier" in (tmp_path / "out" / "guide.md").read_text(encoding="utf-8")
