"""A strip sewn by one edge on cloth that goes on past its seam, carried out: on a line, or along an edge."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Edge, Seam, State
from furbelow.garment.solved import Solved, SolvedStep
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import Performed, SetUp, Sewn
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.gathers import knots_of, tails_hang
from furbelow.techniques.shared.pins import pins_apart
from furbelow.techniques.shared.stacks import taken


def sew_row(
    bench: Bench, step: SolvedStep, solved: Solved, room: Workroom, edge: Edge, base: Edge, row: Seam, stitch: Fraction
) -> Performed:
    """The edge of the strip on its base, by one row of the given seam and stitch length, in mm; the edge is as long as the base."""
    after = bench.with_edges(
        edge._replace(state=State.SEWN, used=edge.used + row.width, held=True, set_length=row.length)
    ).with_seams(row)
    touches = (*edge.pieces, *base.pieces)
    # A wider spacing needs fewer pins for the same length.
    once = row.length * room.pin_spacing / pins_apart(solved, room, edge, base)
    return Performed(
        step,
        bench,
        taken(after, edge, row.width).joined(touches),
        touches,
        sewn=(Sewn(StitchType.LOCK, row.length, row.copies, stitch),),
        setup=SetUp.STRAIGHT,
        pinned=once * row.copies,
        pinned_at_once=once,
        thread_ends=knots_of(edge) if tails_hang(edge) else 0,
    )
