"""Matching marks: where the two edges of a gathered seam meet, even or with more cloth behind than in front."""

from __future__ import annotations

from fractions import Fraction

from furbelow.named import NamedTuple

EIGHTHS_FROM = Fraction(2000)  # a longer edge is marked in eighths: the stretches stay short enough to share out by eye
EVEN = Fraction(1, 2)
PLACES = (
    "front",
    "side",
    "back",
)  # where a waist is levelled: at the middle of the front, the sides, the middle of the back


Places = tuple[Fraction, Fraction, Fraction]  # at the front, the sides and the back, in mm
LEVEL: Places = (Fraction(0), Fraction(0), Fraction(0))


class TakenUp(NamedTuple):
    """What levelling a waist takes up at each of these edges."""

    names: tuple[str, ...]
    taken: Places


def divisions(set_length: Fraction) -> int:
    """4 or 8: in how many stretches an edge of this set length (mm) is marked."""
    return 8 if set_length > EIGHTHS_FROM else 4


def cloth_marks(cloth_length: Fraction, parts: int, behind: Fraction = EVEN) -> tuple[Fraction, ...]:
    """Distances in mm along the flat cloth of each mark, the first at 0, the last short of the end.

    The edge starts and ends at the middle of the back; `behind` is the share of the cloth in the back half, which is
    the first and the last quarter. Marks on the edge it is sewn to are evenly spaced.
    Source: halving and quartering ruffle and skirt: Ingalls, Text-Book on Domestic Art, 1911; the uneven share is a
    plain proportion.
    """
    back, front = cloth_length * behind / 2, cloth_length * (1 - behind) / 2
    in_quarter = parts // 4
    marks, at = [], Fraction(0)
    for quarter in (back, front, front, back):
        for _ in range(in_quarter):
            marks.append(at)
            at += quarter / in_quarter
    return tuple(marks)
