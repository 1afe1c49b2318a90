"""Press a piece.

What it does: flattens seams and folds with a warm iron, as the fibre stands.
Edges before and after: unchanged.
Allowance: none.
Example: `- press: {piece: lining}`
Source: tulle takes a press cloth and low heat: American Sewing Guild, fabric notes. Fibre settings follow the usual
    one, two and three dots of ISO 3758 care labels.
"""

from __future__ import annotations

from furbelow.garment.bench import Bench, State
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    CautionKind,
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    SetUp,
    words_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.iron import dots_of

IRON = "The iron and its steam burn: keep fingers clear of the fold, and stand the iron up between presses."
MELTS = (
    " Nylon and net melt under a hot iron and stick to the skin: low heat, no steam, a dry press cloth, and never iron them on"
    " the body."
)

HEAT = {
    1: "one dot, 110 °C, no steam, through a dry press cloth",
    2: "two dots, 150 °C, through a press cloth",
    3: "three dots, 200 °C, with steam",
}


def iron_set(say: Phrasing, piece: str) -> OwnAction:
    """Setting the iron for the cloth of a piece."""
    material = say.solved.materials[say.solved.pieces[piece].piece.cloth.text].material
    heat = HEAT[dots_of(say, piece)]
    return OwnAction(f"Set the iron for {material.fibre or 'an unknown fibre'}: {heat}. Try it on an offcut first.")


def iron_caution(done: Performed, say: Phrasing) -> tuple[CautionKind, str]:
    """What the iron can do, and what it does to cloth that melts where such cloth is worked on."""
    return CautionKind.HEAT, IRON + (MELTS if any(dots_of(say, piece) == 1 for piece in done.touches) else "")


class Press:
    name = "press"
    about = "Press a piece with the heat its fibre takes."
    pictures = (Picture.PIECES,)
    parameters = {"piece": Parameter("The piece or pieces to press.", Kind.PIECES)}

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        pieces = words_of(step.written, "piece")
        after = bench.with_cloths(*(bench.cloths[piece]._replace(pressed=True) for piece in pieces))
        handled = sum(bench.cloths[piece].piece.cut_length * bench.cloths[piece].copies for piece in pieces)
        return Performed(step, bench, after, pieces, setup=SetUp.IRON, handled=handled)  # type: ignore[arg-type]

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        bench = done.before

        def folded(piece: str) -> bool:
            edges = [bench.edge(f"{piece}.{side}") for side in ("top", "bottom", "start", "end")]
            return any(edge.state is State.HEMMED or "pleats" in edge.gathered for edge in edges)

        actions = []
        for piece in done.touches:
            actions.append(iron_set(say, piece))
            actions.append(
                OwnAction(
                    f"Press {say.the(piece)} from the wrong side, the seams first{', then the folds' if folded(piece) else ''}."
                    " Lay all margins of one seam to the same side. Lift the iron and set it down, do not drag it.",
                    check="The seams lie flat and nothing shines or shrinks.",
                    remedy="If the offcut shines or draws together, lower the heat.",
                    chain=say.chain(done.before.cloths[piece].copies),
                )
            )
        aim = "Seams and folds lie flat." if any(map(folded, done.touches)) else "The seams lie flat."
        return OwnInstructions(f"Press {say.the(done.touches)}", aim, tuple(actions), (iron_caution(done, say),))


TECHNIQUE = Press()
