"""Hem an edge by turning it twice and stitching along the inner fold.

What it does: folds the edge to the wrong side twice, so that the raw edge is inside, and topstitches it.
Edges before and after: raw or neatened before, hemmed after.
Allowance: first turn + second turn, at this edge.
Example: `- narrow hem: {edge: lining.bottom, first turn: 5 mm, second turn: 10 mm}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, State
from furbelow.garment.limits import NARROWEST_TURN
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    allowances_at,
    edge_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.press import iron_caution, iron_set
from furbelow.techniques.shared.preconditions import edge_not_ready, not_one_edge


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
        return allowances_at(edges_in(step.args["edge"].value), "first turn", "second turn")  # type: ignore[arg-type]

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
                    help=f"write `first turn: {say.length(NARROWEST_TURN)}` or more",
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
        after = bench.with_edges(edge._replace(state=State.HEMMED, used=edge.used + first + second))
        sewn = Sewn(
            StitchType.LOCK,
            edge.set_length,
            edge.copies,
            room.seam_stitch,
            f"hem of the {solved.pieces[edge.pieces[0]].label}",
        )
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(sewn,),
            setup=SetUp.STRAIGHT,
            handled=2 * edge.set_length * edge.copies,
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        edge = done.before.edge(edge_of(done.step.written, "edge"))
        where = say.edge(edge.pieces[0], edge.name.rpartition(".")[2])
        first, second = say.length(done.step.mm("first turn")), say.length(done.step.mm("second turn"))
        chain = say.chain(edge.copies)
        actions = (
            iron_set(say, edge.pieces[0]),
            OwnAction(f"Fold {where} {first} to the wrong side and press the fold.", chain=chain),
            OwnAction(
                f"Fold it again by {second}, press, and {'clip' if say.room.hold_with == 'clips' else 'pin'} it.",
                check=f"The hem is {second} deep all along.",
                tolerance=f"{say.about(done.step.mm('second turn') / 5)} more or less",
                remedy="Unfold and press again where it wanders.",
                chain=chain,
            ),
            OwnAction(
                f"Sew {say.about(Fraction(2))} from the inner fold, {say.length(edge.set_length)}, {say.stitch(done.sewn[0].stitch)}"
                + (", and let the end overlap the start by three stitches." if done.before.ring(edge) else "."),
                check="The stitches catch the fold everywhere.",
                remedy="Where they miss it, sew that stretch again.",
                chain=chain,
            ),
        )
        return OwnInstructions(f"Hem {where}", "No raw edge shows at the hem.", actions, (iron_caution(done, say),))


TECHNIQUE = NarrowHem()
