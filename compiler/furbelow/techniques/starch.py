"""Stiffen a piece with starch.

What it does: wets the cloth with starch and lets it dry spread out.
Edges before and after: unchanged.
Allowance: none.
Example: `- starch: {piece: flounce, with: starch}` or `- starch: {piece: flounce, with: cornflour, by: dip, made: from cornflour}`
Source: common practice, no source; the recipe of cornflour stands in shared/kitchen_starch.py with its source.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.garment.limits import dry_weight
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, Part, Pieces, Supply, Values, Volume, flag
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
    Tool,
    Used,
    facts_of,
    word_of,
    words_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.kitchen_starch import KITCHEN_STARCH

BRUSH, SPRAY, DIP = "brush", "spray", "dip"
HANGING, FORM = "hanging", "on a form"
READY, CORNFLOUR = "ready", "from cornflour"
# Ml for each gram of dry cloth: to wet it through, or to swim in. House rule, maker to confirm.
ML_PER_GRAM = {BRUSH: Fraction(1), SPRAY: Fraction(1), DIP: Fraction(10)}
LEAST_COOKED = Fraction(250)  # ml: less boils away; common practice, no source
FAR = Fraction(300)  # from the spray to the cloth; common practice, no source

AIR_FAR = Fraction(500)  # from a dryer to the cloth; house rule, maker to confirm

FLAME_AND_AIR = Caution(CautionKind.FLAME, "starch-caution-warm-air")
FLAME = Caution(CautionKind.FLAME, "starch-caution-flame")
MIST = Caution(CautionKind.AEROSOL, "starch-caution-spray")
SCALDS = Caution(CautionKind.STEAM, "starch-caution-hot")
_TOOLS = {BRUSH: Tool.BRUSH, SPRAY: Tool.SPRAY, DIP: Tool.BOWL}


class Starched(NamedTuple):
    """How much starch, ready to use, was taken, in ml."""

    liquid: Fraction


class Starch:
    name = "starch"
    about = "Stiffen a piece with starch."
    pictures = (Picture.PIECES,)
    parameters = {
        "piece": Parameter("The piece or pieces to stiffen.", Kind.PIECES),
        "with": Parameter("The starch, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.STARCH,)),
        "by": Parameter(
            "How it is put on; a dip takes ten times as much as a brush or a spray.", (BRUSH, SPRAY, DIP), BRUSH
        ),
        "dry": Parameter(
            "Where it dries: hanging, or spread on a form with warm air from below, then left overnight.",
            (HANGING, FORM),
            HANGING,
        ),
        "made": Parameter("Whether the starch is bought ready or cooked from cornflour.", (READY, CORNFLOUR), READY),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written = step.written
        pieces, cooked = words_of(written, "piece"), word_of(written, "made") == CORNFLOUR
        after = bench.with_cloths(*(bench.cloths[piece]._replace(starched=True) for piece in pieces))
        wet = {piece: dry_weight(solved, piece) * ML_PER_GRAM[word_of(written, "by")] for piece in pieces}
        all_wet = sum((wet[piece] * solved.pieces[piece].count for piece in pieces), Fraction(0))
        liquid = max(all_wet, LEAST_COOKED) if cooked else all_wet
        # What is bought is the flour alone.
        share = liquid / all_wet * (KITCHEN_STARCH.cornflour / KITCHEN_STARCH.liquid if cooked else 1)
        used = tuple(
            Used(
                word_of(written, "with"),
                wet[piece] * share,
                solved.pieces[piece].count,
                Part("use-starch", {"piece": Pieces((piece,))}),
            )
            for piece in pieces
        )
        along = sum((solved.pieces[piece].cut_length * solved.pieces[piece].count for piece in pieces), Fraction(0))
        facts = Starched(liquid)
        return Performed(step, bench, after, pieces, used=used, setup=SetUp.TABLE, handled=along, facts=facts)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, liquid = done.step.written, facts_of(done, Starched).liquid
        by, cooked = word_of(written, "by"), word_of(written, "made") == CORNFLOUR
        on_form = word_of(written, "dry") == FORM
        recipe = KITCHEN_STARCH.for_liquid(liquid)
        values: Values = {
            "pieces": Pieces(done.touches),
            "starch": Supply(word_of(written, "with")),
            "liquid": Volume(liquid),
            "cornflour": Volume(recipe.cornflour),
            "cold": Volume(recipe.cold_water),
            "hot": Volume(recipe.hot_water),
            "far": Length(FAR, "about"),
            # Later steps may measure from a bright thread.
            "last": flag(say.solved.steps[-1].written is written),
            "air-far": Length(AIR_FAR, "about"),
        }
        return Instructions(
            "starch-title",
            "starch-aim",
            tuple(map(Action, ("starch-pins", *_messages(by, cooked), *_drying(on_form)))),
            values,
            (*((SCALDS,) if cooked else ()), *((MIST,) if by == SPRAY else ()), FLAME_AND_AIR if on_form else FLAME),
            (
                _TOOLS[by],
                Tool.MEASURING_JUG,
                Tool.SHEET,
                *((Tool.PAN,) if cooked else ()),
                *((Tool.HAIR_DRYER, Tool.FORM) if on_form else ()),
            ),
        )


def _messages(by: str, cooked: bool) -> Iterator[str]:
    if cooked:
        yield from ("starch-paste", "starch-cook", "starch-cool")
    else:
        yield "starch-ready-spray" if by == SPRAY else "starch-ready"
    yield "starch-try"
    if by == DIP:
        yield from ("starch-dip", "starch-hang-wet")
    else:
        yield from ("starch-hang", "starch-spray" if by == SPRAY else "starch-brush")


def _drying(on_form: bool) -> Iterator[str]:
    if on_form:
        yield from ("starch-form", "starch-warm-air", "starch-overnight")
    else:
        yield "starch-dry"


TECHNIQUE = Starch()
