"""Sew one edge to another, the gathered one underneath.

What it does: pins the two edges at quarter marks, right sides together, and sews them with one seam.
Edges before and after: both raw or neatened and of one length before; both sewn after, with one margin between them.
Allowance: the seam, at both edges.
Example: `- attach: {edge: flounce.top, to: upper.bottom, seam: 1 cm}`
Source: the gathered edge below, the flat one on top; short by 15 cm in 4 m may be eased, over 20 cm the gathers are
    let out; pins every 2 cm on gathered net: common practice, no source.
"""

from __future__ import annotations

from furbelow.garment.bench import Bench, Edge, Seam, State
from furbelow.garment.limits import EASE_SHARE
from furbelow.garment.matching import divisions
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
    allowances_at,
    edge_of,
    fault_at,
    refused,
)
from furbelow.garment.tolerance import round_off
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.gathers import HAND, ROWS, knots_of, tails_off, tails_said
from furbelow.techniques.shared.marks import seam_said, tagged
from furbelow.techniques.shared.preconditions import (
    copies_differ,
    edge_not_ready,
    forms_differ,
    margin_state,
    seam_too_narrow,
)
from furbelow.techniques.shared.stacks import taken as taken

PLACES = ("bright", "ends", "plain")


class Attach:
    name = "attach"
    about = "Sew one edge to another of the same length, right sides together."
    pictures = (Picture.PIECES, Picture.MATCHING_MARKS, Picture.RING_OVER_RING, Picture.SEWN_SEAM)
    parameters = {
        "edge": Parameter("The edge to sew on, gathered or flat.", Kind.EDGE),
        "to": Parameter("The edge it is sewn to.", Kind.EDGE),
        "seam": Parameter("Seam allowance at both edges.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        edges = (*edges_in(step.args["edge"].value), *edges_in(step.args["to"].value))  # type: ignore[arg-type]
        return allowances_at(edges, "seam")

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written = step.written
        names = edge_of(written, "edge"), edge_of(written, "to")
        for arg, name in zip(("edge", "to"), names, strict=True):
            if fault := edge_not_ready(bench, written, arg, name):
                return refused(bench, step, (), fault)
        edge, to = bench.edge(names[0]), bench.edge(names[1])
        touches = (*edge.pieces, *to.pieces)
        if bench.units[edge.pieces[0]] == bench.units[to.pieces[0]]:
            return refused(
                bench,
                step,
                touches,
                fault_at(
                    written,
                    "to",
                    "FB317",
                    f"`{edge.name}` and `{to.name}` belong to one unit already",
                    help="check which two edges this seam is meant to join",
                ),
            )
        fault = (
            forms_differ(bench, written, "to", edge, to)
            or copies_differ(written, "to", edge, to)
            or seam_too_narrow(solved, Phrasing(solved, room), step, "seam", touches)
        )
        if fault:
            return refused(bench, step, touches, fault)
        say, gap = Phrasing(solved, room), edge.set_length - to.set_length
        if abs(gap) > solved.rounding:  # cut lengths are rounded up each by itself: one step between them is eased in
            what = "gathered to" if edge.gathered else "long"
            return refused(
                bench,
                step,
                touches,
                fault_at(
                    written,
                    "edge",
                    "FB401",
                    f"`{edge.name}` is {say.length(edge.set_length)} {what} and `{to.name}` is {say.length(to.set_length)},"
                    f" {say.length(abs(gap))} {'too long' if gap > 0 else 'too short'}",
                    notes=(
                        f"{say.length(edge.set_length)} - {say.length(to.set_length)} = "
                        f"{'-' if gap < 0 else ''}{say.length(abs(gap))}",
                    ),
                    help=f"gather `{edge.name}` to `{to.name}` before this step"
                    if gap > 0 and not edge.gathered
                    else f"make the two edges the same length, or gather `{to.name if gap < 0 else edge.name}`",
                ),
            )
        seam = step.mm("seam")
        plies = (*to.plies, *edge.plies)
        margin = Seam(
            names[0],
            names,
            plies,
            to.set_length,
            to.copies,
            seam,
            "301",
            margin_state(solved, edge, to),
        )
        after = bench.with_edges(
            edge._replace(state=State.SEWN, used=edge.used + seam, held=True, set_length=to.set_length),
            to._replace(state=State.SEWN, used=to.used + seam, held=True),
        )
        after = taken(taken(after, edge, seam), to, seam).with_seams(margin).joined(touches)
        label = f"sewing the {solved.pieces[edge.pieces[0]].label} to the {solved.pieces[to.pieces[0]].label}"
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=(Sewn(StitchType.LOCK, to.set_length, to.copies, room.seam_stitch, label),),
            setup=SetUp.STRAIGHT,
            pinned=to.set_length * to.copies,
            thread_ends=0 if edge.held else knots_of(edge),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, before, room = done.step.written, done.before, say.room
        edge, to = before.edge(edge_of(written, "edge")), before.edge(edge_of(written, "to"))
        ring, length, folds = before.ring(to), to.set_length, folds_of(edge)
        tails, parts = edge.gathered in (ROWS, HAND), divisions(length)
        threads = tagged(before, to.pieces, say) or tagged(before, edge.pieces, say)

        def each(name: str) -> Action:
            return Action(name, to.copies)

        actions = [each("attach-mark-ring" if ring else "attach-mark-flat")]
        if ring:
            actions += [each("attach-turn"), each("attach-slip-tails" if tails else "attach-slip")]
        else:
            actions.append(each("attach-lay-tails" if tails else "attach-lay"))
        actions.append(
            each({"gathers": "attach-pin-gathers", "pleats": "attach-pin-pleats", "flat": "attach-pin-flat"}[folds])
        )
        if tails:
            actions.append(each(tails_off(edge)))
        actions += [
            each(
                {
                    "gathers": "attach-turn-work-gathers",
                    "pleats": "attach-turn-work-pleats",
                    "flat": "attach-turn-work-flat",
                }[folds]
            ),
            each("attach-sew-flat" if folds == "flat" else "attach-sew-gathers"),
        ]
        values: Values = {
            "edge": edge_said(edge),
            "to": edge_said(to),
            "seam": seam_said(before, to.pieces, say),
            "places": One("bright" if threads else "plain", PLACES) if ring else One("ends", PLACES),
            "ring": flag(ring),
            "hold": One(room.hold_with, ("pins", "clips")),
            "copies": to.copies,
            "pins": say.pins(length),
            "parts": parts,
            "part": Length(length / parts),
            "length": Length(length),
            "seam-width": Length(done.step.mm("seam")),
            "ease": Length(length * EASE_SHARE),
            "off": Length(round_off(before, edge, say) + round_off(before, to, say), "off"),
            "spacing": Length(room.pin_spacing, "about"),
            **tails_said(edge),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        return Instructions("attach-title", "attach-aim", tuple(actions), values, (PINS_OUT,))


def folds_of(edge: Edge) -> str:
    """What an edge's cloth lies in: "gathers", "pleats" or "flat"."""
    return "flat" if not edge.gathered else "pleats" if "pleats" in edge.gathered else "gathers"


TECHNIQUE = Attach()
