"""The same order gives the same bytes, whatever the machine: hash seed, language, time zone, clock, folder."""

from __future__ import annotations

import io
import subprocess
import sys
from pathlib import Path

import pikepdf
import pytest

from tests.crash.killed import ROOT, Files, contents, quick_environment

SPEC = ROOT / "specs" / "foxglove.yaml"


@pytest.fixture(scope="module")
def compiled(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("compiled")


def made(folder: Path, compiled: Path, environment: dict[str, str], cwd: Path = ROOT, spec: Path = SPEC) -> Files:
    run = subprocess.run(
        [sys.executable, "-m", "furbelow", "make", str(spec), "--size", "B", "--out", str(folder)],
        cwd=cwd,
        capture_output=True,
        check=False,
        env={**quick_environment(compiled), "PYTHONPATH": str(ROOT), **environment},
    )
    assert run.returncode == 0, run.stderr.decode()
    return contents(folder)


@pytest.fixture(scope="module")
def usual(tmp_path_factory: pytest.TempPathFactory, compiled: Path) -> Files:
    return made(tmp_path_factory.mktemp("usual") / "guide", compiled, {"PYTHONHASHSEED": "1"})


@pytest.mark.parametrize(
    "environment",
    [
        {"PYTHONHASHSEED": "4711"},
        {"LC_ALL": "tr_TR.UTF-8", "LANG": "de_DE.UTF-8", "LANGUAGE": "fr"},
        {"LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONIOENCODING": "ascii"},
        {"TZ": "Pacific/Kiritimati", "PYTHONOPTIMIZE": "1"},
    ],
    ids=["hash seed", "language", "plain C", "time zone"],
)
def test_every_file_is_the_same_bytes(
    usual: Files, compiled: Path, environment: dict[str, str], tmp_path: Path
) -> None:
    other = made(tmp_path / "guide", compiled, environment)
    assert sorted(other) == sorted(usual)
    assert [name for name in usual if usual[name] != other[name]] == []


def test_the_date_of_the_environment_goes_into_pdf_and_epub_alone_in_every_time_zone(
    usual: Files, compiled: Path, tmp_path: Path
) -> None:
    # Source: reproducible-builds.org, "SOURCE_DATE_EPOCH Specification": seconds since 1970, UTC. 1700000000 is
    # 14 November 2023, 22:13:20 UTC.
    west, east = (
        made(tmp_path / zone[:4], compiled, {"SOURCE_DATE_EPOCH": "1700000000", "TZ": zone})
        for zone in ("America/Anchorage", "Pacific/Kiritimati")
    )
    assert west == east
    assert [name for name in usual if usual[name] != west[name]] == ["furbelow.json", "guide.epub", "guide.pdf"]
    with pikepdf.open(io.BytesIO(west["guide.pdf"])) as pdf:
        assert str(pdf.docinfo["/CreationDate"]).startswith("D:20231114221320")


def test_the_folder_it_is_run_in_leaves_no_trace(
    usual: Files, compiled: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / SPEC.name).write_bytes(SPEC.read_bytes())
    monkeypatch.chdir(tmp_path)
    other = made(Path("guide"), compiled, {}, cwd=tmp_path, spec=Path(SPEC.name))
    assert [name for name in usual if usual[name] != other.get(name)] == []


def test_no_file_names_the_machine_or_the_hour(usual: Files) -> None:
    for name, content in usual.items():
        assert str(ROOT).encode() not in content, name
        assert str(Path.home()).encode() + b"/" not in content, name
