"""Fold a bias strip round a cord and lay it along an edge, so that the seam of that edge shows a thin round ridge: piping.

What it does: folds the strip over the cord, sews close beside the cord, and bastes it along the seam line of an edge.
Edges before and after: the strip, on the bias where the edge curves, both its long edges raw, before; folded, its edges in the seam, after. The other
    edge stays as it is and is sewn by a later step.
Allowance: the seam, at both long edges of the strip. What shows of the strip goes round the cord.
Example: `- piping: {strip: cover, cord: cord, in: upper.bottom, seam: 1 cm}`
Source: a strip is as wide as the cord is round and twice the seam allowance: geometry, and common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault, Severity
from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge, Seam, State
from furbelow.garment.limits import width_of
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, One, Part, Pieces, Supply, Values, edge_said, flag
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step, SupplyKind
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
    Tool,
    Used,
    edge_of,
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.caught import left_raw, line_at, not_as_its_seam, not_on_a_long_edge
from furbelow.techniques.shared.cautions import held_out
from furbelow.techniques.shared.laying import margins, seam_window
from furbelow.techniques.shared.on_a_curve import straight_on_a_curve
from furbelow.techniques.shared.preconditions import (
    copies_differ,
    edge_not_ready,
    ends_turned,
    forms_differ,
    seam_too_narrow,
)

ROUND = Fraction(22, 7)
SLACK = Fraction(
    3
)  # so much more of the strip still folds round the cord without a hollow; house rule, maker to confirm


class Piped(NamedTuple):
    """The edge and the cord, in mm: how long, how thick, how far inside the cut edges of the folded strip it lies."""

    length: Fraction
    thick: Fraction
    inside: Fraction
    ring: bool


class Piping:
    name = "piping"
    about = "Fold a bias strip round a cord and lay it along an edge, so that the seam shows a thin round ridge."
    pictures = (Picture.PIPING,)
    parameters = {
        "strip": Parameter(
            "The piece that covers the cord, on the bias where the edge curves; its depth is what goes round.",
            Kind.PIECE,
        ),
        "cord": Parameter(
            "The cord, one of the materials.", Kind.MATERIAL, supplies=(SupplyKind.CORD, SupplyKind.TRIM)
        ),
        "in": Parameter("The edge on which it is laid, and which a later step sews.", Kind.EDGE),
        "seam": Parameter("The allowance of that seam.", Kind.LENGTH, "1 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        strip = word_of(step, "strip")
        return tuple(Allowance(strip, side, ("seam",)) for side in ("top", "bottom"))

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        strip, seam = word_of(done.step.written, "strip"), done.step.mm("seam")
        window = seam_window(solved, "seam", seam, (done.before.edge(edge_of(done.step.written, "in")).pieces[0],))
        return OnCloth(margins(ledger, seam, "seam", f"{strip}.top", f"{strip}.bottom"), (window,))

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say, seam = step.written, Phrasing(solved, room), step.mm("seam")
        strip, cord, name = word_of(written, "strip"), word_of(written, "cord"), edge_of(written, "in")
        for arg, needed in (("strip", f"{strip}.top"), ("strip", f"{strip}.bottom"), ("in", name)):
            if fault := edge_not_ready(bench, written, arg, needed):
                return refused(bench, step, (strip,), fault)
        base, upper, lower = bench.edge(name), bench.edge(f"{strip}.top"), bench.edge(f"{strip}.bottom")
        touches, thick = (*base.pieces, strip), width_of(solved, cord)
        wanted, shows = thick * ROUND, solved.pieces[strip].depth
        fault = (
            not_on_a_long_edge(step, "in", base)
            or forms_differ(bench, written, "in", upper, base)
            or copies_differ(written, "in", upper, base)
            or seam_too_narrow(solved, say, step, "seam", (strip,))
            or _lengths_differ(bench, step, say, upper, base)
            or not_as_its_seam(say, step, name)
            or left_raw(say, step, "strip", upper, base)
        )
        if fault or shows < wanted - 1:
            fault = fault or _does_not_go_round(written, say, strip, shows, wanted)
            return refused(bench, step, touches, fault)
        # A strip that was cut to the next step of the rounding could not be cut narrower.
        cut, narrowest = solved.pieces[strip].cut_depth, solved.cut_up_to(wanted + 2 * seam)
        wide = cut > max(narrowest, wanted + 2 * seam + SLACK)
        loose = [_does_not_go_round(written, say, strip, shows, wanted, Severity.WARNING)] if wide else []
        loose += straight_on_a_curve(bench, step, say, "strip", strip, base, seam + thick)
        own = [each for each in bench.seams.values() if {ply.piece for ply in each.plies} == {strip}]
        caught = Seam(
            f"{strip}.top",
            (upper.name, lower.name),
            (*upper.plies, *lower.plies),
            base.set_length,
            base.copies,
            seam,
            "301",
            State.NEATENED,
            turned=strip,
            trapped=True,
            on=line_at(bench, base, seam),
        )
        after = bench.with_edges(
            *(each._replace(state=State.SEWN, used=each.used + seam, held=True) for each in (upper, lower))
        ).with_seams(caught, *(each._replace(state=State.ENCLOSED) for each in own))
        after = after.bearing(strip, base.pieces[0]).joined(touches)
        length, copies = base.set_length, base.copies
        return Performed(
            step,
            bench,
            after,
            touches,
            tuple(loose),
            sewn=(
                Sewn(StitchType.LOCK, length, copies, room.gathering_stitch),  # round the cord
                Sewn(StitchType.LOCK, length, copies, room.gathering_stitch),  # on to the edge
            ),
            used=(Used(cord, length, copies, Part("use-piping", {"piece": Pieces(base.pieces)})),),
            setup=SetUp.STRAIGHT,
            pinned=length * copies,
            handled=length * copies,
            facts=Piped(length, thick, (cut - wanted) / 2, bench.ring(base)),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        facts, written, before = facts_of(done, Piped), done.step.written, done.before
        strip, base = word_of(written, "strip"), before.edge(edge_of(written, "in"))
        names = (
            "piping-fold",
            "piping-cover-ring" if facts.ring else "piping-cover-flat",
            "piping-lay",
            "piping-baste-ring" if facts.ring else "piping-baste-flat",
            "piping-next",
        )
        values: Values = {
            "strip": Pieces((strip,)),
            "in": edge_said(base),
            "piece": Pieces(base.pieces),
            "cord": Supply(word_of(written, "cord")),
            "ring": flag(facts.ring),
            "hold": One(say.room.hold_with, ("pins", "clips")),
            "seam-width": Length(done.step.mm("seam")),
            "thick": Length(facts.thick),
            "inside": Length(facts.inside, "about"),
            "length": Length(facts.length),
        }
        actions = tuple(Action(name, base.copies) for name in names)
        tools = (Tool.ZIP_FOOT,)
        return Instructions("piping-title", "piping-aim", actions, values, (held_out(say.room),), tools)


def _does_not_go_round(
    step: Step, say: Phrasing, strip: str, shows: Fraction, wanted: Fraction, severity: Severity = Severity.ERROR
) -> Fault:
    off = abs(shows - wanted)
    return fault_at(
        step,
        "strip",
        "FB336",
        f"`{strip}` shows {say.length(shows)} and the cord is {say.length(wanted)} round, {say.length(off)}"
        f" {'too little' if shows < wanted else 'too much'}",
        notes=(f"{say.length(wanted / ROUND)} x {float(ROUND):.3g} = {say.length(wanted)}",),
        mend=mends.Mend(f"make `{strip}` {say.length(wanted)} deep", None),
        severity=severity,
    )


def _lengths_differ(bench: Bench, step: SolvedStep, say: Phrasing, strip: Edge, base: Edge) -> Fault | None:
    if not say.solved.apart(strip.set_length, base.set_length):
        return None
    long, wanted, too, _ = say.missed(strip.set_length, base.set_length)
    return fault_at(
        step.written,
        "strip",
        "FB401",
        f"`{strip.pieces[0]}` is {long} and `{base.name}` is {wanted}, {too}",
        notes=ends_turned(bench, strip, base, say),
        help="make the strip as long as the edge that it lies along",
    )


TECHNIQUE = Piping()
