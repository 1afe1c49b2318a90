"""A guide in a made-up language: what is still English on any page of it is no message, and no translator can reach it."""

from __future__ import annotations

import html
import json
import re
import shutil
import subprocess
from pathlib import Path

import pytest
from furbelow.verbs.command import run

from tests.demos.demos import NAMES, SPECS
from tests.s6_write.words.made_up import CODE, english_left, told_in_both
from tests.techniques.small import spec_text
from tests.techniques.test_every_technique_in_a_guide import GARMENTS, OWN, SUPPLIES

ROOMS = {
    "home": "",
    "hand": "gather with: two rows by hand\nneaten with: pinking shears\nhold with: clips\nunits: inches\n",
    "theatre": "gather with: pleating attachment\nneaten with: overlocker\nbobbin: 25 m\nsitting: 2 h\nhourly rate: 14 EUR/h\nmargin: 15%\n",
}

pytestmark = pytest.mark.usefixtures("made_up_language")


def _made(folder: Path, spec: str, room: str, *options: str) -> Path:
    (folder / "spec.yaml").write_text(told_in_both(spec), encoding="utf-8")
    (folder / "room.yaml").write_text(f"workroom: 1\nlanguage: {CODE}\n{room}", encoding="utf-8")
    out = folder / "out"
    call = ["make", str(folder / "spec.yaml"), "--workroom", str(folder / "room.yaml"), "--out", str(out), *options]
    assert run(call) == 0
    return out


def _page(file: Path) -> str:
    """Every text of a page, those that only a screen reader says and those in its drawings included."""
    page = re.sub(r"<(style|script)\b.*?</\1>", " ", file.read_text("utf-8"), flags=re.DOTALL)
    spoken = re.findall(r'(?:aria-label|placeholder|alt)="([^"]*)"', page)
    done = re.findall(r"data-done='([^']*)'", page)
    return html.unescape(" ".join([re.sub(r"<[^>]*>", " ", page), *spoken, *done]))


def _texts(out: Path) -> dict[str, str]:
    """What people read of a guide, by the file. Names of files stand in links and in what is said of the spec's lines."""
    told = {}
    for file in sorted(out.rglob("*")):
        name = str(file.relative_to(out))
        if file.suffix == ".html":
            told[name] = _page(file)
        elif file.suffix == ".md":
            told[name] = re.sub(r"\]\(figures/[^)]*\)", "]", html.unescape(file.read_text("utf-8")))
        elif file.suffix == ".pdf" and shutil.which("pdftotext"):
            shown = subprocess.run(["pdftotext", str(file), "-"], capture_output=True, check=True)
            told[name] = shown.stdout.decode()
    return {name: re.sub(r"\b[0-9a-f]{16}\b", "", text).replace("spec.yaml", "") for name, text in told.items()}


def _left(out: Path) -> dict[str, list[str]]:
    left = {name: english_left(text) for name, text in _texts(out).items()}
    return {name: words for name, words in left.items() if words}


@pytest.mark.parametrize("name", NAMES)
def test_no_english_is_left_in_a_demo_on_paper_or_screen(name: str, tmp_path: Path) -> None:
    spec = (SPECS / f"{name}.yaml").read_text("utf-8")
    out = _made(tmp_path, spec, ROOMS["theatre"], "--size", list(_sizes(spec))[1])
    assert {"guide.html", "guide.md", "guide.pdf", "shopping.md"} <= _texts(out).keys()
    assert _left(out) == {}


def _sizes(spec: str) -> list[str]:
    import yaml

    return list(yaml.load(spec, yaml.BaseLoader)["sizes"])


@pytest.mark.parametrize("room", ROOMS)
@pytest.mark.parametrize("garment", GARMENTS)
def test_no_english_is_left_in_any_technique(garment: str, room: str, tmp_path: Path) -> None:
    pieces, steps = GARMENTS[garment]
    spec = spec_text(pieces, steps, own=OWN, materials=SUPPLIES)
    assert _left(_made(tmp_path, spec, ROOMS[room], "--size", "M", "--no-pdf")) == {}


def test_no_english_is_left_on_the_pages_of_a_class_and_of_every_size(tmp_path: Path) -> None:
    spec = (SPECS / "larkspur.yaml").read_text("utf-8")
    (tmp_path / "sizes").mkdir()
    assert _left(_made(tmp_path / "sizes", spec, ROOMS["home"], "--every-size", "--no-pdf")) == {}
    roster = tmp_path / "class.csv"
    heading = "wearer;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm)\n"
    roster.write_text(heading + "7;68;96;104;47\n9;84;109;104;47\n", encoding="utf-8")
    assert _left(_made(tmp_path, spec, ROOMS["theatre"], "--class", str(roster), "--no-pdf", "--data")) == {}


_REPORTS = [
    ("cutting", "--size", "M"),
    ("cutting", "--size", "M", "--most-sections", "1"),
    ("fit", "--size", "M", "--free", "fullness,layers", "--so-that", "net <= 4.6 m and cost <= 30 EUR"),
    ("fit", "--size", "M", "--free", "fullness", "--so-that", "net <= 1 m and cost <= 1 EUR"),
    ("compare", "--size", "M", "--size", "L", "--set-second", "layers=3"),
    ("why", "net", "--size", "M"),
    ("why", "thread", "--size", "M"),
    ("why", "elastic", "--size", "M"),
    ("why", "rule 1", "--size", "M"),
    ("why", "flounce.cut_depth", "--size", "M", "--format", "markdown"),
]


@pytest.mark.parametrize("report", _REPORTS, ids=" ".join)
def test_no_english_is_left_in_a_report(
    report: tuple[str, ...], tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """But for the names of the maker's file, the keys of the workroom and what the call asks for."""
    monkeypatch.chdir(tmp_path)
    spec = (SPECS / "larkspur.yaml").read_text("utf-8")
    Path("spec.yaml").write_text(told_in_both(spec), encoding="utf-8")
    verb, *options = report
    run([verb, "spec.yaml", "--language", CODE, *options])
    told = capsys.readouterr().out
    assert len(told) > 20
    assert english_left(told, *_names(spec), *re.findall(r"\w+", " ".join(options))) == []


def _names(spec: str) -> set[str]:
    import yaml

    read = yaml.load(spec, yaml.BaseLoader)
    named = {name for section in ("body", "choices", "materials", "pieces") for name in read[section]}
    asked = {
        "most joins",
        "most sections",
        "join price",
        "setup price",
        "round_up",
        "bolt_length",
        "square_end",
        "sold_by",
        "spec.yaml",
    }
    sizes = {"cut_length", "cut_depth", "top_takes", "bottom_takes", "start_takes", "end_takes", "worn.over", "need"}
    steps = {
        "step",
        "rule",
        "turn up",
        "seam",
        "width",
        "reel",
        "needle",
        "bobbin",
        "least",
        "with",
        "make",
        "set",
        "count",
    }
    return {word for name in named | asked | sizes | steps for word in re.split(r"[_ .]", name)}


def test_the_page_and_the_booklet_say_their_language(tmp_path: Path) -> None:
    import pikepdf

    spec = (SPECS / "marigold.yaml").read_text("utf-8")
    out = _made(tmp_path, spec, ROOMS["home"], "--size", "12")
    assert f'<html lang="{CODE}"' in (out / "guide.html").read_text("utf-8")
    assert json.loads((out / "guide.json").read_text("utf-8"))["language"] == CODE
    assert pikepdf.open(out / "guide.pdf").Root.Lang == CODE


def test_numbers_have_the_decimal_sign_of_the_language(tmp_path: Path) -> None:
    spec = (SPECS / "larkspur.yaml").read_text("utf-8")
    texts = _texts(_made(tmp_path, spec, ROOMS["home"], "--size", "M", "--no-pdf"))
    for name, text in texts.items():
        assert re.findall(r"\d,\d", text), name
        assert re.findall(r"(?<![\d.])\d+\.\d+(?![\d.])", text) == [], name
