"""What all casings have alike: how they are stitched and where their gap is."""

from __future__ import annotations

from fractions import Fraction

EDGE_STITCH = Fraction(2)  # from the fold: it narrows the casing by so much
BESIDE_SEAM = Fraction(20)  # from the side seam to the gap: a row neither begins nor ends well on a thick seam
