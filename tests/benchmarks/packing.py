"""Rectangles on a bolt, against the known optimum and against rectpack.

    python -m tests.benchmarks.packing tests/data/hopper_turton_C.json --seconds 2

Allowance any file with the shape {"instances": [{"name", "width", "rects": [[width, height], ...], "optimum"}]}; an
optimum of null is replaced by our own lower bound, and so are all with --turns. Seconds are those of one core
(process time), so that a busy machine does not change the figures. rectpack gets all its named algorithms and sort
orders on each instance; each has to fit everything into one less than the best so far, as often as it can; its figure
is the best of all. Every plan of both is checked for overlaps before it counts.
"""

from __future__ import annotations

import argparse
import json
import time
from collections.abc import Sequence
from itertools import product
from pathlib import Path
from typing import Any

from furbelow.s4_cut.panels.rectangles import TooWide, pack
from furbelow.s4_cut.panels.rectangles_bound import least_length

from tests.s4_cut.overlap import faults_of


def main() -> None:
    told = _arguments()
    ours: list[float] = []
    theirs: list[float] = []
    our_seconds: list[float] = []
    their_seconds: list[float] = []
    variants = [] if told.alone else _rectpack_variants()
    head = f"{'instance':<12}{'n':>5}{'optimum':>9}{'length':>8}{'bound':>7}{'over':>8}{'seconds':>9}{'tried':>11}"
    print(head + ("" if told.alone else f"{'rectpack':>10}{'over':>8}{'seconds':>9}"))
    for path in told.files:
        for instance in json.loads(path.read_text(encoding="utf-8"))["instances"]:
            rects = [(w, h) for w, h in instance["rects"]]
            width = instance["width"]
            start = time.process_time()
            packing = pack(
                rects,
                width,
                work=told.work,
                turns=told.turns,
                stop=lambda start=start: time.process_time() - start > told.seconds,  # type: ignore[misc]
            )
            if isinstance(packing, TooWide):
                raise SystemExit(f"{instance['name']}: {len(packing.rects)} rectangles are wider than {width}")
            took = time.process_time() - start
            _must_be_sound(instance["name"], rects, width, packing.length, packing.places)
            # The published optima are those without turning.
            optimum = (not told.turns and instance.get("optimum")) or packing.bound
            ours.append(packing.length / optimum - 1)
            our_seconds.append(took)
            line = (
                f"{instance['name']:<12}{len(rects):>5}{optimum:>9}{packing.length:>8}{packing.bound:>7}"
                f"{ours[-1]:>8.2%}{took:>9.2f}{packing.tried:>11,}"
            )
            if variants:
                start = time.process_time()
                length, places = _rectpack(rects, width, variants, told.turns)
                their_seconds.append(time.process_time() - start)
                _must_be_sound(f"{instance['name']} (rectpack)", rects, width, length, places)
                theirs.append(length / optimum - 1)
                line += f"{length:>10}{theirs[-1]:>8.2%}{their_seconds[-1]:>9.2f}"
            print(line, flush=True)
    if not ours:
        raise SystemExit("no instances in these files")
    print(_summary("furbelow", ours, our_seconds))
    if variants:
        print(_summary(f"rectpack, best of {len(variants)} variants", theirs, their_seconds))


def _summary(who: str, over: list[float], seconds: list[float]) -> str:
    return (
        f"{who}: over the optimum mean {sum(over) / len(over):.2%}, max {max(over):.2%}; "
        f"seconds mean {sum(seconds) / len(seconds):.2f}, max {max(seconds):.2f}; {len(over)} instances"
    )


def _must_be_sound(
    name: str, rects: list[tuple[int, int]], width: int, length: int, places: Sequence[tuple[int, int, bool]]
) -> None:
    if faults := faults_of(rects, width, length, places):
        raise SystemExit(f"{name}: {faults[0]}")


def _rectpack_variants() -> list[tuple[Any, Any]]:
    import rectpack  # type: ignore[import-untyped]

    named = [
        name
        for name in dir(rectpack)
        # The bare names are base classes, or twins of a named one.
        if name.startswith(("MaxRects", "Skyline", "Guillotine")) and name not in ("MaxRects", "Skyline", "Guillotine")
    ]
    sorts = [name for name in dir(rectpack) if name.startswith("SORT_")]
    return [(getattr(rectpack, a), getattr(rectpack, s)) for a, s in product(named, sorts)]


def _rectpack(
    rects: list[tuple[int, int]], width: int, variants: list[tuple[Any, Any]], turns: bool
) -> tuple[int, list[tuple[int, int, bool]]]:
    """The least length of all variants, and where that one puts each rectangle."""
    from rectpack import PackingBin, PackingMode, newPacker

    length, best = sum(max(rect) for rect in rects) + 1, []
    bound = least_length(rects, width, turns)
    for algorithm, order in variants:
        while length > bound:
            packer = newPacker(PackingMode.Offline, PackingBin.BBF, algorithm, order, rotation=turns)
            for k, (w, h) in enumerate(rects):
                packer.add_rect(w, h, k)
            packer.add_bin(width, length - 1)
            packer.pack()
            laid = packer.rect_list()
            if len(laid) < len(rects):
                break
            length, best = max(y + h for _, _, y, _, h, _ in laid), laid
    where = {k: (x, y, (w, h) != rects[k]) for _, x, y, w, h, k in best}
    return length, [where[k] for k in range(len(rects))]


def _arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="python -m tests.benchmarks.packing", description=__doc__.splitlines()[0])
    parser.add_argument("files", nargs="+", type=Path, metavar="FILE.json")
    parser.add_argument("--seconds", type=float, default=2.0, help="for each instance (2)")
    parser.add_argument("--work", type=int, default=10**12, help="placements to try at most, for each instance")
    parser.add_argument("--turns", action="store_true", help="rectangles may lie on their side")
    parser.add_argument("--alone", action="store_true", help="without rectpack")
    return parser.parse_args()


if __name__ == "__main__":
    main()
