"""How the time of a guide grows with the tiers of a skirt: each stage by itself, in seconds of the processor.

Run: python -m tests.benchmarks.tiers 30. With several numbers (10 30 60 120) the later PDFs are set in a process beside,
whose time is not counted.
"""

from __future__ import annotations

import sys
import tempfile
import time
from pathlib import Path

from furbelow.order.chain import guide_of, in_work_order, plan, prove
from furbelow.order.make_one import make_one
from furbelow.order.shelf import Shelf

from tests.many_tiers import many_tiers


def main() -> None:
    for count in map(int, sys.argv[1:] or ["10", "30", "60", "120"]):
        order, marks = many_tiers(count), [time.process_time()]
        proved = prove(order).value
        assert proved is not None
        marks.append(time.process_time())
        proved = in_work_order(proved)
        marks.append(time.process_time())
        found = plan(proved).value
        assert found is not None
        marks.append(time.process_time())
        guide_of(found, order.wearer)
        marks.append(time.process_time())
        for with_pdf in (False, True):
            with tempfile.TemporaryDirectory() as place:
                make_one(order, Shelf(Path(place) / "guide", False), with_pdf=with_pdf)
            marks.append(time.process_time())
        names = ("prove", "order of work", "plan", "guide", "all without PDF", "all")
        taken = (f"{name} {after - before:.2f}" for name, before, after in zip(names, marks, marks[1:], strict=False))
        gap = found.cutting.sheet("lawn").plan.gap
        print(f"{count:>4} tiers: {', '.join(taken)}; gap {float(gap):.1%}", flush=True)


if __name__ == "__main__":
    main()
