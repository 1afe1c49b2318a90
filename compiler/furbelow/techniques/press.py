"""Press a piece.

What it does: flattens seams and folds with a warm iron, as the fibre stands.
Edges before and after: unchanged.
Allowance: none.
Example: `- press: {piece: lining}`
Source: tulle takes a press cloth and low heat: American Sewing Guild, fabric notes. Fibre settings follow the usual
    one, two and three dots of ISO 3758 care labels.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, State
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Pieces
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    SetUp,
    words_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.iron import by_heat, dots_of, iron_hot, iron_set, iron_tools


class Press:
    name = "press"
    about = "Press a piece with the heat its fibre takes."
    pictures = (Picture.PIECES,)
    parameters = {"piece": Parameter("The piece or pieces to press.", Kind.PIECES)}

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        pieces = words_of(step.written, "piece")
        cloths = [bench.cloths[piece] for piece in pieces]
        after = bench.with_cloths(*(cloth._replace(pressed=True) for cloth in cloths))
        handled = sum((cloth.piece.cut_length * cloth.copies for cloth in cloths), Fraction(0))
        return Performed(step, bench, after, pieces, setup=SetUp.IRON, handled=handled)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        pieces = by_heat(say, done.before, done.touches)
        actions: list[Action] = []
        for before, piece in zip([None, *pieces], pieces, strict=False):
            if before and dots_of(say, done.before, before) != dots_of(say, done.before, piece):
                actions.append(iron_set(say, done.before, piece))
            message = "press-seams-then-folds" if _folded(done.before, piece) else "press-seams"
            actions.append(Action(message, done.before.cloths[piece].copies, values={"piece": Pieces((piece,))}))
        folds = any(_folded(done.before, piece) for piece in pieces)
        return Instructions(
            "press-title",
            "press-aim-folds" if folds else "press-aim-seams",
            tuple(actions),
            {"pieces": Pieces(done.touches)},
            (iron_hot(done, say),),
            iron_tools(done, say),
            ironed=("press-seams", "press-seams-then-folds"),
        )


def _folded(bench: Bench, piece: str) -> bool:
    edges = [bench.edge(f"{piece}.{side}") for side in ("top", "bottom", "start", "end")]
    return any(edge.state is State.HEMMED or "pleats" in edge.gathered for edge in edges)


TECHNIQUE = Press()
