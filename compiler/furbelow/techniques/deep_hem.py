"""Turn up a deep hem and fasten it by hand or by machine.

What it does: turns a little, then the depth of the hem, to the wrong side, and slip stitches or topstitches it.
Edges before and after: raw or neatened before, hemmed after.
Allowance: turn under + depth, at this edge.
Example: `- deep hem: {edge: skirt.bottom, depth: 3 in, turn under: 1/4 in, by: slip stitch}`
Source: a dirndl hem of 3 in (home sewing practice, published 2013); otherwise common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, State
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
    allowances_at,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.press import iron_caution
from furbelow.techniques.shared.preconditions import edge_not_ready, not_one_edge

SLIP, MACHINE = "slip stitch", "machine"
SLIP_EVERY = Fraction(8)  # common practice, no source


class DeepHem:
    name = "deep hem"
    about = "Turn up a deep hem, fastened so that it hardly shows or by a row of stitches."
    pictures = (Picture.PIECES, Picture.TURNED_TWICE)
    parameters = {
        "edge": Parameter("The edge to hem.", Kind.EDGE),
        "depth": Parameter("Depth of the finished hem.", Kind.LENGTH, "5 cm"),
        "turn under": Parameter("First turn, which hides the raw edge; 0 for a neatened edge.", Kind.LENGTH, "7 mm"),
        "by": Parameter("How it is fastened.", (SLIP, MACHINE), SLIP),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(step.args["edge"].value), "turn under", "depth")  # type: ignore[arg-type]

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        if fault := edge_not_ready(bench, written, "edge", name) or not_one_edge(written, "edge", bench.edge(name)):
            return refused(bench, step, (), fault)
        edge, depth, under = bench.edge(name), step.mm("depth"), step.mm("turn under")
        shallow = min(edge.pieces, key=bench.depth)
        # The hem lies on the same piece: what is left must be at least as deep as the hem itself.
        left = bench.depth(shallow) - under - depth
        if left < depth:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "depth",
                    "FB312",
                    f"a hem of {say.length(depth)} leaves {say.length(max(left, Fraction(0)))} of `{shallow}` to lie on,"
                    f" {say.length(depth - left)} too little",
                    notes=(f"{say.length(bench.depth(shallow))} - {say.length(under)} - {say.length(depth)}",),
                    help="make the hem shallower or the piece deeper",
                ),
            )
        if edge.gathered:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "edge",
                    "FB333",
                    f"`{name}` is gathered {say.ratio(edge.ratio)} to 1, and a deep hem needs flat cloth, 1 to 1",
                    help="hem the edge before it is gathered",
                ),
            )
        cloths = [solved.materials[solved.pieces[piece].piece.cloth.text].material for piece in edge.pieces]
        if not under and edge.state is State.RAW and any(cloth.ravels for cloth in cloths):
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "turn under",
                    "FB335",
                    f"the raw edge of `{name}` is not turned under and its cloth ravels",
                    help=f"turn it under, or put `- neaten: {{edge: {name}}}` before this step",
                ),
            )
        after = bench.with_edges(edge._replace(state=State.HEMMED, used=edge.used + under + depth))
        by_hand = word_of(written, "by") == SLIP
        # Slip stitches draw on one thread, as 101 does.
        kind, stitch = (StitchType.CHAIN, SLIP_EVERY) if by_hand else (StitchType.LOCK, room.seam_stitch)
        what = f"hem of the {solved.pieces[edge.pieces[0]].label}"
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(Sewn(kind, edge.set_length, edge.copies, stitch, what),),
            setup=SetUp.HAND if by_hand else SetUp.STRAIGHT,
            pinned=edge.set_length * edge.copies,
            handled=2 * edge.set_length * edge.copies,
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        edge, step = done.before.edge(edge_of(done.step.written, "edge")), done.step
        where, chain = say.edge(edge.pieces[0], edge.name.rpartition(".")[2]), say.chain(edge.copies)
        depth, under, long = say.length(step.mm("depth")), step.mm("turn under"), say.length(edge.set_length)
        pin = "clip" if say.room.hold_with == "clips" else "pin"
        by_hand = word_of(step.written, "by") == SLIP
        first = OwnAction(f"Fold {where} {say.length(under)} to the wrong side and press the fold.", chain=chain)
        actions = (
            *((first,) if under else ()),
            OwnAction(
                f"Fold it up by {depth}, press the lower fold, and {pin} it, seams first.",
                check=f"The hem is {depth} deep all along.",
                tolerance=f"{say.about(max(step.mm('depth') / 20, Fraction(2)))} more or less",
                remedy="Unfold and press again where it wanders.",
                chain=chain,
            ),
            OwnAction(
                f"Slip stitch the upper fold down, a stitch every {say.about(SLIP_EVERY)}, {long}: one thread of the skirt,"
                " then along inside the fold; do not pull tight."
                if by_hand
                else f"Sew close to the upper fold, {long}, {say.stitch(done.sewn[0].stitch)}.",
                check="No stitch puckers and none shows on the right side."
                if by_hand
                else "The fold is caught everywhere.",
                remedy="Snip the stitch that puckers and sew it looser."
                if by_hand
                else "Sew the missed stretch again.",
                chain=chain,
            ),
        )
        thimble = (
            CautionKind.NEEDLE,
            "Sewing by hand: use a thimble, and park the needle in a cushion, never in your clothes.",
        )
        return OwnInstructions(
            f"Turn up a deep hem at {where}",
            f"A hem of {depth} weights the edge.",
            actions,
            (iron_caution(done, say), thimble) if by_hand else (iron_caution(done, say),),
        )


TECHNIQUE = DeepHem()
