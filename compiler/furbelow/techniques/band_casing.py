"""Sew a separate band to the top edge so that it encloses the seam and makes a casing for elastic.

What it does: sews one long edge of the band to the inside of the skirt, folds the band over and topstitches its other
    edge to the outside, leaving a gap for the elastic.
Edges before and after: band and skirt are rings of one length before; both edges enclosed, with an open casing, after.
Allowance: the seam, at both long edges of the band and at the skirt; the band is folded, so its depth is cut twice.
Example: `- band casing: {band: waistband, to: skirt_top, seam: 1 cm, gap: 5 cm}`
Source: a separate casing is cut 2 x finished + 2 cm, and 2 cm longer (home sewing practice, published 2010s).
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment.bench import Bench, Casing, Seam, State
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
    allowances_at,
    edge_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.tolerance import folded_off, round_off
from furbelow.garment.workroom import Workroom
from furbelow.techniques.attach import taken
from furbelow.techniques.join_ends import PINS, side_seam
from furbelow.techniques.press import iron_caution, iron_set
from furbelow.techniques.shared.preconditions import (
    copies_differ,
    edge_not_ready,
    forms_differ,
    gap_too_wide,
    seam_too_narrow,
)

EDGE_STITCH = Fraction(2)  # from the fold: it narrows the casing by so much


class BandCasing:
    name = "band casing"
    about = "Sew a folded band over the top edge: it encloses the seam and holds elastic."
    pictures = (Picture.PIECES, Picture.BAND)
    parameters = {
        "band": Parameter("The piece that becomes the band.", Kind.PIECE),
        "to": Parameter("The edge it is sewn to.", Kind.EDGE),
        "seam": Parameter("Seam allowance at both long edges of the band and at the skirt.", Kind.LENGTH, "1 cm"),
        "gap": Parameter("Opening left in the topstitching for the elastic.", Kind.LENGTH, "5 cm"),
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        band = word_of(step, "band")
        return (
            Allowance(band, "top", ("seam",)),
            Allowance(band, "bottom", ("seam",), doubles=True),
            *allowances_at(edges_in(step.args["to"].value), "seam"),  # type: ignore[arg-type]
        )

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, say = step.written, Phrasing(solved, room)
        band, to = word_of(written, "band"), edge_of(written, "to")
        names = f"{band}.top", f"{band}.bottom"
        for arg, name in (("band", names[0]), ("band", names[1]), ("to", to)):
            if fault := edge_not_ready(bench, written, arg, name):
                return refused(bench, step, (band,), fault)
        edge, upper, lower = bench.edge(to), bench.edge(names[0]), bench.edge(names[1])
        touches = (*edge.pieces, band)
        fault = (
            forms_differ(bench, written, "to", lower, edge)
            or copies_differ(written, "to", lower, edge)
            or seam_too_narrow(solved, say, step, "seam", touches)
            or gap_too_wide(say, step, edge)
        )
        if fault:
            return refused(bench, step, touches, fault)
        if not bench.ring(edge):
            return refused(
                bench,
                step,
                touches,
                fault_at(
                    written,
                    "to",
                    "FB304",
                    f"`{to}` and `{band}` are still flat, and a casing for elastic is a ring",
                    help=f"close the ends of both before this step with `- join ends: {{of: {band}}}`",
                ),
            )
        gap = edge.set_length - lower.set_length
        if abs(gap) > solved.rounding:
            return refused(
                bench,
                step,
                touches,
                fault_at(
                    written,
                    "to",
                    "FB401",
                    f"`{to}` is {say.length(edge.set_length)} and the band is {say.length(lower.set_length)},"
                    f" {say.length(abs(gap))} {'too long' if gap > 0 else 'too short'}",
                    help=f"gather `{to}` to the band first"
                    if gap > 0
                    else f"make `{band}` shorter or the skirt fuller",
                ),
            )
        opening, seam, depth = step.mm("gap"), step.mm("seam"), solved.pieces[band].depth
        after = bench.with_edges(
            upper._replace(state=State.ENCLOSED, used=upper.used + seam),
            lower._replace(state=State.ENCLOSED, used=lower.used + seam),
            edge._replace(state=State.ENCLOSED, used=edge.used + seam, held=True),
        ).with_cloths(bench.cloths[band]._replace(folded=True))
        after = taken(after, edge, seam).joined(touches)
        after = after.with_seams(
            Seam(
                to,
                (to, names[1]),
                (*edge.plies, *lower.plies),
                edge.set_length,
                1,
                seam,
                "301",
                State.ENCLOSED,
                turned=band,
            )
        ).with_casing(Casing(band, band, depth - EDGE_STITCH, lower.set_length, opening))
        # The band's own seams end up inside the fold.
        own = [seam for seam in bench.seams.values() if {ply.piece for ply in seam.plies} == {band}]
        after = after.with_seams(*(seam._replace(state=State.ENCLOSED) for seam in own))
        length = lower.set_length
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=(
                Sewn(StitchType.LOCK, length, 1, room.seam_stitch, "sewing the waistband on"),
                Sewn(StitchType.LOCK, length - opening, 1, room.seam_stitch, "topstitching the waistband"),
            ),
            setup=SetUp.STRAIGHT,
            pinned=2 * length,
            handled=length,
            facts={"length": length, "depth": depth},
        )

    def instructions(self, done: Performed, say: Phrasing) -> OwnInstructions:
        written, facts = done.step.written, done.facts
        band, edge = word_of(written, "band"), done.before.edge(edge_of(written, "to"))
        seam, gap, length = done.step.mm("seam"), done.step.mm("gap"), facts["length"]
        the = f"the {say.piece(band)}"
        pin = "Clip" if say.room.hold_with == "clips" else "Pin"
        top = "the top edge of the skirt" if len(edge.pieces) > 1 else say.edge(edge.pieces[0], "top")
        stitch = say.stitch(done.sewn[0].stitch)
        skirt = "the skirt" if len(edge.pieces) > 1 else say.the(edge.pieces)
        off = round_off(done.before, edge, say) + round_off(done.before, done.before.edge(f"{band}.bottom"), say)
        own_seam = side_seam(done.before, [band], say)
        actions = (
            iron_set(say, band),
            OwnAction(f"Fold one long edge of {the} {say.length(seam)} to the wrong side and press the fold."),
            OwnAction(
                f"Mark {top} in quarters on both faces, every {say.length(length / 4)}, the first at"
                f" {side_seam(done.before, edge.pieces, say)}."
            ),
            OwnAction(f"Mark the unfolded edge of {the} the same way, the first mark at {own_seam}."),
            OwnAction("Turn the skirt inside out, its top edge up."),
            OwnAction(
                f"Slip {the} over it, right side of the band against the wrong side of {skirt}.",
                check="The unfolded edge is level with the top edge, and the pressed fold hangs down.",
            ),
            OwnAction(
                f"{pin} {own_seam} of the band to the first mark, then the other marks, then every"
                f" {say.about(say.room.pin_spacing * 2)}.",
                check=f"The band lies without a tuck; both measure {say.length(length)}.",
                tolerance=f"{say.off(off)} more or less",
                remedy="Share the difference out between the marks. If it is more, sew the side seam of the band again"
                " to fit.",
            ),
            OwnAction(
                f"Sew {say.length(seam)} from the edge, {stitch}, {say.length(length)} all round; let the end overlap"
                " the start by three stitches.",
                check="Every layer is caught.",
                remedy="Sew again where a layer slipped out, 2 cm past it on both sides."
                if say.system == "metric"
                else "Sew again where a layer slipped out, 1 in past it on both sides.",
            ),
            OwnAction(
                "Turn the skirt right side out. Fold the band up, away from the skirt, the whole margin inside it."
            ),
            OwnAction(
                f"Bring the folded edge over to the right side until it covers the stitch line by {say.about(Fraction(1))}, and"
                f" {pin.lower()} it.",
                check=f"The band is {say.length(facts['depth'])} deep all round.",
                tolerance=f"{say.off(folded_off())} more or less",
                remedy="Shift the fold until it covers the stitch line everywhere. If the band is still less deep, it was cut"
                f" too narrow: cut a new one {say.cut(done.before.cloths[band].piece.cut_depth)} deep.",
            ),
            OwnAction(
                f"Mark a gap of {say.length(gap)} that begins {say.about(Fraction(20))} to the right of {own_seam} of the band,"
                " as you look at the right side. Make a line at each end of it."
            ),
            OwnAction(
                f"With the right side up, topstitch {say.about(EDGE_STITCH)} from the lower fold from one line of the gap round to the"
                f" other, {stitch}, {say.length(length - gap)}. Sew a few stitches back at both ends.",
                check=f"The gap is open and the channel is {say.length(facts['depth'] - EDGE_STITCH)} wide inside.",
                tolerance=f"{say.off(folded_off())} more or less",
                remedy="Unpick what closes the gap.",
            ),
        )
        return OwnInstructions(
            f"Sew on {the}",
            "The top edge is enclosed and a channel for the elastic is open at the gap.",
            actions,
            (PINS, iron_caution(done, say)),
        )


TECHNIQUE = BandCasing()
