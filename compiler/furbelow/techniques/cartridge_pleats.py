"""Draw a wide edge into cartridge pleats and sew them on by hand.

What it does: runs even rows of hand stitches under each other, draws them up to small round pleats and whips each pleat
    to the edge that carries it.
Edges before and after: both turned under and drawn or flat before; both sewn after, fold to fold.
Allowance: the turn, at both edges.
Example: `- cartridge pleats: {edge: skirt.top, to: yoke.bottom, turn: 1 cm, stitch: 8 mm, rows: 2}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge, State
from furbelow.garment.limits import thickness
from furbelow.garment.matching import EVEN
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    CautionKind,
    Drawn,
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
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import mm
from furbelow.techniques.attach import Attach
from furbelow.techniques.press import iron_caution
from furbelow.techniques.shared.preconditions import copies_differ, edge_not_ready, forms_differ

THIMBLE = (
    CautionKind.NEEDLE,
    "Sewing by hand: use a thimble, and park the needle in a cushion, never in your clothes.",
)


class CartridgePleats:
    name = "cartridge pleats"
    about = "Draw an edge into small round pleats by hand and whip them to another edge."
    pictures = (Picture.PIECES,)
    parameters = {
        "edge": Parameter("The edge to pleat.", Kind.EDGE),
        "to": Parameter("The edge that carries the pleats.", Kind.EDGE),
        "turn": Parameter("How much of both edges is turned under.", Kind.LENGTH, "1 cm"),
        "stitch": Parameter("Length of each running stitch: the depth of the pleats.", Kind.LENGTH, "8 mm"),
        "rows": Parameter("How many rows, one under the other.", Kind.NUMBER, "2"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        edges = (*edges_in(step.args["edge"].value), *edges_in(step.args["to"].value))  # type: ignore[arg-type]
        return allowances_at(edges, "turn")

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written = step.written
        for arg in ("edge", "to"):
            if fault := edge_not_ready(bench, written, arg, edge_of(written, arg)):
                return refused(bench, step, (), fault)
        edge, to = bench.edge(edge_of(written, "edge")), bench.edge(edge_of(written, "to"))
        touches = (*edge.pieces, *to.pieces)
        fault = (
            forms_differ(bench, written, "to", edge, to)
            or copies_differ(written, "to", edge, to)
            or _cannot_stand(bench, step, solved, room, edge, to)
        )
        if fault:
            return refused(bench, step, touches, fault)
        # Drawn up to the other edge, it is sewn as any edge of the same length.
        drawn = bench.with_edges(edge._replace(set_length=to.set_length, gathered="cartridge pleats", held=False))
        plain = SolvedStep(written, {**step.amounts, "seam": mm(step.mm("turn"))})
        done = Attach().perform(drawn, plain, solved, room)
        if done.refused:
            return done._replace(step=step, before=bench)
        count = edge.cloth_length / (2 * step.mm("stitch"))
        rows = int(step.amounts["rows"].as_number())
        label = solved.pieces[edge.pieces[0]].label
        # Hand stitches draw on one thread, as 101 does.
        running = Sewn(StitchType.CHAIN, edge.cloth_length, edge.copies, step.mm("stitch"), f"pleating the {label}")
        whipping = Sewn(StitchType.CHAIN, to.set_length, edge.copies, Fraction(2), f"whipping on the {label}")
        return done._replace(
            step=step,
            before=bench,
            sewn=(running,) * rows + (whipping,),
            setup=SetUp.HAND,
            handled=(edge.cloth_length + to.set_length) * edge.copies,
            drawn=Drawn(edge.name, to.set_length, edge.cloth_length / to.set_length, EVEN),
            facts={"count": int(count), "length": to.set_length, "ratio": edge.cloth_length / to.set_length},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        step, facts = done.step, done.facts
        edge, to = done.before.edge(edge_of(step.written, "edge")), done.before.edge(edge_of(step.written, "to"))
        where = say.edges(edge.pieces, edge.name.rpartition(".")[2] if "." in edge.name else "top")
        carrier = say.edges(to.pieces, to.name.rpartition(".")[2] if "." in to.name else "top")
        turn, stitch = say.length(step.mm("turn")), say.length(step.mm("stitch"))
        chain, length, rows = say.chain(edge.copies), say.length(facts["length"]), int(step.amounts["rows"].as_number())
        actions = (
            OwnAction(f"Turn {where} {turn} to the wrong side and press the fold.", chain=chain),
            OwnAction(f"Turn {carrier} {turn} to the wrong side and press the fold.", chain=chain),
            OwnAction(
                f"Mark dots {stitch} apart along {where}, {say.about(Fraction(5))} below the fold.",
                check=f"There are about {2 * facts['count']} dots.",
                chain=chain,
            ),
            OwnAction(
                f"Sew {rows} rows of running stitches on the dots, {say.about(Fraction(8))} apart, with strong thread, each"
                " stitch exactly under the one above; leave long tails.",
                check="The stitches of all rows stand under each other.",
                remedy="Draw out the row that is out of step and sew it again: uneven rows give no pleats.",
                chain=chain,
            ),
            OwnAction(
                f"Draw all rows up together to {length} and knot the tails.",
                check=f"About {facts['count']} pleats stand side by side in {length}.",
                tolerance=f"{say.about(max(facts['length'] / 200, Fraction(3)))} more or less",
                remedy="Ease the pleats along the threads until they are even.",
                chain=chain,
            ),
            OwnAction(
                f"Lay {where} against {carrier}, right sides together, and whip each pleat to it with two stitches.",
                check="No pleat is missed.",
                remedy="Catch a missed pleat with two stitches of its own.",
                chain=chain,
            ),
        )
        return OwnInstructions(
            f"Sew {say.the(edge.pieces)} to {say.the(to.pieces)} in cartridge pleats",
            f"{say.length(edge.cloth_length)} of cloth stands in {length}, about {facts['count']} pleats.",
            actions,
            (iron_caution(done, say), THIMBLE),
        )


def _cannot_stand(bench: Bench, step: SolvedStep, solved: Solved, room: Workroom, edge: Edge, to: Edge) -> Fault | None:
    """The pleats are too few to draw, or the cloth in them is thicker than the line they stand on."""
    say, written, rows = Phrasing(solved, room), step.written, step.amounts["rows"].as_number()
    if rows < 2 or rows.denominator != 1:
        return fault_at(
            written,
            "rows",
            "FB341",
            f"{float(rows):.4g} rows draw no cartridge pleats; they are counted 2, 3, 4",
            help=f"write `rows: {max(2, round(rows))}`",
        )
    if edge.cloth_length <= to.set_length:
        return fault_at(
            written,
            "edge",
            "FB314",
            f"`{edge.name}` has {say.length(edge.cloth_length)} of cloth for {say.length(to.set_length)}, and nothing is left to pleat",
            help="make the piece longer, or swap the two edges",
        )
    for each in (edge, to):
        for piece in each.pieces:
            cloth = solved.pieces[piece].piece.cloth.text
            if each.state is State.RAW and solved.materials[cloth].material.ravels:
                return fault_at(
                    written,
                    "edge" if each is edge else "to",
                    "FB335",
                    f"the raw edge of `{each.name}` is turned under once and `{cloth}` ravels",
                    help=f"put `- neaten: {{edge: {each.name}}}` before this step",
                )
    ply = sum((thickness(solved, solved.pieces[p.piece].piece.cloth.text) * p.copies for p in edge.plies), Fraction(0))
    # Each pleat is two plies of the turned edge, which is double.
    needed = edge.cloth_length / (2 * step.mm("stitch")) * 4 * ply
    if needed > to.set_length:
        return fault_at(
            written,
            "stitch",
            "FB342",
            f"the pleats are about {say.length(needed)} thick together and stand on {say.length(to.set_length)},"
            f" {say.length(needed - to.set_length)} too much",
            help="take longer stitches or less cloth",
        )
    return None


TECHNIQUE = CartridgePleats()
