"""Files are written whole or not at all, and what a person keeps in the folder is not harmed."""

from __future__ import annotations

import errno
import json
import os
import random
import signal
import subprocess
import sys
import time
from functools import partial
from hashlib import sha256
from pathlib import Path

import pytest
from furbelow.resources import schema
from furbelow.s6_write.folder import write_folder
from furbelow.s6_write.made_in_turn import MadeInTurn


class Held(bytes):
    """Bytes of which it can be told how many anybody holds."""

    now = 0

    def __init__(self, _content: bytes) -> None:
        Held.now += 1

    def __del__(self) -> None:
        Held.now -= 1


FIRST = {"guide.html": b"first page", "figures/hem.svg": b"<svg/>", "figures/band.svg": b"<svg id='b'/>"}
SECOND = {"guide.html": b"second page", "figures/hem.svg": b"<svg/>", "guide.md": b"second", "extra/a.csv": b"a"}


def _contents(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes() for path in sorted(folder.rglob("*")) if path.is_file()
    }


def _codes(folder: Path, files: dict[str, bytes], *, replace: bool = False) -> list[str]:
    return [fault.code for fault in write_folder(folder, files, replace=replace).faults]


def test_a_new_folder_gets_every_file_and_a_list_of_their_hashes(tmp_path: Path) -> None:
    written = write_folder(tmp_path / "new" / "guide", FIRST)
    assert written.value == ("figures/band.svg", "figures/hem.svg", "guide.html")
    assert written.ok
    found = _contents(tmp_path / "new" / "guide")
    listed = json.loads(found.pop("furbelow.json"))
    assert found == FIRST
    assert listed["complete"] is True
    assert listed["files"] == {name: sha256(content).hexdigest() for name, content in FIRST.items()}


def test_only_what_changed_is_written_and_what_fell_out_is_removed(tmp_path: Path) -> None:
    write_folder(tmp_path, FIRST)
    untouched = (tmp_path / "figures/hem.svg").stat().st_mtime_ns
    assert write_folder(tmp_path, SECOND).value == ("extra/a.csv", "guide.html", "guide.md")
    found = _contents(tmp_path)
    found.pop("furbelow.json")
    assert found == SECOND
    assert (tmp_path / "figures/hem.svg").stat().st_mtime_ns == untouched


def test_writing_the_same_again_touches_nothing(tmp_path: Path) -> None:
    write_folder(tmp_path, FIRST)
    before = (tmp_path / "furbelow.json").stat().st_mtime_ns
    assert write_folder(tmp_path, FIRST).value == ()
    assert (tmp_path / "furbelow.json").stat().st_mtime_ns == before


def test_files_may_be_made_as_they_are_written_and_only_a_few_are_held(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Each is made once, and no more are held than wait to be written and the one that was made last."""
    monkeypatch.setattr("furbelow.s6_write.folder._HELD_AT_ONCE", 3000)
    asked: list[str] = []
    most = [0]

    def make(name: str) -> bytes:
        asked.append(name)
        made = Held(name.encode() * 1000)
        most[0] = max(most[0], Held.now)
        return made

    names = list("abcdefghijklmnopqrstuvw")
    files = MadeInTurn({name: partial(make, name) for name in names})
    assert write_folder(tmp_path, files).value == tuple(names)
    assert sorted(asked) == names
    assert most[0] <= 5
    found = _contents(tmp_path)
    assert {name: found[name] for name in names} == {name: name.encode() * 1000 for name in names}
    assert write_folder(tmp_path, files).value == ()


def test_an_emptied_figure_folder_is_removed(tmp_path: Path) -> None:
    write_folder(tmp_path, FIRST)
    write_folder(tmp_path, {"guide.html": b"alone"})
    assert not (tmp_path / "figures").exists()


def test_an_edited_file_is_kept_and_named(tmp_path: Path) -> None:
    write_folder(tmp_path, FIRST)
    (tmp_path / "guide.html").write_bytes(b"my own words")
    before = _contents(tmp_path)
    (fault,) = write_folder(tmp_path, SECOND).faults
    assert fault.code == "FB653"
    assert str(tmp_path / "guide.html") in fault.headline
    assert _contents(tmp_path) == before


def test_a_foreign_file_is_kept_and_named(tmp_path: Path) -> None:
    (tmp_path / "guide.html").write_bytes(b"somebody's page")
    (fault,) = write_folder(tmp_path, FIRST).faults
    assert fault.code == "FB652"
    assert str(tmp_path / "guide.html") in fault.headline
    assert _contents(tmp_path) == {"guide.html": b"somebody's page"}


def test_every_file_that_is_in_the_way_is_told_at_once(tmp_path: Path) -> None:
    write_folder(tmp_path, FIRST)
    for name in ("guide.html", "figures/hem.svg"):
        (tmp_path / name).write_bytes(b"edited")
    (tmp_path / "guide.md").write_bytes(b"foreign")
    assert _codes(tmp_path, {**SECOND, "figures/hem.svg": b"new"}) == ["FB653", "FB653", "FB652"]


def test_replace_writes_over_edited_and_foreign_files(tmp_path: Path) -> None:
    write_folder(tmp_path, FIRST)
    (tmp_path / "guide.html").write_bytes(b"edited")
    (tmp_path / "guide.md").write_bytes(b"foreign")
    assert write_folder(tmp_path, SECOND, replace=True).ok
    assert (tmp_path / "guide.html").read_bytes() == b"second page"
    assert _codes(tmp_path, FIRST) == []


def test_an_edited_file_of_an_earlier_set_is_left_where_it_is(tmp_path: Path) -> None:
    write_folder(tmp_path, FIRST)
    (tmp_path / "figures/band.svg").write_bytes(b"edited")
    assert write_folder(tmp_path, SECOND).ok
    assert (tmp_path / "figures/band.svg").read_bytes() == b"edited"


def test_other_files_in_the_folder_are_not_touched(tmp_path: Path) -> None:
    (tmp_path / "notes.txt").write_bytes(b"mine")
    write_folder(tmp_path, FIRST)
    write_folder(tmp_path, SECOND)
    assert (tmp_path / "notes.txt").read_bytes() == b"mine"


@pytest.mark.parametrize(
    "name",
    [
        "../guide.html",
        "/etc/guide.html",
        "a/../b",
        "a/b/c",
        "",
        ".",
        "..",
        ".hidden",
        "figures/",
        "/",
        "a//b",
        "a\\b",
        "C:guide",
        "con",
        "NUL.svg",
        "figures/aux.svg",
        "com1",
        "a\x00b",
        "a\nb",
        "tail.",
        "furbelow.json",
        "x/Furbelow.JSON",
        "a b",
        "ü.html",
        "-rf",
        "W" * 300,
        "~",
        "figures/..",
    ],
)
def test_a_name_that_is_not_plain_is_refused_before_anything_is_written(tmp_path: Path, name: str) -> None:
    assert _codes(tmp_path / "out", {"guide.html": b"page", name: b"x"}) == ["FB650"]
    assert not (tmp_path / "out").exists()


def test_names_that_differ_in_capitals_alone_are_refused(tmp_path: Path) -> None:
    assert _codes(tmp_path, {"guide.md": b"a", "Guide.md": b"b"}) == ["FB650"]


@pytest.mark.parametrize("replace", [False, True])
@pytest.mark.parametrize("name", ["guide.html", "furbelow.json"])
def test_a_link_in_the_place_of_a_file_is_not_followed(tmp_path: Path, name: str, replace: bool) -> None:
    outside = tmp_path / "outside.txt"
    outside.write_bytes(b"not yours")
    (tmp_path / "out").mkdir()
    (tmp_path / "out" / name).symlink_to(outside)
    assert _codes(tmp_path / "out", FIRST, replace=replace) == ["FB651"]
    assert outside.read_bytes() == b"not yours"
    assert os.listdir(tmp_path / "out") == [name]


def test_a_linked_figure_folder_is_not_followed(tmp_path: Path) -> None:
    (tmp_path / "outside").mkdir()
    (tmp_path / "out").mkdir()
    (tmp_path / "out" / "figures").symlink_to(tmp_path / "outside")
    assert _codes(tmp_path / "out", FIRST, replace=True) == ["FB651"]
    assert os.listdir(tmp_path / "outside") == []


def test_a_dangling_link_is_seen_too(tmp_path: Path) -> None:
    (tmp_path / "guide.html").symlink_to(tmp_path / "nowhere")
    assert _codes(tmp_path, FIRST) == ["FB651"]
    assert not (tmp_path / "nowhere").exists()


def test_a_folder_or_a_pipe_in_the_place_of_a_file_is_refused_without_waiting(tmp_path: Path) -> None:
    (tmp_path / "guide.html").mkdir()
    os.mkfifo(tmp_path / "guide.md")
    assert _codes(tmp_path, SECOND, replace=True) == ["FB651", "FB651"]


@pytest.mark.parametrize(
    "text",
    [
        "",
        "[]",
        "{",
        '{"furbelow_files": 2}',
        '{"furbelow_files": 1, "files": []}',
        "[" * 100_000,
        '{"furbelow_files": 1, "files": {"../x": "0"}}',
        '{"furbelow_files": 1, "files": {"x": 3}}',
        "\xff",
    ],
)
def test_a_list_that_is_not_ours_is_kept(tmp_path: Path, text: str) -> None:
    (tmp_path / "furbelow.json").write_text(text, encoding="latin-1")
    assert _codes(tmp_path, FIRST, replace=True) == ["FB652"]
    assert os.listdir(tmp_path) == ["furbelow.json"]


def test_a_file_in_the_place_of_the_folder_is_told(tmp_path: Path) -> None:
    (tmp_path / "out").write_bytes(b"a file")
    (fault,) = write_folder(tmp_path / "out", FIRST).faults
    assert fault.code == "FB654"
    assert str(tmp_path / "out") in fault.headline


def _in_a_process(script: str, *arguments: str) -> subprocess.Popen[str]:
    root = Path(schema("x")).parents[1]  # the checkout, whatever is installed
    return subprocess.Popen(
        [sys.executable, "-c", script, *arguments],
        env={**os.environ, "PYTHONPATH": os.pathsep.join([str(root / "compiler"), str(root)])},
        stdout=subprocess.PIPE,
        text=True,
    )


def test_a_full_disk_leaves_the_old_files_whole_and_nothing_beside_them(tmp_path: Path) -> None:
    """The limit on a file's size makes the system refuse the bytes half way, as a full disk does."""
    write_folder(tmp_path, FIRST)
    before = _contents(tmp_path)
    script = (
        "import resource, sys; from pathlib import Path; from furbelow.s6_write.folder import write_folder\n"
        "resource.setrlimit(resource.RLIMIT_FSIZE, (4096, 4096))\n"
        "staged = write_folder(Path(sys.argv[1]), {'a.txt': b'small', 'guide.html': b'W' * 100_000})\n"
        "print(*(fault.code + ' ' + fault.headline for fault in staged.faults))"
    )
    shown, _ = _in_a_process(script, str(tmp_path)).communicate()
    assert shown.strip() == f"FB654 the guide can't be written into {tmp_path}: file too large"
    assert _contents(tmp_path) == before


def test_a_new_figure_folder_is_taken_away_again_when_the_disk_is_full(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_opened: int) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    monkeypatch.setattr(os, "fsync", full)
    (fault,) = write_folder(tmp_path, FIRST).faults
    assert fault.headline.endswith("no space left on device")
    assert os.listdir(tmp_path) == []


def test_a_read_only_folder_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    # The tests may run as root, whom no mode stops: so the system's answer is put in.
    real_open = os.open

    def refusing(path: str | Path, flags: int, mode: int = 0o777) -> int:
        if flags & os.O_CREAT:
            raise OSError(errno.EROFS, os.strerror(errno.EROFS))
        return real_open(path, flags, mode)

    monkeypatch.setattr(os, "open", refusing)
    (fault,) = write_folder(tmp_path, {"guide.html": b"x"}).faults
    assert (fault.code, fault.headline.endswith("read-only file system")) == ("FB654", True)


def test_a_stop_between_two_renames_is_told_and_mended_by_the_next_run(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    write_folder(tmp_path, FIRST)
    real_replace = os.replace

    def stopping(source: Path, target: Path) -> None:
        if target.name == "guide.md":
            raise OSError(errno.EIO, os.strerror(errno.EIO))
        real_replace(source, target)

    monkeypatch.setattr(os, "replace", stopping)
    assert _codes(tmp_path, SECOND) == ["FB655"]
    monkeypatch.undo()
    assert (tmp_path / "guide.html").read_bytes() == b"second page"
    assert json.loads((tmp_path / "furbelow.json").read_bytes())["complete"] is False
    assert write_folder(tmp_path, SECOND).ok
    assert json.loads((tmp_path / "furbelow.json").read_bytes())["complete"] is True


_DIES_AT_EACH_CALL = """
import os, sys
from pathlib import Path
from furbelow.s6_write.folder import write_folder
from tests.s6_write.test_folder import FIRST, SECOND
def counted(real):
    def call(*given, **more):
        global left
        left -= 1
        if left == 0:
            os._exit(9)
        return real(*given, **more)
    return call
os.fsync = lambda opened: None  # what is tried here is the order of the calls, not the disk
moment, ended = 0, None
while ended != 0:
    moment += 1
    out = Path(sys.argv[1], str(moment))
    write_folder(out, FIRST)
    child = os.fork()
    if child == 0:
        left = moment
        for name in ("open", "fsync", "replace", "unlink", "mkdir", "rmdir"):
            setattr(os, name, counted(getattr(os, name)))
        os._exit(1 if write_folder(out, SECOND).faults else 0)
    ended = os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])
    print(ended)
"""


def test_dead_before_any_call_to_the_system_each_file_is_whole_and_the_next_run_goes_through(tmp_path: Path) -> None:
    """The process ends without a word before the first, the second, ... call that changes the disk."""
    shown, _ = _in_a_process(_DIES_AT_EACH_CALL, str(tmp_path)).communicate()
    ends = shown.split()
    assert len(ends) > 20
    assert set(ends[:-1]) == {"9"}
    assert ends[-1] == "0"
    states = []
    for moment in range(1, len(ends) + 1):
        out = tmp_path / str(moment)
        for name, content in _contents(out).items():
            if not name.endswith((".part", ".json")):
                assert content in (FIRST.get(name), SECOND.get(name))
        listed = json.loads((out / "furbelow.json").read_bytes())
        states.append(listed["complete"])
        if listed["complete"]:
            for name, is_hash in listed["files"].items():
                assert sha256((out / name).read_bytes()).hexdigest() == is_hash
        assert write_folder(out, SECOND).faults == ()
        found = _contents(out)
        assert json.loads(found.pop("furbelow.json"))["complete"] is True
        assert found == SECOND
    assert states[0] is True
    assert states[-1] is True
    assert False in states


def test_killed_at_random_moments_again_and_again_each_file_is_whole(tmp_path: Path) -> None:
    script = (
        "import sys; from pathlib import Path; from furbelow.s6_write.folder import write_folder\n"
        "turn = 0\n"
        "print('ready', flush=True)\n"
        "while True:\n"
        "    turn += 1\n"
        "    files = {f'f{n}.txt': (b'%d ' % turn) * 20_000 for n in range(8 + turn % 3)}\n"
        "    faults = write_folder(Path(sys.argv[1]), files).faults\n"
        "    if faults: print(faults, flush=True)\n"
    )
    chance = random.Random(9)
    for _ in range(8):
        process = _in_a_process(script, str(tmp_path))
        assert process.stdout is not None
        assert process.stdout.readline() == "ready\n"
        time.sleep(chance.uniform(0.0, 0.08))
        process.send_signal(signal.SIGKILL)
        shown, _ = process.communicate()
        assert shown == ""
        for name, content in _contents(tmp_path).items():
            if name.endswith(".txt"):
                turn = content.split(b" ", 1)[0]
                assert content == (turn + b" ") * 20_000
    assert write_folder(tmp_path, FIRST).ok
    found = _contents(tmp_path)
    found.pop("furbelow.json")
    assert found == FIRST
