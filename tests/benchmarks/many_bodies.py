"""Time to prove a garment for each body of a class of 100 and of one of 2,000, reading the table counted in.

Run: python -m tests.benchmarks.many_bodies
"""

from __future__ import annotations

import platform
import time
from collections import Counter
from statistics import median

from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove_each
from furbelow.order.order import Order
from furbelow.s1_read.read_wearers import read_wearers

from tests.bodies.survey import bodies, roster, skirt
from tests.demos.demos import spec as demo

FEW, MANY, REPEATS = 100, 2000, 3


def prove_class(garment: str, table: bytes) -> tuple[float, Counter[str]]:
    """Seconds of the processor for the whole class, and its refusals by code."""
    spec = skirt() if garment == "marigold" else demo(garment)
    room, refused = Workroom(), Counter[str]()
    start = time.process_time()
    wearers = read_wearers(("class.csv", table)).value or ()
    for _, staged in prove_each(Order(spec, each.name, each.body, {}, room) for each in wearers):
        refused.update({fault.code for fault in staged.faults if fault.is_error})
    return time.process_time() - start, refused


def main() -> None:
    print(f"Python {platform.python_version()}, processor time, middle of {REPEATS} rounds")
    drawn = bodies(MANY)
    # The small classes are the large one in parts, so that both hold the same bodies.
    parts = [roster(drawn[at : at + FEW]).encode() for at in range(0, MANY, FEW)]
    whole = roster(drawn).encode()
    for garment in ("marigold", "foxglove"):
        few, many = [], []
        for _ in range(REPEATS):
            few.append(sum(prove_class(garment, part)[0] for part in parts) / MANY)
            seconds, refused = prove_class(garment, whole)
            many.append(seconds / MANY)
        ratio = median(many) / median(few)
        print(
            f"{garment}: {median(few) * 1000:.2f} ms a body at {FEW}, {median(many) * 1000:.2f} ms at {MANY:,}, ratio {ratio:.3f}"
        )
        print("  refused: " + (", ".join(f"{code} {count}" for code, count in refused.most_common()) or "none"))


if __name__ == "__main__":
    main()
