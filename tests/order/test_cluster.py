"""A class made by a cluster: a real scheduler and two workers as processes here, one of them killed in the run."""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from furbelow.verbs.command import run

pytest.importorskip("distributed")

MARIGOLD = str(Path(__file__).parents[2] / "specs" / "marigold.yaml")
HEADING = "wearer;waist_girth (cm);hip_girth (cm);waist_height (cm)"
PUPILS = 8


@pytest.fixture
def workers(tmp_path: Path) -> Iterator[list[subprocess.Popen[bytes]]]:
    """The scheduler first, then its workers; its address is in the file `scheduler.json`."""
    told = tmp_path / "scheduler.json"
    started = [
        _started(
            "dask_scheduler", "--host", "127.0.0.1", "--port", "0", "--no-dashboard", "--scheduler-file", str(told)
        )
    ]
    try:
        for _ in range(2):
            options = ("--scheduler-file", str(told), "--nthreads", "1", "--no-nanny", "--no-dashboard")
            started.append(_started("dask_worker", *options, "--local-directory", str(tmp_path)))
        yield started
    finally:
        for process in reversed(started):
            process.kill()
            process.wait()


def _started(command: str, *options: str) -> subprocess.Popen[bytes]:
    call = [sys.executable, "-W", "ignore", "-m", f"distributed.cli.{command}", *options]
    return subprocess.Popen(call, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


@pytest.mark.filterwarnings("ignore")  # of the library's own threads when a worker is killed
def test_with_a_worker_killed_in_the_run_the_bytes_are_the_same(
    workers: list[subprocess.Popen[bytes]], tmp_path: Path
) -> None:
    import json

    import distributed

    connect: Any = distributed.Client  # which has no types
    told = tmp_path / "scheduler.json"
    deadline = time.monotonic() + 60
    while not (told.exists() and told.read_text()):
        assert time.monotonic() < deadline
        time.sleep(0.1)
    address = json.loads(told.read_text())["address"]
    with connect(address, set_as_default=False) as client:
        client.wait_for_workers(2, timeout=60)
    roster = tmp_path / "class.csv"
    rows = [f"{number};{66 + 2 * number};{92 + 2 * number};{100 + number}" for number in range(PUPILS)]
    roster.write_text("\n".join([HEADING, *rows]) + "\n", encoding="utf-8")
    call = ["make", MARIGOLD, "--class", str(roster), "--no-pdf", "--data"]
    assert run([*call, "--workers", "1", "--out", str(tmp_path / "here")]) == 0
    # The second worker is lost as soon as the first guide is written.
    killer = (
        "import os, signal, sys, time\n"
        "while not os.path.exists(sys.argv[1]): time.sleep(0.01)\n"
        "os.kill(int(sys.argv[2]), signal.SIGKILL)\n"
    )
    first = tmp_path / "there" / "0" / "guide.html"
    killing = subprocess.Popen([sys.executable, "-c", killer, str(first), str(workers[2].pid)])
    try:
        assert run([*call, "--cluster", address, "--out", str(tmp_path / "there")]) == 0
        assert killing.wait(timeout=10) == 0
    finally:
        killing.kill()
    assert workers[2].wait(timeout=10) != 0
    assert workers[1].poll() is None
    found = [
        {
            path.relative_to(tmp_path / name): path.read_bytes()
            for path in (tmp_path / name).rglob("*")
            if path.is_file()
        }
        for name in ("here", "there")
    ]
    assert len(found[0]) > PUPILS * 5
    assert found[0] == found[1]


def test_an_address_where_nobody_answers_is_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("furbelow.order.cluster._WAIT", 1)
    (tmp_path / "class.csv").write_text(f"{HEADING}\n1;70;96;101\n2;84;109;105\n", encoding="utf-8")
    call = ["make", MARIGOLD, "--class", str(tmp_path / "class.csv"), "--no-pdf", "--out", str(tmp_path / "out")]
    assert run([*call, "--cluster", "tcp://127.0.0.1:9"]) == 2
    assert "no scheduler answers at tcp://127.0.0.1:9" in capsys.readouterr().err
    assert not (tmp_path / "out").exists()
