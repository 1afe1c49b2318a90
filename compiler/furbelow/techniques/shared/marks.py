"""The seam that marks are measured from, and the bright thread by which it is told from other upright seams."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from furbelow.garment import gore as gores
from furbelow.garment.bench import Bench, Edge, Seam
from furbelow.garment.matching import EVEN, divisions
from furbelow.garment.message import Length, One, Things, Values, edge_said, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved
from furbelow.garment.technique import Action, Performed, edge_of, new_seam
from furbelow.techniques.shared.closed_ends import seam_named

TAG = Fraction(100)  # below every seam and casing that may come at the top, and above the middle
SIDE, BACK, EITHER = "side", "back", "either"
SEAM_PLACES = (SIDE, BACK, EITHER)
LEAST_FLARED = Fraction(1)  # less can't be told between two marks
LEAST_TAG = Fraction(20)  # from what is open


def tagged(bench: Bench, pieces: Sequence[str], say: Phrasing) -> bool:
    """Whether a ring has more upright seams than one, so that the one that marks are measured from bears a bright thread."""
    cloths = [(piece, bench.cloths[piece]) for piece in pieces]
    return any(cloth.ring and (say.joins.get(piece, 0) or bench.strips_round(piece) > 1) for piece, cloth in cloths)


def seam_said(bench: Bench, pieces: Sequence[str], say: Phrasing) -> One:
    """How messages name the side seam of these pieces: `{ side-seam }` asks for it as `$seam`."""
    return One("bright" if tagged(bench, pieces, say) else "plain", ("bright", "plain"))


def place_of(solved: Solved, seam: Seam) -> str:
    """Where on the wearer a seam comes to lie: the one that closes a ring at the left side, or at the middle of the back
    where a step gathers more of its cloth behind; any other as its maker wants it."""
    if not seam.name.endswith(".ends"):
        return EITHER
    pieces = {ply.piece for ply in seam.plies}
    for step in solved.steps:
        uneven = step.written.technique == "gather" and step.amounts["behind"].value != EVEN
        if uneven and edge_of(step.written, "edge").partition(".")[0] in pieces:
            return BACK
    return SIDE


def front_gore(bench: Bench, piece: str) -> bool:
    """Whether the middle of the front is found in a front gore: no seam of the ring lies a quarter of the way round from it."""
    gore = bench.cloths[piece].piece.gore
    return bool(
        gore and bench.cloths[piece].ring and gores.FRONT in gore.round and gore.differ and not gore.side_seam[1]
    )


def back_gore(bench: Bench, piece: str) -> bool:
    """Whether the middle of the back is the middle of a gore: there is one back gore, and as many side gores left as right."""
    gore = bench.cloths[piece].piece.gore
    return bool(
        gore
        and bench.cloths[piece].ring
        and gore.round.count(gores.BACK) == 1
        and gore.round.count(gores.SIDE) % 2 == 0
    )


def marked(edge: Edge) -> bool:
    """Whether an edge bears even marks already, from a step before."""
    return edge.marks > 0


def tag(done: Performed, pieces: Sequence[str], say: Phrasing) -> tuple[Action, ...]:
    """Tying the bright thread into the side seam of a ring that has other upright seams too; nothing where it has none."""
    if not tagged(done.after, pieces, say):
        return ()
    seam = new_seam(done)
    begins = max((each.length for each in done.after.openings.values() if each.seam == seam.name), default=Fraction(0))
    down = begins + max(Fraction(min(TAG, seam.length / 4) // 5 * 5), LEAST_TAG)
    if seam.gap and seam.gap.down <= down <= seam.gap.down + seam.gap.length:
        down = seam.gap.down + seam.gap.length + LEAST_TAG
    values: Values = {
        **seam_named(done),
        "down": Length(down, "about"),
        "opened": flag(begins),
        "low": flag(down > sum(done.before.depth(piece) for piece in pieces) / 2),
    }
    return (Action("tag-seam", done.after.cloths[pieces[0]].copies, values=values),)


def parts_apart(bench: Bench, edge: Edge, parts: int) -> Values:
    """How far apart the marks of an edge lie that is shared in so many parts: along the edge as it lies now, and on its seam
    line, where that differs because the piece flares."""
    lie, come = bench.measured(edge) / parts, edge.end_to_end / parts
    return {"part": Length(lie), "on-line": Length(come), "flared": flag(abs(lie - come) >= LEAST_FLARED)}


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
