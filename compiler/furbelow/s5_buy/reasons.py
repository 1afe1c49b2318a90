"""Why so much is bought of each material: from what the plan and the steps take to what the shop sells."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from furbelow.garment.solved import Because, Derivation, Solved
from furbelow.measure.quantity import Quantity, mm, number
from furbelow.s4_cut.cut import Cutting
from furbelow.s5_buy.shopping import Line, ShoppingList

_SEWN_OFF = {"needle": "reason-needle", "bobbin": "reason-bobbin", "looper": "reason-looper"}


def reasons_of_buying(solved: Solved, cutting: Cutting, shopping: ShoppingList) -> Mapping[str, Derivation]:
    """`net`, what is bought of it, with `net.need` and all that these stand on; for each material on the list."""
    found = (each for line in shopping.lines for each in _line(solved, cutting, shopping, line))
    return {each.name: each for each in found}


def _line(solved: Solved, cutting: Cutting, shopping: ShoppingList, line: Line) -> Iterator[Derivation]:
    name, need = line.name, Quantity(line.need, line.unit.dims)
    known = {**solved.values, f"{name}.need": _of(f"{name}.need", need, "", ())}
    if line.unit == "reels" and f"{name}.reel" in known:
        inputs = (f"{name}.need", f"{name}.reel")
        bought = number(line.bought)
        yield _worked(solved, known, name, bought, f"round_up({name}.need / {name}.reel, 1)", inputs)
    else:
        bought = Quantity(line.bought, need.dims)
        step = f"{name}.sold_by"
        sold = line.bought != line.need and step in known
        formula = f"round_up({name}.need, {step})" if sold else f"{name}.need"
        yield _worked(solved, known, name, bought, formula, (f"{name}.need", *([step] if sold else [])))
    if name in cutting.sheets:
        plan, spare = cutting.sheet(name).plan, f"{name}.spare"
        length = f"{name}.bolt_length"
        counts = {"joins": plan.joins, "sections": plan.setups}
        because = Because("reason-plan-proven", counts) if plan.proven else Because("reason-plan", counts, plan.gap)
        known[length] = _told(length, mm(plan.bolt_length), because)
        ends, squared = f"{name}.cut_end", cutting.sheet(name).bolt.squared
        known[ends] = _told(ends, mm(squared), Because("reason-square-end"))
        added = (length, *([ends] if squared else []), *([spare] if spare in known else []))
        yield _worked(solved, known, f"{name}.need", need, " + ".join(added), added)
        yield from (known[each] for each in (length, *([ends] if squared else [])))
    elif line.unit == "reels":
        parts = {"needle": shopping.thread.needle, "bobbin": shopping.thread.bobbin, "looper": shopping.thread.looper}
        for part, length_mm in parts.items():
            because = Because(_SEWN_OFF[part], share=shopping.thread.waste)
            known[f"{name}.{part}"] = _told(f"{name}.{part}", mm(length_mm), because)
        threads = tuple(f"{name}.{part}" for part, length_mm in parts.items() if length_mm)
        yield _worked(solved, known, f"{name}.need", need, " + ".join(threads), threads)
        yield from (known[each] for each in threads)
    else:
        yield _told(f"{name}.need", need, Because("reason-steps-use"))


def _worked(
    solved: Solved, known: Mapping[str, Derivation], name: str, value: Quantity, formula: str, inputs: tuple[str, ...]
) -> Derivation:
    put_in = formula
    for each in sorted(inputs, key=len, reverse=True):
        put_in = put_in.replace(each, known[each].value.show(solved.spec.system))
    return _of(name, value, formula, inputs, put_in)


def _of(name: str, value: Quantity, formula: str, inputs: tuple[str, ...], with_values: str = "") -> Derivation:
    return Derivation(name, value, formula, with_values, inputs, None, None, "shopping")


def _told(name: str, value: Quantity, because: Because) -> Derivation:
    return Derivation(name, value, "", "", (), None, None, "shopping", because)
