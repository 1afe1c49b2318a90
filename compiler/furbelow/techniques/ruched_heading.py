"""Gather a flounce below its edge, so that a frill stands above the rows, and sew it on through them.

What it does: gathers on rows inside the finished upper edge, lays the flounce over the edge above and topstitches it.
Edges before and after: the flounce's edge finished, the other one neat, before; both sewn after, the margin below.
Allowance: the heading at the flounce's edge, the lap at the edge that carries it.
Example: `- ruched heading: {edge: flounce.top, to: skirt.bottom, heading: 2 cm, lap: 1 cm}`
Source: ruffle 1 1/3 to 1 1/2 of the line: Baldt, Clothing for Women, 1916; the rows are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import limits, mends
from furbelow.garment.bench import Bench, Edge, Seam, State
from furbelow.garment.lying import Ledger, Lies, OnCloth, Window
from furbelow.garment.matching import EVEN
from furbelow.garment.message import Length, One, Pieces, Ratio, Stitch, Values, edge_said
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    Action,
    Drawn,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    Tool,
    allowances_at,
    edge_at,
    edge_of,
    facts_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import round_to_step
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.gathers import ROWS, runs_of, runs_said
from furbelow.techniques.shared.laid_edges import marks_on
from furbelow.techniques.shared.laying import drawn_in, margins, seam_window
from furbelow.techniques.shared.marks import marked_in, parts_of, seam_said
from furbelow.techniques.shared.pins import pins_apart
from furbelow.techniques.shared.preconditions import (
    copies_differ,
    edge_not_ready,
    forms_differ,
    margin_state,
    not_long,
    strips_not_joined,
)
from furbelow.techniques.shared.stacks import taken

LEAST_HEADING = Fraction(8)  # house rule, maker to confirm


class Headed(NamedTuple):
    """In how many parts both edges are marked, and from pin to pin in mm."""

    parts: int
    apart: Fraction


class RuchedHeading:
    name = "ruched heading"
    about = "Sew on a flounce gathered below its edge, so that a frill stands above the seam."
    pictures = (Picture.PIECES,)
    parameters = {
        "edge": Parameter("The finished edge of the flounce, which becomes the frill.", Kind.EDGE),
        "to": Parameter("The edge that carries the flounce and lies behind it.", Kind.EDGE),
        "heading": Parameter("From the finished edge down to the upper gathering row.", Kind.LENGTH, "2 cm"),
        "lap": Parameter("How far the carrying edge reaches down behind the rows.", Kind.LENGTH, "15 mm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return (
            *allowances_at(edges_in(edge_at(step, "edge")), "heading"),
            *allowances_at(edges_in(edge_at(step, "to")), "lap"),
        )

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, heading, lap = done.step.written, done.step.mm("heading"), done.step.mm("lap")
        edge, to = edge_of(written, "edge"), edge_of(written, "to")
        rows = tuple(
            ledger.at_edge(edge, Lies.GATHERS, "the gathering rows", heading, heading + room.row_spacing, "heading")
        )
        flounce = solved.pieces[edge.partition(".")[0]]
        # Cut depths are rounded up, and with them what hangs: what is advised must hold after that too.
        hangs = round_to_step(flounce.depth, solved.rounding or Fraction(1), "down")
        windows = (
            Window(
                "heading", "a heading", heading, least=LEAST_HEADING, most=hangs, sewable_most=flounce.cut_depth / 2
            ),
            seam_window(solved, "lap", lap, done.before.edge(to).pieces),
        )
        held = drawn_in(done.before.edge(edge), "edge", done.before.edge(to).set_length)
        return OnCloth((*rows, *margins(ledger, lap, "lap", to)), windows, held)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written = step.written
        names = edge_of(written, "edge"), edge_of(written, "to")
        if fault := edge_not_ready(bench, written, "to", names[1]):
            return refused(bench, step, (), fault)
        if names[0] not in bench.edges or names[0] in bench.layered:
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    "edge",
                    "FB302",
                    f"`{names[0]}` lies in a stack or is none yet",
                    help="name the flounce's own top edge",
                ),
            )
        edge, to = bench.edge(names[0]), bench.edge(names[1])
        touches = (*edge.pieces, *to.pieces)
        fault = (
            strips_not_joined(bench, written, "edge", edge.pieces)
            or not_long(written, "edge", edge)
            or forms_differ(bench, written, "to", edge, to)
            or copies_differ(written, "to", edge, to)
            or _not_finished(step, solved, edge, to)
            or _not_to_gather(bench, step, solved, room, edge, to)
        )
        if fault:
            return refused(bench, step, touches, fault)
        heading, lap = step.mm("heading"), step.mm("lap")
        after = bench.with_edges(
            edge._replace(state=State.SEWN, used=edge.used + heading, set_length=to.set_length, gathered=ROWS),
            to._replace(state=State.SEWN, used=to.used + lap, held=True),
        )
        seam = Seam(
            edge.name,
            names,
            (*to.plies, *edge.plies),
            to.set_length,
            to.copies,
            lap,
            "301",
            margin_state(solved, edge, to),
            turned=edge.pieces[0],
            topstitched=True,
        )
        after = taken(after, to, lap).with_seams(seam).joined(touches)
        parts = parts_of(to, edge)
        apart = pins_apart(solved, room, after.edge(edge.name), to)
        row = Sewn(StitchType.LOCK, edge.cloth_length, edge.copies, room.gathering_stitch)
        stitched = Sewn(StitchType.LOCK, to.set_length, to.copies, room.seam_stitch)
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=(row, row, stitched, stitched),
            setup=SetUp.STRAIGHT,
            pinned=to.set_length * to.copies * room.pin_spacing / apart,
            handled=edge.cloth_length * edge.copies,
            # Wound together at both ends of each run, and each row knotted there.
            thread_ends=6 * runs_of(edge.cloth_length, parts) * edge.copies,
            drawn=Drawn(edge.name, to.set_length, edge.cloth_length / to.set_length, EVEN),
            facts=Headed(parts, apart),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step = done.step
        edge, to = done.before.edge(edge_of(step.written, "edge")), done.before.edge(edge_of(step.written, "to"))
        length, ease = to.set_length, to.set_length * limits.EASE_SHARE
        facts, ring = facts_of(done, Headed), done.before.ring(edge)
        parts = facts.parts

        def each(*messages: str) -> Iterator[Action]:
            return (Action(message, edge.copies) for message in messages)

        marking = ("ruched-heading-mark-ring" if ring else "ruched-heading-mark-flat",)
        rows = ("ruched-heading-first-row", "ruched-heading-second-row", "rows-wind-tails", "ruched-heading-pull")
        actions = (
            *each(*(() if marked_in(edge, parts) else marking)),
            *marks_on(done.before, say, to, parts=parts),
            *each("ruched-heading-mark-line"),
            Action("rows-set-machine"),
            *each(*rows, "rows-tails-under"),
            Action("rows-set-back"),
            *each("ruched-heading-lay", "ruched-heading-sew-ring" if ring else "ruched-heading-sew-flat"),
        )
        values: Values = {
            "flounce": Pieces(edge.pieces[:1]),
            "edge": edge_said(edge),
            "to": edge_said(to),
            "heading": Length(step.mm("heading")),
            "lap": Length(step.mm("lap")),
            "apart": Length(say.room.row_spacing, "about"),
            "cloth": Length(edge.cloth_length),
            "seam": seam_said(done.before, edge.pieces, say),
            "cloth-part": Length(edge.cloth_length / parts),
            "length": Length(length),
            "part": Length(length / parts),
            **runs_said(edge.cloth_length, parts, say),
            "ratio": Ratio(edge.cloth_length / length),
            "ease": Length(ease),
            "hold": One("pins", ("pins", "clips")),  # clips do not reach the middle of the cloth
            "spacing": Length(facts.apart, "about"),
            "frill-off": Length(Fraction(2), "about"),
            "stitch": Stitch(say.room.seam_stitch),
        }
        return Instructions("ruched-heading-title", "ruched-heading-aim", actions, values, (PINS_OUT,), (Tool.PINS,))


def _not_finished(step: SolvedStep, solved: Solved, edge: Edge, to: Edge) -> Fault | None:
    """The frill's edge shows, and the carrying edge lies loose behind: neither may ravel."""
    for arg, each in (("edge", edge), ("to", to)):
        if each.state is State.SEWN or each.state is State.ENCLOSED:
            return fault_at(
                step.written, arg, "FB302", f"`{each.name}` is already sewn in", help="name an edge that is free"
            )
        for piece in each.pieces:
            cloth = solved.pieces[piece].piece.cloth.text
            if each.state is State.RAW and solved.materials[cloth].material.ravels:
                word = "stands open at the frill" if each is edge else "lies loose behind the flounce"
                mend = "narrow hem" if each is edge else "neaten"
                return fault_at(
                    step.written,
                    arg,
                    "FB335",
                    f"the raw edge of `{each.name}` {word} and `{cloth}` ravels",
                    mend=mends.before(step.written, f"{mend}: {{edge: {each.name}}}"),
                )
    return None


def _not_to_gather(
    bench: Bench, step: SolvedStep, solved: Solved, room: Workroom, edge: Edge, to: Edge
) -> Fault | None:
    say, written, ratio = Phrasing(solved, room), step.written, edge.cloth_length / to.set_length
    if ratio < 1:
        return fault_at(
            written,
            "edge",
            "FB314",
            f"`{edge.name}` has {say.length(edge.cloth_length)} of cloth for {say.length(to.set_length)},"
            f" {say.length(to.set_length - edge.cloth_length)} too little to gather",
            help="make the flounce longer",
        )
    heading, depth = step.mm("heading"), bench.depth(edge.pieces[0])
    if heading + room.row_spacing >= depth:
        return fault_at(
            written,
            "heading",
            "FB312",
            f"a heading of {say.length(heading)} is deeper than its piece of {say.length(depth)}",
            help="make the heading shallower",
        )
    if step.mm("lap") <= room.row_spacing:
        return fault_at(
            written,
            "lap",
            "FB334",
            f"the carrying edge reaches {say.length(step.mm('lap'))} behind rows that are {say.length(room.row_spacing)} apart,"
            " and the lower row misses it",
            help=f"make the lap {say.length(2 * room.row_spacing)} or more",
        )
    return None


TECHNIQUE = RuchedHeading()
