"""The seam that marks are measured from, and the bright thread by which it is told from other upright seams."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.garment.bench import Bench, Edge
from furbelow.garment.matching import divisions
from furbelow.garment.message import Length, One, Things, edge_said
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Action, Performed, new_seam

TAG = Fraction(100)  # below every seam and casing that may come at the top, and above the middle


def tagged(bench: Bench, pieces: Sequence[str], say: Phrasing) -> bool:
    """Whether a ring has more upright seams than one, so that the one that marks are measured from bears a bright thread."""
    cloths = [(piece, bench.cloths[piece]) for piece in pieces]
    return any(cloth.ring and (say.joins.get(piece, 0) or bench.strips_round(piece) > 1) for piece, cloth in cloths)


def seam_said(bench: Bench, pieces: Sequence[str], say: Phrasing) -> One:
    """How messages name the side seam of these pieces: `{ side-seam }` asks for it as `$seam`."""
    return One("bright" if tagged(bench, pieces, say) else "plain", ("bright", "plain"))


def marked(edge: Edge) -> bool:
    """Whether an edge bears even marks already, from a step before."""
    return edge.marks > 0


def tag(done: Performed, pieces: Sequence[str], say: Phrasing) -> tuple[Action, ...]:
    """Tying the bright thread into the side seam of a ring that has other upright seams too; nothing where it has none."""
    copies = done.after.cloths[pieces[0]].copies
    if not tagged(done.after, pieces, say):
        return ()
    message = "tag-this-seam" if done.before.cloths[pieces[0]].copies == copies else "tag-one-seam"
    down = max(Fraction(min(TAG, new_seam(done).length / 4) // 5 * 5), Fraction(20))
    return (Action(message, copies, values={"down": Length(down, "about")}),)


def marked_in(edge: Edge, parts: int) -> bool:
    """Whether the edge bears marks that share it in so many parts; eighths have the quarters in them."""
    return edge.marks > 0 and edge.marks % parts == 0


def parts_of(*edges: Edge) -> int:
    """In how many parts edges of one length are matched: as they are marked already, or by their length.

    Marks are made once: where one edge bears marks, the others are marked to meet them.
    """
    known = [edge.marks for edge in edges if edge.marks]
    return min(known) if known else divisions(edges[0].set_length)


def marked_said(edges: Sequence[Edge]) -> Things:
    """The edges that are to be marked, as messages are given them."""
    return Things(tuple(edge_said(edge) for edge in edges))
