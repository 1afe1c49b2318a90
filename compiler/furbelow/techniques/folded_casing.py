"""Fold the top edge down to make a casing for elastic in one with the piece.

What it does: turns the raw edge under, folds the casing to the wrong side and stitches along its lower fold: on a ring with a
    gap, on a flat edge from end to end, so that it is open at both ends.
Edges before and after: raw or neatened before; hemmed, with an open casing, after.
Allowance: turn under + depth, at this edge.
Example: `- folded casing: {edge: top.top, depth: elastic.width + 1/4 in, turn under: 1/4 in, gap: 2 in}`
Source: for 1 1/2 in elastic fold 1/4 in and then 1 3/4 in, gap 1 5/8 in (home sewing practice, published 2018).
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Casing, Holes, State
from furbelow.garment.lying import Ledger, Lies, OnCloth
from furbelow.garment.message import Length, One, Pieces, Stitch, Values, edge_said, flag
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
from furbelow.techniques.shared.casings import (
    BESIDE_SEAM,
    EDGE_STITCH,
    GAP_IN,
    OPENED,
    gap_of,
    gap_unpicked,
    holds_cord,
    holds_said,
    holes_said,
    seam_pressed,
    unpicking,
)
from furbelow.techniques.shared.cautions import PINS_OUT, RIPPER
from furbelow.techniques.shared.fire_label import label_laid, label_tools, label_written
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import bare_edge, gap_window, on_flare, turn_window
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, gap_too_wide
from furbelow.techniques.shared.stacks import taken

DEEPER = Fraction(2)  # a casing may wander so much, but never be narrower than its elastic needs


class FoldedCasing:
    name = "folded casing"
    about = "Fold an edge down to a casing for elastic and stitch it, leaving a gap."
    pictures = (Picture.PIECES, Picture.TURNED_TWICE)
    parameters = {
        "edge": Parameter("The edge that is folded down.", Kind.EDGE),
        "depth": Parameter("Depth of the casing: the elastic's width and room to slide.", Kind.LENGTH),
        "turn under": Parameter("First turn, which hides the raw edge.", Kind.LENGTH, "6 mm"),
        "gap": Parameter(
            "Opening left in the stitching of a ring for the elastic; a flat casing is open at its ends.",
            Kind.LENGTH,
            "5 cm",
        ),
        "gap in": GAP_IN,
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(edge_at(step, "edge")), "turn under", "depth")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, under, depth = done.step.written, done.step.mm("turn under"), done.step.mm("depth")
        name = edge_of(written, "edge")
        far = under + 2 * depth
        channel = tuple(ledger.at_edge(name, Lies.CHANNEL, "the casing", Fraction(0), far, "depth"))
        windows = (
            turn_window("turn under", "a turn", under, into=depth, bare=bare_edge(ledger, solved, name)),
            turn_window("depth", "a casing", depth),
            *((gap_window(done),) if done.before.ring(done.before.edge(name)) else ()),
        )
        return OnCloth(channel, windows, tuple(on_flare(ledger, name, "the casing", under, far, "depth")))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge = bench.edge(name)
        flat = not bench.ring(edge)
        if not flat and (fault := gap_too_wide(say, step, edge)):
            return refused(bench, step, edge.pieces, fault)
        unpicked = not flat and gap_unpicked(bench, written, edge.pieces[0])
        if not isinstance(unpicked, bool):
            return refused(bench, step, edge.pieces, unpicked)
        depth, under = step.mm("depth"), step.mm("turn under")
        width = depth - EDGE_STITCH
        holes = bench.holes.get(name)
        if flat and holes:
            return refused(bench, step, edge.pieces, _no_ring_for_holes(written, name, holes))
        gap = Fraction(0) if flat else gap_of(bench, name, step, width if unpicked else None)
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
        casing = Casing(name, edge.pieces[0], width, edge.set_length, gap, flat=flat, in_seam=unpicked, holes=holes)
        after = taken(after, edge, under + depth).with_casing(casing)
        sewn = Sewn(StitchType.LOCK, edge.set_length - casing.left_open, edge.copies, room.seam_stitch)
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(sewn,),
            setup=SetUp.STRAIGHT,
            pinned=edge.set_length,
            handled=2 * edge.set_length,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        edge = done.before.edge(edge_of(done.step.written, "edge"))
        casing = done.after.casings[edge.name]
        depth, flat = done.step.mm("depth"), casing.flat
        cord = holds_cord(say.solved, edge.name)
        if done.step.mm("turn under"):
            turns: tuple[Action, ...] = (Action("folded-casing-turn-under"), Action("folded-casing-fold"))
        else:
            turns = (Action("folded-casing-fold-once"),)
        actions = (
            *label_written(done, say),
            *seam_pressed(casing),
            *turns,
            *(() if not casing.left_open else (Action("folded-casing-gap-front" if cord else "folded-casing-gap"),)),
            *label_laid(done, say, "folded-casing-label-flat" if flat else "folded-casing-label"),
            *_sewn(casing),
        )
        values: Values = {
            "edge": edge_said(edge),
            "flat": flag(flat),
            "seam": seam_said(done.before, edge.pieces, say),
            "hold": One(say.room.hold_with, ("pins", "clips")),
            "under": Length(done.step.mm("turn under")),
            "depth": Length(depth),
            "more": Length(DEEPER, "about"),
            "gap": Length(casing.gap),
            "holds": holds_said(say.solved, edge.name),
            "quarter": Length(edge.set_length / 4),
            "beside": Length(BESIDE_SEAM, "about"),
            "gap-end": Length(BESIDE_SEAM + casing.gap),
            "edge-stitch": Length(EDGE_STITCH, "about"),
            "stitched": Length(edge.set_length - casing.left_open),
            "stitch": Stitch(done.sewn[0].stitch),
            "channel": Length(casing.width),
            "band": Pieces((casing.piece,)),
            "opened": One("row", OPENED),
            **holes_said(casing.holes),
        }
        cautions = (PINS_OUT, iron_hot(done, say), *((RIPPER,) if casing.in_seam else ()))
        tools = (*iron_tools(done, say), *label_tools(done, say))
        aim = "folded-casing-aim-holes" if casing.holes else "folded-casing-aim"
        return Instructions(
            "folded-casing-title",
            aim,
            actions,
            values,
            cautions,
            tools,
            ironed=("folded-casing-fold", "folded-casing-fold-once", "folded-casing-turn-under", "open-seam-press"),
        )


def _no_ring_for_holes(written: Step, name: str, holes: Holes) -> Fault:
    return fault_at(
        written,
        "edge",
        "FB304",
        f"`{name}` is still flat, and its {holes.kind} lie at the middle of the front of a ring",
        help="close its ends before this step; the cord of a flat casing comes out of its ends",
    )


def _sewn(casing: Casing) -> tuple[Action, ...]:
    """The row along the lower fold, and the gap where it is unpicked beside it."""
    if casing.flat:
        return (Action("folded-casing-sew-flat"),)
    if not casing.left_open:
        return (Action("folded-casing-sew-round"), *unpicking(casing))
    return (Action("folded-casing-sew"),)


TECHNIQUE = FoldedCasing()
