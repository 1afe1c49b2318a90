"""How wide and long the machine sews its zigzag."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.message import Number
from furbelow.garment.technique import Action

WIDE = Fraction(3)  # 3-4 mm wide and 2 mm long is common practice, no source


def zigzag_set(stitch: Fraction) -> Action:
    """Setting the machine for zigzag of this stitch length, in mm as machines are marked."""
    return Action("zigzag-set", values={"zigzag-wide": Number(WIDE, 1), "zigzag-long": Number(stitch, 1)})
