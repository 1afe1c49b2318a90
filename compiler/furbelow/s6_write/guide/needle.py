"""Which needle the machine has: the one that gets through the thickest place without bending."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.limits import gram_per_m2
from furbelow.garment.solved import Solved

# Metric size and, in brackets, the older number; up to which weight of cloth in g/m2, and to which thickness of a seam in
# mm. By weight: common practice, no source; by thickness: house rule, maker to confirm.
_NEEDLES = (
    ("70 (10)", 60, Fraction(3, 2)),
    ("80 (12)", 150, Fraction(3)),
    ("90 (14)", 250, Fraction(9, 2)),
)
_THICKEST = "100 (16)"


def needle_for(solved: Solved, thickest: Fraction) -> str:
    """thickest: of all seams, in mm."""
    heaviest = max(gram_per_m2(solved, piece.piece.cloth.text) for piece in solved.pieces.values())
    return next((size for size, weight, thick in _NEEDLES if heaviest <= weight and thickest <= thick), _THICKEST)
