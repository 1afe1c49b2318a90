"""Why the work takes so long: each step by what its seams, pins, gathers and set-ups take, and all of it together."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from furbelow.garment.solved import Because, Derivation
from furbelow.measure.measure_text import System
from furbelow.measure.quantity import Quantity
from furbelow.measure.units import TIME
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.hours import LAST_LOOK, Pace, TimeTable, Work, in_fives, pins_for, time_for
from furbelow.s5_buy.work import cutting_work, works_of

TOTAL, CUTTING, LOOK = "time", "cutting.time", "last_look.time"


def reasons_of_time(rehearsal: Rehearsal, cutting: Cutting, pace: Pace) -> Mapping[str, Derivation]:
    """`time` of the whole garment, `cutting.time`, and `step 3.time` for each step as it is numbered in the spec."""
    performed, system = rehearsal.run.performed, rehearsal.solved.spec.system
    works = [(f"step {done.step.written.index + 1}.time", work) for done, work in
             zip(performed, works_of(performed, cutting.joins), strict=True)]  # fmt: skip  # a name and its work
    found: dict[str, Derivation] = {}
    for name, work in (*works, (CUTTING, cutting_work(cutting))):
        for each in _of_work(name, work, pace, system):
            found[each.name] = each
    found[LOOK] = _told(LOOK, Fraction(LAST_LOOK), Because("reason-time-look", {}))
    steps = [name for name in (CUTTING, *(name for name, _ in works), LOOK) if found[name].value.value]
    found[TOTAL] = _sum(TOTAL, steps, found, system)
    return found


def _of_work(name: str, work: Work, pace: Pace, system: System) -> Iterator[Derivation]:
    """The time of one work, told in fives as the guide tells it, and what it is made of."""
    table = time_for((work,), pace)
    parts = dict(_parts(name, work, pace, table))
    yield from parts.values()
    summed = _sum(name, list(parts), parts, system)
    yield summed._replace(
        value=_minutes(Fraction(in_fives(table.minutes))),
        formula=f"round_near({summed.formula}, 5 min)",
        with_values=f"round_near({summed.with_values}, 5 min)",
    )


def _parts(name: str, work: Work, pace: Pace, table: TimeTable) -> Iterator[tuple[str, Derivation]]:
    """Each kind of work that the step has, with how much there is of it."""
    owner = name.removesuffix(".time")
    sewn = sum((length for _, length in work.seams), Fraction(0))
    counts = {
        "sewing": Because("reason-time-sewing", {"seams": len(work.seams), "metres": _metres(sewn)}),
        "handling": Because("reason-time-handling", {"seams": len(work.seams), "ends": work.thread_ends}),
        "set_ups": Because("reason-time-set-ups", {"changes": work.set_ups}),
        "pinning": Because("reason-time-pinning", {"pins": pins_for(work.pinned, pace.pin_spacing)}),
        "gathering": Because("reason-time-gathering", {"metres": _metres(work.gathered)}),
        "cutting": Because("reason-time-cutting", {"metres": _metres(work.cut), "sections": work.sections}),
        "pressing": Because("reason-time-pressing", {"metres": _metres(work.pressed)}),
        "tended": Because("reason-time-tended", {}),
    }
    for kind, because in counts.items():
        minutes: Fraction = getattr(table, kind)
        if minutes:
            part = f"{owner}.{kind}"
            yield part, _told(part, minutes, because)


def _metres(length: Fraction) -> int:
    return max(1, round(length / 1000)) if length else 0


def _sum(name: str, inputs: list[str], known: Mapping[str, Derivation], system: System) -> Derivation:
    total = sum((known[each].value.value for each in inputs), Fraction(0))
    put_in = " + ".join(known[each].value.show(system) for each in inputs)
    value = Quantity(total, TIME)
    return Derivation(name, value, " + ".join(inputs), put_in, tuple(inputs), None, None, "shopping")


def _told(name: str, minutes: Fraction, because: Because) -> Derivation:
    return Derivation(name, _minutes(minutes), "", "", (), None, None, "shopping", because)


def _minutes(minutes: Fraction) -> Quantity:
    # To whole minutes: nobody sews to the second.
    return Quantity(Fraction(max(1, round(minutes))) * 60 if minutes else Fraction(0), TIME)
