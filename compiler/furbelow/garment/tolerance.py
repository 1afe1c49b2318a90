"""How far lengths may be off when cutting and sewing each kept to what is allowed them.

A later check allows at least what the earlier ones together allow, so that nobody who kept to the guide is told that
the work is wrong.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Edge
from furbelow.garment.phrasing import Phrasing

CUT_OFF = Fraction(3)  # a piece may be cut so much too long or too short (house rule, maker to confirm)
SEAM_OFF = Fraction(2)  # a seam may take so much more or less, 1 mm at each of its sides (house rule, maker to confirm)
LEAST_TOLD = Fraction(2)  # less can't be told on folded cloth (house rule, maker to confirm)
LENGTH_SHARE = Fraction(1, 200)  # of a length, where that is more: cloth gives (house rule, maker to confirm)


def strip_off(piece: str, length: Fraction, say: Phrasing) -> Fraction:
    """How far one strip of this piece, of this cut length in mm, may be off once its segments are joined."""
    parts = say.parts(piece)
    return max(length * LENGTH_SHARE, parts * CUT_OFF + (parts - 1) * SEAM_OFF)


def round_off(bench: Bench, edge: Edge, say: Phrasing) -> Fraction:
    """How far an edge may be off that is not gathered: the most of its layers, every strip and side seam counted."""
    return max(_piece_off(bench, piece, say) for piece in edge.pieces)


def _piece_off(bench: Bench, piece: str, say: Phrasing) -> Fraction:
    cloth, strips = bench.cloths[piece], bench.strips_round(piece)
    seams = strips if cloth.ring else strips - 1
    return strips * strip_off(piece, cloth.piece.cut_length, say) + seams * SEAM_OFF


def folded_off() -> Fraction:
    """How far the depth of a band may be off that is cut twice as deep and folded."""
    return max(CUT_OFF / 2, LEAST_TOLD)
