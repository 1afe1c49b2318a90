"""A seam that closes ends to a ring or sews one edge to another: what the finished seams have in common."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import One, Pieces, Value, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    EdgesIn,
    Kind,
    Parameter,
    Performed,
    allowances_at,
    edge_at,
    edge_of,
    fault_at,
    new_seam,
    refused,
    words_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import mm
from furbelow.techniques.shared.closed_ends import EACH, ONE, close_ends, takes_at_ends
from furbelow.techniques.shared.joined_edges import join_edges
from furbelow.techniques.shared.laying import end_margins, margins, seam_window

WHERE = {
    "of": Parameter("The piece, or every tier of the unit, whose ends the seam closes.", Kind.PIECES, ""),
    "into": Parameter("With `of`: a ring of each copy, or one ring of all copies.", (EACH, ONE), EACH),
    "edge": Parameter("The edge to sew on, where two edges are joined.", Kind.EDGE, ""),
    "to": Parameter("The edge it is sewn to.", Kind.EDGE, ""),
}


def takes_either(step: Step, edges_in: EdgesIn, *args: str) -> tuple[Allowance, ...]:
    """What the seam takes: at start and end of the pieces it closes, or at both edges it joins."""
    if closes_ends(step):
        return takes_at_ends(step, *args)
    named = [edge_at(step, key) for key in ("edge", "to") if key in step.args]
    return tuple(taking for edge in named for taking in allowances_at(edges_in(edge), *args))


def closes_ends(step: Step) -> bool:
    return "of" in step.args


def sewn_either(bench: Bench, step: SolvedStep, solved: Solved, room: Workroom, allowance: Fraction) -> Performed:
    """The plain seam of this allowance carried out, for a technique to finish; or refused.

    Fails: FB330, and all that `join ends` and `attach` refuse.
    """
    written = step.written
    given = [key for key in ("of", "edge", "to") if key in written.args]
    if given not in (["of"], ["edge", "to"]):
        said = " and ".join(f"`{key}`" for key in given) or "nothing"
        # Nothing says which pieces were meant, so nothing is said of any of them after this.
        return refused(
            bench,
            step,
            tuple(bench.cloths),
            fault_at(
                written,
                None,
                "FB330",
                f"`{written.technique}` needs `of`, or `edge` and `to`, and {said} is given",
                help="write `of` to close ends, or `edge` and `to` to join two edges",
            ),
        )
    plain = SolvedStep(written, {**step.amounts, "seam": mm(allowance)})
    sew = close_ends if closes_ends(written) else join_edges
    return sew(bench, plain, solved, room)._replace(step=step)


def either_said(done: Performed, say: Phrasing) -> dict[str, Value]:
    """The values that messages of both kinds of seam are given: which pieces, how many ends to lay, how they are held."""
    seam = new_seam(done)
    names = tuple(ply.piece for ply in seam.plies)
    return {
        "pieces": Pieces(names),
        "two": flag(len(set(names)) == 1 and seam.copies == 1),
        "hold": One(say.room.hold_with, ("pins", "clips")),
    }


def either_laid(done: Performed, ledger: Ledger, solved: Solved, arg: str, width: Fraction) -> OnCloth:
    """The margin of the seam, at the ends that it closes or at the edges that it joins, and what it may be."""
    written = done.step.written
    if "of" in written.args:
        pieces = words_of(written, "of")
        windows = (seam_window(solved, arg, width, pieces, min(solved.pieces[each].length for each in pieces) / 2),)
        return OnCloth(end_margins(ledger, pieces, width, arg), windows)
    windows = (seam_window(solved, arg, width, done.touches),)
    return OnCloth(margins(ledger, width, arg, edge_of(written, "edge"), edge_of(written, "to")), windows)
