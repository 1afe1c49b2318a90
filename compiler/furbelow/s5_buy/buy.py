"""Stage 5: what to buy for a garment, what it costs, and how long the work takes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import chain

from furbelow.diagnose.fault import Fault, Label, Severity, Span, Staged
from furbelow.garment.solved import Derivation
from furbelow.garment.spec import SupplyKind
from furbelow.garment.workroom import Workroom
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.cost import Costs
from furbelow.s5_buy.hours import LAST_LOOK, in_fives, time_for
from furbelow.s5_buy.lines import line_of
from furbelow.s5_buy.sewing import bobbins_for, runs_of
from furbelow.s5_buy.shopping import Line, ShoppingList
from furbelow.s5_buy.sittings import pace_of
from furbelow.s5_buy.thread import ThreadNeed, thread_for_seams
from furbelow.s5_buy.work import cutting_work, works_of

THREAD_WASTE = Fraction(3, 20)  # waste of 15 to 20 %: Technical Bulletin on thread consumption, American & Efird, 2008


def buy(rehearsal: Rehearsal, cutting: Cutting) -> Staged[ShoppingList]:
    """The list for one garment: cloth by its plan, trims and elastic by the steps, thread by the seams.

    Warns: FB601 where the garment is sewn and no thread is on the list; FB602 where an hour costs in another currency
    than the materials.
    """
    run, solved, room = rehearsal.run, rehearsal.solved, rehearsal.run.room
    joins = cutting.joins
    sewn = [runs_of(done, solved, joins) for done in run.performed]
    thread = thread_for_seams(chain.from_iterable(sewn), THREAD_WASTE)
    found = (line_of(rehearsal, cutting, material, thread) for material in solved.materials.values())
    lines = tuple(line for line in found if line is not None)
    pace = pace_of(room)
    works, cut = works_of(run.performed, joins), cutting_work(cutting)
    minutes = tuple(time_for((work,), pace).minutes for work in works)
    cutting_minutes = time_for((cut,), pace).minutes
    planned = sum(map(in_fives, (*minutes, cutting_minutes))) + LAST_LOOK
    price = next((each for each in solved.values.values() if each.origin == "material" and each.value.currency), None)
    currency = price.value.currency if price else room.currency
    shopping = ShoppingList(
        lines,
        thread,
        bobbins_for(sewn, room.bobbin),
        minutes,
        cutting_minutes,
        planned,
        currency,
        _costs(lines, Fraction(planned, 60), room) if currency == room.currency else None,
    )
    return Staged(shopping, (*_no_thread(rehearsal, thread), *_other_currency(price, room)))


def _costs(lines: Sequence[Line], hours: Fraction, room: Workroom) -> Costs | None:
    if room.hourly_rate is None:
        return None
    materials = sum((line.cost for line in lines if line.cost is not None), Fraction(0))
    return Costs(materials, hours * room.hourly_rate, room.margin)


def _no_thread(rehearsal: Rehearsal, thread: ThreadNeed) -> Iterator[Fault]:
    solved = rehearsal.solved
    if thread.total and not any(each.material.kind is SupplyKind.THREAD for each in solved.materials.values()):
        length = rehearsal.run.say.buy(thread.total)
        yield Fault(
            "FB601",
            f"the seams take {length} of thread, and no thread is among the materials",
            Label(Span.at_start(solved.spec.file)),
            help="add a material of the kind thread, so that it stands on the list",
            severity=Severity.WARNING,
        )


def _other_currency(price: Derivation | None, room: Workroom) -> Iterator[Fault]:
    if price is None or room.hourly_rate is None or price.value.currency == room.currency:
        return
    yield Fault(
        "FB602",
        f"the materials are priced in {price.value.currency} and an hour of work in {room.currency}, so no price to ask"
        " can be worked out",
        Label(price.span) if price.span else None,
        help="write the prices of the spec and of the workroom in one currency",
        severity=Severity.WARNING,
    )
