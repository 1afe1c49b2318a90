"""Hem an edge by turning it twice and stitching along the inner fold.

What it does: folds the edge to the wrong side twice, so that the raw edge is inside, and topstitches it.
Edges before and after: raw or neatened before, hemmed after.
Allowance: first turn + second turn, at this edge.
Example: `- narrow hem: {edge: lining.bottom, first turn: 5 mm, second turn: 10 mm}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment import mends
from furbelow.garment.bench import Bench, State
from furbelow.garment.limits import NARROWEST_TURN
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Stitch, Values, edge_said
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
    allowances_at,
    edge_at,
    edge_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import hem, turn_window
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, not_one_edge
from furbelow.techniques.shared.ring_drop import dropped_first

FROM_FOLD = Fraction(2)


class NarrowHem:
    name = "narrow hem"
    about = "Turn an edge twice to the wrong side and stitch along the inner fold."
    pictures = (Picture.PIECES, Picture.TURNED_TWICE)
    parameters = {
        "edge": Parameter("The edge to hem.", Kind.EDGE),
        "first turn": Parameter("The first turn, which hides the raw edge.", Kind.LENGTH, "5 mm"),
        "second turn": Parameter("The second turn: the depth of the finished hem.", Kind.LENGTH, "10 mm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(edge_at(step, "edge")), "first turn", "second turn")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        name = edge_of(done.step.written, "edge")
        first, second = done.step.mm("first turn"), done.step.mm("second turn")
        occupants, held = hem(ledger, name, first, second, "second turn")
        return OnCloth(occupants, (turn_window("second turn", "a hem", second),), held)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name = step.written, edge_of(step.written, "edge")
        if fault := edge_not_ready(bench, written, "edge", name) or not_one_edge(written, "edge", bench.edge(name)):
            return refused(bench, step, (), fault)
        edge = bench.edge(name)
        first, second = step.mm("first turn"), step.mm("second turn")
        say = Phrasing(solved, room)
        if first > second:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "first turn",
                    "FB311",
                    f"the first turn of {say.length(first)} is deeper than the hem of {say.length(second)},"
                    f" by {say.length(first - second)}",
                    help=f"make the first turn {say.length(second)} or less",
                ),
            )
        if first < NARROWEST_TURN:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "first turn",
                    "FB326",
                    f"a first turn of {say.length(first)} is {say.length(NARROWEST_TURN - first)} too narrow to fold",
                    mend=mends.write(written, "first turn", f"{say.length(NARROWEST_TURN)}", " or more"),
                ),
            )
        left = min(bench.depth(piece) for piece in edge.pieces) - first - second
        if second > left:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "second turn",
                    "FB312",
                    f"a hem of {say.length(second)} has {say.length(max(left, Fraction(0)))} of its piece to lie on,"
                    f" {say.length(second - left)} too little",
                    help="make the hem narrower or the piece deeper",
                ),
            )
        length = edge.end_to_end
        after = bench.turned(edge, first + second, State.HEMMED)
        sewn = Sewn(
            StitchType.LOCK,
            length,
            edge.copies,
            room.seam_stitch,
        )
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(sewn,),
            setup=SetUp.STRAIGHT,
            pinned=length * edge.copies,
            handled=2 * length * edge.copies,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        edge = done.before.edge(edge_of(done.step.written, "edge"))
        first, second = done.step.mm("first turn"), done.step.mm("second turn")
        actions = (
            Action("narrow-hem-first-turn", edge.copies),
            Action("narrow-hem-second-turn", edge.copies),
            Action("narrow-hem-sew-ring" if done.before.ring(edge) else "narrow-hem-sew-flat", edge.copies),
        )
        values: Values = {
            "edge": edge_said(edge),
            "seam": seam_said(done.before, edge.pieces, say),
            "first-turn": Length(first),
            "second-turn": Length(second),
            "off": Length(second / 5, "about"),
            "from-fold": Length(FROM_FOLD, "about"),
            "length": Length(done.sewn[0].length),
            "stitch": Stitch(done.sewn[0].stitch),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        cautions, tools = (PINS_OUT, iron_hot(done, say)), iron_tools(done, say)
        return Instructions(
            "narrow-hem-title",
            "narrow-hem-aim",
            actions,
            values,
            cautions,
            tools,
            waits=dropped_first(done, edge),
            ironed=("narrow-hem-first-turn", "narrow-hem-second-turn"),
        )


TECHNIQUE = NarrowHem()
