"""Time to prove a garment for each of 100 and of 2,000 bodies, reading the table counted in.

Run: python -m tests.benchmarks.many_bodies
"""

from __future__ import annotations

import platform
import time
from collections import Counter

from compiler.pipeline import Order, prove_each
from compiler.s1_read.read_wearers import read_wearers
from compiler.workroom import Workroom
from tests.bodies.survey import bodies, roster, skirt
from tests.demos.demos import spec as demo

REPEATS = 3


def seconds_a_body(number: int, garment: str) -> tuple[float, Counter[str]]:
    """The best of a few runs, in seconds of the processor for each body, and the refusals by code."""
    table = roster(bodies(number)).encode()
    best, refused = float("inf"), Counter[str]()
    for _ in range(REPEATS):
        spec = skirt() if garment == "marigold" else demo(garment)
        start = time.process_time()
        wearers = read_wearers(("class.csv", table)).value
        assert wearers is not None
        room = Workroom()
        refused = Counter()
        for _, staged in prove_each(Order(spec, each.name, each.body, {}, room) for each in wearers):
            refused.update({fault.code for fault in staged.faults if fault.is_error})
        best = min(best, (time.process_time() - start) / number)
    return best, refused


def main() -> None:
    print(f"Python {platform.python_version()}, best of {REPEATS}, processor time")
    for garment in ("marigold", "foxglove"):
        few, _ = seconds_a_body(100, garment)
        many, refused = seconds_a_body(2000, garment)
        print(f"{garment}: {few * 1000:.2f} ms a body at 100, {many * 1000:.2f} ms at 2,000, ratio {many / few:.3f}")
        print("  refused: " + (", ".join(f"{code} {count}" for code, count in refused.most_common()) or "none"))


if __name__ == "__main__":
    main()
