"""How stiff a cloth is: its bending length, as the spec gives it or by the kind of cloth.

The bending length c is the length at which a cloth bends under its own weight to a fixed degree: c^3 = B / w, B its bending
rigidity, w its weight for each area. Source: Peirce, The "Handle" of Cloth as a Measurable Quantity, Journal of the Textile
Institute 21, 1930; measured as in ASTM D1388, where a strip of twice the bending length hangs down 41.5 degrees.
"""

from __future__ import annotations

from furbelow.garment.limits import gram_per_m2
from furbelow.garment.solved import Solved

NET = 30.0  # what neither ravels nor has a right side: net and tulle; from memory
# By the heaviest weight in g/m2 that it holds for: other cloths, in mm; all from memory.
WOVEN = ((60.0, 16.0), (100.0, 18.0), (150.0, 23.0), (220.0, 29.0), (300.0, 35.0))
HEAVY = 40.0
LIMP = ("silk", "viscose", "polyester", "acetate")  # fibres that hang more softly than their weight; from memory
LIMPER = 0.85
STARCHED = 1.15  # a starched piece is stiffer by so much; from memory


def bending_length(solved: Solved, cloth: str, starched: bool) -> float:
    """The bending length of a cloth in mm."""
    measured = solved.materials[cloth].amounts.get("bending_length")
    length = float(measured.as_length_mm()) if measured else _by_kind(solved, cloth)
    return length * (STARCHED if starched else 1.0)


def is_net(solved: Solved, cloth: str) -> bool:
    """Whether one sees through it: what neither ravels nor has a right side is net, by what a spec tells of cloth."""
    material = solved.materials[cloth].material
    return not material.ravels and not material.has_right_side


def _by_kind(solved: Solved, cloth: str) -> float:
    if is_net(solved, cloth):
        return NET
    weight = float(gram_per_m2(solved, cloth))
    woven = next((length for heaviest, length in WOVEN if weight <= heaviest), HEAVY)
    return woven * (LIMPER if solved.materials[cloth].material.fibre in LIMP else 1.0)
