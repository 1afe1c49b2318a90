"""Fold the top edge down to make a casing for elastic in one with the piece.

What it does: turns the raw edge under, folds the casing to the wrong side and stitches along its lower fold, with a gap.
Edges before and after: a ring, raw or neatened, before; hemmed, with an open casing, after.
Allowance: turn under + depth, at this edge.
Example: `- folded casing: {edge: top.top, depth: elastic.width + 1/4 in, turn under: 1/4 in, gap: 2 in}`
Source: for 1 1/2 in elastic fold 1/4 in and then 1 3/4 in, gap 1 5/8 in (home sewing practice, published 2018).
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Casing, State
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
from furbelow.techniques.attach import taken
from furbelow.techniques.join_ends import side_seam
from furbelow.techniques.press import iron_caution, iron_set
from furbelow.techniques.shared.preconditions import edge_not_ready, gap_too_wide

EDGE_STITCH = Fraction(2)


class FoldedCasing:
    name = "folded casing"
    about = "Fold an edge down to a casing for elastic and stitch it, leaving a gap."
    pictures = (Picture.PIECES, Picture.TURNED_TWICE)
    parameters = {
        "edge": Parameter("The edge that is folded down.", Kind.EDGE),
        "depth": Parameter("Depth of the casing: the elastic's width and room to slide.", Kind.LENGTH),
        "turn under": Parameter("First turn, which hides the raw edge.", Kind.LENGTH, "6 mm"),
        "gap": Parameter("Opening left in the stitching for the elastic.", Kind.LENGTH, "5 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(step.args["edge"].value), "turn under", "depth")  # type: ignore[arg-type]

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge = bench.edge(name)
        if not bench.ring(edge):
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "edge",
                    "FB304",
                    f"`{name}` is still flat, and a casing for elastic is a ring",
                    help="close its ends before this step",
                ),
            )
        if fault := gap_too_wide(say, step, edge):
            return refused(bench, step, edge.pieces, fault)
        depth, under, gap = step.mm("depth"), step.mm("turn under"), step.mm("gap")
        left = bench.depth(edge.pieces[0]) - under - depth
        if depth > left:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "depth",
                    "FB312",
                    f"a casing of {say.length(depth)} has {say.length(max(left, Fraction(0)))} of its piece to lie on,"
                    f" {say.length(depth - left)} too little",
                    help="make the casing narrower or the piece deeper",
                ),
            )
        after = bench.with_edges(edge._replace(state=State.HEMMED, used=edge.used + under + depth, held=True))
        after = taken(after, edge, under + depth).with_casing(
            Casing(name, edge.pieces[0], depth - EDGE_STITCH, edge.set_length, gap)
        )
        sewn = Sewn(StitchType.LOCK, edge.set_length - gap, edge.copies, room.seam_stitch, "stitching the casing")
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(sewn,),
            setup=SetUp.STRAIGHT,
            handled=2 * edge.set_length,
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        edge = done.before.edge(edge_of(done.step.written, "edge"))
        depth, under, gap = (done.step.mm(key) for key in ("depth", "turn under", "gap"))
        where = say.edges(edge.pieces, edge.name.rpartition(".")[2] if "." in edge.name else "top")
        pin = "clip" if say.room.hold_with == "clips" else "pin"
        actions = (
            iron_set(say, edge.pieces[0]),
            OwnAction(f"Fold {where} {say.length(under)} to the wrong side all round and press the fold."),
            OwnAction(
                f"Fold it down again by {say.length(depth)}, press, and {pin} it.",
                check=f"The casing is {say.length(depth)} deep all round.",
                tolerance=f"never less, up to {say.about(Fraction(2))} more",
                remedy="Unfold and press again where it wanders: elastic twists in an uneven casing.",
            ),
            OwnAction(
                f"Mark a gap of {say.length(gap)} that begins {say.about(Fraction(20))} to the right of"
                f" {side_seam(done.before, edge.pieces, say)}, as you look at the wrong side. Make a line at each end of it."
            ),
            OwnAction(
                f"With the wrong side up, sew {say.about(EDGE_STITCH)} above the lower fold from one line of the gap round to the other,"
                f" {say.length(edge.set_length - gap)}, {say.stitch(done.sewn[0].stitch)}. Sew a few stitches back at both"
                " ends.",
                check=f"The gap is open and the channel is {say.length(depth - EDGE_STITCH)} wide inside.",
                remedy="Unpick what closes the gap.",
            ),
        )
        return OwnInstructions(
            "Fold and stitch the casing",
            "A channel for the elastic is open at the gap.",
            actions,
            (iron_caution(done, say),),
        )


TECHNIQUE = FoldedCasing()
