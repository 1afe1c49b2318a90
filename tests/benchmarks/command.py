"""How long the command takes as a whole process, side by side with a bare interpreter start.

`python -m tests.benchmarks.command` runs each call in turn, round after round, and prints the least and the middle
processor time and wall time, and the ratio to the bare start. The goals hold on a quiet machine of two cores: help 60 ms,
check 150 ms, make without PDF 500 ms, make 60 times a bare start. Measured in November 2026 beside other work, as times of a bare
start (14 to 18 ms): help 4, check 15 to 17, make without PDF 33, make 58.
"""

from __future__ import annotations

import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
SPEC = "specs/larkspur.yaml"
ROUNDS = 11


def main() -> None:
    with tempfile.TemporaryDirectory() as out:
        furbelow = [sys.executable, "-m", "furbelow"]
        make = [*furbelow, "make", SPEC, "--size", "M", "--out"]
        calls = {
            "bare interpreter": [sys.executable, "-c", "pass"],
            "help": [*furbelow, "--help"],
            "check": [*furbelow, "check", SPEC],
            "make, no PDF": [*make, f"{out}/plain", "--no-pdf"],
            "make": [*make, f"{out}/whole"],
        }
        # Without its byte-code a package is compiled anew at every start.
        environment = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
        taken: dict[str, list[tuple[float, float]]] = {name: [] for name in calls}
        for _ in range(ROUNDS + 1):
            for name, call in calls.items():
                taken[name].append(_timed(call, environment))
    bare = statistics.median(cpu for cpu, _ in taken["bare interpreter"][1:])
    print(f"{'call':18} {'cpu ms least / middle':>22} {'wall ms least / middle':>24} {'cpu to bare start':>18}")
    for name, times in taken.items():
        cpus, walls = zip(*times[1:], strict=True)  # the first round fills the caches
        middle = statistics.median(cpus)
        print(
            f"{name:18} {min(cpus) * 1000:10.0f} / {middle * 1000:7.0f} {min(walls) * 1000:13.0f} /"
            f" {statistics.median(walls) * 1000:8.0f} {middle / bare:15.1f} x"
        )


def _timed(call: list[str], environment: dict[str, str]) -> tuple[float, float]:
    """Processor and wall time in seconds of one process."""
    before, start = resource.getrusage(resource.RUSAGE_CHILDREN), time.perf_counter()
    subprocess.run(call, cwd=ROOT, env=environment, stdout=subprocess.DEVNULL, check=True)
    wall, after = time.perf_counter() - start, resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime, wall


if __name__ == "__main__":
    main()
