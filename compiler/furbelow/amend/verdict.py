"""What to do about a gathered edge that did not come out at its length: the tolerance rule.

Short by up to 3.75 % of the length: ease it in, or trim the edge it is sewn to. Short by more than 5 %: let the gathers
out. Between the two the maker chooses. Too long: pull the gathers closer. Pleats stand as they were folded, so they are
never eased: the difference is shared out among them. An edge that was eased in follows its thread, both ways.
Source: 15 cm in 4 m may be eased in, over 20 cm the gathers are let out: common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from furbelow.garment.limits import EASE_SHARE, LET_OUT_SHARE


class Remedy(StrEnum):
    NONE = "as planned"
    EASE = "ease in"
    TRIM = "trim"
    CHOOSE = "the choice is yours"
    LET_OUT = "let out"
    CLOSER = "pull closer"
    PLEATS_OUT = "let the pleats out"
    PLEATS_IN = "take more into the pleats"
    ROW_OUT = "let the row out"
    ROW_IN = "pull the row closer"


class Drawn(StrEnum):
    """How an edge came to its length."""

    GATHERED = "gathered"
    PLEATED = "pleated"
    EASED = "eased"


# What never asks for the tolerance: where it is short, and where it is too long.
_ALWAYS = {Drawn.PLEATED: (Remedy.PLEATS_OUT, Remedy.PLEATS_IN), Drawn.EASED: (Remedy.ROW_OUT, Remedy.ROW_IN)}


@dataclass(frozen=True)
class Verdict:
    """`gap` is wanted less measured, in mm: above 0 where the edge is short."""

    remedy: Remedy
    wanted: Fraction
    measured: Fraction

    @property
    def gap(self) -> Fraction:
        return self.wanted - self.measured

    @property
    def share(self) -> Fraction:
        """How much of the length that was wanted is missing, or too much."""
        return abs(self.gap) / self.wanted

    @property
    def in_each_metre(self) -> Fraction:
        """The correction in mm for each metre of the wanted length."""
        return self.share * 1000


def verdict(
    wanted: Fraction, measured: Fraction, within: Fraction = Fraction(0), do: str = "", drawn: Drawn = Drawn.GATHERED
) -> Verdict | None:
    """What to do, or None where the maker's own choice goes against the tolerance.

    wanted, measured: of the drawn edge, in mm. within: a difference so small is none.
    do: ease, let out, trim, or empty for what the rule says.
    """
    gap = wanted - measured
    if abs(gap) <= within:
        return Verdict(Remedy.NONE, wanted, measured)
    if drawn in _ALWAYS and do != "trim":
        out, closer = _ALWAYS[drawn]
        return None if do == "ease" else Verdict(out if gap > 0 else closer, wanted, measured)
    if gap < 0:
        return None if do else Verdict(Remedy.CLOSER, wanted, measured)
    share = gap / wanted
    rule = Remedy.EASE if share <= EASE_SHARE else Remedy.CHOOSE if share <= LET_OUT_SHARE else Remedy.LET_OUT
    if do in ("ease", "trim"):
        if rule is Remedy.LET_OUT:
            return None
        return Verdict(Remedy.EASE if do == "ease" else Remedy.TRIM, wanted, measured)
    return Verdict(Remedy.LET_OUT if do == "let out" else rule, wanted, measured)
