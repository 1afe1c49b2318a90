"""Cloth cut in a ring lies slantwise on its threads and drops: it hangs for a night before its lower edge is finished."""

from __future__ import annotations

from furbelow.garment.bench import Edge, State
from furbelow.garment.message import Length, Pieces, edge_said
from furbelow.garment.technique import Action, Performed


def dropped_first(done: Performed, edge: Edge) -> tuple[Action, ...]:
    """Letting a ring drop before its bottom edge is finished; nothing for any other edge."""
    piece = edge.pieces[0]
    if edge.name != f"{piece}.bottom" or done.before.cloths[piece].piece.ring is None:
        return ()
    top = done.before.edge(f"{piece}.top")
    hung = top.state in (State.SEWN, State.ENCLOSED)
    return (
        Action(
            "ring-drop-worn" if hung else "ring-drop-alone",
            edge.copies,
            values={
                "ring-piece": Pieces((piece,)),
                "ring-edge": edge_said(edge),
                "fall": Length(done.before.depth(piece)),
            },
        ),
    )
