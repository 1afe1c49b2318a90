"""Sew one edge to another, the gathered one underneath.

What it does: pins the two edges at quarter marks, right sides together, and sews them with one seam.
Edges before and after: both raw or neatened and of one length before; both sewn after, with one margin between them.
Allowance: the seam, at both edges.
Example: `- attach: {edge: flounce.top, to: upper.bottom, seam: 1 cm}`
Source: the gathered edge below, the flat one on top; short by 15 cm in 4 m may be eased, over 20 cm the gathers are
    let out; pins every 2 cm on gathered net: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Edge, Seam, State
from furbelow.garment.limits import EASE_SHARE
from furbelow.garment.matching import divisions
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Parameter,
    Performed,
    Sewn,
    allowances_at,
    edge_of,
    fault_at,
    refused,
)
from furbelow.garment.tolerance import round_off
from furbelow.garment.workroom import Workroom
from furbelow.techniques.gather import HAND, ROWS, knots_of, runs_of
from furbelow.techniques.join_ends import PINS, side_seam, tagged
from furbelow.techniques.shared.preconditions import (
    copies_differ,
    edge_not_ready,
    forms_differ,
    margin_state,
    seam_too_narrow,
)

KNOT = Fraction(20)


class Attach:
    name = "attach"
    about = "Sew one edge to another of the same length, right sides together."
    pictures = ("pieces", "matching marks", "ring over ring", "sewn seam")
    parameters = {
        "edge": Parameter("The edge to sew on, gathered or flat.", "edge"),
        "to": Parameter("The edge it is sewn to.", "edge"),
        "seam": Parameter("Seam allowance at both edges.", "length", "1 cm"),
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
            sewn=(Sewn("301", to.set_length, to.copies, room.seam_stitch, label),),
            setup="straight stitch",
            pinned=to.set_length * to.copies,
            thread_ends=0 if edge.held else knots_of(edge),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, before = done.step.written, done.before
        edge, to = before.edge(edge_of(written, "edge")), before.edge(edge_of(written, "to"))
        seam, length = done.step.mm("seam"), to.set_length
        upper = say.edges(to.pieces, to.name.rpartition(".")[2])
        lower = say.edges(edge.pieces, edge.name.rpartition(".")[2] if "." in edge.name else "top")
        chain, hold = say.chain(to.copies), say.room.hold_with
        pin = "clip" if hold == "clips" else "pin"
        folds = "pleats" if "pleats" in edge.gathered else "gathers"
        ring = before.ring(to)
        spacing = say.room.pin_spacing
        parts = divisions(length)
        off = round_off(before, edge, say) + round_off(before, to, say)
        named = "eighth" if parts == 8 else "quarter"
        seam_side = side_seam(before, to.pieces, say)
        threads = tagged(before, to.pieces, say) or tagged(before, edge.pieces, say)
        bright = ", those with a bright thread," if threads else ""
        marks = f"the side seams{bright} and the marks" if ring else "both ends and the marks"
        hang_out = " Let the thread tails hang out over the edge." if edge.gathered in (ROWS, HAND) else ""
        actions = (
            Action(
                f"Mark {upper} in {named}s on both faces, every {say.length(length / parts)}"
                + (f", the first at {seam_side}." if ring else "."),
                chain=chain,
            ),
            *(
                (
                    Action(
                        f"Turn {say.the(edge.pieces)} right side out and {say.the(to.pieces)} inside out.", chain=chain
                    ),
                    Action(
                        f"Slip {say.the(to.pieces)} over {say.the(edge.pieces)}, upside down, until {upper} lies level with"
                        f" {lower}.{hang_out}",
                        check="Right sides face each other and both cut edges are level.",
                        chain=chain,
                    ),
                )
                if ring
                else (Action(f"Lay {lower} against {upper}, right sides together and level.{hang_out}", chain=chain),)
            ),
            Action(
                f"Match {marks}, and {pin} there first, from the side of {say.the(to.pieces)}. Then {pin} every"
                f" {say.about(spacing)} between: about {say.pins(length)} {hold} {'for each' if to.copies > 1 else 'in all'}.",
                check=f"The edges lie level and no {folds} are bunched at the marks. Where the flat edge is longer, it is spread between the {say.room.hold_with} without a fold."
                if edge.gathered
                else "The edges lie level.",
                tolerance=f"the {folds} up to {say.length(length * EASE_SHARE)} short in all"
                if edge.gathered
                else f"one edge {say.off(off)} longer",
                remedy=f"More than {say.length(length * EASE_SHARE)} short: let the gathers out."
                if edge.gathered
                else "Share the difference out between the marks.",
                chain=chain,
            ),
            *(
                (Action(tails_off(edge, say), chain=chain),)
                if edge.gathered in (ROWS, HAND, "cartridge pleats")
                else ()
            ),
            Action(
                f"Turn the work so that {say.the(to.pieces)} {'lie' if len(set(to.pieces)) > 1 else 'lies'} on top"
                f"{f' and the {folds} underneath' if edge.gathered else ''}.",
                chain=chain,
            ),
            Action(
                f"Sew {say.length(seam)} from the edge, {say.stitch(done.sewn[0].stitch)}, {say.length(length)}"
                f"{' all round. Let the end overlap the start by three stitches' if ring else ', a few stitches back at both ends'}.",
                check="No pleat is caught and no gathering row shows on the right side."
                if edge.gathered
                else "The edges stayed level.",
                remedy="Unpick that hand's width, smooth it and sew it again."
                + (" A row that shows below the seam is pulled out." if edge.gathered else ""),
                chain=chain,
            ),
        )
        hung = say.the(edge.pieces)
        return Instructions(
            f"Sew {hung} to {say.the(to.pieces)}",
            f"{hung[0].upper()}{hung[1:]} hangs from {say.the(to.pieces)}, seam {say.length(seam)}.",
            actions,
            (PINS,),
        )


def tails_off(edge: Edge, say: Phrasing) -> str:
    """What is done with the thread tails of gathers once pins hold the edge."""
    each = "run" if runs_of(edge.cloth_length, edge.set_length) > 1 else "row"
    if edge.gathered == ROWS:
        knots = f"At both ends of each {each} knot every upper thread to its lower one"
    else:
        knots = f"At both ends of {'each run' if each == 'run' else 'the rows'} knot the tails together"
    return f"Take out the pins that hold the thread tails. {knots}, and cut the tails to {say.about(KNOT)}."


def taken(bench: Bench, edge: Edge, amount: object) -> Bench:
    """The bench with a turn or seam taken at the edges that lie in a stack; a plain edge has its own books."""
    if "." in edge.name:
        return bench
    for below, stack in bench.layered.items():
        if stack != edge.name:
            continue
        layer = bench.edge(below)
        layer = layer._replace(state=State.SEWN, used=layer.used + amount, held=True)  # type: ignore[operator]
        bench = taken(bench.with_edges(layer), layer, amount)
    return bench


TECHNIQUE = Attach()
