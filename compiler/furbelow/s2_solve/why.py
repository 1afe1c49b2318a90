"""Why a number is what it is: a tree from the number down to the lines and measures that it stands on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from furbelow.diagnose.fault import Fault, Staged
from furbelow.garment.solved import Solved
from furbelow.s2_solve.structure import nearest_name


@dataclass(frozen=True)
class Reason:
    """One number with what it stands on.

    value, formula, with_values, rounding: as a maker reads them. place: file and line, or empty.
    instead: why its own reasons are not told here: "see above", or empty.
    """

    name: str
    value: str
    formula: str
    with_values: str
    rounding: str
    place: str
    origin: str
    inputs: tuple[Reason, ...] = ()
    instead: str = ""


def why(solved: Solved, name: str) -> Staged[Reason]:
    """The reason for the number of that name; FB218 when nothing has the name."""
    if name not in solved.values:
        near = nearest_name(name, solved.values)
        if not near and name in (solved.spec.pieces.keys() | solved.spec.materials.keys()):
            near = tuple(known for known in solved.values if known.startswith(f"{name}."))[:4]
        help_ = "did you mean " + " or ".join(f"`{word}`" for word in near) + "?" if near else None
        return Staged(None, (Fault("FB218", f"no number is named `{name}`", help=help_),))
    return Staged(_reason(solved, name, set(), 0))


# No one reads deeper, and Python's own stack has an end.
_DEEPEST = 100


def _reason(solved: Solved, name: str, told: set[str], depth: int) -> Reason:
    derivation = solved.values[name]
    instead, span, value = "", derivation.span, derivation.value.show(solved.spec.system)
    if derivation.inputs and name in told:
        instead = "see above"
    elif derivation.inputs and depth == _DEEPEST:
        instead = "ask for it by name"
    else:
        told.add(name)
    if derivation.origin == "rule":
        value = "holds" if derivation.value.value else "does not hold"
    needs = () if instead else derivation.inputs
    return Reason(
        name=name,
        value=value,
        formula=derivation.formula,
        with_values=derivation.with_values,
        rounding=derivation.rounded.told(solved.spec.system) if derivation.rounded else "",
        place=f"{span.file}, line {span.start_line}" if span else "",
        origin=derivation.origin,
        inputs=tuple(_reason(solved, need, told, depth + 1) for need in needs),
        instead=instead,
    )


def as_text(reason: Reason) -> str:
    """The tree in lines, each step of four spaces one level down."""
    return "\n".join(_lines(reason, "")) + "\n"


def _lines(reason: Reason, margin: str) -> Iterator[str]:
    place = f"  [{reason.place}]" if reason.place and not reason.instead else ""
    yield f"{margin}{reason.name} = {reason.value}{_short(reason)}{place}"
    inner = margin + "    "
    if reason.inputs and reason.formula != reason.inputs[0].name:
        yield inner + _sum(reason)
    if reason.rounding and not reason.instead:
        yield inner + reason.rounding
    for need in reason.inputs:
        yield from _lines(need, inner)


def as_markdown(reason: Reason) -> str:
    """The tree as a nested list."""
    return "\n".join(_entries(reason, "")) + "\n"


def _entries(reason: Reason, margin: str) -> Iterator[str]:
    more = [f"`{_sum(reason)}`"] if reason.inputs else []
    more += [part for part in (reason.rounding, reason.place) if part and not reason.instead]
    said = "".join(f"; {part}" for part in more)
    yield f"{margin}- `{reason.name}` = **{reason.value}**{_short(reason)}{said}"
    for need in reason.inputs:
        yield from _entries(need, margin + "  ")


def _sum(reason: Reason) -> str:
    """The formula and the same with its numbers; a rule holds or not, so it is not said to equal them."""
    return f"{reason.formula}{': ' if reason.origin == 'rule' else ' = '}{reason.with_values}"


def _short(reason: Reason) -> str:
    """What is said in place of a number's own reasons."""
    if reason.instead:
        return f" ({reason.instead})"
    if reason.inputs or reason.formula == reason.value:
        return ""
    return f" ({reason.formula})"


def as_data(reason: Reason) -> dict[str, Any]:
    """The tree as plain values for JSON, with empty fields left out."""
    fields: dict[str, Any] = {
        "name": reason.name,
        "value": reason.value,
        "formula": reason.formula,
        "with_values": reason.with_values,
        "rounding": reason.rounding,
        "place": reason.place,
        "origin": reason.origin,
        "instead": reason.instead,
        "inputs": [as_data(need) for need in reason.inputs],
    }
    return {key: value for key, value in fields.items() if value}
