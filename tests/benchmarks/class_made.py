"""What a class costs beside as many single makes, in one run: processor time, time on the clock, memory at its most.

`python -m tests.benchmarks.class_made --pupils 30` makes an invented class with and without PDF, some of its pupils alone,
the class once more with nothing changed and with one waist changed, and once with two workers; `--no-pdf` leaves the PDFs out.
Goals: a class of 30 in a quarter of the processor time of 30 single makes; nothing changed in a second; memory that does not
grow with the class.
"""

from __future__ import annotations

import argparse
import os
import random
import resource
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import NamedTuple

ROOT = Path(__file__).parents[2]
HEADING = "wearer;waist_girth (cm);hip_girth (cm);waist_height (cm);knee_height (cm)"
ALONE = 3  # pupils that are made alone


class Took(NamedTuple):
    processor: float
    clock: float
    memory_mb: float


def took(*call: str) -> Took:
    """Of one process with all that it starts. The memory is that of the largest of them."""
    before, start = resource.getrusage(resource.RUSAGE_CHILDREN), time.perf_counter()
    code = (
        "import resource, sys; from furbelow.verbs.command import run; code = run(sys.argv[1:]);"
        " most = max(resource.getrusage(who).ru_maxrss for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN));"
        " print(most, file=sys.stderr); sys.exit(code)"
    )
    done = subprocess.run(
        [sys.executable, "-c", code, *call], cwd=ROOT, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, check=True
    )
    clock, after = time.perf_counter() - start, resource.getrusage(resource.RUSAGE_CHILDREN)
    processor = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    return Took(processor, clock, int(done.stderr.split()[-1]) / 1024)


def roster(pupils: int) -> str:
    drawn = random.Random(pupils)
    rows = [HEADING]
    for number in range(1, pupils + 1):
        waist = drawn.randint(660, 900) / 10
        hip = waist + drawn.randint(180, 260) / 10
        rows.append(f"{number};{waist};{hip:.1f};{drawn.randint(1000, 1060) / 10};{drawn.randint(440, 470) / 10}")
    return "\n".join(rows) + "\n"


def with_one_changed(rows: str) -> str:
    """The roster with the waist of its last pupil 2 cm wider."""
    *others, last = rows.splitlines()
    number, waist, *more = last.split(";")
    return "\n".join([*others, ";".join([number, f"{float(waist) + 2:.1f}", *more])]) + "\n"


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--pupils", type=int, default=30)
    parser.add_argument("--no-pdf", action="store_true")
    options = parser.parse_args()
    pupils = options.pupils
    print(f"{'':34} {'cpu s':>7} {'clock s':>8} {'MB':>6} {'cpu a guide to one alone':>26}")
    with tempfile.TemporaryDirectory() as place:
        file = Path(place, "class.csv")
        make = ["make", "specs/larkspur.yaml", "--class", str(file), "--workroom", "specs/workrooms/theatre.yaml"]
        for name, more in [("without PDF", ["--no-pdf"]), ("with PDF", list[str]())][: 1 if options.no_pdf else 2]:
            file.write_text(roster(pupils), encoding="utf-8")
            alone = [
                took(*make, *more, "--only", str(number), "--out", os.path.join(place, f"alone {name}-{number}"))
                for number in range(1, ALONE + 1)
            ]
            one = sum(each.processor for each in alone) / ALONE
            print(f"{'one alone, ' + name:34} {one:7.2f} {sum(each.clock for each in alone) / ALONE:8.2f}")
            for workers in ("1", "2"):
                out = os.path.join(place, f"{name}-{workers}")
                whole = took(*make, *more, "--workers", workers, "--out", out)
                told = f"{pupils} {name}, {workers} at work"
                print(
                    f"{told:34} {whole.processor:7.2f} {whole.clock:8.2f} {whole.memory_mb:6.0f} {whole.processor / pupils / one:26.2f}"
                )
            for told, rows in (("nothing", roster(pupils)), ("one waist", with_one_changed(roster(pupils)))):
                file.write_text(rows, encoding="utf-8")
                again = took(*make, *more, "--workers", "1", "--out", out)
                print(f"{told + ' changed':34} {again.processor:7.2f} {again.clock:8.2f} {again.memory_mb:6.0f}")


if __name__ == "__main__":
    main()
