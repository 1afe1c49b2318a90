"""Paths that are no files or folders to work with are told in words: no wait, no traceback, nothing written elsewhere."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from furbelow.order.shelf import folder_names
from furbelow.s1_read.yaml_tree import LARGEST_FILE
from furbelow.verbs.command import run

from tests.fuzz.chain import at_most

LARKSPUR = Path(__file__).parents[2] / "specs" / "larkspur.yaml"
GUARD = 20.0  # seconds: a way out of an endless read


@pytest.fixture(autouse=True)
def _here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "folder").mkdir()
    (tmp_path / "a_file").write_text("mine")
    (tmp_path / "linked").symlink_to("linked")
    os.mkfifo(tmp_path / "pipe")


NO_FILES = [
    "folder",
    "linked",
    "pipe",
    "nowhere.yaml",
    "a_file/below",
    "x" * 300,
    "",
    "a\0b",
    "\udcff.yaml",
    "/dev/zero",
    "/dev/null/x",
    "/proc/self/mem",
    "../" * 40 + "nowhere",
    "con",
    "file:///etc/hostname",
    "http://x.invalid/",
]


@pytest.mark.parametrize("path", NO_FILES)
@pytest.mark.parametrize("asked", ["spec", "--wearer", "--workroom"])
def test_what_is_no_file_is_told_in_words(asked: str, path: str, capsys: pytest.CaptureFixture[str]) -> None:
    arguments = ["check", path] if asked == "spec" else ["check", str(LARKSPUR), f"{asked}={path}"]
    with at_most(GUARD):
        assert run(arguments) == 1
    told = capsys.readouterr().err
    assert "error FB112: the file can't be opened" in told
    assert "our bug" not in told


def test_a_file_that_is_too_large_is_not_read_whole(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    with (tmp_path / "large.yaml").open("wb") as large:
        large.truncate(LARGEST_FILE * 20_000)
    assert run(["check", "large.yaml"]) == 1
    assert "FB102" in capsys.readouterr().err


@pytest.mark.parametrize(
    "out", ["a_file", "a_file/below", "pipe", "linked", "x" * 300, "/dev/null", "/proc/self/nowhere"]
)
def test_a_folder_that_can_not_be_is_told_and_nothing_is_written(
    out: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    before = sorted(tmp_path.iterdir())
    assert run(["make", str(LARKSPUR), "--size", "XS", "--no-pdf", f"--out={out}"]) == 1
    told = capsys.readouterr().err
    assert "FB654" in told
    assert "our bug" not in told
    assert sorted(tmp_path.iterdir()) == before
    assert (tmp_path / "a_file").read_text() == "mine"


@pytest.mark.parametrize(
    "wearer", ["../../up", "..", "/etc", "con", "a/b", "\\\\host\\share", "<b>", "=1+1", "   ", "日本"]
)
def test_no_name_of_a_wearer_leads_out_of_the_folder(wearer: str, tmp_path: Path) -> None:
    rows = "".join(f'"{name}";64 cm;90 cm;99 cm;43 cm\n' for name in (wearer, "Bo"))
    (tmp_path / "class.csv").write_text(
        f"wearer;waist_girth;hip_girth;waist_height;knee_height\n{rows}", encoding="utf-8"
    )
    run(["make", str(LARKSPUR), "--class", "class.csv", "--no-pdf", "--out", "folder/out"])
    made = {path.relative_to(tmp_path).parts[:2] for path in tmp_path.rglob("guide.html")}
    assert made <= {("folder", "out")}
    assert {path.name for path in tmp_path.iterdir()} == {"folder", "a_file", "linked", "pipe", "class.csv"}


def test_wearers_whose_names_make_the_same_folder_get_one_each(tmp_path: Path) -> None:
    names = ("A b", "a-B", "日本", "中国", "x" * 300, "x" * 301)
    assert len(set(folder_names(names).values())) == len(names)
    rows = "".join(f'"{name}";64 cm;90 cm;99 cm;43 cm\n' for name in ("日本", "中国"))
    (tmp_path / "class.csv").write_text(
        f"wearer;waist_girth;hip_girth;waist_height;knee_height\n{rows}", encoding="utf-8"
    )
    assert run(["make", str(LARKSPUR), "--class", "class.csv", "--no-pdf", "--out", "folder"]) == 0
    titles = {path.parent.name: path.read_text(encoding="utf-8") for path in tmp_path.rglob("guide.html")}
    folders = folder_names(("日本", "中国"))
    assert {name: folder for name, folder in folders.items() if name in titles[folder]} == folders


@pytest.mark.parametrize("into", ["pipe", "/dev/zero", "/dev/null", "folder", "nowhere.yaml", "linked"])
def test_marks_of_swatches_go_into_no_pipe_and_no_device(into: str, capsys: pytest.CaptureFixture[str]) -> None:
    swatches = LARKSPUR.parent / "swatches" / "pleating.yaml"
    with at_most(GUARD):
        assert run(["swatch", str(swatches), "--cloth", "net", "--into", into]) == 1
    assert "FB112" in capsys.readouterr().err


@pytest.mark.parametrize("out", ["", " "])
def test_an_out_without_a_name_is_no_folder(out: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before = sorted(tmp_path.iterdir())
    assert run(["make", str(LARKSPUR), "--size", "XS", "--no-pdf", "--out", out]) == 2
    assert "--out names no folder" in capsys.readouterr().err
    assert sorted(tmp_path.iterdir()) == before
