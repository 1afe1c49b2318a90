"""Join the segments that a piece was cut in, end to end, to one strip.

What it does: sews segment to segment, right sides together. How many joins there are is the cutting plan's word.
Edges before and after: the piece is in parts before and one flat strip after; its edges stay raw.
Allowance: the seam of the piece's `piecing`, on both sides of each join; the cutting plan adds it to the segments.
Example: `- join strips: {of: [upper, flounce]}`
Source: common practice, no source.
"""

from __future__ import annotations

from furbelow.garment.bench import Bench, Ply, Seam
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Part, Pieces, Stitch, Values
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
    fault_at,
    refused,
    words_of,
)
from furbelow.garment.tolerance import strip_off
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import held_out
from furbelow.techniques.shared.laying import seam_window


class JoinStrips:
    name = "join strips"
    about = "Sew the segments of a pieced strip together, end to end."
    pictures = (Picture.STRIPS, Picture.SEWN_SEAM)
    parameters = {"of": Parameter("The piece or pieces whose strips are joined.", Kind.PIECES)}

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()  # the planner adds the seam to every segment: the strip comes out at its cut length

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        windows = []
        for piece in words_of(done.step.written, "of"):
            seam = solved.length(f"{piece} piecing.seam")
            windows.append(seam_window(solved, "", seam, (piece,), solved.pieces[piece].length))
        return OnCloth(windows=tuple(windows))

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
            sewn.append(Sewn(StitchType.LOCK, depth, 1, room.seam_stitch, joins_of=piece))
        return Performed(step, bench, after, pieces, sewn=tuple(sewn), setup=SetUp.STRAIGHT)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        pieced = tuple(piece for piece in done.touches if say.joins.get(piece, 0))
        actions = tuple(action for piece in pieced for action in self._one_piece(done, piece, say))
        values: Values = {
            "pieces": Pieces(pieced),
            "stitch": Stitch(done.sewn[0].stitch),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        return Instructions("join-strips-title", "join-strips-aim", actions, values, (held_out(say.room),))

    def _one_piece(self, done: Performed, piece: str, say: Phrasing) -> tuple[Action, ...]:
        cloth, joins = done.after.cloths[piece], say.joins[piece]
        whole = cloth.piece.cut_length
        values: Values = {
            "piece": Pieces((piece,)),
            "copies": cloth.copies,
            "seam-width": Length(say.solved.length(f"{piece} piecing.seam")),
            "whole": Length(whole),
            "off": Length(strip_off(piece, whole, say), "off"),
        }
        return (
            Action(
                "join-strips-lay",
                values=values,
                chain=Part("join-strips-joins-for", {"joins": joins, "copies": cloth.copies}),
            ),
            Action("join-strips-sew", values=values, chain=Part("chain-joins", {"joins": joins})),
            Action("join-strips-measure", cloth.copies, values=values),
        )


TECHNIQUE = JoinStrips()
