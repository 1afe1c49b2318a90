"""Sew a gathered, pleated or flat edge on to a line across a piece, so that it falls from there.

What it does: lays the edge upside down below a line on the base, sews it on the line and turns it down over its seam.
Edges before and after: the edge raw or neatened, as long as the line, before; sewn after. The base goes on below it.
Allowance: the seam, at the edge that is sewn on. The base gives nothing.
Example: `- sew on: {edge: ruffle.top, on: base, below top: 12 cm, seam: 1 cm}`
Source: rows are sewn on from the lowest up, so that none lies under the foot while the next one is sewn, and each hangs
    over the seam of the row below it: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge, OnLine, Seam, State
from furbelow.garment.lying import Ledger, Lies, Occupant, OnCloth
from furbelow.garment.message import Length, One, Pieces, Stitch, Values
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
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
from furbelow.techniques.shared.gathers import tails_hang, tails_off
from furbelow.techniques.shared.laid_edges import edges_said, marks_on
from furbelow.techniques.shared.laying import held_in_seam, margins, ravels
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
from furbelow.techniques.shared.preconditions import (
    copies_differ,
    edge_not_ready,
    forms_differ,
    margin_state,
    not_long,
    one_unit,
    seam_too_narrow,
    strips_not_joined,
)
from furbelow.techniques.shared.row_on_cloth import sew_row


class OnBase(NamedTuple):
    """The line: how far below the cut top edge, and how long; how far down the row hangs below it; all in mm. parts: in how many parts it is marked."""

    down: Fraction
    length: Fraction
    hangs: Fraction
    parts: int


class SewOn:
    name = "sew on"
    about = "Sew a gathered or flat edge on to a line across a piece, to fall from there."
    pictures = (Picture.ROW_ON_LINE,)
    parameters = {
        "edge": Parameter("The top edge of the row, drawn in to the length of the line or as long as it.", Kind.EDGE),
        "on": Parameter("The piece that carries it.", Kind.PIECE),
        **HEIGHTS,
        "seam": Parameter("Seam allowance of the row.", Kind.LENGTH, "1 cm"),
        "covered by": Parameter("The row above, which is to hang over this seam.", Kind.PIECE, ""),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(edge_at(step, "edge")), "seam")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, seam, facts = done.step.written, done.step.mm("seam"), facts_of(done, OnBase)
        name, on = edge_of(written, "edge"), word_of(written, "on")
        # The row's margin lies below the line, under the row itself.
        band = ledger.sewn_band(on, facts.down, facts.down + seam)
        strip = Occupant(on, Lies.STRIP, f"the seam of `{name}`", down=band, arg=height_given(done.step))
        line = line_edge(done.before, on, facts.length)
        windows = held_in_seam(done, solved, room, "seam", seam, done.before.edge(name), line)
        return OnCloth((*margins(ledger, seam, "seam", name), strip), windows)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        name, on, seam = edge_of(written, "edge"), word_of(written, "on"), step.mm("seam")
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge = bench.edge(name)
        touches = (*edge.pieces, on)
        down = down_to_line(step, say, on)
        if not isinstance(down, Fraction):
            return refused(bench, step, touches, down)
        length = bench.cloth_at(on, down)
        line = line_edge(bench, on, length)
        fault = (
            _not_to_sew_on(bench, step, solved, edge, on)
            or forms_differ(bench, written, "on", edge, line)
            or copies_differ(written, "on", edge, line)
            or seam_too_narrow(solved, say, step, "seam", edge.pieces)
            or _lengths_differ(step, say, edge, line)
        )
        if fault:
            return refused(bench, step, touches, fault)
        row = Seam(
            name,
            (name,),
            edge.plies,
            length,
            edge.copies,
            seam,
            "301",
            margin_state(solved, edge),
            turned=edge.pieces[0],
            trapped=True,
            on=OnLine(on, down, covered_by(written)),
        )
        done = sew_row(bench, step, solved, room, edge, line, row, room.seam_stitch)
        hangs = max(done.after.depth(piece) for piece in edge.pieces)
        return done._replace(facts=OnBase(down, length, hangs, parts_of(edge, line)))

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, facts, before = done.step, facts_of(done, OnBase), done.before
        edge, on = before.edge(edge_of(step.written, "edge")), word_of(step.written, "on")
        line, tails = line_edge(before, on, facts.length), tails_hang(edge)
        ring = before.ring(edge)
        each = (
            "line-across",
            "sew-on-mark-parts-ring" if ring else "sew-on-mark-parts-flat",
        )
        row = (
            "sew-on-lay",
            "sew-on-pin",
            *((tails_off(edge),) if tails else ()),
            "sew-on-sew-ring" if ring else "sew-on-sew-flat",
            "sew-on-turn-down",
        )
        actions = (
            *(Action(message, line.copies) for message in each),
            *marks_on(before, say, edge, parts=facts.parts),
            *(Action(message, line.copies, run=True) for message in row),
        )
        values: Values = {
            **edges_said(before, edge, line, say),
            "hold": One("pins", ("pins", "clips")),  # clips do not reach the middle of the cloth
            "copies": 1,
            "on": Pieces((on,)),
            "seam": seam_said(before, (on,), say),
            **line_said(before, step, on, facts.down),
            "level-off": Length(LEVEL_OFF, "off"),
            "length": Length(facts.length),
            "hangs": Length(facts.hangs),
            "seam-width": Length(step.mm("seam")),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        return Instructions(
            "sew-on-title", "sew-on-aim", actions, values, (PINS_OUT,), (Tool.PINS,), ruled=("line-across",)
        )


def _not_to_sew_on(bench: Bench, step: SolvedStep, solved: Solved, edge: Edge, on: str) -> Fault | None:
    written = step.written
    fault = (
        one_unit(bench, written, "on", edge.name, on, "check which piece the row is meant for")
        or strips_not_joined(bench, written, "on", (on,))
        or not_long(written, "edge", edge)
    )
    if fault:
        return fault
    if edge.state is State.RAW and ravels(solved, edge.pieces):
        cloth = solved.pieces[edge.pieces[0]].piece.cloth.text
        return fault_at(
            written,
            "edge",
            "FB335",
            f"the raw edge of `{edge.name}` lies loose under its own row and `{cloth}` ravels",
            help=f"put `- neaten: {{edge: {edge.name}}}` before this step, and before the gathers",
        )
    return base_gathered(bench, written, on)


def _lengths_differ(step: SolvedStep, say: Phrasing, edge: Edge, line: Edge) -> Fault | None:
    gap = edge.set_length - line.set_length
    if not say.solved.apart(edge.set_length, line.set_length):
        return None
    long, wanted, too, subtracted = say.missed(edge.set_length, line.set_length)
    return fault_at(
        step.written,
        "edge",
        "FB401",
        f"`{edge.name}` is {long} and its line on `{line.pieces[0]}` is {wanted}, {too}",
        notes=(subtracted,),
        mend=mends.before(step.written, f"gather: {{edge: {edge.name}, length: {wanted}}}")
        if gap > 0 and not edge.gathered
        else mends.Mend("make the row as long as its line, or gather it to that", None),
    )


TECHNIQUE = SewOn()
