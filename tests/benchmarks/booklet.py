"""A booklet of all sizes beside as many guides made alone, in one run: `python -m tests.benchmarks.booklet larkspur`.

Each is a command of its own, as a maker calls it; they go by turns, so that a busy machine slows both alike.
"""

from __future__ import annotations

import argparse
import subprocess
import sys
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter

from furbelow.s1_read.read_spec import read_spec

SPECS = Path(__file__).parents[2] / "specs"


def _seconds(*arguments: str) -> float:
    begun = perf_counter()
    subprocess.run([sys.executable, "-m", "furbelow", "make", *arguments], check=True, capture_output=True)
    return perf_counter() - begun


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("demos", nargs="*", default=["larkspur", "marigold", "foxglove"])
    parser.add_argument("--rounds", type=int, default=3)
    parser.add_argument("--no-pdf", action="store_true")
    options = parser.parse_args()
    more = ["--no-pdf"] if options.no_pdf else []
    for demo in options.demos:
        spec = read_spec(SPECS / f"{demo}.yaml").value
        assert spec is not None
        ratios = []
        for _ in range(options.rounds):
            with TemporaryDirectory() as folder:
                alone = sum(
                    _seconds(str(SPECS / f"{demo}.yaml"), "--size", size, "--out", f"{folder}/{size}", *more)
                    for size in spec.sizes
                )
                together = _seconds(str(SPECS / f"{demo}.yaml"), "--booklet", "--out", f"{folder}/booklet", *more)
                ratios.append(together / alone)
                print(f"{demo}: {len(spec.sizes)} guides {alone:.1f} s, the booklet {together:.1f} s", flush=True)
        print(f"{demo}: the booklet takes {median(ratios):.2f} of the time of its guides")


if __name__ == "__main__":
    main()
