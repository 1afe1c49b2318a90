"""Rounding of cut sizes: always up to the declared step, so that no piece comes out short."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from furbelow.measure.quantity import System, round_to_step, show_length

EXACT = Fraction(0)  # a step of nothing keeps every size as the exact fraction it is


def cut_up_to(length: Fraction, step: Fraction) -> Fraction:
    """The cut size in mm: the least whole number of steps that is no shorter; unchanged for a step of 0."""
    return length if step == EXACT else round_to_step(length, step, "up")


class Rounded(NamedTuple):
    """A size as it was and as it is now, in mm: the cut size, and the finished one where that was written."""

    step: Fraction
    cut_before: Fraction
    cut: Fraction
    finished_before: Fraction | None = None
    finished: Fraction | None = None

    def told(self, system: System) -> str:
        """The rounding as a sentence: "rounded up to 5 mm: 23.43 cm -> 23.5 cm"."""
        step = show_length(self.step, system)
        change = f"{show_length(self.cut_before, system)} -> {show_length(self.cut, system)}"
        if self.finished_before is None or self.finished is None:
            return f"rounded up to {step}: {change}"
        finished = f"{show_length(self.finished_before, system)} -> {show_length(self.finished, system)}"
        if change == finished:
            return f"rounded up to {step}: {change}"
        return f"cut size rounded up to {step}: {change}; finished {finished}"
