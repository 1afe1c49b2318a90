"""One cutting plan for many wearers: full sections without joins first, then pieced ones for what is left."""

from __future__ import annotations

from fractions import Fraction
from itertools import product
from math import ceil, inf

from furbelow.s4_cut.lanes.across import lanes_across, shared_across
from furbelow.s4_cut.lanes.depths import Depth, depths_of
from furbelow.s4_cut.lanes.first_fit import first_fit
from furbelow.s4_cut.lanes.full_sections import FullSections, Stage
from furbelow.s4_cut.lanes.grid import Kind, Scale, kinds_of, scale_of
from furbelow.s4_cut.lanes.lay import Laying, lay_out, price
from furbelow.s4_cut.lanes.pieced_sections import lane_sets, pieced_sections, rough_sections
from furbelow.s4_cut.lanes.ways import way_choices
from furbelow.s4_cut.plan import CuttingPlan, How
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip

# Full sections are tried in several ways: how long they may be, in longest strips, and how dear a set-up is taken to
# be, in its true prices. No one of them is best for every class.
STRIPS_LONG = (Fraction(31, 10), Fraction(4))
SETUPS = (1, 3)
STAGES_TRIED = 6


def pooled(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan:
    """The cheapest plan found for many strips at once; each segment says whose it is.

    Strips lie along the bolt wherever they may. The bound is the width bound: no sections hold all lanes in less.
    Raises ValueError for a strip that does not fit (see `misfits`).
    """
    scale = scale_of(strips, bolt, prices)
    ways = next(way_choices(strips, bolt))
    along = kinds_of(strips, {i: way for i, way in enumerate(ways) if way != "across"}, scale)
    across = kinds_of(strips, {i: way for i, way in enumerate(ways) if way == "across"}, scale)
    over, over_bound = _over_the_width(across, scale)
    depths = depths_of(along)
    layings = min([first_fit(along, scale), *_sectioned(depths, scale)], key=lambda each: price(each, scale))
    bound = over_bound + _bound(depths, scale)
    return lay_out(layings + over, strips, bolt, prices, scale, bound, How.BEST_OF_CLASS)


def _sectioned(depths: tuple[Depth, ...], scale: Scale) -> list[list[Laying]]:
    """Whole plans for the pieces along the bolt: full sections to the end, or pieced after some of them."""
    plans = []
    full = FullSections(depths, scale)
    ways: list[list[Stage]] = []
    for strips_long, setups in product(STRIPS_LONG, SETUPS):
        stages = full.stages(strips_long, scale.setup * setups)
        if stages not in ways:  # where no section is longer than a table, some come to the same
            ways.append(stages)
    for stages in ways:
        least = inf
        # From the last stage back: pieced sections gain most where the full ones are no longer full.
        for stage in stages[: -STAGES_TRIED - 1 : -1]:
            plan = _finished(depths, stage, scale)
            if plan is None:
                continue
            cost = price(plan, scale)
            if cost > least:
                break
            least = cost
            plans.append(plan)
    return plans


def _finished(depths: tuple[Depth, ...], stage: Stage, scale: Scale) -> list[Laying] | None:
    if not any(map(any, stage.left)):
        return list(stage.layings)
    rough = rough_sections(depths, stage, scale)
    pieced = None if rough is None else pieced_sections(depths, stage, rough, scale)
    return None if pieced is None else [*stage.layings, *pieced]


def _over_the_width(kinds: tuple[Kind, ...], scale: Scale) -> tuple[list[Laying], int]:
    """Sections of lanes over the width, and a bound for what they cost."""
    options = lanes_across(kinds, scale)
    if options is not None:
        return options[-1][1], price(options[-1][1], scale)
    layings = shared_across(kinds, scale)
    area = sum(kind.length * kind.depth * kind.count for kind in kinds)
    return layings, area * scale.cloth // scale.width


def _bound(depths: tuple[Depth, ...], scale: Scale) -> int:
    """What the pieces along the bolt cost at the least: cloth by the width bound, one set-up, and their cuts."""
    if not depths:
        return 0
    totals = {index: depth.length(depth.counts) for index, depth in enumerate(depths)}
    _, least = lane_sets(depths, totals, scale)
    cuts = 1 + len(depths) + sum(sum(depth.counts) for depth in depths)
    return ceil(least - 1e-6) * scale.cloth + scale.setup + cuts * scale.cut
