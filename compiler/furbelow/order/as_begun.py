"""The chain taken up again in the middle of the work: the pieces are cut, and the order of work stands."""

from __future__ import annotations

from furbelow.diagnose.fault import Staged
from furbelow.garment.limits import EASE_SHARE
from furbelow.garment.shop_step import with_shop_steps
from furbelow.garment.solved import Solved
from furbelow.order.chain import Planned
from furbelow.order.order import Order
from furbelow.s2_solve.solve import prepare
from furbelow.s2_solve.takes import allowances
from furbelow.s3_rehearse.rehearse import rehearse
from furbelow.s5_buy.buy import buy
from furbelow.techniques import technique_of


def solved_as_begun(order: Order, begun: Planned) -> Staged[Solved]:
    """Every measurement of the order's spec, whose pieces are cut; its steps in the order of `begun`.

    Sizes that were measured are not rounded, and what came out otherwise may be eased in.
    """
    staged = prepare(order.spec, allowances(order.spec, technique_of), order.room.rounding).solve(
        order.wearer, order.body, order.choices
    )
    if staged.value is None:
        return staged
    by_index = {step.written.index: step for step in staged.value.steps}
    steps = tuple(by_index[done.step.written.index] for done in begun.rehearsal.run.performed)
    solved = staged.value._replace(steps=steps, eases=EASE_SHARE)
    return Staged(with_shop_steps(solved, order.room), staged.faults)


def planned_as_begun(solved: Solved, begun: Planned) -> Staged[Planned]:
    """The garment proved from there, and what it takes; its cloth is cut as `begun` has it."""
    rehearsed = rehearse(solved, begun.rehearsal.run.room, technique_of)
    if rehearsed.value is None:
        return Staged(None, rehearsed.faults)
    bought = buy(rehearsed.value, begun.cutting)
    faults = (*rehearsed.faults, *bought.faults)
    return Staged(None if bought.value is None else Planned(rehearsed.value, begun.cutting, bought.value), faults)
