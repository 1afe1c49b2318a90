"""What cloth and methods can take. Each figure names its source; makers override them in the material."""

from __future__ import annotations

from enum import StrEnum
from fractions import Fraction

from furbelow.diagnose.fault import Severity
from furbelow.garment.solved import Solved
from furbelow.measure.quantity import mm
from furbelow.measure.units import UNITS

# Short by up to this share of the length: ease in or trim. Common practice, no source: 15 cm in 4 m.
EASE_SHARE = Fraction(15, 400)
# Short by more than this share: let the gathers out. Common practice, no source: 20 cm in 4 m.
LET_OUT_SHARE = Fraction(20, 400)
# A pleating attachment set to every stitch and mark 6 takes cloth to about half. Common practice, no source.
ATTACHMENT_MOST = Fraction(2)
ATTACHMENT_LEAST = Fraction(5, 4)

# A narrower seam pulls out of its cloth, a narrower turn does not hold its fold (house rule, maker to confirm).
NARROWEST_SEAM = Fraction(5)
NARROWEST_SEAM_FIRM = Fraction(3)  # of cloth that does not ravel
NARROWEST_TURN = Fraction(3)
# Elastic rolls and twists in a casing wider than it by more than this (house rule, maker to confirm).
CASING_ROOM = Fraction(10)

# A skirt is heavy when each mm of its elastic's width carries more than this in g: 750 g on elastic 25 mm wide. By the
# width, for two strips side by side pull twice as hard as one (house rule, maker to confirm).
ELASTIC_CARRIES = Fraction(30)
# Elastic for a heavy skirt is shorter than the waist by so much or more. Common practice, no source: about 6 in.
HEAVY_REDUCTION = Fraction(150)

# Fullest gathers by cloth weight in g/m2 (house rule, maker to confirm; chiffon ruches 3 and taffeta 2 in
# Butterick, The New Dressmaker, 1921).
_FULLEST = ((Fraction(40), Fraction(4)), (Fraction(100), Fraction(3)), (Fraction(200), Fraction(5, 2)))
_FULLEST_HEAVY = Fraction(2)

# g/m2: net, tulle and illusion are lighter than this, and burn within seconds (16 CFR 1610.35; US Consumer Product
# Safety Commission, 1994).
SHEER = 40
# g/m2: 16 CFR 1610 leaves plain cloth of 2.6 oz/yd2 or more untested, and of any weight where it is all of these fibres;
# so light cloth of others is what its burning test is for. Section 1610.1(d), from memory.
LIGHT = Fraction("2.6") * UNITS["oz"].factor / (UNITS["yd"].factor / 1000) ** 2
UNTESTED = ("acrylic", "modacrylic", "nylon", "olefin", "polyester", "wool")

# Thickness of one ply in mm by cloth weight, at a bulk of 0.25 g/cm3 (house rule, maker to confirm).
_BULK = Fraction(1, 4)


# Beyond its limit by so much cloth can't be drawn up at all (house rule, maker to confirm).
HARDLY = Fraction(3, 2)


def too_full(ratio: Fraction, most: Fraction) -> Severity | None:
    """How grave it is to gather cloth so far: nothing, worth a warning, or not to be done."""
    if ratio <= most:
        return None
    return Severity.ERROR if ratio > most * HARDLY else Severity.WARNING


def fullest(solved: Solved, cloth: str) -> Fraction:
    """The largest ratio of cloth to set length that this cloth gathers to: its own `gathers`, or by weight."""
    amounts = solved.materials[cloth].amounts
    if "gathers" in amounts:
        return amounts["gathers"].value
    weight = gram_per_m2(solved, cloth)
    return next((ratio for limit, ratio in _FULLEST if weight <= limit), _FULLEST_HEAVY)


def gram_per_m2(solved: Solved, cloth: str) -> Fraction:
    """The weight of a cloth in g/m2; 100 where the spec does not say (house rule, maker to confirm)."""
    weight = solved.materials[cloth].amounts.get("weight")
    return weight.value * 1_000_000 if weight else Fraction(100)


def dry_weight(solved: Solved, piece: str) -> Fraction:
    """What one copy of a piece weighs as it is cut, in g."""
    cut = solved.pieces[piece]
    return cut.cut_length * cut.cut_depth * gram_per_m2(solved, cut.piece.cloth.text) / 1_000_000


def trim_weight(solved: Solved, trim: str, length: Fraction) -> Fraction:
    """What so much of a trim weighs, in g: by its weight, which may be told for each length of it or for its area."""
    weight = solved.materials[trim].amounts.get("weight")
    if weight and dict(weight.dims).get("length") == -1:
        return weight.value * length
    return length * width_of(solved, trim) * gram_per_m2(solved, trim) / 1_000_000


def is_net(solved: Solved, cloth: str) -> bool:
    """Whether chalk falls through a cloth: it does not ravel and is as light as sheer cloth is."""
    return not solved.materials[cloth].material.ravels and gram_per_m2(solved, cloth) <= SHEER


class Burns(StrEnum):
    """How the cloth of a garment takes fire, the worst of it."""

    SHEER = "sheer"  # in a moment, whatever it is made of
    LIGHT = "light"  # as fast: light cotton, linen, viscose and the like, and light cloth of no known fibre
    OTHER = "other"


def burns(solved: Solved) -> Burns:
    cloths = {piece.piece.cloth.text for piece in solved.pieces.values()}
    if any(gram_per_m2(solved, cloth) <= SHEER for cloth in cloths):
        return Burns.SHEER
    light = any(gram_per_m2(solved, cloth) < LIGHT and not _left_untested(solved, cloth) for cloth in cloths)
    return Burns.LIGHT if light else Burns.OTHER


def burns_fast(solved: Solved) -> bool:
    """Whether some cloth of the garment burns within seconds."""
    return burns(solved) is not Burns.OTHER


def _left_untested(solved: Solved, cloth: str) -> bool:
    return solved.materials[cloth].material.fibre in UNTESTED


def thickness(solved: Solved, cloth: str) -> Fraction:
    """The thickness of one ply in mm."""
    return gram_per_m2(solved, cloth) / 1000 / _BULK


def width_of(solved: Solved, material: str) -> Fraction:
    """The width of a trim, elastic or cloth in mm; 0 where the spec does not say."""
    return solved.materials[material].amounts.get("width", mm(0)).as_length_mm()
