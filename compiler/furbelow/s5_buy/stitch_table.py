"""What each ISO 4915 stitch type draws from the reels: ratios, shares and geometric formulas.

Ratios are thread length per seam length, at about 7 stitches a centimetre, and are meant as a least.
Every figure says whether it was read in a source, recalled, or put in for want of one; only the first
kind may serve as a check.
"""

from __future__ import annotations

from fractions import Fraction
from math import isqrt
from typing import Literal, NamedTuple

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

    code: str
    name: str
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

STITCHES: dict[str, Stitch] = {
    stitch.code: stitch
    for stitch in (
        Stitch("101", "single chain", _guide("4"), _ALL, "none", 1),
        Stitch("103", "blind chain", _LIKE_101, _ALL, "none", 1),
        Stitch("301", "lockstitch", _guide("2.5"), _guide("0.50"), "bobbin", 1),
        # A recalled table says 7. The read figure is kept: geometry catches a wide or close zigzag.
        Stitch("304", "zigzag lockstitch", _page("5.5"), _page("0.50"), "bobbin", 1),
        Stitch("401", "two-thread chain", _guide("5.5"), _guide("0.25"), "looper", 2),
        Stitch("406", "two-needle cover", _guide("18"), _guide("0.30"), "looper", 3),
        Stitch("503", "two-thread overedge", _recalled("12"), _recalled("0.55"), "looper", 2),
        Stitch("504", "three-thread overedge", _guide("14"), _recalled("0.20"), "looper", 3),
        Stitch("512", "four-thread overedge", _recalled("18"), _recalled("0.25"), "looper", 4),
        Stitch("514", "four-thread overedge, linked", _recalled("18"), _recalled("0.25"), "looper", 4),
        Stitch("516", "five-thread safety", _guide("20"), _recalled("0.20"), "looper", 5),
    )
}


class Formula(NamedTuple):
    """Thread per seam length = along + S x (by_thickness x T + by_width x W).

    S: stitches per length, T: thickness of the seam, W: width of the stitch, all in one unit of length.
    """

    along: int
    by_thickness: int
    by_width: int
    source: str


_CONSUMPTION_PAGE = "textilecalculations.com, sewing thread consumption"
_FORMULA_TABLE = "textiletechinsight.com, thread consumption equations"

FORMULAS: dict[str, Formula] = {
    "101": Formula(3, 2, 0, _CONSUMPTION_PAGE),
    "301": Formula(2, 2, 0, _CONSUMPTION_PAGE),
    "401": Formula(4, 2, 0, "Technical Bulletin, American & Efird, 2008"),
    "406": Formula(7, 2, 2, _FORMULA_TABLE),
    "504": Formula(5, 4, 4, _FORMULA_TABLE),
    "514": Formula(5, 6, 4, _FORMULA_TABLE),
    "516": Formula(9, 6, 4, _FORMULA_TABLE),
}

FORMULA_504_ELSEWHERE = Formula(3, 4, 4, _CONSUMPTION_PAGE)
"""The other published constant for 504; the larger is used: better a reel too many than one too few."""


def geometric_ratio(
    code: str, stitch_length: Fraction, thickness: Fraction, width: Fraction | None = None
) -> Fraction | None:
    """Thread per seam length from the shape of the stitch; None without a formula or its width.

    stitch_length, thickness, width: mm. Width: overedge, needle gauge or zigzag swing.
    Theory is a floor: measured seams of 401 take more than the formula says.
    Source: beside each formula; 304 is derived (both threads follow the zigzag) and rounded up to 1/1000.
    """
    if stitch_length <= 0:
        raise ValueError("stitch length must be above 0 mm")
    per_mm = 1 / stitch_length
    if code == "304":
        if width is None:
            return None
        return 2 * _root_up(1 + (width * per_mm) ** 2) + 2 * thickness * per_mm
    formula = FORMULAS.get(code)
    if formula is None or (formula.by_width and width is None):
        return None
    crossing = formula.by_thickness * thickness + formula.by_width * (width or 0)
    return formula.along + per_mm * crossing


def _root_up(value: Fraction) -> Fraction:
    """Square root to 1/1000, never below the true one."""
    million = 1_000_000
    whole = -(-value.numerator * million // value.denominator)
    root = isqrt(whole)
    return Fraction(root if root * root == whole else root + 1, 1000)
