"""A maker's value that a sum can't use, told as a value and not as an exception."""

from __future__ import annotations

from fractions import Fraction
from typing import Literal, NamedTuple

Limit = Literal["at least", "above", "at most", "below"]


class OutOfRange(NamedTuple):
    """What is outside its range, the value given and the limit it passed.

    unit: "share" (shown as %), "mm", "g", "" for a count or a ratio.
    limit: which of the four limits `bound` is.
    """

    what: str
    given: Fraction
    limit: Limit
    bound: Fraction
    unit: str = ""

    @property
    def headline(self) -> str:
        """The fault in one line, with both numbers and their difference."""
        given, bound = _shown(self.given, self.unit), _shown(self.bound, self.unit)
        difference = _shown(abs(self.given - self.bound), self.unit)
        if self.limit == "at least":
            return f"{self.what} of {given} is {difference} below the least, {bound}"
        if self.limit == "at most":
            return f"{self.what} of {given} is {difference} above the most, {bound}"
        return f"{self.what} of {given} is not {self.limit} {bound}"


def outside(
    what: str,
    given: Fraction,
    unit: str = "",
    *,
    at_least: Fraction | int | None = None,
    above: Fraction | int | None = None,
    at_most: Fraction | int | None = None,
    below: Fraction | int | None = None,
) -> OutOfRange | None:
    """The first limit that `given` passes, or None when it is within all of them."""
    if at_least is not None and given < at_least:
        return OutOfRange(what, given, "at least", Fraction(at_least), unit)
    if above is not None and given <= above:
        return OutOfRange(what, given, "above", Fraction(above), unit)
    if at_most is not None and given > at_most:
        return OutOfRange(what, given, "at most", Fraction(at_most), unit)
    if below is not None and given >= below:
        return OutOfRange(what, given, "below", Fraction(below), unit)
    return None


def _shown(value: Fraction, unit: str) -> str:
    if unit == "share":
        return f"{float(value * 100):.6g} %"
    return f"{float(value):.6g} {unit}".rstrip()
