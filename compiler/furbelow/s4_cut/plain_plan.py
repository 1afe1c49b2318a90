"""A cutting plan without a search: what a kept plan is held to, and far less to load."""

from __future__ import annotations

from itertools import islice

from furbelow.s4_cut.lanes.first_fit import first_fit, first_fit_across
from furbelow.s4_cut.lanes.grid import scale_of
from furbelow.s4_cut.lanes.lay import lay_out, price
from furbelow.s4_cut.lanes.ways import cloth_bound, ways_split
from furbelow.s4_cut.plan import CuttingPlan, How
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip

# First fit has to be there at once, so it tries only a few.
PLAIN_CHOICES = 12


def plain_plan(strips: tuple[Strip, ...], bolt: Bolt, prices: CutPrices) -> CuttingPlan:
    """The cheapest first-fit plan over the ways to lay the pieces: at once, and with nothing proven but the area."""
    scale = scale_of(strips, bolt, prices)
    _, layings = min(
        (
            (price(layings, scale), layings)
            for along, across in islice(ways_split(strips, bolt, scale), PLAIN_CHOICES)
            for layings in [first_fit(along, scale) + first_fit_across(across, scale)]
        ),
        key=lambda each: each[0],
    )
    bound = cloth_bound(strips, bolt, scale)
    return lay_out(layings, strips, bolt, prices, scale, bound, How.FIRST_FIT)
