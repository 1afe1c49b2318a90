"""The numbers of a garment that can be explained: those that are solved, and those of the finished garment."""

from __future__ import annotations

from furbelow.diagnose.fault import Staged
from furbelow.garment.solved import Solved
from furbelow.order.chain import prove, solved
from furbelow.order.order import Order


def explained(order: Order, name: str) -> Staged[Solved]:
    """Every measurement, with its derivation. Only where none has this name is the garment rehearsed for more:
    its weight and its hems are known of the finished garment alone."""
    numbers = solved(order)
    if numbers.value is None or name in numbers.value.values:
        return numbers
    from furbelow.s3_rehearse.finished_garment import reasons_of

    proved = prove(order).value
    if proved is None:
        return numbers
    return Staged(numbers.value._replace(values={**reasons_of(proved.run), **numbers.value.values}), numbers.faults)
