"""What each ISO 4915 stitch type draws from the reels: ratios, shares and geometric formulas.

Ratios are thread length per seam length, at about 7 stitches a centimetre, and are meant as a least.
Every figure says whether it was read in a source, recalled, or put in for want of one; only the first
kind may serve as a check.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Literal

from furbelow.garment.stitch import StitchType
from furbelow.named import NamedTuple

Grounds = Literal["read", "from memory", "stand-in"]


class Figure(NamedTuple):
    """A value and how far to trust it."""

    value: Fraction
    grounds: Grounds
    source: str


class Stitch(NamedTuple):
    """One stitch type: its thread ratio, the needle share and the reels that stand on the machine.

    ratio: thread length per seam length, all threads together.
    needle_share: part of the thread that passes the needles, 0 to 1; the rest is `under`.
    under: what carries the rest: the bobbin, the loopers, or nothing.
    reels_at_once: reels the machine draws from at the same time; a bobbin, wound beforehand, does not count.
    """

    ratio: Figure
    needle_share: Figure
    under: Literal["bobbin", "looper", "none"]
    reels_at_once: int


def _guide(value: str) -> Figure:
    source = "a thread maker's guide, quoted in published figure code (secondary); 7 stitches/cm, +/- 12 %"
    return Figure(Fraction(value), "read", source)


def _page(value: str) -> Figure:
    return Figure(Fraction(value), "read", "apparelscience.com, ISO stitch types 300-400")


def _recalled(value: str) -> Figure:
    return Figure(Fraction(value), "from memory", "recalled trade table, unchecked")


_LIKE_101 = Figure(Fraction(4), "stand-in", "ratio of 101, which it is formed like; maker to confirm")
_ALL = Figure(Fraction(1), "read", "definition: the stitch has one thread")
# A thread for hand sewing is cut 50 cm long or less (home sewing pages say 18 to 24 in), and about 10 cm of it end as
# knot and tail: so a fifth more than lies in the seam.
_RUNNING = Figure(Fraction(5, 4), "stand-in", "along the seam once, and knots and tails; maker to confirm")
_OTHER_BY_HAND = Figure(Fraction(15, 4), "stand-in", "back and forth as a backstitch goes, and knots and tails")

# For every stitch type, so that no seam is left out of the sums.
STITCHES: Mapping[StitchType, Stitch] = {
    StitchType.CHAIN: Stitch(_guide("4"), _ALL, "none", 1),
    StitchType.BLIND: Stitch(_LIKE_101, _ALL, "none", 1),
    StitchType.HAND: Stitch(_OTHER_BY_HAND, _ALL, "none", 1),
    StitchType.RUNNING: Stitch(_RUNNING, _ALL, "none", 1),
    StitchType.LOCK: Stitch(_guide("2.5"), _guide("0.50"), "bobbin", 1),
    # A recalled table says 7. The read figure is kept: it is the only one with a source.
    StitchType.ZIGZAG: Stitch(_page("5.5"), _page("0.50"), "bobbin", 1),
    StitchType.TWO_THREAD_CHAIN: Stitch(_guide("5.5"), _guide("0.25"), "looper", 2),
    StitchType.COVER: Stitch(_guide("18"), _guide("0.30"), "looper", 3),
    StitchType.TWO_THREAD_OVEREDGE: Stitch(_recalled("12"), _recalled("0.55"), "looper", 2),
    StitchType.OVERLOCK: Stitch(_guide("14"), _recalled("0.20"), "looper", 3),
    StitchType.FOUR_THREAD_MOCK_SAFETY: Stitch(_recalled("18"), _recalled("0.25"), "looper", 4),
    StitchType.FOUR_THREAD_OVERLOCK: Stitch(_recalled("18"), _recalled("0.25"), "looper", 4),
    StitchType.SAFETY: Stitch(_guide("20"), _recalled("0.20"), "looper", 5),
}


class Formula(NamedTuple):
    """Thread per seam length = along + by_thickness x T / S, with T the thickness of the seam and S the stitch length.

    Stitches that swing to the side also need their width, which no step knows; for them the table stands.
    """

    along: int
    by_thickness: int
    source: str


_CONSUMPTION_PAGE = "textilecalculations.com, sewing thread consumption"

FORMULAS: Mapping[StitchType, Formula] = {
    StitchType.CHAIN: Formula(3, 2, _CONSUMPTION_PAGE),
    StitchType.RUNNING: Formula(1, 1, "derived: along the seam once, through it once a stitch"),
    StitchType.LOCK: Formula(2, 2, _CONSUMPTION_PAGE),
    StitchType.TWO_THREAD_CHAIN: Formula(4, 2, "Technical Bulletin, American & Efird, 2008"),
}


def geometric_ratio(stitch: StitchType, stitch_length: Fraction, thickness: Fraction) -> Fraction:
    """Thread per seam length from the shape of the stitch, both measures in mm; 0 without a formula.

    Theory is a floor: measured seams of 401 take more than the formula says.
    Source: beside each formula.
    """
    formula = FORMULAS.get(stitch)
    return Fraction(0) if formula is None else formula.along + formula.by_thickness * thickness / stitch_length
