"""`furbelow cutting` shows the plan and the other ways to cut; the maker's limits are kept, or refused with numbers."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from furbelow.verbs.command import run

from tests.demos.demos import SPECS

LARKSPUR = str(SPECS / "larkspur.yaml")


def _cloths(capsys: pytest.CaptureFixture[str], *options: str) -> dict[str, Any]:
    assert run(["cutting", LARKSPUR, "--size", "M", "--format", "json", *options]) == 0
    (cutting,) = json.loads(capsys.readouterr().out)["cuttings"]
    return {cloth["cloth"]: cloth for cloth in cutting["cloths"]}


def test_the_plan_is_shown_with_its_tapes_cost_offcuts_and_the_other_ways(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["cutting", LARKSPUR, "--size", "M"]) == 0
    told = capsys.readouterr()
    assert told.err == ""
    lines = told.out.splitlines()
    assert lines[0] == "Larkspur dancing underskirt, size M"
    assert "net: 4.54 m of 140 cm wide, 137 cm of it to use" in lines
    assert "    tapes from the long edge: 37 cm, 74 cm, 111 cm and 128 cm" in lines  # 37 + 37 + 37 + 17
    assert "    lane 1, 37 cm deep: 2a·1, 302 cm" in lines
    # 8.17 of cloth at 1.80 a metre, 4 joins at 0.25, 2 set-ups at 0.50, and 2 + 8 + 8 cuts at 0.05.
    assert "  cost 11.07 EUR: cloth 8.17, 4 joins 1.00, 2 set-ups 1.00, 18 cuts 0.90" in lines
    assert any(line.startswith("  Proven: ") for line in lines)
    # 158 cm beside lanes of 49.5 and 8 cm on 147 cm, 1 cm of 148 spared.
    assert "  offcuts worth keeping: 158 cm x 89.5 cm of section 1" in lines
    assert "    4.54 m with 4 joins in 2 sections, cost 11.07 (chosen)" in lines
    assert "    6.02 m with none in 1 section, cost 11.79" in lines
    assert "--most-joins N" in told.out


def test_no_way_in_the_table_has_less_of_everything_than_another(capsys: pytest.CaptureFixture[str]) -> None:
    for cloth in _cloths(capsys).values():
        ways = [(way["bolt_length"], way["joins"], way["sections"], way["cost"]) for way in cloth["ways"]]
        assert [way["chosen"] for way in cloth["ways"]].count(True) == 1
        for one in ways:
            assert not any(other != one and all(a <= b for a, b in zip(other, one, strict=True)) for other in ways)
        assert cloth["cost"] == min(way["cost"] for way in cloth["ways"])


@pytest.mark.parametrize(
    ("options", "joins", "sections"),
    [
        (["--most-joins", "0"], 0, 9),
        (["--most-sections", "1"], 9, 1),
        (["--most-joins", "3", "--most-sections", "2"], 3, 2),
    ],
)
def test_the_maker_picks_by_limits(
    options: list[str], joins: int, sections: int, capsys: pytest.CaptureFixture[str]
) -> None:
    free, net = _cloths(capsys)["net"], _cloths(capsys, *options)["net"]
    assert net["joins"] <= joins
    assert net["sections"] <= sections == len(net["plan"]) or len(net["plan"]) == net["sections"] < sections
    assert net["cost"] > free["cost"]
    assert net["proven"]
    assert "within the limits" in net["how"]
    assert sum(way["chosen"] for way in net["ways"]) == 1


def test_a_workroom_can_say_the_limits_and_the_call_goes_before_it(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    room = tmp_path / "room.yaml"
    room.write_text("workroom: 1\nmost joins: 0\nmost sections: 1\n")
    assert _cloths(capsys, "--workroom", str(room))["net"]["joins"] == 0
    assert _cloths(capsys, "--workroom", str(room), "--most-joins", "9", "--most-sections", "3")["net"]["joins"] == 4


@pytest.fixture
def over_the_width(tmp_path: Path) -> str:
    """The waistband must lie over the width, which is less than its length, and must be joined."""
    text = Path(LARKSPUR).read_text()
    band = "    piecing: {seam: 1 cm, shortest: 40 cm, most joins: 1}\n    grain: free\n"
    assert band in text
    spec = tmp_path / "narrow.yaml"
    spec.write_text(text.replace(band, band.replace("free", "across")).replace("width: 150 cm", "width: 110 cm"))
    return str(spec)


def test_limits_that_no_plan_keeps_are_refused_with_numbers(
    over_the_width: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["cutting", over_the_width, "--size", "M", "--most-joins", "0"]) == 1
    told = capsys.readouterr().err
    assert (
        "error FB502: `satin` can't be cut within the limits: the nearest plan has 1 join where 0 may be, 1 too many"
        in told
    )
    assert "allow `most joins: 1`" in told
    assert run(["cutting", over_the_width, "--size", "M", "--most-joins", "1"]) == 0


@pytest.mark.parametrize(
    "limit", ["--most-joins=-1", "--most-joins=two", "--most-sections=0", "--most-joins=1.5", "--most-joins=²"]
)
def test_a_limit_that_is_no_count_is_wrong_use(limit: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as stopped:
        run(["cutting", LARKSPUR, "--size", "M", limit])
    assert stopped.value.code == 2
    assert "is no whole number" in capsys.readouterr().err


def _make(out: Path, *options: str) -> None:
    assert run(["make", LARKSPUR, "--size", "M", "--out", str(out), "--no-pdf", *options]) == 0


def test_make_keeps_its_plans_and_takes_them_from_there(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    _make(tmp_path)
    before = {path.name: path.read_bytes() for path in tmp_path.iterdir() if path.is_file()}
    assert len(json.loads(before["plans.json"])["plans"]) == 2  # net and satin

    def planned(*_: object) -> None:
        raise AssertionError("planned afresh")

    monkeypatch.setattr("furbelow.s4_cut.planner.best_plan", planned)
    _make(tmp_path)
    assert {path.name: path.read_bytes() for path in tmp_path.iterdir() if path.is_file()} == before


def test_a_damaged_file_of_plans_is_made_anew_and_a_strange_one_is_kept(tmp_path: Path) -> None:
    out = tmp_path / "guide"
    _make(out)
    whole = (out / "plans.json").read_bytes()
    for damage in (b"", b"{", whole.replace(b"302", b"303"), whole[:500], b"\x00" * 2_000_000):
        (out / "plans.json").write_bytes(damage)
        _make(out)
        assert (out / "plans.json").read_bytes() == whole
    (out / "plans.json").unlink()
    _make(out)
    assert (out / "plans.json").read_bytes() == whole

    other = tmp_path / "other"
    other.mkdir()
    (other / "plans.json").write_text("my own plans")
    assert run(["make", LARKSPUR, "--size", "M", "--out", str(other), "--no-pdf"]) == 1
    assert (other / "plans.json").read_text() == "my own plans"


def test_make_keeps_to_the_limits_and_a_kept_plan_without_them_is_not_used(tmp_path: Path) -> None:
    _make(tmp_path)
    assert "2a·1" in (tmp_path / "guide.md").read_text()
    _make(tmp_path, "--most-joins", "0")
    assert "2a·1" not in (tmp_path / "guide.md").read_text()


def test_the_guide_names_the_offcuts_worth_keeping(tmp_path: Path) -> None:
    _make(tmp_path)
    guide = (tmp_path / "guide.md").read_text()
    _, told = guide.split(
        "Keep for later what is large enough of the polyester lining satin, each piece tagged with its size", 1
    )
    assert "158 cm x 89.5 cm" in told.split("\n\n", 1)[0]


def test_one_cloth_may_have_a_limit_of_its_own(capsys: pytest.CaptureFixture[str]) -> None:
    free = _cloths(capsys)
    assert free["net"]["joins"] > 1
    limited = _cloths(capsys, "--most-joins", "net=1")
    assert limited["net"]["joins"] <= 1
    assert limited["satin"] == free["satin"]
    both = _cloths(capsys, "--most-joins", "0", "--most-joins", "net=9", "--most-sections", "satin=1")
    assert {**both["net"], "how": ""} == {**free["net"], "how": ""}
    assert both["satin"]["joins"] == 0
    assert run(["cutting", LARKSPUR, "--size", "M", "--most-joins", "nett=1"]) == 2
    assert "no cloth is called nett; the cloths are net, satin" in capsys.readouterr().err
