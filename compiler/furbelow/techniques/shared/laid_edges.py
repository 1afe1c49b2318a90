"""Two edges of one length laid together: where they are marked and matched, and how they are held, for every seam of two."""

from __future__ import annotations

from furbelow.garment.bench import Bench, Edge
from furbelow.garment.limits import EASE_SHARE
from furbelow.garment.message import Length, One, Value, edge_said, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Action
from furbelow.garment.tolerance import round_off
from furbelow.techniques.shared.gathers import tails_said
from furbelow.techniques.shared.marks import marked_in, parts_apart, parts_of, seam_said, tagged
from furbelow.techniques.shared.pins import pins_apart

PLACES = ("bright", "some", "ends", "plain")
FOLDS = ("gathers", "pleats", "flat")


def marks_on(bench: Bench, say: Phrasing, *edges: Edge, parts: int = 0) -> tuple[Action, ...]:
    """Marking those of the edges that bear no such marks yet: marks are made once and carried on.

    parts: in how many, where it is not said by the edges.
    """
    parts = parts or parts_of(*edges)
    return tuple(
        Action(
            "mark-parts-ring" if bench.ring(edge) else "mark-parts-flat",
            edge.copies,
            values={
                "marked": edge_said(edge),
                "seam": seam_said(bench, edge.pieces, say),
                **parts_apart(bench, edge, parts),
            },
        )
        for edge in edges
        if not marked_in(edge, parts)
    )


def edges_said(bench: Bench, edge: Edge, to: Edge, say: Phrasing) -> dict[str, Value]:
    """The values that messages of two edges are given: both of them, their marks, and what holds them."""
    ring, parts = bench.ring(to), parts_of(edge, to)
    apart = pins_apart(say.solved, say.room, edge, to)
    threads = [tagged(bench, each.pieces, say) for each in (to, edge)]
    places = "bright" if all(threads) else "some" if any(threads) else "plain"
    return {
        "edge": edge_said(edge),
        "to": edge_said(to),
        "ring": flag(ring),
        "places": One(places if ring else "ends", PLACES),
        "parts": parts,
        "part": Length(to.set_length / parts),
        "hold": One(say.room.hold_with, ("pins", "clips")),
        "on-top": edge_said(to),
        "spacing": Length(apart, "about"),
        "pins": say.pins(to.set_length, apart),
        "copies": to.copies,
        "ease": Length(to.set_length * EASE_SHARE),
        # What was cut otherwise than planned is no fault of this seam: it is shared out.
        "off": Length(
            max(round_off(bench, edge, say) + round_off(bench, to, say), abs(edge.set_length - to.set_length)), "off"
        ),
        **tails_said(edge),
    }


def folds_of(edge: Edge) -> str:
    """What an edge's cloth lies in: "gathers", "pleats" or "flat"."""
    return "flat" if not edge.gathered else "pleats" if "pleats" in edge.gathered else "gathers"
