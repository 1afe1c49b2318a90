"""Roll an edge to a very narrow hem.

What it does: turns the edge twice by a few millimetres, by hand or with a hemming foot, or rolls it in the overlocker.
Edges before and after: raw or neatened before, hemmed after.
Allowance: twice the roll; once in the overlocker, which rolls the edge in its own stitches.
Example: `- rolled hem: {edge: flounce.bottom, roll: 3 mm, by: hemming foot}`
Source: common practice, no source. ISO 4915 names the overlock stitch 504.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, State
from furbelow.garment.limits import gram_per_m2
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    CautionKind,
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    allowances_at,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.join_ends import side_seam
from furbelow.techniques.neaten import KNIVES
from furbelow.techniques.shared.preconditions import edge_not_ready, not_one_edge

FOOT, HAND, OVERLOCKER = "hemming foot", "hand", "overlocker"
WIDEST = Fraction(6)  # a wider turn is a narrow hem; house rule, maker to confirm
HEAVIEST = Fraction(120)  # g/m2; heavier cloth does not roll; house rule, maker to confirm


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
        return allowances_at(edges_in(step.args["edge"].value), *turns)  # type: ignore[arg-type]

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name, by = step.written, edge_of(step.written, "edge"), word_of(step.written, "by")
        if fault := edge_not_ready(bench, written, "edge", name) or not_one_edge(written, "edge", bench.edge(name)):
            return refused(bench, step, (), fault)
        edge, roll = bench.edge(name), step.mm("roll")
        faults = list(_not_rollable(step, solved, room, edge.pieces))
        if faults:
            return refused(bench, step, edge.pieces, *faults)
        turned = roll if by == OVERLOCKER else 2 * roll
        after = bench.with_edges(edge._replace(state=State.HEMMED, used=edge.used + turned))
        # Slip stitches by hand draw on one thread, as 101 does.
        kind, stitch = {
            FOOT: (StitchType.LOCK, room.seam_stitch),
            HAND: (StitchType.CHAIN, Fraction(5)),
            OVERLOCKER: (StitchType.OVERLOCK, Fraction(3, 2)),
        }[by]
        what = f"rolled hem of the {solved.pieces[edge.pieces[0]].label}"
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=(Sewn(kind, edge.set_length, edge.copies, stitch, what),),
            setup={FOOT: SetUp.STRAIGHT, HAND: SetUp.HAND, OVERLOCKER: SetUp.OVERLOCKER}[by],
            handled=edge.set_length * edge.copies if by == HAND else Fraction(0),
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        edge, by = done.before.edge(edge_of(done.step.written, "edge")), word_of(done.step.written, "by")
        where, chain = say.edge(edge.pieces[0], edge.name.rpartition(".")[2]), say.chain(edge.copies)
        roll, twice = say.length(done.step.mm("roll")), say.length(2 * done.step.mm("roll"))
        long, start = (
            say.length(edge.set_length),
            f"at {side_seam(done.before, edge.pieces, say)}" if done.before.ring(edge) else "at one end",
        )
        checked = OwnAction(
            f"Look along {where}, {long}.",
            check=f"The roll is {roll} wide and no raw edge stands out.",
            tolerance=f"{say.about(Fraction(1))} more or less",
            remedy="Unpick a hand's width on both sides of the place, roll it again and sew it.",
            chain=chain,
        )
        actions: tuple[OwnAction, ...]
        if by == FOOT:
            actions = (
                OwnAction(f"Fit a hemming foot for {roll}. Try it on an offcut of the same cloth."),
                OwnAction(
                    f"Fold the first {say.about(Fraction(50))} of {where} twice by {roll}, {start}, and put it under the needle.",
                    chain=chain,
                ),
                OwnAction(
                    f"Lead the raw edge into the scroll of the foot and sew {long}, {say.stitch(done.sewn[0].stitch)};"
                    " hold the edge upright before the foot.",
                    chain=chain,
                ),
                checked,
            )
        elif by == HAND:
            actions = (
                OwnAction(f"Sew or crease a line {twice} from {where}, then trim loose threads.", chain=chain),
                OwnAction(f"Roll the edge between finger and thumb to {roll}, a hand's length at a time.", chain=chain),
                OwnAction(
                    f"Slip stitch the roll down, a stitch every {say.about(Fraction(5))}, {long}: one thread of the cloth,"
                    " then through the roll.",
                    chain=chain,
                ),
                checked,
            )
        else:
            actions = (
                OwnAction(
                    "Set the overlocker for a rolled edge: stitch finger off, short stitch, lower looper tight. Try it on"
                    " an offcut."
                ),
                OwnAction(f"Sew {where} right side up, {long}; let the knife take only the fray.", chain=chain),
                checked,
            )
        caution = (
            KNIVES if by == OVERLOCKER else (CautionKind.NEEDLE, "Keep your fingers two finger-widths from the needle.")
        )
        return OwnInstructions(
            f"Roll the hem of the {say.piece(edge.pieces[0])}", "A very narrow hem holds the edge.", actions, (caution,)
        )


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
                help="write `by: hemming foot` or `by: hand`",
            )
        )
    return faults


TECHNIQUE = RolledHem()
