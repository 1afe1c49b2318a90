"""Rounding of cut sizes: always up to the declared step, so that no piece comes out short."""

from __future__ import annotations

from fractions import Fraction

from furbelow.measure.quantity import round_to_step

EXACT = Fraction(0)  # a step of nothing keeps every size as the exact fraction it is


def cut_up_to(length: Fraction, step: Fraction) -> Fraction:
    """The cut size in mm: the least whole number of steps that is no shorter; unchanged for a step of 0."""
    return length if step == EXACT else round_to_step(length, step, "up")
