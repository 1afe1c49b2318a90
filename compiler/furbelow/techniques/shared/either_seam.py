"""A seam that closes ends to a ring or sews one edge to another: what the finished seams have in common."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Pieces, Value
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    Action,
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
from furbelow.named import NamedTuple
from furbelow.techniques.shared.closed_ends import EACH, ONE, Faces, close_ends, ends_laid, ends_said, takes_at_ends
from furbelow.techniques.shared.gathers import tails_hang, tails_off
from furbelow.techniques.shared.joined_edges import join_edges
from furbelow.techniques.shared.laid_edges import FOLDS, edges_said, folds_of, marks_on
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


def runs_round(done: Performed) -> bool:
    """Whether the seam joins two rings, so that it ends on its own start."""
    written = done.step.written
    return not closes_ends(written) and done.before.ring(done.before.edge(edge_of(written, "to")))


class Laying(NamedTuple):
    """How a technique lays its seam: the faces that lie together, and its messages for edges, flat or of rings."""

    faces: Faces
    flat: str
    ring: tuple[str, ...]
    pin: str


def laid(done: Performed, say: Phrasing, ways: Laying) -> tuple[Action, ...]:
    """Ends laid together; or edges marked, laid and pinned, whose thread tails come off their pins once both are held."""
    written, before = done.step.written, done.before
    if closes_ends(written):
        return ends_laid(done)
    edge, to = (before.edge(edge_of(written, key)) for key in ("edge", "to"))
    lay = ways.ring if before.ring(to) else (ways.flat,)
    return (
        *marks_on(before, say, to, edge),
        *(Action(message, to.copies) for message in (*lay, ways.pin)),
        *((Action(tails_off(edge), to.copies),) if tails_hang(edge) else ()),
    )


def either_said(done: Performed, say: Phrasing, ways: Laying) -> dict[str, Value]:
    """The values that messages of both kinds of seam are given: its pieces, or its two edges, and what holds them."""
    seam, before, written = new_seam(done), done.before, done.step.written
    if closes_ends(written):
        return {**ends_said(done, ways.faces, say), "seams": seam.copies, "folds": One("flat", FOLDS)}
    edge, to = (before.edge(edge_of(written, key)) for key in ("edge", "to"))
    pieces = Pieces(tuple(ply.piece for ply in seam.plies))
    values = edges_said(before, edge, to, say)
    return {**values, "pieces": pieces, "length": Length(seam.length), "folds": One(folds_of(edge), FOLDS)}


def either_laid(done: Performed, ledger: Ledger, solved: Solved, arg: str, width: Fraction) -> OnCloth:
    """The margin of the seam, at the ends that it closes or at the edges that it joins, and what it may be."""
    written = done.step.written
    if "of" in written.args:
        pieces = words_of(written, "of")
        windows = (seam_window(solved, arg, width, pieces, min(solved.pieces[each].length for each in pieces) / 2),)
        return OnCloth(end_margins(ledger, pieces, width, arg), windows)
    windows = (seam_window(solved, arg, width, done.touches),)
    return OnCloth(margins(ledger, width, arg, edge_of(written, "edge"), edge_of(written, "to")), windows)
