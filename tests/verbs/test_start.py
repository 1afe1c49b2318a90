"""`furbelow start` writes a small spec that is sound, and never writes over anything."""

from __future__ import annotations

import resource
import signal
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.make_one import make_guide
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.verbs.command import run
from furbelow.verbs.start import starting_spec


@contextmanager
def limited_files(size: int) -> Iterator[None]:
    """No file may grow beyond so many bytes: what a full disk answers, without one."""
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    ignored = signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (size, before[1]))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
        signal.signal(signal.SIGXFSZ, ignored)


@pytest.fixture(autouse=True)
def _here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)


def test_the_new_spec_is_proved_for_every_size_without_a_warning(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["start", "Tansy skirt"]) == 0
    assert "tansy-skirt.yaml" in capsys.readouterr().out
    assert run(["check", "tansy-skirt.yaml"]) == 0
    told = capsys.readouterr()
    assert told.out == "tansy-skirt.yaml: sound; proved for 3 bodies\n"
    assert told.err == ""


def test_the_new_spec_makes_a_guide_under_its_title() -> None:
    spec = read_spec(("tansy.yaml", starting_spec("tansy skirt", "tansy.yaml").encode())).value
    assert spec is not None
    assert spec.title == "Tansy skirt"
    made = make_guide(Order(spec, "size M", spec.sizes["M"], {}, Workroom()), with_pdf=False)
    assert made.value is not None
    assert b"Tansy skirt" in made.value.files["guide.html"]


@pytest.mark.parametrize("choice", ["fullness", "skirt_length"])
def test_the_new_spec_is_sound_at_both_ends_of_its_choices(choice: str) -> None:
    spec = read_spec(("tansy.yaml", starting_spec("tansy", "tansy.yaml").encode())).value
    assert spec is not None
    for bound in (spec.choices[choice].low, spec.choices[choice].high):
        assert bound is not None
        for size, body in spec.sizes.items():
            assert prove(Order(spec, size, body, {choice: bound}, Workroom())).ok


@pytest.mark.parametrize("more", [[], ["--from", "larkspur"], ["--from", "foxglove"]])
def test_every_schema_line_names_a_file_beside_it(more: list[str], tmp_path: Path) -> None:
    assert run(["start", "tansy", *more]) == 0
    lines = [path.read_text(encoding="utf-8").splitlines()[0] for path in tmp_path.glob("*.yaml")]
    for line in lines:
        head, _, name = line.partition("$schema=")
        assert head == "# yaml-language-server: "
        assert not Path(name).is_absolute()
        assert Path(name).is_file()
    assert len(lines) >= 2


@pytest.mark.parametrize("more", [[], ["--from", "larkspur"], ["--from", "marigold"], ["--from", "foxglove"]])
def test_what_lies_beside_the_new_spec_goes_with_it(more: list[str], tmp_path: Path) -> None:
    assert run(["start", "tansy", *more]) == 0
    (roster,) = tmp_path.glob("class.*")
    asked = ["check", "tansy.yaml", "--workroom", "workroom.yaml"]
    assert run(asked) == 0
    if more != ["--from", "foxglove"]:  # its measures are other ones
        assert run([*asked, "--class", roster.name]) in (0, 1)


@pytest.mark.parametrize("name", ["FILE", "TITLE", "file title"])
def test_no_name_is_taken_for_a_place_of_the_template(name: str) -> None:
    spec = read_spec(("a.yaml", starting_spec(name, "a.yaml").encode())).value
    assert spec is not None
    assert spec.title == name[:1].upper() + name[1:]


def test_a_disk_without_room_leaves_no_empty_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    with limited_files(10):
        assert run(["start", "tansy"]) == 2
    assert not (tmp_path / "tansy.yaml").exists()


def test_a_strange_demo_is_told_with_the_nearest(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["start", "tansy", "--from", "larkspurr"]) == 2
    assert "did you mean larkspur?" in capsys.readouterr().err


@pytest.mark.parametrize("title", ["no", "12", "null", "jabot"])
def test_any_name_is_a_title(title: str) -> None:
    spec = read_spec(("a.yaml", starting_spec(title, "a.yaml").encode())).value
    assert spec is not None
    assert spec.title == title[:1].upper() + title[1:]


def test_what_stands_there_is_kept(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "tansy.yaml").write_text("mine")
    (tmp_path / "linked.yaml").symlink_to(tmp_path / "elsewhere")
    assert run(["start", "tansy"]) == 2
    assert run(["start", "linked"]) == 2
    assert (tmp_path / "tansy.yaml").read_text() == "mine"
    assert not (tmp_path / "elsewhere").exists()
    assert "was kept" in capsys.readouterr().err


@pytest.mark.parametrize(
    "name", ["../tansy", "/tmp/tansy", "", " ", "a/b", "a\\b", "nul", "CON", ".hidden", "a\nb", "x" * 90, "$(ls)"]
)
def test_a_name_that_leaves_the_folder_or_is_none_is_refused(name: str, tmp_path: Path) -> None:
    assert run(["start", name]) == 2
    assert list(tmp_path.iterdir()) == []
