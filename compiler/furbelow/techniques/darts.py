"""Sew darts in the top edge of a piece, so that flat cloth closes in to the waist.

What it does: marks each dart from a middle line and sews its two legs together, from the edge to the point.
Edges before and after: the top edge flat and raw or neatened before; shorter by what all darts take, still raw, after. Below
    their points the piece is as wide as before.
Allowance: none. The darts run through whatever a later seam takes of the edge.
Example: `- darts: {edge: skirt.top, to: waistband.bottom, count: 8, long: 11 cm}`
Source: plane geometry: a dart takes twice half of its width, both its legs are the hypotenuse over half its width and its
    length, and its width shrinks evenly to the point, so that on the seam line it is less than at the cut edge. Darts end before the fullest part of the hips, 9 to 14 cm long, each taking 2 to 4 cm; the last stitches run on the
    fold, the threads are knotted and not sewn back: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import sqrt

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Darts, Edge
from furbelow.garment.lying import Band, Ledger, Lies, Occupant, OnCloth, Window
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
    Tool,
    edge_of,
    facts_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.iron import iron_hot, iron_set, iron_tools
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, length_wanted, not_long
from furbelow.techniques.shared.seam_openings import to_come

SHORTEST, LONGEST = (
    Fraction(60),
    Fraction(160),
)  # below its line a dart ends before the hips; house rule, maker to confirm
NARROWEST, WIDEST = Fraction(10), Fraction(45)  # what one takes; a wider one stands off at its point; house rule
LEAST_TAKEN = Fraction(4)  # 2 mm on either side of the fold: less can't be stitched
MARK_OFF = Fraction(2)


class Sewed(NamedTuple):
    """many: how many darts; each takes `intake` on the seam line, `wide` of the cut edge, and ends `end` mm below that edge;
    legs so long; from middle to middle along the cut edge; the edge afterwards; all in mm."""

    many: int
    intake: Fraction
    wide: Fraction
    end: Fraction
    leg: Fraction
    apart: Fraction
    length: Fraction


class SewDarts:
    name = "darts"
    about = "Sew darts in a top edge, so that it closes in to the length of another edge or to a given length."
    pictures = (Picture.DARTS,)
    parameters = {
        "edge": Parameter("The top edge of a piece, flat.", Kind.EDGE),
        "to": Parameter("The edge it will be sewn to.", Kind.EDGE, ""),
        "length": Parameter(
            "The length when all darts are sewn, where it is not that of another edge.", Kind.LENGTH, ""
        ),
        "count": Parameter("How many darts, evenly shared out.", Kind.NUMBER, "4"),
        "long": Parameter("From the edge as it is cut down to the point of each dart.", Kind.LENGTH, "11 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        facts = facts_of(done, Sewed)
        why = "a wider one stands off the body at its point; sew more darts, or ease some of the cloth"
        windows = (
            Window(
                "long",
                "a dart",
                facts.end,
                least=SHORTEST,
                most=LONGEST,
                why="it ends before the fullest part of the hips",
            ),
            Window("count", "a dart that takes", facts.intake, NARROWEST, WIDEST, LEAST_TAKEN, why=why),
        )
        return OnCloth(tuple(_on_piece(done, ledger, facts)), windows)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, say = step.written, edge_of(step.written, "edge"), Phrasing(solved, room)
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge = bench.edge(name)
        if fault := _not_for_darts(bench, step, edge):
            return refused(bench, step, edge.pieces, fault)
        length = length_wanted(bench, say, step, edge)
        if isinstance(length, Fault):
            return refused(bench, step, edge.pieces, length)
        count, end = step.amounts["count"].as_number(), step.mm("long") + edge.used
        if count < 1 or count.denominator != 1:
            headline = f"{float(count):.4g} darts can't be sewn; they are counted 1, 2, 3"
            mend = mends.write(written, "count", f"{max(1, round(count))}")
            return refused(bench, step, edge.pieces, fault_at(written, "count", "FB341", headline, mend=mend))
        if fault := _takes_too_much(step, say, edge, length, int(count)) or _too_long(bench, step, say, edge, end):
            return refused(bench, step, edge.pieces, fault)
        taken, line = edge.cloth_length - length, edge.used + to_come(bench, say, name)
        if end <= line:
            return refused(bench, step, edge.pieces, _above_seam(step, say, line))
        # The legs run on straight through the margin, and what is wanted is taken on the line of the seam to come.
        intake = taken / count
        wide = intake * end / (end - line)
        leg = Fraction(round(sqrt(float(end**2 + (wide / 2) ** 2)), 1)).limit_denominator(10)
        piece = bench.cloths[edge.pieces[0]]
        after = bench.with_edges(edge._replace(cloth_length=length, set_length=length, marks=0))
        after = after.with_cloths(piece._replace(darts=Darts(taken, end, line)))
        many = int(count) * edge.copies
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(Sewn(StitchType.LOCK, leg, many, room.seam_stitch),),
            setup=SetUp.STRAIGHT,
            pinned=leg * many,
            handled=3 * leg * many,
            thread_ends=many,
            facts=Sewed(int(count), intake, wide, end, leg, (bench.measured(edge) - edge.stands_out) / count, length),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, edge = facts_of(done, Sewed), done.before.edge(edge_of(done.step.written, "edge"))
        messages = ("darts-mark", "darts-legs", "darts-fold", "darts-sew", "darts-knot")
        values: Values = {
            "hair-off": Length(Fraction(1), "off"),
            "tail": Length(Fraction(100), "about"),
            "last": Length(Fraction(20), "about"),
            "edge": edge_said(edge),
            "ring": flag(done.before.ring(edge)),
            "seam": seam_said(done.before, edge.pieces, say),
            "count": facts.many,
            "cloth": Length(edge.cloth_length),
            "length": Length(facts.length),
            "taken": Length(edge.cloth_length - facts.length),
            "every": Length(facts.apart),
            "first": Length(facts.apart / 2 + edge.stands_out / 2),
            "open": flag(edge.stands_out),
            "lies": Length(done.after.measured(done.after.edge(edge.name))),
            "intake": Length(facts.intake),
            "half": Length(facts.wide / 2),
            "long": Length(facts.end),
            "leg": Length(facts.leg),
            "stitch": Stitch(done.sewn[0].stitch),
            "hold": One("pins", ("pins", "clips")),  # clips do not reach the middle of the cloth
            "mark-off": Length(MARK_OFF, "off"),
            # Each dart may be off by a millimetre at both legs.
            "off": Length(max(Fraction(2) * facts.many, facts.length / 100), "off"),
        }
        actions = (
            *(Action(message, edge.copies) for message in messages),
            iron_set(say, done.before, edge.pieces[0]),
            Action("darts-press", edge.copies),
            Action("darts-measure", edge.copies),
        )
        cautions = (PINS_OUT, iron_hot(done, say))
        return Instructions(
            "darts-title",
            "darts-aim",
            actions,
            values,
            cautions,
            (Tool.PINS, *iron_tools(done, say)),
            ironed=("darts-press",),
            ruled=("darts-legs",),
        )


def _on_piece(done: Performed, ledger: Ledger, facts: Sewed) -> Iterator[Occupant]:
    """Each dart where it lies; somewhere along a piece of which several copies lie side by side in the ring, but clear of the
    seam that they are measured from, which is the one that opens."""
    name = edge_of(done.step.written, "edge")
    piece, down = name.partition(".")[0], Band(Fraction(0), facts.end)
    start = ledger.line(piece, "start")
    if done.before.strips_round(piece) > 1:
        clear = start + max((facts.apart - facts.intake) / 2, Fraction(0))
        whole = done.before.cloths[piece].piece.cut_length
        between = Band(clear, whole - clear) if 2 * clear < whole else None
        yield Occupant(piece, Lies.DART, "the darts", down=down, along=between, arg="long")
        return
    for number in range(facts.many):
        middle = start + facts.apart * (number + Fraction(1, 2))
        along = Band(middle - facts.wide / 2, middle + facts.wide / 2)
        yield Occupant(piece, Lies.DART, "a dart", down=down, along=along, arg="long")


def _not_for_darts(bench: Bench, step: SolvedStep, edge: Edge) -> Fault | None:
    written = step.written
    if fault := not_long(written, "edge", edge):
        return fault
    if not edge.name.endswith(".top"):
        return fault_at(
            written,
            "edge",
            "FB340",
            f"`{edge.name}` is no top edge of one piece, and darts close in a waist",
            help=f"write `{edge.pieces[0]}.top`, before it is stacked",
        )
    if edge.gathered:
        return fault_at(
            written,
            "edge",
            "FB333",
            f"`{edge.name}` is gathered already, and darts are sewn in flat cloth",
            help="sew the darts before the edge is gathered, or leave one of the two out",
        )
    if bench.cloths[edge.pieces[0]].darts:
        headline = f"`{edge.name}` has its darts already"
        return fault_at(written, "edge", "FB333", headline, help="write all darts of an edge in one step")
    return None


def _takes_too_much(step: SolvedStep, say: Phrasing, edge: Edge, length: Fraction, count: int) -> Fault | None:
    at = "to" if "to" in step.written.args else "length"
    taken = edge.cloth_length - length
    if taken <= 0:
        return fault_at(
            step.written,
            at,
            "FB314",
            f"`{edge.name}` has {say.length(edge.cloth_length)} of cloth for {say.length(length)}: nothing is left for darts to take",
            help="leave the darts out, or make the piece longer",
        )
    if taken * 2 > edge.cloth_length:
        return fault_at(
            step.written,
            at,
            "FB315",
            f"{say.count(count, 'dart')} would take {say.length(taken)} of {say.length(edge.cloth_length)}, more than the"
            f" {say.length(length)} that they leave",
            notes=(f"{say.length(edge.cloth_length)} - {say.length(length)} = {say.length(taken)}",),
            help="gather or pleat the edge, or make the piece shorter",
        )
    return None


def _above_seam(step: SolvedStep, say: Phrasing, line: Fraction) -> Fault:
    return fault_at(
        step.written,
        "long",
        "FB312",
        f"a dart {say.length(step.mm('long'))} long ends inside the {say.length(line)} that seams and turns take there",
        help=f"write a length above {say.length(line)}",
    )


def _too_long(bench: Bench, step: SolvedStep, say: Phrasing, edge: Edge, end: Fraction) -> Fault | None:
    piece = edge.pieces[0]
    left = bench.cloths[piece].piece.cut_depth - bench.edge(f"{piece}.bottom").used
    if step.mm("long") > 0 and end < left:
        return None
    return fault_at(
        step.written,
        "long",
        "FB312",
        f"a dart {say.length(end)} long does not lie on `{piece}`, which is {say.length(left)} deep",
        help=f"write a length above 0 and below {say.length(left)}",
    )


TECHNIQUE = SewDarts()
