"""Lay a gathered or flat strip along an edge, so that the seam of that edge catches it: a ruffle in a seam.

What it does: lays the strip on the right side of the piece, cut edges level, and bastes it inside the seam allowance.
Edges before and after: the strip's edge raw or neatened and as long as the other before, in the seam after; the other edge stays
    as it is and is sewn by a later step.
Allowance: the seam, at the strip. The other edge gives its own when it is sewn.
Example: `- catch in: {strip: ruffle.top, in: upper.bottom, seam: 1 cm}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge, Seam, State
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Pieces, Values
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.technique import (
    Action,
    EdgesIn,
    Instructions,
    Kind,
    Parameter,
    Performed,
    Picture,
    allowances_at,
    edge_at,
    edge_of,
    facts_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.caught import INSIDE, left_raw, line_at, not_as_its_seam, not_on_a_long_edge
from furbelow.techniques.shared.cautions import held_out
from furbelow.techniques.shared.gathers import tails_hang, tails_off
from furbelow.techniques.shared.joined_edges import drawn_to
from furbelow.techniques.shared.laid_edges import edges_said, marks_on
from furbelow.techniques.shared.laying import held_in_seam, margins
from furbelow.techniques.shared.preconditions import (
    copies_differ,
    edge_not_ready,
    forms_differ,
    not_long,
    one_unit,
    seam_too_narrow,
)
from furbelow.techniques.shared.row_on_cloth import sew_row


class CaughtIn(NamedTuple):
    """How long the edge is, how far from it the basting row lies, and how far the strip comes out of the seam, in mm."""

    length: Fraction
    row: Fraction
    hangs: Fraction


class CatchIn:
    name = "catch in"
    about = "Lay a gathered or flat strip along an edge, so that the seam of that edge catches it."
    pictures = (Picture.CAUGHT_STRIP,)
    parameters = {
        "strip": Parameter("The edge of the strip that goes into the seam, as long as the other.", Kind.EDGE),
        "in": Parameter("The edge on which it is laid, and which a later step sews.", Kind.EDGE),
        "seam": Parameter("The allowance of that seam.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(edge_at(step, "strip")), "seam")

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, seam = done.step.written, done.step.mm("seam")
        edge, base = (done.before.edge(edge_of(written, key)) for key in ("strip", "in"))
        return OnCloth(
            margins(ledger, seam, "seam", edge.name), held_in_seam(done, solved, room, "seam", seam, edge, base)
        )

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say, seam = step.written, Phrasing(solved, room), step.mm("seam")
        names = edge_of(written, "strip"), edge_of(written, "in")
        for arg, name in zip(("strip", "in"), names, strict=True):
            if fault := edge_not_ready(bench, written, arg, name):
                return refused(bench, step, (), fault)
        edge, base = bench.edge(names[0]), bench.edge(names[1])
        touches = (*edge.pieces, *base.pieces)
        fault = (
            one_unit(bench, written, "in", *names, "check which edge the strip is meant for")
            or not_on_a_long_edge(step, "in", base)
            or not_long(written, "strip", edge)
            or forms_differ(bench, written, "in", edge, base)
            or copies_differ(written, "in", edge, base)
            or seam_too_narrow(solved, say, step, "seam", edge.pieces)
            or _lengths_differ(step, say, edge, base)
            or not_as_its_seam(say, step, base.name)
            or left_raw(say, step, "strip", edge, base)
        )
        if fault:
            return refused(bench, step, touches, fault)
        length = base.set_length
        caught = Seam(
            edge.name,
            (edge.name,),
            edge.plies,
            length,
            edge.copies,
            seam,
            "301",
            State.NEATENED,
            trapped=True,
            on=line_at(bench, base, seam),
        )
        done = sew_row(bench, step, solved, room, edge, base, caught, room.gathering_stitch)
        hangs = max(done.after.depth(piece) for piece in edge.pieces)
        return done._replace(facts=CaughtIn(length, seam - INSIDE, hangs))

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts, before = done.step.written, facts_of(done, CaughtIn), done.before
        edge, base = before.edge(edge_of(written, "strip")), before.edge(edge_of(written, "in"))
        ring, tails = before.ring(base), tails_hang(edge)
        below = base.name.endswith(".bottom")
        row = (
            "catch-in-lay-below" if below else "catch-in-lay-above",
            "catch-in-pin",
            *((tails_off(edge),) if tails else ()),
            "catch-in-baste-ring" if ring else "catch-in-baste-flat",
        )
        actions = (*marks_on(before, say, base, edge), *(Action(message, base.copies) for message in row))
        values: Values = {
            **edges_said(before, edge, base, say),
            "in": Pieces(base.pieces),
            "folds": One("gathers" if edge.gathered else "flat", ("gathers", "flat")),
            "seam-width": Length(done.step.mm("seam")),
            "row": Length(facts.row),
            "rest": Length(INSIDE),
            "length": Length(facts.length),
            "hangs": Length(facts.hangs),
        }
        return Instructions("catch-in-title", "catch-in-aim", actions, values, (held_out(say.room),))


def _lengths_differ(step: SolvedStep, say: Phrasing, edge: Edge, base: Edge) -> Fault | None:
    gap = edge.set_length - base.set_length
    if not say.solved.apart(edge.set_length, base.set_length):
        return None
    long, wanted, too, subtracted = say.missed(edge.set_length, base.set_length)
    return fault_at(
        step.written,
        "strip",
        "FB401",
        f"`{edge.name}` is {long} and `{base.name}` is {wanted}, {too}",
        notes=(subtracted,),
        mend=drawn_to(step.written, edge, base.set_length, f"to: {base.name}")
        if gap > 0
        else mends.Mend("make the strip as long as that edge, or gather it to it", None),
    )


TECHNIQUE = CatchIn()
