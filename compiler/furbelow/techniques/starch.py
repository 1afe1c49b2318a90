"""Stiffen a piece with starch.

What it does: wets the cloth with starch and lets it dry spread out.
Edges before and after: unchanged.
Allowance: none.
Example: `- starch: {piece: flounce, with: starch}`
Source: common practice, no source.
"""

from __future__ import annotations

from furbelow.garment.bench import Bench
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Part, Pieces
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, SupplyKind
from furbelow.garment.technique import (
    Action,
    Caution,
    CautionKind,
    EdgesIn,
    Instructions,
    Kind,
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
    Caution(CautionKind.AEROSOL, "starch-caution-spray"),
    Caution(CautionKind.FLAME, "starch-caution-flame"),
)


class Starch:
    name = "starch"
    about = "Stiffen a piece with starch."
    pictures = (Picture.PIECES,)
    parameters = {
        "piece": Parameter("The piece or pieces to stiffen.", Kind.PIECES),
        "with": Parameter("The starch, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.STARCH,)),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        pieces, starch = words_of(step.written, "piece"), word_of(step.written, "with")
        after = bench.with_cloths(*(bench.cloths[piece]._replace(starched=True) for piece in pieces))
        used = tuple(
            Used(
                starch,
                solved.pieces[piece].cut_length * solved.pieces[piece].cut_depth,
                solved.pieces[piece].count,
                Part("use-starch", {"piece": Pieces((piece,))}),
            )
            for piece in pieces
        )
        return Performed(step, bench, after, pieces, used=used, setup=SetUp.TABLE)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        actions = (Action("starch-hang"), Action("starch-wet"), Action("starch-dry"))
        return Instructions("starch-title", "starch-aim", actions, {"pieces": Pieces(done.touches)}, CAUTIONS)


TECHNIQUE = Starch()
