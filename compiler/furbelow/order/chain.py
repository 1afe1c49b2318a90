"""All stages on one screen: read -> solve -> rehearse -> cut -> buy -> write.

Each stage is a function from frozen values to a frozen value and its faults; a stage that fails ends the run.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING

from furbelow.diagnose.fault import Staged
from furbelow.garment.shop_step import with_shop_steps
from furbelow.garment.solved import Solved
from furbelow.named import NamedTuple
from furbelow.order.order import Order
from furbelow.s2_solve.solve import Prepared, prepare
from furbelow.s2_solve.takes import allowances
from furbelow.s3_rehearse.rehearse import in_good_order, rehearse
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.techniques import technique_of

if TYPE_CHECKING:
    from furbelow.diagnose.fault import Fault
    from furbelow.s4_cut.cut import Cutting, Planner
    from furbelow.s5_buy.shopping import ShoppingList
    from furbelow.s6_write.guide.guide import Guide


def ready_for(order: Order) -> Prepared:
    """What solving needs of the spec and the workroom, whoever the garment is for."""
    return prepare(order.spec, allowances(order.spec, technique_of), order.room.rounding)


def solved(order: Order, ready: Prepared | None = None) -> Staged[Solved]:
    """Every measurement for this body. ready: from another order of the same spec and workroom."""
    found = (ready or ready_for(order)).solve(order.wearer, order.body, order.choices)
    return Staged(None if found.value is None else with_shop_steps(found.value, order.room), found.faults)


def prove(order: Order, ready: Prepared | None = None) -> Staged[Rehearsal]:
    """Solve and rehearse: the garment proved for this body, and nothing written."""
    numbers = solved(order, ready)
    if not numbers.ok or numbers.value is None:
        return Staged(None, numbers.faults)
    rehearsed = rehearse(numbers.value, order.room, technique_of)
    if rehearsed.value is not None and order.room.sitting is not None:
        rehearsed = _asked_of_sittings(rehearsed.value, rehearsed.faults)
    return Staged(rehearsed.value, (*numbers.faults, *rehearsed.faults))


def _asked_of_sittings(rehearsal: Rehearsal, faults: tuple[Fault, ...]) -> Staged[Rehearsal]:
    """Warns: FB603 of work that goes on for longer than a sitting, unless the spec accepts that."""
    from furbelow.s5_buy.sittings import longer_than_a_sitting  # most workrooms name no sitting

    found = tuple(longer_than_a_sitting(rehearsal.run, {}))
    because = rehearsal.solved.spec.accepted.get("FB603")
    if found and because:
        return Staged(rehearsal._replace(accepted=tuple(dict.fromkeys((*rehearsal.accepted, because)))), faults)
    return Staged(rehearsal, (*faults, *found))


def prove_each(orders: Iterable[Order]) -> Iterator[tuple[Order, Staged[Rehearsal]]]:
    """`prove` for one body after another; what they have in common is done once."""
    ready: Prepared | None = None
    for order in orders:
        if ready is None or ready.spec is not order.spec or ready.rounding != order.room.rounding:
            ready = ready_for(order)
        yield order, prove(order, ready)


class Planned(NamedTuple):
    """A proved garment with its cutting and its shopping list: all that the guide is written from."""

    rehearsal: Rehearsal
    cutting: Cutting
    shopping: ShoppingList


def in_work_order(rehearsal: Rehearsal) -> Rehearsal:
    """The same garment with its steps in the order that the workroom prefers."""
    return in_good_order(rehearsal, technique_of)


def plan(rehearsal: Rehearsal, planner: Planner | None = None) -> Staged[Planned]:
    """The cutting and the shopping list, the steps in the order that the workroom prefers.

    planner: finds each cloth's plan; without one it is planned afresh.
    """
    # The later stages are heavy to load and not needed to check a spec.
    from furbelow.s4_cut.cut import cut
    from furbelow.s5_buy.buy import buy
    from furbelow.s5_buy.offers import cheapest_first

    rehearsal = in_work_order(rehearsal)
    cutting = cut(rehearsal.solved, rehearsal.run.room, planner)
    if cutting.value is None:
        return Staged(None, cutting.faults)
    chosen = cheapest_first(cutting.value)
    bought = buy(rehearsal, chosen)
    faults = (*cutting.faults, *bought.faults)
    return Staged(None if bought.value is None else Planned(rehearsal, chosen, bought.value), faults)


def planned(order: Order) -> Staged[Planned]:
    """The garment proved and planned for this body, with all that both say."""
    return plan_proved(prove(order))


def planned_each(orders: Iterable[Order]) -> Iterator[tuple[Order, Staged[Planned]]]:
    """`planned` for one body after another; what they have in common is done once."""
    for order, proved in prove_each(orders):
        yield order, plan_proved(proved)


def plan_proved(proved: Staged[Rehearsal], planner: Planner | None = None) -> Staged[Planned]:
    """`plan` for what was proved, with the faults of both."""
    if proved.value is None:
        return Staged(None, proved.faults)
    found = plan(proved.value, planner)
    return Staged(found.value, (*proved.faults, *found.faults))


def guide_of(
    found: Planned,
    wearer: str,
    *,
    for_some: bool = False,
    begun: int | None = None,
    pile: int = 0,
    marked: bool = False,
) -> Guide:
    """The guide as a value, before it is a page. for_some, begun, pile, marked: see `compose`."""
    from furbelow.s6_write.guide.compose import compose

    return compose(*found, wearer, for_some=for_some, begun=begun, pile=pile, marked=marked)


def planned_from_pile(rehearsal: Rehearsal, share: Cutting) -> Staged[Planned]:
    """The garment as it is sewn from a share of what a class cuts together: the joins of that cutting, and its times.

    Of the cutting only the look through the pile is her own work.
    """
    from furbelow.s5_buy.buy import buy
    from furbelow.s5_buy.pile_time import with_pile_time

    rehearsal = in_work_order(rehearsal)
    bought = buy(rehearsal, share)
    if bought.value is None:
        return Staged(None, bought.faults)
    return Staged(Planned(rehearsal, share, with_pile_time(bought.value, rehearsal.run.room, share)), bought.faults)
