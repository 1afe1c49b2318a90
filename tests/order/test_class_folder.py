"""A class folder over a term: numbers and cut pieces stay with their people, nothing is done twice, nothing is lost."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from furbelow.order import pupil
from furbelow.order.chain import Planned, guide_of
from furbelow.s6_write.guide.guide import Guide
from furbelow.verbs.command import run

SPECS = Path(__file__).parents[2] / "specs"
MARIGOLD = str(SPECS / "marigold.yaml")
HEADING = "wearer;waist_girth (cm);hip_girth (cm);waist_height (cm)"
ADA, BO, CLEO = "Ada;70;96;101", "Bo;84;109;105", "Cleo;74;101;103"


def make(folder: Path, rows: list[str], *more: str, heading: str = HEADING, spec: str = MARIGOLD) -> int:
    roster = folder / "class.csv"
    roster.write_text("\n".join([heading, *rows]) + "\n", encoding="utf-8")
    return run(["make", spec, "--class", str(roster), "--no-pdf", "--data", "--out", str(folder / "out"), *more])


def numbers(folder: Path) -> dict[str, int]:
    found: dict[str, int] = json.loads((folder / "out" / "class.json").read_text(encoding="utf-8"))["numbers"]
    return found


def pile(folder: Path, who: str) -> str:
    """The pieces of the pile as her guide lists them, without what sewing says."""
    text = (folder / "out" / who / "guide.md").read_text(encoding="utf-8")
    start = text.rindex("The pile of cut pieces")  # it stands in the contents first
    return text[start : text.index("\n## ", start)]


def test_a_changed_file_that_the_spec_is_built_on_is_read_anew_though_the_spec_is_as_it_was(tmp_path: Path) -> None:
    """In one process, as a worker of a cluster that goes on from class to class."""
    base, spec = tmp_path / "base.yaml", tmp_path / "spec.yaml"
    base.write_text(Path(MARIGOLD).read_text(encoding="utf-8"), encoding="utf-8")
    spec.write_text("furbelow: 1\nbased on: base.yaml\n", encoding="utf-8")
    assert make(tmp_path, [ADA, BO], spec=str(spec)) == 0
    text = base.read_text(encoding="utf-8")
    assert "printed cotton lawn" in text
    base.write_text(text.replace("printed cotton lawn", "striped cotton lawn"), encoding="utf-8")
    assert make(tmp_path, [ADA, BO], spec=str(spec)) == 0
    assert "striped cotton lawn" in (tmp_path / "out" / "ada" / "guide.md").read_text(encoding="utf-8")


def test_a_class_whose_spec_is_another_now_is_told_what_of_the_earlier_one_lies_cut(tmp_path: Path) -> None:
    """Also where a maker has given a piece another name: the spec tells nothing any more of what was cut under the old one."""
    text = Path(MARIGOLD).read_text(encoding="utf-8")
    spec = tmp_path / "spec.yaml"
    spec.write_text(text, encoding="utf-8")
    assert make(tmp_path, [ADA, BO], spec=str(spec)) == 0
    spec.write_text(re.sub(r"\bmiddle\b(?! tier)", "between", text), encoding="utf-8")
    assert make(tmp_path, [ADA, BO], spec=str(spec)) == 0
    told = (tmp_path / "out" / "teacher.html").read_text(encoding="utf-8")
    assert re.search(r"No longer needed.*?1-2.{0,40}middle", told, re.DOTALL)


def test_the_term_of_a_class(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert make(tmp_path, [ADA, BO]) == 0
    assert numbers(tmp_path) == {"Ada": 1, "Bo": 2}
    bo = pile(tmp_path, "bo")
    assert "Take pile 2 " in bo
    assert "2-1a" in bo
    capsys.readouterr()

    # Nothing has changed: nothing is done, and every guide still has its line.
    before = {path: path.stat().st_mtime_ns for path in (tmp_path / "out").rglob("*")}
    assert make(tmp_path, [ADA, BO]) == 0
    assert capsys.readouterr().out.count("(unchanged)") == 3
    assert {path: path.stat().st_mtime_ns for path in (tmp_path / "out").rglob("*")} == before

    # Ada leaves and Cleo comes: nobody takes Ada's number, and Bo's pieces stay as they are cut.
    assert make(tmp_path, [CLEO, BO]) == 0
    told = capsys.readouterr()
    assert numbers(tmp_path) == {"Ada": 1, "Bo": 2, "Cleo": 3}
    assert pile(tmp_path, "bo") == bo
    assert "warning FB656" in told.err
    assert "bo" in next(line for line in told.out.splitlines() if "(unchanged)" in line)
    assert "Take pile 3 " in pile(tmp_path, "cleo")
    cutting = (tmp_path / "out" / "class-cutting.html").read_text(encoding="utf-8")
    assert "A star on a tag, as in 1-1*a, marks" in cutting

    # On demand she is taken out, and her number stays hers.
    assert make(tmp_path, [CLEO, BO], "--dismiss") == 0
    assert not (tmp_path / "out" / "ada").exists()
    assert numbers(tmp_path) == {"Bo": 2, "Cleo": 3}
    assert make(tmp_path, [CLEO, BO, "Dara;90;112;104"]) == 0
    assert numbers(tmp_path)["Dara"] == 4

    # Nothing is cut yet after all: all is planned anew, and numbers stay.
    assert make(tmp_path, [CLEO, BO], "--recut", "--dismiss") == 0
    assert numbers(tmp_path) == {"Bo": 2, "Cleo": 3}
    assert "*" not in re.sub(r"(?s)<(script|style).*?</\1>", "", (tmp_path / "out" / "class-cutting.html").read_text())


def test_a_folder_from_before_pieces_had_numbers_keeps_its_plan_and_what_stands_on_its_cloth(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert make(tmp_path, [ADA, BO]) == 0
    file = tmp_path / "out" / "class.json"
    kept = json.loads(file.read_text(encoding="utf-8"))
    for lot in kept["lots"]:
        lot["letters"] = {name: mark.replace("-", "P") for name, mark in lot.pop("marks").items()}
    file.write_text(json.dumps(kept), encoding="utf-8")
    plans = [lot["plan"] for lot in kept["lots"]]
    capsys.readouterr()
    assert make(tmp_path, [BO, ADA, CLEO], "--replace") == 0
    assert "FB658" not in capsys.readouterr().err
    assert numbers(tmp_path) == {"Ada": 1, "Bo": 2, "Cleo": 3}
    now = json.loads(file.read_text(encoding="utf-8"))["lots"]
    assert [lot["plan"] for lot in now if lot["plan"] in plans] == plans
    assert any(mark == "2P1" for lot in now for mark in lot["marks"].values())


def _steps(guide: Path) -> dict[str, list[str]]:
    """Of each operation by its letter: the lengths in its sentences."""
    parts = re.split(r"(?m)^### ([A-Z]+) ", guide.read_text(encoding="utf-8"))
    sentences = {
        letter: re.findall(r"(?m)^\d+\. .*", text) for letter, text in zip(parts[1::2], parts[2::2], strict=True)
    }
    return {letter: re.findall(r"[\d.]+(?= cm)", " ".join(lines)) for letter, lines in sentences.items()}


def test_a_measure_that_changes_is_cut_anew_where_it_matters_and_nowhere_else(tmp_path: Path) -> None:
    heading, spec = f"{HEADING};knee_height (cm)", str(SPECS / "larkspur.yaml")
    assert make(tmp_path, [f"{ADA};45", f"{BO};47"], heading=heading, spec=spec) == 0
    before = _steps(tmp_path / "out" / "bo" / "guide.md")
    sheet = tmp_path / "out" / "teacher.html"
    assert 'id="later"' not in sheet.read_text(encoding="utf-8")
    rounder = BO.replace("84", "88")
    assert make(tmp_path, [f"{rounder};47", f"{CLEO};46"], heading=heading, spec=spec) == 0
    page = re.sub(r"<[^>]*>", " ", sheet.read_text(encoding="utf-8").split('id="later"')[1]).replace("\u00a0", " ")
    assert re.search(r"beside what was bought at first: [\d.]+ m of the", page)
    told = dict(zip(("Ada", "Bo", "Cleo"), re.split(r"\d (?:Ada|Bo|Cleo)\b", page)[1:], strict=True))
    pieces = {
        name: {part: told[name].count(part) for part in ("Stays", "Cut anew", "No longer needed")} for name in told
    }
    assert pieces == {
        "Ada": {"Stays": 0, "Cut anew": 0, "No longer needed": 1},
        "Bo": {"Stays": 1, "Cut anew": 1, "No longer needed": 1},
        "Cleo": {"Stays": 0, "Cut anew": 1, "No longer needed": 0},
    }
    assert "Sew anew" not in told["Cleo"]
    # Whatever says another number now is sewn anew, of pieces that stay too; when the sheet is written again as well.
    now = _steps(tmp_path / "out" / "bo" / "guide.md")
    other = [letter for letter in now if now[letter] != before[letter] and letter not in ("A", "AA")]
    assert "R" in other
    assert set(other) <= set(re.split(r"[ ,]+", told["Bo"].partition("Sew anew, as far as it was sewn:")[2].strip()))
    assert make(tmp_path, [f"{rounder};47", f"{CLEO};46", "Dara;90;112;104;45"], heading=heading, spec=spec) == 0
    again = re.sub(r"<[^>]*>", " ", sheet.read_text(encoding="utf-8").split('id="later"')[1])
    assert "R, S" in again
    # What stays and what is cut anew is all that Bo's guide asks for.
    wanted = set(re.findall(r"\b2-\d+(?=[a-z])", pile(tmp_path, "bo")))
    assert len(wanted) == 4
    kept = told["Bo"].split("No longer needed")[0]
    assert set(re.findall(r"\b2-\d+\b", kept)) == wanted


def test_who_is_measured_again_is_composed_anew_and_nobody_else(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    composed: list[str] = []
    compose = guide_of

    def counted(found: Planned, wearer: str, **how: bool | int) -> Guide:
        composed.append(wearer)
        return compose(found, wearer, **how)  # type: ignore[arg-type]

    monkeypatch.setattr(pupil, "guide_of", counted)
    assert make(tmp_path, [ADA, BO, CLEO], "--workers", "1") == 0
    assert composed == ["Ada", "Bo", "Cleo"]
    slips = (tmp_path / "out" / "handouts.html").read_text(encoding="utf-8")
    assert make(tmp_path, [ADA, BO.replace("109", "115"), CLEO], "--workers", "1") == 0
    assert composed == ["Ada", "Bo", "Cleo", "Bo"]
    # The lessons of those who stand are told as before.
    again = (tmp_path / "out" / "handouts.html").read_text(encoding="utf-8")
    rows = [re.findall(r"(?s)<strong>(?:Ada|Cleo), Lesson .*?</ul>", page) for page in (slips, again)]
    assert rows[0] == rows[1] != []


def test_a_list_of_many_keeps_its_numbers(tmp_path: Path) -> None:
    assert make(tmp_path, [ADA, BO]) == 0
    file = tmp_path / "out" / "class.json"
    kept = json.loads(file.read_text(encoding="utf-8"))
    kept["numbers"] |= {f"somebody who has left, {number}": number for number in range(3, 40_000)}
    file.write_text(json.dumps(kept), encoding="utf-8")
    assert file.stat().st_size > 1024 * 1024
    assert make(tmp_path, [BO, CLEO]) == 0
    assert {name: numbers(tmp_path)[name] for name in ("Ada", "Bo", "Cleo")} == {"Ada": 1, "Bo": 2, "Cleo": 40_000}


def test_a_number_of_the_roster_is_the_pupil_s_and_two_can_not_have_one(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    heading = HEADING.replace("wearer;", "wearer;number;")
    assert make(tmp_path, ["Ada;7;70;96;101", "Bo;;84;109;105"], heading=heading) == 0
    assert numbers(tmp_path) == {"Ada": 7, "Bo": 8}
    assert make(tmp_path, ["Ada;7;70;96;101", "Bo;;84;109;105", "Cleo;8;74;101;103"], heading=heading) == 1
    assert "error FB659" in capsys.readouterr().err
    assert numbers(tmp_path) == {"Ada": 7, "Bo": 8}


def test_another_kind_of_set_does_not_take_the_place_of_a_class(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert make(tmp_path, [ADA, BO]) == 0
    out = str(tmp_path / "out")
    before = {path: path.read_bytes() for path in (tmp_path / "out").rglob("*") if path.is_file()}
    assert run(["make", MARIGOLD, "--size", "12", "--no-pdf", "--out", out]) == 1
    assert run(["make", MARIGOLD, "--every-size", "--no-pdf", "--out", out]) == 1
    assert make(tmp_path, [ADA, BO, CLEO], "--only", "Ada", "--only", "Bo") == 1
    assert capsys.readouterr().err.count("error FB657") == 3
    assert {path: path.read_bytes() for path in (tmp_path / "out").rglob("*") if path.is_file()} == before
    assert run(["make", MARIGOLD, "--size", "12", "--no-pdf", "--out", out, "--replace"]) == 0
    assert (tmp_path / "out" / "guide.html").is_file()


def test_a_list_that_can_not_be_read_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert make(tmp_path, [ADA, BO]) == 0
    kept = json.loads((tmp_path / "out" / "class.json").read_text(encoding="utf-8"))
    kept["lots"][0]["strips"][0]["length"] = "1"
    (tmp_path / "out" / "class.json").write_text(json.dumps(kept), encoding="utf-8")
    assert make(tmp_path, [ADA, BO]) == 0
    assert "warning FB658" in capsys.readouterr().err


def test_pages_without_measures_tell_none_and_are_not_for_search_engines(tmp_path: Path) -> None:
    roster = tmp_path / "class.csv"
    roster.write_text(f"{HEADING};knee_height (cm)\nAda;71.3;97.1;101.7;45.3\nBo;83.9;109.3;104.9;46.7\n")
    call = ["make", str(SPECS / "larkspur.yaml"), "--class", str(roster), "--no-pdf", "--no-measures"]
    assert run([*call, "--out", str(tmp_path / "out")]) == 0
    files = [path for path in (tmp_path / "out").rglob("*") if path.suffix in (".html", ".md", ".json")]
    assert len(files) > 6
    for path in files:
        text = path.read_text(encoding="utf-8").replace("\u00a0", " ")
        # The hips are told once, in the check of the elastic: that is a number of the work.
        for measure in ("71.3", "101.7", "45.3", "83.9", "104.9", "46.7"):
            assert not re.search(rf"(?<![\d.]){re.escape(measure)}(?![\d])", text), (path, measure)
        if path.suffix == ".html":
            assert '<meta name="robots" content="noindex">' in text


def test_a_number_and_a_name_that_no_code_page_has_do_not_end_the_run(tmp_path: Path) -> None:
    import os
    import subprocess
    import sys

    (tmp_path / "class.csv").write_text(f"{HEADING}\nŽofie 日本;70;96;101\nBo;84;109;105\n", encoding="utf-8")
    call = ["make", MARIGOLD, "--class", "class.csv", "--no-pdf", "--out", "out", "--workers", "2"]
    done = subprocess.run(
        [sys.executable, "-m", "furbelow", *call],
        cwd=tmp_path,
        env={**os.environ, "PYTHONIOENCODING": "cp1252", "PYTHONUTF8": "0"},
        capture_output=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.count(b"guide.html") == 2


def files_of(folder: Path) -> dict[Path, bytes]:
    return {path.relative_to(folder): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def test_with_two_workers_the_bytes_are_the_same(tmp_path: Path) -> None:
    for name, workers in (("one", "1"), ("two", "2")):
        (tmp_path / name).mkdir()
        assert make(tmp_path / name, [ADA, BO, CLEO], "--workers", workers) == 0
    assert files_of(tmp_path / "one") == files_of(tmp_path / "two")


def test_with_two_workers_and_pdf_the_bytes_are_the_same_in_a_process_of_its_own(tmp_path: Path) -> None:
    """Where no thread runs workers are copies of the process; each sets other guides before one, and forgets others."""
    import subprocess
    import sys

    rows = "\n".join((HEADING, ADA, BO, CLEO))
    for workers in ("1", "2"):
        (tmp_path / workers).mkdir()
        (tmp_path / workers / "class.csv").write_text(f"{rows}\n", encoding="utf-8")
        call = [sys.executable, "-m", "furbelow", "make", MARIGOLD, "--class", "class.csv", "--out", "out"]
        subprocess.run([*call, "--workers", workers], cwd=tmp_path / workers, capture_output=True, check=True)
    found = files_of(tmp_path / "1")
    assert sum(path.suffix == ".pdf" for path in found) == 4
    assert found == files_of(tmp_path / "2")
