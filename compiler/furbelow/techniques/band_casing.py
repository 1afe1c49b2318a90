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

from furbelow.garment import mends
from furbelow.garment.bench import Bench, Casing, Seam, State
from furbelow.garment.lying import Ledger, Lies, Occupant, OnCloth
from furbelow.garment.message import Length, One, Pieces, Stitch, Values, edge_said, flag
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
    facts_of,
    fault_at,
    refused,
    word_of,
)
from furbelow.garment.tolerance import folded_off, round_off
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.techniques.shared.casings import (
    BESIDE_SEAM,
    EDGE_STITCH,
    GAP_IN,
    OPENED,
    gap_of,
    gap_unpicked,
    holds_cord,
    holds_said,
    holes_said,
    seam_pressed,
    unpicking,
)
from furbelow.techniques.shared.cautions import PINS_OUT, RIPPER
from furbelow.techniques.shared.faces import Face, inside_face
from furbelow.techniques.shared.fire_label import label_laid, label_tools, label_written
from furbelow.techniques.shared.gathers import knots_of, tails_hang, tails_off, tails_said
from furbelow.techniques.shared.iron import iron_hot, iron_tools
from furbelow.techniques.shared.joined_edges import drawn_to
from furbelow.techniques.shared.laid_edges import folds_of
from furbelow.techniques.shared.laying import gap_window, held_in_seam, margins
from furbelow.techniques.shared.marks import marked, parts_apart, parts_of, seam_said
from furbelow.techniques.shared.pins import pins_apart
from furbelow.techniques.shared.preconditions import (
    copies_differ,
    edge_not_ready,
    ends_turned,
    forms_differ,
    gap_too_wide,
    seam_too_narrow,
)
from furbelow.techniques.shared.stacks import taken

COVER = Fraction(1)  # of the folded edge over the first row
PAST = Fraction(20)  # where a row is sewn again

_SLIPPED = {
    Face.WRONG: "band-casing-slip",
    Face.RIGHT: "band-casing-slip-lining",
    Face.EITHER: "band-casing-slip-either",
}


class Banded(NamedTuple):
    """A band sewn on and folded: its length round, its depth as folded, from pin to pin, in mm."""

    length: Fraction
    depth: Fraction
    apart: Fraction


class BandCasing:
    name = "band casing"
    about = "Sew a folded band over the top edge: it encloses the seam and holds elastic."
    pictures = (Picture.PIECES, Picture.BAND)
    parameters = {
        "band": Parameter("The piece that becomes the band.", Kind.PIECE),
        "to": Parameter("The edge it is sewn to.", Kind.EDGE),
        "seam": Parameter("Seam allowance at both long edges of the band and at the skirt.", Kind.LENGTH, "1 cm"),
        "gap": Parameter("Opening left in the topstitching for the elastic.", Kind.LENGTH, "5 cm"),
        "gap in": GAP_IN,
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        band = word_of(step, "band")
        return (
            Allowance(band, "top", ("seam",)),
            Allowance(band, "bottom", ("seam",), doubles=True),
            *allowances_at(edges_in(edge_at(step, "to")), "seam"),
        )

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        written, seam = done.step.written, done.step.mm("seam")
        band, to = word_of(written, "band"), edge_of(written, "to")
        deep = solved.pieces[band].depth
        sewn = margins(ledger, seam, "seam", to, f"{band}.top", f"{band}.bottom")
        inside = ledger.band(band, "top", seam, seam + 2 * deep)
        edge = done.before.edge(to)
        windows = held_in_seam(done, solved, room, "seam", seam, edge, done.before.edge(f"{band}.bottom"))
        channel = Occupant(band, Lies.CHANNEL, "the channel", down=inside, arg="band")
        return OnCloth((*sewn, channel), (*windows, gap_window(done)))

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
        unpicked = gap_unpicked(bench, written, band)
        if not isinstance(unpicked, bool):
            return refused(bench, step, touches, unpicked)
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
        if solved.apart(edge.set_length, lower.set_length):
            long, wanted, too, _ = say.missed(edge.set_length, lower.set_length)
            return refused(
                bench,
                step,
                touches,
                fault_at(
                    written,
                    "to",
                    "FB401",
                    f"`{to}` is {long} and the band is {wanted}, {too}",
                    notes=ends_turned(bench, edge, lower, say),
                    mend=drawn_to(written, edge, lower.set_length, f"to: {lower.name}")
                    if gap > 0
                    else mends.Mend(f"make `{band}` shorter or the skirt fuller", None),
                ),
            )
        seam, depth = step.mm("seam"), solved.pieces[band].depth
        casing = Casing(
            band,
            band,
            depth - EDGE_STITCH,
            lower.set_length,
            gap_of(bench, band, step, depth - EDGE_STITCH if unpicked else None),
            in_seam=unpicked,
            holes=bench.holes.get(band),
        )
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
        ).with_casing(casing)
        # The band's own seams end up inside the fold.
        own = [seam for seam in bench.seams.values() if {ply.piece for ply in seam.plies} == {band}]
        after = after.with_seams(*(seam._replace(state=State.ENCLOSED) for seam in own))
        length = lower.set_length
        apart = pins_apart(solved, room, edge, lower)
        once = length * room.pin_spacing / apart
        return Performed(
            step,
            bench,
            after,
            touches,
            sewn=(
                Sewn(StitchType.LOCK, length, 1, room.seam_stitch),  # the band on
                Sewn(StitchType.LOCK, length - casing.left_open, 1, room.seam_stitch),  # topstitching
            ),
            setup=SetUp.STRAIGHT,
            # Pinned once to be sewn on, and once more to be folded over.
            pinned=2 * once,
            pinned_at_once=once,
            handled=length,
            thread_ends=knots_of(edge) if tails_hang(edge) else 0,
            facts=Banded(length, depth, apart),
        )

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        written, facts, before = done.step.written, facts_of(done, Banded), done.before
        band, edge = word_of(written, "band"), before.edge(edge_of(written, "to"))
        casing, length, depth = done.after.casings[band], facts.length, facts.depth
        alike = abs(edge.set_length - length) <= say.solved.slack
        cord, parts, inner = holds_cord(say.solved, band), parts_of(edge), edge.plies[-1]
        if marked(edge):
            marks: tuple[Action, ...] = (Action("band-casing-mark-band-alone"),)
        else:
            first = "band-casing-mark-pleats" if "pleats" in edge.gathered else "band-casing-mark"
            at = parts_apart(before, edge, parts)
            marks = (
                Action(first, values=at),
                Action("band-casing-mark-band" if alike else "band-casing-mark-band-own"),
            )
        actions = (
            *label_written(done, say),
            *seam_pressed(casing),
            Action("band-casing-fold-holes" if casing.holes else "band-casing-fold"),
            *marks,
            Action("band-casing-turn"),
            *label_laid(done, say, "band-casing-label", inner.piece),
            Action(_SLIPPED[inside_face(edge, say)]),
            *((Action("band-casing-front"),) if casing.holes else ()),
            Action("band-casing-pin"),
            *((Action(tails_off(edge), values=tails_said(edge)),) if tails_hang(edge) else ()),
            Action("band-casing-sew"),
            Action("band-casing-fold-up"),
            Action("band-casing-cover"),
            *_topstitched(casing, cord),
        )
        values: Values = {
            "band": Pieces((band,)),
            "to": edge_said(edge),
            "seam": seam_said(before, edge.pieces, say),
            "band-seam": seam_said(before, [band], say),
            "hold": One(say.room.hold_with, ("pins", "clips")),
            "seam-width": Length(done.step.mm("seam")),
            "inner": Pieces((inner.piece,)),
            "holds": holds_said(say.solved, band),
            "parts": parts,
            "part": Length(length / parts),
            "quarter": Length(length / 4),
            "gathered": flag(folds_of(edge) == "gathers"),
            "length": Length(length),
            "alike": flag(alike),
            "top": Length(edge.set_length),
            "off": Length(round_off(before, edge, say) + round_off(before, before.edge(f"{band}.bottom"), say), "off"),
            "spacing": Length(facts.apart, "about"),
            "past": Length(PAST, "about"),
            "cover": Length(COVER, "about"),
            "depth": Length(depth),
            "cut-depth": Length(before.cloths[band].piece.cut_depth, "cut"),
            "fold-off": Length(folded_off(), "off"),
            "gap": Length(casing.gap),
            "beside": Length(BESIDE_SEAM, "about"),
            "gap-end": Length(BESIDE_SEAM + casing.gap),
            "edge-stitch": Length(EDGE_STITCH, "about"),
            "stitched": Length(length - casing.left_open),
            "stitch": Stitch(done.sewn[0].stitch),
            "channel": Length(casing.width),
            "opened": One("row", OPENED),
            **holes_said(casing.holes),
        }
        cautions = (PINS_OUT, iron_hot(done, say), *((RIPPER,) if casing.in_seam else ()))
        tools = (*iron_tools(done, say), *label_tools(done, say))
        aim = "band-casing-aim-holes" if casing.holes else "band-casing-aim"
        return Instructions(
            "band-casing-title",
            aim,
            actions,
            values,
            cautions,
            tools,
            ironed=("band-casing-fold", "band-casing-fold-holes", "band-casing-fold-up", "open-seam-press"),
        )


def _topstitched(casing: Casing, cord: bool) -> tuple[Action, ...]:
    """The row round the foot of the band, and the gap that it leaves or that is unpicked beside it."""
    if not casing.left_open:
        return (Action("band-casing-topstitch-round"), *unpicking(casing))
    return (Action("band-casing-gap-front" if cord else "band-casing-gap"), Action("band-casing-topstitch"))


TECHNIQUE = BandCasing()
