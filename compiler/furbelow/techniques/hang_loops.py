"""Baste loops of tape to an edge, to be caught in the seam that follows.

What it does: folds tapes to loops and bastes their ends to the edge, pointing down, at the sides.
Edges before and after: an edge that is still to be sewn; unchanged.
Allowance: none. The tape takes the length of each loop.
Example: `- hang loops: {edge: skirt_top, tape: ribbon, length: 24 cm, count: 2}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment import mends
from furbelow.garment.bench import Bench
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, LooseEnd, OnCloth
from furbelow.garment.message import Length, One, Part, Stitch, Supply, Values, edge_said
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, SupplyKind
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
    Used,
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import LOOPS, held_out
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, not_long

LEAST = Fraction(60)  # a shorter loop finds no hook; house rule, maker to confirm
ROW = Fraction(5)  # from the edge
HANGS_OFF = Fraction(5)


class Loops(NamedTuple):
    """Loops on an edge: how many on each copy of it, and the tape for each in mm."""

    loops: int
    length: Fraction


class HangLoops:
    name = "hang loops"
    about = "Baste loops of tape to an edge for hanging the garment up."
    pictures = (Picture.HANG_LOOPS,)
    parameters = {
        "edge": Parameter("The edge they hang from, before it is sewn in.", Kind.EDGE),
        "tape": Parameter("The tape, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.TRIM,)),
        "length": Parameter("Tape for each loop; the loop hangs half as long.", Kind.LENGTH, "24 cm"),
        "count": Parameter("How many loops.", Kind.NUMBER, "2"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        long, name = done.step.mm("length") / 2, edge_of(done.step.written, "edge")
        edges = (each.partition(".") for each in done.before.opened(name))
        return OnCloth(inside=tuple(LooseEnd("length", piece, side, long) for piece, _, side in edges))

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
                mend=mends.write(written, "count", f"{max(1, round(count))}"),
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
                ),
            ),
            used=(Used(tape, length, int(count) * edge.copies, Part("use-hang-loops")),),
            setup=SetUp.STRAIGHT,
            facts=Loops(int(count), length),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, written = facts_of(done, Loops), done.step.written
        edge = done.before.edge(edge_of(written, "edge"))
        actions = (
            Action("hang-loops-cut"),
            Action("hang-loops-fold"),
            Action("hang-loops-lay-ring" if done.before.ring(edge) else "hang-loops-lay-flat", edge.copies),
            Action("hang-loops-sew", edge.copies),
        )
        apart = done.before.measured(edge) / facts.loops
        values: Values = {
            "edge": edge_said(edge),
            "tape": Supply(word_of(written, "tape")),
            "seam": seam_said(done.before, edge.pieces, say),
            "loops": facts.loops,
            "all-loops": facts.loops * edge.copies,
            "tape-each": Length(facts.length),
            "hangs": Length(facts.length / 2),
            "hangs-off": Length(HANGS_OFF, "about"),
            "apart": Length(apart),
            "half-apart": Length(apart / 2),
            "stitch": Stitch(done.sewn[0].stitch),
            "row": Length(ROW, "about"),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        return Instructions("hang-loops-title", "hang-loops-aim", actions, values, (held_out(say.room), LOOPS))


TECHNIQUE = HangLoops()
