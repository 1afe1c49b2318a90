"""A seam that closes ends to a ring or sews one edge to another: what the finished seams have in common."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Seam
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    EdgesIn,
    Kind,
    Parameter,
    Performed,
    allowances_at,
    fault_at,
    refused,
    words_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import mm
from furbelow.techniques.attach import Attach
from furbelow.techniques.join_ends import EACH, ONE, JoinEnds

WHERE = {
    "of": Parameter("The piece, or every tier of the unit, whose ends the seam closes.", Kind.PIECES, ""),
    "into": Parameter("With `of`: a ring of each copy, or one ring of all copies.", (EACH, ONE), EACH),
    "edge": Parameter("The edge to sew on, where two edges are joined.", Kind.EDGE, ""),
    "to": Parameter("The edge it is sewn to.", Kind.EDGE, ""),
}


def takes_either(step: Step, edges_in: EdgesIn, *args: str) -> tuple[Allowance, ...]:
    """What the seam takes: at start and end of the pieces it closes, or at both edges it joins."""
    if "of" in step.args:
        return tuple(Allowance(piece, side, args) for piece in words_of(step, "of") for side in ("start", "end"))
    named = [step.args[key].value for key in ("edge", "to") if key in step.args]
    return tuple(taking for edge in named for taking in allowances_at(edges_in(edge), *args))  # type: ignore[arg-type]


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
    sew = JoinEnds() if given == ["of"] else Attach()
    return sew.perform(bench, plain, solved, room)._replace(step=step)


def new_seam(done: Performed) -> Seam:
    """The seam that a step made."""
    return next(seam for name, seam in done.after.seams.items() if done.before.seams.get(name) is not seam)


def seam_words(done: Performed, say: Phrasing) -> tuple[str, str]:
    """Where the seam runs, for a heading and for laying: "the side seam of the panel", "the ends of the panel"."""
    seam = new_seam(done)
    pieces = say.the([ply.piece for ply in seam.plies])
    if "of" in done.step.written.args:
        one = len({ply.piece for ply in seam.plies}) == 1
        return f"the side seam of {pieces}", f"the {'two ' if one and seam.copies == 1 else ''}ends of {pieces}"
    return f"the seam between {pieces}", f"the edges of {pieces}"
