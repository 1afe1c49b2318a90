"""Gather a row below its finished edge and sew it on a line across a piece, so that a frill stands above the stitches.

What it does: gathers the row along two lines below its edge and sews it through both, right side up, on the base.
Edges before and after: the edge finished and flat, the base flat or a ring, before; sewn on, its frill free, after.
Allowance: the heading, at the edge of the row. The base gives nothing.
Example: `- headed row: {edge: ruffle.top, on: base, below top: 20 cm, heading: 2 cm}`
Source: rows with a heading are sewn on from the lowest up, the hem of each over the frill of the next or clear of it: common
    practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import limits, mends
from furbelow.garment.bench import Bench, Edge, OnLine, Seam, State
from furbelow.garment.lying import Ledger, Lies, Occupant, OnCloth, Window
from furbelow.garment.matching import EVEN
from furbelow.garment.message import Length, Pieces, Ratio, Stitch, Values, edge_said
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
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.gathers import ROWS, runs_of, runs_said
from furbelow.techniques.shared.laying import drawn_in, ravels
from furbelow.techniques.shared.lines import (
    HEIGHTS,
    LEVEL_OFF,
    base_gathered,
    covered_by,
    down_to_line,
    height_given,
    line_edge,
    line_said,
)
from furbelow.techniques.shared.marks import parts_of, seam_said
from furbelow.techniques.shared.pins import pins_apart
from furbelow.techniques.shared.preconditions import (
    copies_differ,
    forms_differ,
    not_long,
    one_unit,
    strips_not_joined,
)

LEAST_HEADING = Fraction(8)  # house rule, maker to confirm
FRILL_OFF = Fraction(2)


class HeadedOn(NamedTuple):
    """The line: below the cut top edge, and its length; from pin to pin; in mm."""

    down: Fraction
    length: Fraction
    parts: int
    apart: Fraction


class HeadedRow:
    name = "headed row"
    about = "Gather a row below its edge and sew it on a line across a piece, a frill above the stitches."
    pictures = (Picture.HEADED_ROW,)
    parameters = {
        "edge": Parameter("The finished top edge of the row, which becomes the frill.", Kind.EDGE),
        "on": Parameter("The piece that carries it.", Kind.PIECE),
        **HEIGHTS,
        "heading": Parameter("From the finished edge down to the upper gathering row.", Kind.LENGTH, "2 cm"),
        "covered by": Parameter("The row above, which is to hang over this one's stitches.", Kind.PIECE, ""),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(edge_at(step, "edge")), "heading")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, heading, facts = done.step.written, done.step.mm("heading"), facts_of(done, HeadedOn)
        name, on, apart = edge_of(written, "edge"), word_of(written, "on"), room.row_spacing
        rows = ledger.at_edge(name, Lies.GATHERS, "the gathering rows", heading, heading + apart, "heading")
        band = ledger.sewn_band(on, facts.down, facts.down + apart)
        strip = Occupant(on, Lies.STRIP, f"the stitches of `{name}`", down=band, arg=height_given(done.step))
        deepest = solved.pieces[name.partition(".")[0]].cut_depth / 2
        window = Window("heading", "a heading", heading, least=LEAST_HEADING, sewable_most=deepest)
        return OnCloth((*rows, strip), (window,), drawn_in(done.before.edge(name), "edge", facts.length))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        name, on, heading = edge_of(written, "edge"), word_of(written, "on"), step.mm("heading")
        if name not in bench.edges or name in bench.layered or "." not in name:
            headline = f"`{name}` lies in a stack or is none yet"
            return refused(
                bench, step, (on,), fault_at(written, "edge", "FB302", headline, help="name the row's own top edge")
            )
        edge = bench.edge(name)
        touches = (*edge.pieces, on)
        down = down_to_line(step, say, on)
        if not isinstance(down, Fraction):
            return refused(bench, step, touches, down)
        line = line_edge(bench, on, bench.cloth_at(on, down))
        fault = (
            strips_not_joined(bench, written, "edge", (*edge.pieces, on))
            or not_long(written, "edge", edge)
            or forms_differ(bench, written, "on", edge, line)
            or copies_differ(written, "on", edge, line)
            or _not_to_sew_on(bench, step, say, edge, line)
        )
        if fault:
            return refused(bench, step, touches, fault)
        length = line.set_length
        after = bench.with_edges(
            edge._replace(state=State.SEWN, used=edge.used + heading, set_length=length, gathered=ROWS, held=True)
        ).with_seams(
            Seam(
                name,
                (name,),
                edge.plies,
                length,
                edge.copies,
                room.row_spacing,
                "301",
                State.NEATENED,
                turned=edge.pieces[0],
                topstitched=True,
                on=OnLine(on, down, covered_by(written)),
            )
        )
        parts, apart = parts_of(line, edge), pins_apart(solved, room, after.edge(name), line)
        row = Sewn(StitchType.LOCK, edge.cloth_length, edge.copies, room.gathering_stitch)
        stitched = Sewn(StitchType.LOCK, length, edge.copies, room.seam_stitch)
        return Performed(
            step,
            bench,
            after.joined(touches),
            touches,
            sewn=(row, row, stitched, stitched),
            setup=SetUp.STRAIGHT,
            pinned=length * edge.copies * room.pin_spacing / apart,
            handled=edge.cloth_length * edge.copies,
            # Wound together at both ends of each run, and each row knotted there.
            thread_ends=6 * runs_of(edge.cloth_length, parts) * edge.copies,
            drawn=Drawn(name, length, edge.cloth_length / length, EVEN),
            facts=HeadedOn(down, length, parts, apart),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, facts = done.step, facts_of(done, HeadedOn)
        edge, on = done.before.edge(edge_of(step.written, "edge")), word_of(step.written, "on")
        ring = done.before.ring(edge)

        def each(*messages: str) -> Iterator[Action]:
            return (Action(message, edge.copies) for message in messages)

        actions = (
            *each("line-across", "headed-row-mark-ring" if ring else "headed-row-mark-flat"),
            Action("rows-set-machine"),
            *each(
                "headed-row-first-row",
                "headed-row-second-row",
                "rows-wind-tails",
                "headed-row-pull",
                "rows-tails-under",
            ),
            Action("rows-set-back"),
            *each("headed-row-lay", "headed-row-sew-ring" if ring else "headed-row-sew-flat"),
        )
        values: Values = {
            "row": Pieces(edge.pieces[:1]),
            "edge": edge_said(edge),
            "on": Pieces((on,)),
            **line_said(done.before, step, on, facts.down),
            "level-off": Length(LEVEL_OFF, "off"),
            "heading": Length(step.mm("heading")),
            "apart": Length(say.room.row_spacing, "about"),
            "cloth": Length(edge.cloth_length),
            "cloth-part": Length(edge.cloth_length / facts.parts),
            "length": Length(facts.length),
            "part": Length(facts.length / facts.parts),
            **runs_said(edge.cloth_length, facts.parts, say),
            "ratio": Ratio(edge.cloth_length / facts.length),
            "seam": seam_said(done.before, (on,), say),
            "ease": Length(facts.length * limits.EASE_SHARE),
            "spacing": Length(facts.apart, "about"),
            "frill-off": Length(FRILL_OFF, "about"),
            "stitch": Stitch(say.room.seam_stitch),
        }
        return Instructions(
            "headed-row-title", "headed-row-aim", actions, values, (PINS_OUT,), (Tool.PINS,), ruled=("line-across",)
        )


def _not_to_sew_on(bench: Bench, step: SolvedStep, say: Phrasing, edge: Edge, line: Edge) -> Fault | None:
    written, (piece,), (on,) = step.written, edge.pieces, line.pieces
    if fault := one_unit(bench, written, "on", edge.name, on, "check which piece the row is meant for"):
        return fault
    if edge.gathered or edge.state in (State.SEWN, State.ENCLOSED):
        how = "gathered" if edge.gathered else "sewn in"
        return fault_at(
            written, "edge", "FB302", f"`{edge.name}` is {how} already", help="take a row whose edge is flat and free"
        )
    if edge.state is State.RAW and ravels(say.solved, edge.pieces):
        cloth = say.solved.pieces[piece].piece.cloth.text
        return fault_at(
            written,
            "edge",
            "FB335",
            f"the raw edge of `{edge.name}` stands open at the frill and `{cloth}` ravels",
            mend=mends.before(written, f"narrow hem: {{edge: {edge.name}}}"),
        )
    if fault := base_gathered(bench, written, on):
        return fault
    short = line.set_length - edge.cloth_length
    if short > 0:
        return fault_at(
            written,
            "edge",
            "FB314",
            f"`{edge.name}` has {say.length(edge.cloth_length)} of cloth for {say.length(line.set_length)},"
            f" {say.length(short)} too little to gather",
            help="make the row longer",
        )
    return None


TECHNIQUE = HeadedRow()
