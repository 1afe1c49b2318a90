"""Linear and integer programs handed to HiGHS, one thread and no clock, so that a program has one answer."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import Any

from furbelow.named import NamedTuple

# (what each variable counts, by index; lower limit of the sum)
AtLeast = tuple[dict[int, float], float]

MOST_BRANCHES = 40
# An integer program is good enough within this share of its bound.
CLOSE_ENOUGH = 0.002


class Answer(NamedTuple):
    """Value of each variable, worth of each row (0 in an integer program), and the cost."""

    values: list[float]
    worths: list[float]
    cost: float


def least_cost(
    costs: Sequence[float], upper: Sequence[float], rows: Sequence[AtLeast], whole: Collection[int] = ()
) -> Answer | None:
    """The cheapest values between 0 and `upper` that satisfy every row; None if none were found.

    whole: indices of the variables that must be whole numbers.
    """
    import highspy
    import numpy as np

    # The bare solver: the class over it prints its name before it can be told to be quiet. Its stubs leave it untyped.
    make: Any = highspy.Highs.__base__
    model = make()
    model.setOptionValue("output_flag", False)
    model.setOptionValue("threads", 1)
    model.setOptionValue("mip_max_nodes", MOST_BRANCHES)
    model.setOptionValue("mip_rel_gap", CLOSE_ENOUGH)
    for index, (cost, high) in enumerate(zip(costs, upper, strict=True)):
        model.addVar(0.0, high)
        model.changeColCost(index, cost)
    for index in whole:
        model.changeColIntegrality(index, highspy.HighsVarType.kInteger)
    for counted, least in rows:
        indices = np.array(list(counted), dtype=np.int32)
        model.addRow(least, highspy.kHighsInf, len(counted), indices, np.array(list(counted.values()), dtype=float))
    model.run()
    solution = model.getSolution()
    if not solution.value_valid:
        return None
    return Answer(list(solution.col_value), list(solution.row_dual), model.getInfo().objective_function_value)
