"""Turn up a deep hem and fasten it by hand or by machine.

What it does: turns a little, then the depth of the hem, to the wrong side, and slip stitches or topstitches it.
Edges before and after: raw or neatened before, hemmed after.
Allowance: turn under + depth, at this edge.
Example: `- deep hem: {edge: skirt.bottom, depth: 3 in, turn under: 1/4 in, by: slip stitch}`
Source: a dirndl hem of 3 in (home sewing practice, published 2013); otherwise common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Edge, State
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Stitch, Values, edge_said, flag
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
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import HAND_NEEDLE, PINS_OUT
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import bare_edge, hem, turn_window
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, not_one_edge
from furbelow.techniques.shared.ring_drop import dropped_first

SLIP, MACHINE = "slip stitch", "machine"
FROM_FOLD = Fraction(2)
SLIP_EVERY = Fraction(8)  # common practice, no source
EASE_ROW = Fraction(5)  # from the inner edge; house rule, maker to confirm
LIES_SMOOTH = Fraction(
    1, 100
)  # so much longer than its line, what is turned up is pressed flat; house rule, maker to confirm


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
        return allowances_at(edges_in(edge_at(step, "edge")), "turn under", "depth")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        name, under, depth = edge_of(done.step.written, "edge"), done.step.mm("turn under"), done.step.mm("depth")
        occupants, held = hem(ledger, name, under, depth, "depth")
        windows = (
            turn_window("turn under", "a turn", under, into=depth, bare=bare_edge(ledger, solved, name)),
            turn_window("depth", "a hem", depth),
        )
        return OnCloth(occupants, windows, held)

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
        length = edge.end_to_end
        after = bench.turned(edge, under + depth, State.HEMMED)
        by_hand = word_of(written, "by") == SLIP
        kind, stitch = (StitchType.HAND, SLIP_EVERY) if by_hand else (StitchType.LOCK, room.seam_stitch)
        fasten = Sewn(kind, length, edge.copies, stitch)
        eased = _to_ease(bench, edge, depth)
        row = (Sewn(StitchType.LOCK, length, edge.copies, room.gathering_stitch),) if eased else ()
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(fasten, *row),
            setup=SetUp.HAND if by_hand else SetUp.STRAIGHT,
            pinned=length * edge.copies,
            handled=2 * length * edge.copies,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        edge, step = done.before.edge(edge_of(done.step.written, "edge")), done.step
        depth, under, by_hand = step.mm("depth"), step.mm("turn under"), word_of(step.written, "by") == SLIP
        ring = done.before.ring(edge)
        if by_hand:
            fasten = "deep-hem-fasten-hand"
        else:
            fasten = "deep-hem-fasten-machine-ring" if ring else "deep-hem-fasten-machine-flat"
        fuller = _to_ease(done.before, edge, depth)
        messages = [
            *(["deep-hem-turn-under"] if under else []),
            *(["deep-hem-ease-row"] if fuller else []),
            "deep-hem-fold-up-ring" if ring else "deep-hem-fold-up-flat",
            *(["deep-hem-ease-pull"] if fuller else []),
            fasten,
        ]
        values: Values = {
            "edge": edge_said(edge),
            "neat": flag(not under),
            "seam": seam_said(done.before, edge.pieces, say),
            "depth": Length(depth),
            "under": Length(under),
            "off": Length(max(depth / 20, Fraction(2)), "about"),
            "every": Length(SLIP_EVERY, "about"),
            "from-fold": Length(FROM_FOLD, "about"),
            "length": Length(done.sewn[0].length),
            "stitch": Stitch(done.sewn[0].stitch),
            "fuller": Length(fuller),
            "row": Length(EASE_ROW, "about"),
            "long-stitch": Stitch(say.room.gathering_stitch),
            "seam-stitch": Stitch(say.room.seam_stitch),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        return Instructions(
            "deep-hem-title",
            "deep-hem-aim",
            tuple(Action(message, edge.copies) for message in messages),
            values,
            (PINS_OUT, iron_hot(done, say), *((HAND_NEEDLE,) if by_hand else ())),
            iron_tools(done, say),
            waits=dropped_first(done, edge),
            ironed=("deep-hem-ease-pull", "deep-hem-fold-up-flat", "deep-hem-fold-up-ring", "deep-hem-turn-under"),
        )


def _to_ease(bench: Bench, edge: Edge, depth: Fraction) -> Fraction:
    """How much longer the inner edge of the hem is than the line that it comes to lie on, where cloth flares: of each ring or
    length, in mm; 0 where it lies smooth all the same."""
    fuller = max(bench.flare(piece) for piece in edge.pieces) * 2 * depth
    return fuller if fuller > LIES_SMOOTH * edge.end_to_end else Fraction(0)


TECHNIQUE = DeepHem()
