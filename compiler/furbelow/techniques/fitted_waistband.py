"""Sew a flat band to an open top edge and give it a fastening.

What it does: sews the band to the edge, closes its ends, folds it over, stitches it down and adds the fastening.
Edges before and after: edge open, gathered, pleated or flat to the band's length, before; all enclosed after.
Allowance: the seam, at all four edges of the band and at the skirt; the band is folded, so its depth is cut twice.
Example: `- fitted waistband: {band: waistband, to: skirt.top, seam: 1 cm, overlap: 3 cm, fasten: button}`
Source: common practice, no source. Fasteners that come off choke small children: CEN/TR 16792:2014.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, Edge, Opening, Seam, State
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Allowance, Solved, SolvedStep
from furbelow.garment.spec import Step
from furbelow.garment.stitch import StitchType
from furbelow.garment.technique import (
    CautionKind,
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
    word_of,
)
from furbelow.garment.tolerance import folded_off
from furbelow.garment.workroom import Workroom
from furbelow.techniques.attach import taken
from furbelow.techniques.join_ends import PINS
from furbelow.techniques.press import iron_caution
from furbelow.techniques.shared.preconditions import edge_not_ready

BUTTON, HOOK, SNAPS, TIES = "button", "hook and bar", "snaps", "ties"
SMALL_PARTS = (
    CautionKind.CHILD,
    "A small child can choke on a loose fastener. Sew each one on so that a hard pull does not move it, or use ties or"
    " elastic.",
)
NARROWEST = Fraction(15)  # overlap that still carries a fastening; house rule, maker to confirm
EDGE_STITCH = Fraction(2)
BUTTONHOLE = Fraction(25)


class FittedWaistband:
    name = "fitted waistband"
    about = "Sew a flat band with a fastening to an open top edge."
    pictures = (Picture.PIECES, Picture.FITTED_BAND)
    parameters = {
        "band": Parameter("The piece that becomes the band: as long as the waist and the overlap.", Kind.PIECE),
        "to": Parameter("The open top edge it is sewn to.", Kind.EDGE),
        "seam": Parameter("Seam allowance at the skirt and all round the band.", Kind.LENGTH, "1 cm"),
        "overlap": Parameter("How far the closed band overlaps; that of the placket.", Kind.LENGTH, "3 cm"),
        "fasten": Parameter("What closes it.", (BUTTON, HOOK, SNAPS, TIES), BUTTON),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        band = word_of(step, "band")
        return (
            Allowance(band, "top", ("seam",)),
            Allowance(band, "bottom", ("seam",), doubles=True),
            Allowance(band, "start", ("seam",)),
            Allowance(band, "end", ("seam",)),
            *allowances_at(edges_in(step.args["to"].value), "seam"),  # type: ignore[arg-type]
        )

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        band, to = word_of(written, "band"), edge_of(written, "to")
        if fault := edge_not_ready(bench, written, "to", to):
            return refused(bench, step, (band,), fault)
        edge, seam = bench.edge(to), step.mm("seam")
        touches = (*edge.pieces, band)
        if fault := _not_open(bench, step, solved, edge, band):
            return refused(bench, step, touches, fault)
        for side in ("top", "bottom", "start", "end"):
            if fault := edge_not_ready(bench, written, "band", f"{band}.{side}"):
                return refused(bench, step, touches, fault)
        if fault := _does_not_match(bench, step, say, solved, edge, band):
            return refused(bench, step, touches, fault)
        whole, depth, overlap = solved.pieces[band].length, solved.pieces[band].depth, step.mm("overlap")
        own = {side: bench.edge(f"{band}.{side}") for side in ("top", "bottom", "start", "end")}
        after = bench.with_edges(
            *(each._replace(state=State.ENCLOSED, used=each.used + seam) for each in own.values()),
            edge._replace(state=State.ENCLOSED, used=edge.used + seam, held=True, set_length=whole),
        ).with_cloths(bench.cloths[band]._replace(folded=True))
        after = after.with_edges(after.edge(f"{band}.bottom")._replace(set_length=whole, cloth_length=whole))
        after = taken(after, edge, seam).joined(touches)
        joins = [each for each in bench.seams.values() if {ply.piece for ply in each.plies} == {band}]
        after = after.with_seams(
            Seam(
                to,
                (to, f"{band}.bottom"),
                (*edge.plies, *own["bottom"].plies),
                whole,
                1,
                seam,
                "301",
                State.ENCLOSED,
                turned=band,
            ),
            *(each._replace(state=State.ENCLOSED) for each in joins),
        )
        opened = bench.openings.get(to)
        waist = whole - overlap
        if opened:
            opening = opened._replace(length=opened.length - seam)
        else:
            # Flat cloth is open from top to hem: it is wrapped round, and nothing has to pass through.
            long = max(after.depth(piece) for piece in edge.pieces)
            opening = Opening(to, edge.pieces[0], long, overlap, waist + 2 * long)
        after = after.with_opening(opening._replace(band=band, waist=waist, closed_by=word_of(written, "fasten")))
        buttonholes = (
            (Sewn(StitchType.ZIGZAG, 2 * BUTTONHOLE, 1, Fraction(1, 2), "the buttonhole"),)
            if word_of(written, "fasten") == BUTTON
            else ()
        )
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=(
                Sewn(StitchType.LOCK, whole, 1, room.seam_stitch, "sewing the waistband on"),
                Sewn(StitchType.LOCK, depth + seam, 2, room.seam_stitch, "closing the ends of the waistband"),
                Sewn(StitchType.LOCK, whole, 1, room.seam_stitch, "stitching the waistband down"),
                *buttonholes,
            ),
            setup=SetUp.STRAIGHT,
            pinned=2 * whole,
            handled=whole,
            facts={"length": whole, "waist": waist, "depth": depth},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        written, facts, step = done.step.written, done.facts, done.step
        band, edge = word_of(written, "band"), done.before.edge(edge_of(written, "to"))
        the, where = f"the {say.piece(band)}", say.edges(edge.pieces, "top")
        seam, lap, length = say.length(step.mm("seam")), say.length(step.mm("overlap")), say.length(facts["length"])
        pin, depth = "clip" if say.room.hold_with == "clips" else "pin", say.length(facts["depth"])
        fasten = word_of(written, "fasten")
        wide = say.length(max(facts["waist"] / 200, Fraction(5)))
        close = {
            BUTTON: "Sew a buttonhole in the end that lies on top, the button's width and thickness long, and sew the button"
            " to the end beneath.",
            HOOK: "Sew the hook inside the end that lies on top, and the bar to the end beneath.",
            SNAPS: f"Sew the snaps to both ends, {say.about(Fraction(10))} from their edges.",
            TIES: "Leave both ends as they are: the ties are sewn to them.",
        }[fasten]
        actions = (
            OwnAction(f"Fold one long edge of {the} {seam} to the wrong side and press the fold."),
            OwnAction(
                f"Mark both in quarters: every {say.length(facts['length'] / 4)}, on {the} from {seam} inside its ends."
            ),
            OwnAction(
                f"Lay the unfolded edge of {the} on {where}, right sides together, marks on marks, {the} standing out {seam} at"
                f" both ends; {pin} it.",
                check=f"The edge measures {length} between the ends.",
                tolerance=f"{say.about(max(facts['length'] / 200, Fraction(5)))} more or less",
                remedy="Too long: draw the gathers in or lay pleats deeper. Too short: let them out.",
            ),
            OwnAction(
                f"Sew {seam} from the edge, {length}, {say.stitch(done.sewn[0].stitch)}.",
                check="Every layer is caught.",
            ),
            OwnAction(f"Fold {the} in half, right sides together, and sew each end {seam} from its edge."),
            OwnAction(
                f"Trim the corners, turn {the} right side out and press it.",
                check=f"It is {depth} deep.",
                tolerance=f"{say.off(folded_off())} more or less",
                remedy="Press the fold again where it wanders.",
            ),
            OwnAction(
                f"Lay its folded edge on the stitch line inside, {pin} it and sew {say.about(EDGE_STITCH)} from the fold, {length}.",
                check="The fold is caught all along.",
                remedy="Catch what was missed by hand.",
            ),
            OwnAction(
                close,
                check=""
                if fasten == TIES
                else f"Closed with an overlap of {lap} the band measures {say.length(facts['waist'])}.",
                tolerance="" if fasten == TIES else f"{wide} more or less",
                remedy="" if fasten == TIES else "Move the button, bar or snap.",
            ),
        )
        return OwnInstructions(
            f"Sew on {the}",
            f"The waist closes to {say.length(facts['waist'])} and opens for the hips.",
            actions,
            (PINS, iron_caution(done, say), *(() if fasten == TIES else (SMALL_PARTS,))),
        )


def _not_open(bench: Bench, step: SolvedStep, solved: Solved, edge: Edge, band: str) -> Fault | None:
    written = step.written
    if bench.ring(edge):
        return fault_at(
            written,
            "to",
            "FB347",
            f"`{edge.name}` is closed all round, and a fitted band has no opening to close",
            help="put a `placket` before this step, or use a `band casing` with elastic",
        )
    if bench.cloths[band].ring:
        return fault_at(
            written,
            "band",
            "FB304",
            f"`{band}` is closed to a ring while `{edge.name}` is open",
            help="leave the ends of the band open",
        )
    if edge.copies > 1:
        return fault_at(
            written,
            "to",
            "FB305",
            f"there are {edge.copies} of `{edge.name}` and 1 band",
            help="stack the layers first",
        )
    if edge.slit:
        return None
    for piece in edge.pieces:
        cloth = solved.pieces[piece].piece.cloth.text
        for side in ("start", "end"):
            if bench.edge(f"{piece}.{side}").state is State.RAW and solved.materials[cloth].material.ravels:
                return fault_at(
                    written,
                    "to",
                    "FB335",
                    f"the {side} edge of `{piece}` is raw beside the band and `{cloth}` ravels",
                    help=f"put `- narrow hem: {{edge: {piece}.{side}}}` before this step",
                )
    return None


def _does_not_match(
    bench: Bench, step: SolvedStep, say: Phrasing, solved: Solved, edge: Edge, band: str
) -> Fault | None:
    written, overlap = step.written, step.mm("overlap")
    opened = bench.openings.get(edge.name)
    # The strip's cut depth is rounded up, so its overlap may come out a little deeper.
    if opened and abs(opened.overlap - overlap) > solved.rounding:
        return fault_at(
            written,
            "overlap",
            "FB347",
            f"the band overlaps {say.length(overlap)} and its placket {say.length(opened.overlap)}",
            help=f"write `overlap: {say.length(opened.overlap)}`",
        )
    fasten = word_of(written, "fasten")
    if fasten != TIES and overlap < NARROWEST:
        return fault_at(
            written,
            "overlap",
            "FB347",
            f"an overlap of {say.length(overlap)} is too narrow for {fasten}, {say.length(NARROWEST - overlap)} short",
            help=f"make the overlap {say.length(NARROWEST)} or more",
        )
    long, gap = flat_length(bench, edge), Fraction(0)
    gap = long - (bench.edge(f"{band}.bottom").set_length - 2 * step.mm("seam"))
    if abs(gap) > solved.rounding:
        return fault_at(
            written,
            "to",
            "FB401",
            f"`{edge.name}` is {say.length(long)} and the band is {say.length(long - gap)} between its end seams,"
            f" {say.length(abs(gap))} {'too long' if gap > 0 else 'too short'}",
            help=f"gather or pleat `{edge.name}` to `{band}.length`"
            if gap > 0
            else f"make `{band}` shorter or the skirt fuller",
        )
    return None


def flat_length(bench: Bench, edge: Edge) -> Fraction:
    """How long an edge of flat cloth is between its hemmed ends, in mm; a drawn edge has the length it was drawn to."""
    if edge.gathered or edge.slit or "." not in edge.name:
        return edge.set_length
    ends = (bench.edge(f"{edge.pieces[0]}.{side}") for side in ("start", "end"))
    return edge.set_length - sum((end.used for end in ends if end.state is State.HEMMED), Fraction(0))


TECHNIQUE = FittedWaistband()
