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
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge, State
from furbelow.garment.limits import thickness
from furbelow.garment.lying import Ledger, OnCloth, Window
from furbelow.garment.matching import EVEN, divisions
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
    allowances_at,
    edge_at,
    edge_of,
    facts_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.measure.quantity import mm
from furbelow.named import NamedTuple
from furbelow.techniques.shared.cautions import HAND_NEEDLE, held_out
from furbelow.techniques.shared.gathers import CARTRIDGE, runs_of, runs_said
from furbelow.techniques.shared.iron import by_heat, iron_hot, iron_set, iron_tools
from furbelow.techniques.shared.joined_edges import join_edges
from furbelow.techniques.shared.laying import margins, seam_window
from furbelow.techniques.shared.preconditions import copies_differ, edge_not_ready, forms_differ

FIRST_ROW = Fraction(5)  # below the fold
ROWS_APART = Fraction(8)
WHIPS = 2  # stitches that hold a pleat


class DrawnUp(NamedTuple):
    """So many pleats, drawn up to which length in mm."""

    pleats: int
    length: Fraction


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
        edges = (*edges_in(edge_at(step, "edge")), *edges_in(edge_at(step, "to")))
        return allowances_at(edges, "turn")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, turn = done.step.written, done.step.mm("turn")
        names = edge_of(written, "edge"), edge_of(written, "to")
        windows = (
            seam_window(solved, "turn", turn, done.touches),
            Window("stitch", "a running stitch", done.step.mm("stitch"), least=Fraction(3), most=Fraction(20)),
        )
        return OnCloth(margins(ledger, turn, "turn", *names), windows)

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
        drawn = bench.with_edges(edge._replace(set_length=to.set_length, gathered=CARTRIDGE, held=False))
        plain = SolvedStep(written, {**step.amounts, "seam": mm(step.mm("turn"))})
        done = join_edges(drawn, plain, solved, room)
        if done.refused:
            return done._replace(step=step, before=bench)
        count = edge.cloth_length / (2 * step.mm("stitch"))
        rows = int(step.amounts["rows"].as_number())
        running = Sewn(StitchType.RUNNING, edge.cloth_length, edge.copies, step.mm("stitch"))
        whipping = Sewn(StitchType.HAND, to.set_length, edge.copies, Fraction(2), singly=WHIPS * int(count))
        parts = divisions(to.set_length)
        return done._replace(
            step=step,
            before=bench,
            sewn=(running,) * rows + (whipping,),
            setup=SetUp.HAND,
            pinned=parts * room.pin_spacing * edge.copies,  # at the marks alone
            thread_ends=2 * runs_of(edge.cloth_length, parts) * edge.copies,  # wound round a pin, then knotted
            handled=(edge.cloth_length + to.set_length) * edge.copies,
            drawn=Drawn(edge.name, to.set_length, edge.cloth_length / to.set_length, EVEN),
            facts=DrawnUp(int(count), to.set_length),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        step, drawn = done.step, facts_of(done, DrawnUp)
        edge, to = done.before.edge(edge_of(step.written, "edge")), done.before.edge(edge_of(step.written, "to"))
        coolest = by_heat(say, done.before, (*edge.pieces, *to.pieces))[0]
        ring, parts = done.before.ring(edge), divisions(drawn.length)
        messages = (
            "cartridge-pleats-turn",
            "cartridge-pleats-turn-carrier",
            "cartridge-pleats-mark-ring" if ring else "cartridge-pleats-mark-flat",
            "cartridge-pleats-dots",
            "cartridge-pleats-rows",
            "cartridge-pleats-draw",
            "cartridge-pleats-knot",
            "cartridge-pleats-pin",
            "cartridge-pleats-whip",
        )
        values: Values = {
            "edge": edge_said(edge),
            "to": edge_said(to),
            "turn": Length(step.mm("turn")),
            "stitch": Length(step.mm("stitch")),
            "rows": int(step.amounts["rows"].as_number()),
            "first-row": Length(FIRST_ROW, "about"),
            "apart": Length(ROWS_APART, "about"),
            "pleats": drawn.pleats,
            "dots": 2 * drawn.pleats,
            "stitches": WHIPS * drawn.pleats,
            "cloth-part": Length(edge.cloth_length / parts),
            "part": Length(drawn.length / parts),
            **runs_said(edge.cloth_length, parts, say),
            "hold": One(say.room.hold_with, ("pins", "clips")),
            "cloth": Length(edge.cloth_length),
            "length": Length(drawn.length),
            "off": Length(max(drawn.length / 200, Fraction(3)), "about"),
        }
        return Instructions(
            "cartridge-pleats-title",
            "cartridge-pleats-aim",
            (iron_set(say, done.before, coolest), *(Action(message, edge.copies) for message in messages)),
            values,
            (iron_hot(done, say), HAND_NEEDLE, held_out(say.room)),
            iron_tools(done, say, *edge.pieces, *to.pieces),
            ironed=("cartridge-pleats-turn", "cartridge-pleats-turn-carrier"),
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
            mend=mends.write(written, "rows", f"{max(2, round(rows))}"),
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
                    mend=mends.before(written, f"neaten: {{edge: {each.name}}}"),
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
