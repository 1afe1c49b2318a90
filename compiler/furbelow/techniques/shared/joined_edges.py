"""Two edges of one length sewn together, carried out: what every seam that does so has in common."""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment import mends
from furbelow.garment.bench import Bench, Edge, Seam, State
from furbelow.garment.limits import EASE_SHARE
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import Performed, SetUp, Sewn, edge_of, fault_at, refused
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.gathers import knots_of, tails_hang
from furbelow.techniques.shared.preconditions import (
    copies_differ,
    edge_not_ready,
    ends_turned,
    forms_differ,
    margin_state,
    one_unit,
    seam_too_narrow,
)
from furbelow.techniques.shared.stacks import taken


def join_edges(bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
    """A seam of the step's `seam` through the edges `edge` and `to`; or refused.

    Fails: FB301, FB302, FB303, FB304, FB305, FB317, FB326, FB353, FB401.
    """
    written = step.written
    names = edge_of(written, "edge"), edge_of(written, "to")
    for arg, name in zip(("edge", "to"), names, strict=True):
        if fault := edge_not_ready(bench, written, arg, name):
            return refused(bench, step, (), fault)
    edge, to = bench.edge(names[0]), bench.edge(names[1])
    touches = (*edge.pieces, *to.pieces)
    fault = (
        one_unit(bench, written, "to", *names, "check which two edges this seam is meant to join")
        or forms_differ(bench, written, "to", edge, to)
        or copies_differ(written, "to", edge, to)
        or seam_too_narrow(solved, Phrasing(solved, room), step, "seam", touches)
    )
    if fault:
        return refused(bench, step, touches, fault)
    say, gap = Phrasing(solved, room), edge.set_length - to.set_length
    if solved.apart(
        edge.set_length, to.set_length
    ):  # cut lengths are rounded up each by itself: one step between them is eased in
        what = "gathered to" if edge.gathered else "long"
        long, wanted, too, subtracted = say.missed(edge.set_length, to.set_length)
        return refused(
            bench,
            step,
            touches,
            fault_at(
                written,
                "edge",
                "FB401",
                f"`{edge.name}` is {long} {what} and `{to.name}` is {wanted}, {too}",
                notes=(subtracted, *ends_turned(bench, edge, to, say)),
                mend=drawn_to(written, edge, to.set_length, f"to: {to.name}")
                if gap > 0 or edge.gathered
                else drawn_to(written, to, edge.set_length, f"to: {edge.name}"),
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
    return Performed(
        step,
        bench,
        after,
        touches,
        sewn=(Sewn(StitchType.LOCK, to.set_length, to.copies, room.seam_stitch),),
        setup=SetUp.STRAIGHT,
        pinned=to.set_length * to.copies,
        thread_ends=knots_of(edge) if tails_hang(edge) else 0,
    )


def drawn_to(written: Step, edge: Edge, wanted: Fraction, target: str) -> mends.Mend:
    """How an edge that is too long for what it is sewn to comes to its length: eased in where it is little, else gathered;
    where it is drawn in already, by that step.

    wanted: that length in mm. target: the argument that says it, such as `to: yoke.bottom`.
    """
    if edge.gathered:
        return mends.Mend(f"draw `{edge.name}` in with `{target}`", None)
    little = edge.set_length - wanted <= wanted * EASE_SHARE
    verb, row = ("ease", "ease in") if little else ("gather", "gather")
    said = f"{verb} `{edge.name}`{' in' if little else ''} before this step, with `{target}`"
    return mends.before(written, f"{row}: {{edge: {edge.name}, {target}}}", said)
