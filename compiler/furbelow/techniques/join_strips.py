"""Join the segments that a piece was cut in, end to end, to one strip.

What it does: sews segment to segment, right sides together. How many joins there are is the cutting plan's word.
Edges before and after: the piece is in parts before and one flat strip after; its edges stay raw.
Allowance: the seam of the piece's `piecing`, on both sides of each join; the cutting plan adds it to the segments.
Example: `- join strips: {of: [upper, flounce]}`
Source: common practice, no source.
"""

from __future__ import annotations

from furbelow.garment.bench import Bench, Ply, Seam
from furbelow.garment.phrasing import Phrasing, listed
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
    fault_at,
    refused,
    words_of,
)
from furbelow.garment.tolerance import strip_off
from furbelow.garment.workroom import Workroom


class JoinStrips:
    name = "join strips"
    about = "Sew the segments of a pieced strip together, end to end."
    pictures = (Picture.STRIPS, Picture.SEWN_SEAM)
    parameters = {"of": Parameter("The piece or pieces whose strips are joined.", Kind.PIECES)}

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()  # the planner adds the seam to every segment: the strip comes out at its cut length

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        pieces = words_of(step.written, "of")
        faults = []
        for piece in pieces:
            if not bench.cloths[piece].in_parts:
                may_be = solved.pieces[piece].piece.piecing is not None
                headline = f"the strips of `{piece}` are joined already" if may_be else f"`{piece}` is cut whole"
                faults.append(fault_at(step.written, "of", "FB306", headline, help=f"leave `{piece}` out of this step"))
        if faults:
            return refused(bench, step, pieces, *faults)
        after, sewn = bench, []
        for piece in pieces:
            cloth = after.cloths[piece]
            depth = cloth.piece.cut_depth
            seam = Seam(
                f"{piece}.joins",
                (),
                (Ply(piece, 2),),
                depth,
                cloth.copies,
                solved.length(f"{piece} piecing.seam"),
                "301",
            )
            after = after.with_cloths(cloth._replace(in_parts=False)).with_seams(seam)
            sewn.append(
                Sewn(StitchType.LOCK, depth, 1, room.seam_stitch, f"joins in the {cloth.piece.label}", joins_of=piece)
            )
        return Performed(step, bench, after, pieces, sewn=tuple(sewn), setup=SetUp.STRAIGHT)

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        actions = []
        for piece in done.touches:
            joins = say.joins.get(piece, 0)
            if not joins:
                continue
            cloth = done.after.cloths[piece]
            seam = say.solved.length(f"{piece} piecing.seam")
            whole = say.length(cloth.piece.cut_length)
            strips = say.count(cloth.copies, "strip")
            actions += [
                OwnAction(
                    f"Lay out the segments of the {say.piece(piece)}, the long edges level. Pin the short ends that belong to"
                    " one strip, right sides together.",
                    chain=say.count(joins, "join") + (f" for {strips}" if cloth.copies > 1 else ""),
                ),
                OwnAction(
                    f"Sew each join {say.length(seam)} from the ends, with a {say.stitch(done.sewn[0].stitch)} and"
                    f" a few stitches back at both ends. Fold both margins to the same side with your fingernail; either side will do.",
                    check="All margins stand on the wrong side.",
                    remedy="Unpick a join whose margin stands on the right side, turn one segment over and sew it again.",
                    chain=say.count(joins, "join"),
                ),
                OwnAction(
                    f"Measure each finished strip: {whole}.",
                    check=f"Each strip of the {say.piece(piece)} is {whole} long.",
                    tolerance=f"{say.off(strip_off(piece, cloth.piece.cut_length, say))} more or less",
                    remedy="If it is longer, trim one end square. If it is shorter, unpick the join that is too wide and"
                    " sew it again. If no join is too wide, lengthen the strip with a piece of what was left over, and trim it.",
                    chain=say.chain(cloth.copies),
                ),
            ]
        pieces = [say.piece(piece) for piece in done.touches if say.joins.get(piece, 0)]
        return OwnInstructions(f"Join the strips of the {listed(pieces)}", "Each strip is one length.", tuple(actions))


TECHNIQUE = JoinStrips()
