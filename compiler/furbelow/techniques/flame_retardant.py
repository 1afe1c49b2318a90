"""Treat pieces with an agent against fire, as its maker says, and label the garment with the day and the agent.

What it does: wets the pieces through with the agent, dries them, and keeps an offcut that was treated with them for the test.
Edges before and after: unchanged. The finish washes out.
Allowance: none.
Example: `- flame retardant: {piece: [upper, skirt], with: agent, takes: 1.5}`
Source: salts take on fibres that drink water; nylon and acetate are left to who makes the agent: Technical Note on flame retarding,
    theatre engineering course 21M.735, Massachusetts Institute of Technology, 2004. A treatment is tested anew each year: common
    practice of theatres, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment.bench import Bench
from furbelow.garment.limits import dry_weight
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import One, Part, Pieces, Supply, Values, Volume
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
    fault_at,
    word_of,
    words_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple

DIP, SPRAY = "dip", "spray"
LEAST, MOST = Fraction(1, 2), Fraction(20)  # ml for each g of dry cloth: less does not wet it through; house rule
DRINKS = ("cotton", "linen", "viscose", "silk", "wool")  # fibres that take a watery agent

LABEL_FIRST = Caution(CautionKind.FLAME, "flame-retardant-caution")
SKIN = Caution(CautionKind.CHEMICAL, "flame-retardant-caution-skin")
MIST = Caution(CautionKind.AEROSOL, "flame-retardant-caution-mist")
WORN = Caution(CautionKind.CHILD, "flame-retardant-caution-child")


class Treated(NamedTuple):
    """How much of the agent is taken, in ml."""

    liquid: Fraction


class FlameRetardant:
    name = "flame retardant"
    about = "Treat pieces with an agent against fire, by what its maker says."
    pictures = (Picture.PIECES,)
    parameters = {
        "piece": Parameter("The piece or pieces, sewn and washed for the last time.", Kind.PIECES),
        "with": Parameter(
            "The agent, one of the materials, of the kind other.", Kind.MATERIAL, supplies=(SupplyKind.OTHER,)
        ),
        "takes": Parameter("Millilitres for each gram of dry cloth, as its label says.", Kind.NUMBER, "1"),
        "by": Parameter("How it is put on, as its label says.", (DIP, SPRAY), DIP),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        takes = done.step.amounts["takes"].as_number()
        why = "millilitres for each gram wet it through"
        return OnCloth(windows=(Window("takes", "an amount", takes, least=LEAST, most=MOST, why=why, counted=True),))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, pieces, takes = step.written, words_of(step.written, "piece"), step.amounts["takes"].as_number()
        wet = {piece: dry_weight(solved, piece) * takes for piece in pieces}
        counts = {piece: solved.pieces[piece].count for piece in pieces}
        used = tuple(
            Used(word_of(written, "with"), wet[piece], counts[piece], Part("use-agent", {"piece": Pieces((piece,))}))
            for piece in pieces
        )
        along = sum((solved.pieces[piece].cut_length * counts[piece] for piece in pieces), Fraction(0))
        liquid = sum((wet[piece] * counts[piece] for piece in pieces), Fraction(0))
        told = tuple(_may_not_take(step, solved, pieces))
        return Performed(
            step,
            bench,
            bench,
            pieces,
            told,
            used=used,
            setup=SetUp.TABLE,
            handled=along,
            facts=Treated(liquid),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, by = done.step.written, word_of(done.step.written, "by")
        actions = (
            Action("flame-retardant-read"),
            Action("flame-retardant-mix"),
            Action("flame-retardant-spray" if by == SPRAY else "flame-retardant-dip"),
            Action("flame-retardant-dry"),
            Action("flame-retardant-keep"),
            Action("flame-retardant-label"),
        )
        values: Values = {
            "pieces": Pieces(done.touches),
            "agent": Supply(word_of(written, "with")),
            "liquid": Volume(facts_of(done, Treated).liquid),
            "by": One(by, (DIP, SPRAY)),
        }
        cautions = (LABEL_FIRST, SKIN, *((MIST,) if by == SPRAY else ()), WORN)
        tools = (
            Tool.GLOVES,
            Tool.EYE_PROTECTION,
            Tool.SPRAY if by == SPRAY else Tool.BOWL,
            Tool.MEASURING_JUG,
            Tool.SHEET,
        )
        return Instructions("flame-retardant-title", "flame-retardant-aim", actions, values, cautions, tools)


def _may_not_take(step: SolvedStep, solved: Solved, pieces: tuple[str, ...]) -> tuple[Fault, ...]:
    """The warnings of cloth that a watery agent runs off: its label decides."""
    cloths = {solved.pieces[piece].piece.cloth.text for piece in pieces}
    fibres = {name: solved.materials[name].material.fibre for name in sorted(cloths)}
    return tuple(
        fault_at(
            step.written,
            "with",
            "FB372",
            f"`{name}` is of {fibre}, and an agent in water takes for certain on {', '.join(DRINKS[:-1])} and {DRINKS[-1]} alone",
            help=f"take an agent whose label names {fibre}, and write so under `accept`",
            severity=Severity.WARNING,
        )
        for name, fibre in fibres.items()
        if fibre not in DRINKS
    )


TECHNIQUE = FlameRetardant()
