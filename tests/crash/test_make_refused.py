"""`make` where the disk is full or the folder may not be written to: said with the place and a mend, and nothing is half written."""

from __future__ import annotations

import errno
import json
import os
import resource
import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest
from furbelow.verbs.command import run

from tests.crash.killed import LIST, ROOT, Files, command, contents, quick_environment

LARKSPUR = ROOT / "specs" / "larkspur.yaml"
ROSTER = "wearer;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm)\n1;70;96;101;45\n2;78;104;104;46\n"


@pytest.fixture
def roster(tmp_path: Path) -> Path:
    file = tmp_path / "class.csv"
    file.write_text(ROSTER, encoding="utf-8")
    return file


@pytest.fixture
def changed(tmp_path: Path) -> Path:
    """The spec with another title and another length, so that every page is new."""
    file = tmp_path / "changed.yaml"
    text = LARKSPUR.read_text(encoding="utf-8")
    file.write_text(
        text.replace("en: Larkspur", "en: Tansy").replace("length: 300 cm", "length: 320 cm"), encoding="utf-8"
    )
    return file


def one(spec: Path, out: Path) -> list[str]:
    return ["make", str(spec), "--size", "M", "--no-pdf", "--out", str(out)]


def site(spec: Path, roster: Path, out: Path) -> list[str]:
    return ["make", str(spec), "--class", str(roster), "--no-pdf", "--out", str(out)]


def guides(folder: Path) -> Files:
    """All files but those that a class is begun with: what is cut for whom is fixed before the first guide is written."""
    begun = {"class.json", LIST} if (folder / "class.json").exists() else set()
    return {name: content for name, content in contents(folder).items() if name not in begun}


def lists_are_true(folder: Path, *, begun: bool = False) -> None:
    """Nothing half written lies about, and each list is complete and names what is there.

    begun: a class that was not ended says so in its own list.
    """
    found = contents(folder)
    assert not [name for name in found if name.endswith(".part")]
    for listing in folder.rglob(LIST):
        told = json.loads(listing.read_bytes())
        assert told["complete"] is not (begun and listing.parent == folder and (folder / "class.json").exists())
        assert all((listing.parent / name).is_file() for name in told["files"])


def refuse_writing(monkeypatch: pytest.MonkeyPatch, number: int) -> None:
    """What the system says of a full disk or a folder that is read only, at the lowest call that writes."""
    real_open = os.open

    def refusing(path: str | Path, flags: int, mode: int = 0o777) -> int:
        if flags & os.O_CREAT:
            raise OSError(number, os.strerror(number))
        return real_open(path, flags, mode)

    monkeypatch.setattr(os, "open", refusing)


@pytest.mark.parametrize(
    ("number", "reason", "mend"),
    [
        (errno.ENOSPC, "no space left on device", "make room on that disk"),
        (errno.EDQUOT, "disk quota exceeded", "make room on that disk"),
        (errno.EROFS, "read-only file system", "choose a folder that you may write to"),
        (errno.EACCES, "permission denied", "choose a folder that you may write to"),
        (errno.EIO, "input/output error", "choose another folder"),
    ],
)
def test_a_guide_that_can_not_be_written_names_the_place_and_a_mend_and_leaves_the_old_one(
    tmp_path: Path,
    changed: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    number: int,
    reason: str,
    mend: str,
) -> None:
    out = tmp_path / "out"
    assert run(one(LARKSPUR, out)) == 0
    before = contents(out)
    refuse_writing(monkeypatch, number)
    capsys.readouterr()
    assert run(one(changed, out)) == 1
    told = capsys.readouterr()
    assert f"FB654: the guide can't be written into {out}: {reason}" in told.err
    assert "what was there is as it was" in told.err
    assert mend in told.err
    assert "Traceback" not in told.err
    assert told.out == ""
    assert contents(out) == before
    # A new folder is not left behind empty.
    assert run(one(changed, tmp_path / "deep" / "new")) == 1
    assert not (tmp_path / "deep").exists()
    monkeypatch.undo()
    assert run(one(changed, out)) == 0
    assert contents(out) != before


def test_a_class_that_can_not_be_written_keeps_its_old_site_whole(
    tmp_path: Path, roster: Path, changed: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "out"
    assert run(site(LARKSPUR, roster, out)) == 0
    before = contents(out)
    refuse_writing(monkeypatch, errno.ENOSPC)
    capsys.readouterr()
    assert run(site(changed, roster, out)) == 1
    told = capsys.readouterr()
    assert f"can't be written into {out}: no space left on device" in told.err
    assert told.out == ""
    assert contents(out) == before


def in_a_process(
    call: list[str], room: Path, before: tuple[str, ...] = (), largest: int | None = None
) -> subprocess.CompletedProcess[str]:
    def limit() -> None:
        if largest is not None:
            resource.setrlimit(resource.RLIMIT_FSIZE, (largest, largest))

    return subprocess.run(
        [*before, *command(Path("x"), Path("y"))[:3], *call],
        cwd=ROOT,
        env={**quick_environment(room), "PYTHONDONTWRITEBYTECODE": "1"},
        preexec_fn=limit,
        capture_output=True,
        text=True,
        check=False,
    )


@pytest.mark.parametrize("kind", ["guide", "class"])
def test_where_the_system_takes_no_more_bytes_half_way_nothing_half_written_is_left(
    tmp_path: Path, roster: Path, changed: Path, kind: str
) -> None:
    """A limit on a file's size makes the system refuse the large page and take the small files, as a disk nearly full does."""
    out = tmp_path / "out"

    def call(spec: Path) -> list[str]:
        return one(spec, out) if kind == "guide" else site(spec, roster, out)

    assert run(call(LARKSPUR)) == 0
    before = guides(out)
    ended = in_a_process(call(changed), tmp_path, largest=100_000)
    assert ended.returncode == 1, ended.stderr
    assert f"can't be written into {out}" in ended.stderr
    assert "file too large" in ended.stderr
    assert "Traceback" not in ended.stderr
    assert guides(out) == before
    lists_are_true(out, begun=True)
    assert run(call(changed)) == 0
    lists_are_true(out)


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of 16 MB in memory; it takes a system that lets the tests mount one."""
    place = tmp_path / "disk"
    place.mkdir()
    mounted = shutil.which("mount") and subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=16m", "tmpfs", str(place)], capture_output=True, check=False
    )
    if not mounted or mounted.returncode:
        pytest.skip("no small disk may be mounted here")
    yield place
    subprocess.run(["umount", str(place)], check=True)


@pytest.mark.parametrize("kind", ["guide", "class"])
def test_on_a_disk_that_is_full_the_old_set_stays_and_with_room_the_new_one_comes(
    tmp_path: Path, small_disk: Path, roster: Path, changed: Path, capsys: pytest.CaptureFixture[str], kind: str
) -> None:
    out = small_disk / "out"

    def call(spec: Path) -> list[str]:
        return one(spec, out) if kind == "guide" else site(spec, roster, out)

    assert run(call(LARKSPUR)) == 0
    before = guides(out)
    ballast = small_disk / "ballast"
    free = os.statvfs(small_disk)
    ballast.write_bytes(b"W" * (free.f_bavail * free.f_frsize - 30_000))
    capsys.readouterr()
    assert run(call(changed)) == 1
    told = capsys.readouterr()
    assert "no space left on device" in told.err
    assert str(out) in told.err
    assert "Traceback" not in told.err
    assert guides(out) == before
    lists_are_true(out, begun=True)
    ballast.unlink()
    assert run(call(changed)) == 0
    assert guides(out) != before
    lists_are_true(out)


@pytest.mark.parametrize("kind", ["guide", "class"])
def test_a_folder_that_is_read_only_is_told_and_stays(tmp_path: Path, roster: Path, changed: Path, kind: str) -> None:
    out = tmp_path / "out"

    def call(spec: Path) -> list[str]:
        return one(spec, out) if kind == "guide" else site(spec, roster, out)

    # Root may write anywhere, unless it gives that right up.
    plain = () if os.geteuid() else ("setpriv", "--bounding-set=-all", "--inh-caps=-all")
    if plain and (
        not shutil.which("setpriv") or subprocess.run([*plain, "true"], capture_output=True, check=False).returncode
    ):
        pytest.skip("root can't give up its rights here")
    assert run(call(LARKSPUR)) == 0
    before = contents(out)
    folders = [out, *(path for path in out.rglob("*") if path.is_dir())]
    for folder in folders:
        folder.chmod(0o555)
    try:
        ended = in_a_process(call(changed), tmp_path, plain)
        new = in_a_process(one(changed, out / "new"), tmp_path, plain)
    finally:
        for folder in folders:
            folder.chmod(0o755)
    for each in (ended, new):
        assert each.returncode == 1, each.stderr
        assert "permission denied" in each.stderr
        assert "choose a folder that you may write to" in each.stderr
        assert "Traceback" not in each.stderr
    assert f"can't be written into {out / 'new'}" in new.stderr
    assert contents(out) == before


def test_a_page_edited_by_hand_is_kept_with_a_message_and_goes_when_told(
    tmp_path: Path, changed: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "out"
    assert run(one(LARKSPUR, out)) == 0
    (out / "guide.md").write_text("my own words", encoding="utf-8")
    before = contents(out)
    capsys.readouterr()
    assert run(one(changed, out)) == 1
    told = capsys.readouterr()
    assert f"{out / 'guide.md'} was edited after it was written; it was kept" in told.err
    assert "--replace" in told.err
    assert told.out == ""
    assert contents(out) == before
    assert run([*one(changed, out), "--replace"]) == 0
    assert "my own words" not in (out / "guide.md").read_text(encoding="utf-8")
    lists_are_true(out)
