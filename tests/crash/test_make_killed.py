"""kill -9 in the midst of `make`: each file is whole, old or new, and the list says which set is complete.

A few kills; `python -m tests.benchmarks.crash` does two hundred.
"""

from __future__ import annotations

import random
from pathlib import Path

from tests.crash.killed import Killing


def test_a_killed_make_leaves_whole_files_and_a_true_list_and_the_next_goes_through(tmp_path: Path) -> None:
    killing = Killing(tmp_path, random.Random(4))
    for number in range(4):
        killing.kill_once((number + 1) % 2)
    assert sum(killing.seen.values()) == 4
    killing.make(0)
