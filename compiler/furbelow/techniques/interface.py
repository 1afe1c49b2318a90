"""Stiffen a piece with interfacing before it is sewn.

What it does: cuts interfacing to the size that shows of the piece, or of half of it, and fuses it to the wrong side.
Edges before and after: all edges of the piece free before; unchanged.
Allowance: none. The interfacing ends short of the margins, so that seams stay thin.
Example: `- interface: {piece: waistband, with: fusible, cover: half}`
Source: pressed without sliding, ten seconds a place, and left flat until it is cold: common practice, no source; the maker's
    leaflet that comes with it goes before.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from furbelow.garment.bench import WORKABLE, Bench
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Part, Pieces, Supply, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, SupplyKind
from furbelow.garment.technique import (
    Action,
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
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import SHEARS
from furbelow.techniques.shared.iron import dots_of, iron_hot
from furbelow.techniques.shared.preconditions import strips_not_joined

WHOLE, HALF = "whole", "half"
SIZES = (WHOLE, HALF)
SECONDS = 10
FUSING = 2  # dots of heat at which most glue melts, through a damp cloth: common practice, no source
SHORT = Fraction(2)  # it ends so far inside the line that shows


class Stiffened(NamedTuple):
    """The interfacing of one copy, in mm, and how many there are."""

    long: Fraction
    deep: Fraction
    copies: int


class Interface:
    name = "interface"
    about = "Fuse interfacing to a piece, or to half of it, before it is sewn."
    pictures = (Picture.INTERFACING,)
    parameters = {
        "piece": Parameter("The piece, still flat and free.", Kind.PIECE),
        "with": Parameter("The interfacing, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.INTERFACING,)),
        "cover": Parameter("All that shows of the piece, or the outer half of a folded band.", SIZES, WHOLE),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, piece, name = step.written, word_of(step.written, "piece"), word_of(step.written, "with")
        if fault := strips_not_joined(bench, written, "piece", (piece,)):
            return refused(bench, step, (piece,), fault)
        sewn = [
            edge
            for side in ("top", "bottom", "start", "end")
            if (edge := bench.edge(f"{piece}.{side}")).state not in WORKABLE
        ]
        if sewn or bench.cloths[piece].ring:
            at = f"`{sewn[0].name}` is finished already" if sewn else f"`{piece}` is closed to a ring"
            return refused(
                bench,
                step,
                (piece,),
                fault_at(
                    written,
                    "piece",
                    "FB302",
                    f"{at}, and interfacing lies flat on a free piece",
                    help="move this step before the others on this piece",
                ),
            )
        numbers, copies = solved.pieces[piece], bench.cloths[piece].copies
        long = numbers.length * bench.strips_round(piece)
        deep = numbers.depth * (2 if numbers.folded and word_of(written, "cover") == WHOLE else 1)
        facts = Stiffened(long - 2 * SHORT, deep - 2 * SHORT if not numbers.folded else deep - SHORT, copies)
        return Performed(
            step,
            bench,
            bench,
            (piece,),
            used=(
                Used(
                    name,
                    _off_the_roll(facts, width_of(solved, name)),
                    1,
                    Part("use-interfacing", {"piece": Pieces((piece,))}),
                ),
            ),
            setup=SetUp.IRON,
            handled=(facts.long + facts.deep) * 2 * copies,
            facts=facts,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts = done.step.written, facts_of(done, Stiffened)
        piece = word_of(written, "piece")
        wide, numbers = width_of(say.solved, word_of(written, "with")), say.solved.pieces[piece]
        creased = numbers.folded and word_of(written, "cover") == HALF
        actions = (
            Action("interface-cut", facts.copies),
            Action("interface-iron"),
            *((Action("interface-crease", facts.copies),) if creased else ()),
            Action("interface-lay", facts.copies),
            Action("interface-fuse", facts.copies),
        )
        values: Values = {
            "piece": Pieces((piece,)),
            "interfacing": Supply(word_of(written, "with")),
            "cover": One(word_of(written, "cover"), SIZES),
            "folded": flag(numbers.folded),
            "pieced": flag(facts.long > wide > 0 and facts.deep > wide),
            "long": Length(facts.long),
            "deep": Length(facts.deep),
            "seconds": SECONDS,
            "half": Length(numbers.cut_depth / 2),
            "dots": min(FUSING, dots_of(say, done.after, piece)),
        }
        return Instructions(
            "interface-title",
            "interface-aim",
            actions,
            values,
            (SHEARS, iron_hot(done, say)),
            (Tool.IRON, Tool.PRESS_CLOTH),
            ironed=("interface-crease", "interface-fuse"),
        )


def _off_the_roll(facts: Stiffened, width: Fraction) -> Fraction:
    """How much of a roll of this width all copies take, in mm: lengthwise beside each other, or across, whichever is less.

    What is longer than both ways allow is laid lengthwise. A roll of no known width gives one strip beside the other.
    """
    ways = []
    for long, deep in ((facts.long, facts.deep), (facts.deep, facts.long)):
        beside = int(width // deep) if width else 1
        if beside:
            ways.append(ceil(Fraction(facts.copies, beside)) * long)
    return min(ways, default=facts.long * facts.copies * ceil(facts.deep / (width or facts.deep)))


TECHNIQUE = Interface()
