"""Marks written into a workroom file: one line changed, all others kept; and told in the guide."""

from __future__ import annotations

import errno
import json
import stat
from fractions import Fraction
from pathlib import Path

import pytest
from furbelow.garment.attachment import mark_for
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import SetUp
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.s1_read.read_workroom import read_workroom
from furbelow.swatch.into_workroom import with_line
from furbelow.verbs.command import run

from tests.demos.demos import order
from tests.said import said

SPECS = Path(__file__).parents[2] / "specs"
LINE = "attachment takes: {4: 40%, 6: 50%, 8: 57.2%}"


def changed(text: str) -> str:
    staged = with_line(text.encode(), "room.yaml", LINE)
    assert staged.value is not None, staged.faults
    return staged.value.decode()


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("workroom: 1\n", f"workroom: 1\n{LINE}\n"),
        ("workroom: 1", f"workroom: 1\n{LINE}\n"),
        (
            "# ours\nworkroom: 1\nattachment takes: {6: 50%}  # last year\nbobbin: 25 m\n",
            f"# ours\nworkroom: 1\n{LINE}  # last year\nbobbin: 25 m\n",
        ),
        ("workroom: 1\nattachment takes:\n  5: 45%\n  6: 50%\nbobbin: 25 m\n", f"workroom: 1\n{LINE}\nbobbin: 25 m\n"),
        ("workroom: 1\nattachment takes:\n  6: 50%\n", f"workroom: 1\n{LINE}\n"),
        ("workroom: 1\r\nbobbin: 25 m\r\n", f"workroom: 1\r\nbobbin: 25 m\r\n{LINE}\r\n"),
    ],
)
def test_only_the_line_of_the_attachment_changes(before: str, after: str) -> None:
    assert changed(before) == after
    assert changed(after) == after


def test_a_file_at_fault_is_left_alone() -> None:
    staged = with_line(b"workroom: 1\nbobin: 25 m\n", "room.yaml", LINE)
    assert staged.value is None
    assert [fault.code for fault in staged.faults] == ["FB130"]


def test_the_command_writes_what_the_reader_reads(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    room = tmp_path / "room.yaml"
    room.write_bytes((SPECS / "workrooms" / "theatre.yaml").read_bytes())
    swatches = str(SPECS / "swatches" / "pleating.yaml")
    assert run(["swatch", swatches, "--cloth", "net", "--ratio", "2", "--into", str(room), "--format", "json"]) == 0
    told = json.loads(capsys.readouterr().out)["cloths"]["net"]
    assert told["setting"]["mark"] == 6
    read = read_workroom(room).value
    assert read is not None
    for row in told["marks"]:
        assert float(1 / (1 - read.lever_takes[str(int(row["mark"]))])) == pytest.approx(row["ratio"], rel=0.002)
    assert [path.name for path in tmp_path.iterdir()] == ["room.yaml"]


@pytest.mark.parametrize(
    ("options", "said"),
    [
        (["--cloth", "nett"], "has no strips of `nett`"),
        (["--into", "room.yaml"], "holds the marks of one cloth"),
        (["--ratio", "half"], "`--ratio half`"),
        (["--ratio", "0.5"], "is not a number of 1 or more"),
        (["--stitch", "3"], "is not a length such as 3 mm"),
    ],
)
def test_a_wrong_call_is_told(options: list[str], said: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["swatch", str(SPECS / "swatches" / "pleating.yaml"), *options]) == 2
    assert said in capsys.readouterr().err


TAKES = {"4": Fraction(2, 5), "6": Fraction(1, 2), "8": Fraction(4, 7)}  # to 5/3, 2 and 7/3


@pytest.mark.parametrize(
    ("ratio", "mark"),
    [("5/3", "4"), ("2", "6"), ("7/3", "8"), ("11/6", "5"), ("23/12", "5.5"), ("3/2", None), ("5/2", None)],
)
def test_a_mark_between_two_is_found_by_the_depth_of_the_pleat(ratio: str, mark: str | None) -> None:
    assert mark_for(TAKES, Fraction(ratio)) == (None if mark is None else Fraction(mark))


def test_marks_that_are_no_numbers_give_no_setting() -> None:
    assert mark_for({"deep": Fraction(1, 2), "shallow": Fraction(1, 3)}, Fraction(2)) is None
    assert mark_for({}, Fraction(2)) is None


@pytest.mark.parametrize(
    ("takes", "setting"),
    [
        (TAKES, "depth at mark 6, with the stitch length of your swatches"),
        ({"6": Fraction(2, 5), "8": Fraction(1, 2)}, "depth at mark 8, with the stitch length of your swatches"),
        ({}, "depth at mark 6: that takes the cloth to about half"),
    ],
)
def test_the_guide_sets_the_attachment_by_the_swatches_of_the_room(takes: dict[str, Fraction], setting: str) -> None:
    room = Workroom(gather_with="pleating attachment", lever_takes=takes)
    rehearsal = prove(order("larkspur", "M", room)).value
    assert rehearsal is not None
    done = next(done for done in rehearsal.run.performed if done.setup is SetUp.ATTACHMENT)
    assert done.drawn is not None
    assert done.drawn.ratio == 2
    telling = said(done, Phrasing(rehearsal.solved, room))
    assert any(setting in action.text for action in telling.actions)


def _room(folder: Path) -> Path:
    room = folder / "room.yaml"
    room.write_text("workroom: 1\ntitle: My room\n", encoding="utf-8")
    room.chmod(0o640)
    return room


def test_a_linked_workroom_stays_a_link_and_its_file_keeps_its_rights(tmp_path: Path) -> None:
    room, link = _room(tmp_path), tmp_path / "link.yaml"
    link.symlink_to(room)
    swatches = str(SPECS / "swatches" / "pleating.yaml")
    assert run(["swatch", swatches, "--cloth", "net", "--into", str(link)]) == 0
    assert link.is_symlink()
    assert "attachment takes" in room.read_text(encoding="utf-8")
    assert stat.S_IMODE(room.stat().st_mode) == 0o640


def test_a_write_that_fails_leaves_the_workroom_and_nothing_beside_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    room = _room(tmp_path)
    before = room.read_bytes()

    def full(_: int) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr("os.fsync", full)
    swatches = str(SPECS / "swatches" / "pleating.yaml")
    assert run(["swatch", swatches, "--cloth", "net", "--into", str(room)]) == 1
    assert "no space left on device; it is as it was" in capsys.readouterr().err
    assert room.read_bytes() == before
    assert list(tmp_path.iterdir()) == [room]
