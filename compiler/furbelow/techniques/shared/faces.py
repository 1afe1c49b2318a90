"""Which face of the cloth lies outside and inside at an edge of one or several layers."""

from __future__ import annotations

from enum import StrEnum

from furbelow.garment.bench import Edge, Ply
from furbelow.garment.phrasing import Phrasing


class Face(StrEnum):
    RIGHT = "right"
    WRONG = "wrong"
    EITHER = "either"  # of cloth whose faces are alike


def inside_face(edge: Edge, say: Phrasing) -> Face:
    """The face that the innermost layer turns to the body."""
    return _face(edge.plies[-1], "in", say)


def outside_face(edge: Edge, say: Phrasing) -> Face:
    """The face that the outermost layer shows."""
    return _face(edge.plies[0], "out", say)


def _face(ply: Ply, towards: str, say: Phrasing) -> Face:
    solved = say.solved
    if not solved.materials[solved.pieces[ply.piece].piece.cloth.text].material.has_right_side:
        return Face.EITHER
    return Face.RIGHT if ply.right_side == towards else Face.WRONG
