"""Sew elastic straight to an edge and turn it inside, without a casing.

What it does: joins the elastic to a loop, stretches it along the edge under a zigzag, turns both to the inside and sews again.
Edges before and after: a ring, its edge raw or neat and flat, before; drawn in by the elastic and hemmed after.
Allowance: the turn, at the edge: as wide as the elastic.
Example: `- sewn elastic: {edge: slip.top, elastic: elastic, length: waist_girth - 8 cm, turn: 2 cm}`
Source: elastic quartered and stretched from mark to mark; a zigzag of 3 mm by 2.5 mm: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Casing, Edge, State
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, Lies, OnCloth
from furbelow.garment.matching import divisions
from furbelow.garment.message import Length, Number, Part, Supply, Values, edge_said
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
    Tool,
    Used,
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
from furbelow.techniques.shared.cautions import PINS_OUT, TIGHT_ELASTIC
from furbelow.techniques.shared.laying import drawn_in, lap_window
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, no_length, not_long, not_one_edge

WIDE, LONG = Fraction(3), Fraction(5, 2)
FITS = Fraction(2)  # the turn may be so much wider or narrower than the elastic


class Drawn(NamedTuple):
    """The elastic: its loop at rest and the cloth that it draws in, in mm; in how many parts both are marked."""

    length: Fraction
    cloth: Fraction
    parts: int


class SewnElastic:
    name = "sewn elastic"
    about = "Sew elastic straight to an edge and turn it inside, without a casing."
    pictures = (Picture.SEWN_ELASTIC,)
    parameters = {
        "edge": Parameter("The edge of a ring, lying flat.", Kind.EDGE),
        "elastic": Parameter("The elastic, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.ELASTIC,)),
        "length": Parameter("Length of the closed elastic loop, at rest.", Kind.LENGTH),
        "turn": Parameter("What is turned inside with it: as wide as the elastic.", Kind.LENGTH, "2 cm"),
        "overlap": Parameter("How far its ends overlap; cut so much longer.", Kind.LENGTH, "2 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(edge_at(step, "edge")), "turn")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        step, name = done.step, edge_of(done.step.written, "edge")
        turn, length = step.mm("turn"), step.mm("length")
        lies = tuple(ledger.at_edge(name, Lies.ELASTIC, "the elastic", Fraction(0), 2 * turn, "turn"))
        windows = (lap_window("overlap", "a lap of the elastic", step.mm("overlap"), most=length / 4),)
        return OnCloth(lies, windows, drawn_in(done.before.edge(name), "length", length))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge, elastic = bench.edge(name), word_of(written, "elastic")
        fault = (
            not_one_edge(written, "edge", edge)
            or not_long(written, "edge", edge)
            or no_length(step, "length")
            or _does_not_draw(bench, step, say, edge, width_of(solved, elastic))
        )
        if fault:
            return refused(bench, step, edge.pieces, fault)
        length, turn, cloth = step.mm("length"), step.mm("turn"), edge.cloth_length
        drawn = edge._replace(
            state=State.HEMMED, used=edge.used + turn, set_length=length, gathered="elastic", held=True
        )
        after = bench.with_edges(drawn).with_casing(
            Casing(name, edge.pieces[0], turn, cloth, Fraction(0), False, elastic, length)
        )
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(Sewn(StitchType.ZIGZAG, cloth, edge.copies, LONG),) * 2,
            used=(Used(elastic, length + step.mm("overlap"), edge.copies, Part("use-sewn-elastic")),),
            setup=SetUp.ZIGZAG,
            pinned=cloth * edge.copies / 4,
            handled=cloth * edge.copies,
            facts=Drawn(length, cloth, divisions(cloth)),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, facts = done.step, facts_of(done, Drawn)
        edge = done.before.edge(edge_of(step.written, "edge"))
        each = (
            "sewn-elastic-join",
            "sewn-elastic-mark",
            "sewn-elastic-pin",
            "sewn-elastic-sew",
            "sewn-elastic-turn",
            "sewn-elastic-measure",
        )
        values: Values = {
            "edge": edge_said(edge),
            "elastic": Supply(word_of(step.written, "elastic")),
            "cut": Length(facts.length + step.mm("overlap")),
            "overlap": Length(step.mm("overlap")),
            "length": Length(facts.length),
            "cloth": Length(facts.cloth),
            "parts": facts.parts,
            "part": Length(facts.length / facts.parts),
            "cloth-part": Length(done.before.measured(edge) / facts.parts),
            "turn-width": Length(step.mm("turn")),
            "seam": seam_said(done.before, edge.pieces, say),
            "zigzag-wide": Number(WIDE, 1),
            "zigzag-long": Number(LONG, 1),
            "off": Length(facts.length / 40, "about"),
        }
        actions = (Action("zigzag-set"), *(Action(message, edge.copies) for message in each))
        cautions = (PINS_OUT, TIGHT_ELASTIC)
        return Instructions(
            "sewn-elastic-title", "sewn-elastic-aim", actions, values, cautions, (Tool.JOINING_ELASTIC,)
        )


def _does_not_draw(bench: Bench, step: SolvedStep, say: Phrasing, edge: Edge, width: Fraction) -> Fault | None:
    written, length, turn = step.written, step.mm("length"), step.mm("turn")
    if not bench.ring(edge):
        return fault_at(
            written,
            "edge",
            "FB304",
            f"`{edge.name}` is still flat, and its elastic would end in the side seam",
            help=f"put `- join ends: {{of: {edge.pieces[0]}}}` before this step",
        )
    if edge.gathered:
        return fault_at(
            written,
            "edge",
            "FB333",
            f"`{edge.name}` is gathered already, and the elastic does that itself",
            help="leave the gathers out",
        )
    if length >= edge.cloth_length:
        return fault_at(
            written,
            "length",
            "FB324",
            f"the elastic of {say.length(length)} is no shorter than its edge of {say.length(edge.cloth_length)}",
            help="make the elastic shorter",
        )
    if width and abs(turn - width) > FITS:
        return fault_at(
            written,
            "turn",
            "FB323",
            f"the elastic is {say.length(width)} wide and {say.length(turn)} is turned over it,"
            f" {say.length(abs(turn - width))} too {'much' if turn > width else 'little'}",
            mend=mends.write(written, "turn", say.length(width)),
        )
    return None


TECHNIQUE = SewnElastic()
