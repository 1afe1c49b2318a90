"""Calls of every verb, sound ones and such with slips, by the hundred thousand.

    python -m tests.benchmarks.fuzz_calls --calls 100000

Prints how the calls of each verb ended, the slowest that plans nothing, the memory at its highest, and every promise that
was broken; every few thousand calls the figures so far. Every call is numbered, and `--only N` makes one again. Ctrl-C ends
the run early.
"""

from __future__ import annotations

import argparse
import random
import resource
import shutil
import signal
import tempfile
import time
import traceback
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path

from tests.fuzz.calls import PLANNED, call, called, kept
from tests.fuzz.chain import at_most

LONGEST = 2.0  # seconds of the processor, of a call that plans nothing
LONGEST_PLANNED = 60.0
MOST_MEMORY = 300  # MB
TELL_EVERY = 2_000
ENDED = {0: "done", 1: "at fault", 2: "wrong use"}


@dataclass
class Figures:
    """Of the calls so far."""

    ended: Counter[tuple[str, str]] = field(default_factory=Counter)
    broken: Counter[str] = field(default_factory=Counter)
    slowest: tuple[float, str] = (0.0, "")
    began: float = field(default_factory=time.perf_counter)

    @property
    def memory(self) -> int:
        """MB of this process at its highest."""
        return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024

    def line(self) -> str:
        calls = sum(self.ended.values()) + sum(self.broken.values())
        sound = sum(count for (_, how), count in self.ended.items() if how == "done")
        minutes, worked = (time.perf_counter() - self.began) / 60, time.process_time() / 60
        beside = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss // 1024
        return (
            f"{calls:,} calls in {minutes:.0f} minutes, {worked:.0f} of the processor; {sound:,} done"
            f" ({sound / max(calls, 1):.0%}), {sum(self.broken.values())} broken; slowest that plans nothing:"
            f" {self.slowest[0]:.2f} s, {self.slowest[1]}; memory at most {self.memory} MB, {beside} MB in a process beside"
        )


def main() -> int:
    parser = argparse.ArgumentParser()
    parser.add_argument("--calls", type=int, default=1_000)
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument("--only", type=int)
    told = parser.parse_args()
    figures = Figures()
    stopped: list[int] = []
    signal.signal(signal.SIGINT, lambda number, _frame: stopped.append(number))
    with tempfile.TemporaryDirectory() as place:
        for number in range(told.seed, told.seed + told.calls):
            if stopped:
                break
            if told.only not in (None, number):
                continue
            _one(number, Path(place) / "here", figures, shown=told.only is not None)
            if (number + 1) % TELL_EVERY == 0:
                print(figures.line(), flush=True)
    print(figures.line())
    for (verb, how), count in sorted(figures.ended.items()):
        print(f"  {count:>7,}  {verb}: {how}")
    for said, count in figures.broken.most_common():
        print(f"  BROKEN {count:>5,}  {said}")
    return 1 if figures.broken or figures.memory > MOST_MEMORY else 0


def _one(number: int, folder: Path, figures: Figures, *, shown: bool) -> None:
    """One call, by its number. Raises what it broke where it is shown."""
    luck = random.Random(number)
    made = call(luck)
    if number % 20 == 0:
        shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(exist_ok=True)
    start = time.process_time()
    try:
        if made.verb == "make" and (folder / "out" / "plans.json").is_file():
            kept(luck, folder / "out")
        with at_most(LONGEST_PLANNED if made.verb in PLANNED else LONGEST, working=True):
            code, printed = called(made, folder)
    except Exception as error:
        where = traceback.extract_tb(error.__traceback__)[-1]
        said = f"{type(error).__name__}: {str(error)[:90]} ({Path(where.filename).name}:{where.lineno})"
        figures.broken[f"{made.verb}: {said}"] += 1
        print(f"call {number} of {made.verb} {made.arguments}: {said}", flush=True)
        if shown:
            raise
        return
    taken = time.process_time() - start
    if made.verb not in PLANNED:
        figures.slowest = max(figures.slowest, (taken, f"call {number}, {made.verb}"))
    figures.ended[made.verb, ENDED[code]] += 1
    if shown:
        print(made, code, printed, sep="\n")


if __name__ == "__main__":
    raise SystemExit(main())
