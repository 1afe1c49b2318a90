"""Which class of dye a fibre takes, and how much dye goes to how much cloth."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from enum import StrEnum
from fractions import Fraction


class DyeClass(StrEnum):
    ACID = "acid"
    DISPERSE = "disperse"
    REACTIVE = "reactive"
    DIRECT = "direct"


_CELLULOSE = (DyeClass.REACTIVE, DyeClass.DIRECT)

FIBRE_TAKES: Mapping[str, tuple[DyeClass, ...]] = {
    "wool": (DyeClass.ACID,),
    "silk": (DyeClass.ACID, DyeClass.REACTIVE),
    "nylon": (DyeClass.ACID, DyeClass.DISPERSE),
    "polyester": (DyeClass.DISPERSE,),
    "acetate": (DyeClass.DISPERSE,),
    "cotton": _CELLULOSE,
    "linen": _CELLULOSE,
    "viscose": _CELLULOSE,
    "polypropylene": (),
}
"""Classes a fibre takes, the usual one first.

Source: P. Burch, About the Different Types of Dyes (pburch.net), for wool, silk, cotton, linen and viscose;
textilehelp.blogspot.com, About dyes, 2009, for nylon and polyester. Acetate and polypropylene: from memory.
"""

# More dye than this share of the cloth's weight gives no deeper shade. House rule, maker to confirm.
DEEPEST = Fraction(1, 5)


def usual_class(fibres: Iterable[str]) -> DyeClass | None:
    """The class that all these fibres take, the usual one of the first; None where no class is for all of them."""
    taken = [FIBRE_TAKES.get(fibre, ()) for fibre in fibres]
    return next((each for each in (taken[0] if taken else ()) if all(each in other for other in taken)), None)


def dye_mass(cloth: Fraction, depth: Fraction) -> Fraction:
    """Grams of dye powder for so many grams of dry cloth: `depth` is the share of its weight (2 % is 2/100)."""
    return cloth * depth
