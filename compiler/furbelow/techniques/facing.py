"""Finish an edge with a facing: a strip sewn to it and turned to the inside.

What it does: sews the facing to the edge right sides together, turns it inside and understitches it.
Edges before and after: edge and facing of one length and form before; both sewn, their margin between them, after.
Allowance: the seam, at both edges.
Example: `- facing: {edge: skirt.top, with: facing.top, seam: 1 cm}`
Source: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, State
from furbelow.garment.lying import Held, Ledger, OnCloth, Window
from furbelow.garment.message import Length, One, Pieces, Stitch, Values, edge_said
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
from furbelow.techniques.shared import folded_ends
from furbelow.techniques.shared.cautions import HAND_NEEDLE, PINS_OUT, SHEARS
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.joined_edges import join_edges
from furbelow.techniques.shared.laying import margins, on_flare, seam_window
from furbelow.techniques.shared.preconditions import not_long
from furbelow.techniques.shared.ring_drop import dropped_first

UNDERSTITCH = Fraction(2)
# House rules, maker to confirm: how far apart a curved margin is cut into, and how near to its seam.
CLIPS, CLIP_SHORT = Fraction(15), Fraction(2)
COVERS = Fraction(5)  # of a facing beyond the margin under it; house rule, maker to confirm
SIDES = ("top", "bottom")


class Facing:
    name = "facing"
    about = "Sew a strip to an edge and turn it to the inside, so that the edge is clean."
    pictures = (Picture.PIECES, Picture.FACING)
    parameters = {
        "edge": Parameter("The edge to finish.", Kind.EDGE),
        "with": Parameter("The facing's edge on the same side: skirt.top takes facing.top.", Kind.EDGE),
        "seam": Parameter("Seam allowance at both edges.", Kind.LENGTH, "1 cm"),
        folded_ends.ENDS: folded_ends.PARAMETER,
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        edges = (*edges_in(edge_at(step, "edge")), *edges_in(edge_at(step, "with")))
        return (*allowances_at(edges, "seam"), *folded_ends.takes(edge_at(step, "with").piece))

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, seam = done.step.written, done.step.mm("seam")
        name, facing = edge_of(written, "edge"), edge_of(written, "with")
        piece = facing.partition(".")[0]
        depth = solved.pieces[piece].depth
        covers = Window("with", "a facing", depth, least=seam + COVERS, why="its depth: the margin lies under it")
        windows = (seam_window(solved, "seam", seam, done.touches), covers)
        held: tuple[Held, ...] = ()
        if solved.pieces[piece].ring is None:
            held = tuple(on_flare(ledger, name, f"the facing `{piece}`", Fraction(0), seam + depth, "with"))
        if not done.before.cloths[piece].darts:
            held += tuple(_over_darts(done.before, name, piece, seam + depth))
        on = OnCloth(margins(ledger, seam, "seam", name, facing), windows, held)
        return folded_ends.with_ends(on, done.step, ledger, piece)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written = step.written
        name, facing = edge_of(written, "edge"), edge_of(written, "with")
        piece, _, side = facing.partition(".")
        if fault := _wrong_side(step, name, facing):
            return refused(bench, step, (piece,), fault)
        folded = folded_ends.folded_in(bench, step, piece, name)
        if not isinstance(folded, Bench):
            return refused(bench, step, (piece,), folded)
        args = {**written.args, "edge": _as(written.args["with"], "edge"), "to": _as(written.args["edge"], "to")}
        joined = join_edges(folded, step._replace(written=written._replace(args=args)), solved, room)
        done = joined._replace(step=step, before=bench)
        if done.refused:
            return done
        if fault := not_long(written, "edge", bench.edge(name)) or _free_edge(bench, step, solved, piece, side):
            return refused(bench, step, done.touches, fault)
        seam = done.after.seams[facing]._replace(state=State.ENCLOSED, turned=piece, topstitched=True, trapped=True)
        on = bench.edge(name).pieces[0]
        under = Sewn(StitchType.LOCK, seam.length, seam.copies, room.seam_stitch)
        # The facing's own seams lie between it and the cloth.
        own = [each for each in bench.seams.values() if {ply.piece for ply in each.plies} == {piece}]
        hidden = (each._replace(state=State.ENCLOSED) for each in own)
        return done._replace(
            after=done.after.with_seams(seam, *hidden).taken_above(name, step.mm("seam")).bearing(piece, on),
            sewn=(*done.sewn, under),
            handled=seam.length * seam.copies,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written = done.step.written
        edge = done.before.edge(edge_of(written, "edge"))
        if done.before.ring(edge):
            sew = "facing-lay-ring", "facing-sew-ring", "facing-understitch-ring"
        else:
            sew = "facing-lay-flat", "facing-sew-flat", "facing-understitch-flat"
        curved = any(done.before.cloths[piece].piece.ring is not None for piece in edge.pieces)
        catch = "facing-catch-ring" if done.before.ring(edge) else "facing-catch-flat"
        # A margin on a curve is too short or too long for where it is turned to: cut into, it opens or closes.
        clip = ("facing-clip",) if curved else ()
        values: Values = {
            "edge": edge_said(edge),
            "clips": Length(CLIPS, "about"),
            "clip-short": Length(CLIP_SHORT, "about"),
            "facing": Pieces((edge_at(written, "with").piece,)),
            "ends": Length(done.step.mm(folded_ends.ENDS)),
            "seam-width": Length(done.step.mm("seam")),
            "understitch": Length(UNDERSTITCH, "about"),
            "length": Length(edge.set_length),
            "stitch": Stitch(done.sewn[0].stitch),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        ends = ("facing-ends",) if done.step.mm(folded_ends.ENDS) else ()
        return Instructions(
            "facing-title",
            "facing-aim",
            tuple(Action(name, edge.copies) for name in (*ends, *sew[:2], *clip, sew[2], "facing-turn", catch)),
            values,
            (PINS_OUT, iron_hot(done, say), HAND_NEEDLE, *((SHEARS,) if curved else ())),
            (*iron_tools(done, say), Tool.HAND_NEEDLE),
            waits=dropped_first(done, edge),
            ironed=("facing-ends", "facing-turn"),
        )


def _over_darts(bench: Bench, name: str, facing: str, deep: Fraction) -> Iterator[Held]:
    """How a facing without darts lies, at its free edge, on cloth that darts draw in above; bottoms have none."""
    for each in bench.opened(name):
        piece, _, side = each.partition(".")
        if bench.cloths[piece].darts and side == "top":
            top = bench.edge(each).used
            at_edge, below = bench.cloth_at(piece, top), bench.cloth_at(piece, top + deep)
            yield Held("with", f"the facing `{facing}` of `{each}`", piece, at_edge, below, drawn=False, hangs=True)


def _as(arg: Arg, name: str) -> Arg:
    return arg._replace(name=name)


def _wrong_side(step: SolvedStep, name: str, facing: str) -> Fault | None:
    """A facing lies behind its edge, so both are sewn at the same side; a stack is of top edges."""
    side = name.rpartition(".")[2] if "." in name else "top"
    piece, _, along = facing.partition(".")
    if along == side and side in SIDES:
        return None
    if not along:
        return fault_at(
            step.written,
            "with",
            "FB340",
            f"`{facing}` is a stack, and a facing is one piece",
            help="name the facing's own edge",
        )
    return fault_at(
        step.written,
        "with",
        "FB340",
        f"the facing lies behind `{name}`, so its {side} edge is sewn there and not its {along} edge",
        mend=mends.write(step.written, "with", f"{piece}.{side if side in SIDES else 'top'}"),
    )


def _free_edge(bench: Bench, step: SolvedStep, solved: Solved, piece: str, side: str) -> Fault | None:
    free = bench.edge(f"{piece}.{SIDES[1 - SIDES.index(side)]}")
    cloth = solved.pieces[piece].piece.cloth.text
    if free.state is State.RAW and solved.materials[cloth].material.ravels:
        return fault_at(
            step.written,
            "with",
            "FB335",
            f"the free edge `{free.name}` of the facing is raw and `{cloth}` ravels",
            notes=("it can't be reached well once the facing is turned inside",),
            mend=mends.before(step.written, f"neaten: {{edge: {free.name}}}"),
        )
    return None


TECHNIQUE = Facing()
