"""Sew the copies of a piece side by side to one flat length, as for a wrap skirt of gores.

What it does: sews the end of each panel to the start of the next, right sides together; the outer two sides stay open.
Edges before and after: flat panels, start and end raw or neatened, before; one flat length, its two outer sides as they were,
    after.
Allowance: none of its own. Every panel is cut alike, so a seam takes at each side what the hems of the two outer sides take.
Example: `- join panels: {of: skirt, seam: 15 mm}` before `- narrow hem: {edge: skirt.start}` and the same at `skirt.end`
Source: bearing seams of 1 to 1.5 cm with a 1-2 mm stitch are common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import WORKABLE, Bench, Ply, Seam, State
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Pieces, Stitch, Values
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
    new_seam,
    refused,
    word_of,
)
from furbelow.garment.tolerance import SEAM_OFF, strip_off
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import held_out
from furbelow.techniques.shared.laying import seam_window
from furbelow.techniques.shared.preconditions import seam_too_narrow, strips_not_joined


class JoinPanels:
    name = "join panels"
    about = "Sew the copies of a piece side by side to one flat length."
    pictures = (Picture.SEWN_SEAM,)
    parameters = {
        "of": Parameter("The piece, of which there are two or more.", Kind.PIECE),
        "seam": Parameter("Seam at each side: as much as the hems of the two outer sides take.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        piece, seam = word_of(done.step.written, "of"), done.step.mm("seam")
        return OnCloth(windows=(seam_window(solved, "seam", seam, (piece,), solved.pieces[piece].length / 2),))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        piece, say = word_of(step.written, "of"), Phrasing(solved, room)
        if fault := _not_ready(bench, step, say, piece):
            return refused(bench, step, (piece,), fault)
        seam, cloth = step.mm("seam"), bench.cloths[piece]
        joins = cloth.copies - 1
        after = bench.with_cloths(
            cloth._replace(copies=1, darts=cloth.darts and cloth.darts._replace(taken=cloth.darts.taken * cloth.copies))
        )
        for side in ("top", "bottom"):
            edge = bench.edge(f"{piece}.{side}")
            long = edge.cloth_length * cloth.copies - 2 * seam * joins
            after = after.with_edges(edge._replace(copies=1, cloth_length=long, set_length=long, marks=0))
        for side in ("start", "end"):
            after = after.with_edges(bench.edge(f"{piece}.{side}")._replace(copies=1))
        deep = bench.edge(f"{piece}.start").cloth_length
        neat = all(bench.edge(f"{piece}.{side}").state is not State.RAW for side in ("start", "end"))
        joined = Seam(
            f"{piece}.ends",
            (),
            (Ply(piece, 2),),
            deep,
            joins,
            seam,
            "301",
            State.NEATENED if neat or not _ravels(solved, piece) else State.RAW,
        )
        sewn = Sewn(StitchType.LOCK, deep, joins, room.seam_stitch)
        return Performed(
            step,
            bench,
            after.with_seams(joined),
            (piece,),
            sewn=(sewn,),
            setup=SetUp.STRAIGHT,
            pinned=deep * joins,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        piece = word_of(done.step.written, "of")
        joins, edge = done.before.cloths[piece].copies - 1, done.after.edge(f"{piece}.bottom")
        off = (joins + 1) * strip_off(piece, done.before.edge(f"{piece}.bottom").cloth_length, say) + joins * SEAM_OFF
        values: Values = {
            "piece": Pieces((piece,)),
            "panels": joins + 1,
            "joins": joins,
            "length": Length(new_seam(done).length),
            "seam-width": Length(done.step.mm("seam")),
            "stitch": Stitch(done.sewn[0].stitch),
            "whole": Length(done.after.measured(edge)),
            "off": Length(off, "off"),
            "faces": One("right", ("right", "wrong")),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        actions = (Action("join-panels-lay", joins), Action("join-panels-sew", joins), Action("join-panels-measure"))
        return Instructions("join-panels-title", "join-panels-aim", actions, values, (held_out(say.room),))


def _ravels(solved: Solved, piece: str) -> bool:
    return solved.materials[solved.pieces[piece].piece.cloth.text].material.ravels


def _not_ready(bench: Bench, step: SolvedStep, say: Phrasing, piece: str) -> Fault | None:
    written, cloth = step.written, bench.cloths[piece]
    if fault := strips_not_joined(bench, written, "of", (piece,)):
        return fault
    if cloth.ring:
        headline = f"`{piece}` is a ring already"
        return fault_at(written, "of", "FB307", headline, help="leave this step out, or the earlier one that closes it")
    if cloth.copies < 2:
        headline = f"there is one `{piece}`, and nothing to join it to"
        return fault_at(written, "of", "FB305", headline, help="write its `count`, or leave this step out")
    if len(bench.unit(piece)) > 1:
        headline = f"`{piece}` is sewn to another piece already, and its panels are joined before"
        return fault_at(
            written, "of", "FB308", headline, help="move this step up, before the panels are sewn to anything"
        )
    for side in ("start", "end"):
        edge = bench.edge(f"{piece}.{side}")
        if edge.state not in WORKABLE or edge.used:
            headline = f"`{edge.name}` is {edge.state} already"
            return fault_at(
                written, "of", "FB302", headline, help="join the panels before their outer sides are finished"
            )
    seam = step.mm("seam")
    for side in ("start", "end"):
        name = f"{piece}.{side}_takes"
        takes = say.solved.length(name) if name in say.solved.values else Fraction(0)
        if takes != seam:
            mend = mends.write(written, "seam", say.length(takes)) if takes else None
            return fault_at(
                written,
                "seam",
                "FB312",
                f"the seam takes {say.length(seam)} at each side of a panel, and later steps take {say.length(takes)} at"
                f" `{piece}.{side}`, {say.length(abs(seam - takes))} {'less' if takes < seam else 'more'}",
                notes=("all panels are cut alike, so a seam takes what the hem of an outer side does",),
                **({"mend": mend} if mend else {"help": f"hem `{piece}.start` and `{piece}.end` after this step"}),
            )
    return seam_too_narrow(say.solved, say, step, "seam", (piece,))


TECHNIQUE = JoinPanels()
