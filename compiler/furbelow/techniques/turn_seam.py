"""Turn a seam margin to one side and topstitch it down.

What it does: lays the margin flat against one piece and holds it with a row of stitches from the right side.
Edges before and after: the seam is sewn before; its margin lies towards one piece and is stitched down after.
Allowance: none.
Example: `- turn seam: {seam: flounce.top, towards: above}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment import mends
from furbelow.garment.bench import Bench, Seam, State
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Part, Pieces, Stitch, Things, Values, flag
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
    edges_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.iron import iron_hot, iron_tools

FROM_SEAM = Fraction(3)


class Turned(NamedTuple):
    """The seams whose margins were turned, and whether up."""

    seams: tuple[Seam, ...]
    above: bool


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

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

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
            elif (seam.state is State.ENCLOSED and seam.turned) or seam.topstitched:
                faults.append(
                    fault_at(
                        written,
                        "seam",
                        "FB318",
                        f"the margin of `{name}` is {'stitched down' if seam.topstitched else 'inside a band'} already",
                        mend=mends.leave_out(written, "leave it out"),
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
                        mend=mends.before(written, f"neaten: {{seam: {name}}}"),
                    )
                )
            else:
                seams.append(seam)
        touches = tuple(dict.fromkeys(ply.piece for seam in seams for ply in seam.plies))
        if faults:
            return refused(bench, step, touches, *faults)
        above = word_of(written, "towards") == "above"
        after = bench.with_seams(
            *(seam._replace(turned=towards(bench, seam, above)[0], topstitched=True) for seam in seams)
        )
        sewn = tuple(Sewn(StitchType.LOCK, seam.length, seam.copies, room.seam_stitch) for seam in seams)
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=sewn,
            setup=SetUp.STRAIGHT,
            handled=sum((seam.length * seam.copies for seam in seams), Fraction(0)),
            facts=Turned(tuple(seams), above),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, actions = facts_of(done, Turned), []
        for seam in facts.seams:
            ring = all(done.before.cloths[ply.piece].ring for ply in seam.plies)
            values: Values = {
                "onto": Pieces(towards(done.before, seam, facts.above)),
                "length": Length(seam.length),
                "gathered": flag(any(done.before.edge(edge).gathered for edge in seam.edges)),
            }
            actions += [
                Action("turn-seam-press", seam.copies, values=values),
                Action("turn-seam-sew-ring" if ring else "turn-seam-sew-flat", seam.copies, values=values),
            ]
        between = [
            Part("turn-seam-between", {"pieces": Pieces(tuple(ply.piece for ply in seam.plies))})
            for seam in facts.seams
        ]
        shared: Values = {
            "seams": Things(tuple(between)),
            "way": One("up" if facts.above else "down", ("up", "down")),
            "from-seam": Length(FROM_SEAM, "about"),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        tools = iron_tools(done, say)
        cautions = (iron_hot(done, say),)
        return Instructions(
            "turn-seam-title", "turn-seam-aim", tuple(actions), shared, cautions, tools, ironed=("turn-seam-press",)
        )


def _ravels(solved: Solved, piece: str) -> bool:
    return solved.materials[solved.pieces[piece].piece.cloth.text].material.ravels


def towards(bench: Bench, seam: Seam, above: bool) -> tuple[str, ...]:
    """The pieces above or below, several where that edge is a stack: those whose bottom edge is sewn are above."""
    upper = next((edge for edge in seam.edges if edge.endswith(".bottom")), seam.edges[1])
    lower = next(edge for edge in seam.edges if edge != upper)
    return bench.edge(upper if above else lower).pieces


TECHNIQUE = TurnSeam()
