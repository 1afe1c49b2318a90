"""All stages on one screen: read -> solve -> rehearse -> cut -> buy -> write.

Each stage is a function from frozen values to a frozen value and its faults; a stage that fails ends the run.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from compiler.diagnostics import Fault, Staged
from compiler.s1_read.spec import Spec, Written
from compiler.s2_solve.solve import System, prepare
from compiler.s2_solve.solved import Solved
from compiler.s3_rehearse.rehearse import in_good_order, rehearse
from compiler.s3_rehearse.run import Rehearsal
from compiler.techniques.bookings import bookings
from compiler.workroom import Workroom


@dataclass(frozen=True)
class Order:
    """What is to be made: a spec for one body, with choices, in a workroom. `wearer`: "size M", "Bo"."""

    spec: Spec
    wearer: str
    body: Mapping[str, Written]
    choices: Mapping[str, Written]
    room: Workroom


def ready_for(order: Order) -> System:
    """What solving needs of the spec and the workroom, whoever the garment is for."""
    return prepare(order.spec, bookings(order.spec), order.room.rounding)


def solved(order: Order, ready: System | None = None) -> Staged[Solved]:
    """Every measurement for this body. ready: from another order of the same spec and workroom."""
    return (ready or ready_for(order)).solve(order.wearer, order.body, order.choices)


def prove(order: Order, ready: System | None = None) -> Staged[Rehearsal]:
    """Solve and rehearse: the garment proved for this body, and nothing written."""
    numbers = solved(order, ready)
    if not numbers.ok or numbers.value is None:
        return Staged(None, numbers.faults)
    rehearsed = rehearse(numbers.value, order.room)
    return Staged(rehearsed.value, (*numbers.faults, *rehearsed.faults))


def prove_each(orders: Iterable[Order]) -> Iterator[tuple[Order, Staged[Rehearsal]]]:
    """`prove` for one body after another; what they have in common is done once."""
    ready: System | None = None
    for order in orders:
        if ready is None or ready.spec is not order.spec or ready.rounding != order.room.rounding:
            ready = ready_for(order)
        yield order, prove(order, ready)


def make(order: Order, *, with_pdf: bool = True) -> Staged[Mapping[str, bytes]]:
    """The files of the guide by name. Their text is the same for the same order, whatever the machine."""
    proved = prove(order)
    if proved.value is None:
        return Staged(None, proved.faults)
    # The later stages are heavy to load and not needed to check a spec.
    from compiler.s4_cut.cut import cut
    from compiler.s5_buy.offers import cheapest_first
    from compiler.s5_buy.shopping import buy
    from compiler.s6_write.files import files_of

    rehearsal = in_good_order(proved.value)
    cutting = cut(rehearsal.solved, order.room)
    faults: tuple[Fault, ...] = (*proved.faults, *cutting.faults)
    if cutting.value is None:
        return Staged(None, faults)
    chosen = cheapest_first(cutting.value)
    shopping = buy(rehearsal, chosen)
    return Staged(files_of(rehearsal, chosen, shopping, order.wearer, with_pdf=with_pdf), faults)
