"""Stiffen a piece with starch.

What it does: wets the cloth with starch and lets it dry spread out.
Edges before and after: unchanged.
Allowance: none.
Example: `- starch: {piece: flounce, with: starch}`
Source: common practice, no source.
"""

from __future__ import annotations

from furbelow.garment.bench import Bench
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
    Used,
    word_of,
    words_of,
)
from furbelow.garment.workroom import Workroom

CAUTIONS = (
    (
        CautionKind.AEROSOL,
        "Spray starch is flammable: spray it in the open air or a well-aired room, away from flames, pilot lights,"
        " cigarettes and hot irons, and do not breathe the mist.",
    ),
    (
        CautionKind.FLAME,
        "A net skirt burns fast, starched or not. Dry it in the air: no hot dryer, and no stove, pilot light, heater,"
        " candle or open fire near it. Keep it from them when it is worn too.",
    ),
)


class Starch:
    name = "starch"
    about = "Stiffen a piece with starch."
    pictures = (Picture.PIECES,)
    parameters = {
        "piece": Parameter("The piece or pieces to stiffen.", Kind.PIECES),
        "with": Parameter("The starch, one of the materials.", Kind.MATERIAL),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        pieces, starch = words_of(step.written, "piece"), word_of(step.written, "with")
        after = bench.with_cloths(*(bench.cloths[piece]._replace(starched=True) for piece in pieces))
        used = tuple(
            Used(
                starch,
                solved.pieces[piece].cut_length * solved.pieces[piece].cut_depth,
                solved.pieces[piece].count,
                f"stiffening the {solved.pieces[piece].label}",
            )
            for piece in pieces
        )
        return Performed(step, bench, after, pieces, used=used, setup=SetUp.TABLE)

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        actions = (
            OwnAction(
                "Hang the skirt upside down by its hem, or lay it on a line in the open air, with a sheet below it."
            ),
            OwnAction(
                f"Dip, brush or spray {say.the(done.touches)} with starch, one layer at a time, as its label says. Hold the"
                " other tiers out of the way.",
                check="It is damp through, with no drops running.",
                remedy="Dab wet spots with a dry cloth: they dry white.",
            ),
            OwnAction("Shake the layers apart and let it dry in the air, away from heat."),
        )
        return OwnInstructions(f"Stiffen {say.the(done.touches)}", "The skirt stands out.", actions, CAUTIONS)


TECHNIQUE = Starch()
