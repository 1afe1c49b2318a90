"""What all casings have alike: how they are stitched, and where their gap is for what goes in."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.message import One
from furbelow.garment.solved import Solved
from furbelow.garment.technique import edge_of

EDGE_STITCH = Fraction(2)  # from the fold: it narrows the casing by so much
BESIDE_SEAM = Fraction(20)  # from the side seam to the gap: a row neither begins nor ends well on a thick seam


def holds_cord(solved: Solved, casing: str) -> bool:
    """Whether a cord goes into this casing later: its ends come out of the gap, so the gap is in front."""
    steps = (step.written for step in solved.steps)
    return any(step.technique == "drawstring" and edge_of(step, "into") == casing for step in steps)


def holds_said(solved: Solved, casing: str) -> One:
    """How messages choose by what a casing holds, under `$holds`."""
    return One("cord" if holds_cord(solved, casing) else "elastic", ("cord", "elastic"))
