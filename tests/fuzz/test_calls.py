"""A short run of calls of every verb at random, half of them sound; `python -m tests.benchmarks.fuzz_calls` makes the long one."""

from __future__ import annotations

import random
from pathlib import Path

from tests.fuzz.calls import PLANNED, call, called, kept
from tests.fuzz.chain import at_most


def test_calls_at_random_end_in_words_and_many_of_them_done(tmp_path: Path) -> None:
    ended = []
    for number in range(200_000, 200_120):
        luck = random.Random(number)
        made = call(luck)
        with at_most(60 if made.verb in PLANNED else 10, working=True):
            ended.append(called(made, tmp_path)[0])
    assert ended.count(0) > len(ended) / 3


def test_whatever_is_done_to_kept_plans_the_guide_is_the_same(tmp_path: Path) -> None:
    calls = map(call, map(random.Random, range(5_000)))
    made = next(each for each in calls if each.verb == "make" and each.sound and "--size" in each.arguments)
    assert called(made, tmp_path)[0] == 0
    before = (tmp_path / "out" / "guide.html").read_bytes()
    for number in range(12):
        kept(random.Random(number), tmp_path / "out")
        assert called(made, tmp_path)[0] == 0
        assert (tmp_path / "out" / "guide.html").read_bytes() == before
