"""Length, proof and time of cutting plans: python -m tests.benchmarks.cutting [--garments N]

Prints the check problem's trade-off, N invented garments (2-12 strips, 0-3 panels; the same ones every time), N of 3-7
sizes of whole panels beside their cheapest lanes, and the class of thirty: each alone, and pooled. Times are processor seconds; plans never depend on them.
"""

from __future__ import annotations

import random
import sys
from argparse import ArgumentParser
from fractions import Fraction
from math import inf
from time import process_time

from furbelow.garment.spec import Grain
from furbelow.s4_cut.lanes.grid import scale_of
from furbelow.s4_cut.lanes.in_lanes import in_lanes
from furbelow.s4_cut.lanes.limits import Limits, Work
from furbelow.s4_cut.lanes.pool import pooled
from furbelow.s4_cut.plain_plan import plain_plan
from furbelow.s4_cut.planner import best_plan, plan_cutting
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip
from furbelow.s4_cut.through_cuts import cut_apart
from furbelow.s4_cut.trade_off import trade_off

from tests.s4_cut.cases import PRICES, Case, class_of_thirty, cm
from tests.s4_cut.verify_plan import faults


def garment(number: int) -> Case:
    """An invented skirt: two or three tiers in one to three layers, often a waistband and two lining panels."""
    rng = random.Random(number)
    layers = rng.choice([1, 2, 2, 3])
    upper = rng.randrange(160, 400, 5)
    fullness = rng.choice([Fraction(3, 2), Fraction(2), Fraction(5, 2)])

    def tier(name: str, length: Fraction | int, depths: tuple[int, int], joins: int) -> Strip:
        return Strip(name, cm(int(length) // 5 * 5), cm(rng.randrange(*depths)), layers, True, cm(1), cm(30), joins)

    strips = [tier("upper", upper, (12, 30), 2), tier("flounce", upper * fullness, (15, 40), 2)]
    if rng.random() < 0.4:
        strips.append(tier("lower", upper * fullness * Fraction(3, 2), (15, 40), 3))
    if rng.random() < 0.7:
        strips.append(Strip("waistband", cm(rng.randrange(60, 110)), cm(rng.choice([6, 8, 10]))))
    if rng.random() < 0.4:
        grain: Grain = "across" if rng.random() < 0.5 else "along"
        strips.append(Strip("lining", cm(rng.randrange(50, 65)), cm(rng.randrange(40, 60)), 2, grain=grain))
    bolt = Bolt(cm(rng.choice([110, 136, 140, 150, 280])), folded=rng.random() < 0.3)
    return tuple(strips), bolt, PRICES._replace(cloth_per_mm=Fraction(rng.choice([18, 40, 90]), 10_000))


def garments(many: int) -> None:
    print(f"{many} garments, each planned by itself")
    times, proven, cloth, plain_cloth, gaps = [], 0, Fraction(0), Fraction(0), []
    for number in range(many):
        case = garment(number)
        began = process_time()
        plan = plan_cutting(*case)
        times.append(process_time() - began)
        for fault in faults(plan, *case):
            sys.exit(f"garment {number}: {fault}")
        proven += plan.proven
        if not plan.proven:
            gaps.append(f"{number}: {float(plan.gap):.1%} in {times[-1]:.1f} s")
        cloth += plan.laid_length
        plain_cloth += plain_plan(*case).laid_length
    ordered = sorted(times)
    print(f"  proven {proven} of {many}; not proven: {', '.join(gaps) or 'none'}")
    print(f"  seconds: median {ordered[many // 2]:.2f}, 9 in 10 {ordered[many * 9 // 10]:.2f}, max {ordered[-1]:.2f}")
    print(f"  cloth {float(cloth) / 1000:.1f} m, first fit {float(plain_cloth) / 1000:.1f} m")


def panels(number: int) -> Case:
    """An invented apron or slip of whole panels: a large one, one or two of middle size, bands and pockets."""
    rng = random.Random(number)
    grains: list[Grain] = ["along", "along", "free", "across"]
    strips = [Strip("front", cm(rng.randrange(50, 95)), cm(rng.randrange(45, 75)), rng.choice([1, 1, 2]))]
    for name, sizes, most in (
        ("side", (25, 60), 2),
        ("bib", (20, 40), 1),
        ("pocket", (15, 25), 2),
        ("tie", (60, 95), 2),
        ("band", (60, 110), 1),
        ("yoke", (30, 60), 2),
    ):
        if rng.random() < 0.6:
            long = name in ("tie", "band")
            depth = rng.randrange(6, 13) if long else rng.randrange(*sizes)
            strips.append(
                Strip(name, cm(rng.randrange(*sizes)), cm(depth), rng.randint(1, most), grain=rng.choice(grains))
            )
    prices = CutPrices(Fraction(rng.choice([40, 90, 180]), 10_000), Fraction(1, 4), Fraction(1, 2), Fraction(1, 20))
    return tuple(strips), Bolt(cm(rng.choice([110, 136, 150]))), prices


def of_panels(many: int) -> None:
    print(f"{many} garments of whole panels, at the prices of a home table")
    times, proven, freely, shears, saved, cost = [], 0, 0, 0, Fraction(0), Fraction(0)
    for number in range(many):
        case = panels(number)
        began = process_time()
        plan = plan_cutting(*case)
        times.append(process_time() - began)
        for fault in faults(plan, *case):
            sys.exit(f"panels {number}: {fault}")
        scale = scale_of(*case)
        lanes = Fraction(in_lanes(*case[:2], scale, Limits(), Work(), inf).cost) * scale.coin
        laid = [section for section in plan.sections if section.panels]
        proven, freely = proven + plan.proven, freely + bool(laid)
        shears += sum(cut_apart(each.panels, each.length, plan.usable_width) is None for each in laid)
        saved, cost = saved + lanes - plan.cost, cost + lanes
    ordered = sorted(times)
    print(f"  laid freely {freely}, of them cut with shears {shears}; proven {proven}")
    print(f"  cost {float(cost):.2f} in lanes, {float(saved):.2f} or {float(saved / cost):.1%} saved")
    print(f"  seconds: median {ordered[many // 2]:.2f}, 9 in 10 {ordered[many * 9 // 10]:.2f}, max {ordered[-1]:.2f}")


def check_problem() -> None:
    print("4 strips of 5.4 m x 28 cm and 8 of 2.7 m x 14 cm on 140 cm cloth, 10 cm grid, no seam at joins")
    strips = (
        Strip("flounce", cm(540), cm(28), 4, piecing=True, most_joins=9),
        Strip("yoke", cm(270), cm(14), 8, piecing=True, most_joins=9),
    )
    began = process_time()
    for plan in trade_off(strips, Bolt(cm(140), cm(10)), PRICES):
        told = "proven" if plan.proven else "not proven"
        print(f"  {float(plan.laid_length) / 1000:5.1f} m, {plan.joins} joins, {plan.setups} sections, {told}")
    print(f"  seconds: {process_time() - began:.2f} for the whole table")


def class_of_30() -> None:
    print("a class of thirty on 150 cm cloth; area bound 83.46 m")
    free = CutPrices(Fraction(20), Fraction(1), Fraction(1))
    bare = class_of_thirty(allowance=Fraction(0))
    for joins in (0, 2):
        total = Fraction(0)
        for wearer in range(30):
            plan = best_plan(bare[3 * wearer : 3 * wearer + 3], Bolt(cm(150), cm(5)), free, Limits(joins, 2))
            assert plan is not None
            total += plan.laid_length
        print(f"  each alone, {joins} joins at most, no seam at joins: {float(total) / 1000:.2f} m")
    strips, bolt = class_of_thirty(), Bolt(cm(150), cm(1))
    for per_metre in (Fraction(18, 10), Fraction(4), Fraction(9)):
        prices = PRICES._replace(cloth_per_mm=per_metre / 1000)
        began = process_time()
        plan = pooled(strips, bolt, prices)
        seconds = process_time() - began
        for fault in faults(plan, strips, bolt, prices):
            sys.exit(f"class: {fault}")
        print(
            f"  pooled, seams of 1 cm, cloth at {float(per_metre):.2f} a metre: {float(plan.laid_length) / 1000:.2f} m,"
            f" {plan.joins} joins, {plan.setups} sections, gap {float(plan.gap):.1%}, {seconds:.1f} s"
        )


if __name__ == "__main__":
    parser = ArgumentParser(description=__doc__)
    parser.add_argument("--garments", type=int, default=60)
    many = parser.parse_args().garments
    check_problem()
    garments(many)
    of_panels(many)
    class_of_30()
