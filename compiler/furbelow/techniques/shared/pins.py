"""How far apart pins or clips stand."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Edge
from furbelow.garment.limits import thickness
from furbelow.garment.solved import Solved
from furbelow.garment.workroom import Workroom

THICK = Fraction(3)  # mm of cloth that a pin goes through without pushing it apart; house rule, maker to confirm


def pins_apart(solved: Solved, room: Workroom, *edges: Edge) -> Fraction:
    """From one pin to the next along edges that are sewn together, in mm: the one rule of every technique.

    Gathers shift, so they are held at the workroom's spacing. Flat edges do not, and through thick work a pin pushes the
    layers apart: both are held at twice that. House rule, maker to confirm.
    """
    deep = sum((_thick(solved, edge) for edge in edges), Fraction(0))
    loose = any(edge.gathered for edge in edges)
    return room.pin_spacing if loose and deep <= THICK else 2 * room.pin_spacing


def _thick(solved: Solved, edge: Edge) -> Fraction:
    plies = (thickness(solved, solved.pieces[ply.piece].piece.cloth.text) * ply.copies for ply in edge.plies)
    return sum(plies, Fraction(0)) * edge.ratio
