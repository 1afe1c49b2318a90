"""The numbers of a garment that can be explained: those that are solved, and those of the finished garment."""

from __future__ import annotations

from furbelow.diagnose.fault import Staged
from furbelow.garment.solved import Solved
from furbelow.order.chain import plan, prove, solved
from furbelow.order.order import Order

_OF_TIME = (".time", ".sewing", ".handling", ".set_ups", ".pinning", ".gathering", ".cutting", ".pressing", ".tended")


def explained(order: Order, name: str) -> Staged[Solved]:
    """Every measurement, with its derivation. Only where none has this name is the garment rehearsed for more:
    its weight and its hems are known of the finished garment alone, what is bought and how long it takes of its plan."""
    numbers = solved(order)
    if numbers.value is None or name in numbers.value.values:
        return numbers
    from furbelow.s3_rehearse.finished_garment import reasons_of

    proved = prove(order).value
    if proved is None:
        return numbers
    found = {**reasons_of(proved.run), **numbers.value.values}
    material = name.partition(".")[0]
    if name not in found and material in order.spec.materials:
        # Of a material, what is bought: that is known once it is cut.
        from furbelow.s5_buy.reasons import reasons_of_buying

        planned = plan(proved)
        if planned.value is None:
            return Staged(None, planned.faults)
        found |= reasons_of_buying(numbers.value, planned.value.cutting, planned.value.shopping)
    if name not in found and (name == "time" or name.endswith(_OF_TIME)):
        from furbelow.s5_buy.reasons_of_time import reasons_of_time
        from furbelow.s5_buy.sittings import pace_of

        planned = plan(proved)
        if planned.value is None:
            return Staged(None, planned.faults)
        found |= reasons_of_time(planned.value.rehearsal, planned.value.cutting, pace_of(order.room))
    return Staged(numbers.value._replace(values=found), numbers.faults)
