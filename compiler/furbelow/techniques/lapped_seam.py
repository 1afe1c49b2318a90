"""Lap one edge over another and stitch through both from the right side.

What it does: turns the upper edge under, lays its fold over the lower edge and topstitches along the fold.
Edges before and after: raw or neatened before; both sewn after; the margin lies inside, raw unless both were neat.
Allowance: the turn at the upper edge, the lap at the lower one.
Example: `- lapped seam: {edge: upper.bottom, over: flounce.top, turn under: 1 cm, lap: 1 cm}`
Source: seam class 2 (lapped) in BS 3870:1991; the widths are common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, State
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Arg, Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    Sewn,
    allowances_at,
    edge_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import mm
from furbelow.techniques.attach import Attach, taken
from furbelow.techniques.join_ends import PINS
from furbelow.techniques.press import iron_caution

EDGE_STITCH = Fraction(2)  # from the fold


class LappedSeam:
    name = "lapped seam"
    about = "Lay a turned edge over another edge and topstitch it down."
    pictures = (Picture.PIECES, Picture.LAPPED_SEAM)
    parameters = {
        "edge": Parameter("The edge that is turned under and lies on top.", Kind.EDGE),
        "over": Parameter("The edge that lies underneath, gathered or flat.", Kind.EDGE),
        "turn under": Parameter(
            "How much of the upper edge is folded under; 0 for cloth that does not ravel.", Kind.LENGTH, "1 cm"
        ),
        "lap": Parameter("How far the lower edge reaches under the upper one.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return (
            *allowances_at(edges_in(step.args["edge"].value), "turn under"),  # type: ignore[arg-type]
            *allowances_at(edges_in(step.args["over"].value), "lap"),  # type: ignore[arg-type]
        )

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        turn, lap = step.mm("turn under"), step.mm("lap")
        if turn and turn <= EDGE_STITCH:
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    "turn under",
                    "FB334",
                    f"a turn of {say.length(turn)} is not caught by a row {say.length(EDGE_STITCH)} from the fold",
                    help="turn more under, or 0 for cloth that does not ravel",
                ),
            )
        if lap <= EDGE_STITCH:
            return refused(
                bench,
                step,
                (),
                fault_at(
                    written,
                    "lap",
                    "FB334",
                    f"a lap of {say.length(lap)} is not caught by a row {say.length(EDGE_STITCH)} from the fold",
                    help="let the lower edge reach further under",
                ),
            )
        # The lower edge is what `attach` calls the edge, the turned one what it is sewn to.
        args = {**written.args, "edge": _as(written.args["over"], "edge"), "to": _as(written.args["edge"], "to")}
        plain = SolvedStep(written._replace(args=args), {**step.amounts, "seam": mm(lap)})
        done = Attach().perform(bench, plain, solved, room)._replace(step=step)
        if done.refused:
            return done
        upper = bench.edge(edge_of(written, "edge"))
        if not turn and upper.state is State.RAW and (cloth := _ravelling(solved, upper.pieces)):
            return refused(
                bench,
                step,
                done.touches,
                fault_at(
                    written,
                    "turn under",
                    "FB335",
                    f"the raw edge of `{upper.name}` lies open on top and `{cloth}` ravels",
                    help="turn it under, or neaten it first",
                ),
            )
        sewn_to = done.after.edge(upper.name)
        after = done.after.with_edges(sewn_to._replace(used=upper.used + turn))
        after = taken(after, sewn_to, turn - lap)
        seam = after.seams[edge_of(written, "over")]
        after = after.with_seams(seam._replace(turned=upper.pieces[0], topstitched=True))
        return done._replace(
            after=after,
            sewn=(Sewn(StitchType.LOCK, seam.length, seam.copies, room.seam_stitch, f"lapping {seam.name}"),),
            handled=seam.length * seam.copies if turn else Fraction(0),
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        written, before = done.step.written, done.before
        over, under = before.edge(edge_of(written, "edge")), before.edge(edge_of(written, "over"))
        turn, lap = done.step.mm("turn under"), say.length(done.step.mm("lap"))
        top = say.edges(over.pieces, over.name.rpartition(".")[2])
        low = say.edges(under.pieces, under.name.rpartition(".")[2])
        chain, pin = say.chain(over.copies), "clip" if say.room.hold_with == "clips" else "pin"
        fold = (
            [OwnAction(f"Fold {top} {say.length(turn)} to the wrong side and press the fold.", chain=chain)]
            if turn
            else []
        )
        actions = (
            *fold,
            OwnAction(f"Mark a line {lap} from {low}, on its right side.", chain=chain),
            OwnAction(
                f"Lay the {'fold' if turn else 'edge'} of {say.the(over.pieces)} on that line, right side up, and {pin} it.",
                check=f"{say.the(under.pieces).capitalize()} reaches {lap} under it everywhere.",
                tolerance=f"{say.about(Fraction(2))} more or less",
                remedy="Shift it where it left the line.",
                chain=chain,
            ),
            OwnAction(
                f"Sew {say.about(EDGE_STITCH)} from the fold, {say.length(over.set_length)},"
                f" {say.stitch(done.sewn[0].stitch)}.",
                check="The lower edge is caught all along; feel for it from the wrong side.",
                remedy="Unpick where it was missed, push it up to the line and sew again.",
                chain=chain,
            ),
        )
        return OwnInstructions(
            f"Lap {say.the(over.pieces)} over {say.the(under.pieces)}",
            "The seam lies flat and its row shows on the right side.",
            actions,
            (PINS, iron_caution(done, say)) if turn else (PINS,),
        )


def _as(arg: Arg, name: str) -> Arg:
    return arg._replace(name=name)


def _ravelling(solved: Solved, pieces: tuple[str, ...]) -> str:
    cloths = [solved.pieces[piece].piece.cloth.text for piece in pieces]
    return next((cloth for cloth in cloths if solved.materials[cloth].material.ravels), "")


TECHNIQUE = LappedSeam()
