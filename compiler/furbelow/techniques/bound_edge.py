"""Bind an edge or a seam margin with tape.

What it does: folds a tape around the raw edge and stitches through both its sides.
Edges before and after: raw or neatened before; the edge is hemmed, or the margin enclosed, after.
Allowance: none: the edge lies in the fold of the tape. The tape needs the length, and the overlap where it meets itself.
Example: `- bound edge: {seam: panel.ends, tape: seam_tape}` or `- bound edge: {edge: flounce.bottom, tape: seam_tape}`
Source: seam class 3 (bound) in BS 3870:1991; a scratchy waist seam of tulle is bound: American Sewing Guild.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, State
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, Lies, OnCloth
from furbelow.garment.message import Length, One, Part, Pieces, Stitch, Supply, Values, edge_said
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, SupplyKind
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
    Used,
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import lap_window
from furbelow.techniques.shared.loose_ends import folded_under
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready
from furbelow.techniques.shared.ring_drop import dropped_first

EDGE_STITCH = Fraction(2)
LEAST = Fraction(4)  # half a tape: less is not caught on both sides; house rule, maker to confirm


class Bound(NamedTuple):
    """What a tape was folded around: an edge, or with no name a seam margin, and over which length of each copy.

    overlap: of the tape's ends, 0 on a flat edge; under: folded under at each end of it. half: what the tape covers on each side.
    """

    edge: str
    length: Fraction
    copies: int
    overlap: Fraction
    half: Fraction
    under: Fraction


class BoundEdge:
    name = "bound edge"
    about = "Fold a tape around a raw edge or a seam margin and stitch it on."
    pictures = (Picture.PIECES, Picture.TAPE)
    parameters = {
        "edge": Parameter("The raw edge to bind.", Kind.EDGE, ""),
        "seam": Parameter("The seam whose margin is bound, instead of an edge.", Kind.EDGE, ""),
        "tape": Parameter(
            "The tape, one of the materials; its width is that of the flat tape.",
            Kind.MATERIAL,
            supplies=(SupplyKind.TRIM,),
        ),
        "overlap": Parameter("How far the ends of the tape overlap on a ring.", Kind.LENGTH, "2 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written = done.step.written
        if "edge" not in written.args:
            return OnCloth()
        name, half = edge_of(written, "edge"), width_of(solved, word_of(written, "tape")) / 2
        occupants = tuple(ledger.at_edge(name, Lies.HEM, "the tape", Fraction(0), half, "tape"))
        ring = done.before.ring(done.before.edge(name))
        return OnCloth(
            occupants, (lap_window("overlap", "a lap of the tape", done.step.mm("overlap")),) if ring else ()
        )

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say, tape = step.written, Phrasing(solved, room), word_of(step.written, "tape")
        if ("edge" in written.args) == ("seam" in written.args):
            both = "both are" if "edge" in written.args else "none is"
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    None,
                    "FB330",
                    f"`bound edge` needs one of `edge` and `seam`, and {both} given",
                    help="name the edge, or the seam whose margin is bound",
                ),
            )
        half = width_of(solved, tape) / 2
        if half < LEAST:
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    "tape",
                    "FB336",
                    f"half of `{tape}` is {say.length(half)} and must cover {say.length(LEAST)}, {say.length(LEAST - half)} too narrow",
                    notes=(f"the tape is {say.length(2 * half)} wide and folds around the edge",),
                    help="choose a wider tape",
                ),
            )
        if "edge" in written.args:
            name = edge_of(written, "edge")
            if fault := edge_not_ready(bench, written, "edge", name):
                return refused(bench, step, (), fault)
            edge = bench.edge(name)
            if edge.gathered and not edge.held:
                return refused(
                    bench,
                    step,
                    edge.pieces,
                    fault_at(
                        written,
                        "edge",
                        "FB333",
                        f"`{name}` is gathered {say.ratio(edge.ratio)} to 1 and no seam holds it yet",
                        help="bind the edge before it is gathered, or bind the margin of the seam",
                    ),
                )
            after = bench.with_edges(edge._replace(state=State.HEMMED))
            length, copies, pieces, ring = edge.set_length, edge.copies, edge.pieces, bench.ring(edge)
            under = folded_under(bench, edge)
        else:
            name = edge_of(written, "seam")
            if fault := _no_margin(bench, step, name):
                return refused(bench, step, (), fault)
            seam = bench.seam_at(name)
            assert seam is not None  # asked above
            pieces = tuple(dict.fromkeys(ply.piece for ply in seam.plies))
            if half > seam.width:
                return refused(
                    bench,
                    step,
                    pieces,
                    fault_at(
                        written,
                        "tape",
                        "FB336",
                        f"half of `{tape}` is {say.length(half)} and the margin is {say.length(seam.width)},"
                        f" {say.length(half - seam.width)} too wide",
                        help="choose a narrower tape, or sew a wider seam",
                    ),
                )
            after = bench.with_seams(seam._replace(state=State.ENCLOSED))
            length, copies, under = seam.length, seam.copies, Fraction(0)
            ring = not seam.name.endswith(".ends") and all(bench.cloths[piece].ring for piece in pieces)
        overlap = step.mm("overlap") if ring else Fraction(0)
        return Performed(
            step,
            bench,
            after,
            pieces,
            sewn=(Sewn(StitchType.LOCK, length, copies, room.seam_stitch),),
            used=(
                Used(
                    tape,
                    length + overlap + 2 * under,
                    copies,
                    Part("use-binding", {"piece": Pieces((name.partition(".")[0],))}),
                ),
            ),
            setup=SetUp.STRAIGHT,
            pinned=length * copies,
            facts=Bound(name if "edge" in written.args else "", length, copies, overlap, half, under),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts = done.step.written, facts_of(done, Bound)
        if facts.edge:
            edge = done.before.edge(facts.edge)
            title, where, seam = "bound-edge-title-edge", edge_said(edge), seam_said(done.before, edge.pieces, say)
            pin = "bound-edge-pin-edge-ring" if facts.overlap else "bound-edge-pin-edge-flat"
        else:
            title, where, seam = "bound-edge-title-margin", Pieces(done.touches), seam_said(done.before, (), say)
            pin = "bound-edge-pin-margin"
        messages = ["bound-edge-cut", "bound-edge-fold", pin]
        if facts.overlap:
            messages.append("bound-edge-lap")
        if facts.under:
            messages.append("bound-edge-ends")
        messages.append("bound-edge-sew-ring" if facts.overlap else "bound-edge-sew-flat")
        values: Values = {
            "edge": where,
            "seam": seam,
            "tape": Supply(word_of(written, "tape")),
            "cut": Length(facts.length + facts.overlap + 2 * facts.under),
            "half": Length(facts.half),
            "off": Length(Fraction(1), "off"),
            "half-lap": Length(facts.overlap / 2),
            "under": Length(facts.under, "about"),
            "edge-stitch": Length(EDGE_STITCH, "about"),
            "length": Length(facts.length),
            "stitch": Stitch(done.sewn[0].stitch),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        cautions = (PINS_OUT, iron_hot(done, say))
        waits = dropped_first(done, done.before.edge(facts.edge)) if facts.edge else ()
        actions = tuple(Action(message, facts.copies) for message in messages)
        return Instructions(
            title,
            "bound-edge-aim",
            actions,
            values,
            cautions,
            iron_tools(done, say),
            waits=waits,
            ironed=("bound-edge-fold",),
        )


def _no_margin(bench: Bench, step: SolvedStep, name: str) -> Fault | None:
    seam = bench.seam_at(name)
    if seam is None:
        return fault_at(
            step.written,
            "seam",
            "FB318",
            f"there is no seam at `{name}` yet",
            help="move this step after the one that sews the seam",
        )
    if seam.state is State.ENCLOSED or seam.topstitched:
        done = "enclosed already" if seam.state is State.ENCLOSED else "stitched down already"
        return fault_at(
            step.written,
            "seam",
            "FB318",
            f"the margin of `{name}` is {done}",
            mend=mends.leave_out(step.written, "leave it out"),
        )
    if name.endswith(".joins"):
        return fault_at(
            step.written,
            "seam",
            "FB337",
            f"how many joins `{name}` has is known only when the cloth is planned",
            help=f"write `- neaten: {{seam: {name}}}`",
        )
    return None


TECHNIQUE = BoundEdge()
