"""Whether all prices stand in one currency: euros and pounds can't be added up."""

from __future__ import annotations

from collections.abc import Iterator

from furbelow.diagnose.fault import Fault, Label
from furbelow.s2_solve.equations import Equations
from furbelow.s2_solve.evaluate import Evaluation


def other_currencies(equations: Equations, workings: Evaluation) -> Iterator[tuple[str, Fault]]:
    """FB219 for each price that is in another currency than the first one."""
    first = ""
    for name, equation in equations.by_name.items():
        value = workings.values.get(name)
        if value is None or not equation.kind.priced or (currency := value.currency) == first:
            continue
        if not first:
            first = currency
            continue
        label = Label(equation.span) if equation.span else None
        headline = f"`{name}` is {value.show(workings.system)}, and other prices are in {first}"
        yield name, Fault("FB219", headline, label, help="give all prices in one currency")
