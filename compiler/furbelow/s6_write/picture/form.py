"""The plain form that the garment is drawn on: round, as wide at each height as the wearer's measures say.

Waist and hips are measured; what lies between is a smooth curve, and below the hips two plain legs stand side by side.
All in mm, heights counted downwards from the waist.
"""

from __future__ import annotations

from math import pi, pow, sin

from furbelow.named import NamedTuple
from furbelow.s3_rehearse.run import Run

USUAL_WAIST_TO_HIP = 0.75  # of the hips, where one of the two is not measured; from memory
ABOVE = 95.0  # how much of the trunk is drawn above the waist


class Form(NamedTuple):
    """waist, hips: radii. hip_depth: of the hips below the waist. floor: of the floor, as far as it is known.

    top: how far below the waist the top of the garment sits.
    """

    waist: float
    hips: float
    hip_depth: float
    floor: float
    top: float

    def radius(self, down: float) -> float:
        """So far below the waist."""
        if down <= 0:
            return self.waist * (1 + 0.16 * pow(min(1.0, -down / 180), 1.5))
        if down < self.hip_depth:
            return self.waist + (self.hips - self.waist) * pow(sin(down / self.hip_depth * pi / 2), 1.15)
        # Two legs side by side, as a skirt meets them.
        return self.hips * max(0.7, 1 - 0.15 * (down - self.hip_depth) / 800)


def form_of(run: Run) -> Form:
    """The form of this wearer. Where the spec measures neither waist nor hips, as wide as the top of the garment."""
    body = run.body
    known = body.waist, body.hips
    waist, hips = (float(girth) if girth else 0.0 for girth in known)
    if not waist:
        waist = hips * USUAL_WAIST_TO_HIP if hips else float(min((ring.rest for ring in run.rings), default=700))
    hips = max(hips, waist) if hips else waist / USUAL_WAIST_TO_HIP
    height = run.solved.length("waist_height") if "waist_height" in run.solved.values else None
    depth = float(body.hip_depth)
    floor = float(height) if height else depth * 5.2
    return Form(waist / (2 * pi), hips / (2 * pi), depth, floor, float(body.top))
