"""Mutated specs, random files and specs with formulas of every shape through the whole chain, by the hundred thousand.

    python -m tests.benchmarks.fuzz --specs 100000 --files 10000 --formulas 10000

Prints how far the specs came, the slowest, the memory at its highest, and every promise that was broken; what broke
one is kept in the folder given with --keep. Every spec is numbered, and `--only N` runs one again. Ctrl-C ends the run
early, with its figures so far.
"""

from __future__ import annotations

import argparse
import random
import resource
import signal
import sys
import time
import traceback
from collections import Counter
from pathlib import Path

from tests.fuzz.chain import at_most, through_the_chain
from tests.fuzz.mutate import formulas, mutant, random_file

LONGEST = 2.0  # seconds of the processor that one spec may take
MOST_MEMORY = 300  # MB
WRITTEN = 20  # one sound spec in so many is cut and written as well


def main() -> int:
    told = _arguments()
    reached: Counter[str] = Counter()
    codes: Counter[str] = Counter()
    broken: Counter[str] = Counter()
    slowest = (0.0, "")
    stopped: list[int] = []
    signal.signal(signal.SIGINT, lambda number, _frame: stopped.append(number))
    began = time.perf_counter()
    kinds = [
        ("", mutant, told.specs),
        ("random file, ", random_file, told.files),
        ("formulas, ", formulas, told.formulas),
    ]
    inputs = (each for kind, make, count in kinds for each in [(kind, make)] * count)
    for number, (kind, make) in enumerate(inputs, told.seed):
        if told.only not in (None, number):
            continue
        content = make(random.Random(number))
        start = time.process_time()
        try:
            with at_most(LONGEST, working=True):
                came, faults = through_the_chain(content, size=number, write=number % told.write_one_in == 0)
        except Exception as error:
            where = traceback.extract_tb(error.__traceback__)[-1]
            broken[f"{type(error).__name__}: {str(error)[:90]} ({Path(where.filename).name}:{where.lineno})"] += 1
            _keep(told.keep, number, content, error)
            if told.only is not None:
                raise
        else:
            reached[f"{kind}{came}"] += 1
            codes.update({fault.code for fault in faults})
        slowest = max(slowest, (time.process_time() - start, f"number {number}"))
        if number % 10_000 == 0:
            print(f"{number:,}", file=sys.stderr)
        if stopped:
            break
    took = time.perf_counter() - began
    memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(f"{sum(reached.values()) + sum(broken.values()):,} inputs in {took:,.0f} s, seed {told.seed}")
    for came, count in reached.most_common():
        print(f"  {count:>8,}  {came}")
    print(f"slowest {slowest[0]:.2f} s of the processor ({slowest[1]}); memory at most {memory:.0f} MB")
    print(f"{len(codes)} fault codes met: {' '.join(sorted(codes))}")
    print(f"{sum(broken.values())} broke a promise")
    for what, count in broken.most_common(40):
        print(f"  {count:>8,}  {what}")
    return 1 if broken or memory > MOST_MEMORY else 0


def _keep(folder: Path | None, number: int, content: bytes, error: Exception) -> None:
    if folder is not None:
        folder.mkdir(parents=True, exist_ok=True)
        (folder / f"{number}.yaml").write_bytes(content)
        (folder / f"{number}.txt").write_text("".join(traceback.format_exception(error)), encoding="utf-8")


def _arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--specs", type=int, default=100_000)
    parser.add_argument("--files", type=int, default=10_000)
    parser.add_argument("--formulas", type=int, default=10_000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--write-one-in", type=int, default=WRITTEN)
    parser.add_argument("--keep", type=Path, default=None)
    parser.add_argument("--only", type=int, default=None)
    return parser.parse_args()


if __name__ == "__main__":
    sys.exit(main())
