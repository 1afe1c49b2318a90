"""What happens to the terminal never decides about files, and no text of a file steers it."""

from __future__ import annotations

import json
import os
import re
import signal
import subprocess
import sys
from pathlib import Path

import pytest
from furbelow.verbs.command import run

SPECS = Path(__file__).parents[2] / "specs"
LARKSPUR, CLASS = str(SPECS / "larkspur.yaml"), str(SPECS / "wearers" / "class.yaml")
CHECK = ["check", LARKSPUR, "--size", "M"]


def started(*arguments: str, **told: object) -> subprocess.Popen[bytes]:
    return subprocess.Popen([sys.executable, "-m", "furbelow", *arguments], **told)  # type: ignore[call-overload, no-any-return]


def test_a_class_is_made_whole_though_its_reader_goes_after_the_first_line(tmp_path: Path) -> None:
    with started(
        "make", LARKSPUR, "--class", CLASS, "--no-pdf", "--out", str(tmp_path), stdout=subprocess.PIPE
    ) as made:
        assert made.stdout is not None
        made.stdout.readline()
        made.stdout.close()
    assert made.returncode == 0
    assert (tmp_path / "index.html").is_file()
    assert len(list(tmp_path.glob("*/guide.html"))) == 6


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="no /dev/full here")
def test_an_answer_that_has_no_room_is_told_and_is_no_bug_of_ours() -> None:
    with open("/dev/full", "wb") as full:
        done = subprocess.run([sys.executable, "-m", "furbelow", *CHECK], stdout=full, stderr=subprocess.PIPE)
    assert done.returncode == 1
    assert done.stderr == b"furbelow: the answer could not be written: no space left on device\n"


@pytest.mark.parametrize("closed", ["1", "2"])
def test_a_closed_stream_is_no_bug_of_ours(closed: str) -> None:
    call = " ".join(map(repr, [sys.executable, "-m", "furbelow", *CHECK]))
    done = subprocess.run(["sh", "-c", f"{call} {closed}>&-"], capture_output=True, text=True)
    assert done.returncode == (1 if closed == "1" else 0)
    assert "bug" not in done.stderr


def test_a_name_outside_the_code_page_does_not_end_a_class(tmp_path: Path) -> None:
    rows = "".join(f"{name};64 cm;90 cm;99 cm;43 cm\n" for name in ("Ωmega", "Bo"))
    (tmp_path / "class.csv").write_text(
        f"wearer;waist_girth;hip_girth;waist_height;knee_height\n{rows}", encoding="utf-8"
    )
    call = ["make", LARKSPUR, "--class", str(tmp_path / "class.csv"), "--no-pdf", "--out", str(tmp_path / "out")]
    done = subprocess.run(
        [sys.executable, "-m", "furbelow", *call],
        env={**os.environ, "PYTHONIOENCODING": "cp1252"},
        capture_output=True,
    )
    assert done.returncode == 0, done.stderr
    assert rb"\u03a9mega" in done.stdout
    assert (tmp_path / "out" / "index.html").is_file()


@pytest.mark.skipif(sys.platform == "win32", reason="signals of POSIX")
@pytest.mark.parametrize("workers", ["1", "2"])
def test_ctrl_c_leaves_with_the_code_that_shells_know(workers: str, tmp_path: Path) -> None:
    call = ["make", LARKSPUR, "--class", CLASS, "--no-pdf", "--workers", workers, "--out", str(tmp_path)]
    with started(*call, stdout=subprocess.PIPE, stderr=subprocess.PIPE) as making:
        assert making.stdout is not None
        assert making.stderr is not None
        making.stdout.readline()
        making.send_signal(signal.SIGINT)
        told = making.stderr.read()
    assert making.returncode == 130
    told_of = r"furbelow: stopped; ([0-9]) of 6 guides are complete, and the same command goes on from there\n"
    found = re.fullmatch(told_of, told.decode())
    assert found
    lists = [json.loads(each.read_bytes()) for each in tmp_path.glob("*/furbelow.json")]
    assert len([each for each in lists if each["complete"]]) == int(found[1]) >= 1


HOSTILE = "\x1b[2J\u202eevil\u200b\x07"


@pytest.mark.parametrize("verb", [["check"], ["cutting"], ["fit", "--free", "layers"]])
@pytest.mark.parametrize("form", ["text", "json"])
def test_no_name_of_a_table_steers_the_terminal(
    verb: list[str], form: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    roster = tmp_path / "class.csv"
    rows = "".join(
        f"{name};{waist};90 cm;99 cm;43 cm\n" for name, waist in ((HOSTILE, "64 cm"), (f"{HOSTILE}2", "1 cm"))
    )
    roster.write_text(f"wearer;waist_girth;hip_girth;waist_height;knee_height\n{rows}", encoding="utf-8")
    run([verb[0], LARKSPUR, *verb[1:], "--wearer", str(roster), "--format", form])
    told = capsys.readouterr()
    for sign in "\x1b\u202e\u200b\x07":
        assert sign not in told.out
        assert sign not in told.err
    assert "evil" in told.out + told.err
    if form == "json":
        assert any(HOSTILE in text for text in _texts(json.loads(told.out)))


def _texts(told: object) -> list[str]:
    if isinstance(told, dict):
        return [text for key, value in told.items() for text in (key, *_texts(value))]
    if isinstance(told, list):
        return [text for each in told for text in _texts(each)]
    return [told] if isinstance(told, str) else []


@pytest.mark.parametrize(
    ("environment", "coloured"),
    [
        ({}, False),
        ({"FORCE_COLOR": "1"}, True),
        ({"FORCE_COLOR": "1", "TERM": "dumb"}, True),
        ({"FORCE_COLOR": "1", "NO_COLOR": "1"}, False),
        ({"FORCE_COLOR": ""}, False),
    ],
)
def test_colours_are_as_the_environment_asks(environment: dict[str, str], coloured: bool) -> None:
    """Sources: no-color.org, force-color.org."""
    plain = {key: value for key, value in os.environ.items() if key not in ("NO_COLOR", "FORCE_COLOR")}
    done = subprocess.run(
        [sys.executable, "-m", "furbelow", "check", "nowhere.yaml"], env={**plain, **environment}, capture_output=True
    )
    assert (b"\x1b[" in done.stderr) is coloured
