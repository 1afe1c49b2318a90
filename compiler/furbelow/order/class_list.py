"""What a class folder keeps from run to run: whose each number is, and what is planned to be cut.

Numbers belong to people, as they stand on cut cloth: a number is given once, by the roster or by the first run that meets
its owner, and never again to another. What was planned stays planned, for it may be cut.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from typing import Any

from furbelow.diagnose.fault import Fault, Severity, Staged
from furbelow.garment.technique import SetUp
from furbelow.named import NamedTuple
from furbelow.order.order import Order
from furbelow.s4_cut.kept_plan import agrees
from furbelow.s4_cut.plan_text import fraction_of, from_json, to_json
from furbelow.s4_cut.problem import Bolt, CutPrices, Strip
from furbelow.s5_buy.class_cutting import Lot
from furbelow.s6_write.guide.worked import Worked

_FORMAT = 1


class ClassList(NamedTuple):
    """numbers: of everybody who has one, in the class or not any more. last: the highest number that was ever given.

    made: what each guide was made from, by its folder; work: what is done in it. named: what the class was called.
    """

    numbers: Mapping[str, int]
    lots: tuple[Lot, ...]
    last: int = 0
    made: Mapping[str, str] = {}
    named: str = ""
    work: Mapping[str, tuple[Worked, ...]] = {}


NEW = ClassList({}, ())


def read_class_list(content: bytes, file: str) -> Staged[ClassList]:
    """The list in a class folder; a new one where there is none.

    Warns: FB658 where it can't be read, so that all is planned and numbered anew.
    """
    if not content:
        return Staged(NEW)
    try:
        told = json.loads(content)
        if told["furbelow_class"] != _FORMAT:
            raise ValueError("another format")
        numbers = {str(name): int(number) for name, number in told["numbers"].items()}
        lots = tuple(_lot(each) for each in told["lots"])
        made = {str(folder): str(key) for folder, key in told["made"].items()}
        work = {str(folder): tuple(map(_worked, each)) for folder, each in told.get("work", {}).items()}
        read = ClassList(numbers, lots, int(told["last"]), made, str(told["named"]), work)
    except (KeyError, TypeError, ValueError, AttributeError, ArithmeticError, RecursionError):
        headline = f"{file} can't be read, so everybody is numbered and all is planned anew"
        help_ = "where cloth is cut already, bring the file back as it was and run again"
        return Staged(NEW, (Fault("FB658", headline, help=help_, severity=Severity.WARNING),))
    return Staged(read)


def as_file(kept: ClassList) -> bytes:
    lots = [
        {
            "cloth": lot.cloth,
            "width": str(lot.width),
            "bolt": _told(lot.bolt),
            "prices": _told(lot.prices),
            "strips": [_told(strip) for strip in lot.strips],
            "marks": dict(lot.marks),
            "plan": json.loads(to_json(lot.plan)),
        }
        for lot in kept.lots
    ]
    told = {
        "furbelow_class": _FORMAT,
        "named": kept.named,
        "numbers": dict(kept.numbers),
        "last": kept.last,
        "made": dict(kept.made),
        "lots": lots,
        "work": dict(kept.work),
    }
    # A line for each field: with an indent the library would write it in Python, several times as slowly.
    fields = (f" {json.dumps(key)}: {json.dumps(value, ensure_ascii=False)}" for key, value in told.items())
    return ("{\n" + ",\n".join(fields) + "\n}\n").encode()


def numbered(orders: Sequence[Order], kept: ClassList) -> Staged[list[Order]]:
    """The orders, each with its number: that of the roster, else the one kept, else the next that nobody ever had.

    Fails: FB659 where two would have one number.
    """
    given = {order.wearer: order.number for order in orders if order.number}
    owners: dict[int, str] = {}
    faults = []
    here = {order.wearer for order in orders}
    for name, number in (*given.items(), *((n, k) for n, k in kept.numbers.items() if n in here and n not in given)):
        if number in owners:
            faults.append(_one_number(number, owners[number], name))
        owners.setdefault(number, name)
    if faults:
        return Staged(None, tuple(faults))
    numbers = {name: number for number, name in owners.items()}
    last = max((kept.last, *owners, *kept.numbers.values()))
    for order in orders:
        if order.wearer not in numbers:
            last += 1
            numbers[order.wearer] = last
    return Staged([order._replace(number=numbers[order.wearer]) for order in orders])


def leavers(orders: Iterable[Order], kept: ClassList) -> dict[str, int]:
    """Who has a number and is not in the class any more. A number that the roster gives to another name is that one's."""
    here = {order.wearer for order in orders}
    taken = {order.number for order in orders}
    return {name: number for name, number in kept.numbers.items() if name not in here and number not in taken}


def _one_number(number: int, one: str, other: str) -> Fault:
    return Fault(
        "FB659",
        f"{one} and {other} would both have the number {number}, which is on cut pieces",
        help="give one of them another number in the roster",
    )


def _told(value: Bolt | CutPrices | Strip) -> dict[str, Any]:
    """A problem's value in JSON; fractions are strings such as "127/2"."""
    return {key: str(part) if isinstance(part, Fraction) else part for key, part in value._asdict().items()}


def _worked(told: Sequence[Any]) -> Worked:
    letter, title, minutes, set_up, safe, technique, aim, pieces, *rest = told
    numbers, changed, presses, *_ = (*rest, 0, False, False)  # older lists do not have them
    named = tuple(map(str, pieces))
    work = Worked(str(letter), str(title), int(minutes), SetUp(set_up), bool(safe), str(technique), str(aim), named)
    return work._replace(numbers=int(numbers), changed=bool(changed), presses=bool(presses))


def _lot(told: Mapping[str, Any]) -> Lot:
    """Fails: ValueError for a plan that does not cut what it says."""
    bolt = Bolt(**_fractions(told["bolt"], "usable_width", "grid", "shrinkage", "longest_section", "spared", "squared"))
    prices = CutPrices(**_fractions(told["prices"], "cloth_per_mm", "per_join", "per_setup", "per_cut"))
    strips = tuple(
        Strip(**_fractions(each, "length", "depth", "join_allowance", "shortest_segment")) for each in told["strips"]
    )
    plan = from_json(json.dumps(told["plan"]))
    if not agrees(plan, strips, bolt, prices):
        raise ValueError("the plan does not cut its strips")
    # Lists that were written when pieces had letters call them so: what stands on cut cloth stays.
    called = told["marks"] if "marks" in told else told["letters"]
    marks = {strip.name: str(called[strip.name]) for strip in strips}
    return Lot(str(told["cloth"]), fraction_of(told["width"]), bolt, prices, strips, marks, plan)


def _fractions(told: Mapping[str, Any], *names: str) -> dict[str, Any]:
    return {key: fraction_of(part) if key in names and part is not None else part for key, part in told.items()}
