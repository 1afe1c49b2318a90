"""From places on the form to places on the sheet, and marks there as SVG.

The sheet is 4000 by 5000 units; the eye stands a little above the hem, in front of the form or at a side.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from itertools import pairwise
from math import cos, radians, sin

from furbelow.named import NamedTuple

WIDE, HIGH = 4000, 5000
ABOVE = radians(9)  # the eye above the hem
BODY_FLAT = 0.12  # bodies are wider than deep by so much each way; a wide skirt is round

_DOWN, _AHEAD = cos(ABOVE), sin(ABOVE)

Point = tuple[float, float]
NearPoint = tuple[float, float, float]  # and how near to the eye it is in mm


class Spot(NamedTuple):
    """A place on the sheet, and how near to the eye it is in mm."""

    x: float
    y: float
    near: float


class View(NamedTuple):
    """scale: units a mm. waist: the height of the waist on the sheet. hips: radius of the form there. turn: of the form."""

    scale: float
    waist: float
    hips: float
    turn: float = 0.0

    def spot(self, angle: float, radius: float, down: float) -> Spot:
        """The place at an angle round the body (0 in front), so far out, so far below the waist."""
        return self.place(sin(angle), cos(angle), self.flat(radius), radius, down)

    def flat(self, radius: float) -> float:
        """By how much a ring of this radius is wider and shallower than round."""
        return BODY_FLAT * min(1.0, (self.hips / max(radius, 1.0)) ** 2)

    def place(self, sine: float, cosine: float, flat: float, radius: float, down: float) -> Spot:
        """`spot`, by the sine and cosine of the angle."""
        scale, waist, _, angle = self
        across, ahead = (1 + flat) * radius * sine, (1 - flat) * radius * cosine
        turn, turned = _turn(angle)
        near = ahead * turned - across * turn
        x = WIDE / 2 + scale * (across * turned + ahead * turn)
        return Spot(x, waist + scale * (down * _DOWN + near * _AHEAD), near)


@cache
def _turn(angle: float) -> tuple[float, float]:
    """The sine and cosine of a turn: there are three for all places of a guide."""
    return sin(angle), cos(angle)


def track(points: Sequence[Point] | Sequence[NearPoint], closed: bool = False) -> str:
    """Path data through the points in whole units, each step from the last: short, and the same on every machine."""
    whole = [(round(point[0]), round(point[1])) for point in points]
    steps = [f"{after[0] - x} {after[1] - y}" for (x, y), after in pairwise(whole) if after != (x, y)]
    x, y = whole[0]
    return (f"M{x} {y}l" + " ".join(steps or ["0 0"])).replace(" -", "-") + ("z" if closed else "")


def area(points: Sequence[Point] | Sequence[NearPoint], fill: str, opacity: float = 1.0) -> str:
    seen = "" if opacity >= 1 else f' fill-opacity="{opacity:.2f}"'
    return f'<path d="{track(points, closed=True)}" fill="{fill}"{seen}/>'


def line(points: Sequence[Point] | Sequence[NearPoint], colour: str, width: int, dash: str = "") -> str:
    dashed = f' stroke-dasharray="{dash}"' if dash else ""
    return f'<path d="{track(points)}" stroke="{colour}" stroke-width="{width}"{dashed}/>'


def sheet(marks: Sequence[str]) -> str:
    """The drawing. Nothing in it but paths with presentation attributes, which every page and the PDF writer draw alike."""
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="400" height="500" viewBox="0 0 {WIDE} {HIGH}" fill="none"'
        f' stroke-linejoin="round" stroke-linecap="round">{"".join(marks)}</svg>'
    )
