"""Cut a long strip on the bias from one square.

What it does: cuts the square across, sews two of its sides together, marks lines, sews the others to a tube one line askew and
    cuts round and round, so that the strip is pieced at 45 degrees.
Edges before and after: a square before; one flat strip of its cut length, all edges raw, after.
Allowance: none of its own; the square holds the strip and the two seams.
Example: `- bias strip: {piece: binding, seam: 6 mm}`
Source: the length of a bias strip is the area of its square by its width: of handbooks of dressmaking, from memory.
"""

from __future__ import annotations

from fractions import Fraction
from math import sqrt

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench
from furbelow.garment.bias import BiasStrip
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Pieces, Stitch, Values
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import PINS_OUT, SHEARS
from furbelow.techniques.shared.iron import iron_hot, iron_tools

NARROWEST = Fraction(15)  # a narrower strip can't be cut evenly; house rule, maker to confirm
LEAST_SEAM = Fraction(5)


class BiasStripCut:
    name = "bias strip"
    about = "Cut a long strip on the bias from one square, pieced at 45 degrees."
    pictures = (Picture.BIAS_STRIP,)
    parameters = {
        "piece": Parameter("The strip: as long and deep as it is to be.", Kind.PIECE),
        "seam": Parameter("Seam allowance where the sides of the square are joined.", Kind.LENGTH, "6 mm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return (Allowance(word_of(step, "piece"), "bottom", (), bias="seam"),)

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        strip = facts_of(done, BiasStrip)
        return OnCloth(
            windows=(
                Window("piece", "a bias strip", strip.width, sewable_least=NARROWEST, why="its width when cut"),
                Window("seam", "a seam of the square", strip.seam, sewable_least=LEAST_SEAM, most=Fraction(10)),
            )
        )

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        piece = word_of(step.written, "piece")
        numbers = solved.pieces[piece]
        strip = numbers.bias
        if strip is None:
            return refused(bench, step, (piece,), _shaped(step, piece))
        if fault := _not_to_cut(bench, step, solved, piece):
            return refused(bench, step, (piece,), fault)
        copies, side = bench.cloths[piece].copies, numbers.blank[0]
        after = bench.with_cloths(bench.cloths[piece]._replace(blank=False))
        return Performed(
            step,
            bench,
            after,
            (piece,),
            sewn=(Sewn(StitchType.LOCK, side, 2 * copies, Fraction(3, 2)),),
            setup=SetUp.STRAIGHT,
            pinned=2 * side * copies,
            handled=(strip.gives + 3 * side) * copies,
            facts=strip,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        piece, strip = word_of(done.step.written, "piece"), facts_of(done, BiasStrip)
        side, copies = say.solved.pieces[piece].blank[0], done.before.cloths[piece].copies
        messages = (
            "bias-strip-cut-across",
            "bias-strip-first-seam",
            "bias-strip-lines",
            "bias-strip-tube",
            "bias-strip-second-seam",
            "bias-strip-cut",
            "bias-strip-trim",
        )
        values: Values = {
            "piece": Pieces((piece,)),
            "side": Length(side, "cut"),
            "diagonal": Length(Fraction(round(float(side) * sqrt(2), 1)).limit_denominator(10)),
            "width": Length(strip.width),
            "lines": strip.lines,
            "gives": Length(strip.gives),
            "length": Length(strip.length),
            "seam-width": Length(strip.seam),
            "off": Length(Fraction(2), "off"),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        actions = tuple(Action(message, copies) for message in messages)
        cautions, tools = (SHEARS, PINS_OUT, iron_hot(done, say)), iron_tools(done, say, piece)
        return Instructions(
            "bias-strip-title",
            "bias-strip-aim",
            actions,
            values,
            cautions,
            tools,
            (piece,),
            ironed=("bias-strip-first-seam", "bias-strip-second-seam"),
            ruled=("bias-strip-cut-across", "bias-strip-lines"),
        )


def _shaped(step: SolvedStep, piece: str) -> Fault:
    return fault_at(
        step.written,
        "piece",
        "FB354",
        f"`{piece}` is cut to another shape by a step of its own, and a bias strip is straight",
        help="leave one of the two steps out",
    )


def _not_to_cut(bench: Bench, step: SolvedStep, solved: Solved, piece: str) -> Fault | None:
    written = step.written
    if solved.pieces[piece].piece.piecing is not None:
        return fault_at(
            written,
            "piece",
            "FB354",
            f"`{piece}` is pieced of straight strips, and a bias strip comes whole from its square",
            help=f"leave `piecing` of `{piece}` out",
        )
    if not bench.cloths[piece].blank:
        return fault_at(written, "piece", "FB354", f"the strip `{piece}` is cut already", mend=mends.leave_out(written))
    return None


TECHNIQUE = BiasStripCut()
