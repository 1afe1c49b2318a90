"""Why a number is what it is: a tree from the number down to the lines and measures that it stands on."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from furbelow.diagnose.fault import Fault, Staged
from furbelow.garment.solved import Derivation, Solved
from furbelow.s2_solve.structure import nearest_name


class Instead(Enum):
    """Why the reasons of a number are not told where it is named."""

    ABOVE = "see above"
    ASK = "ask for it by name"


@dataclass(frozen=True)
class Reason:
    """One number with what it stands on. instead: why its own reasons are not told here; None where they are."""

    of: Derivation
    inputs: tuple[Reason, ...] = ()
    instead: Instead | None = None


def why(solved: Solved, name: str) -> Staged[Reason]:
    """The reason for the number of that name; FB218 when nothing has the name."""
    if name not in solved.values:
        return Staged(None, (Fault("FB218", f"no number is named `{name}`", help=_others(solved, name)),))
    return Staged(_reason(solved, name, set(), 0))


_MOST_NAMED = 6


def _others(solved: Solved, name: str) -> str:
    """Names that there are: those a slip away, else those of the same thing or of the same kind, else where to begin."""
    near = nearest_name(name, solved.values)
    if near:
        return "did you mean " + " or ".join(f"`{word}`" for word in near) + "?"
    thing, _, size = name.partition(".")
    told = [known for known in solved.values if " " not in known and not known.endswith("_takes")]
    of_it = [known for known in told if known.startswith(f"{thing}.")]
    alike = [known for known in told if known.endswith(f".{size or thing}")]
    begin = [*solved.spec.body, *solved.spec.choices, *(f"{piece}.length" for piece in solved.spec.pieces)]
    listed = of_it or alike or begin
    more = f" and {len(listed) - _MOST_NAMED} more" if len(listed) > _MOST_NAMED else ""
    return "there is " + ", ".join(f"`{word}`" for word in listed[:_MOST_NAMED]) + more


# No one reads deeper, and Python's own stack has an end.
_DEEPEST = 100


def _reason(solved: Solved, name: str, told: set[str], depth: int) -> Reason:
    derivation = solved.values[name]
    if derivation.inputs and name in told:
        return Reason(derivation, instead=Instead.ABOVE)
    if derivation.inputs and depth == _DEEPEST:
        return Reason(derivation, instead=Instead.ASK)
    told.add(name)
    return Reason(derivation, tuple(_reason(solved, need, told, depth + 1) for need in derivation.inputs))
