"""Baste loops of tape to an edge, to be caught in the seam that follows.

What it does: folds tapes to loops and bastes their ends to the edge, pointing down, at the sides.
Edges before and after: an edge that is still to be sewn; unchanged.
Allowance: none. The tape takes the length of each loop.
Example: `- hang loops: {edge: skirt_top, tape: ribbon, length: 24 cm, count: 2}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench
from furbelow.garment.limits import width_of
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
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
    Sewn,
    Used,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.preconditions import edge_not_ready, not_long

LEAST = Fraction(60)  # a shorter loop finds no hook; house rule, maker to confirm
LOOPS = (CautionKind.CHILD, "Loops hang inside the garment only, flat against it: on a child a free loop catches.")


class HangLoops:
    name = "hang loops"
    about = "Baste loops of tape to an edge for hanging the garment up."
    pictures = (Picture.HANG_LOOPS,)
    parameters = {
        "edge": Parameter("The edge they hang from, before it is sewn in.", Kind.EDGE),
        "tape": Parameter("The tape, one of the materials.", Kind.MATERIAL),
        "length": Parameter("Tape for each loop; the loop hangs half as long.", Kind.LENGTH, "24 cm"),
        "count": Parameter("How many loops.", Kind.NUMBER, "2"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say, name = step.written, Phrasing(solved, room), edge_of(step.written, "edge")
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge, tape = bench.edge(name), word_of(written, "tape")
        length, count = step.mm("length"), step.amounts["count"].as_number()
        fault = not_long(written, "edge", edge)
        if count < 1 or count.denominator != 1:
            fault = fault_at(
                written,
                "count",
                "FB341",
                f"{float(count):.4g} loops can't be sewn; they are counted 1, 2, 3",
                help=f"write `count: {max(1, round(count))}`",
            )
        if length < LEAST:
            fault = fault_at(
                written,
                "length",
                "FB349",
                f"a loop of {say.length(length)} finds no hook; it takes {say.length(LEAST)},"
                f" {say.length(LEAST - length)} more",
                help=f"make it {say.length(LEAST)} or longer",
            )
        deep = max(bench.depth(piece) for piece in edge.pieces)
        if length / 2 >= deep:
            fault = fault_at(
                written,
                "length",
                "FB349",
                f"a loop hangs {say.length(length / 2)} and the garment is {say.length(deep)} deep there;"
                " it would show below",
                help="make the loops shorter",
            )
        if fault:
            return refused(bench, step, edge.pieces, fault)
        return Performed(
            step,
            bench,
            bench,
            edge.pieces,
            sewn=(
                Sewn(
                    StitchType.LOCK,
                    2 * max(width_of(solved, tape), Fraction(5)),
                    int(count) * edge.copies,
                    room.seam_stitch,
                    "basting on loops",
                ),
            ),
            used=(Used(tape, length, int(count) * edge.copies, "hang loops"),),
            setup=SetUp.STRAIGHT,
            facts={"count": int(count), "length": length},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        facts, step = done.facts, done.step
        edge = done.before.edge(edge_of(step.written, "edge"))
        where = say.edges(edge.pieces, edge.name.rpartition(".")[2] if "." in edge.name else "top")
        material = say.solved.materials[word_of(step.written, "tape")].material
        tape, count, length = (
            material.about or material.name.replace("_", " "),
            facts["count"],
            say.length(facts["length"]),
        )
        apart = say.length(edge.set_length / count)
        actions = (
            OwnAction(f"Cut {say.count(count, 'length')} of {tape}, {length} each."),
            OwnAction("Fold each in half to a loop without twisting it, and lay both its ends side by side."),
            OwnAction(
                f"Lay the loops on the inside of {where}, ends level with the cut edge, loops hanging down"
                + (f", {apart} apart, the first at a side seam." if count > 1 else ", at the middle of the back."),
                check=f"Each loop hangs down {say.length(facts['length'] / 2)}.",
                tolerance=f"{say.about(Fraction(5))} more or less",
                remedy="Shift its ends before you sew.",
                chain=say.chain(edge.copies),
            ),
            OwnAction(
                f"Sew across the ends {say.about(Fraction(5))} from the edge, twice; the row stays inside the seam.",
                chain=say.count(count * edge.copies, "loop"),
            ),
        )
        return OwnInstructions(
            f"Baste hang loops to {where}",
            f"{say.count(count, 'loop')} will be caught in the next seam.",
            actions,
            (LOOPS,),
        )


TECHNIQUE = HangLoops()
