"""What a class costs beside as many single makes, in one run: processor time, time on the clock, memory at its most.

`python -m tests.benchmarks.class_made --pupils 30` makes an invented class with and without PDF, some of its pupils alone,
the class once more with nothing changed and with one waist changed, and once with two workers; `--no-pdf` leaves the PDFs out.
`--pupils 30 300 1000` then makes the larger classes too, each beside the smallest, to tell how time a wearer and memory grow;
that takes half an hour and 600 MB of disk for the largest, which are given back. The memory is that of the largest process.
Goals: a class of 30 in a quarter of the processor time of 30 single makes; nothing changed in a second; time a wearer within
1.1 of that of the smallest class, and no more than 250 MB.

The package is compiled beforehand, as where it is installed: else a single make would mostly compile it, and a class cost
little beside it. Where others are at work on the machine, times of one run are to be compared with each other alone.
"""

from __future__ import annotations

import argparse
import os
import random
import resource
import shutil
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


def took(compiled: str, *call: str) -> Took:
    """Of one process with all that it starts. The memory is that of the largest of them. compiled: where byte-code lies."""
    before, start = resource.getrusage(resource.RUSAGE_CHILDREN), time.perf_counter()
    code = (
        "import atexit, resource, sys; from furbelow.verbs.command import main;"
        " each = (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN);"
        " most = lambda: max(resource.getrusage(who).ru_maxrss for who in each);"
        " atexit.register(lambda: print(most(), file=sys.stderr)); main(sys.argv[1:])"
    )
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    done = subprocess.run(
        [sys.executable, "-c", code, *call],
        cwd=ROOT,
        env={**kept, "PYTHONPYCACHEPREFIX": compiled},
        stdout=subprocess.DEVNULL,
        stderr=subprocess.PIPE,
        check=True,
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


MAKE = ("make", "specs/larkspur.yaml", "--workroom", "specs/workrooms/theatre.yaml")


def beside_single(place: str, compiled: str, pupils: int, name: str, more: list[str]) -> None:
    """A class beside single makes, and again with little to do."""
    file = Path(place, "class.csv")
    file.write_text(roster(pupils), encoding="utf-8")
    make = [*MAKE, "--class", str(file), *more]

    def alone(number: int) -> Took:
        return took(compiled, *make, "--only", str(number), "--out", os.path.join(place, f"alone {name}-{number}"))

    alone(ALONE + 1)  # compiles what is not compiled yet
    singly = [alone(number) for number in range(1, ALONE + 1)]
    one = sum(each.processor for each in singly) / ALONE
    print(f"{'one alone, ' + name:34} {one:7.2f} {sum(each.clock for each in singly) / ALONE:8.2f}")
    for workers in ("1", "2"):
        out = os.path.join(place, f"{name}-{workers}")
        whole = took(compiled, *make, "--workers", workers, "--out", out)
        told = f"{pupils} {name}, {workers} at work"
        print(
            f"{told:34} {whole.processor:7.2f} {whole.clock:8.2f} {whole.memory_mb:6.0f} {whole.processor / pupils / one:26.2f}"
        )
    for told, rows in (("nothing", roster(pupils)), ("one waist", with_one_changed(roster(pupils)))):
        file.write_text(rows, encoding="utf-8")
        again = took(compiled, *make, "--workers", "1", "--out", out)
        print(f"{told + ' changed':34} {again.processor:7.2f} {again.clock:8.2f} {again.memory_mb:6.0f}")


def larger(place: str, compiled: str, sizes: list[int], name: str, more: list[str]) -> None:
    """Classes of these sizes one after another: processor time a wearer, and how it stands to that of the first."""
    first = 0.0
    for pupils in sizes:
        file, out = Path(place, f"class-{pupils}.csv"), Path(place, f"grown {name}-{pupils}")
        file.write_text(roster(pupils), encoding="utf-8")
        whole = took(compiled, *MAKE, "--class", str(file), *more, "--workers", "1", "--out", str(out))
        a_wearer = whole.processor / pupils
        first = first or a_wearer
        told = f"{pupils} {name}, a wearer"
        print(
            f"{told:34} {a_wearer:7.3f} {whole.clock / pupils:8.3f} {whole.memory_mb:6.0f} {a_wearer / first:26.2f}",
            flush=True,
        )
        shutil.rmtree(out)  # a thousand guides fill a gigabyte


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--pupils", type=int, nargs="+", default=[30])
    parser.add_argument("--no-pdf", action="store_true")
    options = parser.parse_args()
    print(f"{'':34} {'cpu s':>7} {'clock s':>8} {'MB':>6} {'to one alone or the first':>26}")
    with tempfile.TemporaryDirectory() as place:
        compiled = os.path.join(place, "compiled")
        for name, more in [("without PDF", ["--no-pdf"]), ("with PDF", list[str]())][: 1 if options.no_pdf else 2]:
            beside_single(place, compiled, options.pupils[0], name, more)
            if len(options.pupils) > 1:
                larger(place, compiled, options.pupils, name, more)


if __name__ == "__main__":
    main()
