"""Finish an edge with a trim laid over the turned-up raw edge.

What it does: turns the edge up to the right side and sews a trim over it, so that the raw edge is covered.
Edges before and after: raw or neatened before; hemmed, with the trim on it, after.
Allowance: the turn, at this edge. The trim needs the length of the edge, and the overlap where the edge is a ring.
Example: `- edge with trim: {edge: flounce.bottom, trim: edging, turn up: 5 mm, overlap: 2 cm}`
Source: trim sewn 5 mm from the edge is common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, State
from furbelow.garment.limits import width_of
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    EdgesIn,
    Kind,
    OwnAction,
    OwnInstructions,
    Parameter,
    Performed,
    Picture,
    SetUp,
    Sewn,
    Used,
    allowances_at,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.join_ends import side_seam
from furbelow.techniques.shared.preconditions import edge_not_ready

FIRST_ROW = Fraction(5)  # from the fold; common practice, no source
CAUGHT = Fraction(2)  # of the turn lies at least so far past the first row, or the needle misses it
SECOND_ROW = Fraction(2)  # below the upper edge of the trim
WIDE = Fraction(10)  # a wider trim needs a second row, or its upper edge stands off
STRETCH = Fraction(100)
COVER = Fraction(2)  # the trim reaches at least so far past the raw edge


def first_row(turn: Fraction) -> Fraction:
    """How far from the fold the first row is sewn, so that it catches a turn of this depth."""
    return min(FIRST_ROW, turn - CAUGHT) if turn > CAUGHT else turn / 2


class EdgeWithTrim:
    name = "edge with trim"
    about = "Turn an edge up to the right side and sew a trim over the raw edge."
    pictures = (Picture.PIECES, Picture.TRIMMED_EDGE)
    parameters = {
        "edge": Parameter("The edge to finish.", Kind.EDGE),
        "trim": Parameter("The trim, one of the materials.", Kind.MATERIAL),
        "turn up": Parameter("How much cloth is turned up under the trim.", Kind.LENGTH, "1 cm"),
        "overlap": Parameter("How far the trim's ends overlap on a ring.", Kind.LENGTH, "2 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return allowances_at(edges_in(step.args["edge"].value), "turn up")  # type: ignore[arg-type]

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name = step.written, edge_of(step.written, "edge")
        if fault := edge_not_ready(bench, written, "edge", name):
            return refused(bench, step, (), fault)
        edge, trim, turn = bench.edge(name), word_of(written, "trim"), step.mm("turn up")
        width = width_of(solved, trim)
        if width < turn + COVER:
            say = Phrasing(solved, room)
            return refused(
                bench,
                step,
                edge.pieces,
                fault_at(
                    written,
                    "turn up",
                    "FB310",
                    f"the trim `{trim}` is {say.length(width)} wide and can't cover a turn of {say.length(turn)},"
                    f" {say.length(turn + COVER - width)} too narrow",
                    notes=(
                        f"it has to reach {say.length(COVER)} past the raw edge: {say.length(turn)} + {say.length(COVER)}"
                        f" = {say.length(turn + COVER)}",
                    ),
                    help="turn up less, or choose a wider trim",
                ),
            )
        overlap = step.mm("overlap") if bench.ring(edge) else Fraction(0)
        after = bench.with_edges(edge._replace(state=State.HEMMED, used=edge.used + turn, trim=trim))
        what = f"trim on the {solved.pieces[edge.pieces[0]].label}"
        rows = 2 if width > WIDE else 1
        return Performed(
            step,
            bench,
            after,
            edge.pieces,
            sewn=tuple(
                Sewn(StitchType.LOCK, edge.set_length, edge.copies, room.seam_stitch, what) for _ in range(rows)
            ),
            used=(Used(trim, edge.set_length + overlap, edge.copies, what),),
            setup=SetUp.STRAIGHT,
            handled=edge.set_length * edge.copies,
            facts={"rows": rows, "overlap": overlap, "width": width},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        edge = done.before.edge(edge_of(done.step.written, "edge"))
        side = edge.name.rpartition(".")[2]
        trim = say.solved.materials[word_of(done.step.written, "trim")].material
        ribbon = trim.about or trim.name.replace("_", " ")
        turn, overlap = done.step.mm("turn up"), done.facts["overlap"]
        row = say.about(first_row(turn))
        where = say.edge(edge.pieces[0], side)
        long, stitch = say.length(edge.set_length), say.stitch(done.sewn[0].stitch)
        start = side_seam(done.before, edge.pieces, say) if overlap else "the left end"
        back = "a few stitches back at both ends"
        actions = [
            OwnAction(
                f"Begin at {start}: lay the raw end of the {ribbon} there, right side up, over {where}.",
                check="If one of its two edges is straight, that edge is up, and the shaped edge is down.",
            ),
            OwnAction(
                f"Fold {where} up {say.length(turn)} to the right side under the {ribbon}, a stretch of"
                f" {say.about(STRETCH)} at a time as you sew.",
                check=f"The lower edge of the {ribbon} is level with the fold.",
            ),
            OwnAction(
                f"Sew {row} from the fold, {stitch}, a few stitches back at the start."
                f" Stop {say.about(STRETCH)} before you come round to the start, the needle down."
                if overlap
                else f"Sew {row} from the fold, {stitch}, {long} in all, {back}.",
                check="The raw edge is hidden under the trim everywhere.",
                remedy="Where it peeps out, unpick that stretch, fold a little deeper and sew it again.",
            ),
        ]
        if overlap:
            actions += [
                OwnAction(f"Cut the {ribbon} {say.length(overlap)} past its start."),
                OwnAction(
                    f"Fold {say.length(overlap / 2)} of the cut end under, and lay the fold {say.length(overlap / 2)} over the"
                    " start.",
                    check="The fold lies straight across, and no raw end shows.",
                    remedy="If it does not reach, unpick a hand's width and lay the trim again with less pull.",
                ),
                OwnAction(
                    f"Sew on to the fold, and a few stitches back: {long} in all.",
                    check=f"The join of the trim lies at {start}.",
                ),
            ]
        if done.facts["rows"] == 2:
            end = "Let the end overlap the start by three stitches." if overlap else f"Sew {back}."
            actions.append(
                OwnAction(
                    f"Sew a second row {say.about(SECOND_ROW)} below the upper edge of the {ribbon}, {stitch}, {long}. {end}",
                )
            )
        if overlap:
            actions.append(
                OwnAction(
                    f"Sew the folded end down across the {ribbon}, {say.about(SECOND_ROW)} from its fold, {back}."
                )
            )
        actions[-1] = actions[-1]._replace(chain=say.again(edge.copies))
        title = f"Edge the {say.piece(edge.pieces[0])} with {ribbon}"
        return OwnInstructions(title, f"{where[0].upper()}{where[1:]} is finished and cannot fray.", tuple(actions))


TECHNIQUE = EdgeWithTrim()
