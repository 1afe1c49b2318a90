"""Roll an edge to a very narrow hem.

What it does: turns the edge twice by a few millimetres, by hand or with a hemming foot, or rolls it in the overlocker.
Edges before and after: raw or neatened before, hemmed after.
Allowance: twice the roll; once in the overlocker, which rolls the edge in its own stitches.
Example: `- rolled hem: {edge: flounce.bottom, roll: 3 mm, by: hemming foot}`
Source: common practice, no source. ISO 4915 names the overlock stitch 504.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge, State
from furbelow.garment.limits import gram_per_m2
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.message import Length, Stitch, Values, edge_said
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
    allowances_at,
    edge_at,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import FINGERS, HAND_NEEDLE, KNIVES
from furbelow.techniques.shared.laying import hem
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.preconditions import edge_not_ready, not_one_edge
from furbelow.techniques.shared.ring_drop import dropped_first

FOOT, HAND, OVERLOCKER = "hemming foot", "hand", "overlocker"
WIDEST = Fraction(6)  # a wider turn is a narrow hem; house rule, maker to confirm
HEAVIEST = Fraction(120)  # g/m2; heavier cloth does not roll; house rule, maker to confirm
NARROWEST_ROLL, WIDEST_ROLL = Fraction(3, 2), Fraction(8)  # house rule, maker to confirm
BEGIN = Fraction(50)  # folded by hand before the foot takes over; common practice, no source
SLIP_EVERY = Fraction(5)  # common practice, no source
PAST = Fraction(20)  # run over the start of a ring, as neatening does
TAIL = Fraction(60)  # of the overlocker's chain, as in neatening


class RolledHem:
    name = "rolled hem"
    about = "Roll an edge of thin cloth to a hem of a few millimetres."
    pictures = (Picture.PIECES, Picture.TURNED_TWICE)
    parameters = {
        "edge": Parameter("The edge to hem.", Kind.EDGE),
        "roll": Parameter("Width of the finished roll.", Kind.LENGTH, "3 mm"),
        "by": Parameter("How it is rolled.", (FOOT, HAND, OVERLOCKER), FOOT),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        turns = ("roll",) if word_of(step, "by") == OVERLOCKER else ("roll", "roll")
        return allowances_at(edges_in(edge_at(step, "edge")), *turns)

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        name, roll = edge_of(done.step.written, "edge"), done.step.mm("roll")
        first = Fraction(0) if word_of(done.step.written, "by") == OVERLOCKER else roll
        occupants, held = hem(ledger, name, first, roll, "roll", "the rolled hem")
        narrow = Window(
            "roll", "a roll", roll, sewable_least=NARROWEST_ROLL, most=WIDEST_ROLL, why="it is rolled, not folded"
        )
        return OnCloth(occupants, (narrow,), held)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, by = step.written, edge_of(step.written, "edge"), word_of(step.written, "by")
        if fault := edge_not_ready(bench, written, "edge", name) or not_one_edge(written, "edge", bench.edge(name)):
            return refused(bench, step, (), fault)
        edge, roll = bench.edge(name), step.mm("roll")
        faults = list(_not_rollable(step, solved, room, edge.pieces))
        if faults:
            return refused(bench, step, edge.pieces, *faults)
        turned = roll if by == OVERLOCKER else 2 * roll
        length = edge.end_to_end
        after = bench.turned(edge, turned, State.HEMMED)
        kind, stitch = {
            FOOT: (StitchType.LOCK, room.seam_stitch),
            HAND: (StitchType.HAND, SLIP_EVERY),
            OVERLOCKER: (StitchType.OVERLOCK, Fraction(3, 2)),
        }[by]
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(Sewn(kind, length, edge.copies, stitch),),
            setup={FOOT: SetUp.STRAIGHT, HAND: SetUp.HAND, OVERLOCKER: SetUp.OVERLOCKER}[by],
            handled=length * edge.copies if by == HAND else Fraction(0),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, roll = done.step.written, done.step.mm("roll")
        edge, by = done.before.edge(edge_of(written, "edge")), word_of(written, "by")
        values: Values = {
            "edge": edge_said(edge),
            "seam": seam_said(done.before, edge.pieces, say),
            "roll": Length(roll),
            "twice": Length(2 * roll),
            "first": Length(BEGIN, "about"),
            "every": Length(SLIP_EVERY, "about"),
            "past": Length(PAST, "about"),
            "tail": Length(TAIL, "about"),
            "off": Length(Fraction(1), "off"),
            "length": Length(done.sewn[0].length),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        caution = {FOOT: FINGERS, HAND: HAND_NEEDLE, OVERLOCKER: KNIVES}[by]
        tools = (Tool.HEMMING_FOOT,) if by == FOOT else ()
        actions = tuple(_how(done, edge, by, say))
        return Instructions(
            "rolled-hem-title", "rolled-hem-aim", actions, values, (caution,), tools, waits=dropped_first(done, edge)
        )


def _how(done: Performed, edge: Edge, by: str, say: Phrasing) -> Iterator[Action]:
    """The actions of one way to roll; what is set at the machine is set once, and the rest done on every copy."""
    ring = done.before.ring(edge)

    def each(name: str) -> Action:
        return Action(name, edge.copies)

    if by == FOOT:
        yield Action("rolled-hem-fit-foot")
        if ring or any(say.joins.get(piece, 0) for piece in edge.pieces):
            yield each("rolled-hem-thin-seams")
        yield each("rolled-hem-begin-ring" if ring else "rolled-hem-begin-flat")
        yield each("rolled-hem-sew-foot-ring" if ring else "rolled-hem-sew-foot-flat")
        yield each("rolled-hem-look")
        yield Action("rolled-hem-foot-off")
    elif by == HAND:
        yield from map(each, ("rolled-hem-crease", "rolled-hem-roll", "rolled-hem-sew-hand", "rolled-hem-look"))
    else:
        yield Action("rolled-hem-set-overlocker")
        yield each("rolled-hem-sew-overlocker-ring" if ring else "rolled-hem-sew-overlocker-flat")
        yield each("rolled-hem-chain")
        yield each("rolled-hem-look-overlocker")
        yield Action("rolled-hem-set-back")


def _not_rollable(step: SolvedStep, solved: Solved, room: Workroom, pieces: tuple[str, ...]) -> list[Fault]:
    say, roll, written = Phrasing(solved, room), step.mm("roll"), step.written
    faults = []
    if roll > WIDEST:
        faults.append(
            fault_at(
                written,
                "roll",
                "FB338",
                f"a roll of {say.length(roll)} is wider than {say.length(WIDEST)}, by {say.length(roll - WIDEST)}",
                help="use a `narrow hem`",
            )
        )
    for piece in pieces:
        cloth = solved.pieces[piece].piece.cloth.text
        if (weight := gram_per_m2(solved, cloth)) > HEAVIEST:
            faults.append(
                fault_at(
                    written,
                    "edge",
                    "FB338",
                    f"`{cloth}` of {float(weight):.3g} g/m2 does not roll; up to {HEAVIEST} g/m2 does",
                    help="use a `narrow hem`",
                )
            )
    if word_of(written, "by") == OVERLOCKER and room.neaten_with != OVERLOCKER:
        faults.append(
            fault_at(
                written,
                "by",
                "FB339",
                f"{room.title} neatens with {room.neaten_with} and has no overlocker",
                mend=mends.write(written, "by", "hemming foot", ", or `by: hand`"),
            )
        )
    return faults


TECHNIQUE = RolledHem()
