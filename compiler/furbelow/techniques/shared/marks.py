"""The seam that marks are measured from, and the bright thread by which it is told from other upright seams."""

from __future__ import annotations

from collections.abc import Sequence

from furbelow.garment.bench import Bench
from furbelow.garment.message import One
from furbelow.garment.phrasing import Phrasing


def tagged(bench: Bench, pieces: Sequence[str], say: Phrasing) -> bool:
    """Whether a ring has more upright seams than one, so that the one that marks are measured from bears a bright thread."""
    cloths = [(piece, bench.cloths[piece]) for piece in pieces]
    return any(cloth.ring and (say.joins.get(piece, 0) or bench.strips_round(piece) > 1) for piece, cloth in cloths)


def seam_said(bench: Bench, pieces: Sequence[str], say: Phrasing) -> One:
    """How messages name the side seam of these pieces: `{ side-seam }` asks for it as `$seam`."""
    return One("bright" if tagged(bench, pieces, say) else "plain", ("bright", "plain"))
