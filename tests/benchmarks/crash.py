"""Kills `make` with signal 9 at random moments over an existing folder, and looks at what is left.

    python -m tests.benchmarks.crash --kills 200

A third of the kills falls anywhere in the run, a third within 0.03 s after the first file is begun, a third within
0.005 s after the list says that the set is not complete, while files are renamed.
"""

from __future__ import annotations

import argparse
import random
import tempfile
from pathlib import Path

from tests.crash.killed import Killing


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--kills", type=int, default=200)
    parser.add_argument("--seed", type=int, default=1)
    told = parser.parse_args()
    with tempfile.TemporaryDirectory() as room:
        killing = Killing(Path(room), random.Random(told.seed))
        for number in range(told.kills):
            killing.kill_once((number + 1) % 2)
        killing.make(told.kills % 2)
    print(f"{told.kills} kills, every file whole and every list true; the run after them went through")
    for state, count in killing.seen.most_common():
        print(f"  {count:>5}  {state}")


if __name__ == "__main__":
    main()
