"""The same cutting problem as one integer program for HiGHS, beside our own search: python -m tests.benchmarks.cutting_milp

Why there is a search of our own: how long a section is multiplies how many lanes it has, so a linear program needs every
lane by itself, and like lanes and like copies can change places. Lanes run along the bolt; nothing is counted but cloth,
joins and set-ups. Seconds are those of a clock.
"""

from __future__ import annotations

from argparse import ArgumentParser
from fractions import Fraction
from itertools import product
from time import perf_counter
from typing import Any

import highspy
from furbelow.s4_cut.planner import plan_cutting
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip

from tests.s4_cut.cases import cm

PRICES = CutPrices(Fraction(4, 1000), Fraction(1, 4), Fraction(1, 2), Fraction(0))


def problem(layers: int) -> tuple[tuple[Strip, ...], Bolt]:
    """Tiers of a petticoat of so many layers, joined without a seam."""
    upper = Strip("upper", cm(270), cm(14), 2 * layers, True, cm(0), cm(30), 2)
    flounce = Strip("flounce", cm(540), cm(28), layers, True, cm(0), cm(30), 2)
    return (flounce, upper), Bolt(cm(140), cm(10))


def by_program(strips: tuple[Strip, ...], bolt: Bolt, seconds: float, sections: int = 2) -> tuple[float, float]:
    """The cost of the best layout that HiGHS found in the time, and the bound that it proved. Lengths in m."""
    copies = [strip for strip in strips for _ in range(strip.count)]
    lanes = int(bolt.usable_width / min(strip.depth for strip in strips))
    places = list(product(range(sections), range(lanes)))
    make: Any = highspy.Highs  # its stubs leave it untyped
    model = make()
    model.setOptionValue("output_flag", False)
    model.setOptionValue("time_limit", seconds)
    longest = sum(float(strip.length) for strip in copies) / 1000
    lengths = [model.addVariable(0, longest, float(PRICES.cloth_per_mm) * 1000) for _ in range(sections)]
    used = [model.addBinary(float(PRICES.per_setup)) for _ in range(sections)]
    depths = {place: model.addVariable(0, float(bolt.usable_width), 0) for place in places}
    for section in range(sections):
        model.addConstr(lengths[section] <= longest * used[section])
        model.addConstr(
            sum((depths[section, lane] for lane in range(1, lanes)), 1 * depths[section, 0]) <= float(bolt.usable_width)
        )
    lying: dict[tuple[int, int], list[Any]] = {place: [] for place in places}
    for copy in copies:
        cut, there = [], []
        for place in places:
            length, here = model.addVariable(0, longest, 0), model.addBinary(float(PRICES.per_join))
            whole = float(copy.length) / 1000
            model.addConstr(length <= whole * here)
            model.addConstr(length >= float(copy.shortest_segment) / 1000 * here)
            model.addConstr(depths[place] >= float(copy.depth) * here)
            lying[place].append(length)
            cut.append(length)
            there.append(here)
        model.addConstr(sum(cut[1:], 1 * cut[0]) == float(copy.length) / 1000)
        model.addConstr(sum(there[1:], 1 * there[0]) <= copy.most_joins + 1)
    for (section, _), segments in lying.items():
        model.addConstr(sum(segments[1:], 1 * segments[0]) <= lengths[section])
    model.run()
    info = model.getInfo()
    first = float(PRICES.per_join) * len(copies)  # the first piece of a copy is no join
    return info.objective_function_value - first, info.mip_dual_bound - first


if __name__ == "__main__":
    parser = ArgumentParser()
    parser.add_argument("--seconds", type=float, default=60)
    options = parser.parse_args()
    for layers in (1, 2, 4):
        strips, bolt = problem(layers)
        begun = perf_counter()
        plan = plan_cutting(strips, bolt, PRICES)
        ours = perf_counter() - begun
        begun = perf_counter()
        cost, bound = by_program(strips, bolt, options.seconds)
        theirs = perf_counter() - begun
        proven = "proven" if plan.proven else f"bound {float(plan.bound):.2f}"
        print(f"{layers} layers: our search {float(plan.cost):.2f}, {proven}, {ours:.2f} s;", end=" ")
        print(f"one program {cost:.2f}, bound {bound:.2f}, {theirs:.1f} s", flush=True)
