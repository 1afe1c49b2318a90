"""Turn a seam margin to one side and topstitch it down.

What it does: lays the margin flat against one piece and holds it with a row of stitches from the right side.
Edges before and after: the seam is sewn before; its margin lies towards one piece and is stitched down after.
Allowance: none.
Example: `- turn seam: {seam: flounce.top, towards: above}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Seam, State
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
    edges_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom

FROM_SEAM = Fraction(3)


class TurnSeam:
    name = "turn seam"
    about = "Turn a seam margin up or down and topstitch it."
    pictures = (Picture.TURNED_MARGIN,)
    parameters = {
        "seam": Parameter("The seam or seams whose margins are turned.", Kind.EDGES),
        "towards": Parameter("The side that the margin lies on.", ("above", "below"), "above"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written = step.written
        seams, faults = [], []
        for name in edges_of(written, "seam"):
            seam = bench.seam_at(name)
            if seam is None or len(seam.edges) != 2 or name.endswith((".ends", ".joins")):
                faults.append(
                    fault_at(
                        written,
                        "seam",
                        "FB318",
                        f"there is no seam at `{name}` yet that has a piece above and one below",
                        help="move this step after the one that sews the seam",
                    )
                )
            elif seam.state is State.RAW and any(_ravels(solved, ply.piece) for ply in seam.plies):
                faults.append(
                    fault_at(
                        written,
                        "seam",
                        "FB319",
                        f"the margin of `{name}` is raw and its cloth ravels",
                        notes=("once it is stitched down it can't be neatened any more",),
                        help=f"put `- neaten: {{seam: {name}}}` before this step",
                    )
                )
            else:
                seams.append(seam)
        touches = tuple(dict.fromkeys(ply.piece for seam in seams for ply in seam.plies))
        if faults:
            return refused(bench, step, touches, *faults)
        above = word_of(written, "towards") == "above"
        after = bench.with_seams(*(seam._replace(turned=_towards(seam, above), topstitched=True) for seam in seams))
        sewn = tuple(
            Sewn(StitchType.LOCK, seam.length, seam.copies, room.seam_stitch, f"topstitching {seam.name}")
            for seam in seams
        )
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=sewn,
            setup=SetUp.STRAIGHT,
            facts={"seams": tuple(seams), "above": above},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        actions = []
        way = "up" if done.facts["above"] else "down"
        for seam in done.facts["seams"]:
            piece = _towards(seam, done.facts["above"])
            chain = say.chain(seam.copies)
            actions += [
                OwnAction(f"Turn the margin {way}, flat against the wrong side of {say.the(piece)}.", chain=chain),
                OwnAction(
                    f"With the right side up, sew {say.about(FROM_SEAM)} from the seam on {say.the(piece)}, {say.stitch(done.sewn[0].stitch)},"
                    f" {say.length(seam.length)}{_ends(done, seam)}. Feel with your fingers that the margin lies {way}.",
                    check="The margin is caught all along and no fold lies under the row.",
                    remedy="Unpick the stretch where it slipped, turn the margin back and sew it again.",
                    chain=chain,
                ),
            ]
        where = listed([f"between {say.the([ply.piece for ply in seam.plies])}" for seam in done.facts["seams"]])
        return OwnInstructions(f"Topstitch the seam {where}", "The margin is held and cannot scratch.", tuple(actions))


def _ends(done: Performed, seam: Seam) -> str:
    """How the row begins and ends."""
    if all(done.before.cloths[ply.piece].ring for ply in seam.plies):
        return ". Let the end overlap the start by three stitches"
    return ", a few stitches back at both ends"


def _ravels(solved: Solved, piece: str) -> bool:
    return solved.materials[solved.pieces[piece].piece.cloth.text].material.ravels


def _towards(seam: Seam, above: bool) -> str:
    """The piece above or below: the one whose bottom edge is sewn is above."""
    upper = next((edge for edge in seam.edges if edge.endswith(".bottom")), seam.edges[1])
    lower = next(edge for edge in seam.edges if edge != upper)
    return (upper if above else lower).partition(".")[0]


TECHNIQUE = TurnSeam()
