"""Bind an edge with a strip of cloth, one of the pieces.

What it does: sews the strip to the edge, folds it around and stitches its turned edge down.
Edges before and after: strip and edge of one length and form, raw or neatened, before; all enclosed after.
Allowance: the seam at the edge and at the strip, the turn at the strip's other edge; the strip is folded, so what shows
    of it is cut twice.
Example: `- binding strip: {strip: binding, edge: cape.bottom, seam: 8 mm, turn under: 6 mm}`
Source: seam class 3 (bound) in BS 3870:1991; banding cut 2 x depth + 1/2 in: Baldt, Clothing for Women, 1916.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Seam, State
from furbelow.garment.lying import Ledger, Lies, OnCloth
from furbelow.garment.message import Length, One, Pieces, Stitch, Values, edge_said
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
    edge_at,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.tolerance import folded_off
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared import folded_ends
from furbelow.techniques.shared.cautions import PINS_OUT
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.laying import bare_edge, margins, seam_window, turn_window
from furbelow.techniques.shared.on_a_curve import straight_on_a_curve
from furbelow.techniques.shared.preconditions import copies_differ, edge_not_ready, ends_turned, forms_differ, not_long
from furbelow.techniques.shared.ring_drop import dropped_first
from furbelow.techniques.shared.stacks import taken

EDGE_STITCH = Fraction(2)


class BindingStrip:
    name = "binding strip"
    about = "Bind an edge with a folded strip cut from cloth."
    pictures = (Picture.PIECES, Picture.BINDING_STRIP)
    parameters = {
        "strip": Parameter("The piece that becomes the binding; its depth is what shows on one side.", Kind.PIECE),
        "edge": Parameter("The edge to bind: top, bottom or a stack.", Kind.EDGE),
        "seam": Parameter(
            "Seam allowance at the edge and the strip; as deep as what shows, the edge fills the fold.",
            Kind.LENGTH,
            "8 mm",
        ),
        "turn under": Parameter("Turn at the strip's other edge.", Kind.LENGTH, "6 mm"),
        folded_ends.ENDS: folded_ends.PARAMETER,
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        strip = word_of(step, "strip")
        return (
            Allowance(strip, "top", ("seam",)),
            Allowance(strip, "bottom", ("turn under",), doubles=True),
            *folded_ends.takes(strip),
            *allowances_at(edges_in(edge_at(step, "edge")), "seam"),
        )

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, seam, under = done.step.written, done.step.mm("seam"), done.step.mm("turn under")
        strip, name = word_of(written, "strip"), edge_of(written, "edge")
        folded = tuple(
            ledger.at_edge(f"{strip}.bottom", Lies.MARGIN, "the turned edge", Fraction(0), under, "turn under")
        )
        windows = (
            seam_window(solved, "seam", seam, done.touches),
            turn_window(
                "turn under",
                "a turn",
                under,
                into=solved.pieces[strip].depth,
                bare=bare_edge(ledger, solved, f"{strip}.bottom"),
            ),
        )
        on = OnCloth((*margins(ledger, seam, "seam", name, f"{strip}.top"), *folded), windows)
        return folded_ends.with_ends(on, done.step, ledger, strip)

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        strip, name = word_of(written, "strip"), edge_of(written, "edge")
        for arg, needed in (("strip", f"{strip}.top"), ("strip", f"{strip}.bottom"), ("edge", name)):
            if fault := edge_not_ready(bench, written, arg, needed):
                return refused(bench, step, (strip,), fault)
        before, bench_or_fault = bench, folded_ends.folded_in(bench, step, strip, name)
        if not isinstance(bench_or_fault, Bench):
            return refused(bench, step, (strip,), bench_or_fault)
        bench = bench_or_fault
        edge, upper, lower = bench.edge(name), bench.edge(f"{strip}.top"), bench.edge(f"{strip}.bottom")
        touches = (*edge.pieces, strip)
        fault = (
            not_long(written, "edge", edge)
            or forms_differ(bench, written, "edge", upper, edge)
            or copies_differ(written, "edge", upper, edge)
        )
        if fault:
            return refused(bench, step, touches, fault)
        seam, shows = step.mm("seam"), solved.pieces[strip].depth
        if solved.apart(upper.set_length, edge.set_length):
            long, wanted, too, _ = say.missed(upper.set_length, edge.set_length)
            return refused(
                bench,
                step,
                touches,
                fault_at(
                    written,
                    "strip",
                    "FB401",
                    f"`{strip}` is {long} and `{name}` is {wanted}, {too}",
                    notes=ends_turned(bench, upper, edge, say),
                    help="make the strip as long as the edge that it binds",
                ),
            )
        if seam > shows:
            return refused(
                bench,
                step,
                touches,
                fault_at(
                    written,
                    "seam",
                    "FB336",
                    f"the margin of {say.length(seam)} is deeper than the binding of {say.length(shows)},"
                    f" {say.length(seam - shows)} too deep to fold around it",
                    help="make the seam narrower or the binding deeper",
                ),
            )
        after = bench.with_edges(
            edge._replace(state=State.ENCLOSED, used=edge.used + seam, held=True),
            upper._replace(state=State.ENCLOSED, used=upper.used + seam),
            lower._replace(state=State.ENCLOSED, used=lower.used + step.mm("turn under")),
        ).with_cloths(bench.cloths[strip]._replace(folded=True))
        after = taken(after, edge, seam).joined(touches)
        own = [each for each in bench.seams.values() if {ply.piece for ply in each.plies} == {strip}]
        margin = Seam(
            name if name not in bench.seams else f"{strip}.top",
            (name, upper.name),
            (*edge.plies, *upper.plies),
            edge.set_length,
            edge.copies,
            seam,
            "301",
            State.ENCLOSED,
            turned=strip,
        )
        after = after.with_seams(margin, *(each._replace(state=State.ENCLOSED) for each in own))
        length, copies = edge.set_length, edge.copies
        return Performed(
            step,
            before,
            after,
            touches,
            tuple(straight_on_a_curve(bench, step, say, "strip", strip, edge, shows)),
            sewn=(
                Sewn(StitchType.LOCK, length, copies, room.seam_stitch),
                Sewn(
                    StitchType.LOCK,
                    length,
                    copies,
                    room.seam_stitch,
                ),
            ),
            setup=SetUp.STRAIGHT,
            pinned=2 * length * copies,
            handled=length * copies,
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, step = done.step.written, done.step
        strip, edge = word_of(written, "strip"), done.before.edge(edge_of(written, "edge"))
        ring = done.before.ring(edge)
        messages = (
            "binding-strip-press",
            *(("binding-strip-ends",) if step.mm(folded_ends.ENDS) else ()),
            "binding-strip-lay",
            "binding-strip-sew-ring" if ring else "binding-strip-sew-flat",
            "binding-strip-fold",
            "binding-strip-stitch-down-ring" if ring else "binding-strip-stitch-down-flat",
        )
        values: Values = {
            "strip": Pieces((strip,)),
            "edge": edge_said(edge),
            "turn": Length(step.mm("turn under")),
            "ends": Length(step.mm(folded_ends.ENDS)),
            "seam-width": Length(step.mm("seam")),
            "shows": Length(say.solved.pieces[strip].depth),
            "off": Length(folded_off(), "off"),
            "edge-stitch": Length(EDGE_STITCH, "about"),
            "length": Length(edge.set_length),
            "stitch": Stitch(done.sewn[0].stitch),
            "hold": One(say.room.hold_with, ("pins", "clips")),
        }
        return Instructions(
            "binding-strip-title",
            "binding-strip-aim",
            tuple(Action(name, edge.copies) for name in messages),
            values,
            (PINS_OUT, iron_hot(done, say)),
            iron_tools(done, say),
            waits=dropped_first(done, edge),
            ironed=("binding-strip-ends", "binding-strip-press"),
        )


TECHNIQUE = BindingStrip()
