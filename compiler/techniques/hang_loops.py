"""Baste loops of tape to an edge, to be caught in the seam that follows.

What it does: folds tapes to loops and bastes their ends to the edge, pointing down, at the sides.
Edges before and after: an edge that is still to be sewn; unchanged.
Allowance: none. The tape takes the length of each loop.
Example: `- hang loops: {edge: skirt_top, tape: ribbon, length: 24 cm, count: 2}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from compiler.cloth.bench import Bench
from compiler.cloth.limits import width_of
from compiler.s1_read.spec import Step
from compiler.s2_solve.solved import Solved, SolvedStep, Takes
from compiler.say import Say
from compiler.techniques.ready import edge_not_ready, not_long
from compiler.techniques.technique import (
    Action,
    EdgesIn,
    Parameter,
    Performed,
    Sewn,
    Telling,
    Used,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from compiler.workroom import Workroom

LEAST = Fraction(60)  # a shorter loop finds no hook; house rule, maker to confirm
LOOPS = ("child", "Loops hang inside the garment only, flat against it: on a child a free loop catches.")


class HangLoops:
    name = "hang loops"
    about = "Baste loops of tape to an edge for hanging the garment up."
    pictures = ("hang loops",)
    parameters = {
        "edge": Parameter("The edge they hang from, before it is sewn in.", "edge"),
        "tape": Parameter("The tape, one of the materials.", "material"),
        "length": Parameter("Tape for each loop; the loop hangs half as long.", "length", "24 cm"),
        "count": Parameter("How many loops.", "number", "2"),
    }

    def takes(self, step: Step, edges_in: EdgesIn) -> tuple[Takes, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say, name = step.step, Say(solved, room), edge_of(step.step, "edge")
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge, tape = bench.edge(name), word_of(written, "tape")
        length, count = step.mm("length"), step.amounts["count"].as_number()
        fault = not_long(written, "edge", edge)
        if count < 1 or count.denominator != 1:
            fault = fault_at(written, "count", "FB341", f"{float(count):.4g} loops can't be sewn; they are counted 1, 2, 3",
                             help=f"write `count: {max(1, round(count))}`")  # fmt: skip
        if length < LEAST:
            fault = fault_at(
                written, "length", "FB349", f"a loop of {say.length(length)} finds no hook; it takes {say.length(LEAST)},"
                f" {say.length(LEAST - length)} more", help=f"make it {say.length(LEAST)} or longer")  # fmt: skip
        deep = max(bench.depth(piece) for piece in edge.pieces)
        if length / 2 >= deep:
            fault = fault_at(
                written, "length", "FB349", f"a loop hangs {say.length(length / 2)} and the garment is {say.length(deep)} deep there;"
                " it would show below", help="make the loops shorter")  # fmt: skip
        if fault:
            return refused(bench, step, edge.pieces, fault)
        return Performed(
            step, bench, bench, edge.pieces,
            sewn=(Sewn("301", 2 * max(width_of(solved, tape), Fraction(5)), int(count) * edge.copies, room.seam_stitch, "basting on loops"),),
            used=(Used(tape, length, int(count) * edge.copies, "hang loops"),),
            setup="straight stitch", facts={"count": int(count), "length": length},
        )  # fmt: skip

    def tell(self, done: Performed, say: Say) -> Telling:
        facts, step = done.facts, done.step
        edge = done.before.edge(edge_of(step.step, "edge"))
        where = say.edges(edge.pieces, edge.name.rpartition(".")[2] if "." in edge.name else "top")
        material = say.solved.materials[word_of(step.step, "tape")].material
        tape, count, length = (
            material.about or material.name.replace("_", " "),
            facts["count"],
            say.length(facts["length"]),
        )
        apart = say.length(edge.set_length / count)
        actions = (
            Action(f"Cut {say.count(count, 'length')} of {tape}, {length} each."),
            Action("Fold each in half to a loop without twisting it, and lay both its ends side by side."),
            Action(f"Lay the loops on the inside of {where}, ends level with the cut edge, loops hanging down"
                   + (f", {apart} apart, the first at a side seam." if count > 1 else ", at the middle of the back."),
                   check=f"Each loop hangs down {say.length(facts['length'] / 2)}.",
                   tolerance=f"{say.about(Fraction(5))} more or less", remedy="Shift its ends before you sew.",
                   chain=say.chain(edge.copies)),
            Action(f"Sew across the ends {say.about(Fraction(5))} from the edge, twice; the row stays inside the seam.",
                   chain=say.count(count * edge.copies, "loop")),
        )  # fmt: skip
        return Telling(
            f"Baste hang loops to {where}",
            f"{say.count(count, 'loop')} will be caught in the next seam.",
            actions,
            (LOOPS,),
        )


TECHNIQUE = HangLoops()
