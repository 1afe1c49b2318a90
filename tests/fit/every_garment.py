"""Every garment of a grid, planned one by one: slow, and with nothing clever that could be wrong."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from itertools import product

from furbelow.fit.grid import as_chosen
from furbelow.measure.quantity import Quantity
from furbelow.order.at_least import at_least
from furbelow.order.chain import in_work_order, plan, prove
from furbelow.s5_buy.amounts import amounts

from tests.demos.demos import order


@dataclass(frozen=True)
class Garment:
    choices: Mapping[str, Quantity]
    takes: Mapping[str, Fraction]
    at_least: Mapping[str, Fraction]


@cache
def every_garment(name: str, size: str, grid: tuple[tuple[str, tuple[Quantity, ...]], ...]) -> tuple[Garment, ...]:
    found = []
    for row in product(*(values for _, values in grid)):
        choices = dict(zip((choice for choice, _ in grid), row, strict=True))
        written = {choice: as_chosen(choice, value, "metric") for choice, value in choices.items()}
        proved = prove(order(name, size, choices=written))
        if proved.value is None:
            continue
        planned = plan(proved.value).value
        low = at_least(in_work_order(proved.value)).value
        assert planned is not None
        assert low is not None
        found.append(
            Garment(
                choices,
                {key: value.value for key, value in amounts(planned.shopping).items()},
                {key: value.value for key, value in low.items()},
            )
        )
    return tuple(found)
