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
from furbelow.garment.lying import Ledger, Lies, OnCloth
from furbelow.garment.message import Length, One, Stitch, Values, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Arg, Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    Sewn,
    Tool,
    allowances_at,
    edge_at,
    edge_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import mm
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.gathers import tails_hang, tails_off
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.joined_edges import join_edges
from furbelow.techniques.shared.laid_edges import edges_said, marks_on
from furbelow.techniques.shared.laying import WIDE_MARGIN, bare_edge, margins, seam_window, turn_window
from furbelow.techniques.shared.marks import seam_said
from furbelow.techniques.shared.stacks import taken

EDGE_STITCH = Fraction(2)  # from the fold
OFF = Fraction(2)  # how far the lap may be off


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
            *allowances_at(edges_in(edge_at(step, "edge")), "turn under"),
            *allowances_at(edges_in(edge_at(step, "over")), "lap"),
        )

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, turn, lap = done.step.written, done.step.mm("turn under"), done.step.mm("lap")
        upper, lower = edge_of(written, "edge"), edge_of(written, "over")
        windows = (
            turn_window("turn under", "the turn", turn, most=WIDE_MARGIN, bare=bare_edge(ledger, solved, upper)),
            seam_window(solved, "lap", lap, done.touches),
        )
        turned = tuple(ledger.at_edge(upper, Lies.MARGIN, "the turned edge", Fraction(0), turn, "turn under"))
        return OnCloth((*turned, *margins(ledger, lap, "lap", lower)), windows)

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
        done = join_edges(bench, plain, solved, room)._replace(step=step)
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
            sewn=(Sewn(StitchType.LOCK, seam.length, seam.copies, room.seam_stitch),),
            handled=seam.length * seam.copies if turn else Fraction(0),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, before = done.step.written, done.before
        over, under = before.edge(edge_of(written, "edge")), before.edge(edge_of(written, "over"))
        turn, ring = done.step.mm("turn under"), before.ring(over)

        def each(name: str) -> Action:
            return Action(name, over.copies)

        actions = (
            *((each("lapped-seam-fold"),) if turn else ()),
            each("lapped-seam-mark-ring" if ring else "lapped-seam-mark-flat"),
            *marks_on(before, say, under),
            each("lapped-seam-line"),
            each("lapped-seam-lay-ring" if ring else "lapped-seam-lay-flat"),
            each("lapped-seam-pin"),
            *((each(tails_off(under)),) if tails_hang(under) else ()),
            each("lapped-seam-sew-ring" if ring else "lapped-seam-sew-flat"),
        )
        values: Values = {
            **edges_said(before, under, over, say),
            "hold": One("pins", ("pins", "clips")),
            "seam": seam_said(before, over.pieces, say),
            "turned": flag(turn),
            "turn": Length(turn),
            "lap": Length(done.step.mm("lap")),
            "lap-off": Length(OFF, "off"),
            "from-fold": Length(EDGE_STITCH, "about"),
            "length": Length(over.set_length),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        cautions = (PINS_OUT, *((iron_hot(done, say),) if turn else ()))
        tools = (Tool.PINS, *(iron_tools(done, say, *over.pieces) if turn else ()))
        return Instructions(
            "lapped-seam-title",
            "lapped-seam-aim",
            actions,
            values,
            cautions,
            tools,
            over.pieces,
            ironed=("lapped-seam-fold",),
            ruled=("lapped-seam-line",),
        )


def _as(arg: Arg, name: str) -> Arg:
    return arg._replace(name=name)


def _ravelling(solved: Solved, pieces: tuple[str, ...]) -> str:
    cloths = [solved.pieces[piece].piece.cloth.text for piece in pieces]
    return next((cloth for cloth in cloths if solved.materials[cloth].material.ravels), "")


TECHNIQUE = LappedSeam()
