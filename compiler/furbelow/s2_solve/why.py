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
    if derivation.inputs and name in told:
        return Reason(derivation, instead=Instead.ABOVE)
    if derivation.inputs and depth == _DEEPEST:
        return Reason(derivation, instead=Instead.ASK)
    told.add(name)
    return Reason(derivation, tuple(_reason(solved, need, told, depth + 1) for need in derivation.inputs))
