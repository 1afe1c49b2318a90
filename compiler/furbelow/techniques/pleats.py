"""Lay an edge in knife, box or inverted pleats.

What it does: folds the cloth of an edge in even pleats until it has the length wanted, and bastes them.
Edges before and after: the edge keeps its cloth length and state; its set length becomes the length it is meant for.
Allowance: none. The basting lies inside the seam that follows.
Example: `- pleats: {edge: skirt.top, to: yoke.bottom, kind: knife, count: 24}`
Source: pleats lie in the cloth less the line: 44 in of cloth for a 14 in waist leave 30 in, for a 20 in hip 24 in: A
    Complete Course in Dressmaking, vol. 5, 1921. Side plaits take 3 x their length, a box ruche a little less than 3 x:
    Butterick, The New Dressmaker, 1921.
"""

from __future__ import annotations

from enum import StrEnum
from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge
from furbelow.garment.lying import Ledger, Lies, OnCloth
from furbelow.garment.matching import EVEN
from furbelow.garment.message import Length, One, Values, edge_said
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
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import held_out
from furbelow.techniques.shared.gathers import CARTRIDGE
from furbelow.techniques.shared.iron import iron_hot, iron_set, iron_tools
from furbelow.techniques.shared.lines import HEIGHTS
from furbelow.techniques.shared.preconditions import edge_not_ready, length_wanted

HANG_CLOSED = Fraction(100)  # from the edge that holds the pleats; house rule, maker to confirm


class PleatKind(StrEnum):
    KNIFE = "knife"
    BOX = "box"
    INVERTED = "inverted"


PLEATED = frozenset(
    (*(f"{kind} pleats" for kind in PleatKind), CARTRIDGE)
)  # how an edge is drawn in that lies in pleats
# How often the depth of a pleat lies under its face.
FOLDS = {PleatKind.KNIFE: 2, PleatKind.BOX: 4, PleatKind.INVERTED: 4}
LINES = {
    PleatKind.KNIFE: "pleats-lines-knife",
    PleatKind.BOX: "pleats-lines-box",
    PleatKind.INVERTED: "pleats-lines-inverted",
}
FOLD = {
    PleatKind.KNIFE: "pleats-fold-knife",
    PleatKind.BOX: "pleats-fold-box",
    PleatKind.INVERTED: "pleats-fold-inverted",
}
FASTENED = {PleatKind.KNIFE: 1, PleatKind.BOX: 2, PleatKind.INVERTED: 2}
FULL = Fraction(3)  # cloth for each length where pleats meet behind
SHALLOWEST = Fraction(4)  # mm: less is gathered, not pleated; house rule, maker to confirm
BASTE = Fraction(5)  # from the edge


class Laid(NamedTuple):
    """An edge laid in pleats: so many, each so deep in mm, to which length in mm."""

    kind: PleatKind
    pleats: int
    depth: Fraction
    length: Fraction


class Pleats:
    name = "pleats"
    about = "Lay an edge in even knife, box or inverted pleats to a given length."
    pictures = (Picture.PIECES, Picture.PLEATS)
    parameters = {
        "edge": Parameter("The edge to pleat.", Kind.EDGE),
        "to": Parameter("The edge it will be sewn to.", Kind.EDGE, ""),
        "length": Parameter("The length to pleat to, where it is not that of another edge.", Kind.LENGTH, ""),
        "on": Parameter("Instead: the piece on which it will be sewn to a line across.", Kind.PIECE, ""),
        **HEIGHTS,
        "kind": Parameter(
            "Knife pleats face one way; box pleats stand out; inverted pleats open inwards.",
            tuple(PleatKind),
            PleatKind.KNIFE,
        ),
        "count": Parameter("How many pleats.", Kind.NUMBER),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        # Below the depth to which they hang closed, folds open and lie flat.
        name = edge_of(done.step.written, "edge")
        return OnCloth(tuple(ledger.at_edge(name, Lies.PLEAT, "the pleats", Fraction(0), HANG_CLOSED, "edge")))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name = step.written, edge_of(step.written, "edge")
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge, say = bench.edge(name), Phrasing(solved, room)
        length = length_wanted(bench, say, step, edge)
        if isinstance(length, Fault):
            return refused(bench, step, edge.pieces, length)
        kind, count = PleatKind(word_of(written, "kind")), step.amounts["count"].as_number()
        if count < 1 or count.denominator != 1:
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "count",
                    "FB341",
                    f"{float(count):.4g} pleats can't be laid; they are counted 1, 2, 3",
                    mend=mends.write(written, "count", f"{max(1, round(count))}"),
                ),
            )
        depth = pleat_depth(edge.cloth_length, length, kind, int(count))
        faults = _cannot_lie(step, say, edge, length, kind, depth)
        if any(fault.severity is Severity.ERROR for fault in faults):
            return refused(bench, step, edge.pieces, *faults)
        after = bench.with_edges(edge._replace(set_length=length, gathered=f"{kind} pleats", held=False, marks=0))
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            tuple(faults),
            sewn=(Sewn(StitchType.LOCK, length, edge.copies, room.gathering_stitch),),
            setup=SetUp.STRAIGHT,
            # One pin or clip for each pleat, or for each of its two folds.
            pinned=FASTENED[kind] * int(count) * room.pin_spacing * edge.copies,
            handled=edge.cloth_length * edge.copies,
            drawn=Drawn(edge.name, length, edge.cloth_length / length, EVEN),
            facts=Laid(kind, int(count), depth, length),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        laid, edge = facts_of(done, Laid), done.before.edge(edge_of(done.step.written, "edge"))
        ring = done.before.ring(edge)
        messages = (
            "pleats-mark-ring"
            if ring
            else "pleats-mark-flat"
            if laid.kind is PleatKind.KNIFE
            else "pleats-mark-flat-middles",
            LINES[laid.kind],
            FOLD[laid.kind],
            "pleats-measure-ring" if ring else "pleats-measure-flat",
            "pleats-sew-down",
        )
        every = (done.before.measured(edge) - edge.stands_out) / laid.pleats
        values: Values = {
            "edge": edge_said(edge),
            "kind": One(laid.kind, tuple(PleatKind)),
            "count": laid.pleats,
            "cloth": Length(edge.cloth_length),
            "length": Length(laid.length),
            "taken": Length(edge.cloth_length - laid.length),
            "depth": Length(laid.depth),
            "twice": Length(2 * laid.depth),
            "every": Length(every),
            "half": Length(every / 2),
            "shown": Length(laid.length / laid.pleats),
            "half-shown": Length(laid.length / laid.pleats / 2),
            "from-edge": Length(BASTE, "about"),
            "mark-off": Length(Fraction(3), "about"),
            "off": Length(max(laid.length / 200, Fraction(3)), "about"),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        laying = (Action(message, edge.copies) for message in messages)
        actions = (*laying, iron_set(say, done.before, edge.pieces[0]), Action("pleats-press", edge.copies))
        cautions, tools = (held_out(say.room), iron_hot(done, say)), iron_tools(done, say)
        return Instructions("pleats-title", "pleats-aim", actions, values, cautions, tools, ironed=("pleats-press",))


def pleat_depth(cloth: Fraction, length: Fraction, kind: PleatKind, count: int) -> Fraction:
    """Depth of each pleat in mm: what the cloth is longer than the line, shared among the folds behind it.

    cloth, length: of the edge flat and pleated, mm. Definition.
    """
    return (cloth - length) / (FOLDS[kind] * count)


def _cannot_lie(
    step: SolvedStep, say: Phrasing, edge: Edge, length: Fraction, kind: PleatKind, depth: Fraction
) -> list[Fault]:
    written, cloth = step.written, edge.cloth_length
    at = next(key for key in ("to", "length", "on") if key in written.args)
    if cloth <= length:
        return [
            fault_at(
                written,
                at,
                "FB314",
                f"`{edge.name}` has {say.length(cloth)} of cloth for {say.length(length)}, and nothing is left to pleat",
                help="make the piece longer, or swap the two edges",
            )
        ]
    if depth < SHALLOWEST:
        fewest = max(1, int((cloth - length) / (FOLDS[kind] * SHALLOWEST)))
        return [
            fault_at(
                written,
                "count",
                "FB342",
                f"each pleat would be {say.length(depth)} deep, and {say.length(SHALLOWEST)} is the least to fold",
                notes=(
                    f"({say.length(cloth)} - {say.length(length)}) / {FOLDS[kind]} folds / {step.amounts['count'].as_number()}",
                ),
                help=f"lay {fewest} pleats or fewer, or gather the edge",
            )
        ]
    most = FULL * length
    if cloth > most:
        severity = Severity.WARNING if kind is PleatKind.KNIFE else Severity.ERROR
        say_so = "they overlap and five plies lie under the seam" if kind is PleatKind.KNIFE else "they can't lie flat"
        return [
            fault_at(
                written,
                "edge",
                "FB343",
                f"{kind} pleats meet behind at {say.length(most)} of cloth for {say.length(length)}, and `{edge.name}` has"
                f" {say.length(cloth)}; {say_so}",
                notes=(f"3 x {say.length(length)} = {say.length(most)}",),
                help="use less cloth, or taper the pleats"
                if kind is PleatKind.KNIFE
                else "use less cloth, or knife pleats",
                severity=severity,
            )
        ]
    return []


TECHNIQUE = Pleats()
