"""`furbelow start` writes a small spec that is sound, and never writes over anything."""

from __future__ import annotations

from pathlib import Path

import pytest
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.make_one import make_guide
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.verbs.command import run
from furbelow.verbs.start import starting_spec


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


def test_the_schema_line_names_a_file_that_is_there() -> None:
    first = starting_spec("tansy", "tansy.yaml").splitlines()[0]
    head, _, uri = first.partition("$schema=")
    assert head == "# yaml-language-server: "
    assert Path(uri.removeprefix("file://")).is_file()


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
