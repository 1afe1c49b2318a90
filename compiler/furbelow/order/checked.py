"""What a check asks beyond the proof of each body: whether it can be cut, and whether the choices hold to their ends."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence

from furbelow.diagnose.fault import Fault, Label, Severity, Staged, has_errors
from furbelow.garment.spec import Choice, Spec, Written
from furbelow.named import NamedTuple
from furbelow.order.chain import prove_each
from furbelow.order.order import Order
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.uncuttable import uncuttable

_NUMBERS = re.compile(r"[0-9./ ]+")  # like faults differ in these alone
OWN_RULE = "FB216"  # what the maker herself refuses
TOO_FULL = "FB315"  # a warning that is no default's: it tells that an end of a range goes further than the cloth


class Checked(NamedTuple):
    """What is said of a spec for all bodies together. refused: whom it can't be made for, by the code of the fault."""

    faults: tuple[Fault, ...]
    bodies: int
    proved: int
    refused: Mapping[str, Sequence[str]]


def checked(spec: Spec, orders: Sequence[Order]) -> Checked:
    """The spec proved for each body, and for the ends of its choices. A fault of the spec shows in every size; it is
    told once, with the numbers of the body whose mend does for all, else of the first."""
    each: list[Sequence[Fault]] = []
    sound: list[Order] = []
    refused: dict[str, list[str]] = {}
    for order, staged in checked_each(orders):
        if staged.ok:
            sound.append(order)
        for code in dict.fromkeys(fault.code for fault in staged.faults if fault.is_error):
            refused.setdefault(code, []).append(order.wearer)
        each.append(staged.faults)
    found = told_once(spec.file, each)
    if not has_errors(found):
        found += at_the_ends(sound)
    return Checked(tuple(found), len(orders), len(sound), refused)


def told_once(spec: str, bodies: Iterable[Sequence[Fault]]) -> list[Fault]:
    """The faults of all bodies in the order in which they are met, those of one place once."""
    found: list[Fault] = []
    where: dict[tuple[object, ...], int] = {}
    seen: set[tuple[object, ...]] = set()
    for faults in bodies:
        new = set()
        for fault in faults:
            place = _place(spec, fault)
            alike = (*place, _NUMBERS.sub("", fault.headline))
            if place not in seen:
                new.add(place)
                where.setdefault(alike, len(found))
                found.append(fault)
            elif alike in where and _needs_more(fault, found[where[alike]]):
                found[where[alike]] = fault
        seen |= new
    return found


def _needs_more(one: Fault, other: Fault) -> bool:
    return one.needs is not None and (other.needs is None or one.needs > other.needs)


def checked_orders(orders: Sequence[Order]) -> Checked:
    """`checked` for orders of several specs, one spec after another."""
    by_spec: dict[str, list[Order]] = {}
    for order in orders:
        by_spec.setdefault(order.spec.file, []).append(order)
    each = [checked(own[0].spec, own) for own in by_spec.values()]
    refused: dict[str, list[str]] = {}
    for code, wearers in (item for one in each for item in one.refused.items()):
        refused.setdefault(code, []).extend(wearers)
    faults = tuple(fault for one in each for fault in one.faults)
    return Checked(faults, len(orders), sum(one.proved for one in each), refused)


def _place(spec: str, fault: Fault) -> tuple[object, ...]:
    """Where a fault lies in the spec; a fault in a wearer's row lies where the spec sets what the row breaks."""
    if fault.primary is None:
        return fault.code, fault.headline
    spans = [label.span for label in (fault.primary, *fault.others)]
    return fault.code, next((span for span in spans if span.file == spec), spans[0])


def checked_each(orders: Iterable[Order]) -> Iterator[tuple[Order, Staged[Rehearsal]]]:
    """`prove` for one body after another, and whether some offered width holds every piece."""
    for order, proved in prove_each(orders):
        if proved.value is not None and (faults := uncuttable(proved.value.solved, order.room)):
            proved = Staged(None, (*proved.faults, *faults))
        yield order, proved


def at_the_ends(sound: Sequence[Order]) -> Iterator[Fault]:
    """What fails where one choice is taken to an end of its range: warnings, for the default is sound.

    sound: bodies that are sound with the default choices. What a rule of the
    maker's own refuses at an end is not told: that is what the rule is for.
    """
    if not sound:
        return
    # The least is asked of the last body, mostly the largest, and the most of the first: so each end meets the body that
    # it suits least, and every body need not be asked.
    asked = [
        (choice, end, order._replace(choices={**order.choices, choice.name: end}))
        for choice in sound[0].spec.choices.values()
        for order, end in ((sound[-1], choice.low), (sound[0], choice.high))
        if choice.name not in order.choices and end is not None and end.text != choice.default.text
    ]
    for (choice, end, order), (_, proved) in zip(asked, checked_each(each for _, _, each in asked), strict=True):
        cause = next((fault for fault in proved.faults if fault.is_error or fault.code == TOO_FULL), None)
        refused_by_rule = any(fault.code == OWN_RULE for fault in proved.faults)
        if cause and not refused_by_rule and "FB431" not in order.spec.accepted:
            yield _at_end(order, choice, end, cause)


def _at_end(order: Order, choice: Choice, end: Written, cause: Fault) -> Fault:
    others = (Label(cause.primary.span, "fails here"),) if cause.primary else ()
    return Fault(
        "FB431",
        f"with `{choice.name}` at {end.text}, the end of its range, for {order.wearer}: {cause.headline}",
        Label(end.span, "may be chosen"),
        others,
        cause.notes,
        "narrow the range, or mend what fails at its end" + (f": {cause.help}" if cause.help else ""),
        Severity.WARNING,
    )
