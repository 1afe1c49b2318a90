"""The body at a level: how wide it is so far below the waist, as far as its measures tell.

Waist at 0, hips at the hip depth, in between by a straight line, below the hips the hips down to the knee.
Source: hip depth is measured, or 0.188 of the waist height, or else 19.5 cm: in ANSUR II (Gordon et al. 2014) the largest
girth of the buttock lies 192 mm (sd 19) below the waist of ISO 8559-1 in women, 203 mm (sd 22) in men; the share of the
waist height is that of the same 800 people. The knee by its measure, or else at 0.56 of the waist height: from memory.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.solved import Solved
from furbelow.named import NamedTuple

HIP_DEPTH_SHARE, HIP_DEPTH = Fraction("0.188"), Fraction(195)
KNEE_SHARE, KNEE_DEPTH = Fraction("0.56"), Fraction(580)


class BodyAt(NamedTuple):
    """Girths and depths below the waist in mm; None where the spec does not measure them.

    over: what the garment must pass besides the body, as the spec says it.
    top: how far below the waist the top of the garment sits.
    """

    waist: Fraction | None
    hips: Fraction | None
    over: Fraction
    hip_depth: Fraction
    knee: Fraction
    top: Fraction

    @property
    def widest(self) -> Fraction:
        """The largest girth that a ring passes on its way to the waist: the body's own, and what the spec adds."""
        return max(self.over, self.hips or Fraction(0), self.waist or Fraction(0))

    def girth(self, level: Fraction) -> Fraction | None:
        """Round the body, so far below the top of the garment; None where it is not known."""
        down = level + self.top
        if self.hips is None or self.waist is None:
            return None
        if self.waist >= self.hips:
            return self.waist  # a waist above the hips rules all the way down
        if down >= self.hip_depth:
            return self.hips
        return self.waist + (self.hips - self.waist) * max(down, Fraction(0)) / self.hip_depth


def body_at(solved: Solved) -> BodyAt:
    """The body of this wearer, with what is not measured put in by its usual share."""

    height, hip_height, knee_height = (solved.known(name) for name in ("waist_height", "hip_height", "knee_height"))
    hip_depth = height * HIP_DEPTH_SHARE if height else HIP_DEPTH
    if height and hip_height and hip_height < height:
        hip_depth = height - hip_height
    knee = height * KNEE_SHARE if height else KNEE_DEPTH
    if height and knee_height and knee_height < height:
        knee = height - knee_height
    top = hip_depth if solved.spec.worn.at == "hip" else Fraction(0)
    return BodyAt(
        solved.known("waist_girth"), solved.known("hip_girth"), solved.length("worn.over"), hip_depth, knee, top
    )
