"""Calls of every verb, sound ones and such with slips, by the hundred thousand.

    python -m tests.benchmarks.fuzz_calls --calls 100000

Prints how the calls of each verb ended, the slowest that plans nothing, the memory at its highest, and every promise that
was broken. Every call is numbered, and `--only N` makes one again. Ctrl-C ends the run early, with its figures so far.
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
from pathlib import Path

from tests.fuzz.calls import PLANNED, call, called, kept
from tests.fuzz.chain import at_most

LONGEST = 2.0  # seconds of the processor, of a call that plans nothing
LONGEST_PLANNED = 60.0
MOST_MEMORY = 300  # MB
ENDED = {0: "done", 1: "at fault", 2: "wrong use"}


def main() -> int:
    parser = argparse.ArgumentParser()
    parser.add_argument("--calls", type=int, default=1_000)
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument("--only", type=int)
    told = parser.parse_args()
    ended: Counter[tuple[str, str]] = Counter()
    broken: Counter[str] = Counter()
    slowest = (0.0, "")
    stopped: list[int] = []
    signal.signal(signal.SIGINT, lambda number, _frame: stopped.append(number))
    began, number = time.perf_counter(), told.seed
    with tempfile.TemporaryDirectory() as place:
        for number in range(told.seed, told.seed + told.calls):
            if stopped:
                break
            if told.only not in (None, number):
                continue
            luck = random.Random(number)
            made = call(luck)
            folder = Path(place) / "here"
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
                broken[f"{made.verb}: {said}"] += 1
                print(f"call {number} of {made.verb} {made.arguments}: {said}", flush=True)
                if told.only is not None:
                    raise
                continue
            taken = time.process_time() - start
            if made.verb not in PLANNED:
                slowest = max(slowest, (taken, f"call {number}, {made.verb}"))
            ended[made.verb, ENDED[code]] += 1
            if told.only is not None:
                print(made, code, printed, sep="\n")
    calls = sum(ended.values()) + sum(broken.values())
    sound = sum(count for (_, how), count in ended.items() if how == "done")
    memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
    print(
        f"{calls:,} calls in {(time.perf_counter() - began) / 60:.0f} minutes; {sound:,} done ({sound / max(calls, 1):.0%})"
    )
    for (verb, how), count in sorted(ended.items()):
        print(f"  {count:>7,}  {verb}: {how}")
    print(f"slowest that plans nothing: {slowest[0]:.2f} s, {slowest[1]}; memory at most {memory} MB")
    for said, count in broken.most_common():
        print(f"  BROKEN {count:>5,}  {said}")
    return 1 if broken or memory > MOST_MEMORY else 0


if __name__ == "__main__":
    raise SystemExit(main())
