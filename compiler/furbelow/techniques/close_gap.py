"""Sew a gap shut: of a casing once its elastic is in, or of a seam that was left open for a stretch.

What it does: finishes the row of stitches that was left open.
Edges before and after: a casing with its elastic in and a gap, or a seam with one, before; closed after.
Allowance: none.
Example: `- close gap: {of: waistband}` or `- close gap: {of: skirt.ends}`
Source: common practice, no source.
"""

from __future__ import annotations

from fractions import Fraction

from furbelow.garment import mends
from furbelow.garment.bench import Bench, Casing, Seam, SeamGap
from furbelow.garment.lying import Ledger, OnCloth
from furbelow.garment.message import Length, Pieces, Stitch, Values, flag
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
    Tool,
    edge_of,
    facts_of,
    fault_at,
    refused,
)
from furbelow.garment.workroom import Workroom
from furbelow.techniques.shared.casings import casing_at, casing_in
from furbelow.techniques.shared.cautions import HAND_NEEDLE

HAND_STITCH = Fraction(2)  # small, for the elastic pulls at it
PAST = Fraction(10)  # the closing row overlaps the first one at both ends


class CloseGap:
    name = "close gap"
    about = "Sew a gap shut: of a casing once its elastic is in, or of a seam."
    pictures = (Picture.CLOSED_GAP,)
    parameters = {
        "of": Parameter(
            "The casing: the band, or the edge that was folded down. Or the seam, such as skirt.ends.", Kind.CASING
        )
    }

    def allowances(self, step: Step, edges_in: EdgesIn) -> tuple[Allowance, ...]:
        return ()

    def lies(self, done: Performed, ledger: Ledger, solved: Solved, room: Workroom) -> OnCloth:
        return OnCloth()

    def perform(self, bench: Bench, step: SolvedStep, solved: Solved, room: Workroom) -> Performed:
        written, name = step.written, edge_of(step.written, "of")
        if (seam := bench.seam_at(name)) and seam.gap and name.endswith(".ends"):
            return _seam_closed(bench, step, room, seam, seam.gap)
        pieces = casing_in(bench, name)
        casing = casing_at(bench, written, "of")
        if not isinstance(casing, Casing):
            return refused(bench, step, pieces, casing)
        if casing.cord:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "of",
                    "FB322",
                    f"the ends of `{casing.cord}` come out of the gap in `{name}`",
                    mend=mends.leave_out(written),
                ),
            )
        if casing.buttoned:
            headline = f"the end of `{casing.elastic}` comes out of the gap in `{name}` and is buttoned on"
            fault = fault_at(written, "of", "FB322", headline, mend=mends.leave_out(written))
            return refused(bench, step, pieces, fault)
        if casing.flat:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "of",
                    "FB322",
                    f"the casing in `{name}` is flat and has no gap; it is open at its ends",
                    help="close its ends in a side seam, which catches the elastic, and leave this step out",
                ),
            )
        if not casing.open:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written, "of", "FB322", f"the gap in `{name}` is closed already", mend=mends.leave_out(written)
                ),
            )
        if not casing.elastic:
            return refused(
                bench,
                step,
                pieces,
                fault_at(
                    written,
                    "of",
                    "FB322",
                    f"the gap in `{name}` would be sewn shut with no elastic inside",
                    notes=("once the gap is closed nothing can be drawn through the casing",),
                    help="put the `insert elastic` step before this one",
                ),
            )
        shut = bench.with_casing(casing._replace(open=False))
        if casing.in_seam:
            by_hand = Sewn(StitchType.HAND, casing.gap, 1, HAND_STITCH)
            return Performed(step, bench, shut, (casing.piece,), sewn=(by_hand,), setup=SetUp.HAND, facts=casing)
        sewn = Sewn(StitchType.LOCK, casing.gap + 2 * PAST, casing.channels, room.seam_stitch)
        return Performed(step, bench, shut, pieces, sewn=(sewn,), setup=SetUp.STRAIGHT, facts=casing)

    def instructions(self, done: Performed, say: Phrasing) -> Instructions:
        if isinstance(done.facts, SeamGap):
            return _of_seam(done, done.facts)
        casing = facts_of(done, Casing)
        values: Values = {
            "band": flag(casing.name == casing.piece),
            "gap": Length(casing.gap),
            "rows": casing.channels,
            "past": Length(PAST, "about"),
            "stitch": Stitch(done.sewn[0].stitch),
        }
        if casing.in_seam:
            by_hand = (Action("close-gap-seam"),)
            return Instructions(
                "close-gap-title", "close-gap-aim", by_hand, values, (HAND_NEEDLE,), (Tool.HAND_NEEDLE,)
            )
        sew = "close-gap-sew" if casing.channels == 1 else "close-gap-sew-rows"
        return Instructions("close-gap-title", "close-gap-aim", (Action(sew),), values)


def _seam_closed(bench: Bench, step: SolvedStep, room: Workroom, seam: Seam, gap: SeamGap) -> Performed:
    """The stretch sewn on the line of its seam, from inside, as long as nothing fills it."""
    pieces = tuple(ply.piece for ply in seam.plies)
    if gap.closed:
        written = step.written
        headline = f"the gap in `{seam.name}` is closed already"
        return refused(bench, step, pieces, fault_at(written, "of", "FB322", headline, mend=mends.leave_out(written)))
    sewn = Sewn(StitchType.LOCK, gap.length + 2 * PAST, 1, room.seam_stitch)
    shut = seam._replace(gap=gap._replace(closed=True), length=seam.length + gap.length)
    after = bench.with_seams(shut)
    return Performed(step, bench, after, pieces, sewn=(sewn,), setup=SetUp.STRAIGHT, facts=gap)


def _of_seam(done: Performed, gap: SeamGap) -> Instructions:
    seam = done.before.seams[edge_of(done.step.written, "of")]
    values: Values = {
        "pieces": Pieces(tuple(ply.piece for ply in seam.plies)),
        "gap": Length(gap.length),
        "seam-width": Length(seam.width),
        "past": Length(PAST, "about"),
        "stitch": Stitch(done.sewn[0].stitch),
    }
    return Instructions("close-gap-title", "close-gap-aim-seam", (Action("close-gap-sew-seam"),), values)


TECHNIQUE = CloseGap()
